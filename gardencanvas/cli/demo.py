"""``gardencanvas demo``: write the demo garden."""

import argparse
from pathlib import Path

from gardencanvas.cli.arguments import OK
from gardencanvas.files import write_whole
from gardencanvas.resources_folder import resources


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the command to the parser."""
    one = commands.add_parser("demo", help="write the demo garden")
    one.add_argument("out", type=Path, help="ends in .gardencanvas")
    one.set_defaults(command=_demo)


def _demo(arguments: argparse.Namespace) -> int:
    write_whole(arguments.out, (resources() / "demo" / "demo.gardencanvas").read_bytes())
    print(f"The demo garden is in {arguments.out}.")
    return OK
