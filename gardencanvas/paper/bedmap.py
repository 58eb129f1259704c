"""The bed map: the whole garden on the first page, then a page for each bed, true to a stated scale."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from math import hypot
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF
from PySide6.QtGui import QGuiApplication, QPageLayout, QPageSize, QPainter, QPdfWriter
from shapely import Point

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.files import CannotWrite, write_whole
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed, LineSupport, RingSupport
from gardencanvas.garden.places import bed_ground, bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.sheet import Box, Sheet, largest_scale
from gardencanvas.words.plain import Measure, day, planting_name, short_day

Place = Callable[[tuple[float, float]], tuple[float, float]]
Corner = NDArray[np.float64]

PAPERS = {
    "a4": QPageSize.PageSizeId.A4,
    "a3": QPageSize.PageSizeId.A3,
    "letter": QPageSize.PageSizeId.Letter,
    "tabloid": QPageSize.PageSizeId.Tabloid,
}
MARGIN_MM = 12.0
_RESOLUTION = 1200
_TABLE_LINE = 5.0
_COLUMNS = (
    ("no.", 9),
    ("crop", 52),
    ("plants", 16),
    ("spacing", 32),
    ("start", 40),
    ("harvest", 42),
    ("watch", 80),
)


@dataclass(frozen=True)
class Plan:
    """What a bed map shows."""

    garden: Garden
    layout: Layout
    report: FitReport
    catalogue: Catalogue
    measure: Measure
    on: date


def write_bedmap(plan: Plan, path: Path, paper: str = "a4", scale: int | None = None) -> int:
    """Write the bed map as PDF; the number of its pages.

    Raises
    ------
    CannotWrite
        If the file cannot be written; nothing half-written stays.
    """
    app = QGuiApplication.instance() or QGuiApplication(["gardencanvas", "-platform", "offscreen"])
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    size = QPageSize(PAPERS[paper])
    # the layout first, then the resolution, then the painter: in another order the scale is off
    writer.setPageLayout(
        QPageLayout(size, QPageLayout.Orientation.Landscape, margins, QPageLayout.Unit.Millimeter)
    )
    writer.setResolution(_RESOLUTION)
    writer.setTitle(f"{plan.garden.name}: {plan.layout.name}, {plan.layout.year}")
    writer.setCreator("Garden Canvas")
    room = writer.pageLayout().paintRect(QPageLayout.Unit.Millimeter)
    box = Box(0.0, 0.0, room.width(), room.height())
    painter = QPainter()
    if not painter.begin(writer):
        raise CannotWrite(f"{path.name} could not be written: no PDF can be made here.")
    pages = 0
    try:
        sheet = Sheet(painter, writer.resolution() / 25.4, box)
        _overview(sheet, plan, scale)
        pages = 1
        for bed in plan.layout.beds:
            inside = [p for p in plan.layout.plantings if bed_of(plan.layout, p) is bed]
            writer.newPage()
            left = _bed_page(sheet, plan, bed, inside, scale)
            pages += 1
            while left:
                writer.newPage()
                _heading(sheet, plan, bed.name, "")
                left = _table(sheet, plan, left, 16.0)
                pages += 1
    finally:
        painter.end()
    buffer.close()
    write_whole(path, bytes(data.data()))
    del app  # fonts needed it until here
    return pages


def _heading(sheet: Sheet, plan: Plan, title: str, right: str) -> None:
    width = sheet.box.width
    sheet.text(Box(0, 0, width * 0.62, 7), title, 14, bold=True)
    sheet.text(Box(width * 0.5, 0, width * 0.5, 5), right, 8, align="right")
    about = f"{plan.garden.name} · {plan.layout.name}, {plan.layout.year} · plants as on {day(plan.on)}"
    sheet.text(Box(0, 7.5, width, 4.5), about, 8)
    sheet.pen(0.3)
    sheet.line(0, 13, width, 13)


def _overview(sheet: Sheet, plan: Plan, scale: int | None) -> None:
    """All beds and fixtures, with names and measures."""
    box = sheet.box
    outlines = [list(b.outline) for b in plan.layout.beds] + [list(f.outline) for f in plan.garden.fixtures]
    if not outlines:
        _heading(sheet, plan, plan.garden.name, "")
        sheet.text(Box(0, 20, box.width, 6), "There is no bed in this layout yet.", 10)
        return
    corners = np.array([p for ring in outlines for p in ring])
    low, high = corners.min(axis=0), corners.max(axis=0)
    room = Box(0, 18, box.width, box.height - 36)
    chosen = scale or largest_scale(float(high[0] - low[0]), float(high[1] - low[1]), room)
    _heading(sheet, plan, plan.garden.name, f"1:{chosen}")
    place = _placing(low, high, room, chosen)
    for fixture in plan.garden.fixtures:
        sheet.pen(0.35, (3, 2))
        ring = [place(p) for p in fixture.outline]
        sheet.ring(ring)
        x, y = np.mean(ring, axis=0)
        sheet.text(Box(float(x) - 25, float(y) - 2, 50, 4), fixture.name, 7, align="middle")
    for planting in plan.layout.plantings:
        sheet.pen(0.15)
        ring = [place((float(x), float(y))) for x, y in planting.pattern.corners]
        sheet.ring(ring)
    for bed in plan.layout.beds:
        sheet.pen(0.5)
        ring = [place(p) for p in bed.outline]
        sheet.ring(ring)
        x, y = np.min(ring, axis=0)
        sheet.text(
            Box(float(x), float(y) - 5, 80, 4.5), f"{bed.name} · {_size(bed, plan.measure)}", 8, bold=True
        )
    _foot(sheet, plan, chosen)


def _bed_page(
    sheet: Sheet, plan: Plan, bed: Bed, inside: list[Planting], scale: int | None
) -> list[tuple[int, Planting]]:
    """One bed with its stations and table; what of the table did not fit."""
    corners = np.array(bed.outline)
    low, high = corners.min(axis=0), corners.max(axis=0)
    rows = min(len(inside), 12) + 2
    room = Box(4, 22, sheet.box.width - 8, max(sheet.box.height - 22 - 16 - rows * _TABLE_LINE, 60))
    chosen = scale or largest_scale(float(high[0] - low[0]), float(high[1] - low[1]), room)
    _heading(sheet, plan, bed.name, f"1:{chosen} · {_size(bed, plan.measure)}")
    place = _placing(low, high, room, chosen)
    sheet.pen(0.5)
    sheet.ring([place(p) for p in bed.outline])
    numbered = list(enumerate(inside, start=1))
    for number, planting in numbered:
        _planting_marks(sheet, plan, planting, number, place)
    for support in plan.layout.supports:
        if isinstance(support, RingSupport):
            if bed_ground(bed).distance(Point(support.centre)) < 0.01:
                sheet.pen(0.35, (1, 2))
                sheet.circle(*place(support.centre), support.radius_m * 1000 / chosen)
        elif isinstance(support, LineSupport) and bed_ground(bed).distance(Point(support.begin)) < 0.01:
            sheet.pen(0.5, (1, 2))
            sheet.line(*place(support.begin), *place(support.end))
    _sides(sheet, bed, plan.measure, place)
    bottom = max(place(p)[1] for p in bed.outline) + 9
    left = _table(sheet, plan, numbered, bottom)
    _foot(sheet, plan, chosen)
    return left


def _placing(low: Corner, high: Corner, room: Box, scale: int) -> Place:
    """From plan metres to millimetres on the sheet, the ground centred in the room."""
    per_m = 1000 / scale
    x0 = room.x + max(room.width - float(high[0] - low[0]) * per_m, 0) / 2
    y0 = room.y

    def place(point: tuple[float, float]) -> tuple[float, float]:
        return x0 + (point[0] - float(low[0])) * per_m, y0 + (point[1] - float(low[1])) * per_m

    return place


def _planting_marks(sheet: Sheet, plan: Plan, planting: Planting, number: int, place: Place) -> None:
    """A small cross at each station, the planting's outline by verdict, its number."""
    fit = plan.report.plantings.get(planting.id)
    verdict = fit.verdict if fit else Verdict.CLEAR
    sheet.pen(0.2)
    stations = [place((float(x), float(y))) for x, y in planting.stations]
    for x, y in stations:
        sheet.line(x - 0.7, y, x + 0.7, y)
        sheet.line(x, y - 0.7, x, y + 0.7)
    ring = [place((float(x), float(y))) for x, y in planting.pattern.corners]
    widths = {Verdict.CLEAR: 0.2, Verdict.SHARES: 0.2, Verdict.STRAINS: 0.3, Verdict.CLASHES: 0.6}
    sheet.pen(widths[verdict], (4, 3) if verdict is Verdict.STRAINS else ())
    sheet.ring(ring)
    if verdict is Verdict.SHARES:
        middle = np.mean(ring, axis=0)
        sheet.ring([tuple(middle + (np.array(p) - middle) * _inner(p, middle)) for p in ring])
    x, y = stations[len(stations) // 2] if len(stations) > 2 else stations[0]
    label = str(number)
    wide = sheet.width_of(label, 8, bold=True) + 1.6
    sheet.painter.fillRect(
        sheet.at(x - wide / 2, 0).x(), sheet.at(0, y - 2).y(), wide * sheet.per_mm, 4 * sheet.per_mm, "white"
    )
    sheet.text(Box(x - wide / 2, y - 2, wide, 4), label, 8, bold=True, align="middle")


def _inner(point: tuple[float, float], middle: Corner) -> float:
    """The factor that lays a second line 0.7 mm inside the first."""
    reach = hypot(point[0] - middle[0], point[1] - middle[1])
    return max(1 - 0.9 / reach, 0.2) if reach > 0 else 1.0


def _sides(sheet: Sheet, bed: Bed, measure: Measure, place: Place) -> None:
    """The length beside each side long enough to hold it."""
    corners = list(bed.outline)
    if len(corners) > 8:
        return
    middle = np.mean([place(p) for p in corners], axis=0)
    for begin, end in zip(corners, corners[1:] + corners[:1], strict=True):
        (x0, y0), (x1, y1) = place(begin), place(end)
        if hypot(x1 - x0, y1 - y0) < 12:
            continue
        mid = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
        away = np.array([y1 - y0, x0 - x1]) / hypot(x1 - x0, y1 - y0)
        if away @ (mid - middle) < 0:
            away = -away
        x, y = mid + away * (3.0 if abs(away[1]) > 0.7 else 9.0)
        length = measure.large(hypot(end[0] - begin[0], end[1] - begin[1]))
        sheet.text(Box(float(x) - 12, float(y) - 2, 24, 4), length, 7, align="middle")


def _table(
    sheet: Sheet, plan: Plan, rows: list[tuple[int, Planting]], top: float
) -> list[tuple[int, Planting]]:
    """The planting table; the rows that did not fit on the sheet."""
    if not rows:
        sheet.text(Box(0, top, sheet.box.width, 5), "Nothing is planted here.", 8)
        return []
    room = sheet.box.height - 14 - top
    fits = max(int(room / _TABLE_LINE) - 1, 1)
    wide = sum(w for _, w in _COLUMNS)
    unit = sheet.box.width / wide
    x = 0.0
    for name, width in _COLUMNS:
        sheet.text(Box(x, top, width * unit - 2, _TABLE_LINE), name, 7.5, bold=True)
        x += width * unit
    sheet.pen(0.2)
    sheet.line(0, top + _TABLE_LINE, sheet.box.width, top + _TABLE_LINE)
    for line, (number, planting) in enumerate(rows[:fits], start=1):
        x = 0.0
        for (_, width), cell in zip(_COLUMNS, _cells(plan, number, planting), strict=True):
            sheet.text(Box(x, top + line * _TABLE_LINE, width * unit - 2, _TABLE_LINE), cell, 7.5)
            x += width * unit
    return rows[fits:]


def _cells(plan: Plan, number: int, planting: Planting) -> tuple[str, ...]:
    crop = plan.catalogue.resolve(planting.crop, planting.variety)
    fit = plan.report.plantings[planting.id]
    pattern = planting.pattern
    spacing = plan.measure.small(pattern.spacing_m)
    if pattern.kind == "rows" and pattern.rows > 1:
        spacing += f" × {plan.measure.small(pattern.row_spacing_m)}"
    word = {"sown": "sow", "raised": "plant out", "set": "set", "volunteer": "seen"}[planting.start.kind]
    watch = "; ".join(f"{h.part}: {h.hazard}" for h in crop.hazards if h.severity != "low")
    if fit.verdict >= Verdict.STRAINS:
        watch = "; ".join(filter(None, (fit.verdict.word, watch)))
    return (
        str(number),
        planting_name(plan.catalogue, planting),
        str(planting.plants),
        spacing,
        f"{word} {day(planting.start.on)}",
        f"{short_day(fit.harvest_first)} – {short_day(fit.harvest_last)}",
        watch,
    )


def _size(bed: Bed, measure: Measure) -> str:
    corners = np.array(bed.outline)
    wide, high = corners.max(axis=0) - corners.min(axis=0)
    return measure.sides(float(wide), float(high))


def _foot(sheet: Sheet, plan: Plan, scale: int) -> None:
    """Scale bar, north arrow and what the lines mean."""
    y = sheet.box.height - 5
    length_m = _bar_length(scale, 60)
    length = length_m * 1000 / scale
    sheet.pen(0.4)
    sheet.line(0, y, length, y)
    for share in (0.0, 0.5, 1.0):
        sheet.line(length * share, y - 1.5, length * share, y + 1.5)
    sheet.text(Box(length + 2, y - 2.5, 30, 5), plan.measure.large(length_m), 8)
    key = "thin line clear · double shares · dashed strains · thick clashes · + one station"
    sheet.text(Box(70, y - 2.5, sheet.box.width - 100, 5), key, 7, align="middle")
    _north(sheet, plan.garden.site.bearing_deg, sheet.box.width - 6, y - 2)


def _bar_length(scale: int, most_mm: float) -> float:
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
