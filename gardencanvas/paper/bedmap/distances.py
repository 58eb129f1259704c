"""Measures round a bed: its length and width, each row from the edge, a tape laid along it."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import atan2, degrees, hypot

import numpy as np
from shapely import Point as ShapelyPoint
from shapely import Polygon

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.ground import Window
from gardencanvas.paper.bedmap.labels import LABEL_MM, Taken, turned_words, words_box
from gardencanvas.paper.bedmap.lengths import taped
from gardencanvas.paper.bedmap.tape import RowMark, Tape, row_marks, tape_of
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.language import figure
from gardencanvas.words.plain import Measure

ENDS_MM, END_MM = 23.0, 4.0  # room beyond a bed's end where rows are told, and where none is
ABOVE_MM, BELOW_MM = 7.0, 7.5  # room for the length, and for the tape
_WORDS_AT_MM, _DIMENSION_MM, _WIDTH_AT_MM = 4.5, 4.0, 20.5
_POINTS = 7.0
_FEW_CORNERS = 12
_SHORT_SIDE_MM = 13.0
_ALIKE_M = 0.01
_LEVEL_MM = 0.1
Place = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Axes:
    """A bed's tape on the sheet: millimetres along and across to a place there."""

    tape: Tape
    window: Window

    @property
    def per_m(self) -> float:
        """Millimetres of paper to a metre."""
        return 1000.0 / self.window.scale

    @property
    def length(self) -> float:
        """Of the bed, millimetres of paper."""
        return self.tape.length_m * self.per_m

    @property
    def width(self) -> float:
        """Of the bed, millimetres of paper."""
        return self.tape.width_m * self.per_m

    def at(self, along: float, across: float) -> Place:
        """The place so many millimetres along from the end and across from the edge."""
        return self.window.place(self.tape.plan(along / self.per_m, across / self.per_m))


@dataclass(frozen=True, slots=True)
class Around:
    """Room that the measures take on each side of a bed, millimetres of paper."""

    left: float
    top: float
    right: float
    bottom: float


def room_round(bed: Bed, numbered: Sequence[tuple[int, Planting]]) -> Around:
    """Room for the measures: more beyond an end beside which rows are told."""
    tape = tape_of(bed)
    near, far = _by_end(tape, row_marks(bed, numbered))
    ways = (
        (-tape.along, ENDS_MM if near else END_MM),
        (tape.along, ENDS_MM if far else END_MM + _DIMENSION_MM),
        (-tape.across, ABOVE_MM),
        (tape.across, BELOW_MM),
    )

    def towards(x: float, y: float) -> float:
        return sum(max(float(way[0] * x + way[1] * y), 0.0) * room for way, room in ways)

    return Around(towards(-1, 0), towards(0, -1), towards(1, 0), towards(0, 1))


def _by_end(tape: Tape, marks: Sequence[RowMark]) -> tuple[list[RowMark], list[RowMark]]:
    """The rows whose middle is nearer to the end measured from, and the others."""
    half = tape.length_m / 2
    near = [m for m in marks if (m.begin_m + m.end_m) / 2 <= half]
    return near, [m for m in marks if (m.begin_m + m.end_m) / 2 > half]


def draw_distances(
    sheet: Sheet, bed: Bed, numbered: Sequence[tuple[int, Planting]], window: Window, measure: Measure,
    taken: Taken,
) -> None:  # fmt: skip
    """All measures round a bed, outside of it."""
    axes = Axes(tape_of(bed), window)
    near, far = _by_end(axes.tape, row_marks(bed, numbered))
    _row_words(sheet, axes, near, measure, taken, far=False)
    _row_words(sheet, axes, far, measure, taken, far=True)
    _laid_tape(sheet, axes, measure, taken)
    _dimensions(sheet, axes, measure, taken, beside_rows=bool(far))
    _sides(sheet, bed, axes, measure, taken)


