"""The commands that need no window: check, picture, demo. Exit codes are in the help of each."""

import argparse
import json
import sys
from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import Any, NoReturn

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.files import CannotWrite, FileRefused, open_garden, write_whole
from gardencanvas.fit import check
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.resources_folder import resources
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import Measure, counted, day, plants_of, span
from gardencanvas.words.remedies import remedy_text

OK, CLASH, UNREADABLE = 0, 1, 2


class _Arguments(argparse.ArgumentParser):
    """Bad arguments end with exit code 2 and one sentence."""

    def error(self, message: str) -> NoReturn:
        self.exit(UNREADABLE, f"{self.prog}: {message}. See {self.prog} --help.\n")


def run(argv: Sequence[str]) -> int:
    """Run one command; returns the exit code."""
    arguments = _parser().parse_args(argv)
    command: Callable[[argparse.Namespace], int] = arguments.command
    try:
        return command(arguments)
    except (FileRefused, CannotWrite) as error:
        print(f"gardencanvas: {error}", file=sys.stderr)
        return UNREADABLE


def _parser() -> argparse.ArgumentParser:
    parser = _Arguments(prog="gardencanvas", description="Garden Canvas without a window.")
    commands = parser.add_subparsers(required=True, metavar="COMMAND")

    one = commands.add_parser("check", help="findings and verdicts; exit 0 no clash, 1 clash, 2 unreadable")
    one.add_argument("file", type=Path)
    one.add_argument("--layout", help="id or name; the first where none is named")
    one.add_argument("--json", action="store_true", help="the whole report as JSON")
    one.set_defaults(command=_check)

    one = commands.add_parser("picture", help="the plan on a date as PNG or SVG")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .png or .svg")
    one.add_argument("--on", type=_date, help="such as 2027-07-01; else the middle of the season")
    one.add_argument("--layout", help="id or name")
    one.add_argument("--dpi", type=_dpi, default=150)
    one.set_defaults(command=_picture)

    one = commands.add_parser("bedmap", help="the bed map as PDF, true to scale")
    one.add_argument("file", type=Path)
    one.add_argument("out", type=Path, help="ends in .pdf")
    one.add_argument("--layout", help="id or name")
    one.add_argument("--paper", choices=("a4", "a3", "letter", "tabloid"), default="a4")
    one.add_argument("--scale", type=_scale, help="20 for 1:20; the largest that fits where none is given")
    one.add_argument("--on", type=_date, help="date of the plants shown")
    one.set_defaults(command=_bedmap)

    one = commands.add_parser("demo", help="write the demo garden")
    one.add_argument("out", type=Path, help="ends in .gardencanvas")
    one.set_defaults(command=_demo)

    one = commands.add_parser("crops", help="check crop files of your own; exit 0 sound, 1 complaints")
    one.add_argument("files", type=Path, nargs="+")
    one.set_defaults(command=_crops)
    return parser


