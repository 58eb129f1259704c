"""The whole garden on one page, and the plan of sheets where a bed is laid over several."""

from collections.abc import Sequence
from itertools import pairwise

from gardencanvas.garden.ground import Bed, Fixture
from gardencanvas.paper.bedmap.furniture import FOOT_MM, HEAD_MM, heading
from gardencanvas.paper.bedmap.ground import OVERLAP_MM, Tile, centred, extent, fits
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.document import Page
from gardencanvas.paper.sheet import SCALES, Box, Sheet
from gardencanvas.words.plain import counted


def draw_overview(plan: Plan, box: Box, scale: int | None) -> tuple[Page, int]:
    """All beds, paths and fixtures with names and measures, as large as fits, at most as wanted."""
    things: list[Bed | Fixture] = [*plan.layout.beds, *plan.garden.fixtures]
    low, high = extent(t.outline for t in things)
    room = Box(4.0, HEAD_MM + 8.0, box.width - 8.0, box.height - HEAD_MM - FOOT_MM - 12.0)
    fitting = [s for s in SCALES if fits(low, high, s, room) and s >= (scale or 0)]
    chosen = fitting[0] if fitting else SCALES[-1]

    def draw(sheet: Sheet) -> None:
        heading(sheet, plan, plan.garden.name, f"1:{chosen}", counted(len(plan.layout.beds), "bed", "beds"))
        window = centred(low, high, chosen, room)
        for fixture in plan.garden.fixtures:
            sheet.pen(0.35, (3, 2))
            ring = [window.place(p) for p in fixture.outline]
            sheet.ring(ring)
            x = sum(p[0] for p in ring) / len(ring)
            y = sum(p[1] for p in ring) / len(ring)
            sheet.text(Box(x - 25, y - 2, 50, 4), fixture.name, 7, align="middle")
        for path in plan.layout.paths:
            sheet.pen(0.15, (6, 4))
            line = [window.place(p) for p in path.line]
            for (x0, y0), (x1, y1) in pairwise(line):
                sheet.line(x0, y0, x1, y1)
        for planting in plan.layout.plantings:
            sheet.pen(0.12)
            sheet.ring([window.place((float(x), float(y))) for x, y in planting.pattern.corners])
        for bed in plan.layout.beds:
            sheet.pen(0.5)
            ring = [window.place(p) for p in bed.outline]
            sheet.ring(ring)
            x, y = min(p[0] for p in ring), min(p[1] for p in ring)
            wide = max(p[0] for p in ring) - x
            (x0, y0), (x1, y1) = extent([bed.outline])
            name = f"{bed.name} · {plan.measure.sides(x1 - x0, y1 - y0)}"
            sheet.text(Box(x, y - 4.6, max(wide, 34), 4.4), name, 7.5, bold=True)

    return draw, chosen


def draw_sheets(plan: Plan, bed: Bed, every: Sequence[Tile], box: Box) -> tuple[Page, int]:
    """How the sheets of a bed lie: a small plan of it with their names."""
    first = every[0]
    per_m = 1000.0 / first.window.scale
    wide, high = first.window.box.width / per_m, first.window.box.height / per_m
    corners = [t.window.corner for t in every]
    low = (min(c[0] for c in corners), min(c[1] for c in corners))
    far = (max(c[0] for c in corners) + wide, max(c[1] for c in corners) + high)
    room = Box(10.0, HEAD_MM + 10.0, box.width - 20.0, box.height - HEAD_MM - FOOT_MM - 20.0)
    chosen = next((s for s in (*SCALES, 2000, 5000, 10_000) if fits(low, far, s, room)), 20_000)

    def draw(sheet: Sheet) -> None:
        said = counted(len(every), "sheet", "sheets")
        heading(sheet, plan, f"{bed.name}: how the sheets lie", f"1:{first.window.scale} on {said}")
        window = centred(low, far, chosen, room)
        sheet.pen(0.5)
        sheet.ring([window.place(p) for p in bed.outline])
        for tile in every:
            x, y = window.place(tile.window.corner)
            w, h = wide * 1000 / chosen, high * 1000 / chosen
            sheet.pen(0.2, (4, 2))
            sheet.ring([(x, y), (x + w, y), (x + w, y + h), (x, y + h)])
            sheet.text(Box(x, y + h / 2 - 3, w, 6), tile.name, 10, bold=True, align="middle")

    return draw, chosen


def overlap_marks(sheet: Sheet, tile: Tile) -> None:
    """Lines where neighbouring sheets begin, and their names at the edges."""
    box = tile.window.box
    sheet.pen(0.2, (2, 3))
    if tile.column > 0:
        sheet.line(box.x + OVERLAP_MM, box.y, box.x + OVERLAP_MM, box.y + box.height)
    if tile.column < tile.columns - 1:
        x = box.x + box.width - OVERLAP_MM
        sheet.line(x, box.y, x, box.y + box.height)
    if tile.row > 0:
        sheet.line(box.x, box.y + OVERLAP_MM, box.x + box.width, box.y + OVERLAP_MM)
    if tile.row < tile.rows - 1:
        y = box.y + box.height - OVERLAP_MM
        sheet.line(box.x, y, box.x + box.width, y)
    sheet.pen(0.25)
    sheet.ring([
        (box.x, box.y), (box.x + box.width, box.y), (box.x + box.width, box.y + box.height),
        (box.x, box.y + box.height),
    ])  # fmt: skip
