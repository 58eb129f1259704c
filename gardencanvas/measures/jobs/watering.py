"""When watering begins in each bed of an average year: one job a bed, from its first to its last dry week."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.site import Site
from gardencanvas.measures.jobs.job import Job, JobKind
from gardencanvas.measures.jobs.plantings import Days
from gardencanvas.measures.reckoned.water import Sky, coefficient, coefficients, stages

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Grows:
    """A crop in a bed, with its days."""

    bed: str | None
    crop: Crop
    days: Days


def of_watering(site: Site, layout: Layout, grown: Iterable[Grows]) -> Iterator[Job]:
    """For each bed, the weeks of the season in which its thirstiest crop uses more than the rain brings.

    Kc ET₀ − Pe in mm, which is litres on a square metre (FAO-56 eq. 58 and 66); the average year, so that a
    wet or dry one begins later or sooner. None where the site's rain or warmth is not known.
    """
    sky = Sky(site)
    if not sky.known:
        return
    first, last = layout.season
    weeks = np.arange(np.datetime64(first), np.datetime64(last) + np.timedelta64(1, "D"), 7)
    takes, brings = sky.weeks(weeks)
    wanted: dict[str, Floats] = {}
    for each in grown:
        if each.bed is not None:
            short = np.maximum(_kc(each, weeks) * takes - brings, 0.0) * _stands(each.days, weeks)
            wanted[each.bed] = np.maximum(wanted.get(each.bed, np.zeros(len(weeks))), short)
    for bed in layout.beds:
        dry = np.flatnonzero(wanted.get(bed.id, np.zeros(0)) >= LEAST_MM)
        if len(dry):
            yield _job(bed.id, weeks, dry, wanted[bed.id], last)


LEAST_MM = 1.0  # a week that lacks less is not worth a can (common practice)


def _job(bed: str, weeks: NDArray[np.datetime64], dry: NDArray[np.int64], wanted: Floats, last: date) -> Job:
    most = int(np.argmax(wanted))
    begin, end, driest = (weeks[k].astype(object) for k in (dry[0], dry[-1], most))
    return Job(
        id=f"{bed}:water", kind=JobKind.WATER, on=begin, until=min(end + timedelta(days=6), last), item=bed,
        bed=bed, crop=None, variety=None, numbers={"litres": float(wanted[most]), "dry": driest},
    )  # fmt: skip


def _stands(days: Days, weeks: NDArray[np.datetime64]) -> NDArray[np.bool_]:
    """In which weeks it is in the bed, by their middle."""
    middle = weeks + np.timedelta64(3, "D")
    inside: NDArray[np.bool_] = (middle >= np.datetime64(days.in_bed)) & (middle <= np.datetime64(days.out))
    return inside


def _kc(grows: Grows, weeks: NDArray[np.datetime64]) -> Floats:
    """Its crop coefficient in the middle of each week: stages stretched to the days it really stands."""
    some = np.array(stages(grows.crop))
    stood = (grows.days.out - grows.days.in_bed).days + 1
    middle = (weeks - np.datetime64(grows.days.in_bed)).astype(np.int64) + 3
    return coefficient(middle, some * stood / max(some.sum(), 1e-9), coefficients(grows.crop))
