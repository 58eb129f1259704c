"""Light that reaches the ground under one canopy, of which much comes in from the side.

Under a closed canopy the share 1 − exp(−k L) is taken (Beer–Lambert). Under a single tall plant most rays
leave the leaves through its side long before they reach its top, so that it takes far less. Each ray to an
even sky passes leaves on the shorter of two ways: to the top, and to the rim. How far it is to the rim, from
places spread evenly over a disc and to all sides, has a closed form: it is more than x for the part of the
disc that a copy of it, shifted by x, still covers. Leaves are as dense as gives the closed canopy its k L.

Approximations: the sun is taken as part of the even sky; leaves hang down to the plant below; the rays that
leave are met by other canopies as ``fit.beside`` has it.
"""

from functools import lru_cache
from math import pi

import numpy as np
from numpy.typing import NDArray

from gardencanvas.light.canopy import taken

Floats = NDArray[np.float64]

_HEIGHTS = np.concatenate([[0.0], np.geomspace(0.1, 40.0, 23)])  # of the leaves overhead, in radii
_DEPTHS = np.concatenate([[0.0], np.geomspace(0.05, 8.0, 19)])  # k L of the leaves overhead
_ROWS, _COLUMNS = np.arange(float(len(_HEIGHTS))), np.arange(float(len(_DEPTHS)))
_WIDE = len(_DEPTHS) + 1
_ELEVATIONS, _RIMS = 16, 16


def taken_under(depth: Floats, height: Floats) -> Floats:
    """Share of light that a canopy takes from places under it.

    Parameters
    ----------
    depth
        Leaf area times extinction overhead, any shape.
    height
        From these places to the top of the canopy, over its radius, same shape.
    """
    closed = taken(1.0, depth)
    if not height.any():
        return closed
    high, deep = np.interp(height, _HEIGHTS, _ROWS), np.interp(depth, _DEPTHS, _COLUMNS)
    row, column = high.astype(np.intp), deep.astype(np.intp)
    part, across = high - row, deep - column
    corner = row * _WIDE + column
    table = _table()
    here, below = table.take(corner), table.take(corner + _WIDE)
    here += (table.take(corner + 1) - here) * across
    below += (table.take(corner + _WIDE + 1) - below) * across
    share: Floats = (here + (below - here) * part) * closed
    return share


@lru_cache(maxsize=1)
def _table() -> Floats:
    """Share taken over that of a closed canopy, by height and depth, last row and column twice; flat."""
    sine = np.sqrt((np.arange(_ELEVATIONS) + 0.5) / _ELEVATIONS)  # equal parts of an even sky's light
    cosine = np.sqrt(1.0 - sine * sine)
    rim = _rims()
    dense = _density(sine)
    shares = np.ones((len(_HEIGHTS), len(_DEPTHS)))
    for k, height in enumerate(_HEIGHTS):
        if height > 0.0:
            way = np.minimum(height / sine[:, None], rim / cosine[:, None]).ravel() / height
            passed = np.exp(-dense[:, None] * way).mean(axis=1)
            shares[k, 1:] = (1.0 - passed[1:]) / -np.expm1(-_DEPTHS[1:])
    shares[:, 0] = shares[:, 1]
    return np.pad(shares, ((0, 1), (0, 1)), mode="edge").ravel()


def _rims() -> Floats:
    """Ways to the rim of a disc of radius 1, each as frequent as the others."""
    x = np.linspace(0.0, 2.0, 400)
    beyond = (2.0 * np.arccos(x / 2.0) - x / 2.0 * np.sqrt(4.0 - x * x)) / pi
    rims: Floats = np.interp((np.arange(_RIMS) + 0.5) / _RIMS, 1.0 - beyond, x)
    return rims


def _density(sine: Floats) -> Floats:
    """Leaves met straight upwards with which a closed canopy takes 1 − exp(−k L), for each of ``_DEPTHS``."""
    upright = np.linspace(0.0, 12.0, 600)
    through = np.exp(-upright[:, None] / sine).mean(axis=1)
    found: Floats = np.interp(_DEPTHS, -np.log(through), upright)
    return found
