"""A sheet of paper to draw on in millimetres, whatever lies under the painter."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF

_BLACK, _WHITE = QColor("#000000"), QColor("#ffffff")

_LONG_WORD, _BREAK = 8, "\u200b"  # letters of a word that may be too wide; the zero width space

SCALES = (10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000)


@dataclass(frozen=True)
class Box:
    """A rectangle on the sheet, millimetres from its upper left corner."""

    x: float
    y: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """Its right side."""
        return self.x + self.width

    @property
    def bottom(self) -> float:
        """Its lower side."""
        return self.y + self.height

    def grown(self, by: float) -> "Box":
        """The box with so much more on each side."""
        return Box(self.x - by, self.y - by, self.width + 2 * by, self.height + 2 * by)

    def meets(self, other: "Box") -> bool:
        """Whether the two overlap by more than their edges."""
        return (
            self.x < other.right and other.x < self.right and self.y < other.bottom and other.y < self.bottom
        )


class Sheet:
    """Lines, marks and words in millimetres and points.

    ``per_mm`` is device units to a millimetre: a writer's ``resolution()`` / 25.4, never ``physicalDpiX``,
    which keeps its first value after ``setResolution``.
    """

    def __init__(self, painter: QPainter, per_mm: float, box: Box) -> None:
        self.painter = painter
        self.per_mm = per_mm
        self.box = box  # what may be drawn on
        self._fonts: dict[tuple[float, bool], tuple[QFont, QFontMetricsF]] = {}
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)

    def at(self, x: float, y: float) -> QPointF:
        """A point on the sheet in device units."""
        return QPointF(x * self.per_mm, y * self.per_mm)

    def rect(self, box: Box) -> QRectF:
        """A box in device units."""
        return QRectF(self.at(box.x, box.y), self.at(box.x + box.width, box.y + box.height))

    def pen(self, width_mm: float, dash: tuple[float, ...] = ()) -> None:
        """Draw with a black pen of this width; ``dash`` in pen widths."""
        pen = QPen(_BLACK, width_mm * self.per_mm)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        if dash:
            pen.setDashPattern(list(dash))
        self.painter.setPen(pen)
        self.painter.setBrush(Qt.BrushStyle.NoBrush)

    def line(self, x0: float, y0: float, x1: float, y1: float) -> None:
        """A straight line."""
        self.painter.drawLine(self.at(x0, y0), self.at(x1, y1))

    def ring(self, points: list[tuple[float, float]]) -> None:
        """A closed outline."""
        self.painter.drawPolygon(QPolygonF([self.at(x, y) for x, y in points]))

    def rope(self, points: Sequence[tuple[float, float]]) -> None:
        """A line through some points."""
        self.painter.drawPolyline(QPolygonF([self.at(x, y) for x, y in points]))

    def white(self, points: Sequence[tuple[float, float]]) -> None:
        """Clear an area of what was drawn there."""
        self.painter.setPen(Qt.PenStyle.NoPen)
        self.painter.setBrush(_WHITE)
        self.painter.drawPolygon(QPolygonF([self.at(x, y) for x, y in points]))

    def white_box(self, box: Box) -> None:
        """Clear a box of what was drawn there."""
        self.painter.fillRect(self.rect(box), _WHITE)

    def fill(self, *, black: bool) -> None:
        """Fill what is drawn next with the pen that is set."""
        self.painter.setBrush(_BLACK if black else _WHITE)

    @contextmanager
    def clipped(self, box: Box) -> Iterator[None]:
        """Draw nothing outside a box meanwhile."""
        self.painter.save()
        self.painter.setClipRect(self.rect(box), Qt.ClipOperation.IntersectClip)
        try:
            yield
        finally:
            self.painter.restore()

    @contextmanager
    def turned(self, x: float, y: float, degrees: float) -> Iterator[None]:
        """Draw meanwhile in millimetres from a point, turned clockwise."""
        self.painter.save()
        self.painter.translate(self.at(x, y))
        self.painter.rotate(degrees)
        try:
            yield
        finally:
            self.painter.restore()

    def square(self, x: float, y: float, side: float) -> None:
        """A square from its upper left corner."""
        self.ring([(x, y), (x + side, y), (x + side, y + side), (x, y + side)])

    def circle(self, x: float, y: float, radius: float) -> None:
        """A circle."""
        self.painter.drawEllipse(self.at(x, y), radius * self.per_mm, radius * self.per_mm)

    def font(self, points: float, *, bold: bool = False) -> QFont:
        """The sheet's font at a size in points."""
        return self._font(points, bold)[0]

    def _font(self, points: float, bold: bool) -> tuple[QFont, QFontMetricsF]:
        """A font and its measures, made once for the sheet."""
        if (points, bold) not in self._fonts:
            font = self._made(points, bold)
            self._fonts[points, bold] = font, QFontMetricsF(font)
        return self._fonts[points, bold]

    def _made(self, points: float, bold: bool) -> QFont:
        font = QFont("DejaVu Sans")
        font.setStyleHint(QFont.StyleHint.SansSerif)
        font.setPixelSize(max(1, round(points / 72 * 25.4 * self.per_mm)))
        font.setBold(bold)
        font.setFeature(QFont.Tag("liga"), 0)  # words that are looked for in the PDF have their letters
        return font

    def width_of(self, text: str, points: float, *, bold: bool = False) -> float:
        """Width of a text in millimetres."""
        return self._font(points, bold)[1].horizontalAdvance(text) / self.per_mm

    def lines_of(self, text: str, width: float, points: float, *, bold: bool = False) -> int:
        """How many lines a text takes when it is wrapped to a width in millimetres; at least one."""
        metrics = self._font(points, bold)[1]
        text = self._breakable(text, width, metrics)
        room = QRectF(0, 0, max(width, 1.0) * self.per_mm, 1e7)
        high = metrics.boundingRect(room, int(Qt.TextFlag.TextWordWrap), text).height()
        return max(1, round(high / metrics.lineSpacing()))

    def _breakable(self, text: str, width: float, metrics: QFontMetricsF) -> str:
        """The text, a word that is wider than its line allowed to break between any two letters."""
        most = max(width, 1.0) * self.per_mm
        if metrics.horizontalAdvance(text) <= most:
            return text
        words = text.split(" ")
        return " ".join(
            w if len(w) < _LONG_WORD or metrics.horizontalAdvance(w) <= most else _BREAK.join(w)
            for w in words
        )

    def text(
        self,
        box: Box,
        text: str,
        points: float = 8.0,
        *,
        bold: bool = False,
        align: str = "left",
        lines: bool = False,
    ) -> None:
        """Words in a box, cut with an ellipsis where they do not fit; ``lines`` wraps them instead.

        The pen that was set stays.
        """
        font, metrics = self._font(points, bold)
        self.painter.setFont(font)
        pen = self.painter.pen()
        self.painter.setPen(QPen(_BLACK))
        area = self.rect(box)
        flags = {
            "left": Qt.AlignmentFlag.AlignLeft,
            "right": Qt.AlignmentFlag.AlignRight,
            "middle": Qt.AlignmentFlag.AlignHCenter,
        }[align] | Qt.AlignmentFlag.AlignVCenter
        if lines:
            side = Qt.AlignmentFlag.AlignRight if align == "right" else Qt.AlignmentFlag.AlignLeft
            top = side | Qt.AlignmentFlag.AlignTop
            text = self._breakable(text, box.width, metrics)
            self.painter.drawText(area, int(top) | int(Qt.TextFlag.TextWordWrap), text)
        else:
            shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, area.width())
            self.painter.drawText(area, int(flags), shown)
        self.painter.setPen(pen)
