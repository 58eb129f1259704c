"""Clumps on the plan: the seedlings of a station drawn side by side, on as much ground as they take.

As in the engine, a clump of n plants covers n times the ground of one, so its radius is √n times as large.
They are spread over it as seeds are in a head of sunflower (Vogel 1979, Math. Biosci. 44:179): evenly, at the
golden angle.
"""

from functools import lru_cache
from math import pi, sqrt

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

_GOLDEN = pi * (3.0 - sqrt(5.0))
MOST_DRAWN = 7  # of one clump: with more they would only hide each other
MOST_PLANTS = 20_000  # of one planting: beyond, each clump is drawn as one plant


def shown(seedlings: int, stations: int) -> int:
    """How many plants are drawn at each station."""
    few = min(seedlings, MOST_DRAWN)
    return few if few * stations <= MOST_PLANTS else 1


def clumped(xy: Floats, radius: float, drawn: int, seedlings: int) -> Floats:
    """Where the plants of clumps are drawn, station by station, shape (stations · drawn, 2).

    Parameters
    ----------
    xy
        The stations, shape (n, 2).
    radius
        Of one plant; it reaches to the edge of its clump's ground, in the unit of ``xy``.
    """
    out = radius * (sqrt(seedlings) - 1.0)
    return (xy[:, None, :] + out * _spread(drawn)[None, :, :]).reshape(-1, 2)


@lru_cache(maxsize=16)
def _spread(count: int) -> Floats:
    """Places in a disc of radius 1, the outermost on its rim."""
    number = np.arange(count)
    away = np.sqrt((number + 0.5) / (count - 0.5)) if count > 1 else np.zeros(1)
    turn = number * _GOLDEN
    spread = np.stack([away * np.cos(turn), away * np.sin(turn)], axis=1)
    spread.setflags(write=False)
    return spread
