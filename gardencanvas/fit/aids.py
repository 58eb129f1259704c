"""Supports, stems to climb and covers that act on a planting."""

from collections.abc import Sequence
from datetime import timedelta
from functools import cache

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.crops.interactions import Effect, interactions
from gardencanvas.crops.model import Crop, Habit, Layer
from gardencanvas.fit.near import box, near_pairs
from gardencanvas.fit.thresholds import AIDED_SHARE, HOLDER_LEAD_D, SUPPORT_REACH_M
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import Cover, LineSupport, RingSupport
from gardencanvas.garden.planting import Planting
from gardencanvas.season.course import Growing

Bools = NDArray[np.bool_]

WARMING = ("fleece", "cloche", "frame")  # mesh lets the air through


def climbs(crop: Crop) -> bool:
    """Whether a support changes how a crop grows."""
    return crop.layer is Layer.CLIMBING or crop.habit in (Habit.CLIMBER, Habit.SPRAWLER)


def supported(planting: Planting, crop: Crop, supports: Sequence[LineSupport | RingSupport]) -> bool:
    """Whether most stations of a climber reach a support."""
    if not supports or not climbs(crop):
        return False
    xy = planting.stations
    on = np.zeros(len(xy), dtype=bool)
    for support in supports:
        on |= reached(xy, support)
    return bool(on.mean() >= AIDED_SHARE)


def reached(xy: NDArray[np.float64], support: LineSupport | RingSupport) -> Bools:
    """Which points a support is near enough to, shape (n,)."""
    if isinstance(support, RingSupport):
        x, y = support.centre
        ring: Bools = np.hypot(xy[:, 0] - x, xy[:, 1] - y) <= support.radius_m + SUPPORT_REACH_M
        return ring
    a, b = np.array(support.begin), np.array(support.end)
    along = np.clip(((xy - a) @ (b - a)) / float((b - a) @ (b - a)), 0.0, 1.0)
    off = xy - (a + along[:, None] * (b - a))
    line: Bools = np.hypot(off[:, 0], off[:, 1]) <= SUPPORT_REACH_M
    return line


@cache
def holders(climber: str) -> frozenset[str]:
    """Crops whose stems a climber climbs, by id: maize and sunflower for beans (several trials)."""
    return frozenset(
        crop
        for i in interactions()
        if i.effect is Effect.SUPPORT and i.counts and climber in i.b
        for crop in i.a
    )


@cache
def stem_crops() -> frozenset[str]:
    """Crops whose stems some climber climbs, by id."""
    return frozenset(crop for i in interactions() if i.effect is Effect.SUPPORT and i.counts for crop in i.a)


def held_up(planting: Planting, others: Sequence[Planting]) -> Bools:
    """Which stations of a climber find a stem that was started early enough to hold it, shape (n,).

    Beans are sown when the maize is knee-high, or they pull it down (three sisters; Mt. Pleasant 2016): two
    weeks after it at least.
    """
    xy = planting.stations
    on = np.zeros(len(xy), dtype=bool)
    by = holders(planting.crop)
    for other in others if by else ():
        if other.crop in by and up_in_time(other, planting):
            stems = other.stations
            on[near_pairs(xy, stems, box(xy), box(stems), SUPPORT_REACH_M).i] = True
    return on


def up_in_time(holder: Planting, climber: Planting) -> bool:
    """Whether a crop has the lead it needs over one that is to climb it."""
    return holder.start.on <= climber.start.on - timedelta(days=HOLDER_LEAD_D)


def growing_of(layout: Layout, planting: Planting, crop: Crop) -> Growing:
    """A planting as the season sees it, with what supports, stems and covers of its layout do for it."""
    cover = warming_cover(planting, layout.covers)
    return Growing(
        crop,
        planting.start,
        planting.end,
        supported=supported(planting, crop, layout.supports)
        or bool(held_up(planting, layout.plantings).mean() >= AIDED_SHARE),
        warmed=cover is not None,
        warmed_until=cover.last if cover is not None else None,
    )


def warmed(planting: Planting, covers: Sequence[Cover]) -> bool:
    """Whether most stations lie under a warming cover on the day they go into the bed."""
    return warming_cover(planting, covers) is not None


def warming_cover(planting: Planting, covers: Sequence[Cover]) -> Cover | None:
    """The first warming cover that most stations lie under on the day they go into the bed."""
    on = planting.start.on
    xy = planting.stations
    for cover in covers:
        if cover.kind not in WARMING:
            continue
        if (cover.first and on < cover.first) or (cover.last and on > cover.last):
            continue
        ground = shapely.Polygon(cover.outline)
        if shapely.intersects_xy(ground, xy[:, 0], xy[:, 1]).mean() >= AIDED_SHARE:
            return cover
    return None