def _row_words(
    sheet: Sheet, axes: Axes, marks: Sequence[RowMark], measure: Measure, taken: Taken, *, far: bool
) -> None:
    """Beyond one end, how far each row lies from the edge; a fine line leads to its first plant."""
    if not marks:
        return
    end, way = (axes.length, 1.0) if far else (0.0, -1.0)
    lines = [(0.0, None), *((m.from_edge_m, m) for m in _that_fit(marks, axes))]
    heights = spread([v * axes.per_m for v, _ in lines], LABEL_MM)
    for (v, mark), height in zip(lines, heights, strict=True):
        across = v * axes.per_m
        said = taped(measure, v) if mark is not None else "0"
        align = "left" if far else "right"
        place = axes.at(end + way * (_WORDS_AT_MM + 0.4), height)
        turned_words(sheet, said, place, axes.tape.angle_deg, align, taken, _POINTS)
        sheet.pen(0.13)
        sheet.rope([
            axes.at(end + way * _WORDS_AT_MM, height), axes.at(end + way * 1.2, across),
            axes.at(end - way * 1.2, across),
        ])  # fmt: skip
        if mark is not None:
            first = (mark.end_m if far else mark.begin_m) * axes.per_m
            sheet.pen(0.1, (6, 10))
            sheet.line(*axes.at(end - way * 1.2, across), *axes.at(first + way * 1.2, across))


def _that_fit(marks: Sequence[RowMark], axes: Axes) -> list[RowMark]:
    """As many rows as there is room for beside the bed, those closest to others left out."""
    most = max(int((axes.width + 2 * LABEL_MM) / LABEL_MM) - 1, 2)
    kept = list(marks)
    while len(kept) > most:
        gaps = [kept[i + 1].from_edge_m - kept[i - 1].from_edge_m for i in range(1, len(kept) - 1)]
        kept.pop(int(np.argmin(gaps)) + 1)
    return kept


def spread(wanted: Sequence[float], gap: float) -> list[float]:
    """Heights in order, at least a gap apart, with the least sum of squares from those wanted.

    Pooling of neighbours that violate the order (Barlow et al. 1972, Statistical inference under order
    restrictions), on the heights less their share of gaps.
    """
    pools: list[tuple[float, int]] = []  # mean and size
    for i, each in enumerate(wanted):
        pools.append((each - i * gap, 1))
        while len(pools) > 1 and pools[-2][0] > pools[-1][0]:
            (b, nb), (a, na) = pools.pop(), pools.pop()
            pools.append(((a * na + b * nb) / (na + nb), na + nb))
    level = [mean for mean, size in pools for _ in range(size)]
    return [mean + i * gap for i, mean in enumerate(level)]


