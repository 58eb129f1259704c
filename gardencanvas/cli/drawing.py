"""``gardencanvas picture`` and ``gardencanvas bedmap``: what is drawn with Qt, without a window."""

import argparse
from collections.abc import Sequence
from pathlib import Path

from gardencanvas.cli.arguments import OK, a_date, a_dpi, a_scale, chosen_layout
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import FileRefused, open_garden
from gardencanvas.fit import check
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Layout
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
    one.add_argument("--portrait", action="store_true", help="upright; else it lies")
    one.add_argument("--beds", nargs="+", metavar="BED", help="ids or names of the beds wanted; else all")
    one.add_argument(
        "--on", type=a_date, nargs="+", metavar="DATE", help="days to show each bed on; else all of the year"
    )
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
    from gardencanvas.paper.bedmap import Options, Plan, write_bedmap

    crops = catalogue().with_own(garden.crops, garden.varieties)
    report = check(garden, layout.id, crops)
    stages = tuple(arguments.on or ())
    plan = Plan(garden, layout, report, crops, Measure(), stages[0] if stages else layout.middle)
    beds = _beds(layout, arguments.beds)
    options = Options(arguments.scale, beds or None, stages, overview=not beds)
    try:
        pages = write_bedmap(
            plan, arguments.out, arguments.paper, landscape=not arguments.portrait, options=options
        )
    except Refusal as refusal:
        raise FileRefused(str(refusal)) from refusal
    print(f"{arguments.out}: {counted(pages, 'page', 'pages')}.")
    return OK


def _beds(layout: Layout, wanted: Sequence[str] | None) -> tuple[str, ...]:
    """Ids of the beds named by id or name."""
    known = {name: bed.id for bed in layout.beds for name in (bed.name, bed.id)}
    for name in wanted or ():
        if name not in known:
            beds = ", ".join(repr(bed.name) for bed in layout.beds)
            raise FileRefused(f"There is no bed {name!r} in this layout; it has {beds or 'none'}.")
    return tuple(known[name] for name in wanted or ())
