"""The course of plantings through the season: the contract between the season and those who ask it.

``follow`` is vectorised: all plantings at once, one row each, one column a week.
"""

from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.garden.planting import Start

Floats = NDArray[np.float64]
Days = NDArray[np.datetime64]  # datetime64[D]


@dataclass(frozen=True, slots=True)
class Weeks:
    """A grid of weeks: ``first`` is the first day of week 0, week w starts 7·w days later."""

    first: date
    count: int

    @property
    def starts(self) -> Days:
        """First day of each week, shape (count,)."""
        return np.datetime64(self.first, "D") + 7 * np.arange(self.count)

    def index(self, on: date) -> int:
        """Week that holds a day, clipped to the grid."""
        return min(max((on - self.first).days // 7, 0), self.count - 1)


@dataclass(frozen=True, slots=True)
class Growing:
    """One planting as the season sees it; the crop is complete (``Catalogue.resolve``)."""

    crop: Crop
    start: Start
    end: date | None = None
    supported: bool = False  # a climber with a support grows up, not out
    warmed: bool = False  # under a cover from its first day in the bed …
    warmed_until: date | None = None  # … to this day; None: as long as it stands


@dataclass(frozen=True, slots=True, eq=False)
class Course:
    """Sizes through the weeks (arrays of shape (plantings, weeks)) and dates (shape (plantings,)).

    Sizes are those in the middle of each week (its fourth day), 0 where the planting does not stand in the
    bed on that day, so that of two plantings on the same ground, one out the day before the other comes in,
    never both are present. No harvest date lies after ``out``.
    """

    weeks: Weeks
    radius_m: Floats  # canopy radius
    height_m: Floats  # top of the canopy
    base_m: Floats  # underside of the canopy
    root_m: Floats  # root depth
    leaf_area: Floats  # m² leaf per m² of the plant's own footprint
    present: NDArray[np.bool_]
    sown: Days  # in place or under glass
    in_bed: Days  # first day in the bed
    harvest_first: Days
    harvest_last: Days
    out: Days  # last day in the bed
    frosted: NDArray[np.bool_]  # killed by frost before its first harvest
    ripe: NDArray[np.bool_]  # reaches its first harvest while it stands; if not, both harvest dates are `out`
    # What an average year holds, whether or not it lives to see it; NaT where frost never kills it.
    exposed: Days  # first day in the bed on which frost can touch it: it shows, or its cover comes off
    last_frost: Days  # typical last killing frost of the winter before
    killing_frost: Days  # typical first killing frost that follows
    ready: Days  # first harvest, if neither frost nor the grower ends it before
    warm_enough: NDArray[np.bool_]  # it gets ready at all, in the longest time of its kind
