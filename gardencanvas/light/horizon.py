"""How high fixtures rise into the sky, seen from many points in all compass directions."""

from itertools import pairwise
from typing import NamedTuple

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.garden.ground import Fixture
from gardencanvas.light.compass import to_compass

Floats = NDArray[np.float64]

DIRECTIONS = 72  # every 5°
AZIMUTHS = np.arange(DIRECTIONS) * (2.0 * np.pi / DIRECTIONS)  # radians clockwise from north
# v @ _ACROSS is cross(u, v) = sin a · v_north − cos a · v_east for every ray u.
_ACROSS = np.vstack([-np.cos(AZIMUTHS), np.sin(AZIMUTHS)])


class Solid(NamedTuple):
    """A fixture in compass metres."""

    ring: Floats  # (corners + 1, 2) closed, east and north
    base_m: float
    top_m: float
    clear: float


class Seen(NamedTuple):
    """What a solid hides: tangents of the elevations between which it stands, shape (n, directions)."""

    low: Floats | None  # None: from the ground up
    high: Floats


def solid(fixture: Fixture, bearing_deg: float) -> Solid:
    """A fixture turned into the compass frame."""
    ring = to_compass(fixture.outline, bearing_deg)
    return Solid(np.vstack([ring, ring[:1]]), fixture.base_m, fixture.height_m, fixture.clear_share)


def _inverse_distances(ring: Floats, points: Floats, far: bool) -> tuple[Floats, Floats | None]:
    """One over the distance at which rays enter and leave an outline; 0 where they miss it.

    A ray u meets the side from A to B where cross(u, A) and cross(u, B) differ in sign, at the distance
    cross(A, B − A) / cross(u, B − A).
    """
    shape = (len(points), DIRECTIONS)
    nearest = np.zeros(shape)
    farthest = np.full(shape, np.inf) if far else None
    inverse, across, hit = np.empty(shape), np.empty(shape), np.empty(shape, dtype=np.bool_)
    corners = ring[None, :, :] - points[:, None, :]
    sides = np.diff(ring, axis=0)
    reach = corners[:, :-1, 0] * sides[:, 1] - corners[:, :-1, 1] * sides[:, 0]
    per_reach = np.divide(1.0, reach, out=np.zeros_like(reach), where=np.abs(reach) > 1e-12)
    along = sides @ _ACROSS
    # Half-open signs, so that a ray through a corner meets one of its two sides.
    signs = []
    for corner in range(len(sides)):
        np.matmul(corners[:, corner], _ACROSS, out=across)
        signs.append(across > 0.0)
    signs.append(signs[0])
    for side, (before, after) in enumerate(pairwise(signs)):
        np.multiply(per_reach[:, side, None], along[side], out=inverse)
        np.not_equal(before, after, out=hit)
        np.multiply(inverse, hit, out=inverse)
        np.maximum(nearest, inverse, out=nearest)
        if farthest is not None:
            np.minimum(farthest, np.where(inverse > 0.0, inverse, np.inf), out=farthest)
    return nearest, farthest


def seen(body: Solid, points: Floats) -> Seen:
    """What a solid hides from points, over 72 compass directions.

    Exact for a solid on the ground; a raised one with a hollow outline is taken as filled between the first
    and the last side a ray meets.

    Parameters
    ----------
    points
        East and north, shape (n, 2).
    """
    raised = body.base_m > 0.0
    near, far = _inverse_distances(body.ring, points, raised)
    low_x, low_y = body.ring.min(axis=0)
    high_x, high_y = body.ring.max(axis=0)
    x, y = points[:, 0], points[:, 1]
    boxed = np.flatnonzero((x >= low_x) & (x <= high_x) & (y >= low_y) & (y <= high_y))
    if len(boxed):
        outline = shapely.Polygon(body.ring)
        shapely.prepare(outline)
        inside = boxed[shapely.contains_xy(outline, x[boxed], y[boxed])]
        near[inside] = np.inf
    if far is None:
        return Seen(None, near * body.top_m)
    low = np.where(np.isinf(far), np.inf, far * body.base_m)
    return Seen(low, near * body.top_m)
