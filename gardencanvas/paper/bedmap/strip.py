"""The planting strip: true to size, to lay in the bed along a row; a ruler to check the printer by."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil

from gardencanvas.paper.document import Document, Page, Setup
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.language import say, say_many
from gardencanvas.words.plain import Measure

STRIP_MM = 26.0  # height of one strip
RULER_MM = 100.0
OVERLAP_MM = 10.0
_TOP_MM, _BETWEEN_MM = 26.0, 7.0
_NEAR_MM = 0.01
_INCH_MM = 25.4


@dataclass(frozen=True, slots=True)
class Strip:
    """What a strip marks: stations every so many metres, the first half of that from its begin."""

    title: str
    spacing_m: float
    plants: int
    measure: Measure

    @property
    def spacing_mm(self) -> float:
        """Between two stations."""
        return self.spacing_m * 1000.0

    @property
    def length_mm(self) -> float:
        """Of the whole strip."""
        return self.plants * self.spacing_mm


def planting_strip(
    title: str, spacing_m: float, plants: int, measure: Measure, setup: Setup | None = None
) -> Document:
    """Strips that, cut and glued end to end, mark every station of a row; the first half a spacing in.

    Parameters
    ----------
    plants
        How many stations to mark; the strip ends half a spacing after the last.
    """
    setup = setup or Setup()
    strip = Strip(title, spacing_m, plants, measure)
    box = setup.box
    count = strips_for(strip.length_mm, box.width)
    each = max(1, int((box.height - _TOP_MM) // (STRIP_MM + _BETWEEN_MM)))
    firsts = range(0, count, each)
    pages = tuple(
        _page(strip, list(range(first, min(first + each, count))), count, (number, len(firsts)))
        for number, first in enumerate(firsts, 1)
    )
    return Document(title, setup, pages)


def strips_for(length_mm: float, room_mm: float) -> int:
    """How many strips a length takes when each is laid over the end of the one before."""
    if length_mm <= room_mm:
        return 1
    return ceil((length_mm - OVERLAP_MM) / (room_mm - OVERLAP_MM) - 1e-9)


def _page(strip: Strip, strips: Sequence[int], count: int, of: tuple[int, int]) -> Page:
    def draw(sheet: Sheet) -> None:
        wide = sheet.box.width - RULER_MM - 10
        sheet.text(Box(0, 0, wide, 7), strip.title, 13, bold=True)
        said = say_many(
            "every {every}, {n} plant. Print at 100 %, not “fit to page”.",
            "every {every}, {n} plants. Print at 100 %, not “fit to page”.",
            strip.plants,
            every=strip.measure.small(strip.spacing_m),
        )
        sheet.text(Box(0, 7.5, wide, 10), said, 8.5, lines=True)
        _check_ruler(sheet)
        if count > 1:
            how = say("Cut the strips out and lay each one’s left end on the dashed line of the one before.")
            sheet.text(Box(0, 17.0, sheet.box.width - 20, 4), how, 8)
        sheet.text(
            Box(sheet.box.width - 20, 17.0, 20, 4),
            say("{page} of {pages}", page=of[0], pages=of[1]),
            8,
            align="right",
        )
        for place, number in enumerate(strips):
            _draw(sheet, strip, number, count, _TOP_MM + place * (STRIP_MM + _BETWEEN_MM))

    return draw


def _named(title: str, number: int, count: int) -> str:
    return say("{what}, strip {number} of {count}", what=title, number=number + 1, count=count)


def _check_ruler(sheet: Sheet) -> None:
    """A hundred millimetres to hold a ruler against."""
    x, y = sheet.box.width - RULER_MM - 1, 12.0
    sheet.text(Box(x, 1, RULER_MM, 4.5), say("Check: this line is 100 mm long"), 8)
    sheet.pen(0.25)
    sheet.line(x, y, x + RULER_MM, y)
    for mm in range(0, 101, 5):
        high = 4.0 if mm % 50 == 0 else 2.6 if mm % 10 == 0 else 1.4
        sheet.line(x + mm, y, x + mm, y - high)


def _draw(sheet: Sheet, strip: Strip, number: int, count: int, top: float) -> None:
    """One strip: its stations, a tape along its lower edge, and where the next one is laid."""
    usable = sheet.box.width - OVERLAP_MM
    begin = number * usable
    wide = min(strip.length_mm - begin, sheet.box.width)
    sheet.pen(0.25)
    sheet.ring([(0, top), (wide, top), (wide, top + STRIP_MM), (0, top + STRIP_MM)])
    _tape(sheet, strip, begin, wide, top + STRIP_MM)
    _stations(sheet, strip, begin, wide, top)
    name = strip.title if count == 1 else _named(strip.title, number, count)
    last = number == count - 1
    room = wide - (48 if not last else 0)
    sheet.text(Box(0.5, top - 4.4, max(room, 40), 4), name, 7.5, bold=True)
    if not last:
        sheet.pen(0.2, (3, 3))
        sheet.line(usable, top, usable, top + STRIP_MM)
        sheet.text(Box(usable - 46, top - 4.4, 46, 4), say("the next strip begins here"), 7, align="right")


def _stations(sheet: Sheet, strip: Strip, begin: float, wide: float, top: float) -> None:
    """A line and a ring where each plant goes, numbered."""
    close = strip.spacing_mm < 12
    for plant in range(strip.plants):
        x = (plant + 0.5) * strip.spacing_mm - begin
        if not -_NEAR_MM <= x <= wide + _NEAR_MM:
            continue
        sheet.pen(0.5)
        sheet.line(x, top, x, top + 8.0)
        sheet.pen(0.3)
        sheet.fill(black=False)
        sheet.circle(x, top + 10.0, min(2.0, strip.spacing_mm * 0.35))
        if not close or plant % 5 == 4 or plant == 0:
            place = Box(min(max(x - 5, 0.3), max(wide - 10.3, 0.3)), top + 12.6, 10, 4)
            sheet.text(place, str(plant + 1), 8, bold=True, align="middle")


def _tape(sheet: Sheet, strip: Strip, begin: float, wide: float, bottom: float) -> None:
    """Centimetres, or quarter inches, along the lower edge, from the begin of the first strip."""
    inches = strip.measure.units == "imperial"
    step, whole = (_INCH_MM / 4, 4) if inches else (10.0, 10)
    sheet.pen(0.18)
    first = ceil((begin - _NEAR_MM) / step)
    for i in range(first, int((begin + wide + _NEAR_MM) / step) + 1):
        x = i * step - begin
        numbered = i % whole == 0
        half = i % (whole // 2) == 0
        sheet.line(x, bottom, x, bottom - (3.4 if numbered else 2.4 if half else 1.4))
        if numbered and 5 <= x <= wide - 6:
            said = f"{i // 4} in" if inches else f"{i} cm"
            sheet.text(Box(x - 8, bottom - 7.0, 16, 3.4), said, 7, align="middle")
