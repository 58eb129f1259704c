"""Ground: how much of it is in use, for how long, by crops of what need, and how much light it catches."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.beside import Vault
from gardencanvas.fit.cover_share import cover_share
from gardencanvas.fit.stands import months_of
from gardencanvas.light.canopy import discs
from gardencanvas.measures.reckoned.spots import places
from gardencanvas.measures.yields.bedful import Bedful
from gardencanvas.measures.yields.relative import Shared

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True, slots=True, eq=False)
class GroundUse:
    """Use of one bed's ground within the season.

    ``used_m2`` and ``covered`` (share of the soil under leaves) by week of the season; ``hungry`` and
    ``fixing`` are ground-days of crops of high need of nutrients, and of those that fix nitrogen.
    """

    area_m2: float
    used_m2: Floats
    covered: Floats
    shaded: Floats  # share of the light kept from the soil, by week
    grown: Bools  # weeks in which anything stands
    hungry: float
    fixing: float
    apart: "Apart"
    light: float  # share of the season's sunlight on the bed that leaves take …
    sunlight: float  # … of so much, MJ above the air

    @property
    def ground_days(self) -> float:
        """Ground in use × days, m² days."""
        return float(self.used_m2.sum()) * 7.0


@dataclass(frozen=True, slots=True)
class Apart:
    """The same of a bed's crops grown apart on the same ground."""

    ground_days: float
    light: float
    shaded: float  # mean of the weeks in which anything stands


def ground_use(bedful: Bedful, shared: Shared, season: slice, over: Vault, apart: Floats) -> GroundUse:
    """Use of a bed's ground.

    Parameters
    ----------
    apart
        Share of the bed that each stand would have, grown apart.
    season
        The season's weeks of the stands' grid.
    """
    weeks = bedful.stands[0].weeks
    need = (bedful.need_m2[:, None] * bedful.present)[:, season]
    total = need.sum(axis=0)
    # where more is planted than has room, all have their part of the bed
    scaled = need * np.minimum(bedful.area_m2 / np.maximum(total, 1e-9), 1.0)
    classes = np.array([s.crop.nutrients.value if s.crop.nutrients else "" for s in bedful.stands])
    cover = cover_share(bedful.stands, bedful.bed, weeks, places(bedful.bed))
    sunlight = over.strength[months_of(weeks)[season] % 12] * 7.0
    return GroundUse(
        area_m2=bedful.area_m2,
        used_m2=scaled.sum(axis=0),
        covered=cover.covered[season],
        shaded=cover.shaded[season],
        grown=np.asarray(bedful.present[:, season].any(axis=0)),
        hungry=float(scaled[classes == "high"].sum()) * 7.0,
        fixing=float(scaled[classes == "fixing"].sum()) * 7.0,
        apart=_apart(bedful, season, sunlight, apart),
        light=float(shared.taken[season] @ sunlight / sunlight.sum()),
        sunlight=float(sunlight.sum()),
    )


def _apart(bedful: Bedful, season: slice, sunlight: Floats, apart: Floats) -> Apart:
    """Every stand alone on its share of the bed, at its usual spacing."""
    ground = apart[:, None] * bedful.present[:, season]
    taken = (-np.expm1(-bedful.leaf[:, season]) * ground).sum(axis=0)
    under = (discs(1.0, bedful.leaf[:, season], bedful.full_cover[:, season]) * ground).sum(axis=0)
    grown = ground.any(axis=0)
    return Apart(
        float(ground.sum()) * bedful.area_m2 * 7.0,
        float(taken @ sunlight / sunlight.sum()),
        float(under[grown].mean()) if grown.any() else 0.0,
    )
