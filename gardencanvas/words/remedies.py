"""Sentences for remedies: what exactly will change, and what it costs. One for each code of ``planner``."""

from collections.abc import Callable
from dataclasses import dataclass
from math import atan2, degrees
from typing import Any

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import Finding, Remedy
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import Measure, counted, crop_name, day, percent

SUPPORTS = {
    "cane row": ("a row of canes", "rows of canes"),
    "cane ring": ("a ring of canes", "rings of canes"),
    "net": ("a net", "nets"),
    "trellis": ("a trellis", "trellises"),
    "stake": ("a stake", "stakes"),
}

WINDS = ("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west")


@dataclass(frozen=True)
class _Change:
    """What a sentence is made of. The planting that suffers is not named: the sentence stands under it."""

    numbers: dict[str, Any]
    measure: Measure
    name: Callable[[str], str]  # of a planting or bed, by id
    variety: Callable[[str], str]  # of the changed planting's crop
    bearing_deg: float  # of the plan's top edge
    sufferer: bool

    @property
    def who(self) -> str:
        """The planting that changes, with a space after it."""
        return "" if self.sufferer else f"{self.name(self.numbers['planting'])} "

    @property
    def it(self) -> str:
        return "it" if self.sufferer else self.name(self.numbers["planting"])

    @property
    def beside(self) -> str:
        other = self.numbers["other"]
        return f" next to {self.name(other)}" if other else ""

    def wind(self) -> str:
        """The compass direction of a move, to an eighth."""
        way = atan2(self.numbers["dx_m"], -self.numbers["dy_m"])
        return WINDS[round((self.bearing_deg + degrees(way)) / 45.0) % 8]

    def fewer(self) -> str:
        number = self.numbers["fewer"]
        return f" ({counted(number, 'plant', 'plants')} fewer)" if number else ""

    def harvest(self) -> str:
        lost = self.numbers.get("harvest_lost_d")
        return f", {lost} of {self.numbers['harvest_d']} harvest days fewer" if lost else ""


def _whither(c: _Change) -> str:
    far, other = c.measure.small(c.numbers["distance_m"]), c.numbers["other"]
    toward = c.numbers["toward"]
    if toward == "away":
        return f"{far} away from {c.name(other)}"
    if toward == "into":
        return f"{far} into {c.name(other)}"
    if toward == "poleward":
        return f"to the {c.wind()} side of {c.name(other)} ({far})"
    return f"{far} {c.wind()} {toward} the bed"


def _shift(c: _Change) -> str:
    return f"Move {c.who}{_whither(c)}"


def _shift_stations(c: _Change) -> str:
    count = c.numbers["count"]
    some = counted(count, "plant", "plants")
    return f"Move {some} {_whither(c)}" if c.sufferer else f"Move {some} of {c.who}{_whither(c)}"


def _start(c: _Change) -> str:
    days = c.numbers["days"]
    when = "later" if days > 0 else "earlier"
    return f"Start {c.who}{counted(abs(days), 'day', 'days')} {when} ({day(c.numbers['on'])})" + c.harvest()


def _end(c: _Change) -> str:
    return f"Clear {c.it} by {day(c.numbers['on'])}{_young(c)}{c.harvest()}"


def _young(c: _Change) -> str:
    if "size" not in c.numbers:
        return ""
    size = percent(c.numbers["size"])
    leaves = "" if size == percent(1.0) else f", {size} of its size"
    return f", young ({counted(c.numbers['early_d'], 'day', 'days')} early{leaves})"


def _widen(c: _Change) -> str:
    between = "" if c.numbers["field"] == "spacing_m" else " between rows"
    return f"Widen {c.who}to {c.measure.small(c.numbers['spacing_m'])}{between}{c.fewer()}"


def _thin(c: _Change) -> str:
    return f"Thin {c.who}to {c.numbers['per_station']} in each clump{c.fewer()}"


def _leave_out(c: _Change) -> str:
    lines, of = c.numbers["lines"], "" if c.sufferer else f" of {c.it}"
    if c.numbers["side"] in ("first", "last"):
        return f"Leave out {counted(lines, 'row', 'rows')}{of}{c.beside}{c.fewer()}"
    return f"Make the rows{of} {counted(lines, 'plant', 'plants')} shorter{c.beside}{c.fewer()}"


def _leave_out_stations(c: _Change) -> str:
    of = "" if c.sufferer else f" of {c.it}"
    return f"Leave out {counted(c.numbers['fewer'], 'plant', 'plants')}{of}"


def _variety(c: _Change) -> str:
    instead = "" if c.sufferer else f" instead of {c.it}"
    return f"Grow {c.variety(c.numbers['variety'])}{instead}{c.harvest()}"


def _support(c: _Change) -> str:
    number = c.numbers["supports"]
    one, many = SUPPORTS[c.numbers["kind"]]
    what = one if number == 1 else f"{number} {many}"
    return f"Give {c.it} {what}, {c.measure.small(c.numbers['height_m'])} high"


REMEDIES: dict[str, Callable[[_Change], str]] = {
    "shift": _shift,
    "shift stations": _shift_stations,
    "start": _start,
    "end": _end,
    "widen": _widen,
    "thin": _thin,
    "leave out": _leave_out,
    "leave out stations": _leave_out_stations,
    "variety": _variety,
    "support": _support,
}


def remedy_text(
    remedy: Remedy, finding: Finding, garden: Garden, layout_id: str, catalogue: Catalogue,
    measure: Measure | None = None,
) -> str:  # fmt: skip
    """What a remedy will change, exactly, as it is said under its finding."""
    items = garden.layout(layout_id).by_id

    def name(item_id: str) -> str:
        item = items.get(item_id)
        if isinstance(item, Planting):
            return crop_name(catalogue, item.crop, item.variety)
        return item.name if isinstance(item, Bed) else item_id

    def variety(variety_id: str) -> str:
        planting = items.get(str(remedy.numbers["planting"]))
        crop = planting.crop if isinstance(planting, Planting) else variety_id
        return crop_name(catalogue, crop, variety_id)

    sufferer = remedy.numbers["planting"] == finding.plantings[0]
    bearing = garden.site.bearing_deg
    change = _Change(dict(remedy.numbers), measure or Measure(), name, variety, bearing, sufferer)
    said = REMEDIES[remedy.code](change)
    if remedy.also is None:
        return said
    second = remedy_text(remedy.also, finding, garden, layout_id, catalogue, measure)
    return f"{said}, and {second[0].lower()}{second[1:]}"
