"""The measures of a bed, of a whole layout and of a crop, put together from what was reckoned."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.mixing import effective_kinds
from gardencanvas.measures.codes import Code
from gardencanvas.measures.estimates import UNKNOWN, Estimate
from gardencanvas.measures.measured import Part
from gardencanvas.measures.reckoned.ground import GroundUse
from gardencanvas.measures.reckoned.water import SPREAD, Water
from gardencanvas.measures.yields.bed_ratios import (
    AreaTime,
    Ratio,
    area_time,
    area_time_ratio,
    land_equivalent,
    ler_estimate,
    mean_ratio,
    own_spans,
    time_together,
)
from gardencanvas.measures.yields.bed_yields import BedYield
from gardencanvas.measures.yields.draws import COUNT, estimate, factor
from gardencanvas.measures.yields.harvests import CropHarvest, Rhythm, rhythm

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class Reckoned:
    """All that is reckoned of some beds: one, or all of a layout.

    ``area_m2`` counts beds without plantings too. ``water`` is by week of the season, None where it is not
    known.
    """

    area_m2: float
    ground: Sequence[GroundUse]
    yields: Sequence[BedYield]
    harvests: Mapping[str, CropHarvest]
    water: Water | None
    days: float  # of the season
    counted: Mapping[Code, Estimate] = field(default_factory=dict)


class _Values:
    """Collects measures with their draws."""

    def __init__(self) -> None:
        self.values: dict[Code, Estimate] = {}
        self.apart: dict[Code, Estimate] = {}
        self.draws: dict[Code, Floats] = {}

    def put(self, code: Code, value: float, draws: Floats) -> None:
        self.values[code] = estimate(value, draws)
        self.draws[code] = draws

    def ratio(self, code: Code, ratio: Ratio | None, shown: Estimate) -> None:
        self.values[code] = shown
        if ratio is not None:
            self.draws[code] = ratio.draws
            self.apart[code] = Estimate(ratio.apart)

    def part(self) -> Part:
        return Part(self.values, self.apart, self.draws)


def part_of(all_of: Reckoned) -> Part:
    """The measures of some beds."""
    found = _Values()
    _ground(found, all_of)
    _ratios(found, all_of.yields)
    _harvest(found, all_of.harvests)
    _rhythm(found, rhythm(all_of.harvests))
    _mixing(found, all_of.yields)
    if all_of.water is not None:
        _water(found, all_of.water)
    found.values.update(all_of.counted)
    return found.part()


def _water(found: _Values, water: Water) -> None:
    drawn = factor(*SPREAD, "water")
    for code, mine, theirs in (
        (Code.WATER, float(water.litres.sum()), float(water.apart.sum())),
        (Code.WATER_PEAK, float(water.litres.max(initial=0.0)), float(water.apart.max(initial=0.0))),
    ):
        found.put(code, mine, mine * drawn)
        found.apart[code] = estimate(theirs, theirs * drawn)


def crop_part(harvest: CropHarvest) -> Part:
    """The measures of one crop."""
    found = _Values()
    found.put(Code.RELATIVE_YIELD, harvest.relative, harvest.relative_draws)
    if harvest.kg is not None and harvest.alone_kg is not None and harvest.apart_kg is not None:
        found.put(Code.HARVEST, harvest.kg, harvest.kg_draws)
        found.put(Code.ALONE, harvest.alone_kg, harvest.alone_draws)
        found.apart[Code.HARVEST] = _scaled(found.values[Code.ALONE], harvest.alone_kg, harvest.apart_kg)
        found.apart[Code.ALONE] = found.values[Code.ALONE]
    if harvest.pieces is not None:
        found.values[Code.HARVEST_PIECES] = Estimate(*harvest.pieces)
    return found.part()


def _scaled(alone: Estimate, alone_kg: float, kg: float) -> Estimate:
    """A sole crop's yield on less ground."""
    share = kg / alone_kg if alone_kg > 0.0 else 0.0
    return Estimate(kg, (alone.low or 0.0) * share, (alone.high or 0.0) * share)


