"""Subpaths of one figure sorted into outlines and their holes, by the fill rule of the drawing."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from shapely import LinearRing, Polygon, prepare

from gardencanvas.garden.value import Point

Ring = Sequence[Point]


def nested(rings: Sequence[Ring], *, even_odd: bool) -> list[tuple[Ring, list[Ring]]] | None:
    """Each outline with its holes; None where rings cross one another.

    A ring is an outline where the ground turns from outside to inside the figure, a hole where it turns back:
    by the number of rings round it (even-odd), or the sum of their directions (non-zero; SVG 1.1, 11.3).
    Rings with fewer than three corners, or that cross themselves, are outlines of their own: they are judged
    later.
    """
    shapes = {i: Polygon(r) for i, r in enumerate(rings) if len(r) >= 4 and LinearRing(r).is_simple}
    parent = _parents(shapes)
    if parent is None:
        return None
    winding: dict[int, int] = {}
    inside: dict[int, bool] = {}
    holes: dict[int, list[Ring]] = {}  # of each outline
    within: dict[int, int | None] = {}  # the outline that a ring is, or lies in
    for i, up in parent.items():
        turn = 1 if LinearRing(rings[i]).is_ccw else -1
        winding[i] = (winding[up] if up is not None else 0) + turn
        inside[i] = _depth(parent, i) % 2 == 1 if even_odd else winding[i] != 0
        before = inside[up] if up is not None else False
        holder = within[i] = within[up] if up is not None else None
        if inside[i] and not before:
            holes[i], within[i] = [], i
        elif before and not inside[i] and holder is not None:
            holes[holder].append(rings[i])
    found: list[tuple[Ring, list[Ring]]] = [(rings[i], holes[i]) for i in sorted(holes)]
    return found + [(rings[i], []) for i in range(len(rings)) if i not in shapes]


def _parents(shapes: Mapping[int, Polygon]) -> dict[int, int | None] | None:
    """The smallest ring round each, the largest rings first; None where some cross."""
    for shape in shapes.values():
        prepare(shape)
    order = sorted(shapes, key=lambda i: -shapes[i].area)
    parent: dict[int, int | None] = {}
    for place, i in enumerate(order):
        parent[i] = None
        for j in order[:place]:
            if shapes[j].contains(shapes[i]):
                parent[i] = j  # the smallest so far: they are sorted
            elif shapes[j].intersects(shapes[i]) and _overlap(shapes[j], shapes[i]):
                return None
    return parent


def _overlap(a: Polygon, b: Polygon) -> bool:
    """Whether two share more than their rims."""
    return bool(a.intersection(b).area > 1e-9 * b.area)


def _depth(parent: dict[int, int | None], i: int | None) -> int:
    depth = 0
    while i is not None:
        depth, i = depth + 1, parent[i]
    return depth
