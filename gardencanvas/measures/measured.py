"""The measures of one layout."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Hazard
from gardencanvas.measures.codes import Code
from gardencanvas.measures.estimates import UNKNOWN, Estimate, Series
from gardencanvas.measures.jobs import Job
from gardencanvas.measures.minutes import Minutes, pace
from gardencanvas.measures.reckoned.work import hours_of
from gardencanvas.measures.yields.bed_ratios import AreaTime

Floats = NDArray[np.float64]
Values = Mapping[Code, Estimate]


@dataclass(frozen=True, slots=True)
class Part:
    """Measures of a whole layout, of one of its beds, or of one crop.

    ``apart`` holds the same of its crops grown apart on the same ground. ``draws`` are the possible values of
    what is estimated, shape (draws,) each: draw k of two parts is the same year and the same soil.
    """

    values: Values
    apart: Values = field(default_factory=dict)
    draws: Mapping[Code, Floats] = field(default_factory=dict)

    def of(self, code: Code) -> Estimate:
        """One measure; not known where it has none."""
        return self.values.get(code, UNKNOWN)

    def of_apart(self, code: Code) -> Estimate:
        """One measure of its crops grown apart."""
        return self.apart.get(code, UNKNOWN)

    def with_hours(self, hours: Estimate) -> "Part":
        """The same with hours of work."""
        draws = {} if hours.value is None else {Code.HOURS: hours.value * pace()}
        return replace(self, values={**self.values, Code.HOURS: hours}, draws={**self.draws, **draws})


@dataclass(frozen=True, slots=True)
class Caution:
    """A hazard of one crop of a layout."""

    crop: str
    hazard: Hazard


@dataclass(frozen=True, slots=True)
class Measured:
    """One layout in numbers.

    ``beds`` by the bed's id, ``crops`` by the crop's id. ``series``: harvest of each crop, ground cover and
    water, week by week. ``unknown_yields`` names crops of which no yield is known: their harvest is in no
    sum. ``outside`` names plantings that stand in no bed: they are checked, but measured in nothing.
    """

    layout: str
    season: tuple[date, date]
    whole: Part
    beds: Mapping[str, Part]
    crops: Mapping[str, Part]
    series: tuple[Series, ...]
    hazards: tuple[Caution, ...]
    unknown_yields: tuple[str, ...]
    outside: tuple[str, ...] = ()
    jobs: tuple[Job, ...] = ()
    times: Mapping[str, AreaTime] = field(default_factory=dict)  # of each bed

    def with_work(self, minutes: Mapping[str, Minutes], cost: Estimate) -> "Measured":
        """The same with hours of work by a table of minutes, and with the cost of its seed."""
        of_bed: dict[str | None, list[Job]] = {}
        for job in self.jobs:
            of_bed.setdefault(job.bed, []).append(job)
        beds = {k: p.with_hours(hours_of(of_bed.get(k, ()), minutes)) for k, p in self.beds.items()}
        whole = self.whole.with_hours(hours_of(self.jobs, minutes))
        whole = replace(whole, values={**whole.values, Code.SEED_COST: cost})
        return replace(self, whole=whole, beds=beds)
