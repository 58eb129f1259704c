"""Asking by place: click on open ground, or drag a box over an area."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QKeyEvent, QPainterPath

from gardencanvas.canvas.items.overlay import SketchItem
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.garden.value import Point

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_LEAST_PX = 8


class AskPlaceTool(Tool):
    """Emits the view's ``asked``: one plan point, or the four corners of a box."""

    name = "what fits"
    cursor = Qt.CursorShape.WhatsThisCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._sketch = SketchItem(view.look)
        view.plan.addItem(self._sketch)
        self._from: QPointF | None = None

    def hint(self) -> str:
        return translate("Canvas", "Click on open ground, or drag a box over it, to see what fits there.")

    def tell(self, where: Point | tuple[Point, ...]) -> None:
        """Pass on what was chosen."""
        self.view.asked.emit(where)

    def begin(self, pointer: Pointer) -> None:
        self._from = pointer.at

    def move(self, pointer: Pointer) -> None:
        if self._from is not None:
            path = QPainterPath()
            path.addRect(QRectF(self._from, pointer.at).normalized())
            self._sketch.put(path)

    def end(self, pointer: Pointer) -> None:
        begin, self._from = self._from, None
        self._sketch.clear()
        if begin is None:
            return
        box = QRectF(begin, pointer.at).normalized()
        if max(box.width(), box.height()) * self.view.look.scale < _LEAST_PX:
            self.tell((begin.x() / CM, begin.y() / CM))
            return
        corners = (box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft())
        self.tell(tuple((p.x() / CM, p.y() / CM) for p in corners))

    def key(self, event: QKeyEvent) -> bool:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            middle = self.view.mapToScene(self.view.viewport().rect().center())
            self.tell((middle.x() / CM, middle.y() / CM))
            return True
        if event.key() == Qt.Key.Key_Escape and self._from is not None:
            self.cancel()
            return True
        return False

    def cancel(self) -> None:
        self._from = None
        self._sketch.clear()
