"""The start a crop usually has, as a first suggestion when it is put on the plan.

Spring dates reckoned from the last frost are common practice of seed-packet and extension calendars: hardy
kinds four to six weeks before it, half-hardy kinds about two weeks before, tender kinds one week or more after.
"""

from datetime import date, timedelta

from gardencanvas.crops.model import Crop
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import Site

# Days from the last frost to the day in the bed. Common practice, see above.
_AFTER_LAST_FROST_D = {"very hardy": -42, "hardy": -35, "half-hardy": -14, "tender": 7}
_UNKNOWN_D = 0
_NO_FROST_D = 60  # where frost never comes: two months into the year, as its second spring month begins


def usual_start(site: Site, crop: Crop, year: int, first_month: int = 1) -> Start:
    """The crop's usual way of starting, on the first suitable day of a layout's year.

    Parameters
    ----------
    site
        For its last frost.
    crop
        Its first ``starts`` and its frost class; a class that is not known counts from the last frost itself.
    year, first_month
        The layout's: the year runs twelve months from the first of that month.
    """
    first = date(year, first_month, 1)
    end = date(year + 1, first_month, 1) - timedelta(days=1)
    last_frost = site.frost.last
    if last_frost is None:
        on = first + timedelta(days=_NO_FROST_D)
    else:
        offset = _AFTER_LAST_FROST_D.get(crop.frost.value, _UNKNOWN_D) if crop.frost else _UNKNOWN_D
        on = _within(last_frost.month, last_frost.day, first) + timedelta(days=offset)
    return Start(kind=crop.starts[0].value, on=min(max(on, first), end))


def _within(month: int, day: int, first: date) -> date:
    """That day of the year, in the twelve months from ``first``; 29 February counts as the 28th."""
    day = 28 if (month, day) == (2, 29) else day
    here = date(first.year, month, day)
    return here if here >= first else date(first.year + 1, month, day)
