"""What a grower's own list of past frosts allows to be said.

The fewer the years, the less: below ``FEW`` only their mean and range; below ``WIDE`` the safe day is a
prediction limit that is visibly wider than the spread of the years, which must be said beside it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal

from gardencanvas.garden.site import DayOfYear
from gardencanvas.season.dayofyear import day_of_index
from gardencanvas.season.frost import FEW, History, history

WIDE = 10  # years: with fewer, Student's t widens the limit by more than a tenth; common practice
RISK = 0.1  # of the safe day: one year in ten

Trust = Literal["few years", "wide limit", "enough years"]


@dataclass(frozen=True, slots=True)
class Told:
    """The last frosts of spring, or the first of autumn.

    ``years`` counts all years, ``frosty`` those with frost. ``safe`` is the day after which (in spring) or
    before which (in autumn) frost comes in one year of ten; None with few years, or where frost is rarer.
    """

    years: int
    frosty: int
    mean: DayOfYear
    earliest: DayOfYear
    latest: DayOfYear
    safe: DayOfYear | None
    trust: Trust


def told(days: Sequence[date | None], *, south: bool, spring: bool) -> Told | None:
    """What is known from the dates of past years, None for a year without frost; None if no year had any."""
    frosty = [day for day in days if day is not None]
    if not frosty:
        return None
    past = history(days, south=south, spring=spring)
    counted = [round(history([day], south=south, spring=spring).mean) for day in frosty]
    trust: Trust = "few years" if len(days) < FEW else "wide limit" if len(days) < WIDE else "enough years"
    return Told(
        len(days),
        len(frosty),
        day_of_index(round(past.mean)),
        day_of_index(min(counted)),
        day_of_index(max(counted)),
        None if trust == "few years" else _safe(past, spring=spring),
        trust,
    )


def _safe(past: History, *, spring: bool) -> DayOfYear | None:
    if past.years < 2:
        return None
    late = past.day(RISK)
    if late is None:
        return None
    # The distribution is symmetric: the autumn limit lies as far before the mean as this one lies after it.
    return day_of_index(round(late if spring else 2 * past.mean - late))
