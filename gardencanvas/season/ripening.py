"""When plantings are harvested and when they are out: by warmth, by frost, by the grower's word."""

from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Site
from gardencanvas.season.batch import FAR, Batch, Safe, reach
from gardencanvas.season.course import Days, Weeks
from gardencanvas.season.dayofyear import YEAR, Ints, climate_days
from gardencanvas.season.warmth import mean_curve

Bools = NDArray[np.bool_]


class Frosts(NamedTuple):
    """Typical killing frosts of plantings, climate days, shape (n,) each."""

    shows: Ints  # from this day on frost can touch it
    exposed: Ints  # from this day on the frosts below can: when it shows, or its cover comes off
    last: Ints  # the last frost of the season before it is safe; -FAR where frost never kills
    killed: Ints  # the first that comes after; FAR where none does
    early: Bools  # stands open to killing frost in spring


class Ripening(NamedTuple):
    """Climate days, shape (n,) each."""

    first: Ints
    last: Ints
    out: Ints
    frosted: Bools
    ripe: Bools
    ready: Ints  # first harvest if nothing cuts its life short
    met: Bools  # there is warmth enough for that
    frosts: Frosts


@lru_cache(maxsize=256)
def grid(weeks: Weeks) -> tuple[Days, Ints]:
    """The middle day of each week and its climate day."""
    middle = weeks.starts + 3
    return middle, climate_days(middle)


def coldest(site: Site) -> int:
    """The coldest day of the year, 0–364: perennials' years begin there."""
    return int(np.argmin(mean_curve(site.climate)))


def frosts(plants: Batch) -> Frosts:
    """When frost can touch plantings, and when it kills them."""
    t = plants.traits
    shows, _ = reach(plants, plants.tau, t.shows_d * plants.rate, t.longest_d.astype(np.int64))
    early, killed = _next(plants.free, shows)
    # Once the cover is off, the frosts of the open ground count.
    bare = np.maximum(shows, plants.until + 1)
    bare_early, bare_killed = _next(plants.open, bare)
    early |= bare_early & (plants.until < FAR)
    under = killed <= plants.until
    killed = np.where(under, killed, bare_killed)
    length = np.where(under, plants.free.length, plants.open.length)
    last = np.where(killed < FAR, killed - length, -FAR)
    return Frosts(shows, np.where(under, shows, bare), last, killed, early)


def _next(safe: Safe, since: Ints) -> tuple[Bools, Ints]:
    """Whether a day lies in the season of killing frosts, and the first of the frosts that follow it."""
    early = (since - safe.begin) % YEAR >= safe.length
    killed = since + (safe.begin + safe.length - since) % YEAR
    return early, np.where(safe.length < YEAR, killed, FAR)


def begins(site: Site, plants: Batch, weeks: Weeks) -> Ints:
    """The climate day from which a planting's days to harvest count.

    Its first day in the bed; for perennials not before the coldest day of the year that the middle of the
    grid lies in.
    """
    middle = int(grid(weeks)[1][weeks.count // 2])
    spring = middle - (middle - coldest(site)) % YEAR
    return np.where(plants.perennial, np.maximum(plants.tau, spring), plants.tau)


def ripening(site: Site, plants: Batch, weeks: Weeks) -> Ripening:
    """Harvest and end of plantings.

    The first harvest comes when the crop's days, in degree-days of its own conditions, are reached. A single
    harvest stands ready for its length in calendar days; a repeated one lasts its length in the crop's own
    warmth, twice as many calendar days at most. A perennial's days count from the coldest day of the year the
    grid's middle lies in, and it stands to the grid's end. What does not ripen is cleared after the longest
    time of its kind. Killing frost and the grower's end cut short.
    """
    t = plants.traits
    taus = grid(weeks)[1]
    since = begins(site, plants, weeks)
    first, ripe = reach(plants, since, t.ripe_d * plants.rate, t.longest_d.astype(np.int64))
    picking: Ints = np.rint(t.picking_d).astype(np.int64)
    warm_last, _ = reach(plants, first, t.picking_d * plants.rate, 2 * picking)
    last = np.where(t.picking_thermal > 0.0, warm_last, first + picking)
    cold = frosts(plants)
    killed = cold.killed
    stands = np.where(plants.perennial, np.maximum(int(taus[-1]) + 3, plants.tau), last)
    out = np.minimum(np.minimum(np.where(ripe | plants.perennial, stands, first), killed), plants.end)
    picked = ripe & (first <= out) & (first < killed)
    return Ripening(
        first=np.where(picked, first, out),
        last=np.where(picked, np.minimum(last, out), out),
        out=out,
        frosted=cold.early | (killed <= first),
        ripe=picked,
        ready=first,
        met=ripe,
        frosts=cold,
    )
