"""What stands on every page: heading, north arrow, scale bar, what lines mean, cautions, room for notes."""

from shapely import box as shapely_box

from gardencanvas.fit.report import Verdict
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.bedmap.structures import COVER_DASH, PATH_DASH, SUPPORT_DASH, canes
from gardencanvas.paper.bedmap.verdicts import draw_verdict
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words import named
from gardencanvas.words.language import say
from gardencanvas.words.plain import Measure, day_year

HEAD_MM, FOOT_MM, BARE_FOOT_MM = 16.0, 15.0, 7.0
CAUTION_POINTS = 7.5
_TITLE_POINTS = (15, 13, 11, 9)
_CAUTION_LINE_MM = 3.45
_CAUTION_LEFT_MM = 9.0
_NOTE_LINE_MM, _LEAST_NOTES_MM = 7.0, 16.0
_SAMPLE_MM = (8.0, 3.4)
_NORTH_MM = 12.0


def heading(sheet: Sheet, plan: Plan, title: str, right: str, when: str = "") -> None:
    """Title, scale, garden, layout, year, the days shown, and the north."""
    width = sheet.box.width - _NORTH_MM
    most = sheet.width_of(right, 10, bold=True) + 2
    _title(sheet, title, Box(0, 0, width - most - 4, 7))
    sheet.text(Box(width - most, 0.5, most, 6), right, 10, bold=True, align="right")
    when = when or say("as on {days}", days=day_year(plan.on))
    about = f"{plan.garden.name} · {plan.layout.name}, {plan.layout.year} · {when}"
    sheet.text(Box(0, 7.5, width - 2, 5), about, 8.5)
    _north(sheet, plan.garden.site.bearing_deg, sheet.box.width - 5.0, 6.6)
    sheet.pen(0.35)
    sheet.line(0, 13.6, sheet.box.width, 13.6)


def _title(sheet: Sheet, title: str, box: Box) -> None:
    """A title as large as it fits on its line; a very long one smaller, on two."""
    for points in _TITLE_POINTS:
        if sheet.width_of(title, points, bold=True) <= box.width:
            sheet.text(box, title, points, bold=True)
            return
    sheet.text(box, title, 8, bold=True, lines=True)


def _north(sheet: Sheet, bearing_deg: float, x: float, y: float) -> None:
    """An arrow to the north: the plan's top edge faces ``bearing_deg``."""
    with sheet.turned(x, y, -bearing_deg):
        sheet.pen(0.35)
        sheet.fill(black=True)
        sheet.ring([(0, -4.6), (1.7, 3.4), (0, 1.8)])
        sheet.fill(black=False)
        sheet.ring([(0, -4.6), (-1.7, 3.4), (0, 1.8)])
        sheet.text(Box(-2.5, 3.0, 5, 3.6), say("N"), 8, bold=True, align="middle")


def foot(sheet: Sheet, plan: Plan, scale: int | None, page: tuple[int, int]) -> None:
    """Number of the page; where a drawing is on it, what its lines mean, and its scale bar."""
    y = sheet.box.height - 3.0
    sheet.text(
        Box(sheet.box.width - 40, y - 2.5, 40, 5),
        say("{page} of {pages}", page=page[0], pages=page[1]),
        8,
        align="right",
    )
    if scale is None:
        return
    _scale_bar(sheet, plan.measure, scale, y)
    legend(sheet, plan, y - 8.5)


def _scale_bar(sheet: Sheet, measure: Measure, scale: int, y: float) -> None:
    """Four blocks, black and white by turns."""
    length_m = bar_length(scale, 62)
    length = length_m * 1000 / scale
    sheet.pen(0.25)
    for i in range(4):
        sheet.fill(black=i % 2 == 0)
        x = i * length / 4
        sheet.ring([(x, y - 1.4), (x + length / 4, y - 1.4), (x + length / 4, y), (x, y)])
    sheet.pen(0.25)
    sheet.line(0, y, length, y)
    sheet.text(Box(length + 2.5, y - 3.2, 45, 5), f"{measure.large(length_m)}, 1:{scale}", 8.5)


