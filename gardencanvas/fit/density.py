"""Weight of a plant and its number on the ground: how far plants hold each other back.

The reciprocal yield law 1/w = a + b N (Shinozaki & Kira 1956; w weight of a plant, N plants per m²): of a
plant alone on any ground, one among a/b plants to the m² weighs half.
"""

from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.fit.own import usual_load
from gardencanvas.fit.thresholds import HELD_BACK_HIGH, HELD_BACK_LOW

Floats = NDArray[np.float64]

# Numbers of plants for each one of the usual spacing for which the crowd of leaves is reckoned.
_DENSER = np.geomspace(1.0, 16.0, 17)


class HeldBack(NamedTuple):
    """How far plants hold each other back at the usual spacing: c = b N / (a + b N), 0–1."""

    low: float
    mid: float
    high: float
    known: bool  # from densities published of the crop itself


UNKNOWN = HeldBack(HELD_BACK_LOW, (HELD_BACK_LOW + HELD_BACK_HIGH) / 2, HELD_BACK_HIGH, False)


def held_back(crop: Crop, need_m2: float, seedlings: int = 1) -> HeldBack:
    """How far a crop's plants hold each other back at a spacing that gives so many so much ground."""
    half = crop.half_weight_per_m2
    if half is None:
        return UNKNOWN
    usual = seedlings / need_m2
    low, mid, high = (usual / (usual + n) for n in (half.high, half.mid, half.low))
    return HeldBack(low, mid, high, True)


def size_at(density: float, held_back: float) -> float:
    """Weight of a plant over its weight at the usual spacing: 1 / (1 − c + c D).

    Parameters
    ----------
    density
        Plants for each one of the usual spacing, D = N/N_usual.
    held_back
        c, 0–1: 0 for plants that do not notice each other, 1 where the yield per m² no longer depends on
        their number.
    """
    return 1.0 / (1.0 - held_back + held_back * density)


def sizes_among(load: Floats, radius_m: float, along_m: float, across_m: float, held_back: float) -> Floats:
    """Weight of plants over the usual one from what their like overlap of their footprints.

    As many plants as would overlap so much if the usual spacing were narrowed evenly: D in ``size_at``.

    Parameters
    ----------
    load
        Share of each footprint that its like overlap, summed over them, any shape.
    radius_m
        Radius of the footprints.
    along_m, across_m
        The usual spacing.
    """
    loads = _loads(radius_m, along_m, across_m)
    density = np.where(load > loads[0], np.interp(load, loads, _DENSER), 1.0)
    sizes: Floats = 1.0 / (1.0 - held_back + held_back * density)
    return sizes


@lru_cache(maxsize=1024)
def _loads(radius_m: float, along_m: float, across_m: float) -> Floats:
    radius = np.array([radius_m])
    return np.array([float(usual_load(radius, along_m / d**0.5, across_m / d**0.5)[0]) for d in _DENSER])
