"""Climbing one ladder: the smallest of its steps that mends."""

from collections.abc import Callable, Generator

from gardencanvas.fit.report import Remedy
from gardencanvas.planner.effort import LARGEST, effort
from gardencanvas.planner.ladder import Ladder
from gardencanvas.planner.trials import Trials

ROUGHLY = 8  # once the quick trial has promised too much, the smallest is sought to an eighth of its size

Taken = Generator[None, None, Remedy | None]
Test = Callable[[int], Taken]


class Climb:
    """How far a ladder has been climbed.

    ``failed`` is the highest step known not to do, ``effort`` the least that a higher step can cost.
    """

    def __init__(self, ladder: Ladder, trials: Trials) -> None:
        self.ladder = ladder
        self.failed = 0
        self.effort = 0.0
        self._trials = trials
        self._doubted = False

    @property
    def left(self) -> bool:
        """Whether higher steps are left."""
        return any(step > self.failed for step in self.ladder.coarse)

    def further(self) -> Taken:
        """Take one coarse step; where it promises to do, find the smallest and try it in the whole garden."""
        step = next(s for s in self.ladder.coarse if s > self.failed)
        test = self._fully if self._doubted else self._lightly
        remedy = yield from test(step)
        if remedy is None:
            self._note_failed(step)
            return None
        low = self.failed
        while step - low > (max(step // ROUGHLY, 1) if self._doubted else 1):
            middle = (low + step) // 2
            smaller = yield from test(middle)
            if smaller is None:
                low = middle
            else:
                step, remedy = middle, smaller
        if not self._doubted:
            remedy = yield from self._fully(step)
        if remedy is None:
            self._doubted = True
            self._note_failed(step)
        return remedy

    def _at(self, step: int) -> Remedy | None:
        remedy = self.ladder.at(step)
        return remedy if remedy is not None and effort(remedy) <= LARGEST else None

    def _note_failed(self, step: int) -> None:
        self.failed = step
        remedy = self._at(step)
        if remedy is not None:
            self.effort = effort(remedy)

    def _lightly(self, step: int) -> Taken:
        remedy = self._at(step)
        if remedy is None:
            return None
        yield
        return remedy if self._trials.promises(remedy) else None

    def _fully(self, step: int) -> Taken:
        remedy = self._at(step)
        if remedy is None:
            return None
        yield
        return self._trials.mends(remedy)
