"""How closely the stands of a bed are mixed: the density of each near any spot of the bed.

Crops in rows by turns share all light, blocks at two ends of a bed share none (strips wider than about a
metre gain little: van Oort et al. 2020). Every plant is spread over the ground within its reach, and the
share of the bed's ground within reach of a spot that each stand would fill at its usual spacing is taken.
"""

from math import ceil, sqrt

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.fit.stands import HEIGHT, Stand
from gardencanvas.garden.places import bed_ground
from gardencanvas.measures.yields.bedful import Bedful

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

CELL_M = 0.1
MOST_CELLS = 4000
SPOTS = 72  # of the bed's cells so many are looked at, evenly
REACH = 1.0  # a plant's reach, in usual distances between rows …
SHADOW = 0.5  # … or in its heights, if that is more: noon shadows in summer (common practice, both)


def local_density(bedful: Bedful) -> Floats:
    """Density of each stand near some spots of its bed, shape (spots, stands).

    The mean over the spots of each stand is ``Bedful.density``.
    """
    bounds = bed_ground(bedful.bed).bounds
    cell = max(CELL_M, sqrt((bounds[2] - bounds[0]) * (bounds[3] - bounds[1]) / MOST_CELLS))
    inside = _inside(bedful, bounds, cell)
    spots = _spots(inside)
    near = np.stack([_near(s, inside, bounds, cell, spots) for s in bedful.stands], axis=1)
    mean = near.mean(axis=0)
    whole = np.broadcast_to(bedful.density, near.shape)
    return np.where(mean > 0.0, near * (bedful.density / np.maximum(mean, 1e-12)), whole)


def _inside(bedful: Bedful, bounds: tuple[float, ...], cell: float) -> Floats:
    """Which cells of the bed's box lie in the bed, shape (down, across), 0 or 1."""
    x0, y0, x1, y1 = bounds
    across, down = max(ceil((x1 - x0) / cell - 1e-9), 1), max(ceil((y1 - y0) / cell - 1e-9), 1)
    x, y = np.meshgrid(x0 + (np.arange(across) + 0.5) * cell, y0 + (np.arange(down) + 0.5) * cell)
    inside: Floats = shapely.contains_xy(bed_ground(bedful.bed), x, y).astype(np.float64)
    return inside if inside.any() else np.ones_like(inside)


def _spots(inside: Floats) -> Ints:
    """Cells to look at, as flat indices: every so many of those inside."""
    cells = np.flatnonzero(inside)
    count = min(len(cells), SPOTS)
    chosen: Ints = cells[(np.arange(count) * len(cells) + len(cells) // 2) // count]
    return chosen


def _near(stand: Stand, inside: Floats, bounds: tuple[float, ...], cell: float, spots: Ints) -> Floats:
    """Share of the ground within reach of spots that a stand's plants would fill, shape (spots,)."""
    down, across = inside.shape
    column = np.clip(((stand.xy[:, 0] - bounds[0]) / cell).astype(np.intp), 0, across - 1)
    row = np.clip(((stand.xy[:, 1] - bounds[1]) / cell).astype(np.intp), 0, down - 1)
    plants: Floats = np.bincount(row * across + column, minlength=inside.size).astype(np.float64)
    high = float(stand.sizes[HEIGHT].max(initial=0.0))
    reach = max(round(max(REACH * stand.ground.across_m, SHADOW * high) / cell), 1)
    filled = _summed((plants * stand.ground.need_m2).reshape(inside.shape), reach)
    ground = _summed(inside, reach) * cell * cell
    return (filled / np.maximum(ground, 1e-9)).ravel()[spots]


def _summed(values: Floats, reach: int) -> Floats:
    """Sum over the square of cells within reach of each cell, twice: near ones count more."""
    for _ in range(2):
        for axis in (0, 1):
            values = _along(values, reach, axis)
    return values


def _along(values: Floats, reach: int, axis: int) -> Floats:
    """Sums of the ``reach`` cells before and after each, along an axis."""
    length = values.shape[axis]
    half = max(round(reach / 2), 1)  # two passes of half the reach reach as far as one of the whole
    total = np.concatenate([np.zeros_like(values.take([0], axis)), values.cumsum(axis)], axis)
    place = np.arange(length)
    return np.asarray(
        total.take(np.minimum(place + half + 1, length), axis) - total.take(np.maximum(place - half, 0), axis)
    )
