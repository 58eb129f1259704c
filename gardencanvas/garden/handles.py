"""Handles: points by which the shape of one thing is changed, and what it becomes when one is moved.

A handle has a name: ``begin``, ``end``, ``top`` and ``side`` of rows, strips and blocks; ``radius`` of rings
and round beds; ``begin`` and ``end`` of supports in a line; ``corner 3`` of outlines and lines; ``spot 3`` of
spots; ``hole 1 3`` of a bed's holes. Places are plan metres.
"""

from math import cos, hypot, radians, sin
from typing import Any

import numpy as np
from shapely import Polygon

from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.garden import Item
from gardencanvas.garden.ground import Bed, LineSupport, Path, RingSupport
from gardencanvas.garden.outlines import with_corner
from gardencanvas.garden.pattern import Block, Drift, Edging, Pattern, RingPattern, Rows, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.resizing import resized, size_of
from gardencanvas.garden.stations import kept_stations
from gardencanvas.garden.value import Point

MOST_CORNERS = 40  # what has more is reshaped in the inspector
_FINE = 6
_LEAST_M = 0.02
_Grid = Rows | Strip | Block


def handles_of(item: Item) -> list[tuple[str, Point]]:
    """Names and places of the handles an item offers; none where it is locked."""
    if getattr(item, "locked", False):
        return []
    if isinstance(item, Planting):
        return _of_pattern(item.pattern)
    if isinstance(item, RingSupport):
        return [("radius", (item.centre[0] + item.radius_m, item.centre[1]))]
    if isinstance(item, LineSupport):
        return [("begin", item.begin), ("end", item.end)]
    if isinstance(item, Path):
        return _numbered("corner", item.line)
    found = _numbered("corner", item.outline)
    if isinstance(item, Bed) and size_of(item).shape == "circle":
        found = [("radius", item.outline[0])]
    if isinstance(item, Bed):
        for number, hole in enumerate(item.holes):
            found += _numbered(f"hole {number}", hole)
    return found if len(found) <= MOST_CORNERS else []


def _numbered(name: str, points: tuple[Point, ...]) -> list[tuple[str, Point]]:
    if len(points) > MOST_CORNERS:
        return []
    return [(f"{name} {i}", p) for i, p in enumerate(points)]


def _of_pattern(pattern: Pattern) -> list[tuple[str, Point]]:
    if isinstance(pattern, (Rows, Strip, Block)):
        c = pattern.corners
        middles = {
            "begin": c[0] + c[3], "end": c[1] + c[2], "top": c[0] + c[1], "side": c[2] + c[3],
        }  # fmt: skip
        return [(name, (float(x) / 2, float(y) / 2)) for name, (x, y) in middles.items()]
    if isinstance(pattern, RingPattern):
        return [("radius", _on_plan(pattern, (pattern.radius_m, 0.0)))]
    if isinstance(pattern, Edging):
        return [(n, _on_plan(pattern, p)) for n, p in _numbered("corner", pattern.line)]
    if isinstance(pattern, Drift):
        return [(n, _on_plan(pattern, p)) for n, p in _numbered("corner", pattern.outline)]
    return [(n, _on_plan(pattern, p)) for n, p in _numbered("spot", pattern.points)]


def reshaped(item: Item, handle: str, to: Point) -> Item:
    """The item with one handle moved to a place.

    Raises
    ------
    Refusal
        If it would be no sound item.
    """
    if isinstance(item, Planting):
        return rebuilt(item, pattern=kept_stations(item.pattern, _pattern(item.pattern, handle, to)))
    if isinstance(item, RingSupport):
        return rebuilt(item, radius_m=round(hypot(to[0] - item.centre[0], to[1] - item.centre[1]), _FINE))
    if isinstance(item, LineSupport):
        return rebuilt(item, **{handle: to})
    if handle == "radius" and isinstance(item, Bed):
        return _round(item, to)
    words = handle.split()
    index = int(words[-1])
    if isinstance(item, Path):
        return rebuilt(item, line=_with_point(item.line, index, to))
    if words[0] == "hole" and isinstance(item, Bed):
        holes = tuple(
            with_corner(hole, index, to) if i == int(words[1]) else hole for i, hole in enumerate(item.holes)
        )
        return rebuilt(item, holes=holes)
    return rebuilt(item, outline=with_corner(item.outline, index, to))


def _round(bed: Bed, to: Point) -> Bed:
    """A round bed with its rim through a place."""
    middle = Polygon(bed.outline).centroid
    across = 2 * max(hypot(to[0] - middle.x, to[1] - middle.y), _LEAST_M)
    return resized(bed, across, across)


def _with_point(points: tuple[Point, ...], index: int, to: Point) -> tuple[Point, ...]:
    return tuple(to if i == index else p for i, p in enumerate(points))


