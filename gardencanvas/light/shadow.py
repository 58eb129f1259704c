"""The shadow of a fixture on level ground, as a polygon on the plan."""

from itertools import pairwise
from math import cos, radians, sin, tan

import numpy as np
from numpy.typing import NDArray
from shapely import LineString, MultiPoint, Polygon, union_all
from shapely.affinity import translate
from shapely.geometry.base import BaseGeometry

from gardencanvas.garden.ground import Fixture
from gardencanvas.light.compass import to_plan

Floats = NDArray[np.float64]

LOWEST_DEG = 3.0  # below it shadows grow without bound and refraction matters


def displacement(height_m: float, elevation_deg: float, azimuth_deg: float) -> tuple[float, float]:
    """Where the shadow of a point falls, metres east and north of its foot.

    ``L = h / tan(elevation)``, away from the sun: ``−L (sin azimuth, cos azimuth)``.
    """
    length = height_m / tan(radians(elevation_deg))
    return -length * sin(radians(azimuth_deg)), -length * cos(radians(azimuth_deg))


def shadow(
    fixture: Fixture, bearing_deg: float, elevation_deg: float, azimuth_deg: float
) -> BaseGeometry | None:
    """The ground a fixture shades, in plan metres; None while the sun stands below 3°.

    The outline is swept along the shadow of its own height: from the underside, for a raised crown, to the
    top. Exact for any simple outline, convex or not.
    """
    if elevation_deg < LOWEST_DEG:
        return None
    outline = Polygon(fixture.outline)
    (begin, end) = to_plan(
        [displacement(h, elevation_deg, azimuth_deg) for h in (fixture.base_m, fixture.height_m)],
        bearing_deg,
    )
    return sweep(outline, (float(begin[0]), float(begin[1])), (float(end[0]), float(end[1])))


def sweep(outline: Polygon, begin: tuple[float, float], end: tuple[float, float]) -> BaseGeometry:
    """The ground an outline covers while it is moved in a straight line from one offset to another."""
    near, far = translate(outline, *begin), translate(outline, *end)
    ring = np.asarray(outline.exterior.coords)
    hull = MultiPoint(np.vstack([ring + begin, ring + end])).convex_hull
    if outline.convex_hull.area - outline.area < 1e-9:
        return hull
    sides = [
        MultiPoint([*(np.asarray(side) + begin), *(np.asarray(side) + end)]).convex_hull
        for side in pairwise(ring)
    ]
    parts = [near, far, *(s for s in sides if not isinstance(s, LineString))]
    return union_all(parts)
