"""The grid of weeks for a layout."""

from collections.abc import Sequence
from datetime import date, timedelta

from gardencanvas.garden.site import Site
from gardencanvas.season.batch import batch
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import dates
from gardencanvas.season.ripening import ripening

STEP = 4  # weeks by which the grid grows before and after the season
LONGEST = 156  # weeks: three years
BEFORE = 52  # weeks at most before the season


def _steps(days: int) -> int:
    """Weeks, in whole steps, that cover some days; 0 for none or fewer."""
    return -(-max(days, 0) // (7 * STEP)) * STEP


def span(site: Site, plantings: Sequence[Growing], season: tuple[date, date] | None = None) -> Weeks:
    """The grid of weeks that covers the season and every planting from its first day in the bed to its last.

    The grid begins on the season's first day or a whole number of four-week steps before it, so that the same
    layout always has the same grid and small changes seldom change it. It covers three years at most, one
    of them before the season. Perennials do not widen it.

    Parameters
    ----------
    season
        First and last day of the layout's year (``Layout.season``); absent, the year of the earliest start.
    """
    if season is None:
        year = min((p.start.on.year for p in plantings), default=2000)
        season = date(year, 1, 1), date(year, 12, 31)
    first, last = season
    own = Weeks(first, -(-((last - first).days + 1) // 7))
    plants = batch(site, plantings)
    annual = ~plants.perennial
    if not annual.any():
        return own
    begin: date = plants.in_bed[annual].min().astype(object)
    close: date = dates(ripening(site, plants, own).out[annual]).max().astype(object)
    before = min(_steps((first - begin).days), BEFORE)
    covered = own.first + timedelta(weeks=own.count, days=-1)
    after = _steps((close - covered).days)
    return Weeks(first - timedelta(weeks=before), min(before + own.count + after, LONGEST))
