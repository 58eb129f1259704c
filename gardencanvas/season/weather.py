"""Simulated years around a climate's normals, for what an average, a cold and a warm year bring.

A day's departure from its normal is a first-order autoregressive process (day-to-day persistence .65) plus
one departure a year, because seasons differ more than the sum of their days' weather would allow. Seeded: the
same years come each time, and for every crop.
"""

from functools import cache, lru_cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Climate
from gardencanvas.season.dayofyear import YEAR
from gardencanvas.season.degreedays import DAY_TO_DAY_C, sine_excess
from gardencanvas.season.warmth import Needs, half_range_curve, mean_curve

Floats = NDArray[np.float64]

PERSISTENCE = 0.65  # correlation of a day's departure with the next day's; .6–.7, from memory
# With it the mean of three months varies by about 1 °C from year to year, as in long temperate series
# (Central England Temperature; from memory).
YEARLY_C = 0.7
COUNT = 200  # years
LENGTH = 3 * YEAR  # days of each: starts in one year may be harvested two years on
SEED = 20_260_101


def departures(
    count: int, days: int, *, spread_c: float, persistence: float = PERSISTENCE, seed: int = SEED
) -> Floats:
    """Autoregressive departures, shape (count, days), with standard deviation ``spread_c`` on every day.

    ``a(d) = ρ a(d−1) + √(1 − ρ²) s e(d)``, begun in its steady state.
    """
    noise = np.random.default_rng(seed).standard_normal((days, count))
    out = np.empty((days, count))
    out[0] = noise[0]
    fresh = np.sqrt(1.0 - persistence**2)
    for day in range(1, days):
        out[day] = persistence * out[day - 1] + fresh * noise[day]
    return np.asarray(spread_c * out.T)


@cache
def _years() -> Floats:
    """Departures of all simulated years from normal daily means, °C, shape (COUNT, LENGTH)."""
    daily = departures(COUNT, LENGTH, spread_c=DAY_TO_DAY_C)
    yearly = np.random.default_rng(SEED + 1).standard_normal((COUNT, 1)) * YEARLY_C
    years: Floats = daily + yearly
    years.setflags(write=False)
    return years


@lru_cache(maxsize=64)
def simulated_warmth(climate: Climate, needs: Needs) -> Floats:
    """Degree-days cumulated through simulated years, shape (COUNT, LENGTH + 1).

    Day 0 is 1 January; each row is one run of three years.
    """
    mean = np.tile(mean_curve(climate), LENGTH // YEAR) + needs.warmer_c + _years()
    half = half_range_curve(climate)
    if half is None:
        per_day = np.clip(mean, needs.base_c, needs.top_c) - needs.base_c
    else:
        wide = np.tile(half, LENGTH // YEAR)
        per_day = sine_excess(mean, wide, needs.base_c) - sine_excess(mean, wide, needs.top_c)
    cumulative = np.zeros((COUNT, LENGTH + 1))
    np.cumsum(per_day, axis=1, out=cumulative[:, 1:])
    cumulative.setflags(write=False)
    return cumulative
