"""Beds made an exact size: a rectangle by its sides, a circle by its diameter, others by their box."""

from collections.abc import Callable
from math import atan2, cos, degrees, hypot, radians, sin
from typing import Literal, NamedTuple

from shapely import Polygon
from shapely.affinity import rotate

from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laying import frame_of
from gardencanvas.garden.outlines import is_rectangle
from gardencanvas.garden.value import Point

_FINE = 6
_ROUND_M = 1e-4  # the corners of a circle lie within a tenth of a millimetre of it
_CORNERS = 24  # with fewer it is a polygon that happens to be regular


class Size(NamedTuple):
    """What a bed measures, metres: of a circle ``length_m`` and ``width_m`` are both its diameter."""

    shape: Literal["rectangle", "circle", "other"]
    length_m: float
    width_m: float


def size_of(bed: Bed) -> Size:
    """Length along a rectangle's first side, or along the bed's longer axis, and width across it."""
    if is_rectangle(bed.outline):
        a, b, c, _ = bed.outline
        return Size("rectangle", hypot(b[0] - a[0], b[1] - a[1]), hypot(c[0] - b[0], c[1] - b[1]))
    middle = Polygon(bed.outline).centroid
    away = [hypot(x - middle.x, y - middle.y) for x, y in bed.outline]
    if len(away) >= _CORNERS and max(away) - min(away) <= _ROUND_M:
        return Size("circle", 2 * max(away), 2 * max(away))
    x0, y0, x1, y1 = rotate(Polygon(bed.outline), -_axis(bed), origin=(0, 0)).bounds
    return Size("other", x1 - x0, y1 - y0)


def resized(bed: Bed, length_m: float, width_m: float) -> Bed:
    """The bed with another length and width; its first corner stays, or a circle's middle; holes go along.

    Raises
    ------
    Refusal
        If that makes no sound bed.
    """
    size = size_of(bed)
    turn = _axis(bed)
    about = bed.outline[0]
    if size.shape == "circle":
        middle = Polygon(bed.outline).centroid
        about = middle.x, middle.y
    put = _stretch(about, turn, length_m / size.length_m, width_m / size.width_m)
    outline = tuple(map(put, bed.outline))
    if size.shape == "rectangle":  # its corners anew: a stretched one would be skew by what was rounded
        outline = _rectangle(bed, turn, length_m, width_m)
    return rebuilt(
        bed,
        outline=outline,
        holes=tuple(tuple(map(put, hole)) for hole in bed.holes),
    )


def _rectangle(bed: Bed, angle_deg: float, length_m: float, width_m: float) -> tuple[Point, ...]:
    (x, y), (bx, by), (cx, cy) = bed.outline[:3]
    c, s = cos(radians(angle_deg)), sin(radians(angle_deg))
    side = 1.0 if (cy - by) * c - (cx - bx) * s > 0 else -1.0
    corners = ((0.0, 0.0), (length_m, 0.0), (length_m, side * width_m), (0.0, side * width_m))
    return tuple((round(x + u * c - v * s, _FINE), round(y + u * s + v * c, _FINE)) for u, v in corners)


def _axis(bed: Bed) -> float:
    """Direction of the length, degrees clockwise on the plan."""
    if not is_rectangle(bed.outline):
        return frame_of(bed).angle_deg
    (ax, ay), (bx, by) = bed.outline[:2]
    return degrees(atan2(by - ay, bx - ax))


def _stretch(about: Point, angle_deg: float, along: float, across: float) -> Callable[[Point], Point]:
    c, s = cos(radians(angle_deg)), sin(radians(angle_deg))

    def put(p: Point) -> Point:
        x, y = p[0] - about[0], p[1] - about[1]
        u, v = (x * c + y * s) * along, (y * c - x * s) * across
        return round(about[0] + u * c - v * s, _FINE), round(about[1] + u * s + v * c, _FINE)

    return put
