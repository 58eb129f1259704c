"""What the planting table says of each planting: cells, where it lies, what to watch."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import timedelta

from gardencanvas.crops.model import Crop
from gardencanvas.fit.report import Finding, Verdict
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.lengths import taped
from gardencanvas.paper.bedmap.placing import placed
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.words import named
from gardencanvas.words.crop_facts import hazard_words
from gardencanvas.words.findings import reason
from gardencanvas.words.language import say
from gardencanvas.words.plain import THIN, Measure, crop_name, name_of, planting_name, short_day, variety_name

_NOTE_LETTERS = 240
_REASONS = 2
SOW, PLANT_OUT = 5, 6  # columns whose dates get a box to tick


@dataclass(frozen=True, slots=True)
class Row:
    """One planting of the table: its mark, its cells, and lines of words below them."""

    mark: int
    cells: tuple[str, ...]
    below: tuple[str, ...]


def rows_of(plan: Plan, bed: Bed, numbered: Sequence[tuple[int, Planting]]) -> tuple[Row, ...]:
    """The rows of the table."""
    return tuple(
        Row(
            plan.marks[planting.id], tuple(_cells(plan, number, planting)), tuple(_below(plan, bed, planting))
        )
        for number, planting in numbered
    )


def _cells(plan: Plan, number: int, planting: Planting) -> Iterator[str]:
    crop = plan.catalogue.resolve(planting.crop, planting.variety)
    fit = plan.report.plantings[planting.id]
    start = planting.start
    yield str(number)
    yield planting_name(plan.catalogue, planting)
    clumps = f" ({pattern_count(planting)})" if planting.per_station > 1 else ""
    yield f"{planting.plants}{clumps}"
    yield _spacing(plan.measure, planting)
    sown = start.kind == "sown"
    depth = crop.sowing_depth_m
    yield _small(plan.measure, depth.mid) if sown and depth is not None else "–"
    yield _sow(planting, crop)
    yield short_day(start.on) if start.kind in ("raised", "set") else "–"
    yield f"{short_day(fit.harvest_first)} – {short_day(fit.harvest_last)}"
    yield named.verdict(fit.verdict)
    yield ", ".join(_shares(plan, planting)) or "–"


def pattern_count(planting: Planting) -> str:
    """Clumps and seedlings in each: ``15 × 3``."""
    return f"{planting.pattern.count} × {planting.per_station}"


def _small(measure: Measure, metres: float) -> str:
    """A spacing or depth; inches to the quarter, as rulers show them."""
    return taped(measure, metres) if measure.units == "imperial" else measure.small(metres)


def _spacing(measure: Measure, planting: Planting) -> str:
    """Plants in the row and, where there are several, between rows: ``12 × 30 cm``."""
    pattern = planting.pattern
    along = _small(measure, pattern.spacing_m)
    if pattern.kind == "rows" and pattern.rows > 1:
        across = _small(measure, pattern.row_spacing_m)
    elif pattern.kind == "strip":
        across = _small(measure, pattern.across_m)
    else:
        return along
    number, _, unit = along.partition(THIN)
    if unit and across.endswith(THIN + unit):
        return f"{number} × {across}"
    return f"{along} × {across}"


def _sow(planting: Planting, crop: Crop) -> str:
    start = planting.start
    if start.kind == "sown":
        return short_day(start.on)
    if start.kind == "volunteer":
        return say("came up")
    if start.kind != "raised":
        return "–"
    if start.sown_on is not None:
        return short_day(start.sown_on)
    if crop.nursery_d is None:
        return say("not known")
    return short_day(start.on - timedelta(days=round(crop.nursery_d.mid)))


def _shares(plan: Plan, planting: Planting) -> list[str]:
    """The crops it shares ground with, each once."""
    names: dict[str, None] = {}
    for finding in plan.report.of(planting.id):
        if finding.verdict is Verdict.SHARES:
            for other in finding.plantings:
                item = plan.layout.by_id.get(other)
                if other != planting.id and isinstance(item, Planting):
                    names[crop_name(plan.catalogue, item.crop)] = None
    return list(names)


def _below(plan: Plan, bed: Bed, planting: Planting) -> Iterator[str]:
    """Where it lies; which varieties; what to watch; the grower's note."""
    yield placed(bed, planting, plan.measure, plan.garden.site.bearing_deg)
    if len(planting.varieties) > 1:
        yield _varieties(plan, planting)
    watch = _watch(plan, planting)
    if watch:
        yield say("Watch: {watch}", watch=watch)
    if planting.note.strip():
        note = " ".join(planting.note.split())
        short = note if len(note) <= _NOTE_LETTERS else note[: _NOTE_LETTERS - 1] + "…"
        yield say("Note: {note}", note=short)


def _varieties(plan: Plan, planting: Planting) -> str:
    known = {v.id: variety_name(v) for v in plan.catalogue.varieties_of(planting.crop)}
    names = [known.get(v, v) for v in planting.varieties]
    if planting.shares:
        mixed = ", ".join(f"{share} {name}" for share, name in zip(planting.shares, names, strict=True))
        return say("Varieties, evenly mixed: {varieties}.", varieties=mixed)
    return say("Varieties, one after the other: {varieties}.", varieties=", ".join(names))


def _watch(plan: Plan, planting: Planting) -> str:
    """What is wrong with it, worst first, in at most two findings."""
    found: list[Finding] = [
        f
        for f in plan.report.of(planting.id)
        if f.verdict >= Verdict.STRAINS and f.plantings[0] == planting.id
    ]
    said = [reason(f, plan.garden, plan.layout.id, plan.catalogue, plan.measure) for f in found[:_REASONS]]
    if len(found) > _REASONS:
        said.append(say("And {n} more.", n=len(found) - _REASONS))
    return " ".join(said)


def cautions(plan: Plan, plantings: Sequence[Planting]) -> str:
    """The usual cautions for what grows in a bed; each crop once. Empty where there are none."""
    said: dict[str, list[str]] = {}
    for planting in plantings:
        crop = plan.catalogue.resolve(planting.crop, planting.variety)
        told = " ".join(hazard_words(h) for h in crop.hazards if h.severity != "low")
        if told and name_of(crop) not in said.setdefault(told, []):
            said[told].append(name_of(crop))
    if not said:
        return ""
    each = [f"{', '.join(names)}: {told}" for told, names in said.items()]
    told_of = "  ".join(each)
    return say("Caution. {hazards} Follow local rules and qualified advice.", hazards=told_of)
