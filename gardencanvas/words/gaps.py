"""Sentences about gaps, and about what else fits there."""

from datetime import date

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Pattern, Rows, Spots
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.gaps.answers import Effect, Miss, Part, Proposal, Why
from gardencanvas.planner.gaps.open_ground import Gap
from gardencanvas.planner.gaps.planting import plant
from gardencanvas.words.findings import reason
from gardencanvas.words.language import figure, mark, say, say_many
from gardencanvas.words.named import kind, verdict
from gardencanvas.words.plain import (
    THIN,
    Measure,
    crop_name,
    day,
    day_year,
    percent,
    planting_name,
    span,
)
from gardencanvas.words.told import joined

_POUNDS = 2.20462262  # in a kilogram (exact definition of the pound, rounded)

_PARTS = {
    Part.HARVEST_RATE: mark("harvest for its ground and days"),
    Part.HARVEST: mark("harvest in all"),
    Part.SOON: mark("soon harvested"),
    Part.SPARE: mark("days to spare"),
    Part.UNSTRAINED: mark("nothing strains"),
}


def unused_words(share: float | None) -> str:
    """The year's unused ground in one sentence."""
    if share is None:
        return say("There is no bed in this layout.")
    return say(
        "{share} of the beds’ ground, over the whole year, is covered by no plant.", share=percent(share)
    )


def gap_words(gap: Gap, layout: Layout, known: Catalogue, measure: Measure) -> str:
    """A gap in one line: area, neighbours, time, light."""
    names = list(dict.fromkeys(_name(layout, i, known) for i in gap.beside))[:2]
    area = measure.area(gap.area_m2)
    parts = [say("{area} beside {plantings}", area=area, plantings=joined(names)) if names else area]
    parts.append(say("free {days}", days=span(gap.first, gap.last)))
    parts.append(say("{share} light", share=percent(gap.light)))
    if gap.height_m is not None:
        parts.append(say("{height} high at most", height=measure.small(gap.height_m)))
    if gap.root_m is not None:
        parts.append(say("{depth} of soil", depth=measure.small(gap.root_m)))
    return ", ".join(parts)


def title(proposal: Proposal, known: Catalogue) -> str:
    """Number and name: ``12 × Lettuce “small heart”``."""
    return f"{proposal.plants} × {crop_name(known, proposal.crop, proposal.variety)}"


def start_words(proposal: Proposal, since: date | None = None) -> str:
    """How and when it is started; ``since`` is the day from which one can do something."""
    start, sow = proposal.planting.start, proposal.sow_on
    if start.kind == "sown":
        return say("sow on {day}", day=day(start.on))
    if start.kind == "set":
        return say("set on {day}", day=day(start.on))
    if sow < start.on and (since is None or sow >= since):
        return say("sow under glass on {sow}, plant out on {day}", sow=day(sow), day=day(start.on))
    if sow < start.on:
        return say("plant out on {day}, from plants sown by {sow}", day=day(start.on), sow=day(sow))
    return say("plant out on {day}", day=day(start.on))


def pattern_words(pattern: Pattern, measure: Measure) -> str:
    """A pattern with its spacing."""
    if isinstance(pattern, Rows):
        return _rows_words(pattern, measure)
    spacing = measure.small(pattern.spacing_m)
    if isinstance(pattern, Block):
        if pattern.staggered:
            return say("staggered block, {spacing} apart each way", spacing=spacing)
        return say("block, {spacing} apart each way", spacing=spacing)
    if isinstance(pattern, Spots) and pattern.count == 1:
        return say("a single plant")
    return say("loose plants, {spacing} apart", spacing=spacing)


def _rows_words(pattern: Rows, measure: Measure) -> str:
    spacing = measure.small(pattern.spacing_m)
    if pattern.rows == 1:
        return say("1 row, every {spacing}", spacing=spacing)
    return say(
        "{rows} rows, every {spacing}, rows {across} apart",
        rows=pattern.rows,
        spacing=spacing,
        across=measure.small(pattern.row_spacing_m),
    )


def harvest_words(proposal: Proposal, measure: Measure) -> str:
    """When and how much."""
    days = span(proposal.harvest_first, proposal.harvest_last)
    if proposal.harvest_kg is not None:
        weight = weight_words(proposal.harvest_kg, measure)
        return say("harvest {days}, about {weight}", days=days, weight=weight)
    if proposal.harvest_first == proposal.harvest_last:
        return say("stands until {day}; no harvest is counted this season", day=days)
    return say("harvest {days}; no weight is on record", days=days)


