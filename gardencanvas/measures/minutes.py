"""Hours of work: how often each job comes, and the minutes it takes.

All minutes are common practice put into numbers for one person with hand tools, not measurements: gardeners
differ by half and double, which is the range that is shown. A grower may state their own.
"""

from collections.abc import Iterable, Mapping
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.measures.estimates import UNKNOWN, Estimate
from gardencanvas.measures.yields.draws import estimate, factor

Floats = NDArray[np.float64]

GARDENERS = (0.5, 2.0)  # times the stated minutes (common practice)


class Minutes(NamedTuple):
    """What one job takes: some minutes whenever it is done, and some for each plant."""

    each: float
    plant: float = 0.0


class Task(NamedTuple):
    """A job that is done once, to so many plants."""

    kind: str
    plants: int


MINUTES: Mapping[str, Minutes] = {
    "raise": Minutes(10.0, 0.2),  # sow under glass: trays, labels, watering in
    "prick out": Minutes(5.0, 0.5),
    "harden off": Minutes(15.0),  # out and in again for some days
    "sow": Minutes(10.0, 0.03),  # rake, draw the drill, sow, cover
    "plant out": Minutes(10.0, 0.75),
    "set": Minutes(5.0, 0.25),
    "support": Minutes(15.0),
    "cover": Minutes(10.0),
    "uncover": Minutes(5.0),
    "net": Minutes(10.0),
    "thin": Minutes(5.0, 0.05),
    "weed": Minutes(10.0, 0.02),
    "water": Minutes(5.0),  # each week that lacks rain
    "pick": Minutes(5.0, 0.1),  # each week of its harvest
    "last picking": Minutes(0.0),  # one of the pickings
    "lift": Minutes(5.0, 0.2),
    "clear": Minutes(10.0, 0.05),
}


def hours(tasks: Iterable[Task], minutes: Mapping[str, Minutes] = MINUTES) -> Estimate:
    """Hours that some jobs take together; not known where the minutes of one of them are not."""
    total = 0.0
    for task in tasks:
        stated = minutes.get(task.kind)
        if stated is None:
            return UNKNOWN
        total += stated.each + stated.plant * task.plants
    return estimate(total / 60.0, total / 60.0 * pace())


def pace() -> Floats:
    """Draws of how many of the stated minutes a gardener needs for each: the same for all work."""
    return factor(*GARDENERS, "pace of work")
