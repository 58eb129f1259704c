"""The verdict on one planting, joined from the findings that name it."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.fallback import estimated
from gardencanvas.fit.held import Held
from gardencanvas.fit.judged import SHARES, Judged
from gardencanvas.fit.report import Finding, PlantingFit, Verdict
from gardencanvas.fit.stands import Stand

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]


@dataclass(frozen=True, slots=True, eq=False)
class Opinion:
    """What is said of one planting: its fit, and the findings in which it suffers."""

    fit: PlantingFit
    findings: tuple[Finding, ...]


def opinion(
    stands: Sequence[Stand],
    light: Floats,
    own: Iterable[Judged],
    sharing: Iterable[Ints],
    spare: int | None,
) -> Opinion:
    """Join what is said of a planting.

    Parameters
    ----------
    stands
        Its stands, the first variety first.
    light
        Share of open-sky light of each station.
    own
        Findings in which it is the one that suffers.
    sharing
        Its stations that overlap a neighbour and lose nothing.
    spare
        Days to spare, where it is a catch crop.
    """
    planting, crop = stands[0].planting, stands[0].crop
    judged = tuple(own)
    marks = _marks(planting.pattern.count, judged, sharing)
    findings: dict[str, Finding] = {}
    for found in (j.finding for j in judged):
        findings[found.id] = _joined(findings[found.id], found) if found.id in findings else found
    fit = PlantingFit(
        id=planting.id,
        crop=planting.crop,
        variety=planting.variety,
        plants=planting.plants,
        verdict=Verdict(int(marks.max())),
        layer=crop.layer,
        root_depth_m=max(s.root_m for s in stands),
        harvest_first=min(s.times.harvest_first for s in stands),
        harvest_last=max(s.times.harvest_last for s in stands),
        light=round(float(light.mean()), 9),
        days_to_spare=spare,
        estimated=tuple(sorted({field for s in stands for field in _estimated(s)})),
        station_verdicts=marks,
    )
    return Opinion(fit, tuple(findings.values()))


def _marks(count: int, judged: Iterable[Judged], sharing: Iterable[Ints]) -> NDArray[np.uint8]:
    """The worst verdict of each station."""
    marks = np.zeros(count, dtype=np.uint8)
    for each in judged:
        np.maximum.at(marks, each.finding.stations, each.marks)
    for some in sharing:
        marks[some] = np.maximum(marks[some], SHARES)
    marks.setflags(write=False)
    return marks


def _joined(one: Finding, two: Finding) -> Finding:
    """One finding from those of two varieties: the worse one speaks for both."""
    worse = two if two.verdict > one.verdict else one
    stations = np.union1d(one.stations, two.stations).astype(np.int32)
    numbers = dict(worse.numbers)
    if "stations" in numbers:
        numbers["stations"] = len(stations) if one.verdict == two.verdict else numbers["stations"]
    return replace(
        worse,
        first=min(one.first, two.first),
        last=max(one.last, two.last),
        numbers=numbers,
        stations=stations,
    )


def _estimated(stand: Stand) -> tuple[str, ...]:
    return _estimated_of(Held(stand.crop), stand.planting.start.kind)


@lru_cache(maxsize=4096)
def _estimated_of(held: Held, kind: str) -> tuple[str, ...]:
    return estimated(held.crop, kind)
