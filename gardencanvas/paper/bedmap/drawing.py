"""Beds on paper: outline with measures, paths, covers, supports, rows with distances, plants, numbers."""

from collections.abc import Sequence
from datetime import date

import numpy as np
from shapely import Polygon, union_all
from shapely import box as shapely_box
from shapely.geometry.base import BaseGeometry

from gardencanvas.fit.report import Verdict
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Floats, Rows, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.distances import draw_distances
from gardencanvas.paper.bedmap.ground import Window, extent
from gardencanvas.paper.bedmap.labels import Label, Taken, put_label, put_words
from gardencanvas.paper.bedmap.marks import draw_mark
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.bedmap.structures import (
    draw_covers,
    draw_fixtures,
    draw_paths,
    draw_supports,
    is_on,
    name_paths,
    name_structures,
    near,
)
from gardencanvas.paper.bedmap.verdicts import draw_verdict, ground_of
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.plain import crop_name

BED_MM, HOLE_MM = 0.6, 0.35
LEAST_MARK_MM, USUAL_MARK_MM, LARGEST_MARK_MM = 0.7, 1.6, 2.8
_OWN_MM2 = 30.0  # ground of a planting that no smaller one lies on: its label stands there
_BEYOND_MM = 5.0  # drawn beyond what a sheet shows, so that cut outlines have no edge of their own
Numbered = Sequence[tuple[int, Planting]]
Shown = Sequence[tuple[Bed, Numbered]]


def draw_beds(
    sheet: Sheet, plan: Plan, shown: Shown, window: Window, room: Box, on: date | None = None,
    *, measured: bool = True, reserved: Sequence[Box] = (),
) -> None:  # fmt: skip
    """Draw beds and some of their plantings where the window lays them, nothing outside the room.

    Parameters
    ----------
    on
        The day that decides which covers are on; None: all of them.
    measured
        Whether measures are written round a bed, and not only its name.
    reserved
        Places that stay free of words.
    """
    covers, supports = near(plan, [bed for bed, _ in shown])
    covers = [c for c in covers if is_on(c, on)]
    every = [each for _, numbered in shown for each in numbered]
    taken = Taken(places_of(every, window), room, edges_of(plan, every, window))
    for box in reserved:
        taken.take(box)
    with sheet.clipped(room):
        draw_paths(sheet, plan.layout.paths, window)
        for bed, numbered in shown:
            draw_outline(sheet, bed, window)
            draw_plantings(sheet, plan, numbered, window, room)
        draw_supports(sheet, supports, window)
        draw_covers(sheet, covers, window)
        for bed, numbered in shown:
            if measured:
                draw_distances(sheet, bed, numbered, window, plan.measure, taken)
            else:
                _name(sheet, bed, window, taken)
        if not measured:
            draw_fixtures(sheet, plan.garden.fixtures, window, taken)
        number_plantings(sheet, plan, every, window, taken)
        name_structures(sheet, covers, supports, window, taken)
        name_paths(sheet, plan, window, taken)


def _name(sheet: Sheet, bed: Bed, window: Window, taken: Taken) -> None:
    """A bed's name above its upper edge, where the room shows that."""
    (x0, y0), (x1, _) = extent([bed.outline])
    (left, top), (right, _) = window.place((x0, y0)), window.place((x1, y0))
    room = taken.room
    left, right = max(left, room.x), min(right, room.right)
    if left < right:
        places = [(left + (right - left) * share, top - 2.6) for share in (0.5, 0.3, 0.7, 0.15, 0.85)]
        put_words(sheet, bed.name, places, taken, 8.0)


def draw_outline(sheet: Sheet, bed: Bed, window: Window) -> None:
    """The bed's edge, on cleared ground, and its holes."""
    ring = [window.place(p) for p in bed.outline]
    sheet.white(ring)
    sheet.pen(BED_MM)
    sheet.ring(ring)
    sheet.pen(HOLE_MM)
    for hole in bed.holes:
        sheet.ring([window.place(p) for p in hole])


def draw_plantings(sheet: Sheet, plan: Plan, numbered: Numbered, window: Window, room: Box) -> None:
    """The ground each takes, its line by verdict, and then every plant that the room shows."""
    around = room.grown(_BEYOND_MM)
    seen = shapely_box(around.x, around.y, around.right, around.bottom)
    for _, planting in numbered:
        fit = plan.report.plantings.get(planting.id)
        verdict = fit.verdict if fit is not None else Verdict.CLEAR
        ground = ground_of(planting.pattern, window)
        if ground.intersects(seen):
            draw_verdict(sheet, verdict, ground if seen.contains(ground) else ground.intersection(seen))
    for _, planting in numbered:
        size = mark_size(planting, window)
        for x, y in _within(_placed(planting.stations, window), around).tolist():
            draw_mark(sheet, plan.marks[planting.id], x, y, size)


def _within(places: Floats, box: Box) -> Floats:
    """Those places that lie in a box."""
    x, y = places[:, 0], places[:, 1]
    return places[(x >= box.x) & (x <= box.right) & (y >= box.y) & (y <= box.bottom)]


def mark_size(planting: Planting, window: Window) -> float:
    """Of a plant's mark, millimetres: larger where plants are far apart, never touching the next."""
    pattern = planting.pattern
    gap = pattern.spacing_m
    if isinstance(pattern, Rows) and pattern.rows > 1:
        gap = min(gap, pattern.row_spacing_m)
    if isinstance(pattern, Strip):
        gap = min(gap, pattern.across_m)
    if isinstance(pattern, Block) and pattern.staggered:
        gap *= 0.87
    gap *= 1000 / window.scale
    return max(min(max(gap * 0.22, USUAL_MARK_MM), LARGEST_MARK_MM, gap * 0.7), LEAST_MARK_MM)


def _placed(points: Floats, window: Window) -> Floats:
    """Plan metres to millimetres on the sheet, shape (n, 2)."""
    corner = np.array([window.box.x, window.box.y])
    placed: Floats = (points - np.array(window.corner)) * (1000.0 / window.scale) + corner
    return placed


def places_of(numbered: Numbered, window: Window) -> Floats:
    """Every plant on the sheet, millimetres, shape (n, 2)."""
    if not numbered:
        return np.empty((0, 2))
    return np.concatenate([_placed(p.stations, window) for _, p in numbered])


def edges_of(plan: Plan, numbered: Numbered, window: Window) -> list[BaseGeometry]:
    """The outlines of beds and plantings on the sheet, which words had better not cross."""
    beds = [Polygon([window.place(p) for p in bed.outline]).exterior for bed in plan.layout.beds]
    return beds + [ground_of(p.pattern, window).boundary for _, p in numbered]


def number_plantings(sheet: Sheet, plan: Plan, numbered: Numbered, window: Window, taken: Taken) -> None:
    """The number and, where there is room, the crop of each planting that the room shows."""
    room = taken.room
    shown = shapely_box(room.x, room.y, room.right, room.bottom)
    grounds = [(ground_of(p.pattern, window).intersection(shown), n, p) for n, p in numbered]
    smaller: list[BaseGeometry] = []
    for ground, number, planting in sorted(grounds, key=lambda each: (each[0].area, each[1])):
        inside = _within(_placed(planting.stations, window), room)
        if ground.is_empty or not len(inside):
            continue
        own = ground.difference(union_all([each for each in smaller if each.intersects(ground)]))
        label = Label(str(number), crop_name(plan.catalogue, planting.crop))
        put_label(sheet, label, own if own.area > _OWN_MM2 else ground, inside, taken)
        smaller.append(ground)
