"""The commands that need no window, one module each. Exit codes are in the help of each.

They speak English, whatever language the window speaks: what they print is read by scripts.
"""

import argparse
import sys
from collections.abc import Callable, Sequence

from gardencanvas.cli import check, checking_crops, comparing, demo, drawing, gap, jobs
from gardencanvas.cli.arguments import UNREADABLE, Arguments
from gardencanvas.files import CannotWrite, FileRefused

# Each adds its command to the parser and sets ``command`` to what does it.
MODULES = (check, comparing, drawing, jobs, demo, checking_crops, gap)


def run(argv: Sequence[str]) -> int:
    """Run one command; returns the exit code."""
    parser = Arguments(
        prog="gardencanvas",
        description="Garden Canvas without a window. It speaks English whatever the window speaks.",
    )
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    for module in MODULES:
        module.add(commands)
    arguments = parser.parse_args(argv)
    command: Callable[[argparse.Namespace], int] = arguments.command
    try:
        return command(arguments)
    except (FileRefused, CannotWrite) as error:
        print(f"gardencanvas: {error}", file=sys.stderr)
        return UNREADABLE
