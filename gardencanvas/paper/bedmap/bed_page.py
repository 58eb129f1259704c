"""The pages of one bed: its drawings, one for each stage, the planting table, cautions, room for notes."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from math import ceil

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.distances import Around, room_round
from gardencanvas.paper.bedmap.drawing import Numbered, draw_beds
from gardencanvas.paper.bedmap.furniture import (
    BARE_FOOT_MM,
    FOOT_MM,
    HEAD_MM,
    caution_height,
    draw_caution,
    draw_notes,
    heading,
)
from gardencanvas.paper.bedmap.ground import Window, extent
from gardencanvas.paper.bedmap.plan import Options, Plan
from gardencanvas.paper.bedmap.rows import Row, cautions, rows_of
from gardencanvas.paper.bedmap.sheets import sheets_of
from gardencanvas.paper.bedmap.table import SIZES, Table, batches, draw_table, table_of
from gardencanvas.paper.document import Page, measuring
from gardencanvas.paper.sheet import SCALES, Box, Sheet
from gardencanvas.words.language import say
from gardencanvas.words.plain import day, span

_LEAST_DRAWING_MM, _MOST_CAUTION_MM = 45.0, 45.0
_STAGE_MM = 5.5
_ABOVE_TABLE_MM = 2.0
_SMALL, _MUCH_LARGER = 40, 0.7  # a plant every 10 cm is 2.5 mm from the next at 1:40
Draw = tuple[Page, int | None]  # what is drawn, and the scale at the foot where there is one


@dataclass(frozen=True, slots=True)
class Cell:
    """Where one stage of a bed is drawn."""

    on: date | None
    room: Box
    window: Window


@dataclass(frozen=True, slots=True)
class _Bed:
    """A bed with what its pages say."""

    plan: Plan
    bed: Bed
    numbered: Numbered
    rows: tuple[Row, ...]
    caution: str

    @property
    def when(self) -> str:
        """From the first start to the last harvest."""
        plan, plantings = self.plan, [p for _, p in self.numbered]
        if not plantings:
            return str(plan.layout.year)
        first = min(p.start.on for p in plantings)
        last = max(plan.report.plantings[p.id].harvest_last for p in plantings)
        return say("all of the year, {days}", days=span(first, last))


def bed_pages(plan: Plan, bed: Bed, box: Box, options: Options) -> Iterator[Draw]:
    """The pages of one bed, or sheets that overlap where it is too large for one."""
    numbered = list(enumerate(plan.inside(bed), start=1))
    inside: list[Planting] = [p for _, p in numbered]
    it = _Bed(plan, bed, numbered, rows_of(plan, bed, numbered), cautions(plan, inside))
    with measuring(box) as sheet:
        high = caution_height(sheet, it.caution)
        own = high > _MOST_CAUTION_MM
        caution = 0.0 if own else high
        table = table_of(sheet, it.rows, SIZES[-1])
        room, bare = box.height - HEAD_MM - FOOT_MM - caution, box.height - HEAD_MM - BARE_FOOT_MM
        scale, cells = _largest(it, box, options, table.height, room)
        if not cells:
            yield from _over_sheets(it, box, options, scale)
            drawn, pages = 0, batches(table, bare - caution, bare) if it.rows else []
        else:
            top = max(cell.room.bottom for cell in cells) + _ABOVE_TABLE_MM
            below = box.height - FOOT_MM - caution - top
            sized = (table_of(sheet, it.rows, points) for points in SIZES)
            table = next((t for t in sized if t.height <= below), table)
            drawn, pages = 1, _shared(table, below, bare)
            yield _bed_page(it, scale, cells, (table, pages[0]), top, caution=not own), scale
    for i, rows in enumerate(pages[drawn:]):
        yield _table_page(it, table, rows, caution=not own and not drawn and i == 0), None
    if own:
        yield _table_page(it, table, [], caution=True), None


def _over_sheets(it: _Bed, box: Box, options: Options, scale: int) -> Iterator[Draw]:
    """A bed that is too large for a page, once for each stage."""
    days: Sequence[date | None] = options.stages or (None,)
    for on in days:
        when = day(on) if on is not None else say("all that is planted in it")
        shown = [(it.bed, _standing(it.plan, it.numbered, on))]
        yield from sheets_of(it.plan, shown, it.bed.name, when, box, scale, on)


def _shared(table: Table, below: float, room: float) -> list[list[int]]:
    """Which rows stand below the drawing and on which page after it; few are not parted from many."""
    pages = batches(table, below, room)
    if len(pages) > 1 and 3 * len(pages[0]) < len(table.rows):
        return [[], *batches(table, room, room)]
    return pages


def _largest(it: _Bed, box: Box, options: Options, table_mm: float, room: float) -> tuple[int, list[Cell]]:
    """The drawing above as much of the table as there is; alone on its page where that is much larger."""

    def within(high: float) -> tuple[int, list[Cell]]:
        area = Box(0.0, HEAD_MM - 1.0, box.width, max(high - _ABOVE_TABLE_MM, _LEAST_DRAWING_MM))
        return arranged(it.bed, room_round(it.bed, it.numbered), area, options)

    scale, cells = within(room - max(min(table_mm, room * 0.5), 6.0))
    alone, alone_cells = within(room)
    if alone_cells and (not cells or (scale > _SMALL and alone <= scale * _MUCH_LARGER)):
        return alone, alone_cells
    return scale, cells


def _standing(plan: Plan, numbered: Numbered, on: date | None) -> Numbered:
    return [(n, p) for n, p in numbered if on is None or plan.stands(p, on)]


def arranged(bed: Bed, around: Around, area: Box, options: Options) -> tuple[int, list[Cell]]:
    """The scale, and where each stage is drawn: in as many columns as let it be largest; none: no room."""
    stages: Sequence[date | None] = options.stages or (None,)
    low, high = extent([bed.outline])
    wide_m, high_m = high[0] - low[0], high[1] - low[1]
    title = _STAGE_MM if options.stages else 0.0
    for scale in (options.scale,) if options.scale else SCALES:
        wide = wide_m * 1000 / scale + around.left + around.right
        tall = high_m * 1000 / scale + around.top + around.bottom + title
        for columns in range(1, len(stages) + 1):
            rows = ceil(len(stages) / columns)
            if columns * wide <= area.width + 1e-6 and rows * tall <= area.height + 1e-6:
                return scale, [
                    _cell(
                        on,
                        (i % columns, i // columns),
                        columns,
                        (wide, tall),
                        area,
                        scale,
                        low,
                        around,
                        title,
                    )
                    for i, on in enumerate(stages)
                ]
    return options.scale or SCALES[-1], []


def _cell(
    on: date | None, at: tuple[int, int], columns: int, size: tuple[float, float], area: Box, scale: int,
    low: tuple[float, float], around: Around, title: float,
) -> Cell:  # fmt: skip
    """A stage's place; bed and measures in the middle of its column."""
    (wide, tall), share = size, area.width / columns
    room = Box(area.x + at[0] * share, area.y + at[1] * tall + title, share, tall - title)
    bed = Box(
        room.x + max(share - wide, 0.0) / 2 + around.left, room.y + around.top,
        wide - around.left - around.right, room.height - around.top - around.bottom,
    )  # fmt: skip
    return Cell(on, room, Window(low, scale, bed))


