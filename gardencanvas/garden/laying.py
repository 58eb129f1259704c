"""Patterns laid into a bed at a point: a row along it, a block, a single plant.

A bed has axes of its own: along the longer side of the smallest box round it, and across. Rows follow the
long side; distances from the bed's edge are rounded to a step where one is given.
"""

from dataclasses import dataclass
from math import atan2, cos, degrees, floor, hypot, sin

from shapely import LineString, Polygon, box
from shapely.affinity import rotate
from shapely.geometry.base import BaseGeometry

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Rows, Spots, how_many
from gardencanvas.garden.value import Point

BLOCK_M = 1.2  # side of a fresh block: what two arms reach across a bed (common practice)
ROW_M = 1.2  # length of a fresh row on bare plan
_SHRINK_M = 0.05
_FINE = 6  # digits kept of a metre: a thousandth of a millimetre


@dataclass(frozen=True, slots=True)
class Frame:
    """A bed seen along its own axes: ``ground`` is turned so that its long side lies along u."""

    angle_deg: float
    ground: Polygon

    def local(self, point: Point) -> tuple[float, float]:
        """A plan point as (u, v)."""
        a = self.angle_deg / 57.29577951308232
        x, y = point
        return x * cos(a) + y * sin(a), y * cos(a) - x * sin(a)

    def plan(self, u: float, v: float) -> Point:
        """A point (u, v) on the plan."""
        a = self.angle_deg / 57.29577951308232
        return round(u * cos(a) - v * sin(a), _FINE), round(u * sin(a) + v * cos(a), _FINE)


def frame_of(bed: Bed) -> Frame:
    """The bed's axes; the angle lies above −90° and up to 90°, near 0 for a square."""
    ground = Polygon(bed.outline, bed.holes)
    around = Polygon(bed.outline).minimum_rotated_rectangle
    corners = list(around.exterior.coords)[:4] if isinstance(around, Polygon) else list(bed.outline[:4])
    (ax, ay), (bx, by), (cx, cy) = corners[:3]
    first, second = hypot(bx - ax, by - ay), hypot(cx - bx, cy - by)
    dx, dy = (bx - ax, by - ay) if first >= second else (cx - bx, cy - by)
    angle = degrees(atan2(dy, dx))
    if abs(first - second) < 1e-6:  # a square has no long side: take the one nearer the plan's own axis
        angle = (angle + 45.0) % 90.0 - 45.0
    angle = (angle + 90.0) % 180.0 - 90.0
    angle = 0.0 if abs(angle) < 1e-9 else 90.0 if angle == -90.0 else angle
    return Frame(angle, rotate(ground, -angle, origin=(0, 0)))


def _stepped(value: float, begin: float, step_m: float) -> float:
    """The value rounded to whole steps from ``begin``; unchanged without a step."""
    return begin + round((value - begin) / step_m) * step_m if step_m > 0 else value


def _clamped(value: float, low: float, high: float) -> float:
    return (low + high) / 2 if low > high else min(max(value, low), high)


def _length(count: int, spacing_m: float) -> float:
    """The length of a row of ``count`` plants, as few digits as still hold them."""
    length = count * spacing_m
    short = round(length, _FINE)
    return short if how_many(short, spacing_m) == count else length


def _runs(ground: BaseGeometry, v: float) -> list[tuple[float, float]]:
    """Stretches of ground along the line at ``v``."""
    u0, _, u1, _ = ground.bounds
    cut = ground.intersection(LineString([(u0 - 1, v), (u1 + 1, v)]))
    parts = getattr(cut, "geoms", [cut])
    return [(p.bounds[0], p.bounds[2]) for p in parts if isinstance(p, LineString) and p.length > 0]


