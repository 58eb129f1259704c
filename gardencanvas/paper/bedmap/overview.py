"""The whole garden on one page: beds, paths, what throws shade, numbers of plantings, and who they are."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from gardencanvas.garden.ground import Bed, Fixture
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.drawing import draw_outline, edges_of, number_plantings
from gardencanvas.paper.bedmap.furniture import BARE_FOOT_MM, FOOT_MM, HEAD_MM, heading
from gardencanvas.paper.bedmap.ground import Window, centred, extent, fits
from gardencanvas.paper.bedmap.labels import Taken, put_words
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.bedmap.structures import draw_fixtures, draw_paths, draw_supports, name_paths
from gardencanvas.paper.bedmap.verdicts import draw_verdict, ground_of
from gardencanvas.paper.document import Page, measuring
from gardencanvas.paper.sheet import SCALES, Box, Sheet
from gardencanvas.words.language import say
from gardencanvas.words.plain import beds_counted, planting_name, plants_counted

_LEAST_INDEX_MM = 24.0
_MOST_DRAWING = 0.62  # of the page's height, where an index has to go below it
_COLUMN_MM, _GUTTER_MM = 84.0, 6.0
_NAME_POINTS, _POINTS, _LINE_MM = 8.5, 7.5, 3.6
_NAME_MM, _NAME_LINE_MM = 4.4, 4.1
Numbered = list[tuple[int, Planting]]


@dataclass(frozen=True, slots=True)
class _Block:
    """A bed in the index: its name and what is planted in it."""

    name: str
    text: str
    height: float


def overview_pages(plan: Plan, box: Box, scale: int | None) -> Iterator[tuple[Page, int | None]]:
    """All beds as large as fits, at most as wanted, and below what is planted in them."""
    things: list[Bed | Fixture] = [*plan.layout.beds, *plan.garden.fixtures]
    low, high = extent(t.outline for t in things)
    area = box.height - HEAD_MM - FOOT_MM
    with measuring(box) as sheet:
        blocks = _blocks(plan, sheet)
    columns = max(int((box.width + _GUTTER_MM) // _COLUMN_MM), 1)
    index = sum(block.height for block in blocks) / columns * 1.2 + 6.0
    most = max(area - max(index, _LEAST_INDEX_MM), area * _MOST_DRAWING)
    room = Box(4.0, HEAD_MM + 6.0, box.width - 8.0, most - 8.0)
    fitting = [s for s in SCALES if fits(low, high, s, room) and s >= (scale or 0)]
    chosen = fitting[0] if fitting else SCALES[-1]
    top = room.y + (high[1] - low[1]) * 1000 / chosen + 6.0
    pages = _in_columns(blocks, columns, box.height - FOOT_MM - top, box.height - BARE_FOOT_MM - HEAD_MM)
    window = centred(low, high, chosen, room)

    def draw(sheet: Sheet) -> None:
        beds = beds_counted(len(plan.layout.beds))
        plants = plants_counted(sum(p.plants for p in plan.layout.plantings))
        heading(sheet, plan, plan.garden.name, f"1:{chosen}", f"{beds}, {plants}")
        _ground(sheet, plan, window, Box(0.0, HEAD_MM, box.width, top - HEAD_MM - 1.0))
        _index(sheet, pages[0], top)

    yield draw, chosen
    for rest in pages[1:]:
        yield _index_page(plan, rest), None


def _ground(sheet: Sheet, plan: Plan, window: Window, room: Box) -> None:
    """Everything on the ground, then the words: none over another."""
    inside = [(bed, list(enumerate(plan.inside(bed), start=1))) for bed in plan.layout.beds]
    every = [each for _, numbered in inside for each in numbered]
    taken = Taken(np.empty((0, 2)), room, edges_of(plan, every, window))
    with sheet.clipped(room):
        draw_paths(sheet, plan.layout.paths, window)
        for bed, numbered in inside:
            draw_outline(sheet, bed, window)
            for _, planting in numbered:
                fit = plan.report.plantings[planting.id]
                draw_verdict(sheet, fit.verdict, ground_of(planting.pattern, window))
        draw_supports(sheet, plan.layout.supports, window)
        for bed, _ in inside:
            _name(sheet, plan, bed, window, taken)
        draw_fixtures(sheet, plan.garden.fixtures, window, taken)
        for _, numbered in inside:
            number_plantings(sheet, plan, numbered, window, taken)
        name_paths(sheet, plan, window, taken)


def _name(sheet: Sheet, plan: Plan, bed: Bed, window: Window, taken: Taken) -> None:
    """A bed's name and measures above it, or only its name, or that in the bed."""
    (x0, y0), (x1, y1) = extent([bed.outline])
    x, y = window.place((x0, y0))
    right, bottom = window.place((x1, y1))
    for text in (f"{bed.name} · {plan.measure.sides(x1 - x0, y1 - y0)}", bed.name):
        wide = sheet.width_of(text, _NAME_POINTS - 0.5, bold=True) + 0.8
        for left, top in ((x, y - _NAME_MM), (right - wide, y - _NAME_MM), (x, bottom + 0.6)):
            place = Box(left, top, wide, _NAME_MM - 0.6)
            if taken.free(place):
                taken.take(place)
                sheet.white_box(place)
                sheet.text(Box(left, top, wide + 0.5, place.height), text, _NAME_POINTS - 0.5, bold=True)
                return
    put_words(sheet, bed.name, [((x + right) / 2, (y + bottom) / 2)], taken)


