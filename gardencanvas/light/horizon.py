"""How high fixtures rise into the sky, seen from many points in all compass directions."""

from itertools import pairwise
from typing import NamedTuple

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.garden.ground import Fixture
from gardencanvas.light.compass import to_compass

Floats = NDArray[np.float64]
Singles = NDArray[np.float32]
Ints = NDArray[np.int64]

DIRECTIONS = 72  # every 5°
AZIMUTHS = np.arange(DIRECTIONS) * (2.0 * np.pi / DIRECTIONS)  # radians clockwise from north
# Single precision holds a micrometre in a garden's metres, and halves the work.
_SIN, _COS = np.sin(AZIMUTHS).astype(np.float32), np.cos(AZIMUTHS).astype(np.float32)
_ALL = np.arange(DIRECTIONS)


class Solid(NamedTuple):
    """A fixture in compass metres."""

    ring: Floats  # (corners + 1, 2) closed, east and north
    base_m: float
    top_m: float
    clear: float
    centre: Floats  # of a circle round it
    radius_m: float


class Seen(NamedTuple):
    """What a solid hides: tangents of the elevations between which it stands, shape (n, columns)."""

    columns: Ints  # the directions, of all 72, in which it may stand
    low: Singles | None  # None: from the ground up
    high: Singles


def solid(fixture: Fixture, bearing_deg: float) -> Solid:
    """A fixture turned into the compass frame."""
    ring = to_compass(fixture.outline, bearing_deg)
    centre = (ring.min(axis=0) + ring.max(axis=0)) / 2
    radius = float(np.hypot(*(ring - centre).T).max())
    closed = np.vstack([ring, ring[:1]])
    return Solid(closed, fixture.base_m, fixture.height_m, fixture.clear_share, centre, radius)


def _columns(body: Solid, points: Floats) -> Ints:
    """Directions in which a solid may stand as seen from any of the points; all of them close by."""
    middle = (points.min(axis=0) + points.max(axis=0)) / 2
    reach = float(np.hypot(*(points - middle).T).max()) + body.radius_m
    east, north = body.centre - middle
    distance = float(np.hypot(east, north))
    if distance <= reach * 1.001:
        return _ALL
    step = 2.0 * np.pi / DIRECTIONS
    # From a point off the middle the body may lie to either side by as much as both circles together.
    half = float(np.arcsin(reach / distance)) + step
    count = 2 * int(np.ceil(half / step)) + 1
    if count >= DIRECTIONS:
        return _ALL
    first = round(float(np.arctan2(east, north)) / step) - count // 2
    return (first + np.arange(count)) % DIRECTIONS


def _inverse_distances(
    ring: Floats, points: Floats, columns: Ints, far: bool
) -> tuple[Singles, Singles | None]:
    """One over the distance at which rays enter and leave an outline; 0 where they miss it.

    A ray u meets the side from A to B where cross(u, A) and cross(u, B) differ in sign, at the distance
    cross(A, B − A) / cross(u, B − A).
    """
    sine, cosine = _SIN[columns], _COS[columns]
    shape = (len(points), len(columns))
    nearest = np.zeros(shape, dtype=np.float32)
    farthest = np.full(shape, np.inf, dtype=np.float32) if far else None
    work, other = np.empty(shape, dtype=np.float32), np.empty(shape, dtype=np.float32)
    hit = np.empty(shape, dtype=np.bool_)
    corners = ring[None, :, :] - points[:, None, :]
    sides = np.diff(ring, axis=0)
    reach = corners[:, :-1, 0] * sides[:, 1] - corners[:, :-1, 1] * sides[:, 0]
    inverse = np.divide(1.0, reach, out=np.zeros_like(reach), where=np.abs(reach) > 1e-12)
    inverse, corners = inverse.astype(np.float32), corners.astype(np.float32)
    along = (sides[:, 1, None] * sine - sides[:, 0, None] * cosine).astype(np.float32)
    # cross(u, corner) > 0, half-open, so that a ray through a corner meets one of its two sides.
    signs = []
    for corner in range(len(sides)):
        np.multiply(corners[:, corner, 1, None], sine, out=work)
        np.multiply(corners[:, corner, 0, None], cosine, out=other)
        signs.append(work > other)
    signs.append(signs[0])
    for side, (before, after) in enumerate(pairwise(signs)):
        np.multiply(inverse[:, side, None], along[side], out=work)
        np.not_equal(before, after, out=hit)
        np.multiply(work, hit, out=work)
        np.maximum(nearest, work, out=nearest)
        if farthest is not None:
            np.copyto(other, np.inf)
            np.copyto(other, work, where=work > 0.0)
            np.minimum(farthest, other, out=farthest)
    return nearest, farthest


def seen(body: Solid, points: Floats) -> Seen:
    """What a solid hides from points that lie near each other, over 72 compass directions.

    Exact for a solid on the ground; a raised one with a hollow outline is taken as filled between the first
    and the last side a ray meets.

    Parameters
    ----------
    points
        East and north, shape (n, 2).
    """
    columns = _columns(body, points)
    near, far = _inverse_distances(body.ring, points, columns, body.base_m > 0.0)
    x, y = points[:, 0], points[:, 1]
    boxed = np.flatnonzero(np.hypot(x - body.centre[0], y - body.centre[1]) <= body.radius_m)
    if len(boxed):
        outline = shapely.Polygon(body.ring)
        shapely.prepare(outline)
        near[boxed[shapely.contains_xy(outline, x[boxed], y[boxed])]] = np.inf
    near *= np.float32(body.top_m)
    if far is not None:
        far *= np.float32(body.base_m)
    return Seen(columns, far, near)
