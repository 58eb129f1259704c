"""``gardencanvas check``: findings, verdicts and harvest windows of a layout."""

import argparse
import json
import sys
from dataclasses import replace
from pathlib import Path
from time import perf_counter
from typing import Any

from gardencanvas.cli.arguments import CLASH, OK, chosen_layout
from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.files import open_garden
from gardencanvas.fit.accepted import acceptance
from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import Finding, FitReport, Verdict
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import plants_of, span
from gardencanvas.words.remedies import remedy_text

_TELL_AFTER_S = 0.5


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the command to the parser."""
    one = commands.add_parser("check", help="findings and verdicts; exit 0 no clash, 1 clash, 2 unreadable")
    one.add_argument("file", type=Path)
    one.add_argument("--layout", help="id or name; the first where none is named")
    one.add_argument("--json", action="store_true", help="the whole report as JSON")
    one.add_argument(
        "--no-remedies", action="store_true", help="do not look for changes that mend what is found: quicker"
    )
    one.set_defaults(command=_check)


def _check(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    layout = chosen_layout(garden, arguments.layout)
    crops = catalogue().with_own(garden.crops, garden.varieties)
    checker = Checker(crops)
    report = checker.update(garden, layout.id)
    if not arguments.no_remedies:
        report = with_remedies(report, garden, layout, checker, crops)
    if arguments.json:
        print(json.dumps(report_as_json(report, garden, crops), indent=1, ensure_ascii=False))
    else:
        _print_report(report, garden, layout, crops)
    return CLASH if report.worst is Verdict.CLASHES else OK


def with_remedies(
    report: FitReport, garden: Garden, layout: Layout, checker: Checker, crops: Catalogue
) -> FitReport:
    """The report with what would mend each finding that strains or clashes and is not accepted."""
    from gardencanvas.planner.remedies import remedies

    begun = perf_counter()
    wanted = [f for f in report.findings if f.verdict >= Verdict.STRAINS and acceptance(f, layout) is None]
    mended: dict[str, Finding] = {}
    for number, finding in enumerate(wanted):
        if sys.stderr.isatty() and perf_counter() - begun > _TELL_AFTER_S:
            print(f"\rlooking for remedies: {number} of {len(wanted)}", end="", file=sys.stderr)
        mended[finding.id] = replace(
            finding, remedies=remedies(garden, layout.id, finding, checker, known=crops)
        )
    if sys.stderr.isatty() and perf_counter() - begun > _TELL_AFTER_S:
        print(file=sys.stderr)
    return replace(report, findings=tuple(mended.get(f.id, f) for f in report.findings))


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
    first, last = report.season
    return {
        "layout": report.layout,
        "season": {"from": first.isoformat(), "to": last.isoformat()},
        "plantings": plantings,
        "findings": [_finding_as_json(f, report, garden, crops) for f in report.findings],
    }


def _finding_as_json(f: Finding, report: FitReport, garden: Garden, crops: Catalogue) -> dict[str, Any]:
    """One finding; ``accepted`` holds the grower's note where it was accepted, and is absent otherwise."""
    known = acceptance(f, garden.layout(report.layout))
    return {
        "id": f.id,
        "kind": str(f.kind),
        "verdict": f.verdict.word,
        "plantings": list(f.plantings),
        "from": f.first.isoformat(),
        "to": f.last.isoformat(),
        "reason": reason(f, garden, report.layout, crops),
        "source": f.source,
        "remedies": [{"text": remedy_text(r, f, garden, report.layout, crops)} for r in f.remedies],
        **({"accepted": known.note} if known is not None else {}),
    }


def _print_report(report: FitReport, garden: Garden, layout: Layout, crops: Catalogue) -> None:
    print(f"{garden.name} — {layout.name}, {layout.year}")
    for p in report.plantings.values():
        window = f"harvest {span(p.harvest_first, p.harvest_last)}"
        print(f"  {p.verdict.word:8} {plants_of(p, crops):40} {window}")
    for f in report.findings:
        if f.verdict >= Verdict.STRAINS:
            known = acceptance(f, layout)
            lived = f" (lived with: {known.note})" if known is not None else ""
            print(f"  {f.verdict.word}: {reason(f, garden, report.layout, crops)}{lived}")
            for remedy in f.remedies:
                print(f"      {remedy_text(remedy, f, garden, report.layout, crops)}")
    counts = {v: sum(p.verdict is v for p in report.plantings.values()) for v in Verdict}
    print("  " + ", ".join(f"{v.word} {n}" for v, n in counts.items()))
