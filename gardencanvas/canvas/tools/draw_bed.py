"""Drawing beds: a rectangle by a drag or by typed measures, any polygon corner by corner."""

from __future__ import annotations

from math import hypot
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QKeyEvent, QPainterPath, QPolygonF

from gardencanvas.canvas.items.overlay import Note, SketchItem, beside
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import next_bed_name, translate
from gardencanvas.canvas.shapes import span
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.canvas.typed import ALLOWED, length_m, sides_m
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.value import new_id
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_LEAST_CM = 2.0
_PATH_CM = 50.0  # left beside the bed before, for a path: common practice 45-60 cm
_STEP_CM, _STRIDE_CM = 5.0, 50.0
_ARROWS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}


class _BedTool(Tool):
    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._sketch = SketchItem(view.look)
        view.plan.addItem(self._sketch)

    def _commit(self, corners: list[QPointF]) -> bool:
        """Add a bed with these corners; a refusal is shown and nothing changes."""
        desk = self.view.desk
        outline = tuple((round(p.x() / CM, 6), round(p.y() / CM, 6)) for p in corners)
        name = next_bed_name(desk.layout)
        try:
            bed = edits.made(Bed, id=new_id("bed"), name=name, outline=outline)
            after = edits.add(desk.garden, desk.layout_id, [bed])
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return False
        if self.view.commit(after, translate("Canvas", "Draw {0}").format(name)):
            desk.select({bed.id})
        return True

    def _sides(self, corners: list[QPointF], closed: bool) -> list[Note]:
        middle = QPolygonF(corners).boundingRect().center()
        gap = 15 / self.view.look.scale
        ends = [*corners[1:], corners[0]] if closed else corners[1:]
        notes = []
        for a, b in zip(corners, ends, strict=False):
            length = ((b.x() - a.x()) ** 2 + (b.y() - a.y()) ** 2) ** 0.5
            if length * self.view.look.scale > 24:
                notes.append(beside(a, b, middle, gap, self.view.look.measure.large(length / CM)))
        return notes


class DrawBedTool(_BedTool):
    """Drag a rectangle, or type its measures while you drag."""

    name = "bed"

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._from: QPointF | None = None
        self._to = QPointF()
        self._typed = ""
        self._by_keys = False

    def hint(self) -> str:
        return translate(
            "Canvas", "Drag a bed, or type its measures, such as 3.6 x 1.2, and Enter. Shift: square."
        )

    def begin(self, pointer: Pointer) -> None:
        self._from = self._to = self.view.snapping(pointer).point(pointer.at)
        self._typed = ""
        self._by_keys = False

    def move(self, pointer: Pointer) -> None:
        if self._from is None:
            return
        to = self.view.snapping(pointer).point(pointer.at)
        if pointer.holds(Qt.KeyboardModifier.ShiftModifier):
            side = max(abs(to.x() - self._from.x()), abs(to.y() - self._from.y()))
            to = self._from + QPointF(
                side if to.x() >= self._from.x() else -side, side if to.y() >= self._from.y() else -side
            )
        self._to = to
        self._show()

    def _box(self) -> QRectF:
        """The rectangle from press to pointer, its sides replaced by what was typed."""
        start = self._from or QPointF()
        away = self._to - start
        width, height = sides_m(self._typed, self.view.look.measure.units)
        w = width * CM if width is not None else abs(away.x())
        h = height * CM if height is not None else abs(away.y())
        to = start + QPointF(w if away.x() >= 0 else -w, h if away.y() >= 0 else -h)
        return QRectF(start, to).normalized()

    def _show(self) -> None:
        box = self._box()
        path = QPainterPath()
        path.addRect(box)
        measure = self.view.look.measure
        text = f"{measure.large(box.width() / CM)} × {measure.large(box.height() / CM)}"
        corners = [box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()]
        notes = self._sides(corners, closed=True)[:2]
        if self._typed:
            notes.append(Note(box.center(), self._typed + "▏"))
        self._sketch.put(path, notes)
        self.view.say(text)

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        self._finish()

    def _finish(self) -> None:
        if self._from is None:
            return
        box = self._box()
        self._clear()
        if box.width() < _LEAST_CM or box.height() < _LEAST_CM:
            self.view.say(self.hint())
            return
        corners = [box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()]
        if self._commit(corners):
            self.view.bring_in(box)
            self.view.set_tool("select")

    def _begin_by_keys(self) -> None:
        """Begin a bed that is only typed: under the lowest one, on a new plan where the rulers begin."""
        beds = self.view.desk.layout.beds
        at = QPointF()
        if beds:
            lowest = span(beds)
            at = QPointF(lowest.left(), lowest.bottom() + _PATH_CM)
        self._from = self._to = at
        self._by_keys = True
        self.view.ensure_seen(at)

    def _step(self, dx: int, dy: int, *, far: bool) -> None:
        """Move a bed that is only typed."""
        step = QPointF(dx, dy) * (_STRIDE_CM if far else _STEP_CM)
        self._from = self._to = (self._from or QPointF()) + step
        self.view.ensure_seen(self._from)
        self._show()

    def key(self, event: QKeyEvent) -> bool:
        if self._from is None:
            if not event.text() or event.text() not in "0123456789.,":
                return False
            self._begin_by_keys()
        if event.key() in _ARROWS and self._by_keys:
            far = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
            self._step(*_ARROWS[Qt.Key(event.key())], far=far)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._finish()
        elif event.key() == Qt.Key.Key_Escape:
            self.cancel()
        elif event.key() == Qt.Key.Key_Backspace:
            self._typed = self._typed[:-1]
            self._show()
        elif event.key() == Qt.Key.Key_Tab:
            self._typed += "x"
            self._show()
        elif event.text() and set(event.text()) <= ALLOWED and len(self._typed) < 24:
            self._typed += event.text()
            self._show()
        else:
            return False
        return True

    def _clear(self) -> None:
        self._from = None
        self._typed = ""
        self._sketch.clear()

    def cancel(self) -> None:
        self._clear()


