"""Open ground as a layer: hatched by how many weeks it stays free, one picture for each bed."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, radians, sin

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPainterPath, QTransform
from PySide6.QtWidgets import QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.look import CM, Look

SOON, LONG = 4, 12  # weeks: less than a month, a season's quarter, longer (our choice)
_FINE = 4  # hatch pixels to a point of the field


@dataclass(frozen=True, eq=False)
class OpenBed:
    """One bed's points: weeks free at each, in a frame turned clockwise by ``angle_deg`` (metres)."""

    x0: float
    y0: float
    step_m: float
    angle_deg: float
    weeks: NDArray[np.intp]  # (ny, nx); 0 where covered, -1 outside


class OpenGroundItem(Part):
    """Draws the open ground of all beds under the plants' marks."""

    def __init__(self, look: Look) -> None:
        super().__init__(look, order.FOOTPRINT - 0.5)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self._pictures: list[tuple[QImage, QTransform]] = []

    def put(self, value: Sequence[OpenBed]) -> None:
        """Show these beds in the place of those before."""
        self._pictures = [(self._picture(bed), _placing(bed)) for bed in value]
        whole = QPainterPath()
        for image, place in self._pictures:
            path = QPainterPath()
            path.addRect(QRectF(0, 0, image.width(), image.height()))
            whole.addPath(place.map(path))
        self._take(whole)

    def _picture(self, bed: OpenBed) -> QImage:
        weeks = np.kron(bed.weeks, np.ones((_FINE, _FINE), dtype=np.intp))
        row, column = np.indices(weeks.shape)
        up, down = (row + column) % (3 * _FINE), (row - column) % (3 * _FINE)
        dots = (up < 2) & (down < 2)
        lines = up < 2
        cross = (up < 2) | (down < 2)
        ink = np.where(weeks >= LONG, cross, np.where(weeks >= SOON, lines, dots)) & (weeks > 0)
        colour = QColor(self.look.colours.accent)
        pixels = np.zeros((*weeks.shape, 4), dtype=np.uint8)
        pixels[ink] = (colour.red(), colour.green(), colour.blue(), 120)
        high, wide = weeks.shape
        return QImage(pixels.tobytes(), wide, high, 4 * wide, QImage.Format.Format_RGBA8888).copy()

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        for image, place in self._pictures:
            painter.save()
            painter.setTransform(place, combine=True)
            painter.drawImage(0, 0, image)
            painter.restore()


def _placing(bed: OpenBed) -> QTransform:
    """From hatch pixels to centimetres on the plan."""
    turn = radians(bed.angle_deg)
    c, s = cos(turn), sin(turn)
    pixel = bed.step_m * CM / _FINE
    x = (bed.x0 - bed.step_m / 2) * CM
    y = (bed.y0 - bed.step_m / 2) * CM
    return QTransform(c * pixel, s * pixel, -s * pixel, c * pixel, x * c - y * s, x * s + y * c)
