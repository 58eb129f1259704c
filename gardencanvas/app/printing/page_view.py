"""One page of a document as it will lie on paper, as large as wanted."""

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QWidget

from gardencanvas.paper.document import Document, paint_page

MOST_ZOOM = 8.0
STEP = 1.25
_MARGIN = 12.0
_PAPER, _SHADE = QColor("#ffffff"), QColor(0, 0, 0, 60)
_TURNS = {
    Qt.Key.Key_PageUp: -1, Qt.Key.Key_PageDown: 1, Qt.Key.Key_Home: -100_000, Qt.Key.Key_End: 100_000,
}  # fmt: skip
_ARROWS = {
    Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, -1), Qt.Key.Key_Down: (0, 1),
}  # fmt: skip


class PageView(QAbstractScrollArea):
    """Shows a page: PageUp, PageDown or the wheel turn pages; plus, minus, 0 or Ctrl and the wheel zoom.

    A zoom of 1 shows the whole page; at a larger one the page is dragged, or moved with the arrow keys.
    """

    turned = Signal(int)
    zoomed = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document: Document | None = None
        self.number = 0
        self.zoom = 1.0
        self._picture: QPixmap | None = None
        self._grabbed: QPointF | None = None
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Page"))

    # what is shown

    def show_document(self, document: Document) -> None:
        """Show another document, at the same page if it has so many."""
        self.document = document
        self._measure()
        self.turn_to(min(self.number, len(document.pages) - 1))

    def turn_to(self, number: int) -> None:
        """Show a page, counted from 0; beyond the ends the last or first."""
        if self.document is None:
            return
        self.number = min(max(number, 0), len(self.document.pages) - 1)
        self._anew()
        self.turned.emit(self.number)

    def zoom_to(self, zoom: float, about: QPointF | None = None) -> None:
        """Show the page so many times as large as it fits; a point of the view stays where it is."""
        zoom = min(max(zoom, 1.0), MOST_ZOOM)
        about = about or QRectF(self.viewport().rect()).center()
        before = self.sheet_box()
        if before.isEmpty() or zoom == self.zoom:
            return
        x, y = (about.x() - before.x()) / before.width(), (about.y() - before.y()) / before.height()
        self.zoom = zoom
        self._measure()
        size = self._sheet_size()
        self.horizontalScrollBar().setValue(round(_MARGIN + x * size.width() - about.x()))
        self.verticalScrollBar().setValue(round(_MARGIN + y * size.height() - about.y()))
        self._anew()
        self.zoomed.emit(zoom)

    def sizeHint(self) -> QSize:
        return QSize(640, 560)

    def minimumSizeHint(self) -> QSize:
        return QSize(280, 240)

    def _sheet_size(self) -> QSizeF:
        """The whole sheet in pixels of the view."""
        if self.document is None:
            return QSizeF()
        size, room = self.document.setup.size_mm, self.maximumViewportSize()
        scale = min(
            (room.width() - 2 * _MARGIN) / size.width(), (room.height() - 2 * _MARGIN) / size.height()
        )
        return size * max(scale, 0.05) * self.zoom

    def sheet_box(self) -> QRectF:
        """Where the sheet lies in the view."""
        size, room = self._sheet_size(), self.viewport().rect()
        x = _begin(size.width(), room.width(), self.horizontalScrollBar().value())
        y = _begin(size.height(), room.height(), self.verticalScrollBar().value())
        return QRectF(QPointF(x, y), size)

    def _measure(self) -> None:
        """How far the page can be moved."""
        size, room = self._sheet_size(), self.viewport().size()
        for bar, whole, shown in (
            (self.horizontalScrollBar(), size.width(), room.width()),
            (self.verticalScrollBar(), size.height(), room.height()),
        ):
            over = 0 if self.zoom <= 1.0 else max(round(whole + 2 * _MARGIN - shown), 0)
            bar.setRange(0, over)
            bar.setPageStep(shown)
            bar.setSingleStep(40)

    def _anew(self) -> None:
        self._picture = None
        self.viewport().update()

    # painting

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.document is None:
            return
        if self._picture is None:
            self._picture = self._drawn(self.sheet_box())
        painter = QPainter(self.viewport())
        painter.drawPixmap(0, 0, self._picture)
        painter.end()

    def _drawn(self, box: QRectF) -> QPixmap:
        """What the view shows, drawn once and kept until something changes."""
        ratio, room = self.devicePixelRatioF(), self.viewport().size()
        picture = QPixmap(max(round(room.width() * ratio), 1), max(round(room.height() * ratio), 1))
        picture.setDevicePixelRatio(ratio)
        picture.fill(Qt.GlobalColor.transparent)
        painter = QPainter(picture)
        try:
            painter.fillRect(box.translated(2, 3), _SHADE)
            painter.fillRect(box, _PAPER)
            if self.document is not None:
                painter.setClipRect(box)
                painter.translate(box.topLeft())
                paint_page(
                    self.document, self.number, painter, box.width() / self.document.setup.size_mm.width()
                )
        finally:
            painter.end()
        return picture

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._measure()
        self._anew()

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        self._anew()

    # hands

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in _TURNS:
            self.turn_to(self.number + _TURNS[key])
        elif key in _ARROWS:
            self._arrow(*_ARROWS[key])
        elif event.text() in ("+", "="):
            self.zoom_to(self.zoom * STEP)
        elif event.text() == "-":
            self.zoom_to(self.zoom / STEP)
        elif event.text() == "0":
            self.zoom_to(1.0)
        else:
            super().keyPressEvent(event)

    def _arrow(self, right: int, down: int) -> None:
        """Move the page where it is larger than the view; else turn it."""
        if self.zoom <= 1.0:
            self.turn_to(self.number + right + down)
            return
        self._move(QPoint(right, down) * 40)

    def _move(self, by: QPoint) -> None:
        self.horizontalScrollBar().setValue(self.horizontalScrollBar().value() + by.x())
        self.verticalScrollBar().setValue(self.verticalScrollBar().value() + by.y())

    def wheelEvent(self, event: QWheelEvent) -> None:
        up = event.angleDelta().y() > 0
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom_to(self.zoom * (STEP if up else 1 / STEP), event.position())
        elif self.zoom > 1.0:
            self._move(-event.angleDelta() / 2)
        else:
            self.turn_to(self.number + (-1 if up else 1))
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self.zoom > 1.0:
            self._grabbed = event.position()
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._grabbed is not None:
            self._move((self._grabbed - event.position()).toPoint())
            self._grabbed = event.position()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._grabbed = None
        self.viewport().unsetCursor()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.zoom_to(1.0 if self.zoom > 1.0 else 2.5, event.position())


def _begin(sheet: float, room: float, scrolled: int) -> float:
    """Where a sheet begins in the view: in its middle where it has room there, else as it is scrolled."""
    return (room - sheet) / 2 if sheet + 2 * _MARGIN <= room else _MARGIN - scrolled
