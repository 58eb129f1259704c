"""Clearance of the middle of a plant: its distance to edge and neighbours, less what it must keep."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from gardencanvas.planner.gaps.survey import Surveyed

Floats = NDArray[np.float64]
Singles = NDArray[np.float32]
Bools = NDArray[np.bool_]

_APART_M = 0.1
KEEP_M = 1e-6  # plants may stand exactly at the least distance


@dataclass(frozen=True, eq=False)
class Region:
    """Ground that is asked about: some of a bed's points, and the ground they stand for on the plan."""

    surveyed: Surveyed
    points: Bools  # of the field's points inside
    ground: BaseGeometry

    @property
    def whole(self) -> bool:
        """Whether its edge is that of the bed: plants may lean over it."""
        return self.ground is self.surveyed.field.ground

    @cached_property
    def edge_m(self) -> Singles:
        """How far the region's points lie from its edge, shape (n,)."""
        field = self.surveyed.field
        if self.whole:
            return field.edge_m[self.points]
        line = self.ground.boundary
        shapely.prepare(line)
        found = shapely.distance(line, shapely.points(field.plan[self.points]))
        return np.asarray(found, dtype=np.float32)

    @cached_property
    def _box(self) -> tuple[float, float, float, float]:
        corners = np.asarray(self.ground.convex_hull.exterior.coords)
        local = self.surveyed.field.to_frame(corners)
        (x0, y0), (x1, y1) = local.min(axis=0), local.max(axis=0)
        return float(x0), float(y0), float(x1), float(y1)

    def box(self, *, turned: bool) -> tuple[float, float, float, float]:
        """Least and greatest x and y of its ground in the bed's frame, or in that turned by 90°."""
        x0, y0, x1, y1 = self._box
        return (y0, -x1, y1, -x0) if turned else (x0, y0, x1, y1)

    @cached_property
    def away_m(self) -> Singles:
        """How far its points lie from each neighbour, shape (neighbours, n)."""
        every = [n.away_m[self.points] for n in self.surveyed.neighbours]
        return np.stack(every) if every else np.zeros((0, int(self.points.sum())), dtype=np.float32)

    @cached_property
    def area_m2(self) -> float:
        """Its ground."""
        return float(self.points.sum()) * self.surveyed.field.cell_m2

    def clearance(self, apart_m: Floats, margin_m: float) -> Singles:
        """Of its points, metres, below 0 where no plant may stand; shape (n,).

        Parameters
        ----------
        apart_m
            Least distance to the plants of each neighbour, shape (neighbours,).
        """
        found = self.edge_m - np.float32(margin_m)
        for row in np.flatnonzero(apart_m > 0.0):
            np.minimum(found, self.away_m[row] - np.float32(apart_m[row]), out=found)
        return found

    def roomiest(self, apart_m: Floats, least_m: Floats, most: int) -> list[tuple[float, float]]:
        """The places on the plan with most clearance, wherever the edge is.

        They lie a hand's breadth from each other, and ``least_m`` from the plants of each neighbour.
        """
        clear = self.clearance(apart_m, 0.0)
        clear = np.where(self.clearance(np.minimum(apart_m, least_m), 0.0) < 0.0, -np.inf, clear)
        plan = self.surveyed.field.plan[self.points]
        found: list[tuple[float, float]] = []
        for n in np.argsort(-clear, kind="stable"):
            if not np.isfinite(clear[n]):
                break
            x, y = float(plan[n, 0]), float(plan[n, 1])
            if all(np.hypot(x - a, y - b) >= _APART_M for a, b in found):
                found.append((round(x, 4), round(y, 4)))
            if len(found) == most:
                break
        return found

    def exact(self, spots: Floats, apart_m: Floats, margin_m: float) -> Floats:
        """The same for any spots of the bed's frame, shape (k, 2)."""
        field = self.surveyed.field
        at = shapely.points(field.to_plan(spots))
        found: Floats = shapely.distance(self.ground.boundary, at) - margin_m
        outside = ~shapely.dwithin(self.ground, at, KEEP_M)
        for row in np.flatnonzero(apart_m > 0.0):
            stations = self.surveyed.neighbours[row].stations
            away = _nearest(spots, stations)
            np.minimum(found, away - apart_m[row], out=found)
        return np.where(outside | ~self._holds(spots), -np.inf, found + KEEP_M)

    def _holds(self, spots: Floats) -> Bools:
        """Whether spots lie among the region's points: the point nearest to each is one of them."""
        field = self.surveyed.field
        if self.points.all():
            return np.ones(len(spots), dtype=bool)
        mask = np.zeros(field.inside.shape, dtype=bool)
        mask[field.inside] = self.points
        return field.at(mask, spots)


def _nearest(spots: Floats, stations: Floats) -> Floats:
    """Distance of each spot to the nearest station."""
    found = np.full(len(spots), np.inf)
    for begin in range(0, len(stations), 256):
        some = stations[begin : begin + 256]
        dx = spots[:, :1] - some[:, 0]
        dy = spots[:, 1:] - some[:, 1]
        np.minimum(found, (dx * dx + dy * dy).min(axis=1), out=found)
    away: Floats = np.sqrt(found)
    return away
