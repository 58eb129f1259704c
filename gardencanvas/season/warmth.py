"""A climate's warmth as plants with a base and a top temperature see it, cumulated over the year."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Climate
from gardencanvas.season.curve import daily
from gardencanvas.season.dayofyear import YEAR
from gardencanvas.season.degreedays import degree_days

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

LEAST_RATE = 1.0  # °C: a crop recorded at its own base still takes its days


class Needs(NamedTuple):
    """What of a crop decides how it feels a climate, °C."""

    base_c: float
    top_c: float
    grown_at_c: float  # daily mean temperature under which the crop's days hold
    warmer_c: float = 0.0  # gain under a cover


class Year(NamedTuple):
    """Degree-days of one climate year."""

    cumulative: Floats  # (366,): before each day, and of the whole year
    rate: float  # degree-days of a day under the crop's own conditions


@lru_cache(maxsize=64)
def mean_curve(climate: Climate) -> Floats:
    """Daily mean temperature of a climate, °C, shape (365,)."""
    return daily(climate.mean_c)


@lru_cache(maxsize=64)
def half_range_curve(climate: Climate) -> Floats | None:
    """Half the daily range, °C, shape (365,); None where minimum and maximum are not known."""
    if climate.min_c is None or climate.max_c is None:
        return None
    return np.maximum(daily(climate.max_c) - daily(climate.min_c), 0.0) / 2


@lru_cache(maxsize=2048)
def year(climate: Climate, needs: Needs) -> Year:
    """Degree-days of a climate for one crop's temperatures."""
    half = half_range_curve(climate)
    per_day = degree_days(mean_curve(climate) + needs.warmer_c, needs.base_c, needs.top_c, half_range_c=half)
    own = degree_days(
        needs.grown_at_c,
        needs.base_c,
        needs.top_c,
        half_range_c=None if half is None else float(half.mean()),
    )
    cumulative = np.concatenate([[0.0], np.cumsum(np.maximum(per_day, 0.0))])
    return Year(cumulative, max(float(own), LEAST_RATE))


@dataclass(frozen=True, slots=True, eq=False)
class Warmth:
    """Several ``Year`` side by side, looked up together; rows are named by their index ``row``."""

    cumulative: Floats  # (k, 366)
    rate: Floats  # (k,)
    total: Floats  # (k,): of a whole year
    _flat: Floats
    _offset: Floats

    @classmethod
    def of(cls, climate: Climate, needs: Sequence[Needs]) -> "Warmth":
        """The warmth of a climate for each of several needs."""
        years = [year(climate, each) for each in needs]
        cumulative = np.array([y.cumulative for y in years]).reshape(len(years), YEAR + 1)
        total = cumulative[:, -1]
        # Rows laid end to end with gaps are one sorted array, so that one search serves all plantings.
        offset = np.concatenate([[0.0], np.cumsum(total + 1.0)[:-1]]) if years else np.zeros(0)
        flat = (cumulative + offset[:, None]).ravel()
        return cls(cumulative, np.array([y.rate for y in years]), total, flat, offset)

    def until(self, row: Ints, tau: Ints) -> Floats:
        """Degree-days from 1 January 2000 until the beginning of a climate day (broadcast)."""
        years, day = np.divmod(tau, YEAR)
        return np.asarray(self.total[row] * years + self.cumulative[row, day])

    def table(self, tau: Ints) -> Floats:
        """Degree-days from 1 January 2000 until climate days, shape (k, days)."""
        years, day = np.divmod(tau, YEAR)
        return np.asarray(self.total[:, None] * years + self.cumulative[:, day])

    def reach(self, row: Ints, since: Ints, need: Floats, within: Ints) -> tuple[Ints, NDArray[np.bool_]]:
        """Climate day on which a need is met, and whether it is met in time.

        Parameters
        ----------
        row, since, need
            Which year, the first climate day, and the degree-days from it; shape (n,).
        within
            Days after which the search is given up; the day is then ``since + within``.
        """
        total = self.total[row]
        safe = np.maximum(total, 1e-9)
        # A millionth of a degree-day less: sums of equal days must not miss their own total by rounding.
        goal = self.until(row, since) + need - 1e-6  # no need is met on the day itself, whatever the rounding
        years = np.floor(goal / safe)
        rest = goal - years * safe
        found = np.searchsorted(self._flat, rest + self._offset[row]) - row * (YEAR + 1)
        years = np.minimum(years, 1e6).astype(np.int64)
        day = np.maximum(years * YEAR + np.clip(found, 0, YEAR), since)
        met = (day - since <= within) & (total > 1e-6)
        return np.where(met, day, since + within), met
