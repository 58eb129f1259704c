"""Two changes at once, where none alone does."""

from collections.abc import Generator, Iterator, Sequence
from dataclasses import replace
from itertools import combinations

from gardencanvas.fit.report import Remedy
from gardencanvas.planner.effort import LARGEST, effort
from gardencanvas.planner.ladder import Ladder
from gardencanvas.planner.trials import Trials

LIGHT, FULL = 14, 2  # trials beyond those of the single changes
HALVINGS = 3

Found = Generator[None, None, Remedy | None]


def pair(ladders: Sequence[Ladder], trials: Trials) -> Found:
    """The first pair of changes, each worth half of what is small, that mends; pauses before trials."""
    light, full = trials.light + LIGHT, trials.full + FULL
    for first, second in _pairs(ladders):
        if trials.light >= light or trials.full >= full:
            return None
        yield
        if not trials.promises(_both(first[0], second[0])):
            continue
        remedy = yield from _smaller(first, second, trials)
        yield
        told = trials.mends(remedy)
        if told is not None:
            return told
    return None


def _pairs(ladders: Sequence[Ladder]) -> Iterator[tuple[list[Remedy], list[Remedy]]]:
    """Steps of two ladders that change different things, the largest first; the least effort first."""
    steps = [(ladder, found) for ladder in ladders if (found := _halving(ladder))]
    some = [
        (a[1], b[1])
        for a, b in combinations(steps, 2)
        if (a[0].code, a[0].planting) != (b[0].code, b[0].planting)
    ]
    yield from sorted(some, key=lambda two: effort(two[0][0]) + effort(two[1][0]))


def _halving(ladder: Ladder) -> list[Remedy]:
    """A ladder's highest step that is worth half of what is small, and steps half as high and so on."""
    low, high = 0, ladder.steps + 1
    while high - low > 1:
        middle = (low + high) // 2
        remedy = ladder.at(middle)
        fits = remedy is not None and effort(remedy) <= LARGEST / 2
        low, high = (middle, high) if fits else (low, middle)
    found: list[Remedy] = []
    while low > 0 and len(found) <= HALVINGS:
        remedy = ladder.at(low)
        if remedy is not None:
            found.append(remedy)
        low //= 2
    return found


def _smaller(first: list[Remedy], second: list[Remedy], trials: Trials) -> Generator[None, None, Remedy]:
    """The pair with each change in turn made half as large while it still promises to do."""
    at = [0, 0]
    for side in (0, 1):
        for step in range(1, len((first, second)[side])):
            tried = [*at]
            tried[side] = step
            yield
            if not trials.promises(_both(first[tried[0]], second[tried[1]])):
                break
            at = tried
    return _both(first[at[0]], second[at[1]])


def _both(first: Remedy, second: Remedy) -> Remedy:
    return replace(first, also=second)
