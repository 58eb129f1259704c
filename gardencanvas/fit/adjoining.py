"""Which plants of two stands stand side by side."""

from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.near import Pairs
from gardencanvas.fit.stands import RADIUS, Stand
from gardencanvas.fit.thresholds import ADJOIN_DAYS, ADJOIN_M

Ints = NDArray[np.intp]


@dataclass(frozen=True, slots=True, eq=False)
class Adjoining:
    """Stations of two stands whose leaves come within a hand's breadth while both grow."""

    a: Stand
    b: Stand
    of_a: Ints
    of_b: Ints
    days: tuple[date, date]  # while both stand

    def of(self, stand: Stand) -> Ints:
        """Stations of one of them."""
        return self.of_a if stand is self.a else self.of_b


def adjoining(a: Stand, b: Stand, near: Pairs) -> Adjoining | None:
    """Where two stands adjoin; None where they do not, or only for some days.

    Parameters
    ----------
    near
        Pairs of their stations, all whose leaves may come that near at least.
    """
    begin, end = max(a.begin, b.begin), min(a.end, b.end)
    if begin >= end:
        return None
    days = (
        max(a.first_day(begin), b.first_day(begin)),
        min(a.last_day(end - 1), b.last_day(end - 1)),
    )
    if (days[1] - days[0]).days + 1 < ADJOIN_DAYS:
        return None
    reach = float((a.sizes[RADIUS, begin:end] + b.sizes[RADIUS, begin:end]).max()) + ADJOIN_M
    pairs = near.within(reach)
    if len(pairs.i) == 0:
        return None
    return Adjoining(a, b, _different(pairs.i), _different(pairs.j), days)


def _different(stations: Ints) -> Ints:
    """The different stations, in order; quicker than sorting them."""
    return np.flatnonzero(np.bincount(stations))


def touching_stations(meeting: Meeting, stand: Stand) -> Ints:
    """Stations of a stand whose footprint the other's overlaps for some weeks while both stand."""
    side = meeting.side(stand)
    days = ((side.covered > 0.0) & meeting.together) @ (7 * meeting.lengths)
    return side.stations[days >= ADJOIN_DAYS]
