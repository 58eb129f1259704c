"""Plantings that nobody sowed: marked as such, kept, thinned to a distance."""

from datetime import date
from heapq import heapify, heappop, heappush
from typing import Any

import numpy as np
from numpy.typing import NDArray
from shapely import STRtree, points

from gardencanvas.garden.edits import change, made, rebuilt, replace
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.pattern import Edging, Pattern, RingPattern, Rows
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.stations import without_stations

WITHIN_D = 14  # seedlings of one size may be two weeks apart in age (our choice, to be changed by the grower)
_CLOSE_M = 1e-6  # plants may stand exactly at the least distance


def came_up(on: date, within_d: int | None = WITHIN_D) -> Start:
    """The start of a volunteer that came up about a day."""
    return made(Start, kind="volunteer", on=on, within_d=within_d)


def keep(garden: Garden, layout_id: str, planting_id: str) -> Garden:
    """The garden with a volunteer decided on: it stays where it came up, and its day is not moved.

    Raises
    ------
    Refusal
        If it is none, or locked.
    """
    start = _volunteer(garden, layout_id, planting_id).start
    return change(garden, layout_id, planting_id, start=rebuilt(start, kept=True, pinned=True))


def thin(garden: Garden, layout_id: str, planting_id: str, apart_m: float) -> Garden:
    """The garden with a volunteer thinned, so that its stations keep a least distance.

    Raises
    ------
    Refusal
        If it is none, or locked, or stands so far apart already.
    """
    planting = _volunteer(garden, layout_id, planting_id)
    gone = crowded_out(planting.stations, apart_m)
    if len(gone) == 0:
        raise Refusal("It stands that far apart already.")
    return replace(garden, layout_id, [without_stations(planting, gone.tolist())])


def _volunteer(garden: Garden, layout_id: str, planting_id: str) -> Planting:
    planting = garden.layout(layout_id).by_id.get(planting_id)
    if not isinstance(planting, Planting) or planting.start.kind != "volunteer":
        raise Refusal("It did not come up by itself.")
    if planting.locked:
        raise Refusal("It is locked; unlock it first.")
    return planting


def in_line(pattern: Pattern) -> bool:
    """Whether its plants stand in lines, so that the spacing in the row keeps them apart."""
    return isinstance(pattern, Rows | RingPattern | Edging)


def crowded_out(xy: NDArray[np.float64], apart_m: float) -> NDArray[np.int64]:
    """Which of some places must go so that those that stay are at least ``apart_m`` apart, in order.

    The one with the fewest others too near stays, they go, and so on; of equals the first. On a line that
    keeps as many as there can be; anywhere it keeps at least Σ 1/(d+1), d being how many stand too near to
    each (Caro 1979, Wei 1981). None that goes could have stayed.

    Parameters
    ----------
    xy
        Plan metres, shape (n, 2).
    """
    near = _too_near(xy, apart_m)
    left = [len(n) for n in near]
    queue = [(count, i) for i, count in enumerate(left)]
    heapify(queue)
    state = np.zeros(len(xy), dtype=np.int8)  # 1: stays, 2: goes
    while queue:
        count, i = heappop(queue)
        if state[i] or count != left[i]:
            continue
        state[i] = 1
        for gone in (j for j in near[i] if not state[j]):
            state[gone] = 2
            for other in near[gone]:
                if not state[other]:
                    left[other] -= 1
                    heappush(queue, (left[other], other))
    return np.flatnonzero(state == 2)


def _too_near(xy: NDArray[np.float64], apart_m: float) -> list[list[int]]:
    """For each place, those that are nearer than ``apart_m``."""
    spots: Any = points(xy)
    i, j = STRtree(spots).query(spots, predicate="dwithin", distance=max(apart_m - _CLOSE_M, 0.0))
    near: list[list[int]] = [[] for _ in range(len(xy))]
    for a, b in zip(i.tolist(), j.tolist(), strict=True):
        if a != b:
            near[a].append(b)
    return near
