"""Sentences about gaps, and about what else fits there."""

from datetime import date

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Pattern, Rows, Spots
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.gaps.answers import Effect, Miss, Part, Proposal, Why
from gardencanvas.planner.gaps.open_ground import Gap
from gardencanvas.planner.gaps.planting import plant
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import THIN, Measure, counted, crop_name, day, percent, planting_name, span

_POUNDS = 2.20462262  # in a kilogram (exact definition of the pound, rounded)

PARTS = {
    Part.HARVEST_RATE: "harvest for its ground and days",
    Part.HARVEST: "harvest in all",
    Part.SOON: "soon harvested",
    Part.SPARE: "days to spare",
    Part.UNSTRAINED: "nothing strains",
}


def unused_words(share: float | None) -> str:
    """The year's unused ground in one sentence."""
    if share is None:
        return "There is no bed in this layout."
    return f"{percent(share)} of the beds’ ground, over the whole year, is covered by no plant."


def gap_words(gap: Gap, layout: Layout, known: Catalogue, measure: Measure) -> str:
    """A gap in one line: area, neighbours, time, light."""
    names = dict.fromkeys(_name(layout, i, known) for i in gap.beside)
    beside = f" beside {_joined(list(names)[:2])}" if names else ""
    parts = [f"{measure.area(gap.area_m2)}{beside}", f"free {span(gap.first, gap.last)}"]
    parts.append(f"{percent(gap.light)} light")
    if gap.height_m is not None:
        parts.append(f"{measure.small(gap.height_m)} high at most")
    if gap.root_m is not None:
        parts.append(f"{measure.small(gap.root_m)} of soil")
    return ", ".join(parts)


def title(proposal: Proposal, known: Catalogue) -> str:
    """Number and name: ``12 × Lettuce “small heart”``."""
    return f"{proposal.plants} × {crop_name(known, proposal.crop, proposal.variety)}"


def start_words(proposal: Proposal, since: date | None = None) -> str:
    """How and when it is started; ``since`` is the day from which one can do something."""
    start, sow = proposal.planting.start, proposal.sow_on
    if start.kind == "sown":
        return f"sow on {day(start.on)}"
    if start.kind == "set":
        return f"set on {day(start.on)}"
    if sow < start.on and (since is None or sow >= since):
        return f"sow under glass on {day(sow)}, plant out on {day(start.on)}"
    if sow < start.on:
        return f"plant out on {day(start.on)}, from plants sown by {day(sow)}"
    return f"plant out on {day(start.on)}"


def pattern_words(pattern: Pattern, measure: Measure) -> str:
    """A pattern with its spacing."""
    if isinstance(pattern, Rows):
        across = f", rows {measure.small(pattern.row_spacing_m)} apart" if pattern.rows > 1 else ""
        rows = counted(pattern.rows, "row", "rows")
        return f"{rows}, every {measure.small(pattern.spacing_m)}{across}"
    if isinstance(pattern, Block):
        how = "staggered block" if pattern.staggered else "block"
        return f"{how}, {measure.small(pattern.spacing_m)} apart each way"
    if isinstance(pattern, Spots) and pattern.count == 1:
        return "a single plant"
    return f"loose plants, {measure.small(pattern.spacing_m)} apart"


def harvest_words(proposal: Proposal, measure: Measure) -> str:
    """When and how much."""
    if proposal.harvest_kg is None:
        if proposal.harvest_first == proposal.harvest_last:
            return f"stands until {day(proposal.harvest_last)}; no harvest is counted this season"
        return f"harvest {span(proposal.harvest_first, proposal.harvest_last)}; no weight is on record"
    weight = weight_words(proposal.harvest_kg, measure)
    return f"harvest {span(proposal.harvest_first, proposal.harvest_last)}, about {weight}"


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
            parts.append(f"{_spare(proposal.spare_late_d)} in a late year (one in ten)")
    else:
        parts.append("nothing waits for its ground")
    if proposal.ripens is not None and proposal.ripens < 0.995:
        parts.append(f"ripens in {round(10 * proposal.ripens)} of 10 years")
    elif proposal.harvest_late is not None:
        parts.append(f"over by {day(proposal.harvest_late)} in nine years of ten")
    return ", ".join(parts)


def _spare(days: int) -> str:
    """Days to spare, or by how many it is late."""
    return f"{counted(-days, 'day', 'days')} late" if days < 0 else f"{counted(days, 'day', 'days')} to spare"


