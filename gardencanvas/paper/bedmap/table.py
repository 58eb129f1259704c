"""The planting table below a bed, and the cautions that go with what grows in it."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import timedelta

from gardencanvas.crops.model import Crop
from gardencanvas.fit.report import Finding, Verdict
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.marks import draw_mark
from gardencanvas.paper.bedmap.plan import Plan
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import crop_name, planting_name, short_day

_POINTS = 7.5
_LINE_MM = 3.4
_PAD_MM = 1.0
COLUMNS = (
    ("", 10), ("crop, variety", 34), ("plants", 12), ("every", 22), ("deep", 12), ("sow", 16),
    ("plant out", 16), ("harvest", 30), ("shares with", 32), ("what to watch", 84),
)  # fmt: skip
NARROW = (
    ("", 9), ("crop, variety", 32), ("plants", 12), ("every", 20), ("deep", 12), ("sow", 15),
    ("plant out", 15), ("harvest", 28), ("shares with", 26), ("what to watch", 40),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Row:
    """One planting of the table: its number and its cells."""

    number: int
    cells: tuple[str, ...]


def rows_of(plan: Plan, numbered: Sequence[tuple[int, Planting]]) -> tuple[Row, ...]:
    """The rows of the table."""
    return tuple(Row(number, tuple(_cells(plan, number, planting))) for number, planting in numbered)


def _cells(plan: Plan, number: int, planting: Planting) -> Iterator[str]:
    crop = plan.catalogue.resolve(planting.crop, planting.variety)
    fit = plan.report.plantings[planting.id]
    pattern = planting.pattern
    spacing = plan.measure.small(pattern.spacing_m)
    if pattern.kind == "rows" and pattern.rows > 1:
        spacing += f" × {plan.measure.small(pattern.row_spacing_m)}"
    start = planting.start
    yield str(number)
    yield planting_name(plan.catalogue, planting)
    clumps = f" ({pattern.count} × {planting.per_station})" if planting.per_station > 1 else ""
    yield f"{planting.plants}{clumps}"
    yield spacing
    sown = start.kind == "sown"
    depth = crop.sowing_depth_m
    yield plan.measure.small(depth.mid) if sown and depth is not None else "–"
    yield _sow(planting, crop)
    yield short_day(start.on) if start.kind in ("raised", "set") else ("seen" if not sown else "–")
    yield f"{short_day(fit.harvest_first)} – {short_day(fit.harvest_last)}"
    yield ", ".join(_shares(plan, planting)) or "–"
    yield _watch(plan, planting)


def _sow(planting: Planting, crop: Crop) -> str:
    start = planting.start
    if start.kind == "sown":
        return short_day(start.on)
    if start.kind != "raised":
        return "–"
    if start.sown_on is not None:
        return short_day(start.sown_on)
    if crop.nursery_d is None:
        return "not known"
    return short_day(start.on - timedelta(days=round(crop.nursery_d.mid)))


def _shares(plan: Plan, planting: Planting) -> list[str]:
    """The crops it shares ground with, each once."""
    names: dict[str, None] = {}
    for finding in plan.report.of(planting.id):
        if finding.verdict is Verdict.SHARES:
            for other in finding.plantings:
                item = plan.layout.by_id.get(other)
                if other != planting.id and isinstance(item, Planting):
                    names[crop_name(plan.catalogue, item.crop)] = None
    return list(names)


def _watch(plan: Plan, planting: Planting) -> str:
    """What is wrong with it, worst first, in at most two sentences."""
    found: list[Finding] = [
        f
        for f in plan.report.of(planting.id)
        if f.verdict >= Verdict.STRAINS and f.plantings[0] == planting.id
    ]
    said = [reason(f, plan.garden, plan.layout.id, plan.catalogue, plan.measure) for f in found[:2]]
    more = f" And {len(found) - 2} more." if len(found) > 2 else ""
    return " ".join(said) + more


def cautions(plan: Plan, plantings: Sequence[Planting]) -> str:
    """The usual cautions for what grows in a bed; each crop once. Empty where there are none."""
    said: dict[str, str] = {}
    for planting in plantings:
        crop = plan.catalogue.resolve(planting.crop, planting.variety)
        told = [f"{h.part}: {h.hazard}. {h.caution}" for h in crop.hazards if h.severity != "low"]
        if told:
            said[crop.name] = f"{crop.name} – {' '.join(told)}"
    if not said:
        return ""
    return "Caution. " + "  ".join(said.values()) + " Follow local rules and qualified advice."


class Table:
    """Lays the rows out for a sheet's width; draws as many as there is room for."""

    def __init__(self, sheet: Sheet, rows: Sequence[Row]) -> None:
        self._columns = COLUMNS if sheet.box.width > 230 else NARROW
        self._sheet = sheet
        self.rows = list(rows)
        unit = sheet.box.width / sum(w for _, w in self._columns)
        self._widths = [w * unit for _, w in self._columns]
        self.heights = [self._height(row) for row in self.rows]

    def _height(self, row: Row) -> float:
        most = max(
            self._sheet.lines_of(cell, width - 1.5, _POINTS)
            for cell, width in zip(row.cells, self._widths, strict=True)
        )
        return most * _LINE_MM + _PAD_MM

    @property
    def height(self) -> float:
        """Of the whole table, its heading included."""
        return 5.0 + sum(self.heights)

    def draw(self, rows: Sequence[int], top: float) -> float:
        """Draw some rows by index below their heading; where they end."""
        sheet, x = self._sheet, 0.0
        for (name, _), width in zip(self._columns, self._widths, strict=True):
            sheet.text(Box(x, top, width - 1, 4), name, 7, bold=True)
            x += width
        sheet.pen(0.25)
        sheet.line(0, top + 4.4, sheet.box.width, top + 4.4)
        y = top + 5.0
        for index in rows:
            self._draw(self.rows[index], y)
            y += self.heights[index]
            sheet.pen(0.08)
            sheet.line(0, y - 0.3, sheet.box.width, y - 0.3)
        return y

    def _draw(self, row: Row, y: float) -> None:
        x = 0.0
        for i, (cell, width) in enumerate(zip(row.cells, self._widths, strict=True)):
            if i == 0:
                draw_mark(self._sheet, row.number, 1.4, y + 1.9, 1.7)
                self._sheet.text(Box(3.4, y, width - 3.4, _LINE_MM + 0.4), cell, 8, bold=True)
            else:
                self._sheet.text(Box(x, y, width - 1.5, 400), cell, _POINTS, lines=True)
            x += width


def batches(table: Table, first_room: float, room: float) -> list[list[int]]:
    """Which rows stand on the bed's own page, and which on each page after it."""
    pages: list[list[int]] = [[]]
    left = first_room - 5.0
    for index, height in enumerate(table.heights):
        if height > left and (pages[-1] or len(pages) == 1):
            pages.append([])
            left = room - 5.0
        pages[-1].append(index)
        left -= height
    return pages
