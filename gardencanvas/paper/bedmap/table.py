"""The planting table below a bed: laid out for a width and a size of letters, drawn in parts."""

from collections.abc import Sequence
from dataclasses import dataclass

from gardencanvas.paper.bedmap.marks import draw_mark
from gardencanvas.paper.bedmap.rows import PLANT_OUT, SOW, Row
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.language import mark, say

SIZES = (8.5, 8.0, 7.5)  # of letters, the first that has room
_LEADING = 1.3
_PAD_MM = 1.4
_TICK_MM = 2.4
_WIDE_MM = 230.0
_WIDE = (13, 44, 19, 24, 15, 22, 22, 36, 22, 56)  # of the columns, millimetres or shares of less
_NARROW = (11, 28, 16, 24, 12, 22, 22, 35, 26, 27)
_NAMES = (
    mark("crop, variety"), mark("plants"), mark("every"), mark("deep"), mark("sow"), mark("plant out"),
    mark("harvest"), mark("fit"), mark("shares with"),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Table:
    """Rows with their heights, for one size of letters."""

    rows: tuple[Row, ...]
    points: float
    widths: tuple[float, ...]
    names: tuple[str, ...]
    heights: tuple[float, ...]

    @property
    def line(self) -> float:
        """Height of a line of words, millimetres."""
        return self.points / 72 * 25.4 * _LEADING

    @property
    def head(self) -> float:
        """Height of the heading."""
        return self.line + 1.6

    @property
    def height(self) -> float:
        """Of the whole table, its heading included; nothing where it has no row."""
        return self.head + sum(self.heights) if self.rows else 0.0


def table_of(sheet: Sheet, rows: Sequence[Row], points: float) -> Table:
    """Lay rows out for the sheet's width."""
    columns = _WIDE if sheet.box.width > _WIDE_MM else _NARROW
    unit = sheet.box.width / sum(columns)
    widths = tuple(wide * unit for wide in columns)
    table = Table(tuple(rows), points, widths, ("", *(say(name) for name in _NAMES)), ())
    heights = tuple(_height(sheet, table, row) for row in rows)
    return Table(table.rows, points, widths, table.names, heights)


def _height(sheet: Sheet, table: Table, row: Row) -> float:
    most = max(
        sheet.lines_of(cell, _room(table, i), table.points, bold=i == 1) for i, cell in enumerate(row.cells)
    )
    below = sum(sheet.lines_of(text, _below_width(table), table.points) for text in row.below)
    return (most + below) * table.line + _PAD_MM


def _room(table: Table, column: int) -> float:
    """Width for a cell's words."""
    return table.widths[column] - 1.5 - (_TICK_MM + 1.2 if column in (SOW, PLANT_OUT) else 0.0)


def _below_width(table: Table) -> float:
    return sum(table.widths[1:]) - 1.0


def draw_table(sheet: Sheet, table: Table, rows: Sequence[int], top: float) -> float:
    """Draw some rows by index below their heading; where they end."""
    x = 0.0
    for name, width in zip(table.names, table.widths, strict=True):
        sheet.text(Box(x, top, width - 1, table.line), name, table.points - 0.5)
        x += width
    sheet.pen(0.35)
    y = top + table.head
    sheet.line(0, y - 0.9, sheet.box.width, y - 0.9)
    for index in rows:
        _draw(sheet, table, table.rows[index], y)
        y += table.heights[index]
        sheet.pen(0.1)
        sheet.line(0, y - 0.9, sheet.box.width, y - 0.9)
    return y


def _draw(sheet: Sheet, table: Table, row: Row, y: float) -> None:
    x, lines = 0.0, 1
    for i, (cell, width) in enumerate(zip(row.cells, table.widths, strict=True)):
        if i == 0:
            draw_mark(sheet, row.mark, 1.6, y + table.line / 2, 2.0)
            sheet.text(Box(3.6, y, width - 3.6, table.line), cell, table.points + 0.5, bold=True)
        else:
            left = x
            if i in (SOW, PLANT_OUT) and cell[:1].isdigit():
                sheet.pen(0.2)
                sheet.fill(black=False)
                sheet.square(x, y + (table.line - _TICK_MM) / 2, _TICK_MM)
                left += _TICK_MM + 1.2
            room = _room(table, i)
            lines = max(lines, sheet.lines_of(cell, room, table.points, bold=i == 1))
            sheet.text(Box(left, y, room, 400), cell, table.points, bold=i == 1, lines=True)
        x += width
    y += lines * table.line
    for text in row.below:
        sheet.text(Box(table.widths[0], y, _below_width(table), 400), text, table.points, lines=True)
        y += sheet.lines_of(text, _below_width(table), table.points) * table.line


def batches(table: Table, first_room: float, room: float) -> list[list[int]]:
    """Which rows stand on the bed's own page, and which on each page after it."""
    pages: list[list[int]] = [[]]
    left = first_room - table.head
    for index, height in enumerate(table.heights):
        if height > left and (pages[-1] or len(pages) == 1):
            pages.append([])
            left = room - table.head
        pages[-1].append(index)
        left -= height
    return pages
