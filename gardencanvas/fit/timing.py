"""Timing: whether a catch crop is out before its neighbour closes over it."""

from datetime import date, timedelta
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.crowding import lost_to
from gardencanvas.fit.judged import Judged, Number, finding_of, worst_of
from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.needs import light_good, light_least
from gardencanvas.fit.outlook import Outlook
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import RADIUS, Stand
from gardencanvas.fit.thresholds import CATCH_TIME, LATE_SHARE, TURNS
from gardencanvas.season.departing import departure_c

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

NEVER = 1_000_000  # days


def timing(meeting: Meeting, catch: Stand) -> Judged | None:
    """Days to spare between a catch crop's last harvest and the date its neighbour closes over it.

    The neighbour closes over a plant in the first week from which on, until after the harvest, it leaves the
    plant less than it needs for a full crop, of the light above and of the capture beside it. A plant already
    lifted is taken at its last size.
    """
    main = meeting.b if catch is meeting.a else meeting.a
    turns = catch.times.out < main.times.in_bed
    if not turns and not is_catch(catch, main):
        return None
    side, left = meeting.side(catch), _light_left(meeting, catch).take(meeting.spell, axis=1)
    spare = _spare_days(meeting, catch, main, left < light_good(catch.crop))
    if turns:
        return _turns(meeting, catch, main, spare)
    if not (spare < NEVER).any():
        return None
    hard = _spare_days(meeting, catch, main, left < light_least(catch.crop))
    marks = np.full(len(spare), Verdict.SHARES, dtype=np.uint8)
    marks[spare < 0] = Verdict.STRAINS
    marks[hard < -LATE_SHARE * catch.own_days] = Verdict.CLASHES
    named = np.flatnonzero(spare < NEVER)
    worst = worst_of(marks[named], -spare[named].astype(np.float64))
    days = int(spare[named].min())
    closing = catch.times.harvest_last + timedelta(days=days)
    finding = finding_of(
        Kind.TIMING, Code.OUT_IN_TIME if days >= 0 else Code.TOO_LATE, catch, (main,),
        side.stations[named], marks[named],
        (min(closing, catch.times.harvest_last), max(closing, catch.times.harvest_last)),
        {
            "days": days,
            "closes": closing,
            "harvest_last": catch.times.harvest_last,
            "stations": int((marks == marks.max()).sum()),
            "earlier": _leaves_earlier(catch, main),
            "families": len({catch.crop.family, main.crop.family}),
            **_in_other_years(catch.outlook, main.outlook, catch.own_days, closing),
        },
        worst=worst,
    )  # fmt: skip
    return Judged(finding, marks[named])


@lru_cache(maxsize=4096)
def _in_other_years(catch: Outlook, main: Outlook, days: int, closing: date) -> dict[str, int]:
    """Days to spare in a cold and in a warm year, one in ten each, in which both grow.

    The neighbour closes over when it has gathered as much warmth as until it closes in an average year. No
    number where it then never closes.
    """
    departure = departure_c(days)
    found = {}
    for name, by in (("days_cold", -departure), ("days_warm", departure)):
        closes = main.year(by).as_grown(closing)
        if closes < date.max:
            found[name] = (closes - catch.year(by).harvest_last).days
    return found


def _leaves_earlier(catch: Stand, main: Stand) -> int:
    """Days from the catch crop's leaves covering half the ground they will to its neighbour's doing so."""
    half = [int((s.sizes[RADIUS] ** 2 >= s.peak_m**2 / 2).argmax()) for s in (catch, main)]
    return max(7 * (half[1] - half[0]), 0)


def is_catch(catch: Stand, main: Stand) -> bool:
    """Whether a crop is quick beside another: in the bed for less time, and harvested before it."""
    first = catch.times.harvest_last <= main.times.out
    return first and catch.own_days <= CATCH_TIME * main.own_days


def days_to_spare(judged: Judged) -> int | None:
    """Days to spare that a timing finding names."""
    days = judged.finding.numbers.get("days")
    return days if judged.finding.kind is Kind.TIMING and isinstance(days, int) else None


def _light_left(meeting: Meeting, catch: Stand) -> Floats:
    """Share each touched station captures of what it would with room, shape (stations, spells).

    What the neighbour's leaves above let through, times what is kept among those at its own height.
    """
    side = meeting.side(catch)
    alone = np.zeros_like(side.passed)  # what is above it is in what passes
    lost = lost_to(catch, side.stations, meeting.begin + meeting.starts, side.crowd, alone)
    left: Floats = np.exp(side.passed) * (1.0 - lost)
    return left


def _spare_days(meeting: Meeting, catch: Stand, main: Stand, closed: Bools) -> Ints:
    """Days from last harvest to closing for each touched station, below 0 when late; NEVER where open."""
    harvest = catch.weeks.index(catch.times.harvest_last) - meeting.begin
    at = max(harvest, 0)
    after = closed[:, at:]
    if after.shape[1] == 0:
        return np.full(len(closed), NEVER, dtype=np.int64)
    week = at + after.argmax(axis=1)
    before = ~closed[:, : at + 1][:, ::-1]
    # closed at the harvest: back to the week it began, or to the beginning of the meeting
    length = np.where(before.any(axis=1), before.argmax(axis=1), at + 1)
    week = np.where(after[:, 0] & (harvest >= 0), at + 1 - length, week)
    start = catch.weeks.first + timedelta(weeks=meeting.begin)
    both = max(main.times.in_bed, catch.times.in_bed)
    day = np.maximum(
        (start - catch.times.harvest_last).days + 7 * week, (both - catch.times.harvest_last).days
    )
    return np.where(after.any(axis=1), day, NEVER).astype(np.int64)


def _turns(meeting: Meeting, catch: Stand, main: Stand, spare: Ints) -> Judged | None:
    """The same ground used again at another date."""
    side = meeting.side(catch)
    used = np.flatnonzero(side.covered.max(axis=1) >= TURNS)
    if len(used) == 0:
        return None
    marks = np.full(len(used), Verdict.SHARES, dtype=np.uint8)
    numbers: dict[str, Number] = {
        "days_between": (main.times.in_bed - catch.times.out).days,
        "out": catch.times.out,
        "in_bed": main.times.in_bed,
        "stations": len(used),
    }
    if (spare < NEVER).any():
        numbers["days"] = int(spare.min())
    finding = finding_of(
        Kind.TIMING, Code.IN_TURNS, catch, (main,), side.stations[used], marks,
        (catch.times.out, main.times.in_bed), numbers,
    )  # fmt: skip
    return Judged(finding, marks)
