"""Names of plantings on their outlines, laid so that no two cover each other."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QTransform
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.planting import PlantingItem
from gardencanvas.canvas.look import Look, tone

_LEAST_WIDE, _LEAST_HIGH = 74.0, 26.0  # pixels an outline must have to carry its name
_HIGH = 16.0
_MOST = 400  # plates on the screen


class NamesItem(QGraphicsItem):
    """All names in one layer."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self.named: dict[str, tuple[PlantingItem, str]] = {}
        self._box = QRectF()
        self.setZValue(order.LABEL + 1)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)

    def put(self, named: dict[str, tuple[PlantingItem, str]], box: QRectF, changed: QRectF) -> None:
        """Show these names; ``box`` holds all of their plantings, ``changed`` those that differ."""
        if box != self._box:
            self.prepareGeometryChange()
            self._box = box
        self.named = named
        pad = 24 / self.look.scale
        self.update(changed.adjusted(-pad, -pad, pad, pad))

    def boundingRect(self) -> QRectF:
        pad = 24 / self.look.scale
        return self._box.adjusted(-pad, -pad, pad, pad)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if not self.look.names:
            return
        look = self.look
        world = painter.worldTransform()
        scale = world.m11()
        font, metrics = look.font(11), look.metrics(11)
        named = [
            (part, name)
            for part, name in self.named.values()
            if part.outline_box.width() * scale >= _LEAST_WIDE
            and part.outline_box.height() * scale >= _LEAST_HIGH
        ]
        wanted = [
            Wanted(world.mapRect(part.outline_box), *part.edges(world), metrics.horizontalAdvance(name))
            for part, name in named
        ]
        painter.save()
        painter.setWorldTransform(QTransform())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(font)
        for index, plate in place_plates(wanted):
            part, name = named[index]
            painter.setOpacity(0.55 if part.state.stage == "gone" else 1.0)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(tone(look.colours.panel, 232))
            painter.drawRoundedRect(plate, 4, 4)
            painter.setPen(QColor(look.colours.ink))
            text = look.elided(name, font, plate.width() - 8)
            painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, text)
        painter.restore()


@dataclass(frozen=True, slots=True)
class Wanted:
    """A name that looks for a place, in pixels."""

    box: QRectF  # of its planting
    top: QLineF  # the uppermost level stretch of its outline
    bottom: QLineF  # the lowest
    width: float  # of its text


def place_plates(wanted: Sequence[Wanted]) -> list[tuple[int, QRectF]]:
    """Where names go: (index, plate) for those that find room.

    A name lies on the upper edge of its outline, else on the lower one; larger plantings choose first.
    """
    order_ = sorted(range(len(wanted)), key=lambda i: -wanted[i].box.width() * wanted[i].box.height())
    placed: list[tuple[int, QRectF]] = []
    for index in order_:
        one = wanted[index]
        if len(placed) >= _MOST:
            break
        wide = min(one.width + 10, one.box.width() + 24)
        for edge in (one.top, one.bottom):
            long = edge.length() > wide + 12
            left = edge.x1() + 6 if long else (edge.x1() + edge.x2() - wide) / 2
            plate = QRectF(left, edge.y1() - _HIGH / 2, wide, _HIGH)
            if not any(plate.intersects(other) for _, other in placed):
                placed.append((index, plate))
                break
    return placed
