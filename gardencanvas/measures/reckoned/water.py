"""Water: what the crops of a bed use in each week, less the rain that reaches them, in litres."""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.fit.stands import Stand
from gardencanvas.garden.site import Site
from gardencanvas.measures.yields.bedful import Bedful
from gardencanvas.season.curve import daily
from gardencanvas.season.dayofyear import MONTH_DAYS, YEAR, climate_days
from gardencanvas.season.radiation import monthly_evapotranspiration

Floats = NDArray[np.float64]

# FAO-56 table 12, head of "a. Small vegetables" (from memory): for crops whose own coefficients no source
# gives.
SMALL_VEGETABLES = (0.7, 1.05, 0.95)
# Hargreaves misses daily evapotranspiration by 0.68 mm on average where about 4 mm are used (Mississippi),
# reckoned coefficients miss those of seven vegetables by 0.13 of 1.05 (Allen & Pereira 2009): √(.21² + .12²)
# as standard deviation, × 1.28 for eight cases of ten.
SPREAD = (0.75, 1.33)


def coefficient(day: ArrayLike, stages: ArrayLike, kc: ArrayLike) -> Floats:
    """Crop coefficient on a day of growth (FAO-56 eq. 66): level, rising, level, changing to its end.

    Parameters
    ----------
    day
        Days since it came into the bed.
    stages
        Days of the initial, development, middle and late stage.
    kc
        Coefficients of the initial and middle stage and of the end.
    """
    initial, development, middle, late = np.asarray(stages, dtype=np.float64)
    ends = np.cumsum([initial, development, middle, late])
    first, full, last = np.asarray(kc, dtype=np.float64)
    return np.asarray(np.interp(np.asarray(day, dtype=np.float64), ends, [first, full, full, last]))


def mixed_coefficient(ground: ArrayLike, height_m: ArrayLike, kc: ArrayLike) -> Floats:
    """Coefficient of crops that grow together: Σ f h Kc / Σ f h (FAO-56 eq. 104, from memory).

    ``ground`` is the share of ground each covers; crops run along the first axis. The coefficients of crops
    that overlap are never summed.
    """
    weight = np.asarray(ground, dtype=np.float64) * np.asarray(height_m, dtype=np.float64)
    total = weight.sum(axis=0)
    mixed = (weight * np.asarray(kc, dtype=np.float64)).sum(axis=0) / np.maximum(total, 1e-12)
    return np.where(total > 1e-12, mixed, 0.0)


def effective_rain(month_mm: ArrayLike) -> Floats:
    """Rain of a month that plants can use, mm: USDA-SCS, as in CROPWAT (from memory).

    P (125 − 0.2 P) / 125 up to 250 mm, 125 + 0.1 P above. Never for weeks or days.
    """
    rain = np.asarray(month_mm, dtype=np.float64)
    return np.where(rain <= 250.0, rain * (125.0 - 0.2 * rain) / 125.0, 125.0 + 0.1 * rain)


class Water(NamedTuple):
    """Litres by week of some beds, and of the same crops grown apart on the same ground."""

    litres: Floats
    apart: Floats


class Sky:
    """What a site's air takes and its sky brings, mm a day, by day of the year."""

    def __init__(self, site: Site) -> None:
        months = monthly_evapotranspiration(site)
        rain = site.climate.rain_mm
        self.known = months is not None and rain is not None
        if months is not None and rain is not None:
            self._takes = np.maximum(daily(list(months)), 0.0)
            self._brings = np.repeat(effective_rain(rain) / MONTH_DAYS, MONTH_DAYS)

    def weekly(self, bedful: Bedful) -> Floats:
        """Litres a bed needs in each week of its stands' grid: (Kc ET₀ − Pe) × planted ground, never below 0.

        1 mm on 1 m² is 1 l. Only ground that is planted is watered.
        """
        takes, brings = self.weeks(bedful.stands[0].weeks.starts)
        mixed = mixed_coefficient(bedful.cover, bedful.height_m, _all_kc(bedful))
        planted = np.minimum((bedful.density[:, None] * bedful.present).sum(axis=0), 1.0) * bedful.area_m2
        litres: Floats = np.maximum(mixed * takes - brings, 0.0) * planted
        return litres

    def apart(self, bedful: Bedful, apart: Floats) -> Floats:
        """The same of its stands alone, each on a share of the bed."""
        takes, brings = self.weeks(bedful.stands[0].weeks.starts)
        used = np.maximum(_all_kc(bedful) * takes - brings, 0.0) * bedful.present
        litres: Floats = apart @ used * bedful.area_m2
        return litres

    def weeks(self, starts: NDArray[np.datetime64]) -> tuple[Floats, Floats]:
        """Evapotranspiration and effective rain of the weeks that begin on some days, mm."""
        days = climate_days(starts[:, None] + np.arange(7)) % YEAR
        return self._takes[days].sum(axis=1), self._brings[days].sum(axis=1)


def _all_kc(bedful: Bedful) -> Floats:
    return np.array([_kc(s) for s in bedful.stands])


def _kc(stand: Stand) -> Floats:
    """Coefficient of a stand in the middle of each week: stages stretched to the days it really stands."""
    crop = stand.crop
    first, last = (d.toordinal() for d in stand.span)
    middle = stand.weeks.first.toordinal() + 7 * np.arange(stand.weeks.count) + 3
    days = np.array(stages(crop))
    stretched = days * ((last - first + 1) / max(days.sum(), 1e-9))
    return coefficient(middle - first, stretched, coefficients(crop))


def stages(crop: Crop) -> tuple[float, ...]:
    """Days of a crop's initial, development, middle and late stage; equal parts where none are known."""
    some = (crop.stage_initial_d, crop.stage_development_d, crop.stage_middle_d, crop.stage_late_d)
    days = tuple(0.0 if s is None else s.mid for s in some)
    return days if sum(days) > 0.0 else (1.0, 1.0, 1.0, 1.0)  # perennials: a quarter of their season each


def coefficients(crop: Crop) -> tuple[float, float, float]:
    """Its coefficients of the initial and middle stage and of the end."""
    if crop.kc_initial is None or crop.kc_middle is None or crop.kc_end is None:
        return SMALL_VEGETABLES
    return crop.kc_initial.mid, crop.kc_middle.mid, crop.kc_end.mid