def row_in(bed: Bed, point: Point, in_row_m: float, between_m: float, step_m: float = 0.05) -> Rows | None:
    """One row along the bed through the point, as long as the ground goes; None where no plant has room.

    Plants keep half their spacing from the ground's edges; what is left over is shared by both ends.
    """
    frame = frame_of(bed)
    _, v0, _, v1 = frame.ground.bounds
    u, v = frame.local(point)
    keep = min(in_row_m / 2, (v1 - v0) / 2)
    v = _clamped(_stepped(v, v0, step_m), v0 + keep, v1 - keep)
    begin, end = -1e9, 1e9
    for line in (v - keep + 1e-6, v, v + keep - 1e-6):
        runs = _runs(frame.ground, line)
        if not runs:
            return None
        a, b = min(runs, key=lambda run: max(run[0] - u, u - run[1], 0.0))
        begin, end = max(begin, a), min(end, b)
    count = how_many(end - begin, in_row_m) if end > begin else 0
    if count < 1:
        return None
    length = _length(count, in_row_m)
    origin = frame.plan(begin + (end - begin - length) / 2, v - between_m / 2)
    return Rows(
        origin=origin,
        angle_deg=frame.angle_deg,
        length_m=length,
        spacing_m=in_row_m,
        row_spacing_m=between_m,
    )


def block_in(bed: Bed, point: Point, spacing_m: float, step_m: float = 0.05) -> Block | None:
    """A block round the point, ``BLOCK_M`` square or as large as the bed; None where no plant has room."""
    frame = frame_of(bed)
    u0, v0, u1, v1 = frame.ground.bounds
    u, v = frame.local(point)
    long, wide = min(BLOCK_M, u1 - u0), min(BLOCK_M, v1 - v0)
    left = _clamped(_stepped(u - long / 2, u0, step_m), u0, u1 - long)
    top = _clamped(_stepped(v - wide / 2, v0, step_m), v0, v1 - wide)
    area = _shrunk(frame.ground, left, top, left + long, top + wide, (u, v))
    if area is None:
        return None
    left, top, right, bottom = area
    if how_many(right - left, spacing_m) < 1 or how_many(bottom - top, spacing_m) < 1:
        return None
    return Block(
        origin=frame.plan(left, top),
        angle_deg=frame.angle_deg,
        length_m=round(right - left, _FINE),
        width_m=round(bottom - top, _FINE),
        spacing_m=spacing_m,
    )


def _shrunk(
    ground: Polygon, left: float, top: float, right: float, bottom: float, about: tuple[float, float]
) -> tuple[float, float, float, float] | None:
    """The rectangle made smaller towards a point until the ground holds it."""
    room = ground.buffer(1e-6)
    u, v = _clamped(about[0], left, right), _clamped(about[1], top, bottom)
    for _ in range(floor(BLOCK_M / _SHRINK_M)):
        if room.covers(box(left, top, right, bottom)):
            return left, top, right, bottom
        left, right = min(left + _SHRINK_M / 2, u), max(right - _SHRINK_M / 2, u)
        top, bottom = min(top + _SHRINK_M / 2, v), max(bottom - _SHRINK_M / 2, v)
        if right - left < 0.02 or bottom - top < 0.02:
            return None
    return None


def spot_in(bed: Bed, point: Point, spacing_m: float, step_m: float = 0.05) -> Spots:
    """One plant at the point, its distances from the bed's edges rounded to the step."""
    frame = frame_of(bed)
    u0, v0, _, _ = frame.ground.bounds
    u, v = frame.local(point)
    return Spots(points=(frame.plan(_stepped(u, u0, step_m), _stepped(v, v0, step_m)),), spacing_m=spacing_m)


def row_outside(point: Point, in_row_m: float, between_m: float) -> Rows:
    """A short row on bare plan, its middle at the point."""
    count = max(how_many(ROW_M, in_row_m), 1)
    length = _length(count, in_row_m)
    origin = round(point[0] - length / 2, _FINE), round(point[1] - between_m / 2, _FINE)
    return Rows(origin=origin, length_m=length, spacing_m=in_row_m, row_spacing_m=between_m)


def block_outside(point: Point, spacing_m: float) -> Block:
    """A block on bare plan, its middle at the point."""
    side = max(BLOCK_M, spacing_m)
    origin = round(point[0] - side / 2, _FINE), round(point[1] - side / 2, _FINE)
    return Block(origin=origin, length_m=side, width_m=side, spacing_m=spacing_m)
