"""Height above and roots below the ground, to one scale: a planting and those it meets, on the date."""

from dataclasses import dataclass
from datetime import date

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from gardencanvas.app.labels import as_plain
from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.words.language import say
from gardencanvas.words.plain import Measure, Units, day_year


@dataclass(frozen=True)
class Profile:
    """One plant from the side: metres, and how it is drawn."""

    name: str
    radius_m: float
    height_m: float
    base_m: float
    root_m: float
    tint: QColor
    outline: QColor
    grown: bool  # False: not in the bed on the date, drawn at full size and pale


class SideView(QWidget):
    """Draws up to four plants side by side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plants: list[Profile] = []
        self._measure = Measure()
        self._colours: Palette = palette(False)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMinimumHeight(150)

    def sizeHint(self) -> QSize:
        return QSize(280, 190)

    def show_plants(self, plants: list[Profile], measure: Measure, colours: Palette, on: date) -> None:
        """Show these plants, the selected first."""
        self._plants, self._measure, self._colours = plants[:4], measure, colours
        told = "; ".join(
            say(
                "{name}: {height} high, roots {depth} deep",
                name=p.name,
                height=measure.small(p.height_m),
                depth=measure.small(p.root_m),
            )
            for p in self._plants
        )
        self.setAccessibleName(told)
        self.setToolTip(as_plain(f"{day_year(on)}: {told}"))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint(painter, QRectF(self.rect()))
        painter.end()

    def _paint(self, painter: QPainter, area: QRectF) -> None:
        if not self._plants:
            return
        above = max(_nice(max(p.height_m for p in self._plants), self._measure.units), 0.2)
        below = max(_nice(max(p.root_m for p in self._plants), self._measure.units), 0.2)
        names = painter.fontMetrics().height() + 4
        drawn = area.adjusted(0, 0, 0, -names)
        widest = sum(max(2 * p.radius_m, 0.12) for p in self._plants) + 0.06 * (len(self._plants) + 1)
        scale = min(drawn.height() / (above + below) * 0.94, drawn.width() / widest)
        ground = drawn.top() + drawn.height() * above / (above + below)
        self._paint_grounds(painter, drawn, ground, above, below, scale)
        used = sum(max(2 * p.radius_m, 0.12) for p in self._plants) * scale
        gap = (drawn.width() - used) / (len(self._plants) + 1)
        x = drawn.left() + gap
        for plant in self._plants:
            half = max(plant.radius_m, 0.06) * scale
            self._paint_plant(painter, plant, QPointF(x + half, ground), scale)
            room = QRectF(x + half - (half + gap / 2), drawn.bottom() + 2, 2 * half + gap, names)
            shown = painter.fontMetrics().elidedText(
                plant.name, Qt.TextElideMode.ElideRight, int(room.width())
            )
            painter.setPen(QColor(self._colours.ink))
            painter.drawText(room, Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop, shown)
            x += 2 * half + gap

    def _paint_grounds(
        self, painter: QPainter, area: QRectF, ground: float, above: float, below: float, scale: float
    ) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(self._colours.sky))
        painter.drawRect(QRectF(area.left(), area.top(), area.width(), ground - area.top()))
        painter.setBrush(QColor(self._colours.soil_deep))
        painter.drawRect(QRectF(area.left(), ground, area.width(), area.bottom() - ground))
        step = _nice(max(above, below) / 3, self._measure.units)
        pen = QPen(QColor(self._colours.quiet))
        pen.setStyle(Qt.PenStyle.DotLine)
        for direction, most in ((-1, above), (1, below)):
            for number in range(1, int(most / step + 1e-6) + 1):
                y = ground + direction * number * step * scale
                if not area.top() + 12 < y < area.bottom() - 6:
                    continue
                painter.setPen(pen)
                painter.drawLine(QPointF(area.left() + 46, y), QPointF(area.right(), y))
                painter.setPen(QColor(self._colours.ink))
                painter.drawText(QPointF(area.left() + 4, y + 4), self._measure.small(number * step))
        painter.setPen(QPen(QColor(self._colours.ink), 1.5))
        painter.drawLine(QPointF(area.left(), ground), QPointF(area.right(), ground))

    def _paint_plant(self, painter: QPainter, plant: Profile, foot: QPointF, scale: float) -> None:
        radius, top = plant.radius_m * scale, plant.height_m * scale
        base = min(plant.base_m * scale, top * 0.8)
        tint = QColor(plant.tint)
        tint.setAlphaF(1.0 if plant.grown else 0.35)
        painter.setPen(
            QPen(plant.outline, 1.6, Qt.PenStyle.SolidLine if plant.grown else Qt.PenStyle.DashLine)
        )
        painter.setBrush(tint)
        if base > 1:
            painter.drawLine(foot, QPointF(foot.x(), foot.y() - base))
        crown = QRectF(foot.x() - radius, foot.y() - top, 2 * radius, top - base)
        round_x, round_y = min(radius, crown.height()), crown.height() / 2
        painter.drawRoundedRect(crown, round_x, round_y)
        self._paint_roots(painter, plant, foot, scale)

    def _paint_roots(self, painter: QPainter, plant: Profile, foot: QPointF, scale: float) -> None:
        """Width falls with depth as the share of roots still below it (Gerwitz & Page 1974, 3/depth)."""
        depth = np.linspace(0.0, plant.root_m, 12)
        width = plant.radius_m * (0.12 + 0.88 * np.exp(-3.0 * depth / max(plant.root_m, 1e-6)))
        right = [
            QPointF(foot.x() + w * scale, foot.y() + d * scale) for w, d in zip(width, depth, strict=True)
        ]
        left = [QPointF(2 * foot.x() - p.x(), p.y()) for p in reversed(right)]
        path = QPainterPath(right[0])
        for point in [*right[1:], *left]:
            path.lineTo(point)
        path.closeSubpath()
        fill = QColor(self._colours.soil)
        fill.setAlphaF(0.75)
        painter.setBrush(fill)
        painter.setPen(QPen(QColor(self._colours.bed_edge), 1.2, Qt.PenStyle.DashLine))
        painter.drawPath(path)


_ROUND_M = (0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 1.0, 1.5, 2.0, 3.0, 5.0, 10.0)
_ROUND_IN = (2, 4, 6, 8, 12, 18, 24, 36, 48, 60, 72, 120, 240, 400)


def _nice(metres: float, units: Units) -> float:
    """The next round length above, in the grower's units."""
    steps = [inches * 0.0254 for inches in _ROUND_IN] if units == "imperial" else _ROUND_M
    return next((step for step in steps if metres <= step), metres)
