"""Ways to start every crop: from which week to which in the layout's year, known once for a site.

The rule is that of ``season.starting.start_window``, asked for all crops at once, week by week.
"""

from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cached_property
from typing import Literal, get_args

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import Site
from gardencanvas.season.batch import batch
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import YEAR, climate_days
from gardencanvas.season.ripening import coldest, ripening
from gardencanvas.season.starting import SEEDBED_C, least_warmth
from gardencanvas.season.warmth import mean_curve

Bools = NDArray[np.bool_]
Kind = Literal["sown", "raised", "set"]
_KEPT = 8
_RIPE_WEEKS = 157  # three years, as ``start_window`` looks ahead


@dataclass(frozen=True, slots=True)
class Way:
    """A crop or variety, started in one way."""

    crop_id: str
    variety: str | None
    crop: Crop  # as it grows, complete
    kind: Kind

    @property
    def nursery_d(self) -> int:
        """Days under glass before it goes into the bed."""
        return round(self.crop.nursery_d.mid) if self.kind == "raised" and self.crop.nursery_d else 0


@dataclass(frozen=True, eq=False)
class Ways:
    """All ways at one site in one season. ``good`` has shape (ways, weeks of the season)."""

    site: Site
    season: tuple[date, date]
    catalogue: Catalogue
    every: tuple[Way, ...]
    good: Bools

    @cached_property
    def waited(self) -> Bools:
        """Good weeks but for the first after cold ones: half the years still bring killing frost in it.

        As ``season.usual_start`` waits a week; a window of one week is left as it is.
        """
        before = np.concatenate([self.good[:, :1], self.good[:, :-1]], axis=1)
        after: Bools = self.good & before
        some: Bools = np.asarray(after.any(axis=1))
        found: Bools = np.where(some[:, None], after, self.good)
        return found

    def week(self, on: date) -> int:
        """The week of the season that holds a day."""
        return min(max((on - self.season[0]).days // 7, 0), int(self.good.shape[1]) - 1)

    def starts(self, rows: Sequence[int] | NDArray[np.intp], since: date) -> list[date | None]:
        """The first good day of each way, not before a day; None where there is none in this season."""
        week = self.week(since)
        good = self.waited[np.asarray(rows, dtype=np.intp)][:, week:]
        first = good.argmax(axis=1)
        found: list[date | None] = []
        for row in range(len(good)):
            on = self.season[0] + timedelta(weeks=week + int(first[row]))
            found.append(max(on, since) if good[row, first[row]] else None)
        return found


_known: OrderedDict[tuple[int, int, date], Ways] = OrderedDict()


def ways_of(site: Site, catalogue: Catalogue, season: tuple[date, date]) -> Ways:
    """The ways of all crops and varieties; remembered by the identity of site and catalogue."""
    key = (id(site), id(catalogue), season[0])
    found = _known.get(key)
    if found is None or found.site is not site or found.catalogue is not catalogue:
        found = _known[key] = _ways(site, catalogue, season)
        while len(_known) > _KEPT:
            _known.popitem(last=False)
    return found


def _ways(site: Site, catalogue: Catalogue, season: tuple[date, date]) -> Ways:
    kinds = [(c.id, None) for c in catalogue.crops] + [(v.crop, v.id) for v in catalogue.varieties]
    every = []
    for crop_id, variety in kinds:
        crop = catalogue.resolve(crop_id, variety)
        every += [Way(crop_id, variety, crop, start.value) for start in crop.starts]
    weeks = -(-((season[1] - season[0]).days + 1) // 7)
    days = [season[0] + timedelta(weeks=w, days=3) for w in range(weeks)]
    return Ways(site, season, catalogue, tuple(every), _good(site, every, days))


def _good(site: Site, ways: Sequence[Way], days: Sequence[date]) -> Bools:
    """On which days each way can be started in an average year, shape (ways, days)."""
    starts = {kind: [Start(kind=kind, on=on) for on in days] for kind in get_args(Kind)}
    plants = batch(site, [Growing(w.crop, start) for w in ways for start in starts[w.kind]])
    when = ripening(site, plants, Weeks(days[0], _RIPE_WEEKS))
    shape = (len(ways), len(days))
    good: Bools = (when.ripe & ~when.frosted).reshape(shape)
    hard = np.array([_over_winter(w) for w in ways])
    if site.frost.first is not None:
        winter = plants.tau + (coldest(site) - plants.tau) % YEAR
        good &= (when.first <= winter).reshape(shape) | hard[:, None]
    curve = mean_curve(site.climate)[climate_days(np.array(days, dtype="datetime64[D]")) % YEAR]
    least = np.array([least_warmth(w.crop, w.kind).mid for w in ways])
    bed = [SEEDBED_C * (w.kind == "sown" and w.crop.germination_min_c is not None) for w in ways]
    good &= curve[None, :] + np.array(bed)[:, None] >= least[:, None]
    return good


def _over_winter(way: Way) -> bool:
    """Whether its harvest may come after the coldest day: very hardy ones that are set, and perennials."""
    hardy = way.crop.frost is not None and way.crop.frost.value == "very hardy"
    return way.crop.life == "perennial" or (way.kind == "set" and hardy)
