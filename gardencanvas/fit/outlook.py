"""What weather holds for a planting: its frosts, when it would be ready, and the odds.

Known once for each way of growing, whatever ground it stands on; what costs is reckoned when it is asked for.
"""

from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property
from math import hypot

import numpy as np

from gardencanvas.crops.model import Harvest
from gardencanvas.fit.thresholds import FROST_STRAINS
from gardencanvas.garden.site import Site
from gardencanvas.season.course import Course, Growing, Weeks
from gardencanvas.season.departing import Departing, departing, departure_c
from gardencanvas.season.frost import YEAR_TO_YEAR_D, risk_after
from gardencanvas.season.starting import cold_days
from gardencanvas.season.windows import Window, windows

# Where years need not be simulated. Compared with the simulation for all crops at five sites.
EMERGES = 0.15  # of its days in the ground: so much earlier than in the average year a crop may come up
SAFE = 1.3  # standard deviations from readiness to frost: 90 % of years, where 80 % are asked for
FAR_D = 90  # ready so long before killing frost, a crop ripens whatever the year brings …
SOON_D = 250  # … unless it takes most of the longest time of its kind


@dataclass(frozen=True, eq=False)
class Outlook:
    """One way of growing at a site; dates are those of an average year.

    ``exposed``, ``last_frost``, ``killing_frost``, ``ready`` and ``warm_enough`` as in ``Course``, None for
    no frost. ``lasting`` plants stand from year to year: frost does not kill them, or has spared them before.
    """

    site: Site
    growing: Growing
    weeks: Weeks
    in_bed: date
    exposed: date
    last_frost: date | None
    killing_frost: date | None
    ready: date
    warm_enough: bool
    harvest_last: date
    lasting: bool

    @cached_property
    def odds(self) -> Window | None:
        """Frost and harvest over simulated years; None, and no simulation, where neither is in doubt.

        An end that the grower set is not the weather's doing, and is left out.
        """
        if self.lasting or not (self._frost_is_near or self._harvest_is_doubtful):
            return None
        (window,) = windows(self.site, [replace(self.growing, end=None)], self.weeks)
        return window

    @property
    def _frost_is_near(self) -> bool:
        if self.last_frost is None:
            return False
        slack = EMERGES * (self.exposed - self.in_bed).days
        return risk_after((self.exposed - self.last_frost).days - slack, 0.0) >= FROST_STRAINS

    @property
    def _harvest_is_doubtful(self) -> bool:
        """Whether frost or lack of warmth may leave fewer than eight years in ten a harvest."""
        if self.growing.crop.harvest is Harvest.NONE:
            return False
        if not self.warm_enough:
            return True
        days = (self.ready - self.in_bed).days
        slack = None if self.killing_frost is None else (self.killing_frost - self.ready).days
        if (slack is None or slack > FAR_D) and days < SOON_D:
            return False
        cold = self.year(-departure_c(days, 1.0))
        if not cold.when.met[0]:
            return True
        spread = (cold.ready - self.ready).days
        return slack is not None and slack < SAFE * hypot(spread, YEAR_TO_YEAR_D)

    @cached_property
    def cold_days(self) -> int:
        """Days until the ground is warm enough for it."""
        return cold_days(self.site, self.growing)

    def year(self, departure: float) -> Departing:
        """It in a year some °C warmer, or below 0 colder, than the average."""
        found = self._years.get(departure)
        if found is None:
            found = departing(self.site, self.growing, self.weeks, departure)
            self._years[departure] = found
        return found

    @cached_property
    def _years(self) -> dict[float, Departing]:
        return {}


def outlook_of(site: Site, growing: Growing, course: Course, row: int, season: tuple[date, date]) -> Outlook:
    """The outlook of one row of a course."""
    crop = growing.crop
    in_bed: date = course.in_bed[row].astype(object)
    tender = crop.frost is not None and crop.frost.value == "tender"
    return Outlook(
        site=site,
        growing=growing,
        weeks=course.weeks,
        in_bed=in_bed,
        exposed=course.exposed[row].astype(object),
        last_frost=_frost(course.last_frost[row]),
        killing_frost=_frost(course.killing_frost[row]),
        ready=course.ready[row].astype(object),
        warm_enough=bool(course.warm_enough[row]),
        harvest_last=course.harvest_last[row].astype(object),
        lasting=crop.life == "perennial" and (not tender or in_bed < season[0]),
    )


def _frost(day: np.datetime64) -> date | None:
    return None if np.isnat(day) else day.astype(object)
