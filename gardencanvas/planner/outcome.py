"""Whether a changed garden is better: the finding gone, and nothing worse anywhere."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

import numpy as np

from gardencanvas.fit.report import Finding, FitReport, Kind, PlantingFit, Remedy, Verdict
from gardencanvas.fit.thresholds import TAKEN_SHOWN
from gardencanvas.planner.codes import Change

WEEK_D = 7  # a harvest shorter by less is not worth a word (common practice)


def troubles(report: FitReport) -> dict[str, Finding]:
    """Findings that strain or clash, by id."""
    return {f.id: f for f in report.findings if f.verdict >= Verdict.STRAINS}


def mends(finding: Finding, before: FitReport, after: FitReport) -> bool:
    """Whether the finding is gone, or at most shares, and nothing got worse.

    No planting has a worse verdict, nor more stations that strain or clash; no strains or clashes finding is
    new or worse; who lacks light does not lose more of it; who is late is not later.

    A catch crop that is late must not be crowded or shaded by the same neighbour instead: closing over it is
    just that, whether or not the crop still counts as a catch crop.

    Who is blamed for too little light depends on all others, so that shading is followed by the plants that
    lack it: the finding's stations must have enough afterwards, whoever took it; and a planting that lacked
    light before has no new finding if it loses no more than is worth a word.
    """
    old, new = troubles(before), troubles(after)
    if finding.id in new or not all(_known(f, old) for f in new.values()):
        return False
    if finding.kind is Kind.TIMING and any(_closes(finding, f) for f in new.values()):
        return False
    if finding.kind is Kind.SHADING and not _lit(finding, old, before, new, after):
        return False
    dim = {f.plantings[0] for f in new.values() if f.kind is Kind.SHADING}
    return not any(
        _worse(before.plantings[i], fit, dim=i in dim)
        for i, fit in after.plantings.items()
        if fit is not before.plantings[i]
    )


def may_mend(finding: Finding, before: FitReport, some: Iterable[Finding]) -> bool:
    """Whether a finding may be gone and nothing worse, as far as some findings afterwards tell.

    A first look: what is refused here is refused by ``mends``.
    """
    old = troubles(before)
    bad = [f for f in some if f.verdict >= Verdict.STRAINS]
    return all(f.id != finding.id and _known(f, old) for f in bad)


def _closes(late: Finding, finding: Finding) -> bool:
    """Whether a finding says that a late crop's neighbour takes its ground or light."""
    who, *neighbours = late.plantings
    same = finding.plantings[0] == who and not set(neighbours).isdisjoint(finding.plantings[1:])
    return same and finding.kind in (Kind.CROWDING, Kind.SHADING, Kind.TIMING)


def _known(finding: Finding, old: Mapping[str, Finding]) -> bool:
    """Whether a trouble was there before, and as bad."""
    if finding.id in old:
        return old[finding.id].verdict >= finding.verdict
    return finding.kind is Kind.SHADING and any(
        f.kind is Kind.SHADING and f.plantings[0] == finding.plantings[0] and f.verdict >= finding.verdict
        for f in old.values()
    )


def _lit(
    finding: Finding,
    old: Mapping[str, Finding],
    before: FitReport,
    new: Mapping[str, Finding],
    after: FitReport,
) -> bool:
    """Whether the finding's stations have light enough: those that lack it are fewer by as many."""
    who = finding.plantings[0]
    named = {finding.id: old[finding.id]} if finding.id in old else {}
    others = _dim(who, old, before) - _dim(who, named, before)
    return len(_dim(who, new, after)) <= len(others)


def _dim(planting: str, found: Mapping[str, Finding], report: FitReport) -> set[int]:
    """Stations of a planting that some of its shading findings say lack light."""
    marks = report.plantings[planting].station_verdicts
    return {
        int(station)
        for f in found.values()
        if f.kind is Kind.SHADING and f.plantings[0] == planting
        for station in f.stations
        if marks[station] >= Verdict.STRAINS
    }


def _worse(before: PlantingFit, after: PlantingFit, *, dim: bool) -> bool:
    if after.verdict > before.verdict:
        return True
    for verdict in (Verdict.STRAINS, Verdict.CLASHES):
        if _stations(after, verdict) > _stations(before, verdict):
            return True
    if dim and after.light <= before.light - TAKEN_SHOWN:
        return True
    late = after.days_to_spare
    return late is not None and late < min(0, before.days_to_spare or 0)


def _stations(fit: PlantingFit, verdict: Verdict) -> int:
    return int(np.count_nonzero(fit.station_verdicts >= verdict))


def harvest_days(fit: PlantingFit) -> int:
    """Days from first to last harvest."""
    return (fit.harvest_last - fit.harvest_first).days


def with_cost(remedy: Remedy, before: FitReport, after: FitReport) -> Remedy | None:
    """The remedy with what it costs of the changed planting's harvest; None where no harvest is left.

    A shorter harvest is told from a week on. An end says itself what it costs.
    """
    if remedy.also is not None:
        second = with_cost(remedy.also, before, after)
        first = with_cost(replace(remedy, also=None), before, after)
        return None if first is None or second is None else replace(first, also=second)
    planting = str(remedy.numbers["planting"])
    old, new = harvest_days(before.plantings[planting]), harvest_days(after.plantings[planting])
    if remedy.code == Change.END or old == 0:
        return remedy
    if new == 0:
        return None
    if old - new < WEEK_D:
        return remedy
    return Remedy(remedy.code, {**remedy.numbers, "harvest_lost_d": old - new, "harvest_d": old})
