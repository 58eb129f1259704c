"""As many plants as fit, at one spacing and start, so that the engine finds no clash.

Every pattern is laid into the room that is clear of neighbours by ``planner.gaps.claims``, and into all the
room there is, where only stems keep apart; the engine judges them in the whole garden, those that hold most
first, and what clashes is left out. A pattern that could not hold more than the best one is not tried.
"""

from collections.abc import Generator, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import TypeVar

import numpy as np
from shapely.geometry.base import BaseGeometry

from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import Finding, Verdict
from gardencanvas.garden import laying
from gardencanvas.garden.edits import made
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laid import Spacings
from gardencanvas.garden.pattern import Pattern, Spots
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.value import Point
from gardencanvas.planner.between import rows_across
from gardencanvas.planner.filling.ground import apart_from, clear_of, ground_of, within
from gardencanvas.planner.filling.lattices import KINDS, Kind, Laid, laid_in, lattices
from gardencanvas.planner.gaps.answers import Effect, Progress
from gardencanvas.planner.gaps.sprouts import Sprouts, sprouts_of
from gardencanvas.planner.gaps.survey import Survey
from gardencanvas.planner.gaps.trying import Trials, Tried
from gardencanvas.planner.gaps.ways import Way

MOST_TRIALS = 16  # of the whole engine
_CARVINGS = 6  # times that clashing plants are left out before a pattern is given up


@dataclass(frozen=True, slots=True)
class Filling:
    """What is to be filled with what.

    ``worst`` is the verdict that must not be reached: clashes, or, to be stricter, strains.
    """

    bed: Bed
    area: tuple[Point, ...] | None  # of the bed; None: all of it
    crop: str
    variety: str | None
    room: Spacings
    start: Start
    kinds: tuple[Kind, ...] = KINDS
    worst: Verdict = Verdict.CLASHES


class Lack(StrEnum):
    """Why nothing fits."""

    NO_GROUND = "no ground"  # nothing there can be planted
    NO_ROOM = "no room"  # no plant keeps its distance from the edge and from what grows there
    TOO_MANY = "too many"  # more plants than a planting may hold
    FORBIDDEN = "forbidden"  # the engine says so


@dataclass(frozen=True, slots=True, eq=False)
class Filled:
    """The planting that holds most plants, as the engine has judged it in the whole garden."""

    planting: Planting
    verdict: Verdict
    strains: tuple[Finding, ...]
    effects: tuple[Effect, ...]
    trials: int


@dataclass(frozen=True, slots=True, eq=False)
class Unfilled:
    """Nothing fits: why; where the engine forbids it, its finding and the planting that was tried."""

    lack: Lack
    finding: Finding | None = None
    planting: Planting | None = None


Answer = Filled | Unfilled
Search = Generator[Progress, None, Answer]
T = TypeVar("T")


def fill(survey: Survey, checker: Checker, filling: Filling) -> Search:
    """Look for the planting that holds most plants, pausing before each pattern and each trial."""
    ground = ground_of(survey, filling.bed, filling.area)
    if ground.is_empty:
        return Unfilled(Lack.NO_GROUND)
    try:
        patterns = yield from _laid(survey, filling, ground)
    except Refusal:
        return Unfilled(Lack.TOO_MANY)
    if not patterns:
        return Unfilled(Lack.NO_ROOM)
    return (yield from _judged(survey, checker, filling, patterns))


def finished(search: Search) -> Answer:
    """The answer of a search that nobody stops."""
    try:
        while True:
            next(search)
    except StopIteration as end:
        answer: Answer = end.value
        return answer


