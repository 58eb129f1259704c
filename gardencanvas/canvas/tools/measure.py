"""Measuring a distance on the plan."""

from __future__ import annotations

from math import hypot
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainterPath

from gardencanvas.canvas.items.overlay import SketchItem, beside
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.tool import Pointer, Tool

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


class MeasureTool(Tool):
    """Drag from one place to another; the distance stays until the next drag or Esc."""

    name = "measure"
    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._sketch = SketchItem(view.look)
        view.plan.addItem(self._sketch)
        self._from = QPointF()
        self.distance_m = 0.0

    def hint(self) -> str:
        return translate("Canvas", "Drag to measure a distance. Shift keeps the line level or upright.")

    def begin(self, pointer: Pointer) -> None:
        self._from = self.view.snapping().point(pointer.at)

    def move(self, pointer: Pointer) -> None:
        to = self.view.snapping(pointer).point(pointer.at)
        if pointer.holds(Qt.KeyboardModifier.ShiftModifier):
            flat = abs(to.x() - self._from.x()) > abs(to.y() - self._from.y())
            to = QPointF(to.x(), self._from.y()) if flat else QPointF(self._from.x(), to.y())
        path = QPainterPath(self._from)
        path.lineTo(to)
        self.distance_m = hypot(to.x() - self._from.x(), to.y() - self._from.y()) / CM
        text = self.view.look.measure.large(self.distance_m)
        gap = 16 / self.view.look.scale
        note = beside(self._from, to, QPointF(self._from.x(), self._from.y() + 1e6), gap, text)
        self._sketch.put(path, [note], filled=False)
        self.view.say(text)

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)

    def cancel(self) -> None:
        self._sketch.clear()
