"""Rulers along the top and left of the plan, in metres or feet."""

from math import floor, log10

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QGraphicsView, QWidget

from gardencanvas.canvas.look import Look, pen
from gardencanvas.words.language import figure

THICK = 22
_FOOT_CM = 30.48
_TEXT_EVERY = 58.0  # pixels between numbers, at least


def steps(scale: float, imperial: bool) -> tuple[float, int]:
    """Distance between numbers in centimetres, and into how many parts it is divided."""
    unit = _FOOT_CM if imperial else 100.0
    want = _TEXT_EVERY / scale / unit
    if imperial and want <= 0.5:
        inches = next((n for n in (1, 2, 3, 6) if n / 12 >= want), 6)
        return inches / 12 * unit, max(inches, 2)
    power = 10 ** floor(log10(want))
    for factor, parts in ((1, 10), (2, 4), (5, 5), (10, 10)):
        if factor * power >= want:
            return factor * power * unit, parts
    return 10 * power * unit, 10


def number(cm: float, step_cm: float, imperial: bool) -> str:
    """The number at a mark: metres with as many digits as the step needs, or feet and inches."""
    if imperial:
        inches = round(cm / 2.54)
        feet, rest = divmod(abs(inches), 12)
        sign = "−" if inches < 0 else ""
        return f"{sign}{feet}′" if rest == 0 else f"{sign}{feet}′{rest}″"
    metres = cm / 100
    digits = 0 if step_cm >= 100 else 1 if step_cm >= 10 else 2
    rounded = round(abs(metres), digits)
    text = figure(rounded, f".{digits}f")
    return f"−{text}" if metres < 0 and rounded != 0 else text


class Ruler(QWidget):
    """One ruler; marks where the mouse is."""

    def __init__(self, look: Look, view: QGraphicsView, *, level: bool) -> None:
        super().__init__(view)
        self._look, self._view, self._level = look, view, level
        self._mouse = -1.0
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def sizeHint(self) -> QSize:
        return QSize(THICK, THICK)

    def show_mouse(self, pixel: float) -> None:
        """Mark the mouse's place along the ruler; below 0 for none."""
        if pixel != self._mouse:
            self._mouse = pixel
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.fillRect(self.rect(), QColor(self._look.colours.panel))
            painter.setPen(pen(self._look.colours.grid_strong, 1.0))
            if self._level:
                painter.drawLine(0, THICK - 1, self.width(), THICK - 1)
            else:
                painter.drawLine(THICK - 1, 0, THICK - 1, self.height())
            self._marks(painter)
            if self._mouse >= 0:
                painter.setPen(pen(self._look.colours.accent, 1.5))
                at = round(self._mouse)
                painter.drawLine(*((at, 0, at, THICK) if self._level else (0, at, THICK, at)))
        finally:
            painter.end()

    def _marks(self, painter: QPainter) -> None:
        scale, imperial = self._look.scale, self._look.measure.units == "imperial"
        step, parts = steps(scale, imperial)
        corner = self._view.mapToScene(0, 0)
        begin = corner.x() if self._level else corner.y()
        length = (self.width() if self._level else self.height()) / scale
        small = step / parts
        painter.setFont(self._look.font(10))
        quiet = QColor(self._look.colours.quiet)
        first = floor(begin / small)
        painter.setPen(pen(quiet, 1.0, alpha=150))
        for i in range(first, first + round(length / small) + 2):
            at = (i * small - begin) * scale
            tall = 10 if i % parts == 0 else 4
            self._line(painter, at, tall)
        painter.setPen(quiet)
        whole = floor(begin / step)
        for i in range(whole, whole + round(length / step) + 2):
            self._text(painter, (i * step - begin) * scale, number(i * step, step, imperial))

    def _line(self, painter: QPainter, at: float, tall: float) -> None:
        if self._level:
            painter.drawLine(QPointF(at, THICK - 1 - tall), QPointF(at, THICK - 1))
        else:
            painter.drawLine(QPointF(THICK - 1 - tall, at), QPointF(THICK - 1, at))

    def _text(self, painter: QPainter, at: float, text: str) -> None:
        if self._level:
            painter.drawText(QPointF(at + 3, 11), text)
            return
        painter.save()
        painter.translate(11, at - 3)
        painter.rotate(-90)
        painter.drawText(QPointF(0, 0), text)
        painter.restore()
