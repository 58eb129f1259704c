"""Beds and paths."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget
from shapely import Polygon

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import Look, tone
from gardencanvas.canvas.shapes import outline
from gardencanvas.garden.ground import Bed, Path


class BedItem(Part):
    """A bed: soil with a firm edge."""

    def __init__(self, look: Look, bed: Bed) -> None:
        super().__init__(look, order.BED)
        self.put(bed)

    def put(self, bed: Bed) -> None:
        """Show this bed."""
        self.value = bed
        self._take(outline(bed))

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        colours = self.look.colours
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px = 1 / self.look.scale
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(tone(colours.shadow, 26))
        painter.drawPath(self.outline.translated(1.6 * px, 2.4 * px))
        painter.setBrush(QColor(colours.soil))
        painter.drawPath(self.outline)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if not self.look.vector:
            painter.save()
            painter.setClipPath(self.outline, Qt.ClipOperation.IntersectClip)
            painter.setPen(self.look.line(colours.soil_shade, 8))
            painter.drawPath(self.outline)
            painter.restore()
        painter.setPen(self.look.line(colours.bed_edge, 2.6))
        painter.drawPath(self.outline)


class BedLabel(QGraphicsItem):
    """Name and measures of a bed above its upper edge, of a size that does not follow the zoom."""

    def __init__(self, look: Look, bed: Bed) -> None:
        super().__init__()
        self.look = look
        self._width = 0.0
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setZValue(order.LABEL)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.put(bed)

    def put(self, bed: Bed) -> None:
        """Label this bed."""
        self.value = bed
        self._box = outline(bed).boundingRect()
        top = self._upper_edge()
        self.setPos(top)
        self.rescale()

    def _upper_edge(self) -> QPointF:
        return QPointF(self._box.left(), self._box.top())

    def rescale(self) -> None:
        """Follow the zoom: there is as much room as the bed is wide."""
        self.prepareGeometryChange()
        self._width = max(self._box.width() * self.look.scale, 30.0)
        self.update()

    def boundingRect(self) -> QRectF:
        return QRectF(-2, -24, self._width + 4, 24)

    def measures(self) -> str:
        """Sides of a rectangle, else the area."""
        shape = Polygon(self.value.outline)
        box = shape.minimum_rotated_rectangle
        if len(self.value.outline) == 4 and isinstance(box, Polygon) and box.area - shape.area < 1e-3:
            (ax, ay), (bx, by), (cx, cy) = self.value.outline[:3]
            a = ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5
            b = ((cx - bx) ** 2 + (cy - by) ** 2) ** 0.5
            return self.look.measure.sides(max(a, b), min(a, b))
        return self.look.measure.area(shape.area - sum(Polygon(h).area for h in self.value.holes))

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if self._width < 44:
            return
        look = self.look
        name_font, small_font = look.font(13, bold=True), look.font(11)
        measures = self.measures()
        taken = QFontMetricsF(small_font).horizontalAdvance(measures) + 10
        room = self._width
        name = look.elided(self.value.name, name_font, room)
        name_width = QFontMetricsF(name_font).horizontalAdvance(name)
        painter.setFont(name_font)
        painter.setPen(QColor(look.colours.ink))
        painter.drawText(QPointF(1, -8), name)
        if name_width + taken <= room:
            painter.setFont(small_font)
            painter.setPen(QColor(look.colours.quiet))
            painter.drawText(QPointF(room - taken + 9, -8), measures)


class PathItem(Part):
    """A path: trodden ground."""

    def __init__(self, look: Look, path: Path) -> None:
        super().__init__(look, order.PATH)
        self.put(path)

    def put(self, path: Path) -> None:
        """Show this path."""
        self.value = path
        self._take(outline(path))

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        colours = self.look.colours
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(self.look.line(colours.path_edge, 1.2, Qt.PenStyle.DashLine))
        painter.setBrush(QColor(colours.path))
        painter.drawPath(self.outline)
