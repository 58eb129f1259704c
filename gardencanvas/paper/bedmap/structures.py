"""Paths, covers, supports and fixtures on paper."""

from collections.abc import Sequence
from datetime import date
from itertools import pairwise
from math import atan2, degrees

import numpy as np
from shapely import LineString, Polygon, prepare, union_all
from shapely import Point as ShapelyPoint
from shapely import box as shapely_box

from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, Path, RingSupport
from gardencanvas.garden.places import bed_ground
from gardencanvas.paper.bedmap.ground import Window
from gardencanvas.paper.bedmap.labels import Taken, put_words, turned_words, words_box
from gardencanvas.paper.bedmap.lengths import taped
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.plain import short_day

COVER_DASH = (8.0, 3.0, 1.0, 3.0)
PATH_DASH = (1.0, 4.0)
FIXTURE_DASH = (10.0, 3.0)
SUPPORT_DASH = (1.0, 1.5)
_BESIDE_M = 0.01
_CANE_MM = 0.9
_SHARES = tuple(i / 20 for i in (10, 8, 12, 6, 14, 4, 16, 2, 18, 1, 19, 9, 11, 7, 13, 5, 15, 3, 17))
Place = tuple[float, float]


def near(plan: Plan, beds: Sequence[Bed]) -> tuple[list[Cover], list[RingSupport | LineSupport]]:
    """The covers over some beds and the supports in them."""
    grounds = [bed_ground(bed) for bed in beds]
    covers = [c for c in plan.layout.covers if any(g.intersects(Polygon(c.outline)) for g in grounds)]
    supports = [s for s in plan.layout.supports if any(g.distance(_shape(s)) < _BESIDE_M for g in grounds)]
    return covers, supports


def _shape(support: RingSupport | LineSupport) -> ShapelyPoint | LineString:
    if isinstance(support, RingSupport):
        return ShapelyPoint(support.centre)
    return LineString([support.begin, support.end])


def is_on(cover: Cover, on: date | None) -> bool:
    """Whether a cover lies there on a day; always where no day is asked for."""
    if on is None:
        return True
    return (cover.first is None or cover.first <= on) and (cover.last is None or on <= cover.last)


def draw_paths(sheet: Sheet, paths: Sequence[Path], window: Window) -> None:
    """The sides of paths, dotted."""
    sheet.pen(0.25, PATH_DASH)
    for path in paths:
        line = LineString([window.place(p) for p in path.line])
        band = line.buffer(path.width_m * 500 / window.scale, cap_style="flat", join_style="mitre")
        for part in getattr(band, "geoms", [band]):
            sheet.ring([(float(x), float(y)) for x, y in part.exterior.coords[:-1]])


def name_paths(sheet: Sheet, plan: Plan, window: Window, taken: Taken) -> None:
    """The name and width of each path, once, along it where it is clear of beds and words."""
    beds = union_all([Polygon([window.place(p) for p in bed.outline]) for bed in plan.layout.beds])
    prepare(beds)
    for path in plan.layout.paths:
        said = f"{path.name} {taped(plan.measure, path.width_m)}"
        for begin, end in pairwise([window.place(p) for p in path.line]):
            turn = degrees(atan2(end[1] - begin[1], end[0] - begin[0]))
            for share in _SHARES:
                at = (begin[0] + (end[0] - begin[0]) * share, begin[1] + (end[1] - begin[1]) * share)
                box = words_box(sheet, said, at, turn, 7.0)
                shape = shapely_box(box.x, box.y, box.right, box.bottom)
                if taken.free(box) and not beds.intersects(shape):
                    turned_words(sheet, said, at, turn, "middle", taken)
                    break
            else:
                continue
            break


def draw_covers(sheet: Sheet, covers: Sequence[Cover], window: Window) -> None:
    """Outlines of covers, dash and dot."""
    for cover in covers:
        sheet.pen(0.3, COVER_DASH)
        sheet.ring([window.place(p) for p in cover.outline])


def draw_supports(sheet: Sheet, supports: Sequence[RingSupport | LineSupport], window: Window) -> None:
    """A square for each cane or post, and a dotted line from one to the next."""
    for support in supports:
        if isinstance(support, RingSupport):
            x, y = window.place(support.centre)
            radius = support.radius_m * 1000 / window.scale
            sheet.pen(0.35, SUPPORT_DASH)
            if radius > _CANE_MM:
                sheet.circle(x, y, radius)
            turn = 2 * np.pi * np.arange(support.cane_count) / max(support.cane_count, 1)
            canes(sheet, [(x + radius * float(np.cos(a)), y + radius * float(np.sin(a))) for a in turn])
        else:
            begin, end = np.array(window.place(support.begin)), np.array(window.place(support.end))
            sheet.pen(0.35, SUPPORT_DASH)
            sheet.line(*begin, *end)
            shares = np.linspace(0.0, 1.0, support.cane_count)
            canes(sheet, [tuple(begin + (end - begin) * share) for share in shares])


def canes(sheet: Sheet, places: Sequence[Place]) -> None:
    """A small square for each cane or post."""
    sheet.pen(0.25)
    sheet.fill(black=False)
    for x, y in places:
        sheet.square(x - _CANE_MM / 2, y - _CANE_MM / 2, _CANE_MM)
    sheet.pen(0.25)


def name_structures(
    sheet: Sheet, covers: Sequence[Cover], supports: Sequence[RingSupport | LineSupport], window: Window,
    taken: Taken,
) -> None:  # fmt: skip
    """What each cover and support is, and when a cover is on, beside it."""
    for cover in covers:
        box = _round(cover.outline, window)
        days = "" if cover.first is None else f", {short_day(cover.first)}"
        days += "" if cover.last is None else f" – {short_day(cover.last)}"
        put_words(sheet, cover.name + days, _beside(box), taken)
    for support in supports:
        ends = (support.begin, support.end) if isinstance(support, LineSupport) else (support.centre,)
        reach = 0.0 if isinstance(support, LineSupport) else support.radius_m * 1000 / window.scale
        count = support.cane_count
        said = support.name if count == 1 else f"{support.name}, {count}"
        put_words(sheet, said, _beside(_round(ends, window).grown(reach)), taken)


def _round(outline: Sequence[Place], window: Window) -> Box:
    points = np.array([window.place(p) for p in outline])
    (x0, y0), (x1, y1) = points.min(axis=0), points.max(axis=0)
    return Box(float(x0), float(y0), float(x1 - x0), float(y1 - y0))


def _beside(box: Box) -> list[Place]:
    """Places above and below a box and in it, the middle ones first."""
    shares = (0.5, 0.3, 0.7, 0.15, 0.85)
    heights = (box.y - 2.0, box.bottom + 2.0, box.y + 2.0, box.bottom - 2.0, box.y + box.height / 2)
    return [(box.x + box.width * share, y) for y in heights for share in shares]


def draw_fixtures(sheet: Sheet, fixtures: Sequence[Fixture], window: Window, taken: Taken) -> None:
    """What throws shade, with its name and height."""
    for fixture in fixtures:
        sheet.pen(0.35, FIXTURE_DASH)
        ring = [window.place(p) for p in fixture.outline]
        sheet.ring(ring)
    for fixture in fixtures:
        box = _round(fixture.outline, window)
        middle = (box.x + box.width / 2, box.y + box.height / 2)
        put_words(sheet, fixture.name, [middle, *_beside(box)], taken, 7.5)
