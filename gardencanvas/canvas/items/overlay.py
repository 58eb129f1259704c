"""What lies above the plan while it is worked on: selection, rubber band, and the lines of tools."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import atan2, cos, degrees, pi, sin

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QTransform
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import Look, pen, tone

HANDLE_PX = 9.0
_WORDS_PX = 90.0  # room for a measure beside a line


class SelectionItem(Part):
    """A band of light round what is selected, under the verdict marks so that these stay readable."""

    def __init__(self, look: Look) -> None:
        super().__init__(look, order.SELECTION)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)

    def put(self, outline: QPainterPath) -> None:
        """Show this outline."""
        self._take(outline)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if self.outline.isEmpty():
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        accent = self.look.colours.accent
        painter.setBrush(tone(accent, 16))
        painter.setPen(self.look.line(accent, 9.0, alpha=150))
        painter.drawPath(self.outline)


class HandleItem(QGraphicsItem):
    """A grip of a fixed size: a square to reshape, a disc to turn."""

    def __init__(self, look: Look, name: str) -> None:
        super().__init__()
        self.look = look
        self.name = name
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setZValue(order.HANDLE)

    def boundingRect(self) -> QRectF:
        return QRectF(-HANDLE_PX, -HANDLE_PX, 2 * HANDLE_PX, 2 * HANDLE_PX)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(pen(self.look.colours.accent, 1.8))
        painter.setBrush(QColor(self.look.colours.panel))
        if self.name == "turn":
            painter.drawEllipse(QPointF(0, 0), 5.5, 5.5)
            painter.setPen(pen(self.look.colours.accent, 1.2))
            painter.drawArc(QRectF(-2.6, -2.6, 5.2, 5.2), 40 * 16, 260 * 16)
        else:
            painter.drawRoundedRect(QRectF(-4, -4, 8, 8), 1.5, 1.5)


@dataclass(frozen=True, slots=True)
class Note:
    """A measure written beside a line: where, what, and the line's direction in degrees."""

    at: QPointF
    text: str
    angle_deg: float = 0.0


class SketchItem(Part):
    """Lines a tool draws before anything is committed, with measures beside them."""

    def __init__(self, look: Look) -> None:
        super().__init__(look, order.TOOL)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.notes: tuple[Note, ...] = ()
        self.filled = True
        self._words_pad = 0.0

    def put(self, path: QPainterPath, notes: Sequence[Note] = (), *, filled: bool = True) -> None:
        """Show these lines and measures."""
        self.prepareGeometryChange()  # first: the scene's index must be told while the box is the old one
        self.notes = tuple(notes)
        self._words_pad = _WORDS_PX / self.look.scale if self.notes else 0.0
        self.filled = filled
        self._take(path)

    def clear(self) -> None:
        """Show nothing."""
        self.put(QPainterPath())

    def rescale(self) -> None:
        super().rescale()
        if self.notes:
            self.prepareGeometryChange()
            self._words_pad = _WORDS_PX / self.look.scale

    def boundingRect(self) -> QRectF:
        pad = max(self._words_pad, self._pad)
        return self.rest.adjusted(-pad, -pad, pad, pad)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if self.outline.isEmpty():
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        accent = self.look.colours.accent
        painter.setPen(self.look.line(accent, 1.6))
        painter.setBrush(tone(accent, 26) if self.filled else Qt.BrushStyle.NoBrush)
        painter.drawPath(self.outline)
        world = painter.worldTransform()
        painter.save()
        painter.setWorldTransform(QTransform())
        for note in self.notes:
            self._write(painter, world.map(note.at), note)
        painter.restore()

    def _write(self, painter: QPainter, at: QPointF, note: Note) -> None:
        font = self.look.font(12, bold=True)
        width = QFontMetricsF(font).horizontalAdvance(note.text) + 12
        painter.save()
        painter.translate(at)
        painter.rotate(note.angle_deg)
        plate = QRectF(-width / 2, -10, width, 20)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(tone(self.look.colours.note, 235))
        painter.drawRoundedRect(plate, 5, 5)
        painter.setFont(font)
        painter.setPen(QColor(self.look.colours.note_ink))
        painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, note.text)
        painter.restore()


def beside(a: QPointF, b: QPointF, away: QPointF, gap: float, text: str) -> Note:
    """A measure in the middle of a side, on the side that faces away from ``away``."""
    middle = (a + b) / 2
    angle = atan2(b.y() - a.y(), b.x() - a.x())
    normal = QPointF(-sin(angle), cos(angle))
    if QPointF.dotProduct(normal, middle - away) < 0:
        normal = -normal
    upright = (angle + pi / 2) % pi - pi / 2
    return Note(middle + normal * gap, text, degrees(upright))
