"""Measures through the weeks of a season: harvest, ground cover, water."""

from collections.abc import Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from gardencanvas.measures.codes import THROUGH_UNITS, Through
from gardencanvas.measures.estimates import Series
from gardencanvas.measures.reckoned.ground import GroundUse
from gardencanvas.measures.reckoned.water import SPREAD, Water
from gardencanvas.measures.yields.draws import outer
from gardencanvas.measures.yields.harvests import CropHarvest
from gardencanvas.season.course import Weeks

Floats = NDArray[np.float64]


def through_weeks(
    season: Weeks, harvests: Mapping[str, CropHarvest], ground: Sequence[GroundUse], area_m2: float,
    water: Water | None,
) -> tuple[Series, ...]:  # fmt: skip
    """Harvest of each crop of known yield, ground cover and water by week.

    Parameters
    ----------
    area_m2
        Of all beds, those without plantings too.
    """
    found = []
    for crop, harvest in harvests.items():
        if harvest.kg is not None:
            around = outer(harvest.weekly_draws)
            found.append(_series(Through.HARVEST, crop, season, harvest.weekly, *around))
    if area_m2 > 0.0:
        covered = np.sum([np.zeros(season.count), *(g.covered * g.area_m2 for g in ground)], axis=0)
        found.append(_series(Through.COVER, None, season, covered / area_m2))
    if water is not None:
        around = water.litres * SPREAD[0], water.litres * SPREAD[1]
        found.append(_series(Through.WATER, None, season, water.litres, *around))
    return tuple(found)


def _series(code: Through, crop: str | None, season: Weeks, values: Floats, *around: Floats) -> Series:
    weeks = tuple(day.astype(object) for day in season.starts)
    low, high = (tuple(x.tolist()) for x in around) if around else ((), ())
    return Series(code, THROUGH_UNITS[code], crop, weeks, tuple(values.tolist()), low, high)
