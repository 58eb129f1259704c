"""``gardencanvas picture`` and ``gardencanvas bedmap``: what is drawn with Qt, without a window."""

import argparse
from pathlib import Path

from gardencanvas.cli.arguments import OK, a_date, a_dpi, a_scale, chosen_layout
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import FileRefused, open_garden
from gardencanvas.fit import check
from gardencanvas.words.plain import Measure, counted, day


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the commands to the parser."""
    one = commands.add_parser("picture", help="the plan on a date as PNG or SVG")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .png or .svg")
    one.add_argument("--on", type=a_date, help="such as 2027-07-01; else the middle of the season")
    one.add_argument("--layout", help="id or name")
    one.add_argument("--dpi", type=a_dpi, default=150)
    one.set_defaults(command=_picture)

    one = commands.add_parser("bedmap", help="the bed map as PDF, true to scale")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .pdf")
    one.add_argument("--layout", help="id or name")
    one.add_argument("--paper", choices=("a4", "a3", "letter", "tabloid"), default="a4")
    one.add_argument("--scale", type=a_scale, help="20 for 1:20; the largest that fits where none is given")
    one.add_argument("--on", type=a_date, help="date of the plants shown")
    one.set_defaults(command=_bedmap)


def _picture(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    if arguments.out.suffix.lower() not in {".png", ".svg"}:
        raise FileRefused(f"{arguments.out.name} must end in .png or .svg.")
    from gardencanvas.canvas.picture import write_picture

    on = arguments.on or layout.middle
    write_picture(garden, layout.id, arguments.out, on, dpi=arguments.dpi)
    print(f"{arguments.out} shows {layout.name} on {day(on)}.")
    return OK


def _bedmap(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    if arguments.out.suffix.lower() != ".pdf":
        raise FileRefused(f"{arguments.out.name} must end in .pdf.")
    from gardencanvas.paper.bedmap import Plan, write_bedmap

    crops = catalogue().with_own(garden.crops, garden.varieties)
    report = check(garden, layout.id, crops)
    plan = Plan(garden, layout, report, crops, Measure(), arguments.on or layout.middle)
    pages = write_bedmap(plan, arguments.out, arguments.paper, arguments.scale)
    print(f"{arguments.out}: {counted(pages, 'page', 'pages')}.")
    return OK
