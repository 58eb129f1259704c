"""Where the program starts: early checks, then the command line or the window.

Nothing here imports Qt, and a command that needs no Qt never loads it.
"""

import faulthandler
import gc
import sys
import traceback
from collections.abc import Sequence
from importlib import metadata
from pathlib import Path

from gardencanvas import __version__

QT_FREE_COMMANDS = frozenset({"check", "gap", "compare", "jobs", "seeds", "demo", "crops"})
DRAWING_COMMANDS = frozenset({"bedmap", "picture"})
COMMANDS = QT_FREE_COMMANDS | DRAWING_COMMANDS

BAD_ARGUMENTS = 2
PROGRAM_FAULT = 70  # EX_SOFTWARE of sysexits.h: exit code 1 of `check` means a clash and nothing else

USAGE = """\
gardencanvas [FILE]            open the window, with this garden
gardencanvas --demo            open the window with a fresh copy of the demo garden
gardencanvas COMMAND --help    what a command does and takes

Commands that open no window: {commands}.
gardencanvas --version         print the version
"""


def pair_complaint(python: tuple[int, ...], pyside: str) -> str | None:
    """Why this pair of Python and PySide6 must not draw, and what to install instead.

    PySide6 6.12 drops one reference to None too many in nearly every call that returns nothing,
    and Python keeps None for ever only from 3.12 on (PEP 683): on 3.11 it aborts within seconds.
    PySide6 6.11.0 and 6.11.1 break docks and the resizing of windows (QTBUG-147209).

    Parameters
    ----------
    python : tuple of int
        As sys.version_info.
    pyside : str
        Version of PySide6, as "6.11.3".

    Returns
    -------
    str or None
        One sentence, or None for a sound pair.
    """
    numbers = tuple(int("".join(c for c in part if c.isdigit()) or "0") for part in pyside.split(".")[:3])
    if numbers in ((6, 11, 0), (6, 11, 1)):
        return (
            f"PySide6 {pyside} breaks docks and resizing: "
            'install another one with pip install "PySide6-Essentials>=6.8,!=6.11.0,!=6.11.1,<6.12".'
        )
    if python[:2] < (3, 12) and numbers >= (6, 12):
        return (
            f"PySide6 {pyside} crashes on Python {python[0]}.{python[1]}: use Python 3.12 or newer, or run "
            'pip install "PySide6-Essentials>=6.11.2,<6.12".'
        )
    return None


def installed_pyside() -> str | None:
    """Version of the installed PySide6, slim or whole; None if there is none. Imports no Qt."""
    for distribution in ("PySide6-Essentials", "PySide6"):
        try:
            return metadata.version(distribution)
        except metadata.PackageNotFoundError:
            continue
    return None


def drawing_complaint() -> str | None:
    """Why nothing can be drawn with what is installed; None if it can."""
    pyside = installed_pyside()
    if pyside is None:
        return "PySide6 is not installed: run pip install PySide6-Essentials."
    return pair_complaint(sys.version_info[:3], pyside)


def run_command(arguments: list[str]) -> int:
    """Run a command; a fault of the program is told apart from the command's own exit codes."""
    try:
        from gardencanvas.cli import run

        return run(arguments)
    except Exception:  # noqa: BLE001 - shown whole, and turned into its own exit code
        traceback.print_exc()
        return PROGRAM_FAULT


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the program; its exit code.

    Parameters
    ----------
    arguments : sequence of str, optional
        Without the program's name; sys.argv by default.
    """
    given = list(sys.argv[1:] if arguments is None else arguments)
    if sys.stderr is not None and not faulthandler.is_enabled():  # no stderr under pythonw
        faulthandler.enable()
    first = given[0] if given else ""
    if first in ("--version", "-V"):
        print(f"Garden Canvas {__version__}")
        return 0
    if first in ("--help", "-h"):
        print(USAGE.format(commands=", ".join(sorted(COMMANDS))), end="")
        return 0
    if first in QT_FREE_COMMANDS:
        return run_command(given)
    if complaint := drawing_complaint():
        print(complaint, file=sys.stderr)
        return BAD_ARGUMENTS
    if first in DRAWING_COMMANDS:
        return run_command(given)
    if first and not first.startswith("-") and not Path(first).suffix and not Path(first).exists():
        print(f"There is no command and no file named {first!r}: see gardencanvas --help.", file=sys.stderr)
        return BAD_ARGUMENTS
    gc.disable()  # nothing to collect while all is being made: a tenth of the start; run_window enables it
    from gardencanvas.app.start import run_window

    return run_window(given)


if __name__ == "__main__":
    sys.exit(main())
