"""Set Garden Canvas up where it is needed and open the demo garden: python3 packaging/start.py.

With no screen, or with --headless, the same job is done without a window: the fit report is
printed, the bed map (PDF) and the plan (PNG) are written into a folder that is named at the end.
Exit code 0 when all went well, 1 otherwise.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))  # also under python3 -P
import environment

# isort: split
import argparse
import ctypes
import os
import subprocess
from collections.abc import Callable, Mapping, Sequence
from typing import NoReturn

import system_libraries

OUT = environment.CHECKOUT / "build" / "demo"
CHECK_ANSWERS = (0, 1)  # gardencanvas check: 0 no clash, 1 a clash; the demo holds one on purpose


class Parser(argparse.ArgumentParser):
    """Arguments of this script; a wrong one ends it with exit code 1."""

    def error(self, message: str) -> NoReturn:
        """End with one sentence."""
        self.exit(1, f"{message[:1].upper()}{message[1:]}: see {self.prog} --help.\n")


def parse(arguments: Sequence[str]) -> argparse.Namespace:
    """Read the command line."""
    parser = Parser(prog="start.py", description="Set Garden Canvas up and open the demo garden.")
    parser.add_argument("--headless", action="store_true", help="open no window; print and write files")
    parser.add_argument("--out", type=Path, default=OUT, metavar="FOLDER", help="where headless files go")
    return parser.parse_args(arguments)


def x_server_answers() -> bool:
    """Whether DISPLAY leads to an X server; True where that cannot be found out here."""
    try:
        xcb = ctypes.CDLL("libxcb.so.1")
    except OSError:
        return True
    xcb.xcb_connect.restype = ctypes.c_void_p
    xcb.xcb_connection_has_error.argtypes = xcb.xcb_disconnect.argtypes = [ctypes.c_void_p]
    connection = xcb.xcb_connect(None, None)
    answers: bool = xcb.xcb_connection_has_error(connection) == 0
    xcb.xcb_disconnect(connection)
    return answers


def screen_complaint(
    variables: Mapping[str, str], platform: str, x_answers: Callable[[], bool]
) -> str | None:
    """Why no window can open here; None where one can.

    Parameters
    ----------
    variables : mapping
        Environment variables.
    platform : str
        As sys.platform.
    x_answers : callable
        Asked only if there is a DISPLAY and no Wayland.
    """
    if not platform.startswith("linux"):
        return None
    if variables.get("QT_QPA_PLATFORM", "").split(":")[0] in ("offscreen", "minimal"):
        return "QT_QPA_PLATFORM asks for no screen"
    if variables.get("WAYLAND_DISPLAY"):
        return None
    if not variables.get("DISPLAY"):
        return "There is no screen (neither DISPLAY nor WAYLAND_DISPLAY is set)"
    return None if x_answers() else f"No screen answers at DISPLAY={variables['DISPLAY']}"


def gardencanvas(*arguments: str) -> int:
    """Run the program in its environment; its exit code."""
    command = [str(environment.program("python")), "-P", "-m", "gardencanvas", *arguments]
    return subprocess.run(command, check=False).returncode


def open_window() -> int:
    """Open the demo garden; 0 when the window was closed in good order."""
    code = gardencanvas("--demo")
    if code != 0:
        print(f"The window ended with exit code {code}.", file=sys.stderr)
    return 0 if code == 0 else 1


def work_headless(folder: Path) -> int:
    """Fit report, bed map and plan of the demo garden, without a window; 0 if all were made."""
    folder.mkdir(parents=True, exist_ok=True)
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    demo, bedmap, picture = (str(folder / name) for name in ("demo.gardencanvas", "bedmap.pdf", "plan.png"))
    steps = [
        (("demo", demo), (0,)),
        (("check", demo), CHECK_ANSWERS),
        (("bedmap", demo, bedmap), (0,)),
        (("picture", demo, picture), (0,)),
    ]
    failures = 0
    for arguments, good in steps:
        print(f"— gardencanvas {' '.join(arguments)}", flush=True)
        code = gardencanvas(*arguments)
        if code not in good:
            failures += 1
            print(f"'gardencanvas {arguments[0]}' ended with exit code {code}.", file=sys.stderr)
            if arguments[0] == "demo":
                break  # nothing to work on
    written = [Path(name).name for name in (demo, bedmap, picture) if Path(name).is_file()]
    print(f"In {folder}: {', '.join(written) or 'nothing'}.")
    return 1 if failures else 0


def main(arguments: Sequence[str]) -> int:
    """Set up, then open the window or work headless."""
    options = parse(arguments)
    why = "Asked for no window" if options.headless else None
    why = why or screen_complaint(os.environ, sys.platform, x_server_answers)
    try:
        if sys.platform.startswith("linux"):
            system_libraries.require(system_libraries.needed(os.environ, window=why is None))
        environment.prepare(dev=False)
    except environment.SetupError as error:
        print(error, file=sys.stderr)
        return 1
    try:
        if why is None:
            return open_window()
        print(f"{why}: working without a window.", flush=True)
        return work_headless(options.out.resolve())
    except KeyboardInterrupt:
        return 1
    except OSError as error:
        print(f"{error.filename or options.out}: {error.strerror}.", file=sys.stderr)
        return 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