def _pattern(pattern: Pattern, handle: str, to: Point) -> Pattern:
    here = _in_frame(pattern, to)
    if isinstance(pattern, (Rows, Strip, Block)):
        return _with_side(pattern, handle, here)
    if isinstance(pattern, RingPattern):
        return rebuilt(pattern, radius_m=round(hypot(*here), _FINE))
    index = int(handle.split()[1])
    if isinstance(pattern, Edging):
        return rebuilt(pattern, line=_with_point(pattern.line, index, here))
    if isinstance(pattern, Drift):
        return rebuilt(pattern, outline=_with_point(pattern.outline, index, here))
    return rebuilt(pattern, points=_with_point(pattern.points, index, here))


def _with_side(pattern: _Grid, handle: str, here: Point) -> _Grid:
    """A rectangle with its begin, end or a long side moved; rows come and go whole."""
    u, v = here
    if handle == "end":
        return rebuilt(pattern, length_m=round(max(u, pattern.spacing_m), _FINE))
    if handle == "begin":
        u = min(u, pattern.length_m - pattern.spacing_m)
        return rebuilt(
            pattern, origin=_rounded(_on_plan(pattern, (u, 0.0))), length_m=round(pattern.length_m - u, _FINE)
        )
    step = across_m(pattern)
    width = v if handle == "side" else pattern.width_m - v
    if isinstance(pattern, Rows):
        rows = max(1, round(width / step))
        changes: dict[str, Any] = {"rows": rows}
        width = rows * step
    else:
        width = round(max(width, step), _FINE)
        changes = {"width_m": width}
    if handle == "top":
        changes["origin"] = _rounded(_on_plan(pattern, (0.0, pattern.width_m - width)))
    return rebuilt(pattern, **changes)


def across_m(pattern: _Grid) -> float:
    """Distance from row to row of rows, strip or block."""
    if isinstance(pattern, Rows):
        return pattern.row_spacing_m
    return pattern.across_m if isinstance(pattern, Strip) else pattern.spacing_m


def measure_of(item: Item, handle: str) -> float | None:
    """The length in metres that a handle stands for: of rows, across them, a radius; None for corners."""
    if isinstance(item, Planting):
        pattern = item.pattern
        if isinstance(pattern, (Rows, Strip, Block)):
            return pattern.length_m if handle in {"begin", "end"} else pattern.width_m
        return pattern.radius_m if isinstance(pattern, RingPattern) else None
    if isinstance(item, RingSupport):
        return item.radius_m
    if isinstance(item, Bed) and handle == "radius":
        return size_of(item).length_m / 2
    if isinstance(item, LineSupport):
        return hypot(item.end[0] - item.begin[0], item.end[1] - item.begin[1])
    return None


def with_measure(item: Item, handle: str, metres: float) -> Item:
    """The item with the length a handle stands for made exact; the opposite side stays.

    Raises
    ------
    Refusal
        If it would be no sound item.
    """
    if isinstance(item, RingSupport):
        return rebuilt(item, radius_m=metres)
    if isinstance(item, Bed) and handle == "radius":
        return resized(item, 2 * metres, 2 * metres)
    if isinstance(item, LineSupport):
        fixed, free = (item.end, item.begin) if handle == "begin" else (item.begin, item.end)
        length = hypot(free[0] - fixed[0], free[1] - fixed[1])
        to = tuple(f + (m - f) * metres / length for f, m in zip(fixed, free, strict=True))
        return rebuilt(item, **{handle: to})
    if not isinstance(item, Planting) or measure_of(item, handle) is None:
        return item
    pattern = item.pattern
    if isinstance(pattern, RingPattern):
        here = (metres, 0.0)
    elif isinstance(pattern, (Rows, Strip, Block)):
        here = {
            "end": (metres, 0.0),
            "begin": (pattern.length_m - metres, 0.0),
            "side": (0.0, metres),
            "top": (0.0, pattern.width_m - metres),
        }[handle]
    else:
        return item
    return reshaped(item, handle, _on_plan(pattern, here))


def _in_frame(pattern: Pattern, at: Point) -> Point:
    """A plan point in a pattern's own frame."""
    turn = radians(pattern.angle_deg)
    x, y = at[0] - pattern.origin[0], at[1] - pattern.origin[1]
    return x * cos(turn) + y * sin(turn), y * cos(turn) - x * sin(turn)


def _on_plan(pattern: Pattern, at: Point) -> Point:
    """A point of a pattern's own frame on the plan."""
    turn = np.deg2rad(pattern.angle_deg)
    x, y = at
    return (
        float(pattern.origin[0] + x * np.cos(turn) - y * np.sin(turn)),
        float(pattern.origin[1] + x * np.sin(turn) + y * np.cos(turn)),
    )


def _rounded(at: Point) -> Point:
    return round(at[0], _FINE), round(at[1], _FINE)
