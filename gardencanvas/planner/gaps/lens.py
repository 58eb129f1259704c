"""How far apart two discs lie that share a given part of the one: the lens formula turned round.

The formula (``fit.geometry.lens_area``) has no inverse in closed form. In shares of the smaller disc and of
the way from touching inside to touching outside it depends on one number only, the ratio of both radii, so
that a small table serves all: it is off by 2 mm at most for radii of half a metre (tested).
"""

from functools import cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.geometry import lens_area

Floats = NDArray[np.float64]

_RATIOS, _SHARES, _HALVINGS = 41, 129, 40


@cache
def _table() -> Floats:
    """Part of the way from inside to outside, shape (ratios, shares); both evenly spaced from 0 to 1."""
    ratio = np.maximum(np.linspace(0.0, 1.0, _RATIOS), 1e-3)[:, None]
    share = np.linspace(0.0, 1.0, _SHARES)[None, :]
    near = np.zeros((_RATIOS, _SHARES))
    far = np.ones((_RATIOS, _SHARES))
    one = np.ones_like(near)
    for _ in range(_HALVINGS):
        middle = (near + far) / 2
        area = lens_area(one, one * ratio, 1.0 - ratio + 2.0 * ratio * middle) / (np.pi * ratio * ratio)
        more = area > share
        near, far = np.where(more, middle, near), np.where(more, far, middle)
    return (near + far) / 2


def least_distance(r: Floats, s: Floats, share: Floats) -> Floats:
    """Distance of the centres at which a disc of radius ``s`` covers a share of one of radius ``r``, metres.

    Parameters
    ----------
    r, s, share
        Arrays that broadcast together; a share of 0 asks for discs that touch.

    Returns
    -------
    ndarray
        0 where the second disc cannot cover so much, or one of them is nothing.
    """
    r, s, share = np.broadcast_arrays(r, s, share)
    small = np.minimum(r, s)
    part = share * r * r / np.maximum(small * small, 1e-12)
    found = np.zeros(r.shape)
    can = (small > 0.0) & (part < 1.0)
    found[can] = _looked_up(r[can], s[can], part[can])
    return found


def _looked_up(r: Floats, s: Floats, part: Floats) -> Floats:
    """Distances of discs one of which covers a part of the smaller one, by the table; shape (n,)."""
    small = np.minimum(r, s)
    ratio = small / np.maximum(np.maximum(r, s), 1e-9)
    i = np.clip(ratio * (_RATIOS - 1), 0.0, _RATIOS - 1.000001)
    j = np.clip(part * (_SHARES - 1), 0.0, _SHARES - 1.000001)
    row, column = i.astype(np.intp), j.astype(np.intp)
    i, j = i - row, j - column
    table = _table().ravel()
    at = row * _SHARES + column
    low = table[at] * (1.0 - j) + table[at + 1] * j
    high = table[at + _SHARES] * (1.0 - j) + table[at + _SHARES + 1] * j
    distance: Floats = np.abs(r - s) + 2.0 * small * (low * (1.0 - i) + high * i)
    return distance