def weight_words(kg: tuple[float, float, float], measure: Measure) -> str:
    """A weight with its range."""
    imperial = measure.units == "imperial"
    low, middle, high = (_figure(k * (_POUNDS if imperial else 1.0)) for k in kg)
    unit = "lb" if imperial else "kg"
    return f"{middle}{THIN}{unit} ({low}–{high})"


def odds_words(proposal: Proposal) -> str:
    """Days to spare and the odds of the weather."""
    parts = []
    if proposal.spare_d is not None:
        parts.append(_spare(proposal.spare_d))
        if proposal.spare_late_d is not None:
            parts.append(_spare_late(proposal.spare_late_d))
    else:
        parts.append(say("nothing waits for its ground"))
    if proposal.ripens is not None and proposal.ripens < 0.995:
        parts.append(say("ripens in {years} of 10 years", years=round(10 * proposal.ripens)))
    elif proposal.harvest_late is not None:
        parts.append(say("over by {day} in nine years of ten", day=day(proposal.harvest_late)))
    return ", ".join(parts)


def _spare(days: int) -> str:
    """Days to spare, or by how many it is late."""
    if days < 0:
        return say_many("{n} day late", "{n} days late", -days)
    return say_many("{n} day to spare", "{n} days to spare", days)


def _spare_late(days: int) -> str:
    """The same in a late year."""
    if days < 0:
        return say_many(
            "{n} day late in a late year (one in ten)", "{n} days late in a late year (one in ten)", -days
        )
    return say_many(
        "{n} day to spare in a late year (one in ten)",
        "{n} days to spare in a late year (one in ten)",
        days,
    )


def why_words(proposal: Proposal, measure: Measure) -> str:
    """Why it ranks where it does: its parts, in numbers."""
    parts = []
    if proposal.harvest_kg is not None:
        rate = 1000.0 * proposal.harvest_kg[1] / max(proposal.ground_m2 * proposal.days, 1e-9)
        parts.append(say("{grams} a m² and day", grams=f"{rate:.0f}{THIN}g"))
    area = measure.area(proposal.ground_m2)
    parts.append(say_many("{n} day on {area}", "{n} days on {area}", proposal.days, area=area))
    parts.append(say("{share} light", share=percent(proposal.light)))
    best = [say(_PARTS[p]) for p, v in proposal.parts.items() if v >= 0.995 and p is not Part.UNSTRAINED]
    if best:
        parts.append(say("full marks for {parts}", parts=joined(best[:2])))
    return say("Ranks by {parts}.", parts=", ".join(parts))


def family_words(proposal: Proposal) -> str:
    """Whether its family was here in earlier years; empty where it was not."""
    if proposal.family_last is None:
        return ""
    return say("Its family last grew here in {year}.", year=proposal.family_last)


def effect_words(
    effect: Effect, layout: Layout, known: Catalogue, after: Garden, measure: Measure
) -> tuple[str, ...]:
    """What it does to one neighbour, named and with numbers."""
    name = _name(layout, effect.planting, known)
    lines = []
    if abs(effect.light_after - effect.light_before) >= 0.005:
        was, now = percent(effect.light_before), percent(effect.light_after)
        lines.append(say("{planting}: light {before} → {after}.", planting=name, before=was, after=now))
    if effect.after is not effect.before:
        lines.append(f"{name}: {verdict(effect.before)} → {verdict(effect.after)}.")
    told = [f for f in effect.findings if f.plantings[0] == effect.planting]
    lines += [reason(f, after, layout.id, known, measure) for f in told[:2]]
    return tuple(lines)


def cost_words(
    proposal: Proposal, garden: Garden, layout: Layout, known: Catalogue, measure: Measure
) -> tuple[str, ...]:
    """What strains, in sentences; empty where nothing does."""
    if not proposal.strains:
        return ()
    after = plant(garden, layout.id, proposal)
    return tuple(reason(f, after, layout.id, known, measure) for f in proposal.strains)


