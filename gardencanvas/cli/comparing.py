"""``gardencanvas compare``: two layouts of a garden side by side in numbers."""

import argparse
import json
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from gardencanvas.cli.arguments import OK, UNREADABLE, chosen_layout
from gardencanvas.crops.catalogue import Catalogue, UnknownCrop, catalogue
from gardencanvas.files import open_garden, write_whole
from gardencanvas.garden.garden import Garden
from gardencanvas.measures.comparison import Comparison, compare
from gardencanvas.measures.estimates import Estimate, Measure, Series
from gardencanvas.measures.measured import Measured
from gardencanvas.words.comparing import changed, label, shown
from gardencanvas.words.comparing_csv import comparison_csv
from gardencanvas.words.plain import Measure as Units
from gardencanvas.words.plain import crop_name


def add(commands: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Add the command to the parser."""
    one = commands.add_parser("compare", help="two layouts side by side in numbers; exit 0, or 2 unreadable")
    one.add_argument("file", type=Path)
    one.add_argument("first", help="id or name of a layout")
    one.add_argument("second", help="id or name of another one")
    one.add_argument("--json", action="store_true", help="everything as JSON")
    one.add_argument("--csv", type=Path, metavar="OUT.csv", help="write the whole table, weeks included")
    one.set_defaults(command=_compare)


def _compare(arguments: argparse.Namespace) -> int:
    garden = open_garden(arguments.file)
    first, second = (chosen_layout(garden, name) for name in (arguments.first, arguments.second))
    crops = catalogue().with_own(garden.crops, garden.varieties)
    try:
        found = compare(garden, first.id, second.id)
    except UnknownCrop as error:
        print(f"gardencanvas: no crop {error.args[0]!r} is known.", file=sys.stderr)
        return UNREADABLE
    if arguments.csv is not None:
        write_whole(arguments.csv, comparison_csv(found, garden, crops).encode())
    if arguments.json:
        print(json.dumps(comparison_as_json(found), indent=1, ensure_ascii=False))
    else:
        _print_table(found, garden, crops)
        if arguments.csv is not None:
            print(f"{arguments.csv} holds the whole table.")
    return OK


def comparison_as_json(found: Comparison) -> dict[str, Any]:
    """The comparison in the form that other programs read."""
    return {
        "first": _layout(found.a),
        "second": _layout(found.b),
        "measures": [_measure(m) for m in found.measures],
        "beds": {bed: [_measure(m) for m in some] for bed, some in found.beds.items()},
        "crops": {crop: [_measure(m) for m in some] for crop, some in found.crops.items()},
    }


def _layout(measured: Measured) -> dict[str, Any]:
    first, last = measured.season
    return {
        "layout": measured.layout,
        "season": {"from": first.isoformat(), "to": last.isoformat()},
        "unknown_yields": list(measured.unknown_yields),
        "hazards": [{"crop": c.crop, "hazard": c.hazard.hazard} for c in measured.hazards],
        "weeks": [_series(s) for s in measured.series],
    }


def _series(series: Series) -> dict[str, Any]:
    told: dict[str, Any] = {
        "code": str(series.code), "unit": series.unit, "crop": series.crop,
        "from": [week.isoformat() for week in series.weeks], "values": _rounded(series.values),
    }  # fmt: skip
    if series.low:
        told |= {"low": _rounded(series.low), "high": _rounded(series.high)}
    return told


def _measure(measure: Measure) -> dict[str, Any]:
    return {
        "code": str(measure.code),
        "unit": measure.unit,
        "better": measure.better,
        "first": _estimate(measure.a),
        "second": _estimate(measure.b),
        "first_apart": _estimate(measure.apart),
        "second_apart": _estimate(measure.apart_b),
        "difference": _estimate(measure.difference),
        "exceeds_uncertainty": measure.exceeds_uncertainty,
        "winner": {"a": "first", "b": "second", None: None}[measure.winner],
    }


def _estimate(estimate: Estimate) -> dict[str, Any] | None:
    """A number with its range; null where it is not known."""
    if estimate.value is None:
        return None
    told: dict[str, Any] = {"value": round(estimate.value, 6)}
    if estimate.low is not None and estimate.high is not None:
        told |= {"low": round(estimate.low, 6), "high": round(estimate.high, 6)}
    return told | ({"doubtful": True} if estimate.doubtful else {})


def _rounded(values: Iterable[float]) -> list[float]:
    return [round(v, 6) for v in values]


def _print_table(found: Comparison, garden: Garden, crops: Catalogue) -> None:
    units = Units()
    names = [garden.layout(m.layout) for m in (found.a, found.b)]
    print(f"{garden.name}: {names[0].name}, {names[0].year} | {names[1].name}, {names[1].year}")
    rows: list[tuple[str, ...]] = [
        ("", names[0].name, names[1].name, f"{names[0].name} apart", "difference", "better")
    ]
    for m in found.measures:
        numbers = [shown(e, m.unit, units) for e in (m.a, m.b, m.apart)]
        better = {"a": names[0].name, "b": names[1].name, None: ""}[m.winner]
        rows.append((label(m.code), *numbers, changed(m.difference, m.unit, units), better))
    widths = [max(len(row[k]) for row in rows) for k in range(len(rows[0]))]
    for row in rows:
        print("  " + "  ".join(cell.ljust(w) for cell, w in zip(row, widths, strict=True)).rstrip())
    for name, side in {n.id: (n, s) for n, s in zip(names, (found.a, found.b), strict=True)}.values():
        if side.unknown_yields:
            told = ", ".join(crop_name(crops, c) for c in side.unknown_yields)
            print(f"  In {name.name} no yield is known of {told}: left out of the harvest.")
