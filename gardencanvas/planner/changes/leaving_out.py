"""Fewer rows, shorter rows, fewer spots."""

from collections.abc import Iterator

import numpy as np

from gardencanvas.fit.report import Remedy
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Block, Pattern, Rows, Spots, Strip, how_many
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.case import Case
from gardencanvas.planner.changes.spacing import moved
from gardencanvas.planner.codes import Change, Numbers
from gardencanvas.planner.ladder import Ladder, choices, coarsely, highest

MOST = 0.5  # of its rows or columns, of its spots


def left_out(case: Case) -> Iterator[Ladder]:
    """Ladders that leave out rows or plants of each planting on the side where the finding is."""
    for planting in case.changeable:
        pattern = planting.pattern
        if isinstance(pattern, Spots):
            yield from _spots(case, planting)
        elif isinstance(pattern, Rows | Strip | Block):
            columns, rows = _shape(pattern)
            own, _, other = case.facing(planting)
            near = int(np.hypot(*(planting.stations - own).T).argmin())
            row, column = divmod(near, columns) if _is_grid(pattern) else (0, 0)
            who = other.id if other is not None else ""
            if rows > 1:
                yield _lines(planting, "first" if row < rows / 2 else "last", int(rows * MOST), who)
            if columns > 1:
                yield _lines(planting, "begin" if column < columns / 2 else "end", int(columns * MOST), who)


def _is_grid(pattern: Rows | Strip | Block) -> bool:
    return not (isinstance(pattern, Block) and pattern.staggered)


def _steps(pattern: Rows | Strip | Block) -> tuple[float, float]:
    """Distance of plants in a row, and of rows."""
    if isinstance(pattern, Rows):
        return pattern.spacing_m, pattern.row_spacing_m
    return pattern.spacing_m, pattern.across_m if isinstance(pattern, Strip) else pattern.spacing_m


def _shape(pattern: Rows | Strip | Block) -> tuple[int, int]:
    """Columns and rows; a staggered block, whose rows differ, is cut at its sides as if it were square."""
    along, across = _steps(pattern)
    rows = pattern.rows if isinstance(pattern, Rows) else how_many(pattern.width_m, across)
    return how_many(pattern.length_m, along), rows


def _lines(planting: Planting, side: str, most: int, other: str) -> Ladder:
    def at(step: int) -> Remedy | None:
        try:
            left = cut(planting.pattern, side, step).count
        except Refusal:
            return None
        numbers: Numbers = {
            "planting": planting.id, "side": side, "lines": step, "other": other, "plants": planting.plants,
            "fewer": (planting.pattern.count - left) * planting.per_station,
        }  # fmt: skip
        return Remedy(Change.LEAVE_OUT, numbers)

    most = highest(most, at)
    return Ladder(Change.LEAVE_OUT, planting.id, most, at, coarsely(1, most))


def cut(pattern: Pattern, side: str, lines: int) -> Pattern:
    """A pattern without some rows or columns at one side; raises ``Refusal`` where nothing is left."""
    if not isinstance(pattern, Rows | Strip | Block):
        raise Refusal("A pattern of kind {kind} has no rows to leave out.", kind=pattern.kind)
    along, across = _steps(pattern)
    length, width = pattern.length_m, pattern.width_m
    if side in ("begin", "end"):
        gone = lines * along
        origin = moved(pattern, gone, 0.0) if side == "begin" else pattern.origin
        return rebuilt(pattern, length_m=round(length - gone, 6), origin=origin)
    origin = moved(pattern, 0.0, lines * across) if side == "first" else pattern.origin
    if isinstance(pattern, Rows):
        return rebuilt(pattern, rows=pattern.rows - lines, origin=origin)
    return rebuilt(pattern, width_m=round(width - lines * across, 6), origin=origin)


def _spots(case: Case, planting: Planting) -> Iterator[Ladder]:
    stations = case.troubled(planting)
    if not 0 < len(stations) <= MOST * planting.pattern.count:
        return
    numbers: Numbers = {
        "planting": planting.id,
        "stations": " ".join(map(str, stations.tolist())),
        "plants": planting.plants,
        "fewer": len(stations) * planting.per_station,
    }
    yield choices([Remedy(Change.LEAVE_OUT_STATIONS, numbers)])
