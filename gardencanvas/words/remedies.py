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
from gardencanvas.words.language import mark, say, say_many
from gardencanvas.words.plain import Measure, crop_name, day, percent
from gardencanvas.words.structures import supports_counted

_WINDS = (
    mark("north"),
    mark("north-east"),
    mark("east"),
    mark("south-east"),
    mark("south"),
    mark("south-west"),
    mark("west"),
    mark("north-west"),
)


def wind(bearing_deg: float) -> str:
    """The nearest of eight winds: ``north-east`` for 45."""
    return say(_WINDS[round(bearing_deg / 45.0) % 8])


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
        """The planting that changes."""
        return self.name(self.numbers["planting"])

    def small(self, key: str) -> str:
        """One of its lengths."""
        return self.measure.small(self.numbers[key])

    def day(self) -> str:
        """The date it brings."""
        return day(self.numbers["on"])

    def wind(self) -> str:
        """The compass direction of a move, to an eighth."""
        way = atan2(self.numbers["dx_m"], -self.numbers["dy_m"])
        return wind(self.bearing_deg + degrees(way))

    def fewer(self, said: str) -> str:
        """With the number of plants it costs, if any."""
        number = self.numbers["fewer"]
        if not number:
            return said
        return say_many("{change} ({n} plant fewer)", "{change} ({n} plants fewer)", number, change=said)

    def harvest(self, said: str) -> str:
        """With the days of harvest it costs, if that is told."""
        lost = self.numbers.get("harvest_lost_d")
        if not lost:
            return said
        of = self.numbers["harvest_d"]
        return say("{change}, {lost} of {of} harvest days fewer", change=said, lost=lost, of=of)


def _whither(c: _Change) -> str:
    """How far and where to, as a phrase that is whole in itself."""
    distance, other = c.small("distance_m"), c.numbers["other"]
    match c.numbers["toward"]:
        case "away":
            return say("{distance} away from {other}", distance=distance, other=c.name(other))
        case "into":
            return say("{distance} into {other}", distance=distance, other=c.name(other))
        case "poleward":
            return say(
                "to the {wind} side of {other} ({distance})",
                wind=c.wind(),
                other=c.name(other),
                distance=distance,
            )
        case "along":
            return say("{distance} {wind} along the bed", distance=distance, wind=c.wind())
    return say("{distance} {wind} across the bed", distance=distance, wind=c.wind())


def _shift(c: _Change) -> str:
    if c.sufferer:
        return say("Move {whither}", whither=_whither(c))
    return say("Move {planting} {whither}", planting=c.who, whither=_whither(c))


def _shift_stations(c: _Change) -> str:
    count, whither = c.numbers["count"], _whither(c)
    if c.sufferer:
        return say_many("Move {n} plant {whither}", "Move {n} plants {whither}", count, whither=whither)
    return say_many(
        "Move {n} plant of {planting} {whither}",
        "Move {n} plants of {planting} {whither}",
        count,
        planting=c.who,
        whither=whither,
    )


def _start(c: _Change) -> str:
    return c.harvest(_later(c) if c.numbers["days"] > 0 else _earlier(c))


def _later(c: _Change) -> str:
    days, on = c.numbers["days"], c.day()
    if c.sufferer:
        return say_many("Start {n} day later ({day})", "Start {n} days later ({day})", days, day=on)
    return say_many(
        "Start {planting} {n} day later ({day})",
        "Start {planting} {n} days later ({day})",
        days,
        planting=c.who,
        day=on,
    )


def _earlier(c: _Change) -> str:
    days, on = -c.numbers["days"], c.day()
    if c.sufferer:
        return say_many("Start {n} day earlier ({day})", "Start {n} days earlier ({day})", days, day=on)
    return say_many(
        "Start {planting} {n} day earlier ({day})",
        "Start {planting} {n} days earlier ({day})",
        days,
        planting=c.who,
        day=on,
    )


def _end(c: _Change) -> str:
    if c.sufferer:
        said = say("Clear it by {day}", day=c.day())
    else:
        said = say("Clear {planting} by {day}", planting=c.who, day=c.day())
    return c.harvest(_young(c, said))


def _young(c: _Change, said: str) -> str:
    if "size" not in c.numbers:
        return said
    size, early = percent(c.numbers["size"]), c.numbers["early_d"]
    if size == percent(1.0):
        return say_many(
            "{change}, young ({n} day early)", "{change}, young ({n} days early)", early, change=said
        )
    return say_many(
        "{change}, young ({n} day early, {size} of its size)",
        "{change}, young ({n} days early, {size} of its size)",
        early,
        change=said,
        size=size,
    )


def _widen(c: _Change) -> str:
    spacing = c.small("spacing_m")
    in_row = c.numbers["field"] == "spacing_m"
    if in_row and c.sufferer:
        said = say("Widen to {spacing}", spacing=spacing)
    elif in_row:
        said = say("Widen {planting} to {spacing}", planting=c.who, spacing=spacing)
    elif c.sufferer:
        said = say("Widen to {spacing} between rows", spacing=spacing)
    else:
        said = say("Widen {planting} to {spacing} between rows", planting=c.who, spacing=spacing)
    return c.fewer(said)


def _thin(c: _Change) -> str:
    left = c.numbers["per_station"]
    if c.sufferer:
        return c.fewer(say("Thin to {left} in each clump", left=left))
    return c.fewer(say("Thin {planting} to {left} in each clump", planting=c.who, left=left))


def _leave_out(c: _Change) -> str:
    said = _fewer_rows(c) if c.numbers["side"] in ("first", "last") else _shorter_rows(c)
    if c.numbers["other"]:
        said = say("{change} next to {other}", change=said, other=c.name(c.numbers["other"]))
    return c.fewer(said)


def _fewer_rows(c: _Change) -> str:
    lines = c.numbers["lines"]
    if c.sufferer:
        return say_many("Leave out {n} row", "Leave out {n} rows", lines)
    return say_many(
        "Leave out {n} row of {planting}", "Leave out {n} rows of {planting}", lines, planting=c.who
    )


def _shorter_rows(c: _Change) -> str:
    plants = c.numbers["lines"]
    if c.sufferer:
        return say_many("Make the rows {n} plant shorter", "Make the rows {n} plants shorter", plants)
    return say_many(
        "Make the rows of {planting} {n} plant shorter",
        "Make the rows of {planting} {n} plants shorter",
        plants,
        planting=c.who,
    )


def _leave_out_stations(c: _Change) -> str:
    plants = c.numbers["fewer"]
    if c.sufferer:
        return say_many("Leave out {n} plant", "Leave out {n} plants", plants)
    return say_many(
        "Leave out {n} plant of {planting}", "Leave out {n} plants of {planting}", plants, planting=c.who
    )


def _variety(c: _Change) -> str:
    variety = c.variety(c.numbers["variety"])
    if c.sufferer:
        return c.harvest(say("Grow {variety}", variety=variety))
    return c.harvest(say("Grow {variety} instead of {planting}", variety=variety, planting=c.who))


def _support(c: _Change) -> str:
    supports, height = supports_counted(c.numbers["kind"], c.numbers["supports"]), c.small("height_m")
    if c.sufferer:
        return say("Give it {supports}, {height} high", supports=supports, height=height)
    return say("Give {planting} {supports}, {height} high", planting=c.who, supports=supports, height=height)


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
    return say("{first}. Also: {second}", first=said, second=second)
