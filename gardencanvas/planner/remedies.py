"""The smallest changes that remove a finding, found by search over the real engine.

Each kind of change of each planting is a ladder of steps. The ladders are climbed together, the least effort
first: a step that holds among the finding's own plantings is made as small as it can be and then tried in the
whole garden. What is offered has been seen to remove the finding and to worsen nothing.
"""

from collections.abc import Callable, Generator, Iterator
from heapq import heappop, heappush
from itertools import count

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import Finding, Kind, Remedy
from gardencanvas.garden.garden import Garden
from gardencanvas.planner.applying import apply
from gardencanvas.planner.case import Case, case_of
from gardencanvas.planner.changes.ending import ends
from gardencanvas.planner.changes.leaving_out import left_out
from gardencanvas.planner.changes.poleward import poleward
from gardencanvas.planner.changes.shifting import shifts
from gardencanvas.planner.changes.spacing import wider
from gardencanvas.planner.changes.starting import starts
from gardencanvas.planner.changes.supporting import supports
from gardencanvas.planner.changes.swapping import swaps
from gardencanvas.planner.climb import Climb
from gardencanvas.planner.effort import effort
from gardencanvas.planner.ladder import Ladder
from gardencanvas.planner.pairs import pair
from gardencanvas.planner.trials import Trials

__all__ = ["Search", "apply", "remedies", "search"]

MOST = 4  # remedies for one finding: more are no help in choosing
ALIKE = 2  # of one code
# What the search may cost, so that it ends soon in a garden where nothing helps (measured, see the bench).
LIGHT_TRIALS = 72
FULL_TRIALS = 10

Search = Generator[None, None, tuple[Remedy, ...]]


def remedies(
    garden: Garden,
    layout_id: str,
    finding: Finding,
    checker: Checker,
    *,
    is_cancelled: Callable[[], bool] = lambda: False,
    known: Catalogue | None = None,
) -> tuple[Remedy, ...]:
    """The smallest changes that remove a finding, least first; empty where none is found, or when cancelled.

    Parameters
    ----------
    finding
        One that strains or clashes, of this garden and layout.
    checker
        The engine that judged the garden; it is left at some trial, from where the next update is quick.
    is_cancelled
        Asked before each trial, every few milliseconds.
    known
        The crops the checker judges by; the shipped ones with the garden's own where none are given.
    """
    climbing = search(garden, layout_id, finding, checker, known)
    try:
        while not is_cancelled():
            next(climbing)
    except StopIteration as end:
        found: tuple[Remedy, ...] = end.value
        return found
    climbing.close()
    return ()


def search(
    garden: Garden, layout_id: str, finding: Finding, checker: Checker, known: Catalogue | None = None
) -> Search:
    """The same search in slices: a generator that pauses before each trial and returns the remedies."""
    known = known or catalogue().with_own(garden.crops, garden.varieties)
    layout = garden.layout(layout_id)
    case = case_of(garden, layout, finding, checker.update(garden, layout.id), known)
    if case is None:
        return ()
    trials = Trials(case, checker)
    queue: list[tuple[float, int, Climb]] = []
    number = count()
    every = [ladder for ladder in ladders(case) if ladder.steps > 0]
    for ladder in every:
        heappush(queue, (0.0, next(number), Climb(ladder, trials)))
    found: list[Remedy] = []
    while queue and trials.light < LIGHT_TRIALS and trials.full < FULL_TRIALS:
        least, _, climb = heappop(queue)
        if _enough(found, least, climb.ladder):
            continue
        remedy = yield from climb.further()
        if remedy is not None:
            found.append(remedy)
        elif climb.left:
            heappush(queue, (climb.effort, next(number), climb))
    if not found:
        both = yield from pair(every, trials)
        found = [both] if both is not None else []
    return tuple(sorted(found, key=effort)[:MOST])


def ladders(case: Case) -> Iterator[Ladder]:
    """All changes that might help, by what the finding is about."""
    if case.finding.kind is Kind.SUPPORT:
        yield from supports(case)
    yield from shifts(case)
    yield from poleward(case)
    yield from starts(case)
    if case.finding.kind is not Kind.OUTSIDE:
        yield from ends(case)
        yield from wider(case)
        yield from swaps(case)
    yield from left_out(case)
    if case.finding.kind in (Kind.CROWDING, Kind.SHADING):
        yield from supports(case)


def _enough(found: list[Remedy], least: float, ladder: Ladder) -> bool:
    """Whether a ladder that cannot offer less than some effort is not worth climbing on."""
    alike = [r for r in found if r.code == ladder.code]
    if len(alike) >= ALIKE or any(r.numbers["planting"] == ladder.planting for r in alike):
        return True
    return sum(effort(r) <= least for r in found) >= MOST
