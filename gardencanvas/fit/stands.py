"""Stands: the stations of one planting that share a variety, with their sizes through the season.

Every plant of a stand grows alike, so that only places differ from plant to plant.
"""

from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cached_property, lru_cache
from math import pi

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.fit.capture import Alone, alone
from gardencanvas.fit.density import held_back
from gardencanvas.fit.ground import Ground, ground_of
from gardencanvas.fit.near import box
from gardencanvas.fit.outlook import Outlook
from gardencanvas.fit.own import Spare, spare_of
from gardencanvas.fit.rooting import Room, room_of
from gardencanvas.fit.spots import Spots, spots_of
from gardencanvas.fit.thresholds import ADJOIN_M, RISE_M, SHADE_REACH
from gardencanvas.garden.planting import Planting
from gardencanvas.season.course import Course, Weeks

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

RADIUS, HEIGHT, BASE, LEAF, IN_BED = range(5)  # rows of ``Stand.sizes``

# Sizes are rounded to what a tape measure shows, so that weeks without growth are seen to be alike.
_STEPS = np.array([[0.001], [0.01], [0.01], [0.02]])

EXTINCTION = 0.65  # SWAT plant table, all vegetables; used where a crop names none


@dataclass(frozen=True, slots=True)
class Times:
    """Days of one stand."""

    in_bed: date
    harvest_first: date
    harvest_last: date
    out: date


@dataclass(frozen=True, eq=False)
class Stand:
    """One variety of one planting.

    ``sizes`` has shape (5, weeks): footprint radius, height and underside of the canopy in metres, leaf area
    times extinction, and whether it stands in the bed. Outside ``[begin, end)`` weeks it does not stand;
    after ``end`` its last sizes are held, to tell what a later neighbour would have closed over. ``roots``,
    shape (weeks,), is how deep they reach in each week it stands.
    """

    planting: Planting
    number: int  # 0 for the first variety
    crop: Crop
    weeks: Weeks
    index: Ints  # which stations of the planting
    sizes: Floats
    begin: int
    end: int
    times: Times
    root_m: float
    roots: Floats
    extinction: float
    ground: Ground
    outlook: Outlook  # what weather holds for it

    @cached_property
    def xy(self) -> Floats:
        """Where its stations are, shape (n, 2), metres."""
        return self.planting.stations[self.index]

    @cached_property
    def box(self) -> Floats:
        """Least and greatest x and y of its stations."""
        return box(self.xy)

    @cached_property
    def bounds(self) -> tuple[float, float, float, float]:
        """The same as plain numbers, for comparisons one at a time."""
        x0, y0, x1, y1 = self.box.tolist()
        return x0, y0, x1, y1

    def gap2(self, other: "Stand") -> float:
        """Square of the distance between the boxes of two stands, m²."""
        a, b = self.bounds, other.bounds
        dx, dy = max(a[0] - b[2], b[0] - a[2], 0.0), max(a[1] - b[3], b[1] - a[3], 0.0)
        return dx * dx + dy * dy

    @cached_property
    def top_m(self) -> float:
        """Greatest height."""
        return float(self.sizes[HEIGHT].max(initial=0.0))

    @cached_property
    def peak_m(self) -> float:
        """Greatest radius of its footprint."""
        return float(self.sizes[RADIUS].max(initial=0.0))

    @cached_property
    def origin(self) -> "Stand":
        """The stand as first laid, as long as only its place has changed since: a key for what lasts."""
        return self

    @cached_property
    def spare(self) -> Spare:
        """Overlap each of its stations may still take from others."""
        every = spare_of(self.planting.pattern, self.ground, self.sizes[RADIUS])
        return every._replace(share=every.share[self.index], own=every.own[self.index])

    @cached_property
    def grows_until(self) -> int:
        """Last week of its growth: one that is lifted whole only waits after its first harvest."""
        if self.crop.harvest is Harvest.SINGLE:
            return min(self.weeks.index(self.times.harvest_first), self.end - 1)
        return self.end - 1

    @cached_property
    def alone(self) -> Alone:
        """How it grows among its own plants only."""
        sizes = self.sizes
        growth = self.begin, self.grows_until
        back = held_back(self.crop, self.ground.need_m2, self.planting.per_station)
        return alone(self.weeks, growth, sizes[RADIUS], sizes[LEAF], self.ground, self.spare, back)

    @cached_property
    def root_room(self) -> Room:
        """Ground its roots reach, and how much of it they fill through the weeks."""
        return room_of(self.crop, self.ground, self.sizes[RADIUS], self.roots)

    @cached_property
    def root_spare(self) -> Floats:
        """Overlap each station's root room may still take from others, shape (n,); as ``spare``."""
        every = spare_of(self.planting.pattern, self.ground, np.array([self.root_room.radius_m]))
        mine: Floats = every.share[self.index, 0]
        return mine

    @cached_property
    def spots(self) -> Spots:
        """Its stations in groups that lie close together."""
        return spots_of(self.planting.pattern, self.index)

    @cached_property
    def reach(self) -> Floats:
        """Its box widened by its footprint to where neighbours adjoin, and by its shade: shape (8,)."""
        shade = SHADE_REACH * max(self.top_m - RISE_M, 0.0)
        beside = self.peak_m + ADJOIN_M / 2
        out = np.array([-1.0, -1.0, 1.0, 1.0])
        return np.concatenate([self.box + out * beside, self.box + out * max(beside, shade)])

    @property
    def key(self) -> tuple[str, int]:
        """The order in which stands are met and summed."""
        return self.planting.id, self.number

    @property
    def own_days(self) -> int:
        """Days from bed to last harvest."""
        return max((self.times.harvest_last - self.times.in_bed).days, 1)

    @property
    def growing_days(self) -> int:
        """Days in which it grows: to the first harvest of a crop cut once, to the last of all others."""
        once = self.crop.harvest is Harvest.SINGLE
        until = self.times.harvest_first if once else self.times.harvest_last
        return max((until - self.times.in_bed).days, 1)

    @property
    def span(self) -> tuple[date, date]:
        """First and last day in the bed, of those the grid covers and the season asks about."""
        if self.end == self.begin:
            return self.times.in_bed, self.times.out
        return self.first_day(self.begin), self.last_day(self.end - 1)

    def first_day(self, week: int) -> date:
        """First day of a week of the grid that the stand can claim."""
        return max(self.weeks.first + timedelta(weeks=week), self.times.in_bed)

    def last_day(self, week: int) -> date:
        """Last day of a week of the grid that the stand can claim."""
        return min(self.weeks.first + timedelta(weeks=week, days=6), self.times.out)


