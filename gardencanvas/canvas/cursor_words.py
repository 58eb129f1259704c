"""The line of words beside the cursor while something is dragged."""

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from gardencanvas.canvas.look import Look
from gardencanvas.canvas.palette import palette
from gardencanvas.fit.report import Verdict

_WIDEST = 420
_MARGIN = 10
_AWAY = 18  # pixels between the words and what they speak of


class CursorWords(QWidget):
    """A title and one line of why, on a dark plate that never lies on what is being placed."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look
        self.title = ""
        self.why = ""
        self._verdict = Verdict.CLEAR
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.hide()

    def speak(self, title: str, why: str, verdict: Verdict, cursor: QPoint, keep_clear: QRect) -> None:
        """Show the words near the cursor; ``keep_clear`` is where the plants will fall (parent pixels)."""
        self.title, self.why, self._verdict = title, why, verdict
        size = self._wanted()
        self.resize(size)
        self.move(place(size, cursor, keep_clear, self.parentWidget().rect()))
        self.show()
        self.raise_()
        self.update()

    def _wanted(self) -> QSize:
        bold, small = self._look.font(13, bold=True), self._look.font(12)
        wide = max(
            QFontMetricsF(bold).horizontalAdvance(self.title) + 16,
            QFontMetricsF(small).horizontalAdvance(self.why),
        )
        lines = QFontMetricsF(bold).height() + (QFontMetricsF(small).height() + 3 if self.why else 0)
        return QSize(round(min(wide, _WIDEST) + 2 * _MARGIN + 4), round(lines + 2 * _MARGIN - 2))

    def paintEvent(self, event: QPaintEvent) -> None:
        look, colours = self._look, self._look.colours
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours.note))
            painter.drawRoundedRect(QRectF(self.rect()), 8, 8)
            bold, small = look.font(13, bold=True), look.font(12)
            high = QFontMetricsF(bold).height()
            painter.setBrush(QColor(palette(not colours.dark).verdict(self._verdict)))
            painter.drawEllipse(QPointF(_MARGIN + 4, _MARGIN + high / 2 - 1), 4, 4)
            room = self.width() - 2 * _MARGIN
            painter.setFont(bold)
            painter.setPen(QColor(colours.note_ink))
            top = QRectF(_MARGIN + 14, _MARGIN - 2, room - 14, high)
            flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(top, flags, look.elided(self.title, bold, room - 14))
            if self.why:
                painter.setFont(small)
                painter.setPen(QColor(colours.note_quiet))
                below = QRectF(_MARGIN, top.bottom() + 2, room, QFontMetricsF(small).height())
                painter.drawText(below, flags, look.elided(self.why, small, room))
        finally:
            painter.end()


def place(size: QSize, cursor: QPoint, keep_clear: QRect, room: QRect) -> QPoint:
    """Where the words go: below, above, right or left of what they speak of, near the cursor, in the room."""
    wide, high = size.width(), size.height()
    x = min(max(cursor.x() - wide // 2, room.left() + 4), max(room.right() - wide - 4, room.left() + 4))
    y = min(max(cursor.y() - high // 2, room.top() + 4), max(room.bottom() - high - 4, room.top() + 4))
    spots = [
        QPoint(x, max(keep_clear.bottom(), cursor.y()) + _AWAY),
        QPoint(x, min(keep_clear.top(), cursor.y()) - _AWAY - high),
        QPoint(keep_clear.right() + _AWAY, y),
        QPoint(keep_clear.left() - _AWAY - wide, y),
    ]
    for spot in spots:
        if room.contains(QRect(spot, size)):
            return spot
    corners = [
        QPoint(room.left() + 4, room.bottom() - high - 4),
        QPoint(room.right() - wide - 4, room.bottom() - high - 4),
        QPoint(room.left() + 4, room.top() + 4),
        QPoint(room.right() - wide - 4, room.top() + 4),
    ]
    return min(corners, key=lambda c: _overlap(QRect(c, size), keep_clear))


def _overlap(a: QRect, b: QRect) -> int:
    both = a.intersected(b)
    return max(both.width(), 0) * max(both.height(), 0)
