"""One page of a document as it will lie on paper."""

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPixmap, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from gardencanvas.paper.document import Document, paint_page

_MARGIN = 12
_PAPER, _SHADE = QColor("#ffffff"), QColor(0, 0, 0, 60)


class PageView(QWidget):
    """Shows a page as large as there is room; PageUp, PageDown and the wheel turn pages."""

    turned = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document: Document | None = None
        self.number = 0
        self._picture: QPixmap | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Page"))

    def show_document(self, document: Document) -> None:
        """Show another document, at the same page if it has so many."""
        self.document = document
        self.turn_to(min(self.number, len(document.pages) - 1))

    def turn_to(self, number: int) -> None:
        """Show a page, counted from 0; beyond the ends the last or first."""
        if self.document is None:
            return
        self.number = min(max(number, 0), len(self.document.pages) - 1)
        self._picture = None
        self.update()
        self.turned.emit(self.number)

    def sizeHint(self) -> QSize:
        return QSize(640, 560)

    def minimumSizeHint(self) -> QSize:
        return QSize(280, 240)

    def sheet_box(self) -> QRectF:
        """Where the sheet lies in the widget."""
        if self.document is None:
            return QRectF()
        size = self.document.setup.size_mm
        room = QRectF(self.rect()).adjusted(_MARGIN, _MARGIN, -_MARGIN, -_MARGIN)
        scale = min(room.width() / size.width(), room.height() / size.height())
        wide, high = size.width() * scale, size.height() * scale
        return QRectF(room.center().x() - wide / 2, room.center().y() - high / 2, wide, high)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.document is None:
            return
        box = self.sheet_box()
        if self._picture is None:
            self._picture = self._drawn(box)
        painter = QPainter(self)
        painter.fillRect(box.translated(2, 3), _SHADE)
        painter.drawPixmap(box.topLeft(), self._picture)
        painter.end()

    def _drawn(self, box: QRectF) -> QPixmap:
        ratio = self.devicePixelRatioF()
        picture = QPixmap(max(round(box.width() * ratio), 1), max(round(box.height() * ratio), 1))
        picture.fill(_PAPER)
        if self.document is not None:
            painter = QPainter(picture)
            try:
                per_mm = picture.width() / self.document.setup.size_mm.width()
                paint_page(self.document, self.number, painter, per_mm)
            finally:
                painter.end()
        picture.setDevicePixelRatio(ratio)
        return picture

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._picture = None
        super().resizeEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {
            Qt.Key.Key_PageUp: -1, Qt.Key.Key_PageDown: 1, Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1,
            Qt.Key.Key_Home: -100_000, Qt.Key.Key_End: 100_000,
        }  # fmt: skip
        step = steps.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
            return
        self.turn_to(self.number + step)

    def wheelEvent(self, event: QWheelEvent) -> None:
        self.turn_to(self.number + (-1 if event.angleDelta().y() > 0 else 1))
        event.accept()
