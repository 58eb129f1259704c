"""Puts a bed map together: overview, a page for each bed and stage, sheets that overlap where it is large."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from pathlib import Path

from PySide6.QtGui import QPainter, QPicture
from shapely import Polygon
from shapely import box as shapely_box

from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.drawing import AROUND_MM, LEFT_MM, draw_bed
from gardencanvas.paper.bedmap.furniture import FOOT_MM, HEAD_MM, foot, heading
from gardencanvas.paper.bedmap.ground import OVERLAP_MM, Tile, Window, centred, extent, fits, tiles
from gardencanvas.paper.bedmap.overview import draw_overview, draw_sheets, overlap_marks
from gardencanvas.paper.bedmap.plan import Options, Plan
from gardencanvas.paper.bedmap.table import Table, batches, cautions, rows_of
from gardencanvas.paper.document import RESOLUTION, Document, Page, Paper, Setup, Told, fonts_ready, write_pdf
from gardencanvas.paper.sheet import SCALES, Box, Sheet
from gardencanvas.words.plain import day

_LEAST_DRAWING_MM = 45.0
_CAUTION_POINTS = 7.5
Draw = tuple[Page, int]  # what is drawn and the scale at the foot


def bed_map(plan: Plan, setup: Setup | None = None, options: Options | None = None) -> Document:
    """The bed map of a layout as a document.

    Raises
    ------
    Refusal
        If the layout has no bed, or none of the beds wanted.
    """
    fonts_ready()
    setup, options = setup or Setup(), options or Options()
    beds = [b for b in plan.layout.beds if not options.beds or b.id in options.beds]
    if not beds:
        raise Refusal("There is no bed in this layout yet: draw one first.")
    drawn: list[Draw] = []
    if options.overview:
        drawn.append(draw_overview(plan, setup.box, options.scale))
    for bed in beds:
        drawn += _bed_pages(plan, bed, setup.box, options)
    count = len(drawn)
    title = f"{plan.garden.name}: {plan.layout.name}, {plan.layout.year}"
    return Document(
        title,
        setup,
        tuple(_numbered(plan, page, scale, (i, count)) for i, (page, scale) in enumerate(drawn, 1)),
    )


def _numbered(plan: Plan, page: Page, scale: int, of: tuple[int, int]) -> Page:
    def draw(sheet: Sheet) -> None:
        page(sheet)
        foot(sheet, plan, scale, of)

    return draw


def _bed_pages(plan: Plan, bed: Bed, box: Box, options: Options) -> Iterator[Draw]:
    """The pages of one bed: drawings with the table below, what of it does not fit; or overlapping sheets."""
    inside = plan.inside(bed)
    numbered = list(enumerate(inside, start=1))
    low, high = extent([bed.outline])
    stages: Sequence[date | None] = options.stages or (None,)
    caution = cautions(plan, inside)
    table = _measured(plan, numbered, box)
    foot_room = FOOT_MM + _caution_height(caution, box)
    wanted = table.height if inside else 6.0
    room = box.height - HEAD_MM - foot_room
    drawing = max(room - min(wanted, room * 0.5) - 6.0, _LEAST_DRAWING_MM * len(stages))
    each = Box(
        LEFT_MM, HEAD_MM + AROUND_MM, box.width - LEFT_MM - AROUND_MM,
        drawing / len(stages) - 2 * AROUND_MM,
    )  # fmt: skip
    scale = options.scale or next((s for s in SCALES if fits(low, high, s, each)), SCALES[-1])
    if not fits(low, high, scale, each):
        yield from _sheets(plan, bed, numbered, box, scale)
        top = HEAD_MM + 2.0
    else:
        high_mm = (high[1] - low[1]) * 1000 / scale + 2 * AROUND_MM
        tops = [HEAD_MM + 1.0 + i * high_mm for i in range(len(stages))]
        top = tops[-1] + high_mm + 2.0
    pages = batches(table, box.height - foot_room - top, room - 2.0) if inside else [[]]
    if fits(low, high, scale, each):
        yield _bed_page(plan, bed, numbered, scale, (stages, tops), (pages[0], top, caution)), scale
        pages = pages[1:]
    for rows in pages:
        yield _table_page(plan, bed, numbered, rows, caution), scale


def _bed_page(
    plan: Plan,
    bed: Bed,
    numbered: Sequence[tuple[int, Planting]],
    scale: int,
    drawings: tuple[Sequence[date | None], Sequence[float]],
    below: tuple[list[int], float, str],
) -> Page:
    low, high = extent([bed.outline])
    rows, top, caution = below

    def draw(sheet: Sheet) -> None:
        size = plan.measure.sides(high[0] - low[0], high[1] - low[1])
        days = [on for on in drawings[0] if on is not None]
        when = "as on " + ", ".join(day(on) for on in days) if days else "all that is planted in it this year"
        heading(sheet, plan, bed.name, f"1:{scale} · {size}", when)
        for on, y in zip(*drawings, strict=True):
            shown = [(n, p) for n, p in numbered if on is None or plan.stands(p, on)]
            room = Box(LEFT_MM, y + AROUND_MM, sheet.box.width - LEFT_MM - AROUND_MM, 0.0)
            window = centred(low, high, scale, room)
            tall = (high[1] - low[1]) * 1000 / scale
            if on is not None:
                sheet.text(Box(0, y - 0.5, 60, 4.5), day(on), 9, bold=True)
            draw_bed(sheet, plan, bed, shown, _tall(window, tall))
        _below(sheet, plan, numbered, rows, top, caution)

    return draw


def _tall(window: Window, tall: float) -> Window:
    """The window as high as what it shows."""
    return replace(window, box=Box(window.box.x, window.box.y, window.box.width, tall))


def _table_page(
    plan: Plan, bed: Bed, numbered: Sequence[tuple[int, Planting]], rows: list[int], caution: str
) -> Page:
    def draw(sheet: Sheet) -> None:
        heading(sheet, plan, bed.name, "what is planted", "all that is planted in it this year")
        _below(sheet, plan, numbered, rows, HEAD_MM + 2.0, caution)

    return draw


def _below(
    sheet: Sheet,
    plan: Plan,
    numbered: Sequence[tuple[int, Planting]],
    rows: list[int],
    top: float,
    caution: str,
) -> None:
    if numbered:
        Table(sheet, rows_of(plan, numbered)).draw(rows, top)
    else:
        sheet.text(Box(0, top, sheet.box.width, 5), "Nothing is planted here.", 9)
    if caution:
        high = _caution_height(caution, sheet.box)
        y = sheet.box.height - FOOT_MM - high
        sheet.pen(0.3)
        sheet.line(0, y, sheet.box.width, y)
        sheet.text(Box(0, y + 0.8, sheet.box.width, high), caution, _CAUTION_POINTS, lines=True)


def _sheets(
    plan: Plan, bed: Bed, numbered: Sequence[tuple[int, Planting]], box: Box, scale: int
) -> Iterator[Draw]:
    """An overview of the sheets, then each of them."""
    low, high = extent([bed.outline])
    pad = 12.0 * scale / 1000
    room = Box(2.0, HEAD_MM + 3.0, box.width - 4.0, box.height - HEAD_MM - FOOT_MM - 5.0)
    ground = bed_ground(bed)
    every = [
        tile
        for tile in tiles((low[0] - pad * 2, low[1] - pad), (high[0] + pad / 2, high[1] + pad), scale, room)
        if ground.intersects(_plan_box(tile))
    ]
    yield draw_sheets(plan, bed, every, box)
    for tile in every:
        yield _sheet(plan, bed, numbered, tile), scale


def _plan_box(tile: Tile) -> Polygon:
    """The part of the plan that a sheet shows, without what its neighbours show too."""
    per_m = 1000.0 / tile.window.scale
    (x, y), box = tile.window.corner, tile.window.box
    edge = OVERLAP_MM / per_m
    left, top = (edge if tile.column else 0.0), (edge if tile.row else 0.0)
    return shapely_box(x + left, y + top, x + box.width / per_m, y + box.height / per_m)


def _sheet(plan: Plan, bed: Bed, numbered: Sequence[tuple[int, Planting]], tile: Tile) -> Page:
    def draw(sheet: Sheet) -> None:
        heading(
            sheet,
            plan,
            f"{bed.name}, sheet {tile.name}",
            f"1:{tile.window.scale}",
            "all that is planted in it",
        )
        sheet.painter.save()
        sheet.painter.setClipRect(sheet.rect(tile.window.box))
        draw_bed(sheet, plan, bed, numbered, tile.window)
        sheet.painter.restore()
        overlap_marks(sheet, tile)

    return draw


def _measured(plan: Plan, numbered: Sequence[tuple[int, Planting]], box: Box) -> Table:
    """The table laid out on a sheet that is thrown away: its heights decide what has room."""
    picture, painter = QPicture(), QPainter()
    painter.begin(picture)
    try:
        return Table(Sheet(painter, RESOLUTION / 25.4, box), rows_of(plan, numbered))
    finally:
        painter.end()


def _caution_height(caution: str, box: Box) -> float:
    if not caution:
        return 0.0
    picture, painter = QPicture(), QPainter()
    painter.begin(picture)
    try:
        sheet = Sheet(painter, RESOLUTION / 25.4, box)
        return sheet.lines_of(caution, box.width, _CAUTION_POINTS) * 3.4 + 2.0
    finally:
        painter.end()


def write_bedmap(
    plan: Plan,
    path: Path,
    paper: Paper = "a4",
    scale: int | None = None,
    *,
    landscape: bool = True,
    options: Options | None = None,
    told: Told | None = None,
) -> int:
    """Write the bed map as PDF; the number of its pages.

    Raises
    ------
    Refusal
        If there is no bed.
    CannotWrite
        If the file cannot be written; nothing half-written stays.
    GivenUp
        If ``told`` returned False.
    """
    wanted = options or Options(scale=scale)
    return write_pdf(bed_map(plan, Setup(paper, landscape), wanted), path, told)
