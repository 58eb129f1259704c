"""Lists as pages: a heading, groups, and a table whose cells wrap; a box to tick where one is wanted."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtGui import QPainter, QPicture

from gardencanvas.paper.document import Document, Page, Setup, fonts_ready
from gardencanvas.paper.sheet import Box, Sheet

_POINTS = 8.5
_LINE_MM = 4.0
_PAD_MM = 1.0
_HEAD_MM = 16.0
_FOOT_MM = 7.0
_TICK_MM = 3.2


@dataclass(frozen=True, slots=True)
class Column:
    """A column: its heading, its share of the width, and how its cells lie."""

    heading: str
    share: float
    align: str = "left"


@dataclass(frozen=True, slots=True)
class Line:
    """A row of cells; ``tick``: a box before it, ticked or empty; None for no box."""

    cells: tuple[str, ...]
    tick: bool | None = None


@dataclass(frozen=True, slots=True)
class Group:
    """Rows under a heading of their own; an empty one has none."""

    heading: str
    lines: tuple[Line, ...]


@dataclass(frozen=True, slots=True)
class _Placed:
    y: float
    height: float
    what: Line | str


def listing(
    title: str, subtitle: str, columns: Sequence[Column], groups: Sequence[Group], setup: Setup | None = None
) -> Document:
    """A list as a document; a group's heading is never the last line of a page."""
    fonts_ready()
    setup = setup or Setup(landscape=False)
    lists = _broken(columns, groups, setup.box)
    pages = tuple(
        _page(title, subtitle, columns, placed, (number, len(lists)))
        for number, placed in enumerate(lists, 1)
    )
    return Document(title, setup, pages)


def _broken(columns: Sequence[Column], groups: Sequence[Group], box: Box) -> list[list[_Placed]]:
    """What stands where on which page."""
    top, bottom = _HEAD_MM + 6.0, box.height - _FOOT_MM
    pages: list[list[_Placed]] = [[]]
    y = top
    with _Measuring(box) as sheet:
        for what, height, keep in _items(columns, groups, sheet):
            if y + height + keep > bottom and pages[-1]:
                pages.append([])
                y = top
            pages[-1].append(_Placed(y, height, what))
            y += height
    return pages


def _items(
    columns: Sequence[Column], groups: Sequence[Group], sheet: Sheet
) -> Iterator[tuple[Line | str, float, float]]:
    """Headings and lines with their height, and how much must fit below a heading."""
    for group in groups:
        heights = [_height(columns, line, sheet) for line in group.lines]
        if group.heading and heights:
            yield group.heading, 7.5, heights[0]
        for line, height in zip(group.lines, heights, strict=True):
            yield line, height, 0.0


class _Measuring:
    """A sheet to measure text on, with nothing drawn."""

    def __init__(self, box: Box) -> None:
        self._picture = QPicture()
        self._painter = QPainter()
        self._box = box

    def __enter__(self) -> Sheet:
        self._painter.begin(self._picture)
        return Sheet(self._painter, 1200 / 25.4, self._box)

    def __exit__(self, *_: object) -> None:
        self._painter.end()


def _height(columns: Sequence[Column], line: Line, sheet: Sheet) -> float:
    most = max(
        sheet.lines_of(cell, width - 2.0, _POINTS)
        for cell, (_, width) in zip(line.cells, _spans(columns, line, sheet.box), strict=True)
    )
    return most * _LINE_MM + _PAD_MM


def _spans(columns: Sequence[Column], line: Line | None, box: Box) -> list[tuple[float, float]]:
    """Left side and width of each column."""
    begin = _TICK_MM + 2.5 if line is not None and line.tick is not None else 0.0
    whole = sum(c.share for c in columns)
    x, found = 0.0, []
    for column in columns:
        width = box.width * column.share / whole
        left = max(x, begin)
        found.append((left, x + width - left))
        x += width
    return found


def _page(
    title: str, subtitle: str, columns: Sequence[Column], placed: Sequence[_Placed], of: tuple[int, int]
) -> Page:
    def draw(sheet: Sheet) -> None:
        box = sheet.box
        sheet.text(Box(0, 0, box.width * 0.8, 7), title, 14, bold=True)
        sheet.text(Box(0, 7.5, box.width, 4.5), subtitle, 8.5)
        number = f"{of[0]} / {of[1]}"
        sheet.text(Box(box.width * 0.8, 0, box.width * 0.2, 5), number, 8.5, align="right")
        for column, (x, width) in zip(columns, _spans(columns, None, box), strict=True):
            place = Box(x, _HEAD_MM, width - 2.0, _LINE_MM)
            sheet.text(place, column.heading, 7.5, bold=True, align=column.align)
        sheet.pen(0.3)
        sheet.line(0, _HEAD_MM + 4.8, box.width, _HEAD_MM + 4.8)
        for each in placed:
            _draw(sheet, columns, each)

    return draw


def _draw(sheet: Sheet, columns: Sequence[Column], placed: _Placed) -> None:
    if isinstance(placed.what, str):
        sheet.text(Box(0, placed.y + 1.5, sheet.box.width, 5.5), placed.what, 10, bold=True)
        return
    line = placed.what
    for column, cell, (x, width) in zip(columns, line.cells, _spans(columns, line, sheet.box), strict=True):
        sheet.text(
            Box(x, placed.y + 0.4, width - 2.0, placed.height), cell, _POINTS, align=column.align, lines=True
        )
    if line.tick is not None:
        sheet.pen(0.25)
        sheet.square(0.3, placed.y + 0.8, _TICK_MM)
        if line.tick:
            sheet.pen(0.5)
            sheet.line(0.8, placed.y + 2.4, 1.7, placed.y + 3.4)
            sheet.line(1.7, placed.y + 3.4, 3.4, placed.y + 1.0)
    sheet.pen(0.1)
    sheet.line(0, placed.y + placed.height, sheet.box.width, placed.y + placed.height)
