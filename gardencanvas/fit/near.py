"""Which stations of two stands lie near each other."""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray
from shapely import STRtree, points

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

# Up to so many distances plain numpy is quicker than building a tree (measured).
_PLAIN = 60_000


class Pairs(NamedTuple):
    """Station ``i[k]`` of the one lies ``distance_m[k]`` from station ``j[k]`` of the other, in order."""

    i: Ints
    j: Ints
    distance_m: Floats

    def within(self, reach_m: float) -> "Pairs":
        """Those less than ``reach_m`` apart."""
        close = (self.distance_m < reach_m).nonzero()[0]
        if len(close) == len(self.i):
            return self
        return Pairs(self.i[close], self.j[close], self.distance_m[close])


def box(xy: Floats) -> Floats:
    """Least x and y, greatest x and y of points (n, 2): shape (4,)."""
    return np.concatenate([xy.min(axis=0), xy.max(axis=0)])


def inside(xy: Floats, bounds: Floats, reach_m: float) -> NDArray[np.bool_]:
    """Which points lie in a box widened on all sides."""
    x, y = xy[:, 0], xy[:, 1]
    mask: NDArray[np.bool_] = (
        (x >= bounds[0] - reach_m)
        & (y >= bounds[1] - reach_m)
        & (x <= bounds[2] + reach_m)
        & (y <= bounds[3] + reach_m)
    )
    return mask


def near_pairs(a: Floats, b: Floats, a_box: Floats, b_box: Floats, reach_m: float) -> Pairs:
    """All pairs of points less than ``reach_m`` apart.

    Parameters
    ----------
    a, b
        Points, shapes (n, 2) and (m, 2), metres.
    a_box, b_box
        Their boxes.
    """
    some_a = inside(a, b_box, reach_m).nonzero()[0]
    some_b = inside(b, a_box, reach_m).nonzero()[0]
    if len(some_a) == 0 or len(some_b) == 0:
        nothing = np.empty(0, dtype=np.intp)
        return Pairs(nothing, nothing, np.empty(0))
    p, q = a.take(some_a, axis=0), b.take(some_b, axis=0)  # rows by an index array are slow to take
    if len(p) * len(q) <= _PLAIN:
        dx = p[:, :1] - q[:, 0]
        dy = p[:, 1:] - q[:, 1]
        square = (dx * dx + dy * dy).ravel()
        close = (square < reach_m * reach_m).nonzero()[0]  # far quicker than of two dimensions
        i = close // len(q)
        j = close - i * len(q)
        square = square[close]
    else:
        # a micrometre more, so that the same comparison below decides as in the plain way
        i, j = STRtree(points(q)).query(points(p), predicate="dwithin", distance=reach_m + 1e-6)
        order = np.lexsort((j, i))
        i, j = i[order], j[order]
        dx, dy = p[:, 0].take(i) - q[:, 0].take(j), p[:, 1].take(i) - q[:, 1].take(j)
        square = dx * dx + dy * dy
        close = square < reach_m * reach_m
        i, j, square = i[close], j[close], square[close]
    return Pairs(some_a[i], some_b[j], np.sqrt(square))


def own_pairs(xy: Floats, reach_m: float) -> Pairs:
    """All ordered pairs of different points of one set, less than ``reach_m`` apart."""
    if len(xy) < 2 or reach_m <= 0.0:
        nothing = np.empty(0, dtype=np.intp)
        return Pairs(nothing, nothing, np.empty(0))
    bounds = box(xy)
    found = near_pairs(xy, xy, bounds, bounds, reach_m)
    other = found.i != found.j
    return Pairs(found.i[other], found.j[other], found.distance_m[other])
