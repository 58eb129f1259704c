"""All jobs of a layout, in the order of the year."""

from collections.abc import Mapping, Sequence
from datetime import date, timedelta

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.crops.tin import SeedLot
from gardencanvas.fit import check
from gardencanvas.fit.aids import climbs, growing_of
from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.emergence import seeds_to_sow
from gardencanvas.measures.jobs.job import Job
from gardencanvas.measures.jobs.leads import EARLIER_D
from gardencanvas.measures.jobs.plantings import Days, PlantingJobs, Wants
from gardencanvas.measures.jobs.structures import of_covers, of_supports
from gardencanvas.measures.jobs.watering import Grows, of_watering
from gardencanvas.season.growth import follow, span


def jobs(
    garden: Garden,
    layout_id: str,
    report: FitReport | None = None,
    known: Catalogue | None = None,
    lots: Sequence[SeedLot] = (),
) -> tuple[Job, ...]:
    """The year's work of a layout.

    Parameters
    ----------
    report
        The engine's report of it, from which comes when neighbours close over a catch crop; it is made where
        none is given.
    known
        The crops; the shipped ones with the garden's own where none are given.
    lots
        The grower's seed, whose tests say how many to sow.

    Raises
    ------
    KeyError
        If there is no such layout.
    """
    layout = garden.layout(layout_id)
    known = known or catalogue().with_own(garden.crops, garden.varieties)
    report = report or check(garden, layout.id, known)
    crops = {p.id: known.resolve(p.crop, p.variety) for p in layout.plantings}
    days = _days(garden, layout, crops, report)
    wants = _wants(layout, report, known, lots)
    found: list[Job] = []
    for planting in layout.plantings:
        name = planting.id
        found += PlantingJobs(planting, crops[name], days[name], wants[name]).all()
    grown = {p.id: (days[p.id], climbs(crops[p.id])) for p in layout.plantings}
    grows = [Grows(wants[p.id].bed, crops[p.id], days[p.id]) for p in layout.plantings]
    found += [
        *of_supports(layout, grown),
        *of_covers(layout, grown),
        *of_watering(garden.site, layout, grows),
    ]
    return tuple(sorted(found, key=Job.key))


def _days(garden: Garden, layout: Layout, crops: Mapping[str, Crop], report: FitReport) -> dict[str, Days]:
    growing = [growing_of(layout, p, crops[p.id]) for p in layout.plantings]
    if not growing:
        return {}
    course = follow(garden.site, growing, span(garden.site, growing, layout.season))
    return {
        p.id: Days(
            sown=_date(course.sown[row]),
            in_bed=_date(course.in_bed[row]),
            first=report.plantings[p.id].harvest_first,
            last=report.plantings[p.id].harvest_last,
            out=_date(course.out[row]),
            ripe=bool(course.ripe[row]),
        )
        for row, p in enumerate(layout.plantings)
    }


def _wants(layout: Layout, report: FitReport, known: Catalogue, lots: Sequence[SeedLot]) -> dict[str, Wants]:
    earliest = layout.season[0] - timedelta(days=EARLIER_D)
    closing, parts = _closing(report), _parts(layout)
    found = {}
    for planting in layout.plantings:
        bed = bed_of(layout, planting)
        found[planting.id] = Wants(
            bed=bed.id if bed is not None else None,
            begun=planting.start.on < earliest,
            seeds=seeds_to_sow(planting, known, lots),
            part=parts.get(planting.id),
            closes=closing.get(planting.id),
        )
    return found


def _date(day: object) -> date:
    on: date = day.astype(object)  # type: ignore[attr-defined]
    return on


def _closing(report: FitReport) -> dict[str, tuple[date, str]]:
    """When the first neighbour closes over each catch crop, and which, by planting."""
    found: dict[str, tuple[date, str]] = {}
    for finding in report.findings:
        closes = finding.numbers.get("closes")
        if finding.code in (Code.OUT_IN_TIME, Code.TOO_LATE) and isinstance(closes, date):
            name, neighbour = finding.plantings[:2]
            found[name] = min((closes, neighbour), found.get(name, (closes, neighbour)))
    return found


def _parts(layout: Layout) -> dict[str, tuple[int, int]]:
    """Which part of how many of its succession each planting is, counted by start."""
    runs: dict[str, list[Planting]] = {}
    for planting in layout.plantings:
        if planting.succession is not None:
            runs.setdefault(planting.succession, []).append(planting)
    found = {}
    for run in runs.values():
        for number, part in enumerate(sorted(run, key=lambda p: (p.start.on, p.id)), 1):
            found[part.id] = (number, len(run))
    return found
