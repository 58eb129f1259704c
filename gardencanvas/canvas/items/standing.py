"""What stands on the plan: fixtures with their shadow, supports and covers."""

from datetime import date
from math import hypot, tau
from random import Random
from zlib import crc32

import numpy as np
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget
from shapely import LineString, Polygon

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import CM, Look, tone
from gardencanvas.canvas.shapes import outline
from gardencanvas.canvas.symbols.leaves import blob
from gardencanvas.garden.ground import Cover, Fixture, LineSupport, RingSupport

_TRUNK = "#6B543B"
_JOINT_CM, _JOINTS_PX = 40.0, 9.0  # joints of a wall, posts of a fence; drawn once it is wide enough


class FixtureItem(Part):
    """A wall, fence, hedge, tree or shed, seen from above."""

    def __init__(self, look: Look, fixture: Fixture) -> None:
        super().__init__(look, order.CROWN if fixture.kind == "tree" else order.FIXTURE)
        self.put(fixture)

    def put(self, fixture: Fixture) -> None:
        """Show this fixture."""
        self.value = fixture
        green = fixture.kind in {"tree", "hedge"}
        shape = outline(fixture)
        self._take(_scalloped(shape, fixture.id) if green else shape)
        self._leaves = _foliage(self.outline, fixture.id) if green else []

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        kind = self.value.kind
        colours = self.look.colours
        if kind in {"tree", "hedge"}:
            self._paint_green(painter, colours.crown if kind == "tree" else colours.hedge)
            return
        fill = QColor(colours.wall if kind == "wall" else colours.timber)
        painter.setPen(self.look.line(fill.darker(145), 1.4))
        painter.setBrush(fill)
        painter.drawPath(self.outline)
        painter.setPen(self.look.line(fill.lighter(118), 1.0))
        painter.drawLines(_ridge(self.value, self.look.scale))

    def _paint_green(self, painter: QPainter, colour: str) -> None:
        see_through = 150 if self.value.kind == "tree" else 235
        fill = QColor(colour)
        painter.setPen(self.look.line(fill.darker(150), 1.2, alpha=200))
        painter.setBrush(tone(colour, see_through))
        painter.drawPath(self.outline)
        painter.setPen(Qt.PenStyle.NoPen)
        for leaf, share in self._leaves:
            light = fill.lighter(round(92 + 30 * share)).name()
            painter.setBrush(tone(light, min(see_through, 130)))
            painter.drawPath(leaf)
        if self.value.kind == "tree":
            painter.setBrush(QColor(_TRUNK))
            painter.drawEllipse(self.outline.boundingRect().center(), 9, 9)


def _ridge(fixture: Fixture, scale: float) -> list[QLineF]:
    """The line along the middle of a wall, fence or roof, and the joints or posts across it."""
    box = Polygon(fixture.outline).minimum_rotated_rectangle
    if not isinstance(box, Polygon):
        return []
    a, b, c, d = (np.array(p) * CM for p in list(box.exterior.coords)[:4])
    if np.hypot(*(b - a)) < np.hypot(*(c - b)):
        a, b, c, d = b, c, d, a
    begin, end, across = (a + d) / 2, (b + c) / 2, d - a
    lines = [QLineF(*begin, *end)] if fixture.kind == "shed" else []
    length = float(np.hypot(*(end - begin)))
    if fixture.kind != "shed" and float(np.hypot(*across)) * scale > _JOINTS_PX:
        for at in np.arange(_JOINT_CM, length, _JOINT_CM):
            foot = begin + (end - begin) * (at / length)
            lines.append(QLineF(*(foot - across * 0.42), *(foot + across * 0.42)))
    return lines


def _scalloped(area: QPainterPath, name: str) -> QPainterPath:
    """An outline with the lobed rim of foliage, about as wide as the outline itself."""
    rng = Random(crc32(name.encode()))
    ring = area.toSubpathPolygons()[0]
    line = LineString([(p.x(), p.y()) for p in ring.toList()])
    count = max(9, min(60, round(line.length / 34)))
    step = line.length / count
    middle = area.boundingRect().center()
    at = [line.interpolate((i + rng.uniform(-0.22, 0.22)) * step) for i in range(count)]
    rim = QPainterPath(QPointF(at[-1].x, at[-1].y) * 0.97 + middle * 0.03)
    for before, here in zip([at[-1], *at[:-1]], at, strict=True):
        foot = QPointF(here.x, here.y) * 0.97 + middle * 0.03
        outward = QPointF(before.x + here.x, before.y + here.y) / 2 - middle
        far = max(hypot(outward.x(), outward.y()), 1e-6)
        lobe = middle + outward * ((far + step * rng.uniform(0.22, 0.4)) / far)
        rim.quadTo(lobe, foot)
    rim.closeSubpath()
    return rim


