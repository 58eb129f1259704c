"""The planting strip: true to size, to lay in the bed along a row; a ruler to check the printer by."""

from math import ceil

from gardencanvas.paper.document import Document, Page, Setup
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.plain import Measure

STRIP_MM = 28.0  # height of one strip
RULER_MM = 100.0
_TOP_MM = 24.0
_OVERLAP_MM = 10.0


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
    box = setup.box
    length = plants * spacing_m * 1000.0
    usable = box.width - _OVERLAP_MM
    count = max(1, ceil((length - _OVERLAP_MM) / usable)) if length > box.width else 1
    each = max(1, int((box.height - _TOP_MM) // (STRIP_MM + 6)))
    pages = tuple(
        _page(title, spacing_m, plants, measure, list(range(first, min(first + each, count))), count)
        for first in range(0, count, each)
    )
    return Document(title, setup, pages)


def _page(title: str, spacing_m: float, plants: int, measure: Measure, strips: list[int], count: int) -> Page:
    def draw(sheet: Sheet) -> None:
        sheet.text(Box(0, 0, sheet.box.width * 0.6, 7), title, 13, bold=True)
        said = f"every {measure.small(spacing_m)}, {plants} plants. Print at 100 %, not “fit to page”."
        sheet.text(Box(0, 7.5, sheet.box.width * 0.6, 5), said, 8.5)
        _ruler(sheet)
        for place, strip in enumerate(strips):
            _strip(sheet, strip, count, _TOP_MM + place * (STRIP_MM + 6), spacing_m, plants)

    return draw


def _ruler(sheet: Sheet) -> None:
    """A hundred millimetres to hold a ruler against."""
    x, y = sheet.box.width - RULER_MM - 1, 12.0
    sheet.text(Box(x, 1, RULER_MM, 4.5), "check: this line is 100 mm long", 8)
    sheet.pen(0.3)
    sheet.line(x, y, x + RULER_MM, y)
    for mm in range(0, 101, 5):
        high = 4.0 if mm % 50 == 0 else 2.6 if mm % 10 == 0 else 1.4
        sheet.line(x + mm, y, x + mm, y - high)


def _strip(sheet: Sheet, number: int, count: int, top: float, spacing_m: float, plants: int) -> None:
    """One strip: its stations, and where the next one is glued on."""
    usable = sheet.box.width - _OVERLAP_MM
    begin = number * usable
    length = plants * spacing_m * 1000.0
    wide = min(length - begin, sheet.box.width)
    sheet.pen(0.3)
    sheet.ring([(0, top), (wide, top), (wide, top + STRIP_MM), (0, top + STRIP_MM)])
    for plant in range(plants):
        x = (plant + 0.5) * spacing_m * 1000.0 - begin
        if -0.01 <= x <= wide + 0.01:
            sheet.pen(0.4)
            sheet.line(x, top, x, top + STRIP_MM * 0.45)
            sheet.pen(0.3)
            sheet.circle(x, top + STRIP_MM * 0.6, 2.0)
            if spacing_m >= 0.02 or plant % 5 == 4:
                sheet.text(Box(x - 5, top + STRIP_MM - 6, 10, 4), str(plant + 1), 7, align="middle")
    if count > 1:
        name = f"{number + 1} of {count}"
        sheet.text(Box(1, top - 4.5, 30, 4), name, 7.5, bold=True)
        if number < count - 1:
            sheet.pen(0.2, (3, 3))
            sheet.line(usable, top, usable, top + STRIP_MM)
            sheet.text(Box(usable - 42, top - 4.5, 42, 4), "lay the next strip here", 7, align="right")
