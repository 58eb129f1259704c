"""A pattern cut into parts that together have its stations: by its rows, or along its length."""

from itertools import pairwise
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.edits import made, rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Block, Edging, Pattern, RingPattern, Rows, Spots, Strip, how_many
from gardencanvas.planner.changes.spacing import moved
from gardencanvas.planner.succession.rhythm import Way

_FINE = 6  # digits kept of a metre


class _Grid(NamedTuple):
    """A pattern whose plants stand in columns and rows."""

    pattern: Rows | Strip | Block
    columns: int
    rows: int
    along_m: float
    across_m: float


class Piece(NamedTuple):
    """A part of a pattern, and the number of its first station in the whole."""

    pattern: Pattern
    first: int


def _grid(pattern: Pattern) -> _Grid | None:
    """A pattern's columns and rows; None where it has none that can be cut apart."""
    if isinstance(pattern, Rows):
        across, rows = pattern.row_spacing_m, pattern.rows
    elif isinstance(pattern, Strip):
        across, rows = pattern.across_m, how_many(pattern.width_m, pattern.across_m)
    elif isinstance(pattern, Block) and not pattern.staggered:
        across, rows = pattern.spacing_m, how_many(pattern.width_m, pattern.spacing_m)
    else:
        return None
    return _Grid(pattern, how_many(pattern.length_m, pattern.spacing_m), rows, pattern.spacing_m, across)


def most_parts(pattern: Pattern, way: Way) -> int:
    """Into how many parts a pattern can be cut: 1 where not at all."""
    grid = _grid(pattern)
    if way is Way.ROWS:
        return grid.rows if grid is not None else 1
    return grid.columns if grid is not None else pattern.count


def cut(pattern: Pattern, way: Way, parts: int) -> tuple[Piece, ...]:
    """A pattern cut into parts as equal as may be, larger ones first.

    Rows, strips and square blocks are cut by ``Way.ROWS`` or, by ``Way.PARTS``, along their rows. Of any
    other pattern the stations are dealt out along it (along its line where it is one, else from its begin to
    its end) and stand as spots from then on.

    Raises
    ------
    Refusal
        If it is too small, or has no rows to cut between.
    """
    check(pattern, way, parts)
    grid = _grid(pattern)
    if grid is None:
        return _dealt(pattern, parts)
    lines = grid.rows if way is Way.ROWS else grid.columns
    edges = _edges(lines, parts)
    return tuple(_between(grid, way, a, b) for a, b in pairwise(edges))


def check(pattern: Pattern, way: Way, parts: int) -> None:
    """Raise ``Refusal`` where a pattern cannot be cut into so many parts."""
    most = most_parts(pattern, way)
    if most >= parts:
        return
    if way is Way.ROWS and _grid(pattern) is None:
        what = "staggered block" if isinstance(pattern, Block) else pattern.kind
        raise Refusal("A pattern of kind {what} has no rows that could be started one by one.", what=what)
    if most == 1 and way is Way.ROWS:
        raise Refusal("The pattern has one row only: it cannot be cut so.")
    if most == 1:
        raise Refusal("The pattern has one plant along it only: it cannot be cut so.")
    if way is Way.ROWS:
        raise Refusal("The pattern has {n} rows: too few for {parts} parts.", n=most, parts=parts)
    raise Refusal("The pattern has {n} plants along it: too few for {parts} parts.", n=most, parts=parts)


def _edges(lines: int, parts: int) -> list[int]:
    """Where to cut so many lines: the first of each part, and their number."""
    sizes = [lines // parts + (part < lines % parts) for part in range(parts)]
    return [0, *np.cumsum(sizes).tolist()]


def _between(grid: _Grid, way: Way, begin: int, end: int) -> Piece:
    """Rows or columns ``begin`` to ``end``; the last part keeps what room is left over."""
    pattern = grid.pattern
    if way is Way.PARTS:
        room = pattern.length_m if end == grid.columns else end * grid.along_m
        length = _short(room - begin * grid.along_m, grid.along_m)
        return Piece(
            rebuilt(pattern, origin=moved(pattern, begin * grid.along_m, 0.0), length_m=length), begin
        )
    origin = moved(pattern, 0.0, begin * grid.across_m)
    if isinstance(pattern, Rows):
        part: Pattern = rebuilt(pattern, origin=origin, rows=end - begin)
    else:
        room = pattern.width_m if end == grid.rows else end * grid.across_m
        part = rebuilt(pattern, origin=origin, width_m=_short(room - begin * grid.across_m, grid.across_m))
    return Piece(part, begin * grid.columns)


def _short(length_m: float, spacing_m: float) -> float:
    """A length with as few digits as still hold the same plants."""
    short = round(length_m, _FINE)
    return short if how_many(short, spacing_m) == how_many(length_m, spacing_m) else length_m


def _dealt(pattern: Pattern, parts: int) -> tuple[Piece, ...]:
    """The stations of a pattern as spots, a stretch of it to each part."""
    order = _along(pattern)
    edges = _edges(len(order), parts)
    return tuple(Piece(_spots(pattern, order[a:b]), int(order[a])) for a, b in pairwise(edges))


def _along(pattern: Pattern) -> NDArray[np.intp]:
    """The stations of a pattern in their order along it."""
    if isinstance(pattern, RingPattern | Edging):
        return np.arange(pattern.count)
    turn = np.deg2rad(pattern.angle_deg)
    along = pattern.stations @ np.array([np.cos(turn), np.sin(turn)])
    return np.argsort(along.round(_FINE), kind="stable")


def _spots(pattern: Pattern, some: NDArray[np.intp]) -> Spots:
    points = tuple((round(x, _FINE), round(y, _FINE)) for x, y in pattern.stations[some].tolist())
    return made(Spots, points=points, spacing_m=pattern.spacing_m)