def _ground(found: _Values, all_of: Reckoned) -> None:
    used = sum(g.ground_days for g in all_of.ground)
    found.values[Code.GROUND_DAYS] = Estimate(used)
    found.values[Code.GROUND_SHARE] = Estimate(used / (all_of.area_m2 * all_of.days))
    if used > 0.0:
        found.values[Code.HUNGRY] = Estimate(sum(g.hungry for g in all_of.ground) / used)
        found.values[Code.FIXING] = Estimate(sum(g.fixing for g in all_of.ground) / used)
    light = sum(g.light * g.area_m2 for g in all_of.ground)
    found.values[Code.LIGHT] = Estimate(light / all_of.area_m2)
    grown = [g for g in all_of.ground if g.grown.any()]
    if all_of.ground:
        apart = [(g.area_m2, g.apart) for g in all_of.ground]
        days = sum(x.ground_days for _, x in apart)
        found.apart[Code.GROUND_DAYS] = Estimate(days)
        found.apart[Code.GROUND_SHARE] = Estimate(days / (all_of.area_m2 * all_of.days))
        found.apart[Code.LIGHT] = Estimate(sum(a * x.light for a, x in apart) / all_of.area_m2)
    if grown:
        under = sum(g.area_m2 * g.apart.shaded for g in grown)
        found.apart[Code.SHADED] = Estimate(under / sum(g.area_m2 for g in grown))
        shaded = sum(g.area_m2 * float(g.shaded[g.grown].mean()) for g in grown)
        found.values[Code.SHADED] = Estimate(shaded / sum(g.area_m2 for g in grown))


def _ratios(found: _Values, yields: Sequence[BedYield]) -> None:
    lers = [(y.bedful.area_m2, r) for y in yields if (r := land_equivalent(y)) is not None]
    ratio = mean_ratio(lers)
    found.ratio(Code.LER, ratio, ler_estimate(ratio))
    times = area_times(yields)
    time = area_time_ratio(times, own_spans(times))
    found.ratio(Code.ATER, time, UNKNOWN if time is None else time.estimated())
    together = [(y.bedful.area_m2, e.value) for y in yields if (e := time_together(y)).value is not None]
    if together:
        whole = sum(a for a, _ in together)
        found.values[Code.OVERLAP] = Estimate(sum(a * v for a, v in together) / whole)


def area_times(yields: Iterable[BedYield]) -> dict[str, AreaTime]:
    """What the area-time equivalency ratios of beds are made of, by the bed's id."""
    return {y.bedful.bed.id: t for y in yields if (t := area_time(y)) is not None}


def _harvest(found: _Values, harvests: Mapping[str, CropHarvest]) -> None:
    known = [h for h in harvests.values() if h.kg is not None]
    if not known:
        return
    found.put(Code.HARVEST, sum(h.kg or 0.0 for h in known), np.sum([h.kg_draws for h in known], axis=0))
    apart = sum(h.apart_kg or 0.0 for h in known)
    parts = [h.alone_draws * ((h.apart_kg or 0.0) / h.alone_kg) for h in known if h.alone_kg]
    drawn = np.sum([np.zeros(COUNT), *parts], axis=0)
    found.apart[Code.HARVEST] = estimate(apart, drawn)


def _rhythm(found: _Values, weeks: Rhythm) -> None:
    found.values[Code.HARVEST_WEEKS] = Estimate(float(weeks.harvest))
    if weeks.harvest:
        found.values[Code.GAP_WEEKS] = Estimate(float(weeks.gaps))
    if weeks.gluts is not None:
        found.values[Code.GLUT_WEEKS] = Estimate(float(weeks.gluts))


def _mixing(found: _Values, yields: Sequence[BedYield]) -> None:
    """Families of all beds together; who stands beside whom bed by bed, by their neighbours."""
    indices = [(m.neighbours, m.index) for m in (y.mixed for y in yields) if m.index is not None]
    if indices:
        pairs = sum(n for n, _ in indices)
        found.values[Code.MIXING] = Estimate(sum(n * i for n, i in indices) / pairs)
    ground: dict[str, float] = {}
    for y in yields:
        for stand, need in zip(y.bedful.stands, y.bedful.need_m2, strict=True):
            ground[stand.crop.family] = ground.get(stand.crop.family, 0.0) + float(need)
    shares = np.array(list(ground.values()))
    if shares.sum() > 0.0:
        found.values[Code.KINDS] = Estimate(effective_kinds(shares / shares.sum()))
