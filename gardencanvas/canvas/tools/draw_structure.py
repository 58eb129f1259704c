"""Drawing a structure: drag a box, a line or from the middle to the rim; click a stake; click corners."""

from __future__ import annotations

from math import hypot
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QKeyEvent, QPainterPath

from gardencanvas.canvas.items.overlay import SketchItem, beside
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import next_name, structure_name, translate
from gardencanvas.canvas.shapes import outline
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.canvas.typed import ALLOWED, length_m
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_at
from gardencanvas.garden.structures import KINDS, How, drawn
from gardencanvas.garden.value import Point
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_SHIFT = Qt.KeyboardModifier.ShiftModifier


class DrawStructureTool(Tool):
    """Draws one kind of structure after another until Esc."""

    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, view: PlanView, kind: str) -> None:
        super().__init__(view)
        self.name = kind
        self._how: How = KINDS[kind].how
        self._sketch = SketchItem(view.look)
        view.plan.addItem(self._sketch)
        self._points: list[Point] = []
        self._to: Point | None = None
        self._typed = ""

    def hint(self) -> str:
        what = structure_name(self.name)
        return {
            "box": translate("Canvas", "Drag from corner to corner: {0}. Esc ends."),
            "line": translate(
                "Canvas", "Drag from end to end: {0}; type its length. Shift: level. Esc ends."
            ),
            "round": translate("Canvas", "Drag from the middle to the rim: {0}; type its radius. Esc ends."),
            "click": translate("Canvas", "Click where it stands: {0}. Esc ends."),
            "corners": translate(
                "Canvas",
                "Click point after point: {0}, or type a length and Enter. "
                "Enter or a double click ends it, Backspace takes one back.",
            ),
        }[self._how].format(what)

    # mouse

    def _at(self, pointer: Pointer) -> Point:
        at = self.view.snapping(pointer).point(pointer.at)
        x, y = round(at.x() / CM, 6), round(at.y() / CM, 6)
        if self._points and pointer.holds(_SHIFT) and self._how != "box":
            x0, y0 = self._points[-1]
            return (x, y0) if abs(x - x0) > abs(y - y0) else (x0, y)
        return x, y

    def begin(self, pointer: Pointer) -> None:
        at = self._at(pointer)
        if self._how == "corners":
            self._add_corner(at)
            return
        self._points, self._typed = [at], ""
        if self._how == "click":
            self._finish()

    def _add_corner(self, at: Point) -> None:
        if self._points:
            at = self._measured(self._points[-1], at)
        if not self._points or at != self._points[-1]:
            self._points.append(at)
        self._typed = ""
        self._show(at)

    def move(self, pointer: Pointer) -> None:
        self.hover(pointer)

    def hover(self, pointer: Pointer) -> None:
        if self._points:
            self._show(self._at(pointer))

    def end(self, pointer: Pointer) -> None:
        if self._how in {"box", "line", "round"} and self._points:
            self._show(self._at(pointer))
            self._finish()

    def double_click(self, pointer: Pointer) -> None:
        if self._how == "corners":
            self._finish()

    # what it will be

    def _drawn(self) -> tuple[Point, ...]:
        if self._how in {"corners", "click"} or self._to is None:
            return tuple(self._points)
        return self._points[0], self._measured(self._points[0], self._to)

    def _measured(self, begin: Point, to: Point) -> Point:
        """The end of a line or radius of the length that was typed, towards where the mouse is."""
        metres = length_m(self._typed, self.view.look.measure.units)
        if metres is None or self._how == "box":
            return to
        dx, dy = to[0] - begin[0], to[1] - begin[1]
        far = hypot(dx, dy)
        if far == 0:
            return begin[0] + metres, begin[1]
        return round(begin[0] + dx / far * metres, 6), round(begin[1] + dy / far * metres, 6)

    def _item(self, points: tuple[Point, ...]) -> Item:
        return drawn(self.name, next_name(self.view.desk.garden, self.view.desk.layout, self.name), points)

    def _show(self, to: Point) -> None:
        self._to = to
        points = self._drawn()
        if self._how == "corners":
            points = (*self._points, self._measured(self._points[-1], to) if self._points else to)
        path = QPainterPath()
        try:
            path = outline(self._item(points) if self.name != "hole" else self._item_of_hole(points))
        except Refusal:
            path.moveTo(points[0][0] * CM, points[0][1] * CM)
            for x, y in points[1:]:
                path.lineTo(x * CM, y * CM)
        a, b = (
            (QPointF(x * CM, y * CM) for x, y in points[-2:]) if len(points) > 1 else (QPointF(), QPointF())
        )
        notes = []
        length = hypot(b.x() - a.x(), b.y() - a.y()) / CM
        if length * CM * self.view.look.scale > 24:
            text = self.view.look.measure.large(length)
            notes = [beside(a, b, QPointF(a.x(), a.y() + 1e6), 16 / self.view.look.scale, text)]
            self.view.say(f"{structure_name(self.name)}: {text}")
        self._sketch.put(path, notes, filled=self._how != "line")

    def _item_of_hole(self, points: tuple[Point, ...]) -> Item:
        return edits.made(Bed, id="hole", name="hole", outline=points)

    # committing

    def _finish(self) -> None:
        points = self._drawn()
        desk = self.view.desk
        try:
            if self.name == "hole":
                after, chosen = self._with_hole(points)
            else:
                item = self._item(points)
                after, chosen = edits.add(desk.garden, desk.layout_id, [item]), item.id
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            if self._how != "corners":
                self.cancel()
            return
        text = translate("Canvas", "Draw {0}").format(structure_name(self.name))
        self.cancel()
        if self.view.commit(after, text):
            desk.select({chosen})

    def _with_hole(self, points: tuple[Point, ...]) -> tuple[Garden, str]:
        desk = self.view.desk
        bed = bed_at(desk.layout, points[0])
        if bed is None:
            raise Refusal(translate("Canvas", "A hole is cut into a bed: begin inside one."))
        after = edits.change(desk.garden, desk.layout_id, bed.id, holes=(*bed.holes, points))
        return after, bed.id

    def key(self, event: QKeyEvent) -> bool:
        if not self._points:
            return False
        key = event.key()
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self._how == "corners" and self._typed:
                self._add_corner(self._to or self._points[-1])
            else:
                self._finish()
        elif key == Qt.Key.Key_Escape:
            self.cancel()
        elif key == Qt.Key.Key_Backspace and self._how == "corners" and not self._typed:
            self._points.pop()
            if self._points:
                self._show(self._to or self._points[-1])
            else:
                self._sketch.clear()
        elif key == Qt.Key.Key_Backspace and self._typed:
            self._typed = self._typed[:-1]
            self._again()
        elif event.text() and set(event.text()) <= ALLOWED and self._how != "box":
            self._typed += event.text()[:16]
            self._again()
        else:
            return False
        return True

    def _again(self) -> None:
        if self._to is not None:
            self._show(self._to)

    def cancel(self) -> None:
        self._points, self._to, self._typed = [], None, ""
        self._sketch.clear()
