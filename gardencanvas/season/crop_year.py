"""A crop's year at a site: from when until when it can be started, each way, and when it is harvested."""

from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from typing import Literal

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import DayOfYear, Site
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import YEAR, day_index, day_of_index
from gardencanvas.season.starting import StartWindow, start_window
from gardencanvas.season.windows import Window, windows

Kind = Literal["sown", "raised", "set"]


@dataclass(frozen=True, slots=True)
class YearSpan:
    """Days that come back each year, ``days`` of them from ``first``; they may run over the new year."""

    first: DayOfYear
    days: int  # 1 to 365

    @property
    def last(self) -> DayOfYear:
        """The last of the days."""
        return day_of_index(day_index(self.first) + self.days - 1)

    def holds(self, on: date) -> bool:
        """Whether a date is one of them; 29 February counts as the 28th."""
        day = day_index(DayOfYear(month=on.month, day=on.day))
        return (day - day_index(self.first)) % YEAR < self.days


ALWAYS = YearSpan(DayOfYear(month=1, day=1), YEAR)


@dataclass(frozen=True, slots=True)
class Way:
    """One way of starting a crop, through the year.

    ``in_bed`` holds the days on which it can be sown, planted out or set; None where never. ``harvest`` runs
    from the first harvest of the earliest start to the last harvest of the latest, both in a middling year.
    ``later_year``: the harvest is that of a grown perennial, not of the year in which it is started.
    """

    kind: Kind
    in_bed: YearSpan | None
    under_glass: YearSpan | None = None  # days for sowing what is raised
    harvest: YearSpan | None = None
    later_year: bool = False


class Task(StrEnum):
    """What a start asks for on a day."""

    SOW = "sow"
    SOW_UNDER_GLASS = "sow under glass"
    PLANT_OUT = "plant out"
    SET = "set"


def crop_year(site: Site, crop: Crop, first: date) -> tuple[Way, ...]:
    """Each way of starting a crop, the usual one first.

    Parameters
    ----------
    crop
        Complete (``Catalogue.resolve``).
    first
        First day of the twelve months that are looked at: says which year of a perennial is meant.

    Notes
    -----
    Start windows are those of an average year (``season.starting``); harvests are quantiles over simulated
    years (``season.windows``).
    """
    return tuple(_way(site, crop, start.value, first) for start in crop.starts)


def tasks_on(site: Site, crop: Crop, on: date) -> tuple[Task, ...]:
    """What can be done on a day to start a crop; empty where it is no day to start it."""
    found = []
    for start in crop.starts:
        span = start_span(site, crop, start.value)
        if start.value == "raised":
            glass = _under_glass(crop, span)
            found += [Task.SOW_UNDER_GLASS] if glass is not None and glass.holds(on) else []
            found += [Task.PLANT_OUT] if span is not None and span.holds(on) else []
        elif span is not None and span.holds(on):
            found.append(Task.SOW if start.value == "sown" else Task.SET)
    return tuple(found)


_MOST_KNOWN = 4000
_known: dict[tuple[int, str], tuple[Crop, Site, YearSpan | None]] = {}


def start_span(site: Site, crop: Crop, kind: Kind) -> YearSpan | None:
    """Days of the year on which a crop can go into the bed; None where never.

    Remembered by the crop's and the site's identity: it takes several milliseconds.
    """
    known = _known.get((id(crop), kind))
    if known is not None and known[0] is crop and known[1] is site:
        return known[2]
    found = _span(start_window(site, crop, kind))
    if len(_known) > _MOST_KNOWN:
        _known.clear()
    _known[id(crop), kind] = (crop, site, found)
    return found


def _span(window: StartWindow) -> YearSpan | None:
    if window.always:
        return ALWAYS
    if window.first is None or window.last is None:
        return None
    days = (day_index(window.last) - day_index(window.first)) % YEAR + 1
    return YearSpan(window.first, days)


def _under_glass(crop: Crop, in_bed: YearSpan | None) -> YearSpan | None:
    """Days for sowing under glass: the crop's usual nursery time before it can go out."""
    if in_bed is None or crop.nursery_d is None:
        return None
    return YearSpan(day_of_index(day_index(in_bed.first) - round(crop.nursery_d.mid)), in_bed.days)


def _way(site: Site, crop: Crop, kind: Kind, first: date) -> Way:
    in_bed = start_span(site, crop, kind)
    glass = _under_glass(crop, in_bed) if kind == "raised" else None
    perennial = crop.life == "perennial" and crop.harvest is not Harvest.SINGLE
    if perennial:
        harvest = _grown_harvest(site, crop, kind, first)
    elif in_bed is None or in_bed.days == YEAR:
        harvest = in_bed
    else:
        harvest = _harvest(site, crop, kind, _within(in_bed.first, first), in_bed.days)
    return Way(kind, in_bed, glass, harvest, later_year=perennial)


def _within(day: DayOfYear, first: date) -> date:
    """That day of the year in the twelve months from ``first``."""
    here = date(first.year, day.month, day.day)
    return here if here >= first else date(first.year + 1, day.month, day.day)


def _harvest(site: Site, crop: Crop, kind: Kind, opens: date, days: int) -> YearSpan | None:
    """From the earliest to the latest of seven starts through the window that ripen in most years."""
    starts = [opens + timedelta(days=round(step * (days - 1) / 6)) for step in range(7)]
    plantings = [Growing(crop, Start(kind=kind, on=on)) for on in starts]
    found = windows(site, plantings, Weeks(opens, 157))
    ripe = [w for w in found if w.first is not None and w.last is not None]
    return _between(ripe[0], ripe[-1]) if ripe else None


def _grown_harvest(site: Site, crop: Crop, kind: Kind, first: date) -> YearSpan | None:
    """Harvest of a perennial started two years before."""
    started = Growing(crop, Start(kind=kind, on=date(first.year - 2, first.month, 1)))
    (window,) = windows(site, [started], Weeks(first, 53))
    return _between(window, window)


def _between(early: Window, late: Window) -> YearSpan | None:
    """From the first harvest of the one to the last of the other, each in a middling year."""
    if early.first is None or late.last is None:
        return None
    first, last = early.first[1], late.last[1]
    day = DayOfYear(month=first.month, day=first.day)
    return YearSpan(day, min(max((last - first).days, 0) + 1, YEAR))
