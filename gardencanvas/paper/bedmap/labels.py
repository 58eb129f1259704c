"""Words on a drawing: none over another, and as few plants as can be under them."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import product
from math import cos, radians, sin

import numpy as np
from numpy.typing import NDArray
from shapely import STRtree, contains_xy
from shapely import box as shapely_boxes
from shapely.geometry.base import BaseGeometry

from gardencanvas.garden.pattern import Floats
from gardencanvas.paper.sheet import Box, Sheet

LABEL_MM = 3.7
NUMBER_POINTS, NAME_POINTS = 8.5, 7.5
_MARK_MM = 0.8  # half a plant's mark
_AWAY = 0.015  # what a millimetre from the planting's middle costs beside one plant covered
_CROSSED = 0.3  # what a line crossed costs
_APART_MM = 0.6  # between words
_EDGE_MM = 1.2  # kept from the planting's own outline
_FURTHEST_MM = 80


class Taken:
    """Where words stand, and where plants do: millimetres on the sheet."""

    def __init__(self, marks: Floats, room: Box, lines: Sequence[BaseGeometry] = ()) -> None:
        self.boxes: list[Box] = []
        self.room = room
        self._marks = marks
        self._lines = STRtree(list(lines))

    def free(self, box: Box) -> bool:
        """Whether a box lies in the room and overlaps no words."""
        return bool(self.which_free(_array(box))[0])

    def which_free(self, boxes: Floats) -> NDArray[np.bool_]:
        """Which boxes lie in the room and overlap no words.

        Boxes are (left, top, right, bottom), shape (n, 4).
        """
        room = self.room
        inside: NDArray[np.bool_] = (
            (boxes[:, 0] >= room.x) & (boxes[:, 1] >= room.y)
            & (boxes[:, 2] <= room.right) & (boxes[:, 3] <= room.bottom)
        )  # fmt: skip
        if not self.boxes:
            return inside
        taken = np.array([(b.x, b.y, b.right, b.bottom) for b in self.boxes])
        met = (
            (boxes[:, None, 0] - _APART_MM < taken[:, 2]) & (taken[:, 0] < boxes[:, None, 2] + _APART_MM)
            & (boxes[:, None, 1] - _APART_MM < taken[:, 3]) & (taken[:, 1] < boxes[:, None, 3] + _APART_MM)
        )  # fmt: skip
        return inside & ~met.any(axis=1)

    def covered(self, boxes: Floats) -> NDArray[np.int64]:
        """How many plants each box would hide or touch."""
        if not len(boxes):
            return np.zeros(0, dtype=np.int64)
        x, y = self._marks[:, 0], self._marks[:, 1]
        (left, top), (right, bottom) = (
            boxes[:, :2].min(axis=0) - _MARK_MM,
            boxes[:, 2:].max(axis=0) + _MARK_MM,
        )
        near = self._marks[(x > left) & (x < right) & (y > top) & (y < bottom)]
        touched = (
            (near[:, 0] > boxes[:, None, 0] - _MARK_MM) & (near[:, 0] < boxes[:, None, 2] + _MARK_MM)
            & (near[:, 1] > boxes[:, None, 1] - _MARK_MM) & (near[:, 1] < boxes[:, None, 3] + _MARK_MM)
        )  # fmt: skip
        counted: NDArray[np.int64] = touched.sum(axis=1)
        return counted

    def crossed(self, boxes: Floats) -> NDArray[np.int64]:
        """How many lines of other things each box would cross."""
        shapes = shapely_boxes(boxes[:, 0], boxes[:, 1], boxes[:, 2], boxes[:, 3])
        met, _ = self._lines.query(shapes, predicate="intersects")
        return np.bincount(met, minlength=len(boxes)).astype(np.int64)

    def take(self, box: Box) -> None:
        """Words stand here now."""
        self.boxes.append(box)


@dataclass(frozen=True, slots=True)
class Label:
    """A planting's number and, where there is room, its crop's name."""

    number: str
    name: str

    def width(self, sheet: Sheet, *, named: bool) -> float:
        """Room it takes across, millimetres."""
        wide = sheet.width_of(self.number, NUMBER_POINTS, bold=True) + 1.0
        return wide + (sheet.width_of(self.name, NAME_POINTS) + 1.2 if named else 0.0)


def put_label(sheet: Sheet, label: Label, ground: BaseGeometry, stations: Floats, taken: Taken) -> None:
    """Write a label on its planting's ground: with the name over bare ground, else the number alone.

    Parameters
    ----------
    ground
        The planting's outline on the sheet, millimetres.
    stations
        Its plants there, shape (n, 2).
    """
    found = _best(sheet, label, ground, taken)
    if found is None:
        found = _outside(sheet, label, stations, taken)
    box, named = found
    taken.take(box)
    sheet.white_box(box)
    wide = label.width(sheet, named=False)
    place = Box(box.x, box.y, wide, box.height)
    sheet.text(place, label.number, NUMBER_POINTS, bold=True, align="middle")
    if named:
        rest = Box(box.x + wide, box.y, box.width - wide + 0.4, box.height)
        sheet.text(rest, label.name, NAME_POINTS)


def _best(sheet: Sheet, label: Label, ground: BaseGeometry, taken: Taken) -> tuple[Box, bool] | None:
    """The cheapest free place on the planting's ground; with its name only where that hides no plant."""
    for named in (True, False):
        away, boxes = _inside(ground, label.width(sheet, named=named))
        free = taken.which_free(boxes)
        away, boxes = away[free], boxes[free]
        hidden = taken.covered(boxes)
        if named:
            away, boxes, hidden = away[hidden == 0], boxes[hidden == 0], hidden[hidden == 0]
        if len(boxes):
            best = int(np.argmin(hidden + taken.crossed(boxes) * _CROSSED + away * _AWAY))
            x0, y0, x1, y1 = boxes[best].tolist()
            return Box(x0, y0, x1 - x0, y1 - y0), named
    return None


