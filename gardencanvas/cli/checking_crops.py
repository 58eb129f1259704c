"""``gardencanvas crops``: check crop files of one's own."""

import argparse
from pathlib import Path

from gardencanvas.cli.arguments import CLASH, OK


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the command to the parser."""
    one = commands.add_parser("crops", help="check crop files of your own; exit 0 sound, 1 complaints")
    one.add_argument("files", type=Path, nargs="+")
    one.set_defaults(command=_crops)


def _crops(arguments: argparse.Namespace) -> int:
    from gardencanvas.crops.check import check_files

    complaints = check_files(arguments.files)
    for complaint in complaints:
        print(complaint)
    print(f"{len(complaints)} complaints" if complaints else "Sound.")
    return CLASH if complaints else OK
