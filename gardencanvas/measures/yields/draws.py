"""Possible values of what is not known for sure: the same ones each time, and for every layout.

Draw k of anything is one and the same year and garden throughout, so that what two layouts share cancels when
they are compared.
"""

from functools import lru_cache
from math import sqrt
from zlib import crc32

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Quantity
from gardencanvas.measures.estimates import Estimate
from gardencanvas.season.departing import ONE_IN_TEN

Floats = NDArray[np.float64]

COUNT = 200
SEED = 20_270_101
OUTER = (0.1, 0.9)  # eight cases of ten lie between


@lru_cache(maxsize=4096)
def normal(name: str) -> Floats:
    """Draws of a standard normal value, shape (COUNT,), that go by a name; read-only."""
    drawn: Floats = np.random.default_rng([SEED, crc32(name.encode())]).standard_normal(COUNT)
    drawn.setflags(write=False)
    return drawn


def weather() -> Floats:
    """How much warmer or colder than average each drawn year is, in standard deviations."""
    return normal("weather")


def within(quantity: Quantity, name: str) -> Floats:
    """Draws of a number whose published range is taken to hold eight cases of ten, never below 0."""
    z = normal(name) / ONE_IN_TEN
    side = np.where(z > 0.0, quantity.high - quantity.mid, quantity.mid - quantity.low)
    return np.maximum(quantity.mid + side * z, 0.0)


def factor(low: float, high: float, name: str, shared: float = 0.0) -> Floats:
    """Draws of a factor round 1 that lies between ``low`` and ``high`` in eight cases of ten.

    Parameters
    ----------
    shared
        Part of the variance that is the garden's own, and the same under every name.
    """
    z = (sqrt(1.0 - shared) * normal(name) + sqrt(shared) * normal("garden")) / ONE_IN_TEN
    drawn: Floats = np.exp(np.where(z > 0.0, np.log(high), -np.log(low)) * z)
    return drawn


def between_years(cold: Floats, usual: Floats, warm: Floats) -> Floats:
    """What drawn years bring, from an average year and one cold and one warm year of ten.

    Parameters
    ----------
    cold, usual, warm
        Shape (n,).

    Returns
    -------
    ndarray, shape (COUNT, n)
        In a straight line from one to the next; no year is taken as half as far out again as the outer two.
    """
    z = np.clip(weather() / ONE_IN_TEN, -1.5, 1.5)[:, None]
    return np.where(z > 0.0, usual + z * (warm - usual), usual - z * (cold - usual))


def outer(draws: Floats) -> tuple[Floats, Floats]:
    """The range that holds eight of ten draws, along the first axis.

    The same as ``numpy.quantile``, in a tenth of its time.
    """
    ordered, last = np.sort(draws, axis=0), len(draws) - 1
    found = []
    for share in OUTER:
        place = int(share * last)
        part = share * last - place
        found.append(ordered[place] * (1.0 - part) + ordered[min(place + 1, last)] * part)
    return found[0], found[1]


def estimate(value: float, draws: Floats, *, doubtful: bool = False) -> Estimate:
    """A number with the range that holds eight of ten draws."""
    low, high = (float(q) for q in outer(draws))
    return Estimate(value, min(low, value), max(high, value), doubtful)
