"""Patterns laid into a bed at a point: a row along it, a block, a single plant.

A bed has axes of its own: along the longer side of the smallest box round it, and across. Rows follow the
long side; distances from the bed's edge are rounded to a step where one is given.
"""

from dataclasses import dataclass
from math import atan2, cos, degrees, floor, hypot, sin, tau

from shapely import LineString, Polygon, box
from shapely import Point as ShapelyPoint
from shapely.affinity import rotate
from shapely.geometry.base import BaseGeometry

from gardencanvas.garden.edits import made
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Bed, Path
from gardencanvas.garden.pattern import Block, Drift, Edging, RingPattern, Rows, Spots, Strip, how_many
from gardencanvas.garden.value import Point

BLOCK_M = 1.2  # side of a fresh block: what two arms reach across a bed (common practice)
ROW_M = 1.2  # length of a fresh row on bare plan
STRIP_M = 0.4  # width of a fresh strip: a sowing band that is hoed from both sides (common practice)
DRIFT_M = 1.2  # width of a fresh drift
RING_M = 0.8  # width of a fresh ring: canes tied at the top stand so (common practice)
# Discs thrown at random jam at 0.547 of the ground (Feder 1980, J. Theor. Biol. 87:237), that is 0.70
# discs to a square of their own width; a little less is found quickly.
_DARTS_THAT_FIT = 0.6
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


def block_in(
    bed: Bed, point: Point, spacing_m: float, step_m: float = 0.05, *, staggered: bool = False
) -> Block | None:
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
        staggered=staggered,
    )


def strip_in(bed: Bed, point: Point, spacing_m: float, across_m: float, step_m: float = 0.05) -> Strip | None:
    """A band ``STRIP_M`` wide along the whole bed through the point; None where no plant has room."""
    frame = frame_of(bed)
    u0, v0, u1, v1 = frame.ground.bounds
    u, v = frame.local(point)
    wide = min(max(STRIP_M, across_m), v1 - v0)
    top = _clamped(_stepped(v - wide / 2, v0, step_m), v0, v1 - wide)
    begin, end = u0, u1
    for line in (top + 1e-6, top + wide / 2, top + wide - 1e-6):
        runs = _runs(frame.ground, line)
        if not runs:
            return None
        a, b = min(runs, key=lambda run: max(run[0] - u, u - run[1], 0.0))
        begin, end = max(begin, a), min(end, b)
    if how_many(end - begin, spacing_m) < 1 or how_many(wide, across_m) < 1:
        return None
    return Strip(
        origin=frame.plan(begin, top),
        angle_deg=frame.angle_deg,
        length_m=round(end - begin, _FINE),
        width_m=round(wide, _FINE),
        spacing_m=spacing_m,
        across_m=across_m,
    )


def drift_at(point: Point, spacing_m: float, ground: Polygon | None) -> Drift | None:
    """An irregular group round the point, within the ground where one is given; None without room."""
    reach = max(DRIFT_M / 2, spacing_m)
    around: BaseGeometry = ShapelyPoint(point).buffer(reach, quad_segs=4)
    if ground is not None:
        around = around.intersection(ground.buffer(-spacing_m / 2))
        around = max(getattr(around, "geoms", [around]), key=lambda part: part.area)
    if not isinstance(around, Polygon) or around.area < spacing_m**2:
        return None
    return Drift(
        outline=tuple((round(x, _FINE), round(y, _FINE)) for x, y in around.exterior.coords[:-1]),
        spacing_m=spacing_m,
        plants=max(1, floor(_DARTS_THAT_FIT * around.area / spacing_m**2)),
    )


def ring_round(centre: Point, radius_m: float | None, spacing_m: float) -> RingPattern:
    """A ring round a centre; without a radius one of ``RING_M`` across, or wide enough for six plants."""
    radius = radius_m if radius_m else max(RING_M / 2, 6 * spacing_m / tau)
    return RingPattern(origin=centre, radius_m=radius, spacing_m=min(spacing_m, tau * radius))


def edging_in(bed: Bed, spacing_m: float) -> Edging:
    """Plants all along a bed's rim, half their spacing within it, following corners and curves.

    Raises
    ------
    Refusal
        If the bed is too small.
    """
    ring = Polygon(bed.outline).buffer(-spacing_m / 2, join_style="mitre")
    if not isinstance(ring, Polygon) or ring.is_empty:
        raise Refusal("{bed} is too small for an edging at this spacing.", bed=bed.name)
    line = [(round(x, _FINE), round(y, _FINE)) for x, y in ring.exterior.coords[:-1]]
    return made(Edging, line=tuple(line), closed=True, spacing_m=spacing_m)


def edging_beside(path: Path, point: Point, spacing_m: float) -> Edging:
    """Plants along that side of a path which is nearer to the point, half their spacing off its edge."""
    line = middle_line(path)
    away = path.width_m / 2 + spacing_m / 2
    sides = [line.offset_curve(away, join_style="mitre"), line.offset_curve(-away, join_style="mitre")]
    side = min(sides, key=lambda each: each.distance(ShapelyPoint(point)))
    parts = [p for p in getattr(side, "geoms", [side]) if isinstance(p, LineString)]
    if not parts:
        raise nothing_to_edge()
    longest = max(parts, key=lambda part: part.length)
    corners = tuple((round(x, _FINE), round(y, _FINE)) for x, y in longest.coords)
    return made(Edging, line=corners, spacing_m=spacing_m)


def middle_line(path: Path) -> LineString:
    """The line along the middle of a path."""
    return LineString(path.line)


def nothing_to_edge() -> Refusal:
    """What is said where neither a bed's rim nor a path is near."""
    return Refusal("An edging goes along a bed's rim or a path; there is none near here.")


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


def strip_outside(point: Point, spacing_m: float, across_m: float) -> Strip:
    """A short band on bare plan, its middle at the point."""
    length, width = max(ROW_M, spacing_m), max(STRIP_M, across_m)
    origin = round(point[0] - length / 2, _FINE), round(point[1] - width / 2, _FINE)
    return Strip(origin=origin, length_m=length, width_m=width, spacing_m=spacing_m, across_m=across_m)


def spot(point: Point, spacing_m: float) -> Spots:
    """One plant on bare plan."""
    return Spots(points=(point,), spacing_m=spacing_m)


def block_outside(point: Point, spacing_m: float, *, staggered: bool = False) -> Block:
    """A block on bare plan, its middle at the point."""
    side = max(BLOCK_M, spacing_m)
    origin = round(point[0] - side / 2, _FINE), round(point[1] - side / 2, _FINE)
    return Block(origin=origin, length_m=side, width_m=side, spacing_m=spacing_m, staggered=staggered)
