"""A bed on paper: outline with measures, paths, covers, supports, rows with distances, plants, numbers."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

import numpy as np
from PySide6.QtCore import Qt
from shapely import Point as ShapelyPoint

from gardencanvas.fit.report import Verdict
from gardencanvas.garden.ground import Bed, LineSupport, RingSupport
from gardencanvas.garden.places import bed_ground
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point
from gardencanvas.paper.bedmap.ground import Window
from gardencanvas.paper.bedmap.marks import draw_mark
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.bedmap.tape import row_marks
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.plain import Measure

MARK_MM, LEAST_MARK_MM = 1.6, 0.7
LEFT_MM, AROUND_MM = 24.0, 8.0  # room for distances at the left, for measures around
_LABEL_MM = 3.6
_BESIDE_M = 0.01


@dataclass
class Taken:
    """Where words stand already: none is written over another."""

    boxes: list[Box]

    def free(self, box: Box) -> bool:
        """Whether a box overlaps none of those taken."""
        return not any(
            box.x < b.x + b.width
            and b.x < box.x + box.width
            and box.y < b.y + b.height
            and b.y < box.y + box.height
            for b in self.boxes
        )


def draw_bed(
    sheet: Sheet, plan: Plan, bed: Bed, numbered: Sequence[tuple[int, Planting]], window: Window
) -> None:
    """Draw a bed and some of its plantings where the window lays them; what lies outside it is cut off."""
    _clipped(sheet, window)
    _paths(sheet, plan, window)
    _covers(sheet, plan, bed, window)
    sheet.pen(0.6)
    sheet.ring([window.place(p) for p in bed.outline])
    sheet.pen(0.35)
    for hole in bed.holes:
        sheet.ring([window.place(p) for p in hole])
    _supports(sheet, plan, bed, window)
    for number, planting in numbered:
        _outline(sheet, plan, planting, window)
        _plants(sheet, number, planting, window)
    sheet.painter.restore()
    taken = Taken([])
    _rows(sheet, plan, bed, numbered, window, taken)
    for number, planting in numbered:
        _number(sheet, number, planting, window, taken)
    _sides(sheet, bed, plan.measure, window, taken)


def _clipped(sheet: Sheet, window: Window) -> None:
    """Draw nothing outside a window, but for the words around it; undone by the painter's restore."""
    sheet.painter.save()
    box = window.box
    pad = AROUND_MM
    around = Box(box.x - pad, box.y - pad, box.width + 2 * pad, box.height + 2 * pad)
    sheet.painter.setClipRect(sheet.rect(around), Qt.ClipOperation.IntersectClip)


def _paths(sheet: Sheet, plan: Plan, window: Window) -> None:
    sheet.pen(0.15, (6, 4))
    for path in plan.layout.paths:
        line = [window.place(p) for p in path.line]
        half = path.width_m * 500 / window.scale
        for (x0, y0), (x1, y1) in pairwise(line):
            length = hypot(x1 - x0, y1 - y0) or 1.0
            nx, ny = (y1 - y0) / length * half, (x0 - x1) / length * half
            sheet.line(x0 + nx, y0 + ny, x1 + nx, y1 + ny)
            sheet.line(x0 - nx, y0 - ny, x1 - nx, y1 - ny)


def _covers(sheet: Sheet, plan: Plan, bed: Bed, window: Window) -> None:
    for cover in plan.layout.covers:
        if bed_ground(bed).distance(ShapelyPoint(np.mean(cover.outline, axis=0))) < _BESIDE_M:
            sheet.pen(0.25, (8, 3, 1, 3))
            ring = [window.place(p) for p in cover.outline]
            sheet.ring(ring)
            x, y = max(ring, key=lambda p: (p[0], -p[1]))
            sheet.text(Box(x - 40, y - 3.4, 40, 3.2), cover.name, 6.5, align="right")


def _supports(sheet: Sheet, plan: Plan, bed: Bed, window: Window) -> None:
    for support in plan.layout.supports:
        if isinstance(support, RingSupport):
            if bed_ground(bed).distance(ShapelyPoint(support.centre)) >= _BESIDE_M:
                continue
            x, y = window.place(support.centre)
            radius = support.radius_m * 1000 / window.scale
            sheet.pen(0.35, (1, 2))
            sheet.circle(x, y, max(radius, 0.6))
            _canes(sheet, [(x + radius * c, y + radius * s) for c, s in _round(support.cane_count)])
        elif isinstance(support, LineSupport):
            if bed_ground(bed).distance(ShapelyPoint(support.begin)) >= _BESIDE_M:
                continue
            begin, end = np.array(window.place(support.begin)), np.array(window.place(support.end))
            sheet.pen(0.6, (1, 1.5))
            sheet.line(*begin, *end)
            shares = np.linspace(0.0, 1.0, support.cane_count)
            _canes(sheet, [tuple(begin + (end - begin) * share) for share in shares])


def _round(count: int) -> list[tuple[float, float]]:
    turn = 2 * np.pi * np.arange(count) / max(count, 1)
    return list(zip(np.cos(turn).tolist(), np.sin(turn).tolist(), strict=True))


def _canes(sheet: Sheet, places: Sequence[tuple[float, float]]) -> None:
    """A small square for each cane or post."""
    sheet.pen(0.3)
    for x, y in places:
        sheet.square(x - 0.45, y - 0.45, 0.9)


