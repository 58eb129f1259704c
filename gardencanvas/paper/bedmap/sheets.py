"""Ground too large for one sheet: a plan of the sheets, then each of them, overlapping its neighbours."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from shapely import Polygon, union_all
from shapely import box as shapely_box

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground
from gardencanvas.garden.value import Point
from gardencanvas.paper.bedmap.distances import tape_steps
from gardencanvas.paper.bedmap.drawing import Shown, draw_beds
from gardencanvas.paper.bedmap.furniture import FOOT_MM, HEAD_MM, heading
from gardencanvas.paper.bedmap.ground import OVERLAP_MM, Tile, Window, centred, extent, fits, tile_name, tiles
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.bedmap.tape import Tape, tape_of
from gardencanvas.paper.document import Page
from gardencanvas.paper.sheet import SCALES, Box, Sheet
from gardencanvas.words.language import say, say_many
from gardencanvas.words.plain import Measure

RULER_MM = 6.0  # band along the upper and left edge in which the tape is read
_SCALES_OF_SHEETS = (*SCALES, 2000, 5000, 10_000, 20_000)
_PAD_MM = 6.0  # beyond the beds: their names stand there
_LEVEL_DEG = 1e-6
_NAME_WIDE_MM, _NAME_HIGH_MM = 18.0, 4.0


def sheets_of(
    plan: Plan, shown: Shown, title: str, when: str, box: Box, scale: int | None, on: date | None = None
) -> Iterator[tuple[Page, int]]:
    """An overview of the sheets, then each of them; sheets with no bed on them are left out.

    Without a scale, the largest at which all lies on one sheet.
    """
    low, high = extent([bed.outline for bed, _ in shown])
    scale = scale or _on_one_sheet(low, high, _room(box))
    pad = _PAD_MM * scale / 1000
    room = _room(box)
    ground = union_all([bed_ground(bed) for bed, _ in shown])
    every = [
        tile
        for tile in tiles((low[0] - pad, low[1] - pad), (high[0] + pad, high[1] + pad), scale, room)
        if ground.intersects(_own_part(tile))
    ]
    if len(every) > 1:
        yield _overview(plan, [bed for bed, _ in shown], every, title, box)
    names = {(t.column, t.row) for t in every}
    for tile in every:
        yield _sheet(plan, shown, tile, names, title, when, on), scale


def _room(box: Box) -> Box:
    """What a sheet shows: below the heading, beside the band where the tape is read."""
    return Box(
        RULER_MM, HEAD_MM + RULER_MM, box.width - RULER_MM, box.height - HEAD_MM - FOOT_MM - RULER_MM - 2
    )


def _on_one_sheet(low: Point, high: Point, room: Box) -> int:
    inner = room.grown(-_PAD_MM)
    return next((scale for scale in SCALES if fits(low, high, scale, inner)), SCALES[-1])


def _own_part(tile: Tile) -> Polygon:
    """The part of the plan that a sheet shows, without what its neighbours show too."""
    per_m = 1000.0 / tile.window.scale
    (x, y), box = tile.window.corner, tile.window.box
    edge = OVERLAP_MM / per_m
    left, top = (edge if tile.column else 0.0), (edge if tile.row else 0.0)
    return shapely_box(x + left, y + top, x + box.width / per_m, y + box.height / per_m)


def _sheet(
    plan: Plan, shown: Shown, tile: Tile, names: set[tuple[int, int]], title: str, when: str, on: date | None
) -> Page:
    neighbours = list(_neighbours(tile, names))
    part = _own_part(tile).buffer(OVERLAP_MM * tile.window.scale / 1000)

    def draw(sheet: Sheet) -> None:
        of = title if len(names) == 1 else say("{what}, sheet {sheet}", what=title, sheet=tile.name)
        heading(sheet, plan, of, f"1:{tile.window.scale}", when)
        box = tile.window.box
        seen = [(bed, some) for bed, some in shown if bed_ground(bed).intersects(part)]
        if seen:
            named = [each.box for each in neighbours]
            draw_beds(sheet, plan, seen, tile.window, box, on, measured=False, reserved=named)
        if len(shown) == 1:
            _rulers(sheet, tape_of(shown[0][0]), plan.measure, tile.window)
        _edges(sheet, box, neighbours)

    return draw


def _rulers(sheet: Sheet, tape: Tape, measure: Measure, window: Window) -> None:
    """Along the upper and left edge, how far what is drawn lies from the bed's end and edge."""
    per_m, box = 1000.0 / window.scale, window.box
    tick, words, name = tape_steps(measure, per_m)
    begin = np.array(window.corner)
    for across, axis in ((False, tape.along), (True, tape.across)):
        if abs(abs(axis[0]) - 1) > _LEVEL_DEG and abs(abs(axis[1]) - 1) > _LEVEL_DEG:
            continue
        level = abs(axis[0]) > 0.5  # lies along the upper edge of the sheet
        way = float(axis[0] if level else axis[1])
        start = float(begin @ axis) - (tape.v0 if across else tape.u0)
        whole = tape.width_m if across else tape.length_m
        _ruler(sheet, box, (start, way, whole), per_m, (tick, words), name, level=level)


