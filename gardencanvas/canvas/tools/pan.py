"""Moving the plan under the window."""

from PySide6.QtCore import QPoint, Qt

from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.tool import Pointer, Tool


class PanTool(Tool):
    """Drag the plan itself."""

    name = "pan"
    cursor = Qt.CursorShape.OpenHandCursor

    _last = QPoint()

    def hint(self) -> str:
        return translate("Canvas", "Drag to move the plan. Space or the middle button do so with any tool.")

    def begin(self, pointer: Pointer) -> None:
        self._last = pointer.pixel
        self.view.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def move(self, pointer: Pointer) -> None:
        step = pointer.pixel - self._last
        self._last = pointer.pixel
        self.view.pan_by(step.x(), step.y())

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        self.view.viewport().setCursor(self.cursor)
