"""What stands on every page: heading, scale bar, north arrow, the meaning of marks."""

from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.plain import day_year

HEAD_MM, FOOT_MM = 15.0, 9.0


def heading(sheet: Sheet, plan: Plan, title: str, right: str, when: str = "") -> None:
    """Title, scale, garden, layout, year and the days shown."""
    width = sheet.box.width
    sheet.text(Box(0, 0, width * 0.7, 7), title, 14, bold=True)
    sheet.text(Box(width * 0.6, 0.5, width * 0.4, 5), right, 9, bold=True, align="right")
    when = when or f"as on {day_year(plan.on)}"
    about = f"{plan.garden.name} · {plan.layout.name}, {plan.layout.year} · {when}"
    sheet.text(Box(0, 7.5, width, 4.5), about, 8.5)
    sheet.pen(0.35)
    sheet.line(0, 13, width, 13)


def foot(sheet: Sheet, plan: Plan, scale: int, page: tuple[int, int]) -> None:
    """Scale bar, north arrow, number of the page and what the lines mean."""
    y = sheet.box.height - 4
    length_m = bar_length(scale, 60)
    length = length_m * 1000 / scale
    sheet.pen(0.4)
    sheet.line(0, y, length, y)
    for share in (0.0, 0.5, 1.0):
        sheet.line(length * share, y - 1.5, length * share, y + 1.5)
    sheet.text(Box(length + 2, y - 2.5, 30, 5), f"{plan.measure.large(length_m)}, 1:{scale}", 8)
    key = "thin: clear · double: shares · dashed: strains · thick: clashes"
    middle = Box(length + 34, y - 2.5, max(sheet.box.width - length - 75, 10), 5)
    sheet.text(middle, key, 6.5, align="middle")
    sheet.text(Box(sheet.box.width - 38, y - 2.5, 24, 5), f"{page[0]} of {page[1]}", 8, align="right")
    _north(sheet, plan.garden.site.bearing_deg, sheet.box.width - 4, y - 1.5)


def bar_length(scale: int, most_mm: float) -> float:
    """The longest of 0.1, 0.2, 0.5, 1, 2, 5 … m that is at most so long on paper."""
    lengths = [m * 10**e for e in range(-1, 4) for m in (1, 2, 5)]
    return max((m for m in lengths if m * 1000 / scale <= most_mm), default=0.1)


def _north(sheet: Sheet, bearing_deg: float, x: float, y: float) -> None:
    """An arrow to the north: the plan's top edge faces ``bearing_deg``."""
    painter = sheet.painter
    painter.save()
    painter.translate(sheet.at(x, y))
    painter.rotate(-bearing_deg)
    sheet.pen(0.4)
    k = sheet.per_mm
    painter.drawLine(0, int(3 * k), 0, int(-4 * k))
    painter.drawLine(0, int(-4 * k), int(-1.2 * k), int(-1.8 * k))
    painter.drawLine(0, int(-4 * k), int(1.2 * k), int(-1.8 * k))
    painter.restore()
    sheet.text(Box(x - 8, y - 2.5, 5, 5), "N", 8, bold=True, align="right")
