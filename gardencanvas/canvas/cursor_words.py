"""The line of words beside the cursor while something is dragged."""

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from gardencanvas.canvas.look import Look
from gardencanvas.canvas.palette import palette
from gardencanvas.fit.report import Verdict

_WIDEST, _COMFORTABLE = 440, 330
_MOST_LINES = 3
_DOT = 14  # room for the verdict's dot before the title
_MARGIN = 10
_AWAY = 18  # pixels between the words and what they speak of


class CursorWords(QWidget):
    """A title and one line of why, on a dark plate that never lies on what is being placed."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._room = parent
        self._look = look
        self.title = ""
        self.why = ""
        self._verdict = Verdict.CLEAR
        self._wide = 0.0
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.hide()

    def speak(self, title: str, why: str, verdict: Verdict, cursor: QPoint, keep_clear: QRect) -> None:
        """Show the words near the cursor; ``keep_clear`` is where the plants will fall (parent pixels)."""
        self.title, self.why, self._verdict = title, why, verdict
        size = self._wanted()
        self.resize(size)
        self.move(place(size, cursor, keep_clear, self._room.rect()))
        self.show()
        self.raise_()
        self.update()

    def _fonts(self) -> tuple[QFont, QFont]:
        return self._look.font(13, bold=True), self._look.font(12)

    def _wanted(self) -> QSize:
        bold, small = self._fonts()
        title = QFontMetricsF(bold).horizontalAdvance(self.title) + _DOT
        why = QFontMetricsF(small).horizontalAdvance(self.why)
        self._wide = min(max(title, min(why, _COMFORTABLE)), _WIDEST) + 4
        lines = QFontMetricsF(bold).height()
        if self.why:
            lines += self._why_box(small).height() + 3
        return QSize(round(self._wide + 2 * _MARGIN), round(lines + 2 * _MARGIN - 2))

    def _why_box(self, small: QFont) -> QRectF:
        room = QRectF(0, 0, self._wide, QFontMetricsF(small).lineSpacing() * _MOST_LINES)
        return QFontMetricsF(small).boundingRect(room, Qt.TextFlag.TextWordWrap, self.why).intersected(room)

    def paintEvent(self, event: QPaintEvent) -> None:
        look, colours = self._look, self._look.colours
        bold, small = self._fonts()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours.note))
            painter.drawRoundedRect(QRectF(self.rect()), 8, 8)
            high = QFontMetricsF(bold).height()
            painter.setBrush(QColor(palette(not colours.dark).verdict(self._verdict)))
            painter.drawEllipse(QPointF(_MARGIN + 4, _MARGIN + high / 2 - 1), 4, 4)
            painter.setFont(bold)
            painter.setPen(QColor(colours.note_ink))
            top = QRectF(_MARGIN + _DOT, _MARGIN - 2, self._wide - _DOT, high)
            left = Qt.AlignmentFlag.AlignLeft
            title = look.elided(self.title, bold, top.width())
            painter.drawText(top, left | Qt.AlignmentFlag.AlignVCenter, title)
            if self.why:
                painter.setFont(small)
                painter.setPen(QColor(colours.note_quiet))
                below = self._why_box(small).translated(_MARGIN, top.bottom() + 2)
                below.setRight(_MARGIN + self._wide)
                painter.drawText(below, left | Qt.TextFlag.TextWordWrap, self.why)
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
