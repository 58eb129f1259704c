"""The harvest of the parts of a succession, week by week, and how even it is."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Harvest
from gardencanvas.fit import aids
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import Site
from gardencanvas.season.course import Course, Growing
from gardencanvas.season.growth import follow, span
from gardencanvas.season.windows import Window, windows

Floats = NDArray[np.float64]

WEEK_D = 7


@dataclass(frozen=True, slots=True)
class Part:
    """One part of a succession, and when it is harvested.

    ``first`` and ``last`` harvest are those of an average year, both None where it brings none; ``window``
    holds those of simulated years.
    """

    id: str
    on: date
    plants: int
    first: date | None
    last: date | None
    window: Window


def growing_of(layout: Layout, planting: Planting, catalogue: Catalogue) -> Growing:
    """A planting as the season sees it, in its first variety, with the supports and covers of its layout."""
    crop = catalogue.resolve(planting.crop, planting.variety)
    return aids.growing_of(layout, planting, crop)


def course_of(site: Site, layout: Layout, growing: Sequence[Growing]) -> Course:
    """The course of some plantings of a layout."""
    return follow(site, growing, span(site, growing, layout.season))


def parts_of(
    site: Site, layout: Layout, plantings: Sequence[Planting], catalogue: Catalogue
) -> tuple[Part, ...]:
    """The parts that some plantings of a layout make, with their harvests."""
    growing = [growing_of(layout, p, catalogue) for p in plantings]
    course = course_of(site, layout, growing)
    bears = [
        g.crop.harvest is not Harvest.NONE and bool(r) for g, r in zip(growing, course.ripe, strict=True)
    ]
    firsts, lasts = (d.astype(object) for d in (course.harvest_first, course.harvest_last))
    found = windows(site, growing, course.weeks)
    return tuple(
        Part(
            planting.id,
            planting.start.on,
            planting.plants,
            firsts[i] if bears[i] else None,
            lasts[i] if bears[i] else None,
            found[i],
        )
        for i, planting in enumerate(plantings)
    )


def weekly_harvest(parts: Sequence[Part]) -> Floats:
    """Harvest of each week from the first harvest to the last, in plants' worth.

    Every plant's harvest counts 1 and is spread evenly over the days between its first and its last one in
    an average year (common practice where no picking dates are known). A last week that is not whole counts
    as its days at a week's rate, so that its cut does not look like a lean week.

    Returns
    -------
    ndarray, shape (weeks,)
        Empty where nothing is harvested.
    """
    reaped = [(p.first.toordinal(), p.last.toordinal(), p.plants) for p in parts if p.first and p.last]
    if not reaped:
        return np.zeros(0)
    begin, end = min(f for f, _, _ in reaped), max(e for _, e, _ in reaped)
    daily = np.zeros(end - begin + 1)
    for first, last, plants in reaped:
        daily[first - begin : last - begin + 1] += plants / (last - first + 1)
    starts = np.arange(0, len(daily), WEEK_D)
    lengths = np.minimum(len(daily) - starts, WEEK_D)
    return np.asarray(np.add.reduceat(daily, starts) * WEEK_D / lengths)


def evenness(weekly: Floats) -> float | None:
    """How much the weekly harvest varies: its coefficient of variation, standard deviation / mean.

    Over all weeks from the first harvest to the last, those without any included; 0 is wholly even. The
    measure is that of any textbook of statistics (standard deviation of the whole, not of a sample); to judge
    a supply by it is common practice. None where there are fewer than two weeks.
    """
    if len(weekly) < 2 or weekly.sum() <= 0.0:
        return None
    return float(weekly.std() / weekly.mean())
