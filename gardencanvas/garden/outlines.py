"""Outlines a bed can have: rectangle, circle, keyhole, curved edges; and a corner moved."""

from itertools import pairwise
from math import asin, cos, hypot, pi, sin, tau

from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.value import MAX_CORNERS, Point

_FINE = 6
_ROUNDED_M = 1e-5  # corners are rounded to a thousandth of a millimetre
_SEGMENTS = 72  # of a whole circle: the area is 0.13 % small, the rim lies within 0.1 % of the radius


def rectangle(corner: Point, length_m: float, width_m: float) -> tuple[Point, ...]:
    """A rectangle from its upper left corner."""
    x, y = corner
    return ((x, y), (x + length_m, y), (x + length_m, y + width_m), (x, y + width_m))


def circle(centre: Point, radius_m: float) -> tuple[Point, ...]:
    """A circle as a regular polygon through its rim."""
    return tuple(_at(centre, radius_m, tau * i / _SEGMENTS) for i in range(_SEGMENTS))


def keyhole(centre: Point, radius_m: float, path_m: float, reach_m: float) -> tuple[Point, ...]:
    """A round bed with a path cut into it from below to a round place to stand in at its middle.

    Parameters
    ----------
    path_m
        Width of the path; the place at its end is a circle of ``reach_m``.

    Raises
    ------
    Refusal
        If the path is wider than the place to stand, or that as wide as the bed.
    """
    if not 0 < path_m / 2 <= reach_m < radius_m:
        raise Refusal(
            "A keyhole's path must be no wider than the place to stand at its end, "
            "and that place smaller than the bed."
        )
    outer, inner = asin(path_m / 2 / radius_m), asin(path_m / 2 / reach_m)
    below = pi / 2  # y points down: the path comes in from below the centre
    rim = _arc(centre, radius_m, below + outer, below - outer + tau)
    hollow = _arc(centre, reach_m, below - inner + tau, below + inner)
    return (*rim, *hollow)


def curved(points: tuple[Point, ...], steps: int = 8) -> tuple[Point, ...]:
    """A smooth closed outline through all points: a centripetal Catmull–Rom curve, ``steps`` to each side.

    Source: Yuksel, Schaefer and Keyser 2011, Computer-Aided Design 43:747 (no loops or cusps within a
    side), evaluated by the recursion of Barry and Goldman 1988.

    Raises
    ------
    Refusal
        With fewer than three points, or more than an outline can hold.
    """
    if len(points) < 3:
        raise Refusal("A curved edge needs three points or more.")
    if len(points) * steps > MAX_CORNERS:
        raise Refusal(
            "That are too many points; at most {most} make a curved edge.", most=MAX_CORNERS // steps
        )
    found: list[Point] = []
    n = len(points)
    for i in range(n):
        four = [points[(i + k - 1) % n] for k in range(4)]
        found += [_between(four, step / steps) for step in range(steps)]
    return tuple(found)


def _between(four: list[Point], share: float) -> Point:
    """A point of the curve between the middle two of four points."""
    knots = [0.0]
    for a, b in pairwise(four):
        knots.append(knots[-1] + max(hypot(b[0] - a[0], b[1] - a[1]) ** 0.5, 1e-9))
    t = knots[1] + share * (knots[2] - knots[1])
    level = four
    for width in (1, 2, 3):
        level = [_blend(level[i], level[i + 1], *_span(knots, i, width, t)) for i in range(len(level) - 1)]
    x, y = level[0]
    return round(x, _FINE), round(y, _FINE)


def _span(knots: list[float], i: int, width: int, t: float) -> tuple[float, float]:
    """Weights of the two points that are blended at one level of the recursion."""
    # the last level blends over the middle span only
    low, high = (knots[1], knots[2]) if width == 3 else (knots[i], knots[i + width])
    after = (t - low) / (high - low)
    return 1 - after, after


def _blend(a: Point, b: Point, wa: float, wb: float) -> Point:
    return a[0] * wa + b[0] * wb, a[1] * wa + b[1] * wb


def _arc(centre: Point, radius_m: float, begin: float, end: float) -> list[Point]:
    count = max(2, round(abs(end - begin) / tau * _SEGMENTS))
    return [_at(centre, radius_m, begin + (end - begin) * i / count) for i in range(count + 1)]


def _at(centre: Point, radius_m: float, turn: float) -> Point:
    return round(centre[0] + radius_m * cos(turn), _FINE), round(centre[1] + radius_m * sin(turn), _FINE)


def with_corner(outline: tuple[Point, ...], index: int, to: Point) -> tuple[Point, ...]:
    """An outline with a corner moved; a rectangle stays one, its far corner where it was."""
    if len(outline) != 4 or not is_rectangle(outline):
        return tuple(to if i == index else p for i, p in enumerate(outline))
    far = outline[(index + 2) % 4]
    after, before = outline[(index + 1) % 4], outline[(index + 3) % 4]
    u, v = _unit(far, after), _unit(far, before)
    du = (to[0] - far[0]) * u[0] + (to[1] - far[1]) * u[1]
    dv = (to[0] - far[0]) * v[0] + (to[1] - far[1]) * v[1]
    ring = list(outline)
    ring[index] = _from(far, u, du, v, dv)
    ring[(index + 1) % 4] = _from(far, u, du, v, 0.0)
    ring[(index + 3) % 4] = _from(far, u, 0.0, v, dv)
    return tuple(ring)


def is_rectangle(outline: tuple[Point, ...]) -> bool:
    """Whether four corners make a rectangle."""
    if len(outline) != 4:
        return False
    a, b, c, d = outline
    first, second = hypot(b[0] - a[0], b[1] - a[1]), hypot(c[0] - b[0], c[1] - b[1])
    across = abs((b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]))
    square = across <= _ROUNDED_M * max(first, second)
    return square and hypot(a[0] - b[0] + c[0] - d[0], a[1] - b[1] + c[1] - d[1]) <= _ROUNDED_M


def _from(origin: Point, u: Point, du: float, v: Point, dv: float) -> Point:
    return round(origin[0] + u[0] * du + v[0] * dv, _FINE), round(origin[1] + u[1] * du + v[1] * dv, _FINE)


def _unit(a: Point, b: Point) -> Point:
    length = hypot(b[0] - a[0], b[1] - a[1])
    return (b[0] - a[0]) / length, (b[1] - a[1]) / length
