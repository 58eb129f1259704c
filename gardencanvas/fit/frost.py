"""Frost and ripening: how often weather undoes a planting, from simulated years."""

from datetime import date, timedelta

import numpy as np

from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import FROST_CLASHES, FROST_STRAINS, RIPENS_CLASHES, RIPENS_STRAINS
from gardencanvas.garden.site import DayOfYear, Site
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import YEAR, day_of_index
from gardencanvas.season.killing import endures_c, frost_free
from gardencanvas.season.windows import Window, windows

# Beyond these days the odds cannot reach a threshold, and years need not be simulated: frost dates vary by
# 16 days, so the risk is under FROST_STRAINS from the 5th day after the last frost on; harvests vary by some
# ten days more, and RIPENS_STRAINS is reached some three weeks before the first. Each with as much to spare.
SPRING_D = 10
AUTUMN_D = 45


def odds_of(
    site: Site, growing: Growing, weeks: Weeks, in_bed: date, ripe_on: date, ripe: bool
) -> Window | None:
    """What simulated years bring a planting; None, and no simulation, where weather cannot matter."""
    crop = growing.crop
    if crop.life == "perennial":
        return None
    if ripe:
        free = frost_free(site, endures_c(crop))
        if free.length >= YEAR:
            return None
        spring = _days_between(day_of_index(free.begin), in_bed)
        autumn = -_days_between(day_of_index(free.begin + free.length), ripe_on)
        if spring > SPRING_D and autumn > AUTUMN_D:
            return None
    (window,) = windows(site, [growing], weeks)
    return window


def _days_between(day: DayOfYear, on: date) -> int:
    """Days from the yearly day nearest to a date until that date; negative before it."""
    near = (date(on.year + step, day.month, day.day) for step in (-1, 0, 1))
    return min(((on - each).days for each in near), key=abs)


def frost(stand: Stand) -> list[Judged]:
    """Findings on spring frost and on years that bring no harvest."""
    odds = stand.odds
    if odds is None:
        return []
    found = []
    if odds.frost_after >= FROST_STRAINS:
        verdict = Verdict.CLASHES if odds.frost_after >= FROST_CLASHES else Verdict.STRAINS
        risk = round(odds.frost_after, 4)
        found.append(_judged(stand, Kind.FROST, Code.FROST_TO_COME, verdict, {"risk_after": risk}))
    if odds.ripens < RIPENS_STRAINS:
        verdict = Verdict.CLASHES if odds.ripens < RIPENS_CLASHES else Verdict.STRAINS
        ripens = round(odds.ripens, 4)
        found.append(_judged(stand, Kind.TIMING, Code.SELDOM_RIPE, verdict, {"ripens": ripens}))
    return found


def _judged(stand: Stand, kind: Kind, code: Code, verdict: Verdict, odds: dict[str, float]) -> Judged:
    stations = np.arange(len(stand.index))
    marks = np.full(len(stations), verdict, dtype=np.uint8)
    first = stand.times.in_bed
    numbers: dict[str, float | int | str | date] = {**odds, "in_bed": first, "stations": len(stations)}
    days = (first, max(stand.times.out, first + timedelta(days=1)))
    return Judged(finding_of(kind, code, stand, (), stations, marks, days, numbers), marks)
