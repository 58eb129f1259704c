"""When a planting is harvested in average, cold and warm years, with the odds of frost."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Site
from gardencanvas.season.batch import FAR, Batch, batch
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import YEAR, dates
from gardencanvas.season.frost import YEAR_TO_YEAR_D, risk_after
from gardencanvas.season.ripening import Frosts, begins, frosts
from gardencanvas.season.weather import COUNT, LENGTH, SEED, simulated_warmth

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

MIDDLE = (0.1, 0.5, 0.9)  # eight years in ten lie between the outer two
Days3 = tuple[date, date, date]


@dataclass(frozen=True, slots=True)
class Window:
    """Harvest of one planting over simulated years.

    ``first`` and ``last`` hold the days by which the harvest has begun, and ended, in one, five and nine of
    ten of the years that bring one: eight years in ten lie between the outer two. None where most years bring
    no harvest. ``ripens`` is the share of years that bring one; ``frost_after`` the chance that killing frost
    comes after the plants show.
    """

    first: Days3 | None
    last: Days3 | None
    ripens: float
    frost_after: float


def _reach(cumulative: Floats, since: Ints, need: float) -> Ints:
    """Days of simulated years on which a need is met; LENGTH + 1 where it is not."""
    goal = cumulative[np.arange(COUNT), since] + max(need - 1e-6, 0.0)
    # No row ever falls: counting the days below the goal searches all rows at once.
    return np.asarray(np.maximum((cumulative < goal[:, None]).sum(axis=1), since))


def _simulate(site: Site, plants: Batch, index: int, since: int, cold: Frosts) -> Window:
    """One planting over all simulated years.

    Parameters
    ----------
    since
        The climate day from which its days to harvest count.
    cold
        The typical frosts of all plantings.
    """
    killed = int(cold.killed[index])
    t, rate = plants.traits, float(plants.rate[index])
    year = since - since % YEAR
    uncovered = int(plants.until[index])
    cumulative = simulated_warmth(site.climate, plants.needs[plants.row[index]])
    if uncovered < FAR:
        bare = simulated_warmth(site.climate, plants.needs[plants.open_row[index]])
        cumulative = _joined(cumulative, bare, min(max(uncovered - year, 0), LENGTH))
    begin = np.full(COUNT, since - year)
    first = _reach(cumulative, begin, float(t.ripe_d[index]) * rate)
    ripe = (first <= LENGTH) & (first - begin <= t.longest_d[index])
    picking = round(float(t.picking_d[index]))
    last = first + picking
    if t.picking_thermal[index] > 0.0:
        warm = _reach(cumulative, np.minimum(first, LENGTH), float(t.picking_d[index]) * rate)
        last = np.minimum(warm, first + 2 * picking)
    out = np.full(COUNT, int(plants.end[index]) - year)
    frosted = 0.0
    if killed < FAR:
        shift = np.random.default_rng(SEED + 2).standard_normal(COUNT) * YEAR_TO_YEAR_D
        shows = _reach(cumulative, begin, float(t.shows_d[index]) * rate)
        exposed = np.maximum(shows, uncovered + 1 - year) if uncovered < killed else shows
        frosted = _frosted(exposed, int(cold.last[index]) - year)
        autumn = np.maximum(np.rint(killed - year + shift).astype(np.int64), shows)
        ripe &= first < autumn
        out = np.minimum(out, autumn)
    ripe &= first <= out
    if ripe.mean() < 0.5:
        return Window(None, None, float(ripe.mean()), frosted)
    return Window(
        _quantiles(year, first[ripe]),
        _quantiles(year, np.minimum(last, out)[ripe]),
        float(ripe.mean()),
        frosted,
    )


def _frosted(exposed: Ints, last_frost: int) -> float:
    """Chance that the last frost, which varies from year to year, comes after the days plants are exposed."""
    days, years = np.unique(exposed, return_counts=True)
    risks = [risk_after(day, last_frost) for day in days.tolist()]
    return float(np.dot(risks, years) / len(exposed))


def _joined(under: Floats, bare: Floats, at: int) -> Floats:
    """Warmth under a cover until a day, and in the open after it."""
    return np.concatenate([under[:, :at], under[:, at, None] + bare[:, at:] - bare[:, at, None]], axis=1)


def _quantiles(year: int, days: Ints) -> Days3:
    chosen = np.quantile(days, MIDDLE, method="nearest").astype(np.int64)
    early, middle, late = dates(chosen + year).astype(object)
    return early, middle, late


def windows(site: Site, plantings: Sequence[Growing], weeks: Weeks) -> tuple[Window, ...]:
    """Harvest windows of plantings over 200 simulated years around the site's normals.

    Weather alone varies; how far books disagree on a crop's days comes on top. The site's frost dates are
    taken as even odds and vary by 16 days from year to year. The same years serve all crops, so windows of
    two plantings can be compared.

    Parameters
    ----------
    weeks
        As for ``follow``: says which year of a perennial is meant.
    """
    plants = batch(site, plantings)
    since, cold = begins(site, plants, weeks), frosts(plants)
    return tuple(_simulate(site, plants, index, int(since[index]), cold) for index in range(len(plantings)))