def _laid_tape(sheet: Sheet, axes: Axes, measure: Measure, taken: Taken) -> None:
    """A tape along the far edge: ticks, and numbers where they have room."""
    line = axes.width + 1.8
    sheet.pen(0.18)
    sheet.line(*axes.at(0, line), *axes.at(axes.length, line))
    _keep_clear(taken, axes.at(0, line), axes.at(axes.length, line))
    tick, words, name = tape_steps(measure, axes.per_m)
    for i in range(round(axes.tape.length_m / tick * 1000) // 1000 + 1):
        along = i * tick * axes.per_m
        if along > axes.length + 1e-6:
            break
        shown = i % round(words / tick) == 0
        sheet.line(*axes.at(along, line), *axes.at(along, line + (1.8 if shown else 0.9)))
        if shown:
            turned_words(
                sheet, name(i * tick), axes.at(along, line + 3.6), axes.tape.angle_deg, "middle", taken, 7.0
            )


def tape_steps(measure: Measure, per_m: float) -> tuple[float, float, Callable[[float], str]]:
    """Step of a tape's ticks and of its numbers, metres, and how a number is written."""
    if measure.units == "imperial":
        foot = 0.3048
        tick = next((t for t in (foot / 2, foot, 5 * foot, 10 * foot) if t * per_m >= 1.5), 50 * foot)
        words = next(
            (w for w in (foot, 2 * foot, 5 * foot, 10 * foot) if w * per_m >= 9 and w >= tick), 50 * foot
        )
        return tick, words, lambda m: f"{round(m / foot)}′" if m else "0"
    tick = next((t for t in (0.1, 0.5, 1.0, 5.0) if t * per_m >= 1.5), 10.0)
    words = next((w for w in (0.5, 1.0, 2.0, 5.0, 10.0) if w * per_m >= 9 and w >= tick), 50.0)
    return tick, words, lambda m: f"{figure(m)} m" if m else "0"


def _dimensions(sheet: Sheet, axes: Axes, measure: Measure, taken: Taken, *, beside_rows: bool) -> None:
    """Length above the bed and width beyond its end, each on a line with its ends marked."""
    _dimension(sheet, axes.at(0, -_DIMENSION_MM), axes.at(axes.length, -_DIMENSION_MM),
               measure.large(axes.tape.length_m), taken)  # fmt: skip
    along = axes.length + (_WIDTH_AT_MM if beside_rows else _DIMENSION_MM)
    _dimension(sheet, axes.at(along, 0), axes.at(along, axes.width), measure.large(axes.tape.width_m), taken)


def _dimension(sheet: Sheet, begin: Place, end: Place, text: str, taken: Taken) -> None:
    (x0, y0), (x1, y1) = begin, end
    length = hypot(x1 - x0, y1 - y0)
    if length <= 0:
        return
    nx, ny = (y0 - y1) / length * 1.2, (x1 - x0) / length * 1.2
    sheet.pen(0.13)
    sheet.line(x0, y0, x1, y1)
    for x, y in (begin, end):
        sheet.line(x - nx, y - ny, x + nx, y + ny)
    turn = degrees(atan2(y1 - y0, x1 - x0))
    turned_words(sheet, text, ((x0 + x1) / 2, (y0 + y1) / 2), turn, "middle", taken, 7.5)
    _keep_clear(taken, begin, end)


def _keep_clear(taken: Taken, begin: Place, end: Place) -> None:
    """No words over a level or upright line."""
    (x0, y0), (x1, y1) = begin, end
    if abs(x1 - x0) < _LEVEL_MM or abs(y1 - y0) < _LEVEL_MM:
        taken.take(Box(min(x0, x1), min(y0, y1), abs(x1 - x0), abs(y1 - y0)).grown(0.5))


def _sides(sheet: Sheet, bed: Bed, axes: Axes, measure: Measure, taken: Taken) -> None:
    """The length along each side that the two dimensions do not tell already."""
    corners = list(bed.outline)
    if len(corners) > _FEW_CORNERS:
        return
    ring = [axes.window.place(p) for p in corners]
    ground = Polygon(ring)
    whole = (axes.tape.length_m, axes.tape.width_m)
    for (a, b), ((x0, y0), (x1, y1)) in zip(
        pairwise([*corners, corners[0]]), pairwise([*ring, ring[0]]), strict=True
    ):
        length_m = hypot(b[0] - a[0], b[1] - a[1])
        length = hypot(x1 - x0, y1 - y0)
        if length < _SHORT_SIDE_MM or any(abs(length_m - each) < _ALIKE_M for each in whole):
            continue
        away = np.array([y1 - y0, x0 - x1]) / length
        middle = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
        if ground.contains(ShapelyPoint(middle + away * 0.5)):
            away = -away
        turn = degrees(atan2(y1 - y0, x1 - x0))
        text = measure.large(length_m)
        for reach in (2.6, 8.0, 12.0):
            x, y = (float(v) for v in middle + away * reach)
            if taken.free(words_box(sheet, text, (x, y), turn, 7.5)):
                turned_words(sheet, text, (x, y), turn, "middle", taken, 7.5)
                break
