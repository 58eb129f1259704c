"""Marks of plants on paper: ten shapes that stay apart in black and white, and their numbers."""

from collections.abc import Callable
from math import cos, pi, sin

from gardencanvas.paper.sheet import Sheet

Mark = Callable[[Sheet, float, float, float], None]


def draw_mark(sheet: Sheet, number: int, x: float, y: float, size: float = 1.5) -> None:
    """The mark of a number from 1 to 10, its middle at a place in millimetres."""
    sheet.pen(0.2)
    _MARKS[(number - 1) % len(_MARKS)](sheet, x, y, size / 2)


def _ring(sheet: Sheet, x: float, y: float, r: float) -> None:
    sheet.fill(black=False)
    sheet.circle(x, y, r)


def _polygon(corners: int, turn: float = -pi / 2, *, full: bool = False) -> Mark:
    def draw(sheet: Sheet, x: float, y: float, r: float) -> None:
        ring = [
            (x + 1.15 * r * cos(turn + 2 * pi * i / corners), y + 1.15 * r * sin(turn + 2 * pi * i / corners))
            for i in range(corners)
        ]
        sheet.fill(black=full)
        sheet.ring(ring)

    return draw


def _disc(sheet: Sheet, x: float, y: float, r: float) -> None:
    sheet.fill(black=True)
    sheet.circle(x, y, r)


def _plus(sheet: Sheet, x: float, y: float, r: float) -> None:
    sheet.pen(0.35)
    sheet.line(x - r, y, x + r, y)
    sheet.line(x, y - r, x, y + r)


def _cross(sheet: Sheet, x: float, y: float, r: float) -> None:
    sheet.pen(0.35)
    sheet.line(x - r, y - r, x + r, y + r)
    sheet.line(x - r, y + r, x + r, y - r)


def _dotted_ring(sheet: Sheet, x: float, y: float, r: float) -> None:
    sheet.fill(black=False)
    sheet.circle(x, y, r)
    sheet.fill(black=True)
    sheet.circle(x, y, r * 0.3)


_MARKS: tuple[Mark, ...] = (
    _ring,
    _polygon(4, pi / 4, full=True),
    _plus,
    _polygon(3),
    _disc,
    _polygon(4),
    _cross,
    _polygon(3, full=True),
    _polygon(4, pi / 4),
    _dotted_ring,
)
