"""Trying a planting on the real engine: what clashes is carved away or given up, what stays is a proposal."""

from collections.abc import Generator, Sequence
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
    """Trials in one garden, counted.

    What has a verdict from ``limit`` on is bad; with ``keeping``, so is a finding that becomes worse.
    """

    garden: Garden
    layout: Layout
    checker: Checker
    made: int = 0
    limit: Verdict = Verdict.CLASHES
    keeping: bool = False
    carvings: int = CARVINGS
    before: FitReport = field(init=False)

    def __post_init__(self) -> None:
        self.before = self.checker.update(self.garden, self.layout.id)

    def id_for(self, crop: str) -> str:
        """An id that is free, the same each time for the same garden."""
        names = (f"{crop[:34]}-{n}" for n in count(1))
        return next(n for n in names if n not in self.layout.by_id)

    def attempt(self, planting: Planting) -> Tried | Finding | None:
        """The planting with what clashes taken out; the finding that forbids it; None where it is refused."""
        steps = self.attempts(planting)
        while True:
            try:
                next(steps)
            except StopIteration as end:
                outcome: Tried | Finding | None = end.value
                return outcome

    def attempts(self, planting: Planting) -> Generator[None, None, Tried | Finding | None]:
        """The same, with a pause before each time the engine is asked."""
        last: Finding | None = None
        for _ in range(self.carvings + 1):
            yield
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
        """What is bad about the planting, or what it brings to others."""
        found = [f for f in report.of(planting_id) if f.verdict >= self.limit]
        for name, fit in report.plantings.items():
            old = self.before.plantings.get(name)
            if old is None or old is fit or name == planting_id:
                continue
            if self._bad(fit.station_verdicts) > self._bad(old.station_verdicts):
                found += [
                    f
                    for f in report.findings
                    if f.plantings[0] == name and f.verdict >= self.limit and f not in found
                ]
        return found + [f for f in self._worse(report) if f not in found]

    def _worse(self, report: FitReport) -> list[Finding]:
        """Troubles of before that are worse now, where they must not be."""
        if not self.keeping:
            return []
        known = {f.id: f.verdict for f in self.before.findings}
        return [
            f
            for f in report.findings
            if f.verdict >= Verdict.STRAINS and f.verdict > known.get(f.id, f.verdict)
        ]

    def _bad(self, marks: NDArray[np.uint8]) -> int:
        return int(np.count_nonzero(marks >= self.limit))

    def _to_carve(self, planting: Planting, report: FitReport, bad: Sequence[Finding]) -> Bools | None:
        """Which stations to take out; None where it is no matter of single plants."""
        gone = np.zeros(planting.pattern.count, dtype=bool)
        own = report.plantings[planting.id].station_verdicts >= self.limit
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
