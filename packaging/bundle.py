"""Build a stand-alone folder that needs no Python: python3 packaging/bundle.py [--out FOLDER] [--start].

Made with PyInstaller in an environment of its own under build/bundle; the result is dist/gardencanvas/ with
the program `gardencanvas` in it (`gardencanvas.exe` on Windows, `Garden Canvas.app` on macOS). Tried on
Linux; the same recipe is meant for Windows and macOS and is untested there.

--start then starts it as a stranger would: no Python, no environment variables but those of the screen.
Exit code 0 when all went well, 1 otherwise.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
import environment

# isort: split
import argparse
import os
import shutil
import subprocess
import tempfile
import time
from collections.abc import Sequence

CHECKOUT = environment.CHECKOUT
WORK = CHECKOUT / "build" / "bundle"
APP_ID = "org.gardencanvas.GardenCanvas"
ENTRY = "import sys\nfrom gardencanvas.__main__ import main\n\nsys.exit(main())\n"
# Qt modules that hooks would bring and the program does not use; heavy libraries only tests use.
LEFT_OUT = ("PySide6.QtNetwork", "PySide6.QtQml", "PySide6.QtQuick", "tkinter", "scipy", "pytest", "IPython")
SECONDS = 8.0  # a start without any cache, on a slow disk


def program_in(out: Path) -> Path:
    """Where the started file of the bundle lies."""
    if sys.platform == "darwin":
        return out / "Garden Canvas.app" / "Contents" / "MacOS" / "Garden Canvas"
    return out / "gardencanvas" / ("gardencanvas.exe" if sys.platform == "win32" else "gardencanvas")


def prepare() -> Path:
    """An environment with the program, not editable, and PyInstaller; its Python."""
    venv = WORK / "venv"
    python = venv / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
    if not python.exists():
        subprocess.run([sys.executable, "-m", "venv", str(venv)], check=True)
    # the program itself is always installed anew; its libraries only when they are missing
    pip = [str(python), "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
    subprocess.run([*pip, f"{CHECKOUT}[bundle]"], check=True)
    subprocess.run([*pip, "--force-reinstall", "--no-deps", str(CHECKOUT)], check=True)
    return python


def command_for(python: Path, out: Path) -> list[str]:
    """PyInstaller's command line."""
    entry = WORK / "start_gardencanvas.py"
    entry.write_text(ENTRY, "utf-8")
    name = "Garden Canvas" if sys.platform == "darwin" else "gardencanvas"
    command = [str(python), "-m", "PyInstaller", "--noconfirm", "--clean", "--onedir", "--log-level", "WARN"]
    command += ["--name", name, "--distpath", str(out), "--workpath", str(WORK / "work")]
    command += [
        "--specpath",
        str(WORK),
        "--additional-hooks-dir",
        str(CHECKOUT / "packaging" / "bundle_hooks"),
    ]
    command += ["--collect-submodules", "gardencanvas", "--collect-data", "gardencanvas"]
    command += ["--copy-metadata", "PySide6-Essentials"]
    for module in LEFT_OUT:
        command += ["--exclude-module", module]
    if sys.platform == "darwin":
        command += ["--windowed", "--osx-bundle-identifier", APP_ID]
    return [*command, str(entry)]


def add_desktop_files(folder: Path) -> None:
    """Desktop entry, MIME type, metainfo and icon beside the program, for those who install by hand."""
    share = folder / "share"
    for source, place in (
        (CHECKOUT / "packaging" / f"{APP_ID}.desktop", f"applications/{APP_ID}.desktop"),
        (CHECKOUT / "packaging" / f"{APP_ID}.metainfo.xml", f"metainfo/{APP_ID}.metainfo.xml"),
        (CHECKOUT / "packaging" / f"{APP_ID}.mime.xml", f"mime/packages/{APP_ID}.xml"),
        (CHECKOUT / "resources" / "icons" / "gardencanvas.svg", f"icons/hicolor/scalable/apps/{APP_ID}.svg"),
    ):
        target = share / place
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(source, target)


