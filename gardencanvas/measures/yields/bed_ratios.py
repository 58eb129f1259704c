"""Land equivalent and area-time equivalency ratios of beds and of whole layouts."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.measures.estimates import UNKNOWN, Estimate
from gardencanvas.measures.yields.bed_yields import BedYield
from gardencanvas.measures.yields.draws import estimate
from gardencanvas.measures.yields.ratios import LER_DOUBTFUL, apart_in_time, ler

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Ratio:
    """A ratio with its draws, and what it is where the crops are grown apart."""

    value: float
    draws: Floats
    apart: float

    def estimated(self, doubtful_above: float | None = None) -> Estimate:
        """It with its range."""
        doubtful = doubtful_above is not None and self.value > doubtful_above
        return estimate(self.value, self.draws, doubtful=doubtful)


@dataclass(frozen=True, slots=True, eq=False)
class AreaTime:
    """Σ (relative yield × days in the bed) of one bed, between its first and last day with crops."""

    area_m2: float
    first: date
    last: date
    days: Ratio


def land_equivalent(bed: BedYield) -> Ratio | None:
    """Land equivalent ratio of a bed; None without a crop grown for its harvest.

    Only crops that share the bed in time count together: of groups that follow each other the mean is taken,
    by their days, because one crop after another would trivially give 2.
    """
    groups = [g for g in (_cropped(bed, g) for g in bed.bedful.groups) if g]
    if not groups:
        return None
    weights = np.array([_length(bed, g) for g in groups])
    weights = weights / weights.sum()
    return Ratio(
        float(weights @ [ler(bed.relative[g]) for g in groups]),
        np.stack([ler(bed.relative_draws[:, g]) for g in groups], axis=1) @ weights,
        float(weights @ [ler(bed.apart[g]) for g in groups]),
    )


def area_time(bed: BedYield) -> AreaTime | None:
    """What the area-time equivalency ratio of a bed is made of; None without a crop for harvest."""
    some = np.flatnonzero(bed.cropped & (bed.bedful.present.any(axis=1)))
    if len(some) == 0:
        return None
    spans = [bed.bedful.stands[k].span for k in some]
    days = bed.days[some]
    return AreaTime(
        bed.bedful.area_m2,
        min(s[0] for s in spans),
        max(s[1] for s in spans),
        Ratio(
            float(bed.relative[some] @ days),
            bed.relative_draws[:, some] @ days,
            float(bed.apart[some] @ days),
        ),
    )


def area_time_ratio(beds: Mapping[str, AreaTime], spans: Mapping[str, tuple[date, date]]) -> Ratio | None:
    """Area-time equivalency ratio of some beds together, each over its own span of days."""
    if not beds:
        return None
    total = sum(b.area_m2 * ((spans[k][1] - spans[k][0]).days + 1) for k, b in beds.items())
    return Ratio(
        sum(b.area_m2 * b.days.value for b in beds.values()) / total,
        np.sum([b.area_m2 * b.days.draws for b in beds.values()], axis=0) / total,
        sum(b.area_m2 * b.days.apart for b in beds.values()) / total,
    )


def own_spans(beds: Mapping[str, AreaTime]) -> dict[str, tuple[date, date]]:
    """Days from the first to the last crop of each bed."""
    return {k: (b.first, b.last) for k, b in beds.items()}


def mean_ratio(beds: Sequence[tuple[float, Ratio]]) -> Ratio | None:
    """Mean of beds' ratios by their areas."""
    if not beds:
        return None
    areas = np.array([a for a, _ in beds])
    shares = areas / areas.sum()
    return Ratio(
        float(shares @ [r.value for _, r in beds]),
        np.stack([r.draws for _, r in beds], axis=1) @ shares,
        float(shares @ [r.apart for _, r in beds]),
    )


def time_together(bed: BedYield) -> Estimate:
    """Mean over all pairs of different crops of the share of their time that they share."""
    spans: dict[str, tuple[float, float]] = {}
    for k in np.flatnonzero(bed.bedful.present.any(axis=1)):
        stand = bed.bedful.stands[k]
        first, last = stand.span[0].toordinal(), stand.span[1].toordinal() + 1
        old = spans.get(stand.crop.id, (first, last))
        spans[stand.crop.id] = (min(old[0], first), max(old[1], last))
    every = list(spans.values())
    shared = [1.0 - apart_in_time(a, b) for n, a in enumerate(every) for b in every[n + 1 :]]
    return Estimate(float(np.mean(shared))) if shared else UNKNOWN


def ler_estimate(ratio: Ratio | None) -> Estimate:
    """A land equivalent ratio as shown: doubtful above what field trials report."""
    return UNKNOWN if ratio is None else ratio.estimated(LER_DOUBTFUL)


def _cropped(bed: BedYield, group: Sequence[int]) -> list[int]:
    return [k for k in group if bed.cropped[k]]


def _length(bed: BedYield, group: Sequence[int]) -> float:
    spans = [bed.bedful.stands[k].span for k in group]
    return float((max(s[1] for s in spans) - min(s[0] for s in spans)).days + 1)
