"""Install the wheel and the sdist for real and use them: python3 packaging/check_install.py [WAY ...].

Ways: pip-wheel, pip-sdist, uv, pipx; all of them where none is named. Each installs into a place of its own
under build/installed, from the package registry, with nothing of the checkout on its path; then the installed
program writes the demo garden, checks it and draws it. Exit code 0 when all went well, 1 otherwise.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
import environment

# isort: split
import os
import shutil
import subprocess
from collections.abc import Callable

WORK = environment.CHECKOUT / "build" / "installed"


def run(*command: str | Path, **variables: str) -> str:
    """Run a program outside the checkout; what it printed."""
    kept = {
        k: v for k, v in os.environ.items() if not k.startswith(("PYTHON", "VIRTUAL_ENV", "GARDENCANVAS"))
    }
    done = subprocess.run(
        [str(part) for part in command], cwd=WORK, env={**kept, **variables}, capture_output=True, text=True,
        check=False,
    )  # fmt: skip
    if done.returncode not in ((0, 1) if "check" in command else (0,)):
        raise environment.SetupError(
            f"{' '.join(map(str, command))} ended with {done.returncode}: {done.stderr}"
        )
    return done.stdout


def tools() -> Path:
    """An environment with the builder, uv and pipx; the folder of its programs."""
    folder = fresh_venv("tools")
    run(folder / "python", "-m", "pip", "install", "--quiet", "build", "hatchling", "uv", "pipx")
    return folder


def fresh_venv(name: str) -> Path:
    """A new environment; the folder of its programs."""
    run(sys.executable, "-m", "venv", "--clear", WORK / name)
    return WORK / name / ("Scripts" if os.name == "nt" else "bin")


def use(*program: str | Path, **variables: str) -> str:
    """The main job with an installed program; what it says its version is."""
    folder = WORK / "out"
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    demo = folder / "demo.gardencanvas"
    variables = {"QT_QPA_PLATFORM": "offscreen", **variables}
    version = run(*program, "--version", **variables).strip()
    run(*program, "demo", demo, **variables)
    run(*program, "check", demo, **variables)
    run(*program, "picture", demo, folder / "plan.png", **variables)
    run(*program, "bedmap", demo, folder / "map.pdf", **variables)
    for name, sign in (("plan.png", b"\x89PNG"), ("map.pdf", b"%PDF-")):
        if not (folder / name).read_bytes().startswith(sign):
            raise environment.SetupError(f"{name} is not what it should be.")
    return version


def by_pip(file: Path, name: str) -> str:
    """Installed with pip into a fresh environment."""
    folder = fresh_venv(name)
    run(folder / "python", "-m", "pip", "install", "--quiet", file)
    return use(folder / "gardencanvas")


def by_uv(bin_: Path, wheel: Path) -> str:
    """Installed with `uv tool install`."""
    places = {"UV_TOOL_DIR": str(WORK / "uv-tools"), "UV_TOOL_BIN_DIR": str(WORK / "uv-bin")}
    run(bin_ / "uv", "tool", "install", "--force", "--python", sys.executable, wheel, **places)
    return use(WORK / "uv-bin" / "gardencanvas")


def by_pipx(bin_: Path, wheel: Path) -> str:
    """Run with `pipx run`."""
    places = {"PIPX_HOME": str(WORK / "pipx"), "PIPX_BIN_DIR": str(WORK / "pipx-bin")}
    return use(bin_ / "pipx", "run", "--python", sys.executable, "--spec", wheel, "gardencanvas", **places)


def main(wanted: list[str]) -> int:
    """Build, then install each way."""
    WORK.mkdir(parents=True, exist_ok=True)
    try:
        bin_ = tools()
        dist = WORK / "dist"
        shutil.rmtree(dist, ignore_errors=True)
        run(bin_ / "python", "-m", "build", "--no-isolation", "--outdir", dist, environment.CHECKOUT)
        (wheel,), (sdist,) = dist.glob("*.whl"), dist.glob("*.tar.gz")
        ways: dict[str, Callable[[], str]] = {
            "pip-wheel": lambda: by_pip(wheel, "pip-wheel"),
            "pip-sdist": lambda: by_pip(sdist, "pip-sdist"),
            "uv": lambda: by_uv(bin_, wheel),
            "pipx": lambda: by_pipx(bin_, wheel),
        }
        for file in (wheel, sdist):
            print(f"{file.name}, {file.stat().st_size / 1e6:.1f} MB")
        for way in wanted or list(ways):
            print(f"{way}: {ways[way]()}", flush=True)
    except (environment.SetupError, OSError) as error:
        print(error, file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
