"""``gardencanvas picture`` and ``gardencanvas bedmap``: what is drawn with Qt, without a window."""

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from gardencanvas.cli.arguments import OK, a_date, a_dpi, a_scale, chosen_layout
from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.files import FileRefused, open_garden
from gardencanvas.fit import check
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.splitting import parts_of
from gardencanvas.words.plain import Measure, counted, crop_name, day, planting_name

if TYPE_CHECKING:
    from gardencanvas.paper.document import Document, Setup

MANY_PAGES = 200  # more are hardly meant: a field at 1:10


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the commands to the parser."""
    one = commands.add_parser("picture", help="the plan, the season ribbon or both on a date, as PNG or SVG")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .png or .svg")
    one.add_argument("--on", type=a_date, help="such as 2027-07-01; else the middle of the season")
    one.add_argument("--layout", help="id or name")
    one.add_argument("--dpi", type=a_dpi, default=150)
    one.add_argument("--show", choices=("plan", "ribbon", "both"), default="plan")
    one.add_argument("--dark", action="store_true", help="the dark colours")
    _add_units(one)
    one.set_defaults(command=_picture)

    one = commands.add_parser("bedmap", help="the bed map as PDF, true to scale")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .pdf")
    one.add_argument("--layout", help="id or name")
    one.add_argument("--paper", choices=("a4", "a3", "letter", "tabloid"), default="a4")
    one.add_argument("--scale", type=_scale_or_fit, help="20 for 1:20; fit, or none: the largest that fits")
    way = one.add_mutually_exclusive_group()
    way.add_argument(
        "--landscape", action="store_true", help="the paper lies, as it does where none is asked"
    )
    way.add_argument("--portrait", action="store_true", help="the paper stands upright")
    one.add_argument("--beds", nargs="+", metavar="BED", help="ids or names of the beds wanted; else all")
    one.add_argument("--whole", action="store_true", help="the beds in one drawing over several sheets")
    one.add_argument(
        "--on", "--stages", type=a_date, nargs="+", metavar="DATE", dest="on",
        help="days to show each bed on; else all of the year",
    )  # fmt: skip
    one.add_argument("--strip", metavar="PLANTING", help="a strip true to size: a planting's id, or a crop")
    one.add_argument("--many-pages", action="store_true", help=f"write more than {MANY_PAGES} pages too")
    _add_units(one)
    one.set_defaults(command=_bedmap)


def _add_units(one: argparse.ArgumentParser) -> None:
    one.add_argument("--units", choices=("metric", "imperial"), default="metric")


def _scale_or_fit(text: str) -> int | None:
    """20 for 1:20; None for fit."""
    return None if text == "fit" else a_scale(text)


def _picture(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    if arguments.out.suffix.lower() not in {".png", ".svg"}:
        raise FileRefused(f"{arguments.out.name} must end in .png or .svg.")
    from gardencanvas.app.printing.picture import Picture, save_picture, session_for

    on = arguments.on or layout.middle
    with session_for(garden, layout.id, on) as session:
        picture = Picture(arguments.show, arguments.dpi, arguments.dark)
        save_picture(session, arguments.out, picture, Measure(arguments.units))
    print(f"{arguments.out} shows {layout.name} on {day(on)}.")
    return OK


def _bedmap(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    if arguments.out.suffix.lower() != ".pdf":
        raise FileRefused(f"{arguments.out.name} must end in .pdf.")
    from gardencanvas.paper import document as paper

    crops = catalogue().with_own(garden.crops, garden.varieties)
    setup = paper.Setup(arguments.paper, not arguments.portrait)
    try:
        if arguments.strip:
            document = _strip(layout, crops, arguments, setup)
        else:
            document = _map(garden, layout, crops, arguments, setup)
    except Refusal as refusal:
        raise FileRefused(str(refusal)) from refusal
    count = len(document.pages)
    if count > MANY_PAGES and not arguments.many_pages:
        raise FileRefused(
            f"These would be {count:,} pages: choose a smaller scale or a larger paper, or add --many-pages."
        )
    paper.write_pdf(document, arguments.out)
    print(f"{arguments.out}: {counted(count, 'page', 'pages')}.")
    return OK


def _map(
    garden: Garden, layout: Layout, crops: Catalogue, arguments: argparse.Namespace, setup: "Setup"
) -> "Document":
    from gardencanvas.paper.bedmap import Options, Plan, bed_map

    stages = tuple(sorted(set(arguments.on or ())))
    report = check(garden, layout.id, crops)
    on = stages[0] if stages else layout.middle
    plan = Plan(garden, layout, report, crops, Measure(arguments.units), on)
    beds = _beds(layout, arguments.beds)
    options = Options(arguments.scale, beds or None, stages, overview=not beds, whole=arguments.whole)
    return bed_map(plan, setup, options)


def _strip(layout: Layout, crops: Catalogue, arguments: argparse.Namespace, setup: "Setup") -> "Document":
    from gardencanvas.paper.bedmap import planting_strip

    planting = _planting(layout, crops, arguments.strip)
    title = f"Planting strip: {planting_name(crops, planting)}"
    plants = parts_of(planting.pattern, "across")
    return planting_strip(title, planting.pattern.spacing_m, plants, Measure(arguments.units), setup)


def _planting(layout: Layout, crops: Catalogue, wanted: str) -> Planting:
    """The planting of that id, or the one of that crop."""
    found = [p for p in layout.plantings if wanted == p.id]
    found = found or [
        p for p in layout.plantings if wanted.casefold() in (p.crop, crop_name(crops, p.crop).casefold())
    ]
    if not found:
        raise FileRefused(f"There is no planting {wanted!r} in this layout: give its id or its crop.")
    if len(found) > 1:
        ids = ", ".join(p.id for p in found)
        raise FileRefused(f"There are several plantings of {wanted!r}; give the id of one: {ids}.")
    return found[0]


def _beds(layout: Layout, wanted: Sequence[str] | None) -> tuple[str, ...]:
    """Ids of the beds named by id or name."""
    known = {name: bed.id for bed in layout.beds for name in (bed.name, bed.id)}
    for name in wanted or ():
        if name not in known:
            beds = ", ".join(repr(bed.name) for bed in layout.beds)
            raise FileRefused(f"There is no bed {name!r} in this layout; it has {beds or 'none'}.")
    return tuple(known[name] for name in wanted or ())
