"""Map furniture at the foot of the plan: legend, scale bar, north arrow; and the words of an empty plan."""

from math import cos, radians, sin

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QWidget

from gardencanvas.canvas.items.mark import draw_mark
from gardencanvas.canvas.items.outline_shape import Shape
from gardencanvas.canvas.look import Look, pen, tone
from gardencanvas.canvas.naming import translate
from gardencanvas.fit.report import Verdict

_FOOT_CM = 30.48


def scale_bar(scale: float, imperial: bool, longest_px: float = 130.0) -> tuple[float, str]:
    """Length of the bar in centimetres and what to write on it: the roundest that fits."""
    if imperial:
        lengths = [(2.54 * n, f"{n}″") for n in (1, 2, 6)]
        lengths += [(_FOOT_CM * n, f"{n}′") for n in (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)]
    else:
        lengths = [(n, f"{n} cm") for n in (1, 2, 5, 10, 20, 50)]
        lengths += [(100.0 * n, f"{n} m") for n in (1, 2, 5, 10, 20, 50, 100, 200, 500)]
    fitting = [one for one in lengths if one[0] * scale <= longest_px]
    return fitting[-1] if fitting else lengths[0]


def draw_scale_bar(painter: QPainter, look: Look, right: QPointF, scale: float) -> float:
    """Draw the bar so that it ends at ``right``; returns its width in the painter's units."""
    length, text = scale_bar(scale, look.measure.units == "imperial")
    width = length * scale
    left = right.x() - width
    y = right.y()
    painter.setPen(pen(look.colours.ink, 1.4))
    painter.setBrush(QColor(look.colours.ink))
    for i in range(4):
        piece = QRectF(left + width * i / 4, y - 4, width / 4, 4)
        painter.setBrush(QColor(look.colours.ink if i % 2 == 0 else look.colours.paper))
        painter.drawRect(piece)
    painter.setFont(look.font(11))
    painter.setPen(QColor(look.colours.ink))
    painter.drawText(QRectF(left - 40, y - 22, width + 80, 16), Qt.AlignmentFlag.AlignCenter, text)
    return width


def draw_north(
    painter: QPainter, look: Look, centre: QPointF, bearing_deg: float, radius: float = 15.0
) -> None:
    """An arrow to the north: the plan's top edge looks towards ``bearing_deg``."""
    angle = radians(-bearing_deg)
    up = QPointF(sin(angle), -cos(angle))
    side = QPointF(-up.y(), up.x())
    painter.setPen(pen(look.colours.quiet, 1.0))
    painter.setBrush(tone(look.colours.panel, 200))
    painter.drawEllipse(centre, radius, radius)
    tip, foot = centre + up * radius * 0.8, centre - up * radius * 0.55
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(look.colours.ink))
    painter.drawPolygon(QPolygonF([tip, foot + side * radius * 0.42, centre - up * radius * 0.25]))
    painter.setBrush(QColor(look.colours.quiet))
    painter.drawPolygon(QPolygonF([tip, foot - side * radius * 0.42, centre - up * radius * 0.25]))
    painter.setFont(look.font(10, bold=True))
    painter.setPen(QColor(look.colours.ink))
    at = centre + up * (radius + 8)
    painter.drawText(QRectF(at.x() - 8, at.y() - 8, 16, 16), Qt.AlignmentFlag.AlignCenter, "N")


def legend_width(look: Look) -> float:
    """Width of the legend in pixels."""
    metrics = QFontMetricsF(look.font(12))
    return sum(38 + metrics.horizontalAdvance(word) + 16 for word in legend_words())


def legend_words() -> tuple[str, str, str, str]:
    """The four verdicts."""
    return (
        translate("Canvas", "clear"),
        translate("Canvas", "shares"),
        translate("Canvas", "strains"),
        translate("Canvas", "clashes"),
    )


def draw_legend(painter: QPainter, look: Look, left: QPointF) -> None:
    """The four marks with their words; ``left`` is the middle of the left edge."""
    font = look.font(12)
    metrics = QFontMetricsF(font)
    x, y = left.x(), left.y()
    for verdict, word in zip(Verdict, legend_words(), strict=True):
        shape = QPainterPath()
        shape.addRoundedRect(QRectF(x + 2, y - 8, 28, 16), 8, 8)
        draw_mark(painter, Shape(shape), verdict, look.colours, vector=look.vector)
        painter.setFont(font)
        painter.setPen(QColor(look.colours.ink))
        painter.drawText(QPointF(x + 37, y + metrics.ascent() / 2 - 1), word)
        x += 38 + metrics.horizontalAdvance(word) + 16


class Furniture(QWidget):
    """Legend to the left, scale bar and north arrow to the right."""

    HIGH = 52

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look
        self.bearing_deg = 0.0
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)

    def sizeHint(self) -> QSize:
        return QSize(300, self.HIGH)

    def paintEvent(self, event: QPaintEvent) -> None:
        look = self._look
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            y = self.height() - 22.0
            right = self.width() - 14.0
            bar = scale_bar(look.scale, look.measure.units == "imperial")[0] * look.scale
            self._plate(painter, QRectF(right - bar - 70, y - 22, bar + 76, 38))
            draw_scale_bar(painter, look, QPointF(right - 4, y + 8), look.scale)
            draw_north(painter, look, QPointF(right - bar - 42, y + 2), self.bearing_deg, 10)
            width = legend_width(look)
            if 10 + width < right - bar - 80:
                self._plate(painter, QRectF(8, y - 14, width, 28))
                draw_legend(painter, look, QPointF(14, y))
        finally:
            painter.end()

    def _plate(self, painter: QPainter, box: QRectF) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(tone(self._look.colours.paper, 225))
        painter.drawRoundedRect(box, 6, 6)


class EmptyPlan(QWidget):
    """What to do first, on a plan without a bed."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAccessibleName(f"{self.title()} {self.text()}")

    def title(self) -> str:
        """The first line."""
        return translate("Canvas", "Draw your first bed")

    def text(self) -> str:
        """What to do."""
        return translate(
            "Canvas",
            "Press B and drag, or type its measures, such as 3.6 x 1.2, and Enter.\n"
            "Then drag a crop from the seed tin into it.",
        )

    def sizeHint(self) -> QSize:
        return QSize(460, 190)

    def paintEvent(self, event: QPaintEvent) -> None:
        look, colours = self._look, self._look.colours
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            middle = self.width() / 2
            bed = QRectF(middle - 90, 14, 180, 62)
            painter.setBrush(tone(colours.soil, 160))
            painter.setPen(pen(colours.bed_edge, 2.0, Qt.PenStyle.DashLine))
            painter.drawRoundedRect(bed, 3, 3)
            flags = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop
            painter.setFont(look.font(16, bold=True))
            painter.setPen(QColor(colours.ink))
            painter.drawText(QRectF(0, 96, self.width(), 26), flags, self.title())
            painter.setFont(look.font(13))
            painter.setPen(QColor(colours.quiet))
            painter.drawText(QRectF(0, 126, self.width(), 60), flags, self.text())
        finally:
            painter.end()
