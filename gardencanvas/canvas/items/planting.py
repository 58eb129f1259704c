"""A planting on the plan: where its plants are, its outline, and how it stands on the date."""

from datetime import date
from math import sqrt
from zlib import crc32

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QTransform
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import clumps, order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import CM, Look, tone
from gardencanvas.canvas.shapes import from_shapely, hull, round_stations
from gardencanvas.canvas.sizes import Growth
from gardencanvas.canvas.symbols.draw import detail_for, draw_plant
from gardencanvas.canvas.symbols.stamps import Sheet, station_variants
from gardencanvas.garden.planting import Planting

Floats = NDArray[np.float64]

_RINGS = 40  # full-growth circles drawn one by one
_LEVEL_CM = 1.0


class PlantingItem(Part):
    """One planting.

    Its plants are drawn by the layer ``PlantsItem``; only on paper does it draw its own.
    """

    def __init__(self, look: Look, planting: Planting, growth: Growth, on: date) -> None:
        super().__init__(look, order.FOOTPRINT)
        self.ghost = False
        self.footprints = False
        self.stand(planting, growth, on)

    def stand(self, planting: Planting, growth: Growth, on: date) -> None:
        """Show this planting."""
        self.value = planting
        self.growth = growth
        self.xy: Floats = planting.stations * CM
        self.variants = station_variants(len(self.xy), crc32(planting.id.encode()))
        self._drawn = clumps.shown(planting.per_station, len(self.xy))
        self.full_m = growth.full_radius_m * sqrt(planting.per_station)  # of a station, clumps and all
        full = self.full_m * CM
        (x0, y0), (x1, y1) = self.xy.min(axis=0), self.xy.max(axis=0)
        box = QRectF(x0 - full, y0 - full, x1 - x0 + 2 * full, y1 - y0 + 2 * full)
        self._take(from_shapely(hull(planting, self.full_m)), box.adjusted(-3, -3, 3, 3))
        self.outline_box = self.outline.boundingRect()
        self._edges = _level_edges(self.outline)
        self._full: QPainterPath | None = None
        self.show_date(on)

    def show_date(self, on: date) -> None:
        """Show the plants as they stand on a day."""
        self.state = self.growth.on(on)
        self._settle()
        self.update()

    def haunt(self, ghost: bool) -> None:
        """Draw it as a ghost: not yet put down."""
        if ghost != self.ghost:
            self.ghost = ghost
            self.setZValue(order.GHOST if ghost else order.FOOTPRINT)

    def show_footprints(self, shown: bool) -> None:
        """Show or hide the rings of full growth."""
        if shown != self.footprints:
            self.footprints = shown
            self._settle()
            self.update()

    def _settle(self) -> None:
        """Paint nothing of its own where the layer draws all there is to see."""
        idle = self.look.stamped and not self.footprints
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemHasNoContents, idle)

    def drawn(self) -> tuple[Floats, NDArray[np.int64]]:
        """Where plants are drawn on the date, and which variant each shows: of clumps, their seedlings."""
        if self._drawn == 1 or self.state.stage != "standing":
            return self.xy, self.variants
        xy = clumps.clumped(self.xy, self.state.radius_m * CM, self._drawn, self.value.per_station)
        return xy, station_variants(len(xy), crc32(self.value.id.encode()))

    def kind_key(self) -> tuple[object, ...]:
        """What plants must have in common to be drawn in one go."""
        state, crop = self.state, self.growth.crop
        if state.stage != "standing":
            return (state.stage, crop.family if crop else "", self.value.crop)
        return (self.growth.habit, self.value.crop, state.radius_m, state.height_m, state.ripe)

    def sheet(self, ratio: float) -> Sheet:
        """The stamps of its plants, or of the marks where they will stand or stood."""
        look, state = self.look, self.state
        tint = self.growth.tint(look.colours)
        if state.stage == "coming":
            return look.stamps.dot(tint.deep, 1.7 * ratio / look.scale)
        if state.stage == "gone":
            return look.stamps.dash(look.colours.quiet, 2.4 * ratio / look.scale)
        return look.stamps.sheet(self.growth.habit, tint, state.radius_m * CM * ratio, ripe=state.ripe)

    def edges(self, world: QTransform) -> tuple[QLineF, QLineF]:
        """The uppermost and the lowest level stretch of the outline, through a transform."""
        return world.map(self._edges[0]), world.map(self._edges[1])

    def station_at(self, point: QPointF, slack_cm: float) -> float:
        """How far the nearest plant is from a point, in centimetres; infinite beyond its leaves."""
        away = np.hypot(self.xy[:, 0] - point.x(), self.xy[:, 1] - point.y())
        nearest = float(away.min())
        radius = max(self.state.radius_m * sqrt(self.value.per_station) * CM, slack_cm)
        return nearest if nearest <= radius else float("inf")

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.footprints:
            self._paint_footprints(painter)
        if self.look.stamped:
            return
        if self.state.stage == "standing":
            self._paint_plants(painter)
        else:
            self._paint_stations(painter)

    def _paint_plants(self, painter: QPainter) -> None:
        """Draw every plant as shapes, for paper and pictures that scale."""
        tint = self.growth.tint(self.look.colours)
        radius = self.state.radius_m * CM
        seed = crc32(self.growth.habit.encode())
        detail = min(detail_for(radius * self.look.scale), self.look.finest)
        for (x, y), variant in zip(*self.drawn(), strict=True):
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

    def _paint_stations(self, painter: QPainter) -> None:
        """Small marks where plants will stand, or stood."""
        points = [QPointF(x, y) for x, y in self.xy]
        if self.state.stage == "coming":
            painter.setPen(self.look.line(self.growth.tint(self.look.colours).deep, 3.4, alpha=150))
            painter.drawPoints(points)
            return
        size = QPointF(2.4 / self.look.scale, 0)
        painter.setPen(self.look.line(self.look.colours.quiet, 1.0, alpha=110))
        painter.drawLines([QLineF(p - size, p + size) for p in points])

    def _paint_footprints(self, painter: QPainter) -> None:
        """The ground the plants cover at full growth."""
        painter.setPen(self.look.line(self.look.colours.ink, 1.0, Qt.PenStyle.DashLine, alpha=120))
        painter.setBrush(tone(self.growth.tint(self.look.colours).leaf, 26))
        if self._full is None:
            self._full = self._full_growth()
        painter.drawPath(self._full)

    def _full_growth(self) -> QPainterPath:
        """Each plant's circle where they are few; else one outline, which is quicker to draw."""
        full = self.full_m * CM
        if len(self.xy) > _RINGS:
            return from_shapely(round_stations(self.value, self.full_m))
        path = QPainterPath()
        path.setFillRule(Qt.FillRule.WindingFill)
        for x, y in self.xy:
            path.addEllipse(QPointF(x, y), full, full)
        return path


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