def neighbour_words(
    proposal: Proposal, garden: Garden, layout: Layout, known: Catalogue, measure: Measure
) -> tuple[str, ...]:
    """What it does to each neighbour; empty where it touches none."""
    after = plant(garden, layout.id, proposal)
    told = {reason(f, after, layout.id, known, measure) for f in proposal.strains}
    lines = (line for e in proposal.effects for line in effect_words(e, layout, known, after, measure))
    return tuple(line for line in dict.fromkeys(lines) if line not in told)


def short(proposal: Proposal, layout: Layout, known: Catalogue, measure: Measure, since: date) -> str:
    """A proposal in a few short lines, for a narrow list; odds and reasons are told elsewhere."""
    lines = [_heading(proposal, layout, known), start_words(proposal, since)]
    return "\n".join([*lines, harvest_words(proposal, measure)])


def line(proposal: Proposal, layout: Layout, known: Catalogue, measure: Measure) -> str:
    """A proposal in one line, for lists and screen readers."""
    parts = [
        _heading(proposal, layout, known),
        start_words(proposal),
        harvest_words(proposal, measure),
        odds_words(proposal),
    ]
    return "; ".join(parts)


def _heading(proposal: Proposal, layout: Layout, known: Catalogue) -> str:
    """What would grow in which bed, and the verdict where it is not good."""
    said, bed = title(proposal, known), layout.by_id.get(proposal.bed)
    if isinstance(bed, Bed):
        said = say("{plants} in {bed}", plants=said, bed=bed.name)
    return f"{said} ({verdict(proposal.verdict)})" if proposal.verdict >= Verdict.STRAINS else said


def miss_words(miss: Miss, layout: Layout, known: Catalogue, measure: Measure) -> str:
    """What came nearest, and what would make it possible."""
    name = crop_name(known, miss.crop, miss.variety) if miss.crop else ""
    numbers = miss.numbers
    if miss.why is Why.OUTSIDE:
        return say("There is no bed. Choose a place in a bed, or draw one there first.")
    if miss.why is Why.NOTHING_LEFT:
        return say("No crop satisfies all that is asked for. Ask for less.")
    if miss.why is Why.SEASON:
        on = numbers.get("next")
        if not isinstance(on, date):
            return say("{crop}: there is no day in the year to start it here.", crop=name)
        return say(
            "{crop}: cannot be started now; the next good day is about {day}.", crop=name, day=day_year(on)
        )
    if miss.why is Why.LIGHT:
        return say(
            "{crop}: {share} of open-sky light reaches the place; it needs {least} at least.",
            crop=name,
            share=percent(float(str(numbers["light"]))),
            least=percent(float(str(numbers["least"]))),
        )
    if miss.why is Why.ROOM:
        return _room_words(name, miss, layout, known, measure)
    return _clash_words(name, miss, layout, known)


def _clash_words(name: str, miss: Miss, layout: Layout, known: Catalogue) -> str:
    of = kind(Kind(str(miss.numbers["kind"])))
    other, until = str(miss.numbers.get("other", "")), miss.numbers.get("last")
    if other not in layout.by_id:
        return say("{crop}: clashes ({kind}).", crop=name, kind=of)
    said = say(
        "{crop}: clashes with {other} ({kind}).", crop=name, other=_name(layout, other, known), kind=of
    )
    if not isinstance(until, date):
        return said
    return f"{said} {say('Possible after {day}, or elsewhere.', day=day(until))}"


def _room_words(name: str, miss: Miss, layout: Layout, known: Catalogue, measure: Measure) -> str:
    room = measure.small(max(float(str(miss.numbers["short_m"])), 0.001))
    by, until = miss.numbers.get("by"), miss.numbers.get("until")
    if isinstance(by, str) and by in layout.by_id and isinstance(until, date):
        return say(
            "{crop}: {room} of room are missing beside {other}. Possible once that is out, {day}.",
            crop=name,
            room=room,
            other=_name(layout, by, known),
            day=day(until),
        )
    return say(
        "{crop}: {room} of room are missing; a plant wants {wants} each way. Choose a larger place.",
        crop=name,
        room=room,
        wants=measure.small(float(str(miss.numbers["spacing_m"]))),
    )


def _figure(number: float) -> str:
    return figure(number, ".1f" if number < 9.95 else ".0f")


def _name(layout: Layout, planting_id: str, known: Catalogue) -> str:
    item = layout.by_id.get(planting_id)
    return planting_name(known, item) if isinstance(item, Planting) else planting_id
