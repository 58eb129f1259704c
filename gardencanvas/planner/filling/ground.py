"""The ground that is to be filled: a bed, one of the free strips between its rows, or an area of it.

Plants keep half their spacing from its edge, as in every pattern, and from what grows there the distance that
``planner.gaps.claims`` reckons. What is left is the *room*: where the middle of a plant may be.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from gardencanvas.fit.stands import IN_BED, Stand
from gardencanvas.garden import laying
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.value import Point
from gardencanvas.planner.between import rows_across
from gardencanvas.planner.gaps.claims import Room, distances, stems
from gardencanvas.planner.gaps.field import REACH_M, plantable
from gardencanvas.planner.gaps.sprouts import Sprouts
from gardencanvas.planner.gaps.survey import Survey

Floats = NDArray[np.float64]

_LEAST_STRIP_M = 0.05  # narrower ones take no row (our choice)
_EDGE_M = 1e-6  # a plant may stand exactly on the edge of its room


@dataclass(frozen=True, slots=True)
class FreeStrip:
    """Ground between two neighbouring rows of a bed, or between its edge and the outermost one."""

    begin_m: float  # across the bed, from its edge
    end_m: float
    outline: tuple[Point, ...]


def free_strips(layout: Layout, bed: Bed) -> tuple[FreeStrip, ...]:
    """The strips that the rows of a bed leave, in order across it; none where it has no rows."""
    lines = rows_across(layout, bed)
    return tuple(_strips(bed, lines)) if lines else ()


def _strips(bed: Bed, lines: Sequence[float]) -> Iterator[FreeStrip]:
    frame = laying.frame_of(bed)
    u0, v0, u1, v1 = frame.ground.bounds
    for a, b in pairwise([v0, *lines, v1]):
        if b - a >= _LEAST_STRIP_M:
            corners = tuple(frame.plan(u, v) for u, v in ((u0, a), (u1, a), (u1, b), (u0, b)))
            yield FreeStrip(round(a - v0, 6), round(b - v0, 6), corners)


def ground_of(survey: Survey, bed: Bed, area: Sequence[Point] | None) -> BaseGeometry:
    """What of a bed, or of an area in it, can be planted."""
    ground = plantable(survey.garden, survey.layout, bed)
    if area is None:
        return ground
    found: BaseGeometry = ground.intersection(shapely.make_valid(Polygon(area)))
    return found


def within(ground: BaseGeometry, margin_m: float) -> BaseGeometry:
    """Ground at least so far from its edge; of ground too narrow for that, its middle line."""
    room: BaseGeometry = ground.buffer(-margin_m, join_style="mitre")
    if room.is_empty and not ground.is_empty:
        parts = getattr(ground, "geoms", [ground])
        widest = max((p for p in parts if isinstance(p, Polygon)), key=lambda p: p.area, default=None)
        if widest is not None:
            inmost = shapely.maximum_inscribed_circle(widest).length
            room = widest.buffer(-min(inmost, margin_m) + 1e-4, join_style="mitre")
    return room


def apart_from(survey: Survey, ground: BaseGeometry, sprouts: Sprouts) -> list[tuple[Stand, float, float]]:
    """Stands that may matter there, each with the least distance that its leaves and its stems ask for."""
    found = []
    for stands in survey.stands.values():
        for stand in stands:
            if stand.begin >= stand.end or not _near(ground, stand):
                continue
            leaves = float(distances(sprouts, stand, Room.SHARED)[0])
            both = bool((sprouts.sizes[IN_BED, 0, stand.begin : stand.end] > 0).any())
            found.append((stand, leaves, float(stems(sprouts, stand)[0]) if both else 0.0))
    return found


def _near(ground: BaseGeometry, stand: Stand) -> bool:
    x0, y0, x1, y1 = ground.bounds
    a0, b0, a1, b1 = stand.box
    return bool(a0 <= x1 + REACH_M and a1 >= x0 - REACH_M and b0 <= y1 + REACH_M and b1 >= y0 - REACH_M)


def clear_of(room: BaseGeometry, stands: Sequence[tuple[Stand, float]]) -> BaseGeometry:
    """The room without what lies nearer to the plants of some stands than asked."""
    discs = [
        shapely.buffer(shapely.multipoints(stand.xy), apart, quad_segs=8)
        for stand, apart in stands
        if apart > 0.0
    ]
    return room.difference(shapely.union_all(discs)) if discs else room


def holds(room: BaseGeometry, xy: Floats) -> NDArray[np.bool_]:
    """Which places lie in the room, shape (n,)."""
    wide = room.buffer(_EDGE_M, join_style="mitre")
    shapely.prepare(wide)
    return np.asarray(shapely.contains_xy(wide, xy[:, 0], xy[:, 1]), dtype=bool)
