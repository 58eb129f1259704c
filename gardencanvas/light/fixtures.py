"""Light that walls, fences, hedges, trees and sheds leave to points of the garden, month by month."""

from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.site import Site
from gardencanvas.light.compass import to_compass
from gardencanvas.light.diffuse import diffuse_share
from gardencanvas.light.horizon import DIRECTIONS, Seen, Solid, seen, solid
from gardencanvas.light.sun import sun_path

Floats = NDArray[np.float64]
Singles = NDArray[np.float32]
Ints = NDArray[np.int64]

_CHUNK = 256  # points at a time, so that the work stays in the processor's cache


class _Beams(NamedTuple):
    """Sun positions of all twelve days in one row."""

    column: Ints  # (s,) nearest of the horizon's directions
    tangent: Singles  # (s,) of the elevation
    weight: Floats  # (12, steps)
    night: NDArray[np.bool_]  # (12,) months in which the sun does not rise


@lru_cache(maxsize=64)
def _beams(latitude_deg: float) -> _Beams:
    path = sun_path(latitude_deg)
    column = np.rint(path.azimuth / (2.0 * np.pi) * DIRECTIONS).astype(np.int64) % DIRECTIONS
    tangent = np.tan(path.elevation).ravel().astype(np.float32)
    return _Beams(column.ravel(), tangent, path.weight, path.weight.sum(axis=1) < 0.5)


def _share(tangent: Singles) -> Singles:
    """Share of an even sky below an elevation, in one direction: sin², from its tangent."""
    square = np.square(np.minimum(tangent, np.float32(1e6)))
    return np.asarray(square / (1.0 + square))


def _sky(opaque: Singles, partial: Sequence[tuple[Seen, float]]) -> Floats:
    """Sky view factor of level ground, shape (n,): mean over directions of what is left of the sky."""
    hidden = _share(opaque)
    left = 1.0 - hidden
    for view, clear in partial:
        behind = hidden[:, view.columns]
        low = behind if view.low is None else np.maximum(_share(view.low), behind)
        part = np.maximum(np.maximum(_share(view.high), behind) - low, 0.0)
        left[:, view.columns] *= 1.0 - (1.0 - clear) * part / np.maximum(1.0 - behind, 1e-12)
    return np.asarray(left.mean(axis=1, dtype=np.float64))


def _beam(opaque: Singles, partial: Sequence[tuple[Seen, float]], beams: _Beams) -> Floats:
    """Share of the straight sun that arrives, shape (n, 12)."""
    lit = (opaque[:, beams.column] <= beams.tangent).astype(np.float64)
    for view, clear in partial:
        at = np.full(DIRECTIONS, -1)
        at[view.columns] = np.arange(len(view.columns))
        met = np.flatnonzero(at[beams.column] >= 0)
        column, tangent = at[beams.column[met]], beams.tangent[met]
        hit = view.high[:, column] > tangent
        if view.low is not None:
            hit &= view.low[:, column] <= tangent
        lit[:, met] *= np.where(hit, clear, 1.0)
    return np.asarray(np.einsum("nms,ms->nm", lit.reshape(len(lit), *beams.weight.shape), beams.weight))


def _chunk(bodies: Sequence[Solid], points: Floats, beams: _Beams, diffuse: Floats) -> Floats:
    opaque = np.zeros((len(points), DIRECTIONS), dtype=np.float32)
    partial: list[tuple[Seen, float]] = []
    for body in bodies:
        view = seen(body, points)
        if view.low is None and body.clear == 0.0:
            opaque[:, view.columns] = np.maximum(opaque[:, view.columns], view.high)
        else:
            partial.append((view, body.clear))
    sky = _sky(opaque, partial)[:, None]
    beam = np.where(beams.night, sky, _beam(opaque, partial, beams))
    return np.asarray(diffuse * sky + (1.0 - diffuse) * beam)


def _neighbourhoods(points: Floats) -> Iterator[Ints]:
    """Indices of points in chunks of points that lie near each other."""
    rows = np.ceil(np.sqrt(len(points) / _CHUNK))
    band = np.argsort(points[:, 1], kind="stable")
    size = int(np.ceil(len(points) / rows))
    for begin in range(0, len(points), size):
        row = band[begin : begin + size]
        row = row[np.argsort(points[row, 0], kind="stable")]
        for at in range(0, len(row), _CHUNK):
            yield row[at : at + _CHUNK]


def open_sky(site: Site, fixtures: Sequence[Fixture], xy: ArrayLike) -> Floats:
    """Share of open-sky light that fixtures leave to points on the ground.

    Straight sun: 24 positions on one day a month, weighted by the sine of the elevation, each met by a
    fixture or not (horizon seen over 72 directions). Light of the whole sky: the sky view factor. Both joined
    by the month's diffuse share. What passes a fixture (``clear_share``) is multiplied, fixture by fixture.
    The answer is the same for a garden turned together with its bearing, or mirrored east to west.

    Parameters
    ----------
    xy
        Plan points, shape (n, 2).

    Returns
    -------
    ndarray, shape (n, 12)
        One column a month, January first; 1 is open sky.
    """
    plan = np.asarray(xy, dtype=np.float64).reshape(-1, 2)
    if not fixtures or not len(plan):
        return np.ones((len(plan), 12))
    points = to_compass(plan, site.bearing_deg)
    bodies = [solid(f, site.bearing_deg) for f in fixtures]
    beams, diffuse = _beams(site.latitude_deg), diffuse_share(site.climate)
    left = np.empty((len(points), 12))
    for part in _neighbourhoods(points):
        left[part] = _chunk(bodies, points[part], beams, diffuse)
    return left
