"""The start a crop usually has, as a first suggestion when it is put on the plan.

Spring dates reckoned from the last frost are common practice of seed packets and extension calendars: hardy
kinds four to six weeks before it, half-hardy kinds about two weeks before, tender kinds a week or more after;
none in the week after its own typical last killing frost.
"""

from datetime import date, timedelta
from functools import lru_cache

from gardencanvas.crops.model import Crop
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import DayOfYear, Site
from gardencanvas.season.starting import StartWindow, start_window

# Days from the last frost to the day in the bed. Common practice, see above.
_AFTER_LAST_FROST_D = {"very hardy": -42, "hardy": -35, "half-hardy": -14, "tender": 7}
_UNKNOWN_D = 0
_WAIT_D = 7  # from the first possible day: on that day, half the years still bring a killing frost
_NO_FROST_D = 60  # where frost never comes: two months into the year, as its spring begins


def usual_start(site: Site, crop: Crop, year: int, first_month: int = 1) -> Start:
    """The crop's usual way of starting, on the first suitable day of a layout's year.

    That day is reckoned from the last frost; where ``start_window`` shows that the crop cannot be started
    then, its first possible day is taken.

    Parameters
    ----------
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
        on = _within(last_frost, first) + timedelta(days=offset)
    on = _possible(_window(site, _Same(crop)), min(max(on, first), end), first)
    return Start(kind=crop.starts[0].value, on=on)


class _Same:
    """A crop as a key: equal only to the very same object, so that it need not be hashed whole."""

    def __init__(self, crop: Crop) -> None:
        self.crop = crop

    def __hash__(self) -> int:
        return id(self.crop)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and self.crop is other.crop


@lru_cache(maxsize=256)
def _window(site: Site, crop: _Same) -> StartWindow:
    return start_window(site, crop.crop, crop.crop.starts[0].value)


def _possible(window: StartWindow, on: date, first: date) -> date:
    """The day, where it lies well within the window; else the first day of the window, after some wait."""
    if window.first is None or window.last is None:
        return on
    opens, closes = _within(window.first, first), _within(window.last, first)
    inside = opens <= on <= closes if opens <= closes else on >= opens or on <= closes
    waited = opens + timedelta(days=_WAIT_D)
    if opens <= closes:
        waited = min(waited, closes)
    if inside and not opens <= on < waited:
        return on
    return min(waited, first + timedelta(days=364))


def _within(day: DayOfYear, first: date) -> date:
    """That day of the year, in the twelve months from ``first``; 29 February counts as the 28th."""
    number = 28 if (day.month, day.day) == (2, 29) else day.day
    here = date(first.year, day.month, number)
    return here if here >= first else date(first.year + 1, day.month, number)
