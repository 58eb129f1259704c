"""Plantings in years colder or warmer than the average by an even departure.

Where the odds of many simulated years are more than is asked, one cold year and one warm year tell how far
dates swing: quick enough for every planting, and the same departure may be put to two of them at once.
"""

from datetime import date
from functools import lru_cache
from math import sqrt
from typing import NamedTuple

import numpy as np

from gardencanvas.garden.site import Site
from gardencanvas.season.batch import Batch, batch, reach
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import climate_days, dates
from gardencanvas.season.degreedays import DAY_TO_DAY_C
from gardencanvas.season.ripening import Ripening, begins, ripening
from gardencanvas.season.warmth import Warmth
from gardencanvas.season.weather import PERSISTENCE, YEARLY_C

ONE_IN_TEN = 1.2816  # of a normal distribution one in ten lies as many standard deviations out


@lru_cache(maxsize=1024)
def spread_c(days: int) -> float:
    """Standard deviation from year to year of the mean temperature of some days, °C.

    That of the mean of n days of a first-order autoregressive process with persistence ρ,
    ``s²/n [(1 + ρ)/(1 − ρ) − 2ρ(1 − ρⁿ)/(n (1 − ρ)²)]``, beside the departure of the whole year: the same
    weather as in ``weather``.
    """
    n, p = max(days, 1), PERSISTENCE
    inflated = (1 + p) / (1 - p) - 2 * p * (1 - p**n) / (n * (1 - p) ** 2)
    return sqrt(DAY_TO_DAY_C**2 / n * inflated + YEARLY_C**2)


def departure_c(days: int, deviations: float = ONE_IN_TEN) -> float:
    """How far some days depart, as a mean, from their normals, °C to a tenth: in one year of ten, farther."""
    return round(deviations * spread_c(days), 1)


class Departing(NamedTuple):
    """One planting in an average year and in one that departs from it."""

    usual: Batch
    departed: Batch
    when: Ripening  # in the departed year
    since: int  # climate day from which it grows

    @property
    def ready(self) -> date:
        """First harvest, if neither frost nor the grower ends it before."""
        return _date(self.when.ready)

    @property
    def harvest_last(self) -> date:
        """Last harvest."""
        return _date(self.when.last)

    def as_grown(self, on: date) -> date:
        """When it has grown as far as by a day of the average year: the warmth until then is gathered."""
        since = np.array([self.since])
        day = climate_days(np.array([on], dtype="datetime64[D]"))
        if day[0] <= since[0]:
            return on
        need = _gathered(self.usual, day) - _gathered(self.usual, since)
        then, met = reach(self.departed, since, need, self.usual.traits.longest_d.astype(np.int64))
        return _date(then) if met[0] else date.max


def departing(site: Site, growing: Growing, weeks: Weeks, departure: float) -> Departing:
    """A planting in a year that is warmer by some °C, or colder where it is below 0, all through.

    Frost dates stay those of the site. ``weeks`` as for ``follow``.
    """
    usual = batch(site, [growing])
    needs = tuple(n._replace(warmer_c=n.warmer_c + departure) for n in usual.needs)
    departed = usual._replace(needs=needs, warmth=Warmth.of(site.climate, needs))
    since = int(begins(site, usual, weeks)[0])
    return Departing(usual, departed, ripening(site, departed, weeks), since)


def _gathered(plants: Batch, day: np.ndarray) -> np.ndarray:
    """Degree-days gathered until a climate day, under the cover while it lasts; shape (1,)."""
    off = np.minimum(day, np.maximum(plants.until, plants.tau))
    under = plants.warmth.until(plants.row, off)
    return under + plants.warmth.until(plants.open_row, day) - plants.warmth.until(plants.open_row, off)


def _date(day: np.ndarray) -> date:
    on: date = dates(day)[0].astype(object)
    return on
