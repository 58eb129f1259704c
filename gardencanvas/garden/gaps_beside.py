"""Gaps between boxes on the plan: how far the nearest neighbours and the bed's edges are, and equal gaps.

Boxes are (least x, least y, greatest x, greatest y) in metres. Axis 0 is x, axis 1 is y.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

Box = tuple[float, float, float, float]
_TOUCH_M = 1e-6


@dataclass(frozen=True, slots=True)
class Gap:
    """A stretch between two sides, along one axis, at ``at`` on the other."""

    axis: int
    begin: float
    end: float
    at: float

    @property
    def metres(self) -> float:
        """Its length."""
        return self.end - self.begin


def gaps_beside(box: Box, others: Sequence[Box], within: Box | None) -> tuple[Gap, ...]:
    """The gap on each of four sides to the nearest box that lies level with it, else to the edge around it.

    No gap on a side where something overlaps, or where there is nothing.
    """
    found: list[Gap] = []
    for axis in (0, 1):
        low, high = box[axis], box[axis + 2]
        level = [o for o in others if _level(box, o, axis)]
        if any(o[axis] < high - _TOUCH_M and o[axis + 2] > low + _TOUCH_M for o in level):
            continue  # it lies over one of them: there is no gap along this axis
        before = [o[axis + 2] for o in level if o[axis + 2] <= low + _TOUCH_M]
        after = [o[axis] for o in level if o[axis] >= high - _TOUCH_M]
        if within is not None and within[axis] <= low + _TOUCH_M and within[axis + 2] >= high - _TOUCH_M:
            before.append(within[axis])
            after.append(within[axis + 2])
        middle = (box[1 - axis] + box[3 - axis]) / 2
        if before:
            found.append(Gap(axis, max(before), low, middle))
        if after:
            found.append(Gap(axis, high, min(after), middle))
    return tuple(g for g in found if g.metres > _TOUCH_M)


def equal_places(box: Box, others: Sequence[Box], within: Box | None, axis: int) -> tuple[float, ...]:
    """Where a box's lower side would lie so that its gaps along an axis are equal.

    Midway between two neighbours or edges, and as far from a neighbour as that is from the next one.
    """
    size = box[axis + 2] - box[axis]
    level = sorted((o[axis], o[axis + 2]) for o in others if _level(box, o, axis))
    sides = list(level)
    if within is not None:
        sides = [(within[axis], within[axis]), *level, (within[axis + 2], within[axis + 2])]
    found: list[float] = []
    for (_, low), (high, _) in pairwise(sides):
        if high - low >= size:
            found.append((low + high - size) / 2)
    for first, second in pairwise(level):
        gap = second[0] - first[1]
        if gap > _TOUCH_M:
            found += [second[1] + gap, first[0] - gap - size]
    return tuple(found)


def _level(box: Box, other: Box, axis: int) -> bool:
    """Whether two boxes overlap across an axis, so that the gap along it can be seen."""
    a, b = 1 - axis, 3 - axis
    return min(box[b], other[b]) - max(box[a], other[a]) > _TOUCH_M
