"""Changing the shape of one thing by its handles: a bed's corners, a planting's length and width."""

from __future__ import annotations

from math import cos, radians, sin
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import named, translate
from gardencanvas.canvas.tools.tool import Gesture, Pointer
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Rows, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_MOST_CORNERS = 40  # a bed with more is reshaped in the inspector


def handles_of(item: Item) -> list[tuple[str, Point]]:
    """Names and places (plan metres) of the handles an item offers."""
    if getattr(item, "locked", False):
        return []
    if isinstance(item, Bed) and len(item.outline) <= _MOST_CORNERS:
        return [(f"corner {i}", p) for i, p in enumerate(item.outline)]
    if isinstance(item, Planting) and isinstance(item.pattern, (Rows, Strip, Block)):
        corners = item.pattern.corners
        ends = (corners[1] + corners[2]) / 2
        begin = (corners[0] + corners[3]) / 2
        side = (corners[2] + corners[3]) / 2
        found = [("begin", begin), ("end", ends), ("side", side)]
        return [(name, (float(x), float(y))) for name, (x, y) in found]
    return []


def reshaped(item: Item, handle: str, to: Point) -> Item:
    """The item with one handle dragged to a place; raises ``Refusal``."""
    if isinstance(item, Bed):
        return edits.rebuilt(item, outline=_with_corner(item.outline, int(handle.split()[1]), to))
    if isinstance(item, Planting) and isinstance(item.pattern, (Rows, Strip, Block)):
        return edits.rebuilt(item, pattern=_with_side(item.pattern, handle, to))
    return item


def _with_corner(outline: tuple[Point, ...], index: int, to: Point) -> tuple[Point, ...]:
    """A corner moved; a rectangle stays one, its far corner where it was."""
    if len(outline) != 4 or not _is_rectangle(outline):
        return tuple(to if i == index else p for i, p in enumerate(outline))
    far = outline[(index + 2) % 4]
    after, before = outline[(index + 1) % 4], outline[(index + 3) % 4]
    u = _unit(far, after)
    v = _unit(far, before)
    du = (to[0] - far[0]) * u[0] + (to[1] - far[1]) * u[1]
    dv = (to[0] - far[0]) * v[0] + (to[1] - far[1]) * v[1]
    ring = list(outline)
    ring[index] = _at(far, u, du, v, dv)
    ring[(index + 1) % 4] = _at(far, u, du, v, 0.0)
    ring[(index + 3) % 4] = _at(far, u, 0.0, v, dv)
    return tuple(ring)


def _at(origin: Point, u: Point, du: float, v: Point, dv: float) -> Point:
    return round(origin[0] + u[0] * du + v[0] * dv, 6), round(origin[1] + u[1] * du + v[1] * dv, 6)


def _unit(a: Point, b: Point) -> Point:
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = (dx * dx + dy * dy) ** 0.5
    return dx / length, dy / length


def _is_rectangle(outline: tuple[Point, ...]) -> bool:
    a, b, c, d = outline
    square = abs((b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1])) < 1e-6
    return square and abs(a[0] - b[0] + c[0] - d[0]) < 1e-6 and abs(a[1] - b[1] + c[1] - d[1]) < 1e-6


def _with_side(pattern: Rows | Strip | Block, handle: str, to: Point) -> Rows | Strip | Block:
    """A pattern with its begin, end or side dragged; rows change by whole rows."""
    turn = radians(pattern.angle_deg)
    dx, dy = to[0] - pattern.origin[0], to[1] - pattern.origin[1]
    u, v = dx * cos(turn) + dy * sin(turn), dy * cos(turn) - dx * sin(turn)
    if handle == "end":
        return edits.rebuilt(pattern, length_m=round(max(u, pattern.spacing_m), 6))
    if handle == "begin":
        u = min(u, pattern.length_m - pattern.spacing_m)
        origin = round(pattern.origin[0] + u * cos(turn), 6), round(pattern.origin[1] + u * sin(turn), 6)
        return edits.rebuilt(pattern, origin=origin, length_m=round(pattern.length_m - u, 6))
    if isinstance(pattern, Rows):
        return edits.rebuilt(pattern, rows=max(1, round(v / pattern.row_spacing_m)))
    least = pattern.across_m if isinstance(pattern, Strip) else pattern.spacing_m
    return edits.rebuilt(pattern, width_m=round(max(v, least), 6))


class ReshapeGesture(Gesture):
    """Drag one handle of the one selected thing."""

    def __init__(self, view: PlanView, handle: str) -> None:
        super().__init__(view)
        desk = view.desk
        (item_id,) = desk.selection
        self._item = desk.garden.find(desk.layout_id, item_id)
        self._handle = handle
        self._after: Garden | None = None

    def move(self, pointer: Pointer) -> None:
        desk = self.view.desk
        if self._item is None:
            return
        at: QPointF = self.view.snapping(pointer, without={self._item.id}).point(pointer.at)
        to = round(at.x() / CM, 6), round(at.y() / CM, 6)
        try:
            item = reshaped(self._item, self._handle, to)
            after = edits.replace(desk.garden, desk.layout_id, [item])
        except Refusal as refusal:
            self.view.say(str(refusal))
            return
        self._after = after
        self.view.try_out(after)
        self.view.speak_of([item.id], pointer)

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        self.view.hush()
        after, self._after = self._after, None
        if after is None or self._item is None:
            self.view.settle()
            return
        text = translate("Canvas", "Reshape {0}").format(named([self._item], self.view.desk.catalogue))
        self.view.commit(after, text)

    def cancel(self) -> None:
        self._after = None
        self.view.hush()
        self.view.settle()


def reshape_gesture(view: PlanView, handle: str) -> Gesture:
    """The gesture that belongs to a handle's name."""
    return ReshapeGesture(view, handle)
