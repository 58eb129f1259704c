"""Frost dates and their risks.

A risk is always that of frost *after* a day in spring, or *before* a day in autumn: a bare percentile reads
both ways. Frost is a minimum of 0 °C or less. Days count from a day that no frost season crosses, so that
means are sound on both halves of the Earth (24 July before the season in the north, 24 January in the south:
Utah Climate Center).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from math import sqrt
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Climate, DayOfYear, Frost
from gardencanvas.season.chance import normal_below, normal_quantile, student_quantile
from gardencanvas.season.curve import daily
from gardencanvas.season.dayofyear import YEAR, climate_days, day_of_index
from gardencanvas.season.weather import departures

Floats = NDArray[np.float64]

FEW = 5  # years: with fewer only their mean and range are told
# Standard deviation of a frost date from year to year, days: Brussels 1976–2005 has 17.9 in spring and 17.0
# in autumn (derived from FAO's demonstration weather); the simulation of `estimate` has about 16.
YEAR_TO_YEAR_D = 16.0
MINIMUM_SPREAD_C = 3.2  # standard deviation of a day's minimum: 2.5–4 °C, from memory
HALF_DAILY_RANGE_C = 5.0  # where minima are not known: rough common value of mid latitudes
_SPLIT_NORTH, _SPLIT_SOUTH = 204, 23  # 24 July, 24 January


@dataclass(frozen=True, slots=True)
class History:
    """Frost days of past years as one distribution.

    ``mean`` and ``sd`` in days of the year (0 is 1 January; may lie below 0 or above 365), from the years
    that had frost; ``share`` of all years that did.
    """

    mean: float
    sd: float
    years: int
    share: float = 1.0

    def day(self, risk: float) -> float | None:
        """The day after which frost comes in a share ``risk`` of years, for the next year to come.

        Predictive limit ``mean + t s √(1 + 1/n)``, with Student's t on n − 1 degrees of freedom; for autumn
        ask for ``1 − risk`` to get the day before which it comes. None where frost is rarer than the risk.

        Raises
        ------
        ValueError
            With fewer than two years, or a risk outside 0–1.
        """
        if self.years < 2:
            raise ValueError("a risk needs at least two years with frost")
        if risk >= self.share:
            return None
        t = student_quantile(1.0 - risk / self.share, self.years - 1)
        return self.mean + t * self.sd * sqrt(1.0 + 1.0 / self.years)


def mixed_day(mean: float, sd: float, share: float, risk: float) -> float | None:
    """The day after which frost comes in a share ``risk`` of years, if only a share of years has frost.

    ``P(frost after d) = f (1 − Φ((d − mean)/sd))`` (mixed distribution, Thom 1959). None where it is rarer.
    """
    if risk >= share:
        return None
    return mean + sd * normal_quantile(1.0 - risk / share)


def history(days: Sequence[date | None], *, south: bool, spring: bool) -> History:
    """The distribution of past years' last (spring) or first (autumn) frosts; None for a year without.

    Raises
    ------
    ValueError
        If no year had frost.
    """
    known = np.array([d for d in days if d is not None], dtype="datetime64[D]")
    if len(known) == 0:
        raise ValueError("none of these years had frost")
    # Spring frosts fall in the half-year after the split, autumn frosts in the half-year before the next one:
    # both are counted onward from it and brought back to the calendar year they are felt to belong to.
    split = _SPLIT_SOUTH if south else _SPLIT_NORTH
    counted = (climate_days(known) % YEAR - split) % YEAR + split
    if spring and not south:
        counted = counted - YEAR
    sd = float(counted.std(ddof=1)) if len(known) > 1 else 0.0
    return History(float(counted.mean()), sd, len(known), len(known) / len(days))


def frost_of_years(last: Sequence[date | None], first: Sequence[date | None], *, south: bool) -> Frost:
    """Typical frost dates, the means of a grower's own list; no dates where most years had no frost."""
    springs, autumns = [d for d in last if d], [d for d in first if d]
    if not springs or not autumns or 2 * len(springs) < len(last) or 2 * len(autumns) < len(first):
        return Frost(basis="none")
    return Frost(
        last=_typical(history(last, south=south, spring=True)),
        first=_typical(history(first, south=south, spring=False)),
        basis="past years",
    )


