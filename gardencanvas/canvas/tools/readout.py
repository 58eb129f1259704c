"""Distances to neighbours and the bed's edges, drawn while something is moved; equal gaps pull."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainterPath

from gardencanvas.canvas.items.overlay import Note, SketchItem
from gardencanvas.canvas.look import CM
from gardencanvas.garden.gaps_beside import Box, Gap, equal_places, gaps_beside
from gardencanvas.garden.garden import Item
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.places import bed_at, bounds
from gardencanvas.garden.planting import Planting

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_FAR_M = 2.0  # neighbours farther off are not measured to
_LEAST_PX = 26.0  # a gap shorter than this on the screen bears no number


class Readout:
    """What lies around the things being moved; made when a move begins."""

    def __init__(self, view: PlanView, moved: Sequence[Item], without: Collection[str]) -> None:
        self._view = view
        self._sketch = SketchItem(view.look)
        view.plan.addItem(self._sketch)
        self._moved = moved
        layout = view.desk.layout
        self._beds = all(isinstance(i, Bed) for i in moved)
        others: Sequence[Item] = layout.beds if self._beds else layout.plantings
        boxes = [bounds([o]) for o in others if o.id not in without]
        self._others = np.array(boxes).reshape(-1, 4)

    def pulled(self, box: QRectF, by: QPointF, reach_cm: float) -> QPointF:
        """The step, changed so that gaps become equal or rows lie half a spacing on, where that is near."""
        if not len(self._others) or reach_cm <= 0:
            return by
        here = _box(box.translated(by))
        near_by = self._near(here)
        steps = []
        for axis in (0, 1):
            places = [*equal_places(here, near_by, self._within(here), axis)]
            away = [place - here[axis] for place in places]
            if axis == 0:
                away += self._half_spacings(by)
            near = min(away, key=abs, default=None)
            steps.append(near * CM if near is not None and abs(near) * CM <= reach_cm else 0.0)
        return by + QPointF(*steps)

    def _half_spacings(self, by: QPointF) -> list[float]:
        """Steps along x after which a row's plants stand midway between those of a level row beside it."""
        if len(self._moved) != 1:
            return []
        planting = self._moved[0]
        if not isinstance(planting, Planting) or not isinstance(planting.pattern, Rows):
            return []
        pattern = planting.pattern
        if pattern.angle_deg % 180.0 > 1e-6:
            return []
        x = float(planting.stations[0, 0]) + by.x() / CM
        found = []
        for other in self._view.desk.layout.plantings:
            alike = isinstance(other.pattern, Rows) and other.pattern.angle_deg % 180.0 <= 1e-6
            if other.id != planting.id and alike and abs(other.pattern.spacing_m - pattern.spacing_m) < 1e-6:
                x0 = float(other.stations[0, 0]) + pattern.spacing_m / 2
                away = (x0 - x) % pattern.spacing_m
                found.append(away if away <= pattern.spacing_m / 2 else away - pattern.spacing_m)
        return found

    def show(self, box: QRectF) -> None:
        """Draw the gaps round a box."""
        here = _box(box)
        gaps = gaps_beside(here, self._near(here), self._within(here))
        path, notes = QPainterPath(), []
        for gap in gaps:
            a, b = _ends(gap)
            path.moveTo(a)
            path.lineTo(b)
            if gap.metres * CM * self._view.look.scale >= _LEAST_PX:
                notes.append(Note((a + b) / 2, self._view.look.measure.small(gap.metres)))
        self._sketch.put(path, notes, filled=False)

    def _near(self, box: Box) -> list[Box]:
        """Boxes that are near enough to be measured to."""
        low, high = np.array(box[:2]) - _FAR_M, np.array(box[2:]) + _FAR_M
        near = (self._others[:, 2:] >= low).all(axis=1) & (self._others[:, :2] <= high).all(axis=1)
        return [(a, b, c, d) for a, b, c, d in self._others[near].tolist()]

    def _within(self, box: Box) -> Box | None:
        if self._beds:
            return None
        middle = ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
        bed = bed_at(self._view.desk.layout, middle)
        return bounds([bed]) if bed is not None else None

    def gone(self) -> None:
        """Take the lines off the plan."""
        self._view.plan.removeItem(self._sketch)


def _box(box: QRectF) -> Box:
    return box.left() / CM, box.top() / CM, box.right() / CM, box.bottom() / CM


def _ends(gap: Gap) -> tuple[QPointF, QPointF]:
    a, b = np.array((gap.begin, gap.at)) * CM, np.array((gap.end, gap.at)) * CM
    if gap.axis == 1:
        a, b = a[::-1], b[::-1]
    return QPointF(*a), QPointF(*b)
