"""Harvests of a layout: of each crop, and week by week."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.fit.stands import Stand
from gardencanvas.measures.yields.bed_yields import BedYield, sole_draws, sole_yield
from gardencanvas.measures.yields.draws import COUNT, between_years
from gardencanvas.measures.yields.years import Years
from gardencanvas.season.course import Weeks

Floats = NDArray[np.float64]

WEEKLY_DRAWS = 50  # enough for the range of one week
GLUT = 2.0  # times the mean week with a harvest (common practice)


@dataclass(frozen=True, eq=False)
class CropHarvest:
    """Harvest of one crop in some beds, kg; None where no source gives its yield.

    ``relative`` is its yield over that of the crop alone on all of these beds. ``weekly`` is its harvest in
    each week of the season, and ``weekly_draws``, shape (draws, weeks), what it may be; without a yield both
    hold shares of an unknown harvest.
    """

    crop: Crop
    kg: float | None
    kg_draws: Floats
    alone_kg: float | None
    alone_draws: Floats
    apart_kg: float | None
    relative: float
    relative_draws: Floats
    weekly: Floats
    weekly_draws: Floats
    pieces: tuple[float, float, float] | None  # in a usual year, least and most of three years


class Windows:
    """Harvest days of every stand in average, cold and warm years."""

    def __init__(self, years: Years, season: Weeks) -> None:
        self._starts = season.starts.astype(np.int64).astype(np.float64)
        self._of: dict[tuple[str, int], tuple[Floats, Floats]] = {}
        for bed in zip(*(y.beds for y in years.all), strict=True):
            for stands in zip(*(b.stands for b in bed), strict=True):
                self._of[stands[1].key] = (_days(stands, 0), _days(stands, 1))

    def weekly(self, stand: Stand) -> tuple[Floats, Floats]:
        """Share of a stand's harvest in each week: in an average year, and in drawn years (draws, weeks)."""
        first, last = self._of[stand.key]
        drawn = between_years(*np.array([first, last]).T)[:WEEKLY_DRAWS]
        return self._spread(first[1:2], last[1:2])[0], self._spread(drawn[:, 0], drawn[:, 1])

    @cached_property
    def _edges(self) -> tuple[Floats, Floats]:
        return self._starts[None, :], self._starts[None, :] + 7.0

    def _spread(self, first: Floats, last: Floats) -> Floats:
        """Even harvest from the first to the last day, shape (n, weeks)."""
        begin, end = self._edges
        until = np.maximum(last, first) + 1.0
        inside = np.minimum(end, until[:, None]) - np.maximum(begin, first[:, None])
        share: Floats = np.maximum(inside, 0.0) / (until - first)[:, None]
        return share


def _days(stands: Sequence[Stand], which: int) -> Floats:
    """First (0) or last (1) harvest day of a stand in three years, as ordinal days since 1970."""
    epoch = 719163
    some = [(s.times.harvest_first, s.times.harvest_last)[which] for s in stands]
    return np.array([d.toordinal() - epoch for d in some], dtype=np.float64)


def crop_harvests(beds: Sequence[BedYield], windows: Windows) -> dict[str, CropHarvest]:
    """Harvest of each crop that is grown for one, by the crop's id, in the order of the beds."""
    places: dict[str, list[tuple[BedYield, int]]] = {}
    for bed in beds:
        for k in np.flatnonzero(bed.cropped & bed.bedful.present.any(axis=1)):
            places.setdefault(bed.bedful.stands[k].crop.id, []).append((bed, int(k)))
    return {crop: _crop_harvest(some, windows) for crop, some in places.items()}


