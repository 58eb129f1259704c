"""A plot of weeks for two layouts: lines that differ in colour and in dash, with a legend."""

from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.words.language import figure, say
from gardencanvas.words.plain import short_month

# two of the Okabe & Ito set that stay apart for every colour vision, and in grey by their dash
_LINES = (("#0072B2", Qt.PenStyle.SolidLine), ("#D55E00", Qt.PenStyle.DashLine))
_LEFT, _RIGHT, _TOP, _BOTTOM = 84, 12, 30, 24


@dataclass(frozen=True, slots=True)
class Line:
    """One layout's weeks: where they begin, their values, and how far they may be off."""

    name: str
    weeks: tuple[date, ...]
    values: tuple[float, ...]
    low: tuple[float, ...] = ()
    high: tuple[float, ...] = ()


def paint_plot(
    painter: QPainter, room: QRectF, title: str, unit: str, lines: tuple[Line, ...], colours: Palette
) -> None:
    """Draw the plot into a rectangle."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QColor(colours.ink))
    painter.drawText(QRectF(room.left(), room.top(), room.width() * 0.5, 20), 0, title)
    chart = room.adjusted(_LEFT, _TOP, -_RIGHT, -_BOTTOM)
    most = max((max(line.high or line.values, default=0.0) for line in lines), default=0.0)
    top = _rounded(most)
    _grid(painter, chart, top, unit, colours, lines)
    for line, (colour, dash) in zip(lines, _LINES, strict=False):
        _draw(painter, chart, top, line, QColor(colour), dash)
    _legend(painter, room, lines, colours)


def _rounded(most: float) -> float:
    """A round number not below the largest value."""
    if most <= 0:
        return 1.0
    step = 10.0 ** len(str(int(most))) / 10 if most >= 1 else 0.1
    return next(step * k for k in (1, 2, 2.5, 5, 10, 20, 50, 100) if step * k >= most - 1e-9)


def _grid(
    painter: QPainter, chart: QRectF, top: float, unit: str, colours: Palette, lines: tuple[Line, ...]
) -> None:
    quiet = QColor(colours.quiet)
    for share in (0.0, 0.5, 1.0):
        y = chart.bottom() - share * chart.height()
        painter.setPen(QPen(QColor(colours.line), 1))
        painter.drawLine(QPointF(chart.left(), y), QPointF(chart.right(), y))
        painter.setPen(quiet)
        text = f"{figure(top * share)} {unit}" if share == 1.0 else figure(top * share)
        flags = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        painter.drawText(QRectF(chart.left() - _LEFT, y - 8, _LEFT - 6, 16), flags, text)
    weeks = max((len(line.values) for line in lines), default=0)
    longest = next((line for line in lines if len(line.values) == weeks), None)
    if longest is None:
        return
    for number, week in enumerate(longest.weeks):
        if week.day <= 7:
            x = chart.left() + number / max(weeks - 1, 1) * chart.width()
            painter.drawText(QPointF(x - 8, chart.bottom() + 15), short_month(week.month))


def _most(line: Line, unit: str) -> str:
    most = figure(max(line.values, default=0.0), ".3g")
    return say("{line}: {most} {unit} at most", line=line.name, most=most, unit=unit)


def _points(chart: QRectF, top: float, values: tuple[float, ...]) -> QPolygonF:
    count = max(len(values) - 1, 1)
    return QPolygonF([
        QPointF(chart.left() + i / count * chart.width(), chart.bottom() - min(v / top, 1.0) * chart.height())
        for i, v in enumerate(values)
    ])  # fmt: skip


def _draw(
    painter: QPainter, chart: QRectF, top: float, line: Line, colour: QColor, dash: Qt.PenStyle
) -> None:
    if line.low and line.high:
        band = _points(chart, top, line.high)
        for point in reversed(_points(chart, top, line.low).toList()):
            band.append(point)
        soft = QColor(colour)
        soft.setAlpha(40)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(soft)
        painter.drawPolygon(band)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(colour, 2, dash))
    painter.drawPolyline(_points(chart, top, line.values))


def _legend(painter: QPainter, room: QRectF, lines: tuple[Line, ...], colours: Palette) -> None:
    x = room.left() + room.width() * 0.5
    wide = room.width() * 0.5 / max(len(lines), 1)
    for line, (colour, dash) in zip(lines, _LINES, strict=False):
        painter.setPen(QPen(QColor(colour), 2, dash))
        painter.drawLine(QPointF(x, room.top() + 9), QPointF(x + 26, room.top() + 9))
        painter.setPen(QColor(colours.ink))
        text = painter.fontMetrics().elidedText(line.name, Qt.TextElideMode.ElideRight, int(wide - 40))
        painter.drawText(QPointF(x + 32, room.top() + 13), text)
        x += wide


class Plot(QWidget):
    """The plot as a widget; its numbers are in the table for those who cannot see it."""

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._title, self._unit = title, ""
        self._lines: tuple[Line, ...] = ()
        self._colours: Palette = palette(False)
        self.setAccessibleName(title)

    def show_lines(self, unit: str, lines: tuple[Line, ...], colours: Palette) -> None:
        """Show these lines."""
        self._unit, self._lines, self._colours = unit, lines, colours
        self.setAccessibleDescription(", ".join(_most(line, unit) for line in lines))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(560, 170)

    def minimumSizeHint(self) -> QSize:
        return QSize(280, 120)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        paint_plot(painter, QRectF(self.rect()), self._title, self._unit, self._lines, self._colours)
        painter.end()
