"""An outline in the forms that marks are drawn with: Qt strokes single lines far faster than paths."""

from collections.abc import Iterable, Sequence
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF
from PySide6.QtGui import QPainterPath
from shapely import LineString

Ends = tuple[float, float]
ON, OFF = 7.4, 4.9  # pixels of a dash and of the gap after it
_STRAIGHT = 4.0  # a side of so many dashes is dashed by Qt, shorter ones by us: Qt begins anew at each bend

# Outlines less wide than so many pixels may be simplified by this share of their breadth.
_LEVELS = ((16.0, 0.09), (70.0, 0.006))


class Shape:
    """One outline.

    Attributes
    ----------
    path
        To fill, and to stroke on paper.
    breadth
        The lesser side of its box.
    """

    def __init__(self, path: QPainterPath) -> None:
        self.path = path
        self._rings: list[list[Ends]] = [
            [(p.x(), p.y()) for p in ring.toList()] for ring in path.toSubpathPolygons()
        ]
        box = path.boundingRect()
        self.breadth = min(box.width(), box.height())
        self._levels: dict[float, list[QLineF]] = {}
        self._dashed: tuple[float, list[QLineF], list[QLineF]] = (0.0, [], [])

    def lines(self, pixel: float) -> list[QLineF]:
        """Its sides, as few as show no corners where a pixel is so many units."""
        wide = self.breadth / pixel
        tolerance = next((t for least, t in _LEVELS if wide < least), 0.0)
        if tolerance not in self._levels:
            slack = self.breadth * tolerance
            rings = [list(LineString(r).simplify(slack).coords) for r in self._rings if len(r) > 1]
            self._levels[tolerance] = _sides(rings)
        return self._levels[tolerance]

    def dashed(self, pixel: float) -> tuple[list[QLineF], list[QLineF]]:
        """Long sides, to be drawn with a dashed pen, and the dashes along the bends, with a plain one."""
        if self._dashed[0] != pixel:
            long: list[QLineF] = []
            short: list[QLineF] = []
            for ring in self._rings:
                for run in _runs(ring, _STRAIGHT * (ON + OFF) * pixel):
                    if len(run) == 2:
                        long.append(QLineF(*run[0], *run[1]))
                    else:
                        short.extend(_dashes(np.array(run), ON * pixel, OFF * pixel))
            self._dashed = (pixel, long, short)
        return self._dashed[1:]


def _sides(rings: Iterable[Sequence[Ends]]) -> list[QLineF]:
    return [QLineF(*a, *b) for ring in rings for a, b in pairwise(ring) if a != b]


def _runs(ring: Sequence[Ends], straight: float) -> list[list[Ends]]:
    """The ring cut into long sides (two points each) and the runs of short ones between them.

    A run of one short side is given a point in its middle, so that it is not taken for a long one.
    """
    runs: list[list[Ends]] = []
    run: list[Ends] = []
    for a, b in pairwise(ring):
        if (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 >= straight**2:
            runs.append([a, b])
            run = []
        elif run:
            run.append(b)
        else:
            run = [a, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), b]
            runs.append(run)
    return runs


def _dashes(xy: NDArray[np.float64], on: float, off: float) -> list[QLineF]:
    """Dashes along a line through points; they are stretched a little so that a whole number fits."""
    steps = np.hypot(*np.diff(xy, axis=0).T)
    along = np.concatenate([[0.0], np.cumsum(steps)])
    count = max(1, round(along[-1] / (on + off)))
    period = along[-1] / count
    begin = np.arange(count) * period + period * off / (on + off) / 2
    middle, end = begin + period * on / (on + off) / 2, begin + period * on / (on + off)
    at = np.stack([begin, middle, end])
    x, y = np.interp(at, along, xy[:, 0]), np.interp(at, along, xy[:, 1])
    ends = np.concatenate([np.stack([x[k], y[k], x[k + 1], y[k + 1]], axis=1) for k in (0, 1)])
    return [QLineF(*four) for four in ends.tolist()]