def _crop_harvest(places: Sequence[tuple[BedYield, int]], windows: Windows) -> CropHarvest:
    crop = places[0][0].bedful.stands[places[0][1]].crop
    area = sum({id(b): b.bedful.area_m2 for b, _ in places}.values())
    # m² of full stand that give the same harvest in the same light
    ground = np.array([b.bedful.area_m2 * b.relative[k] for b, k in places])
    drawn = np.stack([b.bedful.area_m2 * b.relative_draws[:, k] for b, k in places], axis=1)
    ripe = np.stack([b.ripe_draws[:, k] for b, k in places], axis=1)
    sky = np.array([b.sky[k] for b, k in places])
    apart = sum(float(b.bedful.area_m2 * b.apart[k] * b.sky[k]) for b, k in places)
    alone, alone_drawn = _alone(places)
    quantity = sole_yield(crop)
    mid = 1.0 if quantity is None else quantity.mid
    each = np.ones(COUNT) if quantity is None else sole_draws(crop, quantity)
    shapes = [windows.weekly(b.bedful.stands[k]) for b, k in places]
    weekly = np.array([s for s, _ in shapes])
    weekly_drawn = np.stack([s for _, s in shapes], axis=1)
    some = slice(0, WEEKLY_DRAWS)
    known = quantity is not None
    return CropHarvest(
        crop=crop,
        kg=float(ground @ sky) * mid if known else None,
        kg_draws=(drawn * ripe) @ sky * each,
        alone_kg=alone * mid if known else None,
        alone_draws=alone_drawn * each,
        apart_kg=apart * mid if known else None,
        relative=float(ground.sum()) / area,
        relative_draws=drawn.sum(axis=1) / area,
        weekly=mid * (ground * sky) @ weekly,
        weekly_draws=each[some, None] * np.einsum("dp,dpw->dw", drawn[some] * ripe[some] * sky, weekly_drawn),
        pieces=_pieces(places, crop),
    )


def _alone(places: Sequence[tuple[BedYield, int]]) -> tuple[float, Floats]:
    """m² of full stand that give what the crop would alone on all of these beds; draws of shape (COUNT,).

    It gets ripe alone where any of its stands does.
    """
    usual, drawn = 0.0, np.zeros(COUNT)
    for bed in {id(b): b for b, _ in places}.values():
        mine = [k for b, k in places if b is bed]
        full = bed.bedful.area_m2 * float(bed.sky[mine].mean())
        usual += full * bool(bed.ripe[mine].any())
        drawn += full * bed.ripe_draws[:, mine].any(axis=1)
    return usual, drawn


def _pieces(places: Sequence[tuple[BedYield, int]], crop: Crop) -> tuple[float, float, float] | None:
    """Plants cut or lifted once, that get ripe; None for crops picked over."""
    if crop.harvest is not Harvest.SINGLE:
        return None
    some = [(b.bedful.stands[k], b, k) for b, k in places]
    plants = np.array([float(len(s.index) * s.planting.per_station) for s, _, _ in some])
    ripe = np.array([b.ripe[k] for _, b, k in some])
    drawn = np.stack([b.ripe_draws[:, k] for _, b, k in some], axis=1) @ plants
    return float(plants @ ripe), float(drawn.min()), float(drawn.max())


@dataclass(frozen=True, slots=True)
class Rhythm:
    """How evenly a layout is harvested, in weeks."""

    harvest: int
    gaps: int
    gluts: int | None  # None where no yield is known


def rhythm(harvests: Mapping[str, CropHarvest]) -> Rhythm:
    """Weeks with a harvest, without one in between, and with too much of it."""
    some = list(harvests.values())
    if not some:
        return Rhythm(0, 0, None)
    picked = np.array([h.weekly for h in some]).sum(axis=0) > 1e-9
    weeks = np.flatnonzero(picked)
    if len(weeks) == 0:
        return Rhythm(0, 0, None)
    known = [h.weekly for h in some if h.kg is not None]
    gluts = None
    if known:
        kg = np.sum(known, axis=0)
        brings = kg[kg > 1e-9]
        gluts = int((kg > GLUT * brings.mean()).sum()) if len(brings) else 0
    return Rhythm(len(weeks), int(weeks[-1] - weeks[0] + 1 - len(weeks)), gluts)