def _ruler(
    sheet: Sheet, box: Box, lies: tuple[float, float, float], per_m: float, steps: tuple[float, float],
    name: Callable[[float], str],
    *, level: bool,
) -> None:  # fmt: skip
    start, way, whole = lies
    tick, words = steps
    room = box.width if level else box.height
    for i in range(int(whole / tick + 1e-6) + 1):
        at = (i * tick - start) * way * per_m
        if not 0 <= at <= room:
            continue
        shown = i % round(words / tick) == 0
        reach = 2.0 if shown else 1.0
        sheet.pen(0.18)
        if level:
            sheet.line(box.x + at, box.y, box.x + at, box.y - reach)
            if shown and 4 <= at <= room - 4:
                sheet.text(Box(box.x + at - 6, box.y - 5.4, 12, 3.4), name(i * tick), 7, align="middle")
        else:
            sheet.line(box.x, box.y + at, box.x - reach, box.y + at)
            if shown and 4 <= at <= room - 4:
                with sheet.turned(box.x - 3.7, box.y + at, -90):
                    sheet.text(Box(-6, -1.7, 12, 3.4), name(i * tick), 7, align="middle")


@dataclass(frozen=True, slots=True)
class _Neighbour:
    """A sheet that adjoins: the line where it begins, and the place of its name on the overlap."""

    name: str
    line: tuple[float, float, float, float]
    at: tuple[float, float]
    upright: bool

    @property
    def box(self) -> Box:
        """Round its name."""
        wide, high = (_NAME_HIGH_MM, _NAME_WIDE_MM) if self.upright else (_NAME_WIDE_MM, _NAME_HIGH_MM)
        return Box(self.at[0] - wide / 2, self.at[1] - high / 2, wide, high)


def _neighbours(tile: Tile, names: set[tuple[int, int]]) -> Iterator[_Neighbour]:
    box, half = tile.window.box, OVERLAP_MM / 2
    middle_x, middle_y = box.x + box.width / 2, box.y + box.height / 2
    for step, edge in ((-1, box.x), (1, box.right)):
        if (tile.column + step, tile.row) in names:
            x = edge - step * OVERLAP_MM
            name = say("sheet {sheet}", sheet=tile_name(tile.column + step, tile.row))
            yield _Neighbour(name, (x, box.y, x, box.bottom), (x + step * half, middle_y), upright=True)
    for step, edge in ((-1, box.y), (1, box.bottom)):
        if (tile.column, tile.row + step) in names:
            y = edge - step * OVERLAP_MM
            name = say("sheet {sheet}", sheet=tile_name(tile.column, tile.row + step))
            yield _Neighbour(name, (box.x, y, box.right, y), (middle_x, y + step * half), upright=False)


def _edges(sheet: Sheet, box: Box, neighbours: Sequence[_Neighbour]) -> None:
    """The sheet's frame, where its neighbours begin, and what they are called."""
    for each in neighbours:
        sheet.pen(0.2, (2, 3))
        sheet.line(*each.line)
        with sheet.turned(*each.at, -90 if each.upright else 0):
            place = Box(-_NAME_WIDE_MM / 2, -_NAME_HIGH_MM / 2, _NAME_WIDE_MM, _NAME_HIGH_MM)
            sheet.white_box(place)
            sheet.text(place, each.name, 7.5, bold=True, align="middle")
    sheet.pen(0.25)
    sheet.ring([(box.x, box.y), (box.right, box.y), (box.right, box.bottom), (box.x, box.bottom)])


def _overview(
    plan: Plan, beds: Sequence[Bed], every: Sequence[Tile], title: str, box: Box
) -> tuple[Page, int]:
    """How the sheets lie: a small plan with their names."""
    first = every[0]
    per_m = 1000.0 / first.window.scale
    wide, high = first.window.box.width / per_m, first.window.box.height / per_m
    corners = [t.window.corner for t in every]
    low = (min(c[0] for c in corners), min(c[1] for c in corners))
    far = (max(c[0] for c in corners) + wide, max(c[1] for c in corners) + high)
    room = Box(4.0, HEAD_MM + 4.0, box.width - 8.0, box.height - HEAD_MM - FOOT_MM - 8.0)
    chosen = next((s for s in _SCALES_OF_SHEETS if fits(low, far, s, room)), _SCALES_OF_SHEETS[-1])

    def draw(sheet: Sheet) -> None:
        scale = f"1:{first.window.scale}"
        said = say_many("{scale} on {n} sheet", "{scale} on {n} sheets", len(every), scale=scale)
        overlap = say(
            "neighbouring sheets overlap by {mm} mm: lay dashed line on frame", mm=round(OVERLAP_MM)
        )
        heading(sheet, plan, say("{what}: how the sheets lie", what=title), said, overlap)
        window = centred(low, far, chosen, room)
        sheet.pen(0.5)
        for bed in beds:
            sheet.ring([window.place(p) for p in bed.outline])
        w, h = wide * 1000 / chosen, high * 1000 / chosen
        for tile in every:
            x, y = window.place(tile.window.corner)
            sheet.pen(0.18, (4, 2))
            sheet.ring([(x, y), (x + w, y), (x + w, y + h), (x, y + h)])
            if w > 6 and h > 3:
                sheet.text(
                    Box(x, y + h / 2 - 3, w, 6), tile.name, min(11.0, w * 0.9), bold=True, align="middle"
                )

    return draw, chosen
