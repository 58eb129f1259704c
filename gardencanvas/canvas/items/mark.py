"""The verdict of a planting as a mark round it, and its name; lies above all plants.

Each verdict has a line and a hatch of its own besides its colour, so that the marks survive black and white.
"""

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPen, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.hatch import DENSE, SPARSE, hatch
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.items.planting import PlantingItem
from gardencanvas.canvas.look import CM, Look, pen, tone
from gardencanvas.canvas.palette import Palette
from gardencanvas.fit.report import PlantingFit, Verdict

_MOST = 300  # stations marked one by one
_NAME_PX = 11.0


def draw_mark(
    painter: QPainter,
    shape: QPainterPath,
    verdict: Verdict,
    colours: Palette,
    *,
    ratio: float,
    scale: float = 1.0,
) -> None:
    """Draw a verdict's mark along a shape given in pixels; ``scale`` widens all lines."""
    colour = colours.verdict(verdict)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if verdict is Verdict.CLEAR:
        painter.setPen(_pen(colour, 1.1 * scale))
        painter.drawPath(shape)
    elif verdict is Verdict.SHARES:
        painter.setPen(_pen(colour, 4.4 * scale))
        painter.drawPath(shape)
        painter.setPen(_pen(colours.paper, 1.7 * scale))
        painter.drawPath(shape)
    elif verdict is Verdict.STRAINS:
        painter.fillPath(shape, hatch(colour, round(SPARSE * scale), False, ratio))
        painter.setPen(_pen(colours.paper, 3.6 * scale, alpha=150))
        painter.drawPath(shape)
        line = _pen(colour, 2.2 * scale)
        line.setCapStyle(Qt.PenCapStyle.FlatCap)
        line.setDashPattern([3.4, 2.2])
        painter.setPen(line)
        painter.drawPath(shape)
    else:
        painter.fillPath(shape, hatch(colour, round(DENSE * scale), True, ratio))
        painter.setPen(_pen(colour, 3.4 * scale))
        painter.drawPath(shape)


def _pen(colour: str, width: float, alpha: int = 255) -> QPen:
    return pen(colour, width, alpha=alpha, cosmetic=False)


class MarkItem(Part):
    """Verdict mark and name of one planting."""

    def __init__(self, look: Look, plants: PlantingItem, name: str) -> None:
        super().__init__(look, order.MARK)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.fit: PlantingFit | None = None
        self.put(plants, name)

    def put(self, plants: PlantingItem, name: str) -> None:
        """Mark this planting."""
        self.plants = plants
        self.name = name
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
            self.update()

    @property
    def verdict(self) -> Verdict:
        """The verdict shown; clear until one is known."""
        return self.fit.verdict if self.fit is not None else Verdict.CLEAR

    def boundingRect(self) -> QRectF:
        pad = self._pad
        return self.rest.adjusted(-pad, -pad - 10 * pad / 8, pad, pad)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if not self.look.marks:
            return
        world = painter.worldTransform()
        shape = world.map(self.outline)
        painter.save()
        painter.resetTransform()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ratio = painter.device().devicePixelRatioF()
        if self.plants.state.stage == "gone":
            painter.setOpacity(0.4)
        apart = self._apart()
        if len(apart) == 0:
            draw_mark(painter, shape, self.verdict, self.look.colours, ratio=ratio)
        else:
            draw_mark(painter, shape, self._common(), self.look.colours, ratio=ratio)
            self._mark_stations(painter, world, apart, ratio)
        self._write_name(painter, shape.boundingRect())
        painter.restore()

    def _common(self) -> Verdict:
        """The verdict that most stations have."""
        fit = self.fit
        if fit is None or len(fit.station_verdicts) == 0:
            return self.verdict
        return Verdict(int(np.bincount(fit.station_verdicts).argmax()))

    def _apart(self) -> NDArray[np.int64]:
        """Stations that do worse than most of their planting; none when they are too many to mark."""
        fit = self.fit
        if fit is None or len(fit.station_verdicts) != len(self.plants.value.stations):
            return np.empty(0, dtype=np.int64)
        apart = np.flatnonzero(fit.station_verdicts > int(self._common()))
        if len(apart) > _MOST or fit.verdict <= self._common():
            return np.empty(0, dtype=np.int64)
        return apart

    def _mark_stations(
        self, painter: QPainter, world: QTransform, apart: NDArray[np.int64], ratio: float
    ) -> None:
        scale = world.m11()
        reach = max(self.plants.value.pattern.spacing_m / 2, 0.03) * CM * scale
        reach = max(min(reach, self.plants.growth.full_radius_m * CM * scale), 4.0)
        verdicts = self.fit.station_verdicts if self.fit is not None else np.empty(0)
        for i in apart:
            x, y = self.plants.value.stations[i] * CM
            shape = QPainterPath()
            shape.addEllipse(world.map(QPointF(float(x), float(y))), reach, reach)
            draw_mark(painter, shape, Verdict(int(verdicts[i])), self.look.colours, ratio=ratio)

    def _write_name(self, painter: QPainter, box: QRectF) -> None:
        """The planting's name on its upper edge, where there is room to read it."""
        if not self.look.names or box.height() < 30 or box.width() < 70:
            return
        font = self.look.font(_NAME_PX)
        text = self.look.elided(self.name, font, min(box.width() - 34, 220))
        if len(text) < 3:
            return
        width = QFontMetricsF(font).horizontalAdvance(text)
        plate = QRectF(box.left() + 14, box.top() - 8, width + 10, 16)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(tone(self.look.colours.panel, 235))
        painter.drawRoundedRect(plate, 4, 4)
        painter.setFont(font)
        painter.setPen(QColor(self.look.colours.ink))
        painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, text)
