"""Beds and paths."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget
from shapely import Polygon

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import Look, tone
from gardencanvas.canvas.shapes import outline
from gardencanvas.garden.ground import Bed, Path

_LARGE_PX = 40.0  # beds less wide than this on the screen have no rim and no shadow
_LEAST_PX = 44.0  # a bed narrower than this on the screen goes without its name


class BedItem(Part):
    """A bed: soil with a firm edge."""

    def __init__(self, look: Look, bed: Bed) -> None:
        super().__init__(look, order.BED)
        self.put(bed)

    def put(self, bed: Bed) -> None:
        """Show this bed."""
        self.value = bed
        self._take(outline(bed))
        self._breadth = min(self.rest.width(), self.rest.height())

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        look, colours = self.look, self.look.colours
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        large = self._breadth * look.scale > _LARGE_PX
        if large:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(tone(colours.shadow, 26))
            painter.drawPath(self.outline.translated(1.6 / look.scale, 2.4 / look.scale))
        painter.setPen(look.line(colours.bed_edge, 2.6))
        painter.setBrush(QColor(colours.soil))
        painter.drawPath(self.outline)
        if large and not look.vector:
            self._shade_rim(painter)

    def _shade_rim(self, painter: QPainter) -> None:
        """A darker rim inside the edge: the soil lies a little lower than its boards."""
        colours = self.look.colours
        painter.save()
        painter.setClipPath(self.outline, Qt.ClipOperation.IntersectClip)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, width in ((colours.soil_shade, 8), (colours.bed_edge, 2.6)):
            painter.setPen(self.look.line(colour, width))
            painter.drawPath(self.outline)
        painter.restore()


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
        self._laid: tuple[object, str, str, float] = (None, "", "", 0.0)
        self._measured: tuple[object, str] = (None, "")
        self.setPos(self._box.topLeft())
        self.rescale()

    def rescale(self) -> None:
        """Follow the zoom: there is as much room as the bed is wide."""
        self.prepareGeometryChange()
        self._width = max(self._box.width() * self.look.scale, 30.0)
        self.update()

    def boundingRect(self) -> QRectF:
        return QRectF(-4, -24, self._width + 8, 24)

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
        if self._width < _LEAST_PX:
            return
        look = self.look
        name, measures, left = self._layout()
        # bare paper hides the plate; what is planted above, or a picture, would make the words hard to read
        words = self._width if measures else look.metrics(13, bold=True).horizontalAdvance(name)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(tone(look.colours.paper, 185))
        painter.drawRoundedRect(QRectF(-3, -21, words + 6, 17), 4, 4)
        painter.setFont(look.font(13, bold=True))
        painter.setPen(QColor(look.colours.ink))
        painter.drawText(QPointF(1, -8), name)
        if measures:
            painter.setFont(look.font(11))
            painter.setPen(QColor(look.colours.quiet))
            painter.drawText(QPointF(left, -8), measures)

    def _layout(self) -> tuple[str, str, float]:
        """Name, measures and where these begin; measures are left out where there is no room for both."""
        look, room = self.look, self._width
        key = (room, look.measure)
        if self._laid[0] != key:
            name = look.elided(self.value.name, look.font(13, bold=True), room)
            if self._measured[0] != look.measure:
                self._measured = (look.measure, self.measures())
            measures = self._measured[1]
            taken = look.metrics(11).horizontalAdvance(measures)
            if look.metrics(13, bold=True).horizontalAdvance(name) + taken + 10 > room:
                measures = ""
            self._laid = (key, name, measures, room - taken - 1)
        return self._laid[1:]


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
