"""Trials of remedies on the real engine: first among the finding's plantings, then in the whole garden."""

from gardencanvas.fit.checker import Checker
from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import Remedy
from gardencanvas.garden.errors import Refusal
from gardencanvas.planner.applying import apply
from gardencanvas.planner.case import Case
from gardencanvas.planner.effort import LARGEST, effort
from gardencanvas.planner.outcome import may_mend, mends, with_cost

# Looked at first is what neighbours in its ground do to a planting: most changes too small fail there.
PRESSED = (Code.CROWDED.value, Code.TOO_LATE.value)
USUAL = 2  # plantings of most findings


class Trials:
    """Counts what it costs: a trial among few plantings is quick, one in the whole garden is not."""

    def __init__(self, case: Case, checker: Checker) -> None:
        self._case = case
        self._checker = checker
        self._few = case.alone()
        self._own = Checker(case.catalogue)
        self._before = self._own.update(self._few, case.layout.id)
        self._weight = max(1.0, len(case.named) / USUAL)  # a trial costs as much as there are plantings
        self.light = 0.0
        self.full = 0

    def promises(self, remedy: Remedy) -> bool:
        """Whether the finding would be gone if there were only its own plantings."""
        layout_id = self._case.layout.id
        self.light += self._weight
        try:
            trial = apply(self._few, layout_id, remedy)
        except Refusal:
            return False
        finding = self._case.finding
        if finding.code in PRESSED:
            some = self._own.pressed(trial, layout_id, finding.plantings[0])
            if not may_mend(finding, self._before, some):
                return False
        return mends(finding, self._before, self._own.update(trial, layout_id))

    def mends(self, remedy: Remedy) -> Remedy | None:
        """The remedy, with its cost, if it holds in the whole garden and worsens nothing."""
        case = self._case
        self.full += 1
        try:
            trial = apply(case.garden, case.layout.id, remedy)
        except Refusal:
            return None
        after = self._checker.update(trial, case.layout.id)
        if not mends(case.finding, case.report, after):
            return None
        told = with_cost(remedy, case.report, after)
        return told if told is not None and effort(told) <= LARGEST else None