def _outline(sheet: Sheet, plan: Plan, planting: Planting, window: Window) -> None:
    """The ground a planting takes, its line by verdict."""
    fit = plan.report.plantings.get(planting.id)
    verdict = fit.verdict if fit is not None else Verdict.CLEAR
    ring = [window.place((float(x), float(y))) for x, y in planting.pattern.corners]
    widths = {Verdict.CLEAR: 0.15, Verdict.SHARES: 0.15, Verdict.STRAINS: 0.35, Verdict.CLASHES: 0.8}
    sheet.pen(widths[verdict], (4, 3) if verdict is Verdict.STRAINS else ())
    sheet.ring(ring)
    if verdict is Verdict.SHARES:
        middle = np.mean(ring, axis=0)
        sheet.ring([_inward(p, middle) for p in ring])


def _inward(point: tuple[float, float], middle: np.ndarray) -> tuple[float, float]:
    """The point 0.8 mm nearer to the middle."""
    away = np.array(point) - middle
    reach = float(np.hypot(*away))
    x, y = middle + away * (max(1 - 1.1 / reach, 0.2) if reach > 0 else 1.0)
    return float(x), float(y)


def _plants(sheet: Sheet, number: int, planting: Planting, window: Window) -> None:
    gap = planting.pattern.spacing_m * 1000 / window.scale
    size = min(MARK_MM, max(gap * 0.7, LEAST_MARK_MM))
    for x, y in planting.stations:
        draw_mark(sheet, number, *window.place((float(x), float(y))), size)


def _number(sheet: Sheet, number: int, planting: Planting, window: Window, taken: Taken) -> None:
    """A planting's number at that of its stations where there is room, the nearest to its middle."""
    label = str(number)
    wide = sheet.width_of(label, 8, bold=True) + 1.2
    stations = planting.stations
    order = np.argsort(np.hypot(*(stations - stations.mean(axis=0)).T))
    places = [window.place((float(x), float(y))) for x, y in stations[order]]
    candidates = [
        Box(x + dx - wide / 2, y + dy - _LABEL_MM / 2, wide, _LABEL_MM)
        for dx, dy in ((0.0, 0.0), (0.0, -3.4), (0.0, 3.4), (3.6, 0.0), (-3.6, 0.0))
        for x, y in places[:60]
    ]
    box = next((b for b in candidates if taken.free(b)), candidates[0])
    taken.boxes.append(box)
    sheet.painter.fillRect(sheet.rect(box), "white")
    sheet.text(box, label, 8, bold=True, align="middle")


def _rows(
    sheet: Sheet, plan: Plan, bed: Bed, numbered: Sequence[tuple[int, Planting]], window: Window, taken: Taken
) -> None:
    """At the left of the bed, how far each row lies from its edge; a line leads from the words to the row."""
    marks = row_marks(bed, numbered)
    if not marks:
        return
    left = min(window.place(p)[0] for p in bed.outline)
    places = [window.place(mark.first) for mark in marks]
    heights = _spread([y for _, y in places], _LABEL_MM)
    for mark, (x, y), at in zip(marks, places, heights, strict=True):
        box = Box(left - LEFT_MM, at - _LABEL_MM / 2, LEFT_MM - 5, _LABEL_MM)
        taken.boxes.append(box)
        sheet.text(box, plan.measure.small(mark.from_edge_m), 7, align="right")
        sheet.pen(0.12)
        sheet.line(left - 4.5, at, left - 1.0, y)
        sheet.line(left - 1.0, y, min(x, left + 1.5), y)


def _spread(wanted: Sequence[float], gap: float) -> list[float]:
    """Heights as near to those wanted as the gap between neighbours allows, in order."""
    heights = list(wanted)
    for _ in range(60):
        moved = False
        for i in range(len(heights) - 1):
            short = gap - (heights[i + 1] - heights[i])
            if short > 1e-6:
                heights[i] -= short / 2
                heights[i + 1] += short / 2
                moved = True
        if not moved:
            break
    return heights


def _sides(sheet: Sheet, bed: Bed, measure: Measure, window: Window, taken: Taken) -> None:
    """The length beside each side long enough to hold it."""
    corners: list[Point] = list(bed.outline)
    if len(corners) > 12:
        low, high = np.min(corners, axis=0), np.max(corners, axis=0)
        x, y = window.place((float(low[0]), float(high[1])))
        wide = (high[0] - low[0]) * 1000 / window.scale
        said = measure.sides(float(high[0] - low[0]), float(high[1] - low[1]))
        sheet.text(Box(x, y + 1.5, max(wide, 30), 4), said, 7.5, align="middle")
        return
    middle = np.mean([window.place(p) for p in corners], axis=0)
    for begin, end in zip(corners, corners[1:] + corners[:1], strict=True):
        (x0, y0), (x1, y1) = window.place(begin), window.place(end)
        if hypot(x1 - x0, y1 - y0) < 14:
            continue
        mid = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
        away = np.array([y1 - y0, x0 - x1]) / hypot(x1 - x0, y1 - y0)
        if away @ (mid - middle) < 0:
            away = -away
        text = measure.large(hypot(end[0] - begin[0], end[1] - begin[1]))
        wide = sheet.width_of(text, 7.5) + 1.0
        reach = 2.6 if abs(away[1]) > 0.7 else wide / 2 + 1.5
        x, y = mid + away * reach
        box = Box(float(x) - wide / 2, float(y) - 2, wide, 4)
        if taken.free(box):
            taken.boxes.append(box)
            sheet.painter.fillRect(sheet.rect(box), "white")
            sheet.text(box, text, 7.5, align="middle")
