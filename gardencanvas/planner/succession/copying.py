"""Copies of a pattern laid beside it: on free ground of its bed first, else row by row."""

from collections.abc import Iterator, Sequence
from datetime import date
from itertools import count, islice
from math import ceil
from typing import NamedTuple

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import MultiPoint, Polygon
from shapely.affinity import translate
from shapely.geometry.base import BaseGeometry

from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Pattern, Rows, Strip
from gardencanvas.garden.places import bed_ground
from gardencanvas.planner.changes.spacing import moved

_TOUCHES_M2 = 1e-4  # a square centimetre: grounds that share no more lie side by side
_SLACK_M = 1e-6
_GRID_M = 1e-6  # without it GEOS finds nothing common to two outlines that differ in the last digits
_MOST_TRIED = 600  # places near the pattern that are looked at

Step = tuple[int, int]  # whole lengths along the pattern, whole widths across it


class Stay(NamedTuple):
    """Ground that is taken for a time, both days included."""

    ground: BaseGeometry
    first: date
    last: date


class Place(NamedTuple):
    """Where a copy lies; ``free`` where the ground is its own while it stands."""

    pattern: Pattern
    free: bool


def ground_taken(pattern: Pattern) -> BaseGeometry:
    """The ground a pattern takes: its rectangle, or half a spacing round each of its stations."""
    if isinstance(pattern, Rows | Strip | Block):
        return Polygon(pattern.corners)
    return MultiPoint(pattern.stations).buffer(pattern.spacing_m / 2, quad_segs=4)


def laid_beside(
    pattern: Pattern, bed: Bed | None, times: Sequence[tuple[date, date]], others: Sequence[Stay]
) -> tuple[Place, ...]:
    """Copies of a pattern, moved by whole widths or lengths of it.

    The nearest ground that none of them uses comes first, across the rows before along them; then ground
    that an earlier one has left by that time. Where there is none, the copy is laid across the rows at the
    pattern's own distance, onto whatever is there.

    Parameters
    ----------
    bed
        Copies keep to it; None on bare plan, where any ground will do.
    times
        First and last day in the bed of the pattern itself, and of each copy.
    others
        What takes ground beside them.
    """
    own = [Stay(ground_taken(pattern), *times[0])]
    spots = _spots(pattern, bed)
    used: set[Step] = {(0, 0)}
    places: list[Place] = []
    for time in times[1:]:
        there = [s for s in others if _together(s, *time)]
        spot = _free(spots, (*own, *there))
        if spot is None:
            spot = _free(spots, (*(s for s in own if _together(s, *time)), *there))
        step = spot if spot is not None else next((0, j) for j in count(1) if (0, j) not in used)
        used.add(step)
        copy = _moved(pattern, step)
        own.append(Stay(ground_taken(copy), *time))
        places.append(Place(copy, spot is not None))
    return tuple(places)


def _together(stay: Stay, first: date, last: date) -> bool:
    """Whether ground is taken on some of the days."""
    return stay.first <= last and stay.last >= first


def _free(spots: Sequence[tuple[Step, BaseGeometry]], taken: Sequence[Stay]) -> Step | None:
    """The first spot whose ground nobody takes."""
    grounds = np.array([s.ground for s in taken], dtype=object)
    for step, ground in spots:
        if (shapely.area(shapely.intersection(grounds, ground, grid_size=_GRID_M)) <= _TOUCHES_M2).all():
            return step
    return None


def _size(pattern: Pattern) -> tuple[float, float]:
    """Length and width of the ground along the pattern's own axes."""
    turn = np.deg2rad(pattern.angle_deg)
    cos, sin = np.cos(turn), np.sin(turn)
    local = pattern.corners @ np.array([[cos, -sin], [sin, cos]])
    length, width = np.ptp(local, axis=0).round(6)
    return float(length), float(width)


def _spots(pattern: Pattern, bed: Bed | None) -> list[tuple[Step, BaseGeometry]]:
    """Steps by which a copy may be moved within the bed, with the ground it then takes; near ones first."""
    length, width = _size(pattern)
    far, wide = 0, _MOST_TRIED // 2
    if bed is not None:
        x0, y0, x1, y1 = bed_ground(bed).bounds
        reach = float(np.hypot(x1 - x0, y1 - y0))
        far, wide = ceil(reach / length), ceil(reach / width)
    steps = ((i, j) for i in _outward(far) for j in _outward(wide))
    near = list(islice((s for s in steps if bed is None or _near(pattern, s, bed)), _MOST_TRIED))
    ground = ground_taken(pattern)
    grounds = [translate(ground, *_offset(pattern, step)) for step in near]
    room = np.ones(len(near), dtype=bool) if bed is None else _covered(bed, grounds)
    return [(step, ground) for step, ground, fits in zip(near, grounds, room, strict=True) if fits]


def _covered(bed: Bed, grounds: Sequence[BaseGeometry]) -> NDArray[np.bool_]:
    """Which grounds lie in the bed."""
    room = bed_ground(bed).buffer(_SLACK_M)
    shapely.prepare(room)
    return np.asarray(shapely.covers(room, np.array(grounds)))


def _outward(most: int) -> Iterator[int]:
    """0, 1, −1, 2, −2 … to ``most``."""
    yield 0
    for step in range(1, most + 1):
        yield step
        yield -step


def _offset(pattern: Pattern, step: Step) -> tuple[float, float]:
    length, width = _size(pattern)
    x, y = moved(pattern, step[0] * length, step[1] * width)
    return x - pattern.origin[0], y - pattern.origin[1]


def _moved(pattern: Pattern, step: Step) -> Pattern:
    length, width = _size(pattern)
    return rebuilt(pattern, origin=moved(pattern, step[0] * length, step[1] * width))


def _near(pattern: Pattern, step: Step, bed: Bed) -> bool:
    """Whether the first station would lie within the bed's bounds: quick to ask."""
    x, y = pattern.stations[0] + np.array(_offset(pattern, step))
    x0, y0, x1, y1 = bed_ground(bed).bounds
    return bool(x0 <= x <= x1 and y0 <= y <= y1)
