"""Starting earlier or later."""

from collections.abc import Callable, Iterator
from datetime import date, timedelta
from functools import cache

from gardencanvas.fit.report import Remedy
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import DayOfYear
from gardencanvas.planner.case import Case
from gardencanvas.planner.codes import Change
from gardencanvas.planner.ladder import Ladder, coarsely
from gardencanvas.season.dayofyear import day_index
from gardencanvas.season.starting import StartWindow, start_window

LONGEST = 70  # days
FIRST = 4


def starts(case: Case) -> Iterator[Ladder]:
    """Ladders that start each planting earlier and later, day by day, within its window.

    Pinned dates, volunteers and perennials stay as they are.
    """
    for planting in case.changeable:
        if movable(case, planting):
            allowed = _allowed(case, planting)
            for sign in (-1, 1):
                yield _ladder(planting, sign, allowed)


def movable(case: Case, planting: Planting) -> bool:
    """Whether its start may be moved."""
    start = planting.start
    return not start.pinned and start.kind != "volunteer" and case.crop(planting).life != "perennial"


def _ladder(planting: Planting, sign: int, allowed: Callable[[date], bool]) -> Ladder:
    def at(step: int) -> Remedy | None:
        on = planting.start.on + timedelta(days=sign * step)
        if not allowed(on) or (planting.end is not None and on >= planting.end):
            return None
        return Remedy(Change.START, {"planting": planting.id, "days": sign * step, "on": on})

    # not the first that is forbidden: a start outside the window may move into it
    steps = max((step for step in range(1, LONGEST + 1) if at(step) is not None), default=0)
    return Ladder(Change.START, planting.id, steps, at, coarsely(FIRST, steps))


def _allowed(case: Case, planting: Planting) -> Callable[[date], bool]:
    """Whether a planting may start on a day: in its window of an average year, and in the layout's season.

    The window is that without a cover, so that a tender crop is never started before frosts are over.
    """

    @cache
    def window() -> StartWindow:
        kind = planting.start.kind
        if kind == "volunteer":
            raise ValueError("nobody starts a volunteer")
        crop = case.crop(planting)
        return start_window(case.garden.site, crop, kind, supported=case.supported(planting))

    first, last = case.layout.season
    if not first <= planting.start.on <= last:
        first, last = date.min, date.max
    return lambda on: first <= on <= last and is_open(window(), on)


def is_open(window: StartWindow, on: date) -> bool:
    """Whether a day lies in a window, round the year."""
    if window.first is None or window.last is None:
        return window.always
    day = day_index(DayOfYear(month=on.month, day=on.day))
    opens, closes = day_index(window.first), day_index(window.last)
    return opens <= day <= closes if opens <= closes else day >= opens or day <= closes
