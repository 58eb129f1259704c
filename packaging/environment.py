"""The checkout's own Python environment (.venv): made, brought up to date, or found ready.

Standard library only. The syntax stays readable to Python 3.7, so that an old Python gets the
sentence below and no syntax error.
"""

import sys

if sys.version_info < (3, 11):  # noqa: UP036 - this is the check that makes 3.11 the floor
    sys.exit(
        "Garden Canvas needs Python 3.11 or newer and this is Python "
        f"{sys.version_info[0]}.{sys.version_info[1]}: install a newer Python and run this script with it."
    )

import hashlib
import importlib.util
import os
import shutil
import subprocess
from pathlib import Path

CHECKOUT = Path(__file__).resolve().parent.parent
VENV = CHECKOUT / ".venv"
PIP_LOG = VENV / "pip.log"
NO_NETWORK = (  # what pip and urllib3 write where no registry answers
    "NewConnectionError",
    "NameResolutionError",
    "name resolution",
    "ConnectTimeoutError",
    "ReadTimeoutError",
    "Network is unreachable",
    "Connection refused",
    "ProxyError",
)


class SetupError(Exception):
    """What stands in the way, in one sentence that says what to do."""


def fingerprint(pyproject: bytes, python: str, folder: str) -> str:
    """Stamp of a finished environment: it changes when any of the three does.

    Parameters
    ----------
    pyproject : bytes
        Contents of pyproject.toml.
    python : str
        Version of Python, as "3.11".
    folder : str
        Where the checkout lies; an environment does not survive being moved.
    """
    return hashlib.sha256(b"\0".join([pyproject, python.encode(), folder.encode()])).hexdigest()


def python_version() -> str:
    """Major and minor version of the Python that runs this script."""
    return f"{sys.version_info[0]}.{sys.version_info[1]}"


def program(name: str) -> Path:
    """Path of a program inside the environment."""
    if os.name == "nt":
        return VENV / "Scripts" / f"{name}.exe"
    return VENV / "bin" / name


def stamp_file(dev: bool) -> Path:
    """Where the stamp of the plain or of the developer's environment lies."""
    return VENV / ("ready-dev" if dev else "ready")


def is_ready(stamp: str, dev: bool) -> bool:
    """Whether the environment was finished under this stamp and still has its Python."""
    file = stamp_file(dev)
    return file.is_file() and file.read_text("utf-8") == stamp and program("python").exists()


def venv_version(config: str) -> str | None:
    """Python version ("3.11") that a pyvenv.cfg names; None where it names none."""
    for line in config.splitlines():
        key, _, value = line.partition("=")
        if key.strip() in ("version", "version_info"):
            return ".".join(value.strip().split(".")[:2])
    return None


def pip_complaint(log: str) -> str:
    """One sentence for a failed pip, chosen by what pip wrote."""
    if "No space left on device" in log:
        return "The disk is full: free about 1 GB and start again."
    if any(sign in log for sign in NO_NETWORK):
        return (
            "The package registry cannot be reached: connect this machine to the network, or name a mirror "
            "in PIP_INDEX_URL, and start again."
        )
    if "CERTIFICATE_VERIFY_FAILED" in log:
        return (
            "The package registry's certificate is not trusted here: name your network's certificate file "
            "in PIP_CERT and start again."
        )
    return f"Installing the libraries failed: read the end of {PIP_LOG}, mend what it names and start again."


def installs_as_root() -> bool:
    """Whether this process may install Debian packages by itself."""
    return hasattr(os, "geteuid") and os.geteuid() == 0 and shutil.which("apt-get") is not None


def apt_install(packages: list[str]) -> bool:
    """Install Debian packages (as root); False where that failed."""
    print("Installing with apt-get:", *packages, flush=True)
    quiet = dict(os.environ, DEBIAN_FRONTEND="noninteractive")
    update = ["apt-get", "update", "-qq"]
    install = ["apt-get", "install", "-y", "-qq", "--no-install-recommends", *packages]
    # A failed update is no failure yet: the packages may be in reach with the lists at hand.
    subprocess.run(update, env=quiet, stdout=subprocess.DEVNULL, check=False)
    return subprocess.run(install, env=quiet, stdout=subprocess.DEVNULL, check=False).returncode == 0


def venv_module_is_there() -> bool:
    """Whether this Python can make environments (Debian keeps ensurepip in a package of its own)."""
    return all(importlib.util.find_spec(name) is not None for name in ("venv", "ensurepip"))


def make_venv() -> None:
    """Make .venv, or complete one that is there; one of another Python version is made anew."""
    package = f"python{python_version()}-venv"
    if not venv_module_is_there() and installs_as_root():
        apt_install([package])
        importlib.invalidate_caches()
    if not venv_module_is_there():
        raise SetupError(
            "This Python has no venv module: install it "
            f"(Debian, Ubuntu: sudo apt-get install {package}) and start again."
        )
    command = [sys.executable, "-m", "venv"]
    config = VENV / "pyvenv.cfg"
    if config.is_file() and venv_version(config.read_text("utf-8")) != python_version():
        command.append("--clear")
    made = subprocess.run([*command, str(VENV)], capture_output=True, text=True, check=False)
    if made.returncode != 0:
        last = (made.stdout + made.stderr).strip().splitlines()[-1:]
        raise SetupError(f"The environment {VENV} could not be made: {' '.join(last)}")


def install(dev: bool) -> None:
    """Install Garden Canvas and its libraries, editable, into the environment.

    Raises
    ------
    SetupError
        If pip fails; its whole output lies in .venv/pip.log.
    """
    what = f"{CHECKOUT}[dev]" if dev else str(CHECKOUT)
    command = [str(program("python")), "-m", "pip", "install", "--disable-pip-version-check", "--no-input"]
    command += ["--prefer-binary", "--retries", "2", "--editable", what]
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False)
    PIP_LOG.write_text(done.stdout, "utf-8")
    if done.returncode != 0:
        raise SetupError(pip_complaint(done.stdout))


def prepare(dev: bool) -> bool:
    """Make or update .venv if it is not ready; True where there was something to do."""
    pyproject = (CHECKOUT / "pyproject.toml").read_bytes()
    stamp = fingerprint(pyproject, python_version(), str(CHECKOUT))
    if is_ready(stamp, dev):
        return False
    print(f"Setting up {VENV} (the first time this takes a minute or two) …", flush=True)
    for file in (stamp_file(False), stamp_file(True)):
        file.unlink(missing_ok=True)
    make_venv()
    install(dev)
    stamp_file(False).write_text(stamp, "utf-8")
    if dev:
        stamp_file(True).write_text(stamp, "utf-8")
    return True
