"""Mirror images: of beds with what lies in them, plantings, supports, covers and fixtures."""

from collections.abc import Callable, Collection
from typing import Any, Literal

import numpy as np

from gardencanvas.garden.edits import made, rebuilt, replace, with_contents
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.ground import Bed, LineSupport, Path, RingSupport
from gardencanvas.garden.pattern import (
    Block,
    Drift,
    Edging,
    Pattern,
    RingPattern,
    Rows,
    Spots,
    Strip,
    how_many,
)
from gardencanvas.garden.places import bounds
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point

Sides = Literal["left and right", "top and bottom"]  # which of them change places
Reflect = Callable[[Point], Point]


def mirror(garden: Garden, layout_id: str, ids: Collection[str], sides: Sides) -> Garden:
    """Mirror items about the middle of the box round them; beds bring along what lies in them."""
    carried = with_contents(garden.layout(layout_id), ids)
    items = [i for x in carried if (i := garden.find(layout_id, x)) is not None]
    free = [i for i in items if not getattr(i, "locked", False)]
    if not free:
        return garden
    x0, y0, x1, y1 = bounds(free)
    across = sides == "left and right"

    def reflect(p: Point) -> Point:
        return (x0 + x1 - p[0], p[1]) if across else (p[0], y0 + y1 - p[1])

    return replace(garden, layout_id, [_mirrored(item, reflect, across=across) for item in free])


def _mirrored(item: Item, reflect: Reflect, *, across: bool) -> Item:
    if isinstance(item, Planting):
        return rebuilt(item, pattern=mirrored_pattern(item.pattern, reflect, across=across))
    changes: dict[str, Any]
    if isinstance(item, RingSupport):
        changes = {"centre": reflect(item.centre)}
    elif isinstance(item, LineSupport):
        changes = {"begin": reflect(item.begin), "end": reflect(item.end)}
    elif isinstance(item, Path):
        changes = {"line": tuple(reflect(p) for p in item.line)}
    else:
        changes = {"outline": tuple(reflect(p) for p in item.outline)}
        if isinstance(item, Bed):
            changes["holes"] = tuple(tuple(reflect(p) for p in hole) for hole in item.holes)
    return rebuilt(item, **changes)


def mirrored_pattern(pattern: Pattern, reflect: Reflect, *, across: bool) -> Pattern:
    """The mirror image of a pattern: the same pattern, or the same stations as spots where it has none.

    A drift's image is a drift in the mirrored outline, with places of its own.
    """
    if isinstance(pattern, Spots):
        return _as_spots(pattern, reflect)
    plain = pattern.every == 1 and not pattern.left_out and not pattern.moved
    if not plain and not isinstance(pattern, Drift):
        return _as_spots(pattern, reflect)
    if isinstance(pattern, RingPattern):
        angle = 180.0 - pattern.angle_deg if across else -pattern.angle_deg
        return rebuilt(pattern, origin=reflect(pattern.origin), angle_deg=angle % 360)
    if isinstance(pattern, (Edging, Drift)):
        return _line_mirrored(pattern, reflect)
    if isinstance(pattern, Block) and pattern.staggered:
        return _as_spots(pattern, reflect)
    return _grid_mirrored(pattern, reflect, across=across)


def _line_mirrored(pattern: Edging | Drift, reflect: Reflect) -> Edging | Drift:
    frame = rebuilt(pattern, origin=(0.0, 0.0), angle_deg=0.0, left_out=(), moved=())
    corners = frame.line if isinstance(frame, Edging) else frame.outline
    turned = [reflect(p) for p in _placed(corners, pattern)]
    if isinstance(frame, Edging):
        return rebuilt(frame, line=tuple(turned))
    return rebuilt(frame, outline=tuple(turned))


def _placed(points: Collection[Point], pattern: Pattern) -> list[Point]:
    """Points of a pattern's own frame on the plan."""
    turn = np.deg2rad(pattern.angle_deg)
    cos, sin = np.cos(turn), np.sin(turn)
    x0, y0 = pattern.origin
    return [(float(x0 + x * cos - y * sin), float(y0 + x * sin + y * cos)) for x, y in points]


def _grid_mirrored(pattern: Rows | Strip | Block, reflect: Reflect, *, across: bool) -> Pattern:
    """A rectangle of rows; what a row has left over at its end is cut off, so that every station fits."""
    length, width = _filled(pattern)
    along, over = (length, 0.0) if across else (0.0, width)
    (corner,) = _placed([(along, over)], pattern)
    trimmed = {"length_m": length} | ({} if isinstance(pattern, Rows) else {"width_m": width})
    angle = -pattern.angle_deg % 360.0
    return rebuilt(pattern, origin=reflect(corner), angle_deg=angle, **trimmed)


def _filled(pattern: Rows | Strip | Block) -> tuple[float, float]:
    """Length and width that the stations of a rectangle need."""
    if isinstance(pattern, Rows):
        return how_many(pattern.length_m, pattern.spacing_m) * pattern.spacing_m, pattern.width_m
    across = pattern.across_m if isinstance(pattern, Strip) else pattern.spacing_m
    columns, rows = how_many(pattern.length_m, pattern.spacing_m), how_many(pattern.width_m, across)
    return columns * pattern.spacing_m, rows * across


def _as_spots(pattern: Pattern, reflect: Reflect) -> Spots:
    points = tuple(reflect((float(x), float(y))) for x, y in pattern.stations)
    return made(Spots, points=points, spacing_m=pattern.spacing_m)
