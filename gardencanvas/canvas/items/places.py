"""The places of one planting while single plants of it are worked on: planted ones, and those left out."""

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import CM, Look, pen, tone
from gardencanvas.garden.planting import Planting

_RADIUS_PX = 6.0


class PlacesItem(Part):
    """A ring at every station, a dotted one at every place left out, a filled one where the hand is."""

    def __init__(self, look: Look) -> None:
        super().__init__(look, order.HANDLE)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self._planted: NDArray[np.float64] = np.empty((0, 2))
        self._free: NDArray[np.float64] = np.empty((0, 2))
        self._at: int | None = None

    def put(self, value: Planting | None, at: int | None = None) -> None:
        """Show the places of a planting; ``at`` is the station the hand is at. None shows nothing."""
        self._planted = value.stations * CM if value is not None else np.empty((0, 2))
        self._free = np.empty((0, 2))
        if value is not None and value.pattern.left_out:
            places = value.pattern.all_places
            self._free = places[[i for i in value.pattern.left_out if i < len(places)]] * CM
        self._at = at
        path = QPainterPath()
        for xy in (self._planted, self._free):
            if len(xy):
                (x0, y0), (x1, y1) = xy.min(axis=0), xy.max(axis=0)
                path.addRect(x0, y0, max(x1 - x0, 1.0), max(y1 - y0, 1.0))
        self._take(path)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        world = painter.worldTransform()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setWorldTransform(QTransform())
        accent, paper = self.look.colours.accent, self.look.colours.panel
        painter.setPen(pen(accent, 1.6))
        for i, (x, y) in enumerate(self._planted):
            painter.setBrush(tone(accent, 200) if i == self._at else tone(paper, 150))
            painter.drawEllipse(world.map(QPointF(x, y)), _RADIUS_PX, _RADIUS_PX)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(pen(accent, 1.4, Qt.PenStyle.DotLine))
        for x, y in self._free:
            painter.drawEllipse(world.map(QPointF(x, y)), _RADIUS_PX, _RADIUS_PX)
        painter.restore()
