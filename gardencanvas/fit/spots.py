"""Stations grouped into spots, where what comes from far is the same for all."""

from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.near import box
from gardencanvas.fit.own import at_home
from gardencanvas.garden.pattern import Pattern

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

CELL_M = 0.3


class Spots(NamedTuple):
    """Groups of stations: their middles (k, 2), the box of those, and the group of each station."""

    xy: Floats
    box: Floats
    of_station: Ints


@lru_cache(maxsize=4096)
def _groups(pattern: Pattern) -> Ints:
    """Group of each station: squares of 0.3 m in the pattern's own frame, which moves and turns with it."""
    turn = np.deg2rad(pattern.angle_deg)
    cos, sin = np.cos(turn), np.sin(turn)
    xy = (pattern.stations - np.array(pattern.origin)) @ np.array([[cos, -sin], [sin, cos]])
    middle = (xy.min(axis=0) + xy.max(axis=0)) / 2
    cell = np.rint(np.round((xy - middle) / CELL_M, 6)).astype(np.int64)
    _, groups = np.unique(cell[:, 0] * 1_000_000 + cell[:, 1], return_inverse=True)
    return groups.astype(np.intp)


def spots_of(pattern: Pattern, index: Ints) -> Spots:
    """Spots of some stations of a pattern."""
    _, groups = np.unique(_groups(at_home(pattern))[index], return_inverse=True)
    xy = pattern.stations[index]
    sums: Floats = np.stack([np.bincount(groups, xy[:, k]).astype(np.float64) for k in (0, 1)], axis=1)
    middle = sums / np.bincount(groups)[:, None]
    return Spots(middle, box(middle), groups.astype(np.intp))
