"""The verdict of a planting as a mark round it; lies above all plants.

Each verdict has a line and a hatch of its own besides its colour, so that the marks survive black and white.
"""

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget
from shapely import MultiPoint

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.hatch import DENSE, SPARSE, hatch, hatch_lines
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.items.planting import PlantingItem
from gardencanvas.canvas.look import CM, Look, pen
from gardencanvas.canvas.palette import Palette
from gardencanvas.canvas.shapes import closest, from_shapely
from gardencanvas.fit.report import PlantingFit, Verdict

_MOST = 400  # stations marked apart from their planting


def draw_mark(
    painter: QPainter, shape: QPainterPath, verdict: Verdict, colours: Palette, *, vector: bool = False
) -> None:
    """Draw a verdict's mark along a shape given in pixels.

    ``vector`` draws the hatch line by line, for paper and for pictures that scale.
    """
    colour = colours.verdict(verdict)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if verdict is Verdict.CLEAR:
        painter.setPen(pen(colour, 1.1))
    elif verdict is Verdict.SHARES:
        painter.setPen(pen(colour, 4.4))
        painter.drawPath(shape)
        painter.setPen(pen(colours.paper, 1.7))
    elif verdict is Verdict.STRAINS:
        _fill(painter, shape, colour, SPARSE, crossed=False, vector=vector)
        painter.setPen(pen(colours.paper, 3.6, alpha=150))
        painter.drawPath(shape)
        painter.setPen(_dashed(colour))
    else:
        _fill(painter, shape, colour, DENSE, crossed=True, vector=vector)
        painter.setPen(pen(colour, 3.4))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(shape)


def _dashed(colour: str) -> QPen:
    line = pen(colour, 2.2)
    line.setCapStyle(Qt.PenCapStyle.FlatCap)
    line.setDashPattern([3.4, 2.2])
    return line


def _fill(
    painter: QPainter, shape: QPainterPath, colour: str, gap: int, *, crossed: bool, vector: bool
) -> None:
    if vector:
        painter.setPen(pen(colour, 0.8, alpha=150))
        painter.drawLines(hatch_lines(shape, gap, crossed=crossed))
    else:
        painter.fillPath(shape, hatch(colour, gap, crossed, painter.device().devicePixelRatioF()))


class MarkItem(Part):
    """Verdict mark of one planting."""

    def __init__(self, look: Look, plants: PlantingItem) -> None:
        super().__init__(look, order.MARK)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.fit: PlantingFit | None = None
        self._apart: list[tuple[Verdict, QPainterPath]] = []
        self.follow(plants)

    def follow(self, plants: PlantingItem) -> None:
        """Mark this planting as it is now."""
        self.plants = plants
        self._mark_apart()
        self._take(plants.outline)

    def judge(self, fit: PlantingFit | None) -> None:
        """Show this verdict."""
        before, self.fit = self.fit, fit
        if before is fit:
            return
        if before is None or fit is None or before.verdict is not fit.verdict or not np.array_equal(
            before.station_verdicts, fit.station_verdicts
        ):  # fmt: skip
            self.setZValue(order.MARK + (0 if fit is None else int(fit.verdict)))
            self._mark_apart()
            self.update()

    @property
    def verdict(self) -> Verdict:
        """The verdict shown; clear until one is known."""
        return self.fit.verdict if self.fit is not None else Verdict.CLEAR

    @property
    def common(self) -> Verdict:
        """The verdict of the line round all: the planting's, without the stations marked apart."""
        fit = self.fit
        if fit is None or not self._apart:
            return self.verdict
        apart = {int(verdict) for verdict, _ in self._apart}
        return Verdict(max(int(v) for v in np.unique(fit.station_verdicts) if int(v) not in apart))

    def _mark_apart(self) -> None:
        """Outline the stations that fare ill while most do not, those side by side in one.

        Sharing is no ill: it is shown round the whole planting alone.
        """
        self._apart = []
        fit, stations = self.fit, self.plants.value.stations
        if fit is None or len(fit.station_verdicts) != len(stations) or len(stations) == 0:
            return
        common = int(np.bincount(fit.station_verdicts).argmax())
        worse = fit.station_verdicts > max(common, int(Verdict.SHARES))
        if not worse.any() or int(worse.sum()) > _MOST or int(fit.verdict) <= common:
            return
        for verdict in np.unique(fit.station_verdicts[worse]):
            there: NDArray[np.float64] = stations[fit.station_verdicts == verdict] * CM
            self._apart.append((Verdict(int(verdict)), from_shapely(self._round(there))))

    def _round(self, xy: NDArray[np.float64]) -> MultiPoint:
        spacing = self.plants.value.pattern.spacing_m * CM
        reach = closest(self.plants.value, self.plants.growth.full_radius_m) * CM
        return MultiPoint(xy).buffer(reach + spacing * 0.3, quad_segs=5).buffer(-spacing * 0.3, quad_segs=4)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if not self.look.marks:
            return
        world = painter.worldTransform()
        painter.save()
        painter.resetTransform()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.plants.state.stage == "gone":
            painter.setOpacity(0.4)
        colours, vector = self.look.colours, self.look.vector
        draw_mark(painter, world.map(self.outline), self.common, colours, vector=vector)
        for verdict, shape in self._apart:
            draw_mark(painter, world.map(shape), verdict, colours, vector=vector)
        painter.restore()
