"""Days of a climate year: 365 days that come back, on which monthly normals and frost dates are read.

A day number ``tau`` counts climate days from 1 January 2000; 29 February is read as 28 February, so that
``tau % 365`` is the day of year (0 is 1 January) and ``tau // 365`` the year after 2000.
"""

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import DayOfYear

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Days = NDArray[np.datetime64]

MONTH_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
MONTH_STARTS = tuple(sum(MONTH_DAYS[:m]) for m in range(12))
YEAR = 365
_LEAP_DAY = 59  # index of 29 February in a leap year


def climate_days(on: Days) -> Ints:
    """Climate day numbers of dates, same shape."""
    years = on.astype("datetime64[Y]")
    first = years.astype("datetime64[D]")
    day = (on - first).astype(np.int64)
    leap = ((years + 1).astype("datetime64[D]") - first).astype(np.int64) == 366
    day -= leap & (day >= _LEAP_DAY)
    tau: Ints = YEAR * (years.astype(np.int64) - 30) + day
    return tau


def dates(tau: Ints) -> Days:
    """Dates of climate day numbers: the inverse of ``climate_days`` but for 29 February."""
    year, day = np.divmod(tau, YEAR)
    years = (year + 30).astype("datetime64[Y]")
    first = years.astype("datetime64[D]")
    leap = ((years + 1).astype("datetime64[D]") - first).astype(np.int64) == 366
    on: Days = first + (day + (leap & (day >= _LEAP_DAY)))
    return on


def day_index(day: DayOfYear) -> int:
    """Index 0–364 of a day that comes back each year."""
    return MONTH_STARTS[day.month - 1] + min(day.day, MONTH_DAYS[day.month - 1]) - 1


def day_of_index(index: int) -> DayOfYear:
    """The day of the year with that index; any whole number, taken round the year."""
    index %= YEAR
    month = max(m for m in range(12) if MONTH_STARTS[m] <= index)
    return DayOfYear(month=month + 1, day=index - MONTH_STARTS[month] + 1)