def _bed_page(
    it: _Bed, scale: int, cells: Sequence[Cell], table: tuple[Table, Sequence[int]], top: float,
    *, caution: bool,
) -> Page:  # fmt: skip
    low, high = extent([it.bed.outline])

    def draw(sheet: Sheet) -> None:
        plan = it.plan
        size = plan.measure.sides(high[0] - low[0], high[1] - low[1])
        days = [cell.on for cell in cells if cell.on is not None]
        when = say("as on {days}", days=", ".join(day(on) for on in days)) if days else it.when
        heading(sheet, plan, it.bed.name, f"1:{scale} · {size}", when)
        for cell in cells:
            if cell.on is not None:
                sheet.text(Box(cell.room.x, cell.room.y - 4.5, 60, 5), day(cell.on), 10, bold=True)
            shown = _standing(plan, it.numbered, cell.on)
            draw_beds(sheet, plan, [(it.bed, shown)], cell.window, cell.room, cell.on)
        said = say("What is planted stands on the next page.") if it.rows else say("Nothing is planted here.")
        _below(sheet, it, table, top, FOOT_MM, caution=caution, else_said=said)

    return draw


def _table_page(it: _Bed, table: Table, rows: Sequence[int], *, caution: bool) -> Page:
    """Some of the table, or cautions too long to stand beside anything else."""

    def draw(sheet: Sheet) -> None:
        heading(sheet, it.plan, it.bed.name, say("what is planted") if rows else say("cautions"), it.when)
        _below(sheet, it, (table, rows), HEAD_MM, BARE_FOOT_MM, caution=caution)

    return draw


def _below(
    sheet: Sheet, it: _Bed, table: tuple[Table, Sequence[int]], top: float, foot_mm: float,
    *, caution: bool, else_said: str = "",
) -> None:  # fmt: skip
    """Table, cautions above the foot, and lines for notes in between."""
    bottom = sheet.box.height - foot_mm
    if caution and it.caution:
        draw_caution(sheet, it.caution, bottom)
        bottom -= caution_height(sheet, it.caution)
    end = top
    if table[1]:
        end = draw_table(sheet, *table, top)
    elif else_said:
        sheet.text(Box(0, top, sheet.box.width, 5), else_said, 9)
        end = top + 6.0
    draw_notes(sheet, end, bottom)