def _typical(past: History) -> DayOfYear:
    return day_of_index(round(past.mean))


def risk_after(day: float, typical: float, sd: float = YEAR_TO_YEAR_D) -> float:
    """Chance of frost after a day, from the typical (even-odds) day of the last frost."""
    return 1.0 - normal_below((day - typical) / sd)


@dataclass(frozen=True, slots=True)
class Estimate:
    """Frost dates guessed from monthly normals: rough.

    Each date comes as the days with a risk of nine, five and one in ten. ``minima`` says whether monthly
    minima were known, or taken as 5 °C below the means.
    """

    frost: Frost
    last: tuple[DayOfYear, DayOfYear, DayOfYear] | None  # frost after it in 9, 5, 1 of 10 years
    first: tuple[DayOfYear, DayOfYear, DayOfYear] | None  # frost before it in 1, 5, 9 of 10 years
    years_with_frost: float
    minima: Literal["known", "guessed"]
    method: Literal["simulated minima"] = "simulated minima"


def estimate(climate: Climate, years: int = 2000) -> Estimate:
    """Guess frost dates by simulating daily minima around their monthly normals.

    Minima are normally distributed about the mean-preserving curve with persistence from day to day
    (independent days would put the last frost too late). Frost at a site depends on its hollow or slope more
    than on its region's normals: the grower's own dates are always better.
    """
    known = climate.min_c is not None
    normals = daily(climate.min_c or climate.mean_c) - (0.0 if known else HALF_DAILY_RANGE_C)
    last, first = simulated_frosts(normals, years)
    share = float(np.isfinite(last).mean())
    if share < 0.5:
        return Estimate(Frost(basis="none"), None, None, share, "known" if known else "guessed")
    # Years without frost count as frosts before every day in spring and after every day in autumn.
    spring = np.quantile(np.where(np.isfinite(last), last, -np.inf), [0.1, 0.5, 0.9], method="nearest")
    autumn = np.quantile(np.where(np.isfinite(first), first, np.inf), [0.1, 0.5, 0.9], method="nearest")
    lasts, firsts = _days(spring, float(np.nanmin(last))), _days(autumn, float(np.nanmax(first)))
    return Estimate(
        Frost(last=lasts[1], first=firsts[1], basis="estimated"),
        lasts,
        firsts,
        share,
        "known" if known else "guessed",
    )


def _days(values: Floats, extreme: float) -> tuple[DayOfYear, DayOfYear, DayOfYear]:
    early, middle, late = (day_of_index(round(v if np.isfinite(v) else extreme)) for v in values.tolist())
    return early, middle, late


def simulated_frosts(
    minima: Floats, years: int, spread_c: float = MINIMUM_SPREAD_C, seed: int = 20_260_102
) -> tuple[Floats, Floats]:
    """Last frost after midwinter and first frost before the next, of simulated years, shape (years,).

    Parameters
    ----------
    minima
        Normal daily minima of a year, shape (365,), °C.

    Returns
    -------
    last, first
        Days of the year counted onward from the coldest day (so above 365 where they pass New Year); NaN in
        years without frost.
    """
    cold = int(np.argmin(minima))
    from_cold = np.roll(minima, -cold)
    summer = int(np.argmax(from_cold))
    frosty = from_cold + departures(years, YEAR, spread_c=spread_c, seed=seed) <= 0.0
    spring, autumn = frosty[:, :summer], frosty[:, summer:]
    last = np.where(spring.any(axis=1), summer - 1 - np.argmax(spring[:, ::-1], axis=1), np.nan) + cold
    first = np.where(autumn.any(axis=1), summer + np.argmax(autumn, axis=1), np.nan) + cold
    return last, first
