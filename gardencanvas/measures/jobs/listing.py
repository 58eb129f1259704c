"""All jobs of a layout, in the order of the year."""

from collections.abc import Iterator
from datetime import date

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.fit import check
from gardencanvas.fit.aids import climbs, growing_of
from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.jobs.job import Job
from gardencanvas.measures.jobs.plantings import Days, PlantingJobs
from gardencanvas.measures.jobs.structures import of_covers, of_supports
from gardencanvas.season.growth import follow, span


def jobs(
    garden: Garden, layout_id: str, report: FitReport | None = None, known: Catalogue | None = None
) -> tuple[Job, ...]:
    """The year's work of a layout.

    Parameters
    ----------
    report
        The engine's report of it, from which comes when neighbours close over a catch crop; it is made where
        none is given.
    known
        The crops; the shipped ones with the garden's own where none are given.

    Raises
    ------
    KeyError
        If there is no such layout.
    """
    layout = garden.layout(layout_id)
    known = known or catalogue().with_own(garden.crops, garden.varieties)
    report = report or check(garden, layout.id, known)
    crops = {p.id: known.resolve(p.crop, p.variety) for p in layout.plantings}
    growing = [growing_of(layout, p, crops[p.id]) for p in layout.plantings]
    if not growing:
        return tuple(sorted((*of_supports(layout, {}), *of_covers(layout, {})), key=Job.key))
    course = follow(garden.site, growing, span(garden.site, growing, layout.season))
    days = {
        p.id: Days(
            sown=_date(course.sown[row]),
            in_bed=_date(course.in_bed[row]),
            first=report.plantings[p.id].harvest_first,
            last=report.plantings[p.id].harvest_last,
            out=_date(course.out[row]),
        )
        for row, p in enumerate(layout.plantings)
    }
    closing = _closing(report)
    found: list[Job] = []
    for planting in layout.plantings:
        bed = bed_of(layout, planting)
        each = PlantingJobs(
            planting, crops[planting.id], days[planting.id], bed.id if bed is not None else None,
            _part(layout, planting),
        )  # fmt: skip
        found += each.all()
        closes = closing.get(planting.id)
        if closes is not None and days[planting.id].first < closes <= days[planting.id].last:
            found.append(each.last_picking(closes))
    grown = {p.id: (days[p.id], climbs(crops[p.id])) for p in layout.plantings}
    found += [*of_supports(layout, grown), *of_covers(layout, grown)]
    return tuple(sorted(found, key=Job.key))


def _date(day: object) -> date:
    on: date = day.astype(object)  # type: ignore[attr-defined]
    return on


def _closing(report: FitReport) -> dict[str, date]:
    """When the first neighbour closes over each catch crop, by planting."""
    found: dict[str, date] = {}
    for finding in report.findings:
        closes = finding.numbers.get("closes")
        if finding.code in (Code.OUT_IN_TIME, Code.TOO_LATE) and isinstance(closes, date):
            name = finding.plantings[0]
            found[name] = min(closes, found.get(name, closes))
    return found


def _part(layout: Layout, planting: Planting) -> tuple[int, int] | None:
    """Which part of how many of its succession a planting is, counted by start."""
    if planting.succession is None:
        return None
    return next((i, n) for i, n, p in _numbered(layout, planting.succession) if p is planting)


def _numbered(layout: Layout, succession: str) -> Iterator[tuple[int, int, Planting]]:
    parts = sorted(
        (p for p in layout.plantings if p.succession == succession), key=lambda p: (p.start.on, p.id)
    )
    for number, part in enumerate(parts, 1):
        yield number, len(parts), part
