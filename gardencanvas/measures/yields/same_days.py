"""Area-time equivalency ratios of two layouts, over the same days.

Each layout's own ratio is over the days its own crops take. Between two layouts that would reward the one
that leaves the ground empty early: both are set over the days from the first to the last crop of either.
"""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date

from gardencanvas.measures.codes import Code
from gardencanvas.measures.estimates import Estimate
from gardencanvas.measures.measured import Measured, Part
from gardencanvas.measures.yields.bed_ratios import AreaTime, Ratio, area_time_ratio, own_spans

Spans = Mapping[str, tuple[date, date]]


def over_same_days(a: Measured, b: Measured) -> tuple[Measured, Measured]:
    """Both layouts with their area-time equivalency ratios over the days of either, bed by bed."""
    if a.season != b.season:
        return a, b  # other years: each over its own days
    spans = _joint(own_spans(a.times), own_spans(b.times))
    return _over(a, spans), _over(b, spans)


def _joint(one: Spans, two: Spans) -> dict[str, tuple[date, date]]:
    joint = {**one}
    for bed, (first, last) in two.items():
        old = joint.get(bed, (first, last))
        joint[bed] = (min(old[0], first), max(old[1], last))
    return joint


def _over(layout: Measured, spans: Spans) -> Measured:
    beds = {k: _with(part, _ratio(layout.times, k, spans)) for k, part in layout.beds.items()}
    whole = area_time_ratio(layout.times, spans)
    return replace(layout, whole=_with(layout.whole, whole), beds=beds)


def _ratio(times: Mapping[str, AreaTime], bed: str, spans: Spans) -> Ratio | None:
    return area_time_ratio({bed: times[bed]}, spans) if bed in times else None


def _with(part: Part, ratio: Ratio | None) -> Part:
    if ratio is None:
        return part
    return Part(
        {**part.values, Code.ATER: ratio.estimated()},
        {**part.apart, Code.ATER: Estimate(ratio.apart)},
        {**part.draws, Code.ATER: ratio.draws},
    )
