"""What plants of one stand take from each other, against what the usual spacing makes them take."""

from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.geometry import lens_area
from gardencanvas.fit.ground import Ground
from gardencanvas.fit.near import own_pairs
from gardencanvas.garden.pattern import Block, Pattern, RingPattern, Rows, Strip

Floats = NDArray[np.float64]


class Spare(NamedTuple):
    """Overlap a station may still take from others before it is closer than its usual spacing makes it.

    ``share`` has shape (stations, sizes) in shares of its own footprint; ``size_of_week`` says which size a
    week has. ``usual``, shape (sizes,), is what its like take at the usual spacing, ``own``, as ``share``,
    what its own plants take where they stand.
    """

    share: Floats
    size_of_week: NDArray[np.intp]
    usual: Floats
    own: Floats


def usual_load(radius_m: Floats, along_m: float, across_m: float) -> Floats:
    """Share of a plant's footprint that its like overlap at the usual spacing, summed over all of them.

    Parameters
    ----------
    radius_m
        Footprint radii, shape (k,).

    Returns
    -------
    ndarray, shape (k,)
        0 where plants do not meet; may exceed 1 where several overlap the same ground.
    """
    reach = 2.0 * float(radius_m.max(initial=0.0))
    i = np.arange(-int(reach / along_m), int(reach / along_m) + 1)
    j = np.arange(-int(reach / across_m), int(reach / across_m) + 1)
    d = np.hypot(*np.meshgrid(i * along_m, j * across_m)).ravel()
    d = d[d > 0.0]
    some = np.maximum(radius_m, 1e-6)
    lens = lens_area(some[:, None], some[:, None], d[None, :])
    total: Floats = lens.sum(axis=1) / (np.pi * some * some)
    return total


@lru_cache(maxsize=4096)
def _spare(pattern: Pattern, along_m: float, across_m: float, radius_m: tuple[float, ...]) -> Spare:
    radii, size_of_week = np.unique(np.array(radius_m), return_inverse=True)
    usual = usual_load(radii, along_m, across_m)
    own = _own_load(pattern, radii)
    return Spare(np.maximum(usual - own, 0.0), size_of_week, usual, own)


def _own_load(pattern: Pattern, r: Floats) -> Floats:
    """Share of each station's footprint that its own planting overlaps, shape (stations, radii)."""
    stations = pattern.stations
    pairs = own_pairs(stations, 2.0 * float(r.max(initial=0.0)))
    distances, which = np.unique(np.rint(pairs.distance_m * 1e4) / 1e4, return_inverse=True)
    some = np.maximum(r, 1e-6)
    share = lens_area(some, some, np.maximum(distances, 1e-6)[:, None]) / (np.pi * some * some)
    load = np.empty((len(stations), len(r)))
    for k in range(len(r)):
        load[:, k] = np.bincount(pairs.i, weights=share[which, k], minlength=len(stations))
    return load


def at_home(pattern: Pattern) -> Pattern:
    """A regular pattern laid at the origin: wherever it is moved, its own plants stay as far apart."""
    if isinstance(pattern, Rows | Strip | Block | RingPattern):
        fields = {name: getattr(pattern, name) for name in type(pattern).model_fields}
        return type(pattern)(**{**fields, "origin": (0.0, 0.0), "angle_deg": 0.0})
    return pattern


def same_at_home(one: Pattern, two: Pattern) -> bool:
    """Whether two patterns differ at most in where they are laid; as ``at_home``, without making either."""
    if type(one) is not type(two) or not isinstance(one, Rows | Strip | Block | RingPattern):
        return one == two
    fields = (name for name in type(one).model_fields if name not in ("origin", "angle_deg"))
    return all(getattr(one, name) == getattr(two, name) for name in fields)


def spare_of(pattern: Pattern, ground: Ground, radius_m: Floats) -> Spare:
    """What each station of a pattern may still take from others, by the size it has.

    Parameters
    ----------
    radius_m
        Footprint radius through the weeks, shape (weeks,).
    """
    return _spare(at_home(pattern), ground.along_m, ground.across_m, tuple(radius_m.tolist()))