def _laid(survey: Survey, filling: Filling, ground: BaseGeometry) -> Generator[Progress, None, list[Laid]]:
    """Patterns worth trying, most plants first; where plants are as many, the clear ones first."""
    lay = lattices(
        filling.room, laying.frame_of(filling.bed).angle_deg, filling.kinds, _rows_apart(survey, filling.bed)
    )
    clear, bare = _rooms(survey, filling, ground)
    found: list[Laid] = []
    for number, lattice in enumerate(lay):
        for room in (clear, bare) if bare is not None else (clear,):
            laying_out = laid_in(room, lattice)
            found += yield from _told(laying_out, Progress(number, len(lay) + MOST_TRIALS))
    found.sort(key=lambda laid: -laid.count)  # stable: as listed where they hold as many
    return found or _single(clear, filling.room)


def _told(steps: Generator[None, None, T], progress: Progress) -> Generator[Progress, None, T]:
    """The outcome of some steps, with the progress told before each."""
    while True:
        try:
            next(steps)
        except StopIteration as end:
            outcome: T = end.value
            return outcome
        yield progress


def _rooms(
    survey: Survey, filling: Filling, ground: BaseGeometry
) -> tuple[BaseGeometry, BaseGeometry | None]:
    """The room clear of neighbours, and that in which only stems keep apart where it is another."""
    inner = within(ground, min(filling.room.in_row_m, filling.room.even_m) / 2)
    stands = apart_from(survey, ground, _sprout(survey, filling))
    if not stands:
        return inner, None
    clear = clear_of(inner, [(s, max(leaves, stems)) for s, leaves, stems in stands])
    return clear, clear_of(inner, [(s, stems) for s, _, stems in stands])


def _sprout(survey: Survey, filling: Filling) -> Sprouts:
    crop = survey.catalogue.resolve(filling.crop, filling.variety)
    kind = filling.start.kind
    way = Way(filling.crop, filling.variety, crop, "sown" if kind == "volunteer" else kind)
    return sprouts_of(survey.garden.site, survey.season, [way], [filling.start.on])


def _rows_apart(survey: Survey, bed: Bed) -> float:
    """How far apart the bed's rows lie; 0 where they lie unevenly, or are fewer than two."""
    gaps = np.diff(rows_across(survey.layout, bed))
    return float(gaps[0]) if len(gaps) and float(np.ptp(gaps)) < 0.002 else 0.0


def _single(room: BaseGeometry, spacing: Spacings) -> list[Laid]:
    """One plant, where the room is too small for a pattern."""
    if room.is_empty:
        return []
    at = room.representative_point()
    spot = Spots(points=((round(at.x, 6), round(at.y, 6)),), spacing_m=spacing.in_row_m)
    return [Laid(spot, 1)]


def _judged(
    survey: Survey, checker: Checker, filling: Filling, patterns: Sequence[Laid]
) -> Generator[Progress, None, Answer]:
    yield Progress(0, MOST_TRIALS)
    trials = Trials(
        survey.garden, survey.layout, checker, limit=filling.worst, keeping=True, carvings=_CARVINGS
    )
    name = trials.id_for(filling.crop)
    best: Tried | None = None
    forbids: Finding | None = None
    begun = len(filling.kinds) * 2
    for number, laid in enumerate(patterns[:MOST_TRIALS]):
        if best is not None and laid.count <= best.planting.pattern.count:
            break
        attempt = trials.attempts(_planting(filling, name, laid.pattern))
        tried = yield from _told(attempt, Progress(begun + number, begun + MOST_TRIALS))
        if isinstance(tried, Finding):
            forbids = forbids or tried
        elif tried is not None and (
            best is None or tried.planting.pattern.count > best.planting.pattern.count
        ):
            best = tried
    if best is None:
        return Unfilled(Lack.FORBIDDEN, forbids, _planting(filling, name, patterns[0].pattern))
    verdict = best.report.plantings[name].verdict
    return Filled(best.planting, verdict, best.strains, best.effects, trials.made)


def _planting(filling: Filling, name: str, pattern: Pattern) -> Planting:
    return made(
        Planting,
        id=name,
        crop=filling.crop,
        varieties=(filling.variety,) if filling.variety else (),
        pattern=pattern,
        start=filling.start,
    )