# What a stand keeps when it is moved as it is: all that does not ask where it lies.
_KEPT = ("origin", "top_m", "peak_m", "spare", "grows_until", "alone", "root_room", "root_spare")


def moved(stand: Stand, planting: Planting) -> Stand:
    """The same stand at another place; ``planting`` differs from its own only in where its pattern lies."""
    there = replace(stand, planting=planting)
    known = stand.__dict__
    there.__dict__.update({name: known[name] for name in _KEPT if name in known})
    return there


def stand_of(
    planting: Planting,
    number: int,
    crop: Crop,
    course: Course,
    row: int,
    outlook: Outlook,
    season: tuple[date, date],
) -> Stand:
    """The stand of one variety from its row of the course.

    A perennial stands for the season that is asked about, whatever the grid covers.
    """
    present = course.present[row]
    if crop.life == "perennial":
        present = present & season_weeks(course.weeks, season)
    standing = np.flatnonzero(present)
    begin, end = (int(standing[0]), int(standing[-1]) + 1) if len(standing) else (0, 0)
    ground = ground_of(planting, crop)
    extinction = crop.extinction.mid if crop.extinction else EXTINCTION
    days = (course.in_bed, course.harvest_first, course.harvest_last, course.out)
    return Stand(
        planting=planting,
        number=number,
        crop=crop,
        weeks=course.weeks,
        index=np.flatnonzero(planting.mixed == number),
        sizes=_sizes(course, row, (begin, end), ground, extinction),
        begin=begin,
        end=end,
        times=Times(*(d[row].astype(object) for d in days)),
        root_m=round(float(course.root_m[row].max(initial=0.0)), 6),
        roots=course.root_m[row],
        extinction=extinction,
        ground=ground,
        outlook=outlook,
    )


def _sizes(course: Course, row: int, span: tuple[int, int], ground: Ground, extinction: float) -> Floats:
    """``Stand.sizes`` from the course: nothing before the span of weeks, the last sizes held after it."""
    begin, end = span
    radius = np.minimum(course.radius_m[row] * ground.clump_factor, ground.radius_m)
    leaf = course.leaf_area[row] * extinction
    crowded = ground.station_m2 / np.maximum(pi * radius * radius, 1e-9)
    sizes = np.stack([radius, course.height_m[row], course.base_m[row], leaf * np.minimum(crowded, 1.0)])
    sizes = np.rint(sizes / _STEPS) * _STEPS
    sizes[:, :begin] = 0.0
    sizes[:, end:] = sizes[:, end - 1 : end] if end > begin else 0.0
    return np.concatenate([sizes, _standing(course.weeks.count, begin, end)[None, :]])


def _standing(count: int, begin: int, end: int) -> Floats:
    week = np.arange(count)
    return ((week >= begin) & (week < end)).astype(np.float64)


def season_weeks(weeks: Weeks, season: tuple[date, date]) -> NDArray[np.bool_]:
    """Which weeks of the grid have their middle in the season."""
    middle = weeks.starts + 3
    inside: NDArray[np.bool_] = (middle >= np.datetime64(season[0])) & (middle <= np.datetime64(season[1]))
    return inside


@lru_cache(maxsize=64)
def months_of(weeks: Weeks) -> NDArray[np.int64]:
    """Month of the middle of each week, counted from January 1970."""
    middle = weeks.starts + 3
    return middle.astype("datetime64[M]").astype(np.int64)


def grid(season: tuple[date, date]) -> Weeks:
    """The season's weeks, with a year before and after for crops that overwinter.

    It depends on nothing else, so that no edit moves the weeks of the other plantings.
    """
    count = -(-((season[1] - season[0]).days + 1) // 7)
    return Weeks(season[0] - timedelta(weeks=52), 52 + count + 52)
