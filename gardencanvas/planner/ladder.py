"""Ladders: one kind of change of one planting, from the smallest step to the largest."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from gardencanvas.fit.report import Remedy
from gardencanvas.planner.effort import LARGEST, effort


@dataclass(frozen=True, slots=True)
class Ladder:
    """Steps 1 to ``steps`` of one change; ``at`` gives a step's remedy, None where it is not allowed.

    ``coarse`` are the steps tried first, ascending; between one that fails and one that mends the search
    looks for the smallest.
    """

    code: str
    planting: str
    steps: int
    at: Callable[[int], Remedy | None]
    coarse: tuple[int, ...]

    @property
    def key(self) -> tuple[str, str]:
        """What it changes: of two remedies with the same key only the smaller is worth offering."""
        return self.code, self.planting


def highest(steps: int, at: Callable[[int], Remedy | None]) -> int:
    """The highest allowed step of a change that is the less allowed the larger it is; 0 where none is."""
    low, high = 0, steps + 1
    while high - low > 1:
        middle = (low + high) // 2
        remedy = at(middle)
        if remedy is not None and effort(remedy) <= LARGEST:
            low = middle
        else:
            high = middle
    return low


STRIDE = 4  # between coarse steps: a ladder that does not help costs few trials


def coarsely(first: int, steps: int) -> tuple[int, ...]:
    """Steps first, 4·first, 16·first … and the last one."""
    some = []
    step = first
    while step < steps:
        some.append(step)
        step *= STRIDE
    return (*some, steps) if steps > 0 else ()


def choices(some: Sequence[Remedy]) -> Ladder:
    """A ladder of a few given remedies of the same code and planting, each tried by itself."""
    steps = len(some)
    planting = str(some[0].numbers["planting"])
    return Ladder(some[0].code, planting, steps, lambda step: some[step - 1], tuple(range(1, steps + 1)))
