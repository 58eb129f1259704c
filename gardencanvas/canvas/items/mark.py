"""The verdict of a planting as a mark round it; lies above all plants.

Each verdict has a line and a hatch of its own besides its colour, so that the marks survive black and white.
"""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget
from shapely import MultiPoint

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.hatch import DENSE, SPARSE, hatch, hatch_lines
from gardencanvas.canvas.items.outline_shape import OFF, ON, Shape
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.items.planting import PlantingItem
from gardencanvas.canvas.look import CM, Look, pen
from gardencanvas.canvas.palette import Palette
from gardencanvas.canvas.shapes import closest, from_shapely
from gardencanvas.fit.report import PlantingFit, Verdict

_SMALL_PX = 16.0  # outlines less wide than this are dashed along their long sides only
_TINY_PX = 8.0  # and less wide than this without smooth edges
_DASH_PX = 2.2
_MOST = 400  # stations marked apart from their planting


def draw_mark(
    painter: QPainter,
    shape: Shape,
    verdict: Verdict,
    colours: Palette,
    *,
    pixel: float = 1.0,
    vector: bool = False,
) -> None:
    """Draw a verdict's mark along a shape.

    ``pixel`` is a pixel in the painter's units; ``vector`` draws the hatch line by line, for paper and for
    pictures that scale.
    """
    colour = colours.verdict(verdict)
    if verdict is Verdict.STRAINS:
        _fill(painter, shape.path, colour, SPARSE, crossed=False, vector=vector)
    elif verdict is Verdict.CLASHES:
        _fill(painter, shape.path, colour, DENSE, crossed=True, vector=vector)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    lines = pens(colour, colours.paper, verdict, pixel)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, vector or shape.breadth >= _TINY_PX * pixel)
    if vector:
        for line in lines:
            painter.setPen(line)
            painter.drawPath(shape.path)
    elif verdict is Verdict.STRAINS:
        _draw_dashed(painter, shape, lines, pixel)
    else:
        for line in lines:
            painter.setPen(line)
            painter.drawLines(shape.lines(pixel))


def _draw_dashed(painter: QPainter, shape: Shape, lines: tuple[QPen, ...], pixel: float) -> None:
    if shape.breadth < _SMALL_PX * pixel:
        painter.setPen(lines[1])
        painter.drawLines(shape.lines(pixel))
        return
    long, short = shape.dashed(pixel)
    painter.setPen(lines[0])
    painter.drawLines(shape.lines(pixel))
    painter.setPen(lines[1])
    painter.drawLines(long)
    plain = QPen(lines[1])
    plain.setStyle(Qt.PenStyle.SolidLine)
    painter.setPen(plain)
    painter.drawLines(short)


@lru_cache(maxsize=256)
def pens(colour: str, paper: str, verdict: Verdict, pixel: float) -> tuple[QPen, ...]:
    """The pens of a mark, one over the other.

    Square caps close the bends between single lines; of a see-through pen they would show.
    """
    if verdict is Verdict.CLEAR:
        lines = [pen(colour, 1.1 * pixel)]
    elif verdict is Verdict.SHARES:
        lines = [pen(colour, 4.4 * pixel), pen(paper, 1.7 * pixel)]
    elif verdict is Verdict.STRAINS:
        lines = [pen(paper, 3.6 * pixel, alpha=170), pen(colour, _DASH_PX * pixel)]
        lines[1].setDashPattern([ON / _DASH_PX, OFF / _DASH_PX])
    else:
        lines = [pen(colour, 3.4 * pixel)]
    for line in lines:
        whole = line.style() == Qt.PenStyle.SolidLine and line.color().alpha() == 255
        line.setCapStyle(Qt.PenCapStyle.SquareCap if whole else Qt.PenCapStyle.FlatCap)
    return tuple(lines)


def _fill(
    painter: QPainter, shape: QPainterPath, colour: str, gap: int, *, crossed: bool, vector: bool
) -> None:
    """Hatch a shape; the lines keep their distance in pixels."""
    world = painter.worldTransform()
    painter.save()
    painter.setWorldTransform(QTransform())
    if vector:
        painter.setPen(pen(colour, 0.8, alpha=150))
        painter.drawLines(hatch_lines(world.map(shape), gap, crossed=crossed))
    else:
        painter.fillPath(world.map(shape), hatch(colour, gap, crossed, painter.device().devicePixelRatioF()))
    painter.restore()


class MarkItem(Part):
    """Verdict mark of one planting."""

    def __init__(self, look: Look, plants: PlantingItem) -> None:
        super().__init__(look, order.MARK)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.fit: PlantingFit | None = None
        self.quiet = False  # all that is wrong with it was accepted
        self._apart: list[tuple[Verdict, Shape]] = []
        self.follow(plants)

    def follow(self, plants: PlantingItem) -> None:
        """Mark this planting as it is now."""
        self.plants = plants
        self._shape = Shape(plants.outline)
        self._mark_apart()
        self._take(plants.outline)

    def judge(self, fit: PlantingFit | None) -> bool:
        """Show this verdict; True when it is another than before."""
        before, self.fit = self.fit, fit
        if before is fit:
            return False
        if before is None or fit is None or before.verdict is not fit.verdict or not np.array_equal(
            before.station_verdicts, fit.station_verdicts
        ):  # fmt: skip
            self.setZValue(order.MARK + (0 if fit is None else int(fit.verdict)))
            self._mark_apart()
            self.update()
        return before is not None and fit is not None and before.verdict is not fit.verdict

    def hush(self, quiet: bool) -> None:
        """Draw it quietly, or as usual."""
        if quiet != self.quiet:
            self.quiet = quiet
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
            self._apart.append((Verdict(int(verdict)), Shape(from_shapely(self._round(there)))))

    def _round(self, xy: NDArray[np.float64]) -> MultiPoint:
        spacing = self.plants.value.pattern.spacing_m * CM
        reach = closest(self.plants.value, self.plants.full_m) * CM
        return MultiPoint(xy).buffer(reach + spacing * 0.3, quad_segs=5).buffer(-spacing * 0.3, quad_segs=4)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if not self.look.marks:
            return
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.plants.state.stage == "gone":
            painter.setOpacity(0.4)
        if self.quiet:
            painter.setOpacity(0.35)
        colours, vector, pixel = self.look.colours, self.look.vector, 1 / self.look.scale
        draw_mark(painter, self._shape, self.common, colours, pixel=pixel, vector=vector)
        for verdict, shape in self._apart:
            draw_mark(painter, shape, verdict, colours, pixel=pixel, vector=vector)
        painter.setOpacity(1.0)