def why_words(proposal: Proposal, measure: Measure) -> str:
    """Why it ranks where it does: its parts, in numbers."""
    parts = []
    if proposal.harvest_kg is not None:
        rate = 1000.0 * proposal.harvest_kg[1] / max(proposal.ground_m2 * proposal.days, 1e-9)
        parts.append(f"{rate:.0f}{THIN}g a m² and day")
    parts.append(f"{proposal.days} days on {measure.area(proposal.ground_m2)}")
    parts.append(f"{percent(proposal.light)} light")
    best = [PARTS[p] for p, v in proposal.parts.items() if v >= 0.995 and p is not Part.UNSTRAINED]
    if best:
        parts.append(f"full marks for {_joined(best[:2])}")
    return f"Ranks by {', '.join(parts)}."


def family_words(proposal: Proposal) -> str:
    """Whether its family was here in earlier years; empty where it was not."""
    if proposal.family_last is None:
        return ""
    return f"Its family last grew here in {proposal.family_last}."


def effect_words(
    effect: Effect, layout: Layout, known: Catalogue, after: Garden, measure: Measure
) -> tuple[str, ...]:
    """What it does to one neighbour, named and with numbers."""
    name = _name(layout, effect.planting, known)
    lines = []
    if abs(effect.light_after - effect.light_before) >= 0.005:
        was, now = percent(effect.light_before), percent(effect.light_after)
        lines.append(f"{name}: light {was} → {now}.")
    if effect.after is not effect.before:
        lines.append(f"{name}: {effect.before.word} → {effect.after.word}.")
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
    bed = layout.by_id.get(proposal.bed)
    where = f" in {bed.name}" if isinstance(bed, Bed) else ""
    verdict = f" ({proposal.verdict.word})" if proposal.verdict >= Verdict.STRAINS else ""
    lines = [f"{title(proposal, known)}{where}{verdict}", start_words(proposal, since)]
    return "\n".join([*lines, harvest_words(proposal, measure)])


def line(proposal: Proposal, layout: Layout, known: Catalogue, measure: Measure) -> str:
    """A proposal in one line, for lists and screen readers."""
    bed = layout.by_id.get(proposal.bed)
    where = f" in {bed.name}" if isinstance(bed, Bed) else ""
    verdict = f" ({proposal.verdict.word})" if proposal.verdict >= Verdict.STRAINS else ""
    parts = [
        f"{title(proposal, known)}{where}{verdict}",
        start_words(proposal),
        harvest_words(proposal, measure),
        odds_words(proposal),
    ]
    return "; ".join(parts)


def miss_words(miss: Miss, layout: Layout, known: Catalogue, measure: Measure) -> str:
    """What came nearest, and what would make it possible."""
    name = crop_name(known, miss.crop, miss.variety) if miss.crop else ""
    numbers = miss.numbers
    if miss.why is Why.OUTSIDE:
        return "There is no bed. Choose a place in a bed, or draw one there first."
    if miss.why is Why.NOTHING_LEFT:
        return "No crop satisfies all that is asked for. Ask for less."
    if miss.why is Why.SEASON:
        on = numbers.get("next")
        if not isinstance(on, date):
            return f"{name}: there is no day in the year to start it here."
        return f"{name}: cannot be started now; the next good day is about {day(on)} {on.year}."
    if miss.why is Why.LIGHT:
        has, least = percent(float(str(numbers["light"]))), percent(float(str(numbers["least"])))
        return f"{name}: {has} of open-sky light reaches the place; it needs {least} at least."
    if miss.why is Why.ROOM:
        return _room_words(name, miss, layout, known, measure)
    other = str(numbers.get("other", ""))
    against = f" with {_name(layout, other, known)}" if other in layout.by_id else ""
    until = numbers.get("last")
    later = f" Possible after {day(until)}, or elsewhere." if against and isinstance(until, date) else ""
    return f"{name}: clashes{against} ({numbers['code']}).{later}"


def _room_words(name: str, miss: Miss, layout: Layout, known: Catalogue, measure: Measure) -> str:
    short = measure.small(max(float(str(miss.numbers["short_m"])), 0.001))
    by, until = miss.numbers.get("by"), miss.numbers.get("until")
    if isinstance(by, str) and by in layout.by_id and isinstance(until, date):
        other = _name(layout, by, known)
        return f"{name}: {short} of room are missing beside {other}. Possible once that is out, {day(until)}."
    wants = measure.small(float(str(miss.numbers["spacing_m"])))
    return f"{name}: {short} of room are missing; a plant wants {wants} each way. Choose a larger place."


def _figure(number: float) -> str:
    return f"{number:.1f}" if number < 9.95 else f"{number:.0f}"


def _joined(names: list[str]) -> str:
    return " and ".join(names)


def _name(layout: Layout, planting_id: str, known: Catalogue) -> str:
    item = layout.by_id.get(planting_id)
    return planting_name(known, item) if isinstance(item, Planting) else planting_id
