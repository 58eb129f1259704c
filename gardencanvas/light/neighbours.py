"""Light that a canopy standing beside a plant, not over it, takes from it.

The sky a plant sees is cut into cells of azimuth and elevation, each with its share of the month's light:
straight sun where the sun passes, light of the whole sky everywhere. A canopy beside hides a window of that
sky; what the window held, times what the canopy does not let through, is taken.

Approximations. The canopy is an upright cylinder, evenly leafed, seen as a window as wide as the cylinder,
reaching from its underside's far edge up to its top at the mean distance of its near face. All rays of a
band of the window pass the mean length of leaf, with leaves turned evenly to all sides (G = 0.5; Goudriaan
1977, from memory). Against rays cast through such cylinders the share left is within 0.06 from a third of a
radius outside the rim on, and within 0.12 at the rim itself.
Several canopies' factors are multiplied, as if they did not stand behind each other.
"""

from functools import lru_cache
from math import pi
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from gardencanvas.garden.site import Site
from gardencanvas.light.diffuse import diffuse_share
from gardencanvas.light.sun import sun_path

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

AZIMUTH_CELLS = 360
ELEVATION_CELLS = 60
_CHUNK = 4096  # points at a time, so that the work stays in the processor's cache
G = 0.5  # projected leaf area per leaf area, leaves turned evenly to all sides
_FINE = 480  # sun positions a day
_SPREAD_D = (-10, -5, 0, 5, 10)  # days around the representative one, so that a month is no single line


# A window begins in the first turn and is at most half a turn wide, so one turn and a half never wraps.
_COLUMNS = AZIMUTH_CELLS * 3 // 2 + 2


class Sky(NamedTuple):
    """The light of the sky over a site, cumulated over azimuth and elevation.

    ``light[m, a, e]`` is month m's share from azimuths below cell ``a`` and elevations below cell ``e``,
    shape (12, AZIMUTH_CELLS + 1, ELEVATION_CELLS + 1). ``flat`` holds a turn and a half of it, with one more
    elevation, in one row.
    """

    light: Floats
    flat: Floats


@lru_cache(maxsize=32)
def _beam(latitude_deg: float) -> Floats:
    """Straight sunlight by sky cell, shape (12, azimuths, elevations); months sum to 1, or 0 in the dark."""
    cells = np.zeros((12, AZIMUTH_CELLS, ELEVATION_CELLS))
    for shift in _SPREAD_D:
        path = sun_path(latitude_deg, _FINE, shift)
        column = (path.azimuth / (2 * pi) * AZIMUTH_CELLS).astype(np.int64) % AZIMUTH_CELLS
        row = np.clip((path.elevation / (pi / 2) * ELEVATION_CELLS).astype(np.int64), 0, ELEVATION_CELLS - 1)
        month = np.broadcast_to(np.arange(12)[:, None], column.shape)
        np.add.at(cells, (month, column, row), path.weight)
    total = cells.sum(axis=(1, 2), keepdims=True)
    return np.asarray(cells / np.maximum(total, 1e-12))


@lru_cache(maxsize=32)
def _sky(latitude_deg: float, diffuse: tuple[float, ...]) -> Sky:
    edges = np.linspace(0.0, pi / 2, ELEVATION_CELLS + 1)
    whole = np.diff(np.square(np.sin(edges))) / AZIMUTH_CELLS
    beam = _beam(latitude_deg)
    dark = beam.sum(axis=(1, 2)) < 0.5
    part = np.where(dark, 1.0, np.asarray(diffuse))[:, None, None]
    cells = part * whole + (1.0 - part) * beam
    turned = np.concatenate([cells, cells], axis=1)[:, : _COLUMNS - 1]
    light = np.zeros((12, _COLUMNS, ELEVATION_CELLS + 2))
    light[:, 1:, 1:-1] = turned.cumsum(axis=1).cumsum(axis=2)
    light[:, :, -1] = light[:, :, -2]
    return Sky(light[:, : AZIMUTH_CELLS + 1, : ELEVATION_CELLS + 1], light.ravel())


def sky(site: Site) -> Sky:
    """The sky over a site with its light, month by month."""
    return _sky(site.latitude_deg, tuple(diffuse_share(site.climate).tolist()))


def _below(over: Sky, begin: Ints, end: Ints, tangent: Floats) -> Floats:
    """Light between two columns of the sky and below an elevation, given by its tangent."""
    height = np.arctan(tangent) * (ELEVATION_CELLS / (pi / 2))
    row = height.astype(np.int64)
    part = height - row
    light = over.flat
    first, last = begin + row, end + row
    lower = light[last] - light[first]
    return np.asarray(lower + (light[last + 1] - light[first + 1] - lower) * part)