def build(out: Path) -> Path:
    """Build the bundle into a folder; the file that starts it."""
    WORK.mkdir(parents=True, exist_ok=True)
    python = prepare()
    # not in the checkout: its package would be taken for the installed one, and it has no resources inside
    subprocess.run(command_for(python, out), check=True, cwd=WORK)
    made = program_in(out)
    if sys.platform.startswith("linux"):
        add_desktop_files(made.parent)
    shutil.copyfile(CHECKOUT / "LICENSE", made.parent / "LICENSE")
    return made


def bare(home: Path) -> dict[str, str]:
    """The surroundings of a stranger: a home of their own, the screen, and nothing else."""
    kept = {
        name: os.environ[name] for name in ("DISPLAY", "XAUTHORITY", "WAYLAND_DISPLAY") if name in os.environ
    }
    return {"HOME": str(home), "PATH": "/usr/bin:/bin", "LANG": "C.UTF-8", **kept}


def start(made: Path) -> list[str]:
    """Start the bundle as a stranger would; what went wrong, if anything did."""
    with tempfile.TemporaryDirectory() as home:
        surroundings = bare(Path(home))
        said = subprocess.run(
            [str(made), "--version"], env=surroundings, capture_output=True, text=True, check=False
        )
        faults = (
            []
            if said.stdout.startswith("Garden Canvas ")
            else [f"--version said: {said.stdout}{said.stderr}"]
        )
        demo, plan = Path(home) / "demo.gardencanvas", Path(home) / "plan.png"
        offscreen = {**surroundings, "QT_QPA_PLATFORM": "offscreen"}
        for arguments, good in (
            (("demo", str(demo)), (0,)),
            (("check", str(demo)), (0, 1)),
            (("picture", str(demo), str(plan)), (0,)),
        ):
            done = subprocess.run(
                [str(made), *arguments], env=offscreen, capture_output=True, text=True, check=False
            )
            if done.returncode not in good:
                faults.append(f"{arguments[0]} ended with {done.returncode}: {done.stderr[-500:]}")
        faults += _window(made, demo, surroundings if "DISPLAY" in surroundings else offscreen)
    return faults


def _window(made: Path, demo: Path, surroundings: dict[str, str]) -> list[str]:
    """Open the demo in a window and let it stand for some seconds."""
    with tempfile.TemporaryFile() as words:
        window = subprocess.Popen([str(made), str(demo)], env=surroundings, stderr=words, cwd=demo.parent)
        until = time.monotonic() + SECONDS
        while window.poll() is None and time.monotonic() < until:
            time.sleep(0.1)
        ended = window.poll()
        if ended is None:
            window.terminate()
            window.wait()
        words.seek(0)
        said = words.read().decode("utf-8", "replace")
    faults = [] if ended is None else [f"the window ended by itself with {ended}"]
    return faults + ([f"the window complained: {said[-800:]}"] if said.strip() else [])


def parse(arguments: Sequence[str]) -> argparse.Namespace:
    """Read the command line."""
    parser = argparse.ArgumentParser(
        prog="bundle.py", description="Build Garden Canvas as a stand-alone folder."
    )
    parser.add_argument("--out", type=Path, default=CHECKOUT / "dist", metavar="FOLDER")
    parser.add_argument("--start", action="store_true", help="start what was built, in bare surroundings")
    return parser.parse_args(arguments)


def main(arguments: Sequence[str]) -> int:
    """Build, and start if asked to."""
    options = parse(arguments)
    try:
        made = build(options.out.resolve())
    except (subprocess.CalledProcessError, OSError) as error:
        print(f"The bundle could not be built: {error}", file=sys.stderr)
        return 1
    size = sum(
        file.stat().st_size for file in made.parent.rglob("*") if file.is_file() and not file.is_symlink()
    )
    print(f"{made}, {size / 1e6:.0f} MB in all")
    faults = start(made) if options.start else []
    for fault in faults:
        print(fault, file=sys.stderr)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
