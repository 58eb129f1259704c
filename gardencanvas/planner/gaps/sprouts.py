"""Crops that might be started, as columns: their sizes week by week and their dates, all at once.

The sizes are those that ``fit.stands`` gives a stand at the crop's usual spacing.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property, lru_cache
from math import pi, sqrt

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.fit.ground import usual_spacing
from gardencanvas.fit.needs import light_good, light_least
from gardencanvas.fit.own import usual_load
from gardencanvas.fit.stands import EXTINCTION, grid
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import Site
from gardencanvas.planner.gaps.ways import Way
from gardencanvas.season.course import Course, Days, Growing
from gardencanvas.season.growth import follow

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@dataclass(frozen=True, eq=False)
class Sprouts:
    """Ways with a start each. ``sizes`` has shape (5, n, weeks) with the rows of ``Stand.sizes``."""

    ways: tuple[Way, ...]
    starts: tuple[date, ...]
    course: Course
    sizes: Floats
    along_m: Floats  # (n,): usual spacing in the row …
    across_m: Floats  # … and between rows
    station_m2: Floats  # (n,)

    @property
    def count(self) -> int:
        """How many there are."""
        return len(self.ways)

    @cached_property
    def margin_m(self) -> Floats:
        """How far from the ground's edge its stations stay: half the shorter spacing."""
        return np.minimum(self.along_m, self.across_m) / 2

    @cached_property
    def growing_days(self) -> Ints:
        """As ``Stand.growing_days``."""
        once = np.array([w.crop.harvest is Harvest.SINGLE for w in self.ways])
        until = np.where(once, self.course.harvest_first, self.course.harvest_last)
        return _at_least_one(until, self.course.in_bed)

    @cached_property
    def days(self) -> Ints:
        """Days on the ground."""
        return _at_least_one(self.course.out, self.course.in_bed)

    @cached_property
    def ready_week(self) -> Ints:
        """Last week of the grid in which crowding does harm: that of the first harvest, if cut once."""
        once = np.array([w.crop.harvest is Harvest.SINGLE for w in self.ways])
        first = (self.course.harvest_first - np.datetime64(self.course.weeks.first, "D")).astype(
            np.int64
        ) // 7
        return np.where(once, first, self.course.weeks.count)

    @cached_property
    def light_good(self) -> Floats:
        """Share of light for a full crop."""
        return np.array([light_good(w.crop) for w in self.ways])

    @cached_property
    def light_least(self) -> Floats:
        """Least share of light at which it crops."""
        return np.array([light_least(w.crop) for w in self.ways])

    @cached_property
    def load(self) -> Floats:
        """Share of its footprint that its like overlap at the usual spacing, fully grown."""
        peak = self.sizes[0].max(axis=1)
        return np.array(
            [_load(round(r, 3), a, b) for r, a, b in zip(peak, self.along_m, self.across_m, strict=True)]
        )


def sprouts_of(site: Site, season: tuple[date, date], ways: Sequence[Way], starts: Sequence[date]) -> Sprouts:
    """Follow ways from their starts through the weeks in which the fit engine looks."""
    weeks = grid(season)
    growing = [
        Growing(w.crop, Start.model_construct(kind=w.kind, on=on)) for w, on in zip(ways, starts, strict=True)
    ]
    course = follow(site, growing, weeks)
    spacing = np.array([usual_spacing(w.crop) for w in ways]).reshape(-1, 2)
    need = spacing[:, 0] * spacing[:, 1]
    radius = np.minimum(course.radius_m, np.sqrt(need / pi)[:, None])
    widest = np.array([_widest(w.crop, n) for w, n in zip(ways, need, strict=True)])
    station = np.minimum(spacing[:, 0], widest) * np.minimum(spacing[:, 1], widest)
    crowded = np.minimum(station[:, None] / np.maximum(pi * radius * radius, 1e-9), 1.0)
    extinction = np.array([w.crop.extinction.mid if w.crop.extinction else EXTINCTION for w in ways])
    leaf = course.leaf_area * extinction[:, None] * crowded
    sizes = np.stack([radius, course.height_m, course.base_m, leaf, course.present.astype(np.float64)])
    return Sprouts(tuple(ways), tuple(starts), course, sizes, spacing[:, 0], spacing[:, 1], need)


@lru_cache(maxsize=4096)
def _load(radius_m: float, along_m: float, across_m: float) -> float:
    return float(usual_load(np.array([radius_m]), along_m, across_m)[0])


def _widest(crop: Crop, need: float) -> float:
    return crop.spread_m.mid if crop.spread_m else sqrt(need)


def _at_least_one(until: Days, since: Days) -> Ints:
    return np.maximum((until - since).astype("timedelta64[D]").astype(np.int64), 1)
