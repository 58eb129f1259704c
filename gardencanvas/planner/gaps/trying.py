"""Trying a planting on the real engine: what clashes is carved away or given up, what stays is a proposal."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import count

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import Finding, FitReport, Verdict
from gardencanvas.garden.edits import add
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.stations import without_stations
from gardencanvas.planner.gaps.answers import Effect

Bools = NDArray[np.bool_]

CARVINGS = 3  # times that clashing plants are taken out before a planting is given up
_LIGHT = 0.005  # of light, or more, is a change


@dataclass(frozen=True, slots=True, eq=False)
class Tried:
    """A planting that does not clash, and the report of the garden with it."""

    planting: Planting
    report: FitReport
    effects: tuple[Effect, ...]
    strains: tuple[Finding, ...]


@dataclass(eq=False)
class Trials:
    """Trials in one garden, counted."""

    garden: Garden
    layout: Layout
    checker: Checker
    made: int = 0
    before: FitReport = field(init=False)

    def __post_init__(self) -> None:
        self.before = self.checker.update(self.garden, self.layout.id)

    def id_for(self, crop: str) -> str:
        """An id that is free, the same each time for the same garden."""
        names = (f"{crop[:34]}-{n}" for n in count(1))
        return next(n for n in names if n not in self.layout.by_id)

    def attempt(self, planting: Planting) -> Tried | Finding | None:
        """The planting with what clashes taken out; the finding that forbids it; None where it is refused."""
        last: Finding | None = None
        for _ in range(CARVINGS + 1):
            self.made += 1
            try:
                report = self.checker.update(add(self.garden, self.layout.id, [planting]), self.layout.id)
            except Refusal:
                return None
            bad = self.clashes(planting.id, report)
            if not bad:
                return self._tried(planting, report)
            last = bad[0]
            gone = self._to_carve(planting, report, bad)
            if gone is None or gone.all():
                return last
            planting = without_stations(planting, np.flatnonzero(gone).tolist())
        return last

    def clashes(self, planting_id: str, report: FitReport) -> list[Finding]:
        """Clashes that the planting has, or brings to others."""
        found = [f for f in report.of(planting_id) if f.verdict is Verdict.CLASHES]
        for name, fit in report.plantings.items():
            old = self.before.plantings.get(name)
            if old is None or old is fit or name == planting_id:
                continue
            if _clashing(fit.station_verdicts) > _clashing(old.station_verdicts):
                found += [
                    f
                    for f in report.findings
                    if f.plantings[0] == name and f.verdict is Verdict.CLASHES and f not in found
                ]
        return found

    def _to_carve(self, planting: Planting, report: FitReport, bad: Sequence[Finding]) -> Bools | None:
        """Which stations to take out; None where it is no matter of single plants."""
        gone = np.zeros(planting.pattern.count, dtype=bool)
        own = report.plantings[planting.id].station_verdicts == Verdict.CLASHES
        for finding in bad:
            if finding.plantings[0] == planting.id:
                gone |= own
                continue
            other = self.layout.by_id.get(finding.plantings[0])
            if not isinstance(other, Planting):
                return None
            hurt = other.stations[finding.stations[finding.stations < other.pattern.count]]
            away = np.hypot(*(planting.stations[:, None, :] - hurt[None, :, :]).transpose(2, 0, 1))
            gone |= away.min(axis=1) <= 1.05 * float(away.min())
        return gone if gone.any() else None

    def _tried(self, planting: Planting, report: FitReport) -> Tried:
        about = report.of(planting.id)
        named = {p for f in about for p in f.plantings if p != planting.id}
        for name, fit in report.plantings.items():
            old = self.before.plantings.get(name)
            if old is not None and old is not fit and _differs(old.light, fit.light):
                named.add(name)
        effects = tuple(self._effect(name, report, about) for name in sorted(named))
        known = {f.id for f in self.before.findings}
        strains = tuple(
            f
            for f in report.findings
            if f.verdict is Verdict.STRAINS and (planting.id in f.plantings or f.id not in known)
        )
        return Tried(planting, report, effects, strains)

    def _effect(self, name: str, report: FitReport, about: Sequence[Finding]) -> Effect:
        old, new = self.before.plantings[name], report.plantings[name]
        both = tuple(f for f in about if name in f.plantings)
        return Effect(name, old.verdict, new.verdict, old.light, new.light, both)


def _differs(one: float, two: float) -> bool:
    return abs(one - two) >= _LIGHT


def _clashing(marks: NDArray[np.uint8]) -> int:
    return int(np.count_nonzero(marks == Verdict.CLASHES))