def _foliage(area: QPainterPath, name: str) -> list[tuple[QPainterPath, float]]:
    """Clumps of leaves inside an outline, lighter towards the upper left; the same each time."""
    rng = Random(crc32(name.encode()))
    box = area.boundingRect()
    size = max(min(box.width(), box.height()) * 0.13, 4.0)
    clumps: list[tuple[QPainterPath, float]] = []
    for _ in range(900):
        if len(clumps) >= 60:
            break
        at = QPointF(rng.uniform(box.left(), box.right()), rng.uniform(box.top(), box.bottom()))
        far = size * 0.8
        rim = [QPointF(far, 0), QPointF(-far, 0), QPointF(0, far), QPointF(0, -far)]
        if all(area.contains(at + step) for step in rim):
            lit = 1 - ((at.x() - box.left()) / box.width() + (at.y() - box.top()) / box.height()) / 2
            clump = blob(size * rng.uniform(0.7, 1.0), 7, 0.22, rng).translated(at)
            clumps.append((clump, min(max(lit + rng.uniform(-0.2, 0.2), 0.0), 1.0)))
    return clumps


class SupportItem(Part):
    """Canes, a net or a trellis."""

    def __init__(self, look: Look, support: RingSupport | LineSupport) -> None:
        super().__init__(look, order.SUPPORT)
        self.put(support)

    def put(self, support: RingSupport | LineSupport) -> None:
        """Show this support."""
        self.value = support
        self._take(outline(support))

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = self.look.colours.support
        painter.setBrush(QColor(colour))
        if isinstance(self.value, RingSupport):
            self._paint_ring(painter, self.value, colour)
        else:
            self._paint_line(painter, self.value, colour)

    def _paint_ring(self, painter: QPainter, ring: RingSupport, colour: str) -> None:
        centre, r = QPointF(ring.centre[0] * CM, ring.centre[1] * CM), ring.radius_m * CM
        if ring.kind == "stake" or r < 1:
            painter.setPen(self.look.line(QColor(colour).darker(130), 1.0))
            painter.drawEllipse(centre, 2.4, 2.4)
            return
        circle = QPainterPath()
        circle.addEllipse(centre, r, r)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(self.look.line(colour, 1.4, Qt.PenStyle.DotLine))
        painter.drawPath(circle)
        painter.setPen(self.look.line(QColor(colour).darker(130), 1.0))
        painter.setBrush(QColor(colour))
        canes = max(4, min(12, round(tau * r / 25)))
        for i in range(canes):
            painter.drawEllipse(circle.pointAtPercent(i / canes), 1.6, 1.6)

    def _paint_line(self, painter: QPainter, line: LineSupport, colour: str) -> None:
        a, b = QPointF(line.begin[0] * CM, line.begin[1] * CM), QPointF(line.end[0] * CM, line.end[1] * CM)
        along = b - a
        length = hypot(along.x(), along.y())
        across = QPointF(-along.y(), along.x()) / max(length, 1e-6)
        painter.setPen(self.look.line(colour, 2.0 if line.kind != "net" else 1.2))
        painter.drawLine(a, b)
        step = 25 if line.kind == "cane row" else 8
        count = max(2, min(400, round(length / step) + 1))
        painter.setPen(self.look.line(QColor(colour).darker(130), 1.0))
        for i in range(count):
            at = a + along * (i / (count - 1))
            if line.kind == "cane row":
                painter.drawEllipse(at, 1.6, 1.6)
            else:
                painter.drawLine(at - across * 2.2, at + across * 2.2)


class CoverItem(Part):
    """Fleece, mesh, cloche or frame over some ground; shown on the days it lies there."""

    def __init__(self, look: Look, cover: Cover, on: date) -> None:
        super().__init__(look, order.COVER)
        self.put(cover)
        self.show_date(on)

    def put(self, cover: Cover) -> None:
        """Show this cover."""
        self.value = cover
        self._take(outline(cover))

    def show_date(self, on: date) -> None:
        """Lie there, or leave only its outline."""
        cover = self.value
        self.there = (cover.first is None or on >= cover.first) and (cover.last is None or on <= cover.last)
        self.update()

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = self.look.colours.cover
        painter.setBrush(tone(colour, 58) if self.there else Qt.BrushStyle.NoBrush)
        style = Qt.PenStyle.SolidLine if self.value.kind in {"cloche", "frame"} else Qt.PenStyle.DashDotLine
        painter.setPen(
            self.look.line(QColor(colour).darker(125), 1.6, style, alpha=230 if self.there else 110)
        )
        painter.drawPath(self.outline)


class ShadowItem(Part):
    """The soft shadow of one fixture: those of some moments, laid over each other."""

    def __init__(self, look: Look, moments: list[QPainterPath], clear_share: float) -> None:
        super().__init__(look, order.SHADOW)
        self._alpha = round(60 * (1 - clear_share) / len(moments))
        self._fall(moments)

    def _fall(self, moments: list[QPainterPath]) -> None:
        self._moments = moments
        every = QPainterPath()
        for moment in moments:
            every.addPath(moment)
        self._take(every)

    def trim(self, box: QRectF) -> None:
        """Cut off what lies outside a box: SVG files have no clipping."""
        room = QPainterPath()
        room.addRect(box)
        self._fall([moment.intersected(room) for moment in self._moments])

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(tone(self.look.colours.shadow, self._alpha))
        for moment in self._moments:
            painter.drawPath(moment)
