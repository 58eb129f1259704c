"""Distances one paces off with a tape: of each row from the bed's edge, in the bed's own frame."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laying import frame_of
from gardencanvas.garden.pattern import Block, Rows, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point

ALONG_DEG = 2.0
_ALIKE_M = 0.004


@dataclass(frozen=True, slots=True)
class RowMark:
    """A row of one or more plantings: how far it lies from the bed's first long edge, and its first plant."""

    from_edge_m: float
    first: Point
    numbers: tuple[int, ...]


def row_marks(bed: Bed, numbered: Sequence[tuple[int, Planting]]) -> tuple[RowMark, ...]:
    """Rows that lie along a bed, from its first long edge on; rows at one distance are one mark."""
    frame = frame_of(bed)
    _, edge, _, _ = frame.ground.bounds
    found: list[tuple[float, Point, int]] = []
    for number, planting in numbered:
        pattern = planting.pattern
        if not isinstance(pattern, (Rows, Strip, Block)):
            continue
        turned = (pattern.angle_deg - frame.angle_deg + 90.0) % 180.0 - 90.0
        if abs(turned) > ALONG_DEG:
            continue
        local = np.array([frame.local((float(x), float(y))) for x, y in planting.stations])
        for across in np.unique(np.round(local[:, 1], 3)):
            row = local[np.abs(local[:, 1] - across) <= 0.001]
            u = float(row[:, 0].min())
            found.append((float(across) - edge, frame.plan(u, float(across)), number))
    found.sort(key=lambda each: each[0])
    marks: list[RowMark] = []
    for away, first, number in found:
        if marks and away - marks[-1].from_edge_m <= _ALIKE_M:
            last = marks[-1]
            numbers = last.numbers if number in last.numbers else (*last.numbers, number)
            marks[-1] = RowMark(last.from_edge_m, last.first, numbers)
        else:
            marks.append(RowMark(away, first, (number,)))
    return tuple(marks)
