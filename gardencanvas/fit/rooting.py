"""How roots are spread over depth, and how far two crops' roots lie in the same soil.

Roots thin out with depth: the share above depth x is 1 − exp(−f x) (Gerwitz & Page 1974, Journal of Applied
Ecology 11:773). With 95 % of them above the effective depth Zr, f = 3/Zr (−ln 0.05 = 2.9957). Two crops'
overlap is that of Schoener (1970, Ecology 51:408): the lesser of both shares, summed over bands of depth, 0
where no root of the one meets one of the other and 1 where both are spread alike.
"""

from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.fit.ground import Ground
from gardencanvas.fit.own import usual_load

Floats = NDArray[np.float64]

# Bands of depth, metres; the last is open below.
BANDS_M = (0.0, 0.15, 0.30, 0.60, 1.0, 1.5, np.inf)
FADING = 3.0  # f times Zr

_EDGES = np.array(BANDS_M)[:, None]


def held_above(depth_m: Floats, fading_per_m: Floats | float) -> Floats:
    """Share of roots above a depth, 1 − exp(−f x); arrays that broadcast together."""
    share: Floats = -np.expm1(-np.asarray(fading_per_m) * depth_m)
    return share


def by_band(depth_m: Floats) -> Floats:
    """Share of a plant's roots in each band of depth.

    Parameters
    ----------
    depth_m
        Effective root depth Zr, shape (n,), metres; roots are counted down to it.

    Returns
    -------
    ndarray, shape (bands, n)
        Each column sums to 1; where there are no roots yet they are taken to begin at the surface.
    """
    depth = np.maximum(depth_m, 1e-6)
    cumulated = held_above(np.minimum(_EDGES, depth), FADING / depth) / -np.expm1(-FADING)
    return np.diff(cumulated, axis=0)


def overlap(one: Floats, two: Floats) -> Floats:
    """Schoener overlap of shares by band, shapes (bands, n): (n,), 0–1."""
    shared: Floats = np.minimum(one, two).sum(axis=0)
    return shared


class Room(NamedTuple):
    """Ground a stand's roots reach.

    ``usual`` is how many times its like fill a plant's room at its usual spacing. ``filled``, shape (weeks,),
    is the share of that ground its roots fill, growing as its canopy does; ``bands``: (bands, weeks).
    """

    radius_m: float
    usual: float
    filled: Floats
    bands: Floats


def room_of(crop: Crop, ground: Ground, canopy_m: Floats, depth_m: Floats) -> Room:
    """The root room of a stand.

    As wide as its roots spread, where that is known, and else as its leaves (common practice for herbs: root
    systems about as wide as the canopy); no wider than the ground its usual spacing gives it. The spreads on
    record are those of plants with room on all sides; among their like, roots meet as leaves do.

    Parameters
    ----------
    canopy_m, depth_m
        Canopy radius and root depth through the weeks.
    """
    spread = crop.root_spread_m or crop.spread_m
    radius = min(spread.mid / 2, ground.radius_m) if spread else ground.radius_m
    peak = float(canopy_m.max(initial=0.0))
    filled: Floats = (canopy_m / peak) ** 2 if peak > 0.0 else np.zeros(len(canopy_m))
    radius = max(radius, peak)
    return Room(radius, _usual(radius, ground.along_m, ground.across_m), filled, by_band(depth_m))


@lru_cache(maxsize=4096)
def _usual(radius_m: float, along_m: float, across_m: float) -> float:
    return float(usual_load(np.array([radius_m]), along_m, across_m)[0])