def bar_length(scale: int, most_mm: float) -> float:
    """The longest of 0.1, 0.2, 0.5, 1, 2, 5 … m that is at most so long on paper."""
    lengths = [m * 10**e for e in range(-1, 4) for m in (1, 2, 5)]
    return max((m for m in lengths if m * 1000 / scale <= most_mm), default=0.1)


def legend(sheet: Sheet, plan: Plan, y: float) -> None:
    """Samples of the lines on the page with their words, in a row."""
    wide, high = _SAMPLE_MM
    x = 0.0
    for verdict in Verdict:
        draw_verdict(sheet, verdict, shapely_box(x, y, x + wide, y + high))
        x = _told(sheet, x, y, named.verdict(verdict))
    middle = y + high / 2
    if plan.layout.supports:
        sheet.pen(0.35, SUPPORT_DASH)
        sheet.line(x, middle, x + wide, middle)
        canes(sheet, [(x, middle), (x + wide / 2, middle), (x + wide, middle)])
        x = _told(sheet, x, y, say("canes, posts"))
    if plan.layout.covers:
        sheet.pen(0.3, COVER_DASH)
        sheet.ring([(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)])
        x = _told(sheet, x, y, say("cover"))
    if plan.layout.paths:
        sheet.pen(0.25, PATH_DASH)
        sheet.line(x, y + 0.6, x + wide, y + 0.6)
        sheet.line(x, y + high - 0.6, x + wide, y + high - 0.6)
        _told(sheet, x, y, say("path"))


def _told(sheet: Sheet, x: float, y: float, word: str) -> float:
    """The word beside a sample; where the next sample begins."""
    wide, high = _SAMPLE_MM
    room = sheet.width_of(word, 7.5) + 0.6
    sheet.text(Box(x + wide + 1.6, y - 0.4, room, high + 0.8), word, 7.5)
    return x + wide + 1.6 + room + 4.4


def caution_height(sheet: Sheet, caution: str) -> float:
    """Height of a caution in its frame, millimetres."""
    if not caution:
        return 0.0
    lines = sheet.lines_of(caution, _caution_width(sheet), CAUTION_POINTS)
    return max(lines * _CAUTION_LINE_MM, 6.0) + 3.4


def _caution_width(sheet: Sheet) -> float:
    return sheet.box.width - _CAUTION_LEFT_MM - 2.5


def draw_caution(sheet: Sheet, caution: str, bottom: float) -> None:
    """Cautions in a frame that ends at a height, with the usual triangle."""
    high = caution_height(sheet, caution)
    top = bottom - high
    sheet.pen(0.3)
    sheet.ring([(0, top), (sheet.box.width, top), (sheet.box.width, bottom - 1), (0, bottom - 1)])
    sheet.pen(0.45)
    sheet.ring([(4.5, top + 1.6), (7.5, top + 6.8), (1.5, top + 6.8)])
    sheet.text(Box(2.5, top + 2.6, 4, 4.4), "!", 9, bold=True, align="middle")
    place = Box(_CAUTION_LEFT_MM, top + 1.2, _caution_width(sheet), high)
    sheet.text(place, caution, CAUTION_POINTS, lines=True)


def draw_notes(sheet: Sheet, top: float, bottom: float) -> None:
    """Lines to write on where there is room for them."""
    if bottom - top < _LEAST_NOTES_MM:
        return
    sheet.text(Box(0, top + 2.0, 40, 4), say("Notes"), 7.5)
    y = top + 2.0 + _NOTE_LINE_MM + 1.0
    sheet.pen(0.1)
    while y <= bottom - 2.0:
        sheet.line(0, y, sheet.box.width, y)
        y += _NOTE_LINE_MM
