"""Light that walls, fences, hedges, trees and sheds leave to points of the garden, month by month."""

from collections.abc import Sequence
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

_CHUNK = 256  # points at a time, so that the work stays in the processor's cache


class _Beams(NamedTuple):
    """Sun positions of all twelve days in one row."""

    column: NDArray[np.int64]  # (s,) nearest of the horizon's directions
    tangent: Floats  # (s,) of the elevation
    weight: Floats  # (12, steps)
    night: NDArray[np.bool_]  # (12,) months in which the sun does not rise


@lru_cache(maxsize=64)
def _beams(latitude_deg: float) -> _Beams:
    path = sun_path(latitude_deg)
    column = np.rint(path.azimuth / (2.0 * np.pi) * DIRECTIONS).astype(np.int64) % DIRECTIONS
    return _Beams(column.ravel(), np.tan(path.elevation).ravel(), path.weight, path.weight.sum(axis=1) < 0.5)


def _sky(opaque: Floats, partial: Sequence[tuple[Seen, float]]) -> Floats:
    """Sky view factor of level ground, shape (n,): mean over directions of what is left of sin² elevation."""

    def share(tangent: Floats) -> Floats:
        square = np.square(np.minimum(tangent, 1e6))
        return np.asarray(square / (1.0 + square))

    hidden = share(opaque)
    left = 1.0 - hidden
    open_part = np.maximum(left, 1e-12)
    for view, clear in partial:
        low = hidden if view.low is None else np.maximum(share(view.low), hidden)
        part = np.maximum(np.maximum(share(view.high), hidden) - low, 0.0)
        left = left * (1.0 - (1.0 - clear) * part / open_part)
    return np.asarray(left.mean(axis=1))


def _chunk(bodies: Sequence[Solid], points: Floats, beams: _Beams, diffuse: Floats) -> Floats:
    opaque = np.zeros((len(points), DIRECTIONS))
    partial: list[tuple[Seen, float]] = []
    for body in bodies:
        view = seen(body, points)
        if view.low is None and body.clear == 0.0:
            np.maximum(opaque, view.high, out=opaque)
        else:
            partial.append((view, body.clear))
    lit = (opaque[:, beams.column] <= beams.tangent).astype(np.float64)
    for view, clear in partial:
        hit = view.high[:, beams.column] > beams.tangent
        if view.low is not None:
            hit &= view.low[:, beams.column] <= beams.tangent
        lit *= np.where(hit, clear, 1.0)
    beam = np.einsum("nms,ms->nm", lit.reshape(len(points), *beams.weight.shape), beams.weight)
    sky = _sky(opaque, partial)[:, None]
    return np.asarray(diffuse * sky + (1.0 - diffuse) * np.where(beams.night, sky, beam))


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
    if not fixtures:
        return np.ones((len(plan), 12))
    points = to_compass(plan, site.bearing_deg)
    bodies = [solid(f, site.bearing_deg) for f in fixtures]
    beams, diffuse = _beams(site.latitude_deg), diffuse_share(site.climate)
    left = np.empty((len(points), 12))
    for begin in range(0, len(points), _CHUNK):
        part = slice(begin, begin + _CHUNK)
        left[part] = _chunk(bodies, points[part], beams, diffuse)
    return left
