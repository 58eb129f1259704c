"""The jobs of supports and covers: up before the plants they serve, off when their time is over."""

from collections.abc import Iterator, Mapping
from datetime import date, timedelta

import shapely
from shapely import Polygon

from gardencanvas.fit.aids import reached
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import Cover
from gardencanvas.garden.places import bed_at, middle
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.jobs import leads
from gardencanvas.measures.jobs.job import Job, JobKind
from gardencanvas.measures.jobs.plantings import Days

Grown = Mapping[str, tuple[Days, bool]]  # by planting: its days, and whether it climbs


def of_supports(layout: Layout, grown: Grown) -> Iterator[Job]:
    """Each support that a climber of the layout reaches is up before the first of them is in the bed."""
    for support in layout.supports:
        carried = [
            grown[p.id][0].in_bed
            for p in layout.plantings
            if grown[p.id][1] and bool(reached(p.stations, support).any())
        ]
        if not carried:
            continue
        on = min(carried) - timedelta(days=leads.BEFORE_D)
        bed = bed_at(layout, middle(support))
        numbers = {"height_m": support.height_m, "canes": support.cane_count}
        yield Job(
            id=f"{support.id}:support", kind=JobKind.SUPPORT, on=on - timedelta(days=leads.WEEK_D), until=on,
            item=support.id, bed=bed.id if bed is not None else None, crop=None, variety=None,
            numbers=numbers,
        )  # fmt: skip


def of_covers(layout: Layout, grown: Grown) -> Iterator[Job]:
    """A cover goes on when it says so, else with the first planting under it; off when it says so."""
    for cover in layout.covers:
        under = [grown[p.id][0].in_bed for p in layout.plantings if _lies_under(p, cover)]
        on = cover.first or (min(under) if under else None)
        bed = bed_at(layout, middle(cover))
        where = bed.id if bed is not None else None
        if on is not None:
            kind = JobKind.NET if cover.kind == "mesh" else JobKind.COVER
            yield _cover_job(cover, kind, on, where)
        if cover.last is not None:
            yield _cover_job(cover, JobKind.UNCOVER, cover.last, where)


def _lies_under(planting: Planting, cover: Cover) -> bool:
    inside = shapely.contains_xy(Polygon(cover.outline), planting.stations)
    return bool(inside.mean() > 0.5)


def _cover_job(cover: Cover, kind: JobKind, on: date, bed: str | None) -> Job:
    return Job(
        id=f"{cover.id}:{'uncover' if kind is JobKind.UNCOVER else 'cover'}", kind=kind, on=on, until=on,
        item=cover.id, bed=bed, crop=None, variety=None, numbers={"height_m": cover.height_m},
    )  # fmt: skip
