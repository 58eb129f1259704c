"""What a crop becomes when it is put down at a point: which pattern, and how it fits the bed there."""

from dataclasses import dataclass
from math import hypot
from typing import Literal, get_args

from shapely import Point as ShapelyPoint
from shapely import Polygon

from gardencanvas.garden import laying
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import Bed, Path, RingSupport
from gardencanvas.garden.pattern import Pattern
from gardencanvas.garden.places import bed_at, bed_ground
from gardencanvas.garden.value import Point

Mode = Literal["rows", "strip", "block", "staggered", "single", "ring", "edging", "drift"]
MODES: tuple[Mode, ...] = get_args(Mode)
_NEAR_M = 0.5  # a rim, path or ring of canes this near to the point is meant


@dataclass(frozen=True, slots=True)
class Spacings:
    """How far apart a crop stands, in metres: within the row, between rows, and evenly each way."""

    in_row_m: float
    between_m: float
    even_m: float


def laid(layout: Layout, mode: Mode, at: Point, room: Spacings, step_m: float = 0.0) -> Pattern:
    """The pattern that a crop put down at a plan point would have.

    In a bed it follows the bed; on bare plan it has a size of its own. What has no room in a bed becomes a
    single plant. A ring goes round the ring of canes that is near; an edging along the nearest rim or path.

    Raises
    ------
    Refusal
        If nothing of that kind is near enough to the point, or no plant has room.
    """
    bed = bed_at(layout, at)
    if mode == "edging":
        return _edging(layout, at, room)
    if mode == "ring":
        return _ring(layout, at, room)
    if bed is None:
        return _outside(mode, at, room)
    found: Pattern | None = None
    if mode == "rows":
        found = laying.row_in(bed, at, room.in_row_m, room.between_m, step_m)
    elif mode == "strip":
        found = laying.strip_in(bed, at, room.in_row_m, room.between_m, step_m)
    elif mode in {"block", "staggered"}:
        found = laying.block_in(bed, at, room.even_m, step_m, staggered=mode == "staggered")
    elif mode == "drift":
        found = laying.drift_at(at, room.even_m, bed_ground(bed))
    return found or laying.spot_in(bed, at, room.in_row_m, step_m)


def _outside(mode: Mode, at: Point, room: Spacings) -> Pattern:
    if mode == "rows":
        return laying.row_outside(at, room.in_row_m, room.between_m)
    if mode == "strip":
        return laying.strip_outside(at, room.in_row_m, room.between_m)
    if mode in {"block", "staggered"}:
        return laying.block_outside(at, room.even_m, staggered=mode == "staggered")
    drift = laying.drift_at(at, room.even_m, None) if mode == "drift" else None
    return drift or laying.spot(at, room.in_row_m)


def _ring(layout: Layout, at: Point, room: Spacings) -> Pattern:
    rings = [s for s in layout.supports if isinstance(s, RingSupport) and s.kind == "cane ring"]
    away = {s.id: hypot(s.centre[0] - at[0], s.centre[1] - at[1]) - s.radius_m for s in rings}
    near = min(rings, key=lambda s: away[s.id], default=None)
    if near is not None and away[near.id] <= _NEAR_M:
        return laying.ring_round(near.centre, near.radius_m, room.in_row_m)
    return laying.ring_round(at, None, room.in_row_m)


def _edging(layout: Layout, at: Point, room: Spacings) -> Pattern:
    here = ShapelyPoint(at)
    rims: list[tuple[float, Bed | Path]] = [
        (Polygon(b.outline).exterior.distance(here), b) for b in layout.beds
    ]
    rims += [(abs(laying.middle_line(p).distance(here) - p.width_m / 2), p) for p in layout.paths]
    away, what = min(rims, key=lambda rim: rim[0], default=(0.0, None))
    if what is None or (away > _NEAR_M and bed_at(layout, at) is None):
        raise laying.nothing_to_edge()
    if isinstance(what, Bed):
        return laying.edging_in(what, room.in_row_m)
    return laying.edging_beside(what, at, room.in_row_m)
