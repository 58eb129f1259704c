"""The rubber band: selects what lies in it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainterPath

from gardencanvas.canvas.items.overlay import SketchItem
from gardencanvas.canvas.tools.tool import Gesture, Pointer

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


class BandGesture(Gesture):
    """Select what lies wholly in the band; Shift adds to what was selected."""

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._sketch = SketchItem(view.look)
        self._from = QPointF()
        self._before: frozenset[str] = frozenset()

    def begin(self, pointer: Pointer) -> None:
        self._from = pointer.at
        self._before = self.view.desk.selection
        self.view.plan.addItem(self._sketch)

    def move(self, pointer: Pointer) -> None:
        box = QRectF(self._from, pointer.at).normalized()
        path = QPainterPath()
        path.addRect(box)
        self._sketch.put(path)
        found = self.view.plan.items_within(box)
        adding = pointer.holds(Qt.KeyboardModifier.ShiftModifier)
        self.view.desk.select(self._before | set(found) if adding else found)

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        self._gone()

    def cancel(self) -> None:
        self.view.desk.select(self._before)
        self._gone()

    def _gone(self) -> None:
        self.view.plan.removeItem(self._sketch)
