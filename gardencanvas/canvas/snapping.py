"""Where a dragged point or box comes to rest: on the grid, on the edges and middle lines of beds."""

from collections.abc import Iterable
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF

GRID_CM = 5.0


@dataclass(frozen=True, slots=True)
class Snapping:
    """Rounds places in centimetres; ``pull_cm`` is how near a line must be to draw a thing to it."""

    on: bool = True
    grid_cm: float = GRID_CM
    pull_cm: float = 3.0
    xs: tuple[float, ...] = ()
    ys: tuple[float, ...] = ()

    def point(self, at: QPointF) -> QPointF:
        """The place a point comes to rest."""
        if not self.on:
            return at
        return QPointF(self._value(at.x(), self.xs), self._value(at.y(), self.ys))

    def shift(self, box: QRectF, by: QPointF) -> QPointF:
        """How far a box moves, so that an edge or its middle rests on a line or its corner on the grid."""
        if not self.on:
            return by
        return QPointF(
            self._slide(by.x(), (box.left(), box.center().x(), box.right()), self.xs),
            self._slide(by.y(), (box.top(), box.center().y(), box.bottom()), self.ys),
        )

    def _value(self, value: float, lines: tuple[float, ...]) -> float:
        near = min(lines, key=lambda line: abs(line - value), default=None)
        if near is not None and abs(near - value) <= self.pull_cm:
            return near
        return round(value / self.grid_cm) * self.grid_cm

    def _slide(self, by: float, own: tuple[float, ...], lines: tuple[float, ...]) -> float:
        pulls = [line - (edge + by) for edge in own for line in lines]
        near = min(pulls, key=abs, default=None)
        if near is not None and abs(near) <= self.pull_cm:
            return by + near
        corner = own[0] + by
        return round(corner / self.grid_cm) * self.grid_cm - own[0] if abs(by) > 1e-9 else by


def lines_of(boxes: Iterable[QRectF]) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Vertical and horizontal lines that boxes offer: their edges and middles."""
    xs: set[float] = set()
    ys: set[float] = set()
    for box in boxes:
        xs.update((box.left(), box.center().x(), box.right()))
        ys.update((box.top(), box.center().y(), box.bottom()))
    return tuple(sorted(xs)), tuple(sorted(ys))
