"""Where plan metres lie on the sheet, and how ground that is too large is laid over several sheets."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from math import ceil

import numpy as np

from gardencanvas.garden.value import Point
from gardencanvas.paper.sheet import Box

OVERLAP_MM = 10.0  # what neighbouring sheets show both, to lay them edge on edge


@dataclass(frozen=True, slots=True)
class Window:
    """A part of the plan on a part of the sheet: ``corner`` (plan metres) lies at the box's corner."""

    corner: Point
    scale: int
    box: Box

    def place(self, point: Point) -> tuple[float, float]:
        """Plan metres to millimetres on the sheet."""
        per_m = 1000.0 / self.scale
        return (
            self.box.x + (point[0] - self.corner[0]) * per_m,
            self.box.y + (point[1] - self.corner[1]) * per_m,
        )


@dataclass(frozen=True, slots=True)
class Tile:
    """One sheet of several: its column and row, counted from 0, of so many."""

    window: Window
    column: int
    row: int
    columns: int
    rows: int

    @property
    def name(self) -> str:
        """``B2``: the second column's second sheet."""
        return tile_name(self.column, self.row)


def tile_name(column: int, row: int) -> str:
    """Letters for columns, numbers for rows, both counted from 0: (1, 1) is ``B2``."""
    letters = ""
    while True:
        letters = chr(ord("A") + column % 26) + letters
        column = column // 26 - 1
        if column < 0:
            return f"{letters}{row + 1}"


def extent(rings: Iterable[Iterable[Point]]) -> tuple[Point, Point]:
    """The least and greatest corner of some outlines."""
    corners = np.array([p for ring in rings for p in ring])
    (x0, y0), (x1, y1) = corners.min(axis=0), corners.max(axis=0)
    return (float(x0), float(y0)), (float(x1), float(y1))


def centred(low: Point, high: Point, scale: int, box: Box) -> Window:
    """A window in which some ground lies in the middle across, at the top."""
    wide = (high[0] - low[0]) * 1000.0 / scale
    left = box.x + max(box.width - wide, 0.0) / 2
    return Window(low, scale, Box(left, box.y, box.width, box.height))


def fits(low: Point, high: Point, scale: int, box: Box) -> bool:
    """Whether some ground has room in a box at a scale."""
    per_m = 1000.0 / scale
    return (high[0] - low[0]) * per_m <= box.width + 1e-6 and (high[1] - low[1]) * per_m <= box.height + 1e-6


def tiles(low: Point, high: Point, scale: int, box: Box) -> Iterator[Tile]:
    """Sheets that show all of some ground at a scale, row by row, each overlapping its neighbours."""
    per_m = 1000.0 / scale
    columns = sheets_across((high[0] - low[0]) * per_m, box.width)
    rows = sheets_across((high[1] - low[1]) * per_m, box.height)
    for row in range(rows):
        for column in range(columns):
            corner = (
                low[0] + column * (box.width - OVERLAP_MM) / per_m,
                low[1] + row * (box.height - OVERLAP_MM) / per_m,
            )
            yield Tile(Window(corner, scale, box), column, row, columns, rows)


def sheets_across(length_mm: float, room_mm: float) -> int:
    """How many sheets cover a length when neighbours overlap."""
    if length_mm <= room_mm + 1e-6:
        return 1
    return ceil((length_mm - OVERLAP_MM) / (room_mm - OVERLAP_MM) - 1e-9)
