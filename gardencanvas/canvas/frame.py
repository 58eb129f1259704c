"""The plan's furniture as widgets round and over the viewport: rulers, legend, words at the cursor."""

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QGraphicsView, QWidget

from gardencanvas.canvas.cursor_words import CursorWords
from gardencanvas.canvas.furniture import EmptyPlan, Furniture
from gardencanvas.canvas.look import Look
from gardencanvas.canvas.rulers import THICK, Ruler


class _Corner(QWidget):
    """The square where the rulers meet: the unit."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.fillRect(self.rect(), QColor(self._look.colours.panel))
            painter.setFont(self._look.font(9))
            painter.setPen(QColor(self._look.colours.quiet))
            unit = "ft" if self._look.measure.units == "imperial" else "m"
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, unit)
        finally:
            painter.end()


class Frame:
    """Owns the widgets and lays them out; they hold nothing of the garden."""

    def __init__(self, look: Look, view: QGraphicsView) -> None:
        self.top = Ruler(look, view, level=True)
        self.left = Ruler(look, view, level=False)
        self.corner = _Corner(look, view)
        self.furniture = Furniture(look, view)
        self.empty = EmptyPlan(look, view)
        self.words = CursorWords(look, view.viewport())

    def lay_out(self, viewport: QRect) -> None:
        """Place everything round the viewport, given in the view's pixels."""
        self.corner.setGeometry(0, 0, THICK, THICK)
        self.top.setGeometry(viewport.left(), 0, viewport.width(), THICK)
        self.left.setGeometry(0, viewport.top(), THICK, viewport.height())
        high = Furniture.HIGH
        self.furniture.setGeometry(viewport.left(), viewport.bottom() - high + 1, viewport.width(), high)
        size = self.empty.sizeHint()
        middle = viewport.center()
        self.empty.setGeometry(
            middle.x() - size.width() // 2, middle.y() - size.height() // 2, size.width(), size.height()
        )

    def rescale(self) -> None:
        """The view moved, the zoom or the units changed."""
        for part in (self.top, self.left, self.corner, self.furniture):
            part.update()

    def point(self, pixel: QPoint | None) -> None:
        """Show where the mouse is, in viewport pixels."""
        self.top.show_mouse(pixel.x() if pixel is not None else -1)
        self.left.show_mouse(pixel.y() if pixel is not None else -1)
