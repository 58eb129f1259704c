"""A bed as a field of points: how far each is from the bed's edge and from the plants of each stand.

Distances are exact at the points, and a distance changes by no more than one walks: between the points, which
lie ``step_m`` apart, nothing is off by more than half a diagonal of that, ``slip_m``.
"""

from dataclasses import dataclass
from functools import cached_property
from math import atan2, cos, degrees, radians, sin, sqrt
from typing import TypeVar

import numpy as np
import shapely
import shapely.affinity
from numpy.typing import NDArray
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from gardencanvas.fit.stands import Stand
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground

Floats = NDArray[np.float64]
Singles = NDArray[np.float32]
Bools = NDArray[np.bool_]
_Any = TypeVar("_Any", bound=np.generic)

REACH_M = 2.0  # plants farther from a bed than so share no ground with what grows in it
_POINTS = 4000  # a bed is cut into about so many, but no finer and no coarser than …
_FINEST_M, _COARSEST_M = 0.02, 0.08


@dataclass(frozen=True, eq=False)
class Field:
    """One bed in a frame of its own: x along its longer side, turned clockwise by ``angle_deg``."""

    bed: Bed
    ground: BaseGeometry  # what of it can be planted, plan
    angle_deg: float
    step_m: float
    x: Floats  # (nx,), in the frame
    y: Floats  # (ny,)
    inside: Bools  # (ny, nx)

    @property
    def slip_m(self) -> float:
        """By how much a distance may be off between the points."""
        return self.step_m / sqrt(2.0)

    @cached_property
    def area_m2(self) -> float:
        """Ground that can be planted."""
        return float(self.ground.area)

    @cached_property
    def cell_m2(self) -> float:
        """Ground that one point stands for."""
        return self.area_m2 / int(self.inside.sum())

    @cached_property
    def plan(self) -> Floats:
        """The points inside on the plan, shape (n, 2)."""
        row, column = np.nonzero(self.inside)
        return self.to_plan(np.stack([self.x[column], self.y[row]], axis=1))

    @cached_property
    def edge_m(self) -> Singles:
        """How far the points inside lie from the edge of the ground, shape (n,)."""
        line = self.ground.boundary
        shapely.prepare(line)
        return np.asarray(shapely.distance(line, shapely.points(self.plan)), dtype=np.float32)

    def to_plan(self, xy: Floats) -> Floats:
        """Points of the frame on the plan."""
        turn = radians(self.angle_deg)
        c, s = cos(turn), sin(turn)
        found: Floats = xy @ np.array([[c, s], [-s, c]])
        return found

    def to_frame(self, xy: Floats) -> Floats:
        """Points of the plan in the frame."""
        turn = radians(self.angle_deg)
        c, s = cos(turn), sin(turn)
        found: Floats = xy @ np.array([[c, -s], [s, c]])
        return found

    def at(self, grid: NDArray[_Any], spots: Floats) -> NDArray[_Any]:
        """Values of a grid at the points nearest to spots of the frame, shape (k,)."""
        column = np.clip(np.rint((spots[:, 0] - self.x[0]) / self.step_m), 0, len(self.x) - 1)
        row = np.clip(np.rint((spots[:, 1] - self.y[0]) / self.step_m), 0, len(self.y) - 1)
        found: NDArray[_Any] = grid[row.astype(np.intp), column.astype(np.intp)]
        return found

    def near(self, stand: Stand) -> Floats | None:
        """The stand's stations that may matter here, in the frame; None where there are none."""
        xy = self.to_frame(stand.xy)
        low = np.array([self.x[0], self.y[0]]) - REACH_M
        high = np.array([self.x[-1], self.y[-1]]) + REACH_M
        some = ((xy >= low) & (xy <= high)).all(axis=1)
        return xy[some] if some.any() else None

    def distance(self, stations: Floats) -> Singles:
        """How far the points inside lie from the nearest of some stations (frame), shape (n,)."""
        square = np.full(self.inside.shape, np.inf, dtype=np.float32)
        level = np.round(stations[:, 1], 4)
        order = np.lexsort((stations[:, 0], level))
        level, across = level[order], stations[order, 0]
        breaks = np.flatnonzero(np.diff(level)) + 1
        for row_y, row_x in zip(level[np.concatenate([[0], breaks])], np.split(across, breaks), strict=True):
            right = np.clip(np.searchsorted(row_x, self.x), 1, max(len(row_x) - 1, 1))
            off = np.abs(self.x - row_x[np.minimum(right, len(row_x) - 1)])
            off = np.minimum(off, np.abs(self.x - row_x[right - 1])).astype(np.float32)
            up = (self.y - row_y).astype(np.float32)
            np.minimum(square, (off * off)[None, :] + (up * up)[:, None], out=square)
        return np.sqrt(square[self.inside])


def plantable(garden: Garden, layout: Layout, bed: Bed) -> BaseGeometry:
    """A bed without what is walked or built on; tree crowns leave the ground free."""
    ground: BaseGeometry = bed_ground(bed)
    taken = [shapely.LineString(p.line).buffer(p.width_m / 2, cap_style="flat") for p in layout.paths] + [
        Polygon(f.outline) for f in garden.fixtures if f.kind != "tree"
    ]
    taken = [t for t in taken if t.intersects(ground)]
    return ground.difference(shapely.union_all(taken)) if taken else ground


def field_of(garden: Garden, layout: Layout, bed: Bed) -> Field | None:
    """The field of a bed; None where nothing of it can be planted."""
    ground = plantable(garden, layout, bed)
    if ground.is_empty or ground.area < 1e-4:
        return None
    angle = _angle(ground)
    turned = shapely.affinity.rotate(ground, -angle, origin=(0.0, 0.0))
    x0, y0, x1, y1 = turned.bounds
    step = min(max(sqrt(ground.area / _POINTS), _FINEST_M), _COARSEST_M)
    x, y = _centred(x0, x1, step), _centred(y0, y1, step)
    shapely.prepare(turned)
    every = np.meshgrid(x, y)
    inside = shapely.contains_xy(turned, every[0], every[1])
    if not inside.any():
        inside = shapely.dwithin(turned, shapely.points(every[0], every[1]), step)
    return Field(bed, ground, angle, step, x, y, np.asarray(inside, dtype=bool))


def _centred(low: float, high: float, step: float) -> Floats:
    """Points ``step`` apart, in the middle of a span."""
    count = max(round((high - low) / step), 1)
    offset = np.arange(count, dtype=np.float64) - (count - 1) / 2
    return np.asarray((low + high) / 2 + offset * step, dtype=np.float64)


def _angle(ground: BaseGeometry) -> float:
    """Direction of its longer side, clockwise from x, −90° to 90°; 0 where all sides are as good."""
    ring = np.asarray(shapely.minimum_rotated_rectangle(ground).exterior.coords)
    sides = np.diff(ring[:3], axis=0)
    length = np.hypot(*sides.T)
    step = sides[int(np.argmax(length - 1e-9 * np.arange(2)))]
    angle = degrees(atan2(step[1], step[0]))
    if abs(length[0] - length[1]) < 1e-6:
        angle = (angle + 45.0) % 90.0 - 45.0
    angle = (angle + 90.0) % 180.0 - 90.0
    return 0.0 if abs(angle) < 1e-6 or abs(abs(angle) - 180.0) < 1e-6 else angle
