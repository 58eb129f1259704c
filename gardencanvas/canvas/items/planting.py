"""A planting: its plants, stamped at the size of the date."""

from datetime import date
from zlib import crc32

import numpy as np
import shiboken6
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import CM, Look, tone
from gardencanvas.canvas.shapes import from_shapely, hull
from gardencanvas.canvas.sizes import Growth
from gardencanvas.canvas.symbols.draw import detail_for, draw_plant
from gardencanvas.canvas.symbols.stamps import station_variants
from gardencanvas.garden.planting import Planting

Floats = NDArray[np.float64]

_RINGS = 400  # full-growth circles drawn one by one; beyond it only the outline grows
_OPACITY = 9  # columns of a fragment: x, y, left, top, w, h, scale x, y, turn, opacity


class PlantingItem(Part):
    """All plants of one planting."""

    def __init__(self, look: Look, planting: Planting, growth: Growth, on: date) -> None:
        super().__init__(look, order.PLANTING)
        self.ghost = False
        self.footprints = False
        self.put(planting, growth, on)

    def put(self, planting: Planting, growth: Growth, on: date) -> None:
        """Show this planting."""
        self.value = planting
        self.growth = growth
        self._xy: Floats = planting.stations * CM
        self._variants = station_variants(len(self._xy), crc32(planting.id.encode()))
        self._fragments: Floats = np.zeros((len(self._xy), 10))
        self._fragments[:, 6:8] = 1.0
        self._fragments[:, _OPACITY] = 1.0
        full = growth.full_radius_m * CM
        (x0, y0), (x1, y1) = self._xy.min(axis=0), self._xy.max(axis=0)
        box = QRectF(x0 - full, y0 - full, x1 - x0 + 2 * full, y1 - y0 + 2 * full)
        self._take(from_shapely(hull(planting, growth.full_radius_m)), box.adjusted(-3, -3, 3, 3))
        self.outline_box = self.outline.boundingRect()
        self._edges = _level_edges(self.outline)
        self.show_date(on)

    def show_date(self, on: date) -> None:
        """Show the plants as they stand on a day."""
        self.state = self.growth.on(on)
        self.setZValue((order.GHOST if self.ghost else order.PLANTING) + min(self.state.height_m, 9.0))
        self.update()

    def edges(self, world: QTransform) -> tuple[QLineF, QLineF]:
        """The uppermost and the lowest level stretch of the outline, through a transform."""
        return world.map(self._edges[0]), world.map(self._edges[1])

    def haunt(self, ghost: bool) -> None:
        """Draw it as a ghost: not yet put down."""
        if ghost != self.ghost:
            self.ghost = ghost
            self.setZValue((order.GHOST if ghost else order.PLANTING) + min(self.state.height_m, 9.0))
            self.update()

    def show_footprints(self, shown: bool) -> None:
        """Show or hide the rings of full growth."""
        if shown != self.footprints:
            self.footprints = shown
            self.update()

    def station_at(self, point: QPointF, slack_cm: float) -> float:
        """How far the nearest plant is from a point, in centimetres; infinite beyond its leaves."""
        away = np.hypot(self._xy[:, 0] - point.x(), self._xy[:, 1] - point.y())
        nearest = float(away.min())
        radius = max(self.state.radius_m * CM, slack_cm)
        return nearest if nearest <= radius else float("inf")

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.footprints:
            self._paint_footprints(painter)
        if self.state.stage == "standing":
            if self.ghost:
                painter.setOpacity(0.8)
            if self.look.vector:
                self._paint_shapes(painter)
            else:
                self._stamp(painter)
            painter.setOpacity(1.0)
        elif self.state.stage == "coming":
            self._paint_stations(painter, coming=True)
        else:
            self._paint_stations(painter, coming=False)

    def _stamp(self, painter: QPainter) -> None:
        """Stamp every plant that may show, in device pixels, so that no stamp is resampled."""
        device = painter.deviceTransform()
        ratio = device.m11()
        radius = self.state.radius_m * CM * ratio
        sheet = self.look.stamps.sheet(
            self.growth.habit, self.growth.tint(self.look.colours), radius, ripe=self.state.ripe
        )
        rows = self._fragments
        rows[:, 0] = self._xy[:, 0] * ratio + device.dx()
        rows[:, 1] = self._xy[:, 1] * ratio + device.dy()
        rows[:, 2] = self._variants % sheet.count * sheet.side
        rows = self._near(rows, painter, sheet.side)
        if len(rows) == 0:
            return
        stretch = 1.0
        if radius > 1.12 * sheet.radius_px or radius < 0.88 * sheet.radius_px:
            stretch = radius / sheet.radius_px
        else:
            np.rint(rows[:, :2], out=rows[:, :2])  # whole pixels: the quick way to copy
        rows[:, 4:6] = sheet.side
        rows[:, 6:8] = stretch
        world = painter.worldTransform()
        painter.setWorldTransform(_device_pixels(painter))
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, stretch != 1.0)
        self._held = rows  # Qt reads the array while it draws
        first = shiboken6.wrapInstance(rows.ctypes.data, QPainter.PixmapFragment)
        painter.drawPixmapFragments(first, len(rows), sheet.pixmap)
        painter.setWorldTransform(world)

    def _near(self, rows: Floats, painter: QPainter, side: int) -> Floats:
        """The fragments that can show on the device."""
        # what is really painted on: a widget's painter may be sent to a larger picture of its whole window
        device = painter.paintEngine().paintDevice()
        wide, high = device.width() * device.devicePixelRatioF(), device.height() * device.devicePixelRatioF()
        half = side
        x, y = rows[:, 0], rows[:, 1]
        inside = (x > -half) & (x < wide + half) & (y > -half) & (y < high + half)
        if not inside.all():
            rows = rows[inside]
        return rows

    def _paint_shapes(self, painter: QPainter) -> None:
        """Draw every plant as shapes, for paper and pictures that scale."""
        tint = self.growth.tint(self.look.colours)
        radius = self.state.radius_m * CM
        seed = crc32(self.growth.habit.encode())
        detail = min(detail_for(radius * self.look.scale), 2)
        for (x, y), variant in zip(self._xy, self._variants, strict=True):
            draw_plant(
                painter,
                self.growth.habit,
                tint,
                QPointF(x, y),
                radius,
                seed=seed + int(variant % 6),
                detail=detail,
                ripe=self.state.ripe,
            )

    def _paint_stations(self, painter: QPainter, *, coming: bool) -> None:
        """Small marks where plants will stand, or stood."""
        px = 1 / self.look.scale
        size = min(2.2 * px, 3.0)
        colour = self.growth.tint(self.look.colours).deep
        points = [QPointF(x, y) for x, y in self._xy[:4000]]
        if coming:
            painter.setPen(self.look.line(colour, 3.4 if size > 1 else 2.0, alpha=150))
            painter.drawPoints(points)
        else:
            painter.setPen(self.look.line(self.look.colours.quiet, 1.0, alpha=110))
            for p in points[:1500]:
                painter.drawLine(p + QPointF(-size, 0), p + QPointF(size, 0))

    def _paint_footprints(self, painter: QPainter) -> None:
        """The ground each plant covers at full growth."""
        full = self.growth.full_radius_m * CM
        painter.setPen(self.look.line(self.look.colours.ink, 1.0, Qt.PenStyle.DashLine, alpha=120))
        painter.setBrush(tone(self.growth.tint(self.look.colours).leaf, 26))
        path = QPainterPath()
        path.setFillRule(Qt.FillRule.WindingFill)
        for x, y in self._xy[:_RINGS]:
            path.addEllipse(QPointF(x, y), full, full)
        painter.drawPath(path)


def _device_pixels(painter: QPainter) -> QTransform:
    """The world transform under which the painter's units are the device's own pixels."""
    world, device = painter.worldTransform(), painter.deviceTransform()
    rest = world.inverted()[0] * device
    return rest.inverted()[0]


_LEVEL_CM = 1.0


def _level_edges(outline: QPainterPath) -> tuple[QLineF, QLineF]:
    """The stretches along the top and along the bottom of an outline, from left to right."""
    points = [outline.elementAt(i) for i in range(outline.elementCount())]
    box = outline.boundingRect()
    top = [p.x for p in points if p.y < box.top() + _LEVEL_CM]
    bottom = [p.x for p in points if p.y > box.bottom() - _LEVEL_CM]
    return (
        QLineF(min(top), box.top(), max(top), box.top()),
        QLineF(min(bottom), box.bottom(), max(bottom), box.bottom()),
    )