class DrawPolygonTool(_BedTool):
    """Click the corners of a bed; Enter, a double click or a click on the first corner closes it."""

    name = "polygon"

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._corners: list[QPointF] = []
        self._at = QPointF()  # where the mouse is
        self._typed = ""

    def hint(self) -> str:
        return translate(
            "Canvas",
            "Click corner after corner, or type the length of a side and Enter; "
            "Enter or a double click closes the bed, Backspace takes one back.",
        )

    def _place(self, pointer: Pointer) -> QPointF:
        at = self.view.snapping(pointer).point(pointer.at)
        if self._corners and pointer.holds(Qt.KeyboardModifier.ShiftModifier):
            last = self._corners[-1]
            flat = abs(at.x() - last.x()) > abs(at.y() - last.y())
            at = QPointF(at.x(), last.y()) if flat else QPointF(last.x(), at.y())
        self._at = at
        return self._measured()

    def _measured(self) -> QPointF:
        """Where the mouse is; or so far from the last corner towards it as was typed."""
        length = length_m(self._typed, self.view.look.measure.units)
        if length is None or not self._corners:
            return self._at
        last = self._corners[-1]
        away = self._at - last
        far = hypot(away.x(), away.y())
        return last + (away / far if far else QPointF(1.0, 0.0)) * length * CM

    def begin(self, pointer: Pointer) -> None:
        at = self._place(pointer)
        if len(self._corners) >= 3 and self._near(at, self._corners[0]):
            self._close()
            return
        if not self._corners or not self._near(at, self._corners[-1]):
            self._corners.append(at)
        self._typed = ""
        self._show(at)

    def _near(self, a: QPointF, b: QPointF) -> bool:
        return (a - b).manhattanLength() * self.view.look.scale < 9

    def move(self, pointer: Pointer) -> None:
        self.hover(pointer)

    def hover(self, pointer: Pointer) -> None:
        if self._corners:
            self._show(self._place(pointer))

    def double_click(self, pointer: Pointer) -> None:
        self._close()

    def _show(self, at: QPointF) -> None:
        shown = [*self._corners, at]
        path = QPainterPath(shown[0])
        for p in shown[1:]:
            path.lineTo(p)
        notes = self._sides(shown, closed=False)
        if self._typed:
            notes.append(Note(at, self._typed + "▏"))
        self._sketch.put(path, notes, filled=len(shown) > 2)

    def _close(self) -> None:
        if len(self._corners) < 3:
            self.view.say(translate("Canvas", "A bed needs three corners or more."))
            return
        if self._commit(self._corners):
            self.cancel()
            self.view.set_tool("select")

    def key(self, event: QKeyEvent) -> bool:
        if not self._corners:
            return False
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and self._typed:
            self._corners.append(self._measured())
            self._typed = ""
            self._show(self._at)
        elif enter:
            self._close()
        elif event.key() == Qt.Key.Key_Escape:
            self.cancel()
        elif event.key() == Qt.Key.Key_Backspace and self._typed:
            self._typed = self._typed[:-1]
            self._show(self._measured())
        elif event.text() and set(event.text()) <= ALLOWED and len(self._typed) < 16:
            self._typed += event.text()
            self._show(self._measured())
        elif event.key() == Qt.Key.Key_Backspace:
            self._corners.pop()
            if self._corners:
                self._show(self._corners[-1])
            else:
                self._sketch.clear()
        else:
            return False
        return True

    def cancel(self) -> None:
        self._corners, self._typed = [], ""
        self._sketch.clear()