def _inside(ground: BaseGeometry, wide: float) -> tuple[Floats, Floats]:
    """Boxes on some ground, shape (n, 4), and how far each lies from its middle; none if wider than it."""
    x0, y0, x1, y1 = ground.bounds
    middle = ground.centroid
    if wide > x1 - x0 + 2 * _EDGE_MM:
        return np.empty(0), np.empty((0, 4))
    xs = _steps(x0 + _EDGE_MM + wide / 2, x1 - _EDGE_MM - wide / 2, middle.x)
    ys = _steps(y0 + _EDGE_MM + LABEL_MM / 2, y1 - _EDGE_MM - LABEL_MM / 2, middle.y)
    grid = np.array(list(product(xs, ys)))
    x, y = grid[contains_xy(ground, grid[:, 0], grid[:, 1])].T
    boxes = np.stack([x - wide / 2, y - LABEL_MM / 2, x + wide / 2, y + LABEL_MM / 2], axis=1)
    return np.hypot(x - middle.x, y - middle.y), boxes


def _steps(low: float, high: float, middle: float) -> list[float]:
    """Places from low to high and the middle; the middle alone where there is no room between."""
    return [middle] if low >= high else [middle, *np.linspace(low, high, 17).tolist()]


def _outside(sheet: Sheet, label: Label, stations: Floats, taken: Taken) -> tuple[Box, bool]:
    """The nearest free place to the planting's first plant, with a line that leads to it."""
    wide = label.width(sheet, named=False)
    x, y = (float(v) for v in stations[0])
    for reach in range(2, _FURTHEST_MM, 2):
        for turn in range(0, 360, 15):
            a = radians(turn)
            at = (x + reach * cos(a), y + reach * sin(a))
            box = Box(at[0] - wide / 2, at[1] - LABEL_MM / 2, wide, LABEL_MM)
            if taken.free(box):
                sheet.pen(0.12)
                sheet.line(x, y, *at)
                return box, False
    return Box(x - wide / 2, y - LABEL_MM / 2, wide, LABEL_MM), False


def put_words(
    sheet: Sheet, text: str, places: Iterable[tuple[float, float]], taken: Taken, points: float = 7.0
) -> bool:
    """Write words with their middle at the first free of some places; whether one was."""
    wide = sheet.width_of(text, points) + 1.0
    boxes = (Box(x - wide / 2, y - 1.7, wide, 3.4) for x, y in places)
    found = next((box for box in boxes if taken.free(box) and taken.covered(_array(box))[0] == 0), None)
    if found is None:
        return False
    taken.take(found)
    sheet.white_box(found)
    sheet.text(Box(found.x, found.y, found.width + 0.3, found.height), text, points, align="middle")
    return True


def turned_words(
    sheet: Sheet, text: str, at: tuple[float, float], degrees: float, align: str, taken: Taken | None,
    points: float = 7.0,
) -> None:  # fmt: skip
    """Words along a direction, never upside down: ``align`` says which of their ends is at the place."""
    turn = (degrees + 90.0) % 180.0 - 90.0
    if abs(turn) > 89.0:
        turn = -90.0
    flipped = cos(radians(turn - degrees)) < 0
    if flipped:
        align = {"left": "right", "right": "left", "middle": "middle"}[align]
    wide = sheet.width_of(text, points) + 0.6
    left = {"left": 0.0, "right": -wide, "middle": -wide / 2}[align]
    box = Box(left, -1.7, wide, 3.4)
    if taken is not None:
        taken.take(_around(at, turn, box))
    with sheet.turned(*at, turn):
        sheet.white_box(box)
        sheet.text(Box(left, -1.7, wide + 0.3, 3.4), text, points, align="middle")


def words_box(sheet: Sheet, text: str, at: tuple[float, float], degrees: float, points: float) -> Box:
    """The box round words whose middle lies at a place, turned so."""
    wide = sheet.width_of(text, points) + 0.6
    return _around(at, degrees, Box(-wide / 2, -1.7, wide, 3.4))


def _array(box: Box) -> Floats:
    return np.array([(box.x, box.y, box.right, box.bottom)])


def _around(at: tuple[float, float], degrees: float, box: Box) -> Box:
    """The upright box round a turned one."""
    c, s = cos(radians(degrees)), sin(radians(degrees))
    xs, ys = zip(*(
        (at[0] + x * c - y * s, at[1] + x * s + y * c)
        for x in (box.x, box.right) for y in (box.y, box.bottom)
    ), strict=True)  # fmt: skip
    return Box(min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys))