def _columns(month: Ints, azimuth: Floats, half_width: Floats) -> tuple[Ints, Ints]:
    """Where the light of a window's two sides begins in the sky's row."""
    scale = AZIMUTH_CELLS / (2 * pi)
    begin = np.rint((azimuth - half_width) * scale).astype(np.int64) % AZIMUTH_CELLS
    width = np.rint(2 * half_width * scale).astype(np.int64)
    line = ELEVATION_CELLS + 2
    first: Ints = (month * _COLUMNS + begin) * line
    return first, first + np.minimum(width, AZIMUTH_CELLS // 2) * line


def _mean_inverse(low: Floats, high: Floats) -> Floats:
    """Mean of 1/t for t from low to high; 0 where the range is empty."""
    wide = high - low > 1e-9
    low, high = np.where(wide, np.maximum(low, 1e-12), 1.0), np.where(wide, high, 2.0)
    return np.asarray(np.where(wide, np.log(high / low) / (high - low), 0.0))


def share_beside(
    site: Site,
    month: ArrayLike,
    dx_m: ArrayLike,
    dy_m: ArrayLike,
    radius_m: ArrayLike,
    top_m: ArrayLike,
    base_m: ArrayLike,
    leaf_area: ArrayLike,
    at_m: ArrayLike = 0.0,
) -> Floats:
    """Share of light that a canopy beside a point leaves to it; all arguments broadcast.

    Parameters
    ----------
    month
        0–11, the month whose sun is asked for.
    dx_m, dy_m
        From the point to the canopy's centre, on the plan (y down).
    radius_m, top_m, base_m, leaf_area
        Of the canopy; leaf area per m² of its own footprint.
    at_m
        Height of the point, above ground.

    Returns
    -------
    ndarray
        1 where nothing is taken. A point within the canopy's radius gets 1: what stands over it is the matter
        of ``share_below``. Where a plant lies partly under a canopy, its light is
        ``cover exp(−k L) + (1 − cover) share_beside``.
    """
    arrays = np.broadcast_arrays(month, dx_m, dy_m, radius_m, top_m, base_m, leaf_area, at_m)
    over, turn = sky(site), float(np.radians(site.bearing_deg))
    shape, size = arrays[0].shape, arrays[0].size
    columns = [np.asarray(a, dtype=np.float64).ravel() for a in arrays]
    left = np.empty(size)
    for begin in range(0, size, _CHUNK):
        part = slice(begin, begin + _CHUNK)
        left[part] = _beside(over, turn, *(c[part] for c in columns))
    return left.reshape(shape)


def _beside(
    over: Sky, turn: float, month: Floats, dx: Floats, dy: Floats,
    r: Floats, top: Floats, base: Floats, leaf: Floats, z: Floats,
) -> Floats:  # fmt: skip
    distance = np.hypot(dx, dy)
    beside = (distance > r) & (r > 1e-6) & (top > z)
    far = np.where(beside, distance, 1.0)
    r = np.where(beside, r, 0.0)
    half = np.arcsin(r / far)
    columns = _columns(month.astype(np.int64), turn + np.arctan2(dx, -dy), half)
    # Faces at their mean distance over the window. Its rays cross the disc on chords of π r/2 in the mean
    # from afar and of 4 r/π from its rim; their middles lie at d cos θ, in the mean d sin α / α.
    chord = r * (pi / 2 - (pi / 2 - 4 / pi) * np.square(r / far))
    middle = np.where(beside, r / np.maximum(half, 1e-9), 1.0)
    near, back = np.maximum(middle - chord / 2, 1e-6), middle + chord / 2
    upper, under = np.maximum(top - z, 0.0), np.maximum(base - z, 0.0)
    density = G * leaf / np.maximum(top - base, 1e-6)
    taken = _taken(over, columns, (near, back, under, upper), density)
    return np.asarray(np.where(beside, 1.0 - taken, 1.0))


def _taken(
    over: Sky, columns: tuple[Ints, Ints], box: tuple[Floats, Floats, Floats, Floats], density: Floats
) -> Floats:
    """Light a box takes whose faces stand at two distances between two heights.

    The level way of a ray through the box depends on the tangent t of its elevation. Steep rays leave
    through the top, low ones enter through the underside, those between cross both faces (or, through a
    flat box, top and underside). In each of these bands of the sky the mean way over t is taken.
    """
    near, back, under, upper = box
    raised = bool(np.any(under > 0.0))
    enter, leave = under / near, upper / back
    bands = [under / back, np.minimum(enter, leave), np.maximum(enter, leave), upper / near]
    through_faces = back - near
    flat = (upper - under) * _mean_inverse(bands[1], bands[2]) if raised else through_faces
    ways = [
        back - under * _mean_inverse(bands[0], bands[1]),
        np.where(enter < leave, through_faces, flat),
        upper * _mean_inverse(bands[2], bands[3]) - near,
    ]
    taken = np.zeros_like(near)
    below = _below(over, *columns, bands[0]) if raised else taken
    for band in range(0 if raised else 1, 3):
        above = _below(over, *columns, bands[band + 1])
        slope = (bands[band] + bands[band + 1]) / 2
        way = np.maximum(ways[band], 0.0) * np.sqrt(1.0 + slope * slope)
        taken = taken - (above - below) * np.expm1(-density * way)
        below = above
    return taken
