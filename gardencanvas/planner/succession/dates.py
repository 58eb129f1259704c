"""Days to start on, so that starts or harvests come at even intervals.

Warmth does the work: a day between two sowings in cold weather is less than a day between their harvests.
"""

from collections.abc import Sequence
from datetime import date, timedelta
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from gardencanvas.garden.site import Site
from gardencanvas.planner.succession.rhythm import Between, Rhythm
from gardencanvas.season.batch import batch
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import YEAR, dates
from gardencanvas.season.ripening import coldest, ripening

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

_THREE_YEARS = 157  # weeks


class Outlook(NamedTuple):
    """What comes of starting on ``first`` and on each day after it, in an average year."""

    first: date
    harvest: Ints  # days from ``first`` to the first harvest, one for each start that still ripens

    def on(self, start: int) -> date:
        """The day of a start."""
        return self.first + timedelta(days=start)


def outlook(site: Site, starts: Sequence[Growing]) -> Outlook:
    """The harvests of one planting started on days in a row, as long as they ripen.

    A start counts no more once frost kills it before its first harvest, or, where frost comes at all, once
    that harvest would fall after the coldest day that follows the harvest of the first start: what is not
    ripe by then stands still until spring. Frost in spring counts against none: to start early is the
    grower's choice, and the odds are told elsewhere.

    Parameters
    ----------
    starts
        The same planting, each time a day later.
    """
    first = starts[0].start.on
    plants = batch(site, starts)
    when = ripening(site, plants, Weeks(first, _THREE_YEARS))
    good = when.ripe
    if site.frost.first is not None:
        good = good & (when.first <= when.first[0] + (coldest(site) - when.first[0]) % YEAR)
    run = len(good) if good.all() else int(np.argmin(good))
    harvest = np.maximum(dates(when.first[:run]), plants.in_bed[:run]) - np.datetime64(first, "D")
    return Outlook(first, harvest.astype(np.int64))


def inverted(harvest: ArrayLike, wanted: ArrayLike) -> Floats:
    """Starts, as fractions of days, whose harvests come on the days wanted.

    Solves C(h) − C(s) = D for s, C being the cumulated degree-days and D what the crop needs, by
    interpolation between starts whose harvests are known; of several starts with the same harvest it takes
    the middle.

    Parameters
    ----------
    harvest
        Harvest day of a start on day 0, 1, 2 …; it never falls.
    """
    days, which = np.unique(np.asarray(harvest, dtype=np.float64), return_inverse=True)
    middles = np.bincount(which, weights=np.arange(len(which))) / np.bincount(which)
    return np.asarray(np.interp(np.asarray(wanted, dtype=np.float64), days, middles))


def nearest(harvest: Ints, wanted: int, after: int) -> int | None:
    """The start whose harvest lies nearest to a day; None where no start later than ``after`` ripens.

    Of several that lie as near, the one nearest to the exact (``inverted``) start.
    """
    later = np.arange(after + 1, len(harvest))
    if len(later) == 0:
        return None
    exact = float(inverted(harvest, wanted))
    order = np.lexsort((np.abs(later - exact), np.abs(harvest[later] - wanted)))
    return int(later[order[0]])


def starts(harvest: Ints, rhythm: Rhythm, most: int) -> list[int]:
    """Which starts a rhythm takes, the first always; each later than the one before it.

    For even harvests, the start whose harvest lies nearest to the day wanted, counted from the first
    harvest, so that errors do not add up. Late in the year one day of starting is several of harvest:
    then whole days come no nearer.

    Parameters
    ----------
    harvest
        As ``Outlook.harvest``; not empty.
    most
        Parts wanted; fewer where no more ripen.
    """
    if rhythm.between is Between.STARTS:
        return list(range(0, len(harvest), rhythm.days))[:most]
    taken = [0]
    for wanted in range(int(harvest[0]) + rhythm.days, int(harvest[-1]) + 1, rhythm.days):
        start = nearest(harvest, wanted, taken[-1])
        if start is None or len(taken) == most:
            break
        taken.append(start)
    return taken
