"""Distances one paces off with a tape: along a bed from one end, across it from one edge."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from math import atan2, degrees

import numpy as np

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laying import frame_of
from gardencanvas.garden.pattern import Block, Floats, Rows, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point
from gardencanvas.words.remedies import wind

ALONG_DEG = 2.0  # a row turned by less lies along the bed, as laid with a line
_ALIKE_M = 0.004
_STRAIGHT_M = 0.02
_AN_EDGE = 0.3  # share of the bed's length that must lie on a line for it to be an edge one can see


@dataclass(frozen=True, slots=True, eq=False)
class Tape:
    """A bed's own axes: ``along`` its long side, ``across`` it, unit vectors of the plan.

    Distances are from the end ``u0`` and from the edge ``v0``; ``length_m`` and ``width_m`` are those of the
    box round the bed. ``straight`` says whether the edge measured from is one that can be seen.
    """

    along: Floats
    across: Floats
    u0: float
    v0: float
    length_m: float
    width_m: float
    straight: bool

    @property
    def angle_deg(self) -> float:
        """How far ``along`` is turned from the plan's x axis, clockwise."""
        return degrees(atan2(float(self.along[1]), float(self.along[0])))

    def distances(self, points: Floats) -> Floats:
        """Distances from end and edge, metres, shape (n, 2), of points of that shape."""
        return np.stack([points @ self.along - self.u0, points @ self.across - self.v0], axis=1)

    def plan(self, u: float, v: float) -> Point:
        """The point of the plan so far from end and edge."""
        x, y = self.along * (self.u0 + u) + self.across * (self.v0 + v)
        return float(x), float(y)

    def end_word(self, bearing_deg: float) -> str:
        """The side of the sky where the end measured from lies, such as ``west``."""
        return _wind(-self.along, bearing_deg)

    def edge_word(self, bearing_deg: float) -> str:
        """The side of the sky where the edge measured from lies, such as ``north``."""
        return _wind(-self.across, bearing_deg)


def _wind(way: Floats, bearing_deg: float) -> str:
    """The wind towards which a direction of the plan points; the plan's top edge faces the bearing."""
    bearing = degrees(atan2(float(way[0]), -float(way[1]))) + bearing_deg
    return wind(bearing)


@lru_cache(maxsize=512)
def tape_of(bed: Bed) -> Tape:
    """Where a tape is laid: from the left or upper end, and from the upper or left edge if it is straight."""
    turn = np.deg2rad(frame_of(bed).angle_deg)
    cos, sin = float(np.cos(turn)), float(np.sin(turn))
    along, across = np.array([cos, sin]), np.array([-sin, cos])
    if turn > np.pi / 4 + 1e-9:  # steep: along is down, across is to the right
        across = -across
    elif turn < -np.pi / 4 - 1e-9:
        along = -along
    corners = np.array(bed.outline)
    u, v = corners @ along, corners @ across
    length, width = float(np.ptp(u)), float(np.ptp(v))
    near, far = _lying_on(u, v, float(v.min())), _lying_on(u, v, float(v.max()))
    least = _AN_EDGE * length
    if max(near, far) < least:  # a round bed has no axes but the plan's
        along, across = np.array([1.0, 0.0]), np.array([0.0, 1.0])
        u, v = corners[:, 0], corners[:, 1]
        length, width = float(np.ptp(u)), float(np.ptp(v))
    if near < least <= far:
        across, v = -across, -v
        near = far
    return Tape(along, across, float(u.min()), float(v.min()), length, width, near >= least)


def _lying_on(u: Floats, v: Floats, line: float) -> float:
    """How much of the outline lies on a line at ``v``, metres."""
    ring = list(zip([*u.tolist(), float(u[0])], [*v.tolist(), float(v[0])], strict=True))
    whole: float = sum(
        abs(b[0] - a[0])
        for a, b in pairwise(ring)
        if abs(a[1] - line) < _STRAIGHT_M and abs(b[1] - line) < _STRAIGHT_M
    )
    return whole


@dataclass(frozen=True, slots=True)
class RowMark:
    """A row of one or more plantings: how far from the edge, from where to where along, and whose it is."""

    from_edge_m: float
    begin_m: float
    end_m: float
    numbers: tuple[int, ...]


def turned_from(tape: Tape, planting: Planting) -> float:
    """How far a planting's pattern is turned from the bed's length, degrees, from −90 up to 90."""
    return (planting.pattern.angle_deg - tape.angle_deg + 90.0) % 180.0 - 90.0


def rows_along(tape: Tape, planting: Planting) -> Floats:
    """Rows of a planting that lie along the bed: from edge, begin, end; shape (n, 3); none otherwise."""
    pattern = planting.pattern
    if not isinstance(pattern, (Rows, Strip, Block)) or abs(turned_from(tape, planting)) > ALONG_DEG:
        return np.empty((0, 3))
    return grouped(tape.distances(planting.stations))


def grouped(distances: Floats) -> Floats:
    """Stations gathered into rows by their distance from the edge: that, begin and end; shape (n, 3)."""
    order = np.argsort(distances[:, 1], kind="stable")
    sorted_ = distances[order]
    breaks = np.flatnonzero(np.diff(sorted_[:, 1]) > _ALIKE_M) + 1
    return np.array([
        (float(each[:, 1].mean()), float(each[:, 0].min()), float(each[:, 0].max()))
        for each in np.split(sorted_, breaks)
    ])  # fmt: skip


def row_marks(bed: Bed, numbered: Sequence[tuple[int, Planting]]) -> tuple[RowMark, ...]:
    """Rows that lie along a bed, from the edge on; rows at one distance are one mark."""
    tape = tape_of(bed)
    found = sorted(
        (float(v), float(begin), float(end), number)
        for number, planting in numbered
        for v, begin, end in rows_along(tape, planting)
    )
    marks: list[RowMark] = []
    for v, begin, end, number in found:
        if marks and v - marks[-1].from_edge_m <= _ALIKE_M:
            last = marks[-1]
            numbers = last.numbers if number in last.numbers else (*last.numbers, number)
            marks[-1] = RowMark(last.from_edge_m, min(last.begin_m, begin), max(last.end_m, end), numbers)
        else:
            marks.append(RowMark(v, begin, end, (number,)))
    return tuple(marks)