def _date(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError as error:
        raise argparse.ArgumentTypeError(f"{text!r} is not a date such as 2027-07-01") from error


def _dpi(text: str) -> int:
    if not text.isdigit() or not 36 <= int(text) <= 1200:
        raise argparse.ArgumentTypeError(f"{text!r} is not a whole number from 36 to 1200")
    return int(text)


def _scale(text: str) -> int:
    number = text.removeprefix("1:")
    if not number.isdigit() or not 5 <= int(number) <= 1000:
        raise argparse.ArgumentTypeError(f"{text!r} is not a scale from 5 to 1000")
    return int(number)


def _chosen(garden: Garden, name: str | None) -> Layout:
    try:
        return garden.layout(name)
    except KeyError as error:
        known = ", ".join(repr(x.name) for x in garden.layouts)
        raise FileRefused(f"There is no layout {name!r} in it; it has {known}.") from error


def _check(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = _chosen(garden, arguments.layout)
    crops = catalogue().with_own(garden.crops, garden.varieties)
    report = check(garden, layout.id, crops)
    if arguments.json:
        print(json.dumps(report_as_json(report, garden, crops), indent=1, ensure_ascii=False))
    else:
        _print_report(report, garden, layout, crops)
    return CLASH if report.worst is Verdict.CLASHES else OK


def report_as_json(report: FitReport, garden: Garden, crops: Catalogue) -> dict[str, Any]:
    """The report in the form that other programs read."""
    plantings = [
        {
            "id": p.id,
            "crop": p.crop,
            "variety": p.variety,
            "plants": p.plants,
            "verdict": p.verdict.word,
            "layer": str(p.layer),
            "root_depth_m": round(p.root_depth_m, 3),
            "harvest": {"from": p.harvest_first.isoformat(), "to": p.harvest_last.isoformat()},
            "light": round(p.light, 3),
            "days_to_spare": p.days_to_spare,
        }
        for p in report.plantings.values()
    ]
    findings = [
        {
            "id": f.id,
            "kind": str(f.kind),
            "verdict": f.verdict.word,
            "plantings": list(f.plantings),
            "from": f.first.isoformat(),
            "to": f.last.isoformat(),
            "reason": reason(f, garden, report.layout, crops),
            "source": f.source,
            "remedies": [{"text": remedy_text(r, f, garden, report.layout, crops)} for r in f.remedies],
        }
        for f in report.findings
    ]
    first, last = report.season
    return {
        "layout": report.layout,
        "season": {"from": first.isoformat(), "to": last.isoformat()},
        "plantings": plantings,
        "findings": findings,
    }


def _print_report(report: FitReport, garden: Garden, layout: Layout, crops: Catalogue) -> None:
    print(f"{garden.name} — {layout.name}, {layout.year}")
    for p in report.plantings.values():
        window = f"harvest {span(p.harvest_first, p.harvest_last)}"
        print(f"  {p.verdict.word:8} {plants_of(p, crops):40} {window}")
    for f in report.findings:
        if f.verdict >= Verdict.STRAINS:
            print(f"  {f.verdict.word}: {reason(f, garden, report.layout, crops)}")
    counts = {v: sum(p.verdict is v for p in report.plantings.values()) for v in Verdict}
    print("  " + ", ".join(f"{v.word} {n}" for v, n in counts.items()))


def _picture(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = _chosen(garden, arguments.layout)
    if arguments.out.suffix.lower() not in {".png", ".svg"}:
        raise FileRefused(f"{arguments.out.name} must end in .png or .svg.")
    from gardencanvas.canvas.picture import write_picture

    on = arguments.on or layout.middle
    write_picture(garden, layout.id, arguments.out, on, dpi=arguments.dpi)
    print(f"{arguments.out} shows {layout.name} on {day(on)}.")
    return OK


def _bedmap(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = _chosen(garden, arguments.layout)
    if arguments.out.suffix.lower() != ".pdf":
        raise FileRefused(f"{arguments.out.name} must end in .pdf.")
    from gardencanvas.paper.bedmap import Plan, write_bedmap

    crops = catalogue().with_own(garden.crops, garden.varieties)
    report = check(garden, layout.id, crops)
    plan = Plan(garden, layout, report, crops, Measure(), arguments.on or layout.middle)
    pages = write_bedmap(plan, arguments.out, arguments.paper, arguments.scale)
    print(f"{arguments.out}: {counted(pages, 'page', 'pages')}.")
    return OK


def _demo(arguments: argparse.Namespace) -> int:
    write_whole(arguments.out, (resources() / "demo" / "demo.gardencanvas").read_bytes())
    print(f"The demo garden is in {arguments.out}.")
    return OK


def _crops(arguments: argparse.Namespace) -> int:
    from gardencanvas.crops.check import check_files

    complaints = check_files(arguments.files)
    for complaint in complaints:
        print(complaint)
    print(f"{len(complaints)} complaints" if complaints else "Sound.")
    return CLASH if complaints else OK