def _blocks(plan: Plan, sheet: Sheet) -> list[_Block]:
    columns = max(int((sheet.box.width + _GUTTER_MM) // _COLUMN_MM), 1)
    wide = _wide(sheet.box, columns)
    blocks = []
    for bed in plan.layout.beds:
        names = [f"{n} {planting_name(plan.catalogue, p)}" for n, p in enumerate(plan.inside(bed), start=1)]
        text = ", ".join(names) or say("nothing planted")
        named = sheet.lines_of(bed.name, wide, _NAME_POINTS, bold=True) * _NAME_LINE_MM + 0.4
        high = named + sheet.lines_of(text, wide, _POINTS) * _LINE_MM + 1.8
        blocks.append(_Block(bed.name, text, high))
    return blocks


def _wide(box: Box, columns: int) -> float:
    return (box.width + _GUTTER_MM) / columns - _GUTTER_MM


def _in_columns(
    blocks: Sequence[_Block], columns: int, first: float, rest: float
) -> list[list[list[_Block]]]:
    """Blocks by page and column; a page's columns are filled one after the other."""
    pages: list[list[list[_Block]]] = [[[]]]
    balanced = sum(block.height for block in blocks) / columns * 1.1 + max(b.height for b in blocks) / 2
    left = room = min(first, balanced)
    for block in blocks:
        if block.height > left:
            if len(pages[-1]) < columns:
                pages[-1].append([])
            else:
                pages.append([[]])
                room = rest
            left = room
        pages[-1][-1].append(block)
        left -= block.height
    return pages


def _index(sheet: Sheet, columns: Sequence[Sequence[_Block]], top: float) -> None:
    count = max(int((sheet.box.width + _GUTTER_MM) // _COLUMN_MM), 1)
    wide = _wide(sheet.box, count)
    for i, blocks in enumerate(columns):
        x, y = i * (wide + _GUTTER_MM), top
        for block in blocks:
            named = sheet.lines_of(block.name, wide, _NAME_POINTS, bold=True) * _NAME_LINE_MM + 0.4
            sheet.text(Box(x, y, wide, 400), block.name, _NAME_POINTS, bold=True, lines=True)
            sheet.text(Box(x, y + named, wide, 400), block.text, _POINTS, lines=True)
            y += block.height


def _index_page(plan: Plan, columns: Sequence[Sequence[_Block]]) -> Page:
    def draw(sheet: Sheet) -> None:
        heading(sheet, plan, plan.garden.name, say("what is planted"), str(plan.layout.year))
        _index(sheet, columns, HEAD_MM)

    return draw
