"""Places that a crop on the mouse could take, each with its verdict as a line and a word."""

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.mark import pens
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import Look, tone
from gardencanvas.fit.report import Verdict


@dataclass(frozen=True, slots=True)
class Offered:
    """One place: its outline in centimetres, its verdict once it is known, and a word to write at it."""

    path: QPainterPath
    verdict: Verdict | None
    text: str


class OffersItem(Part):
    """Draws the places on offer above the plan."""

    def __init__(self, look: Look) -> None:
        super().__init__(look, order.TOOL)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.offered: tuple[Offered, ...] = ()

    def put(self, value: tuple[Offered, ...]) -> None:
        """Show these places in the place of those before."""
        self.offered = value
        whole = QPainterPath()
        for each in value:
            whole.addPath(each.path)
        self._take(whole)

    def boundingRect(self) -> QRectF:
        pad = 60 / self.look.scale if self.offered else self._pad
        return self.rest.adjusted(-pad, -pad, pad, pad)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        colours = self.look.colours
        for each in self.offered:
            if each.verdict is None:
                painter.setPen(self.look.line(colours.accent, 1.0, Qt.PenStyle.DotLine))
                painter.drawPath(each.path)
                continue
            for line in pens(colours.verdict(each.verdict), colours.paper, each.verdict, 1 / self.look.scale):
                painter.setPen(line)
                painter.drawPath(each.path)
        world = painter.worldTransform()
        painter.save()
        painter.setWorldTransform(QTransform())
        written: list[QRectF] = []
        for each in self.offered:
            box = each.path.boundingRect()
            plate = self._plate(world.map(QPointF(box.left(), box.center().y())), each.text)
            if each.text and not any(plate.intersects(other) for other in written):
                self._write(painter, plate, each.text)
                written.append(plate)
        painter.restore()

    def _plate(self, at: QPointF, text: str) -> QRectF:
        width = self.look.metrics(11, bold=True).horizontalAdvance(text) + 10
        return QRectF(at.x() - width - 4, at.y() - 9, width, 18)

    def _write(self, painter: QPainter, plate: QRectF, text: str) -> None:
        font = self.look.font(11, bold=True)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(tone(self.look.colours.note, 225))
        painter.drawRoundedRect(plate, 4, 4)
        painter.setFont(font)
        painter.setPen(QColor(self.look.colours.note_ink))
        painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, text)
