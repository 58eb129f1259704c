"""The three questions: what fits here, where does this fit, what can still be started.

Each is a search in slices: a generator that pauses before every trial with its ``Progress`` and returns an
``Answer``. All that is proposed has been judged by the engine in the whole garden, all kinds on.
"""

from collections import OrderedDict
from collections.abc import Callable, Generator, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import Polygon

from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import Finding
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_at
from gardencanvas.garden.value import Point
from gardencanvas.planner.gaps.answers import QUICK_D, Answer, Miss, Progress, Proposal, Weights, Why, Wishes
from gardencanvas.planner.gaps.claims import Room, stems
from gardencanvas.planner.gaps.clearance import Region
from gardencanvas.planner.gaps.history import families_before, rests
from gardencanvas.planner.gaps.misses import misses
from gardencanvas.planner.gaps.offers import Ground, Offers, best_of, ground_of, offers
from gardencanvas.planner.gaps.open_ground import pieces, season_slice, taken
from gardencanvas.planner.gaps.proposing import Ranking, proposed
from gardencanvas.planner.gaps.sprouts import Sprouts, sprouts_of
from gardencanvas.planner.gaps.survey import Survey, Surveyed
from gardencanvas.planner.gaps.trying import Trials
from gardencanvas.planner.gaps.ways import Ways, ways_of

Bools = NDArray[np.bool_]
Search = Generator[Progress, None, Answer]

MOST = 7  # proposals of one answer
MOST_TRIALS = 20  # of the whole engine
_LAST_ROWS, _LAST_PLACES = 3, 6  # tried where nothing else fits
POINT_REACH_M = 1.5  # a click asks about the open ground so far round it …
STOOD_M = 0.5  # … or, on ground that is covered, about so much
_SPROUTS_KEPT = 24


@dataclass(frozen=True, slots=True)
class Question:
    """What all questions share."""

    since: date
    wishes: Wishes = field(default_factory=Wishes)
    weights: Weights = field(default_factory=Weights)
    most: int = MOST


def by_place(survey: Survey, checker: Checker, where: Point | Sequence[Point], question: Question) -> Search:
    """What fits at a point, or in an area, from a day on.

    Parameters
    ----------
    where
        A plan point, whose open ground is meant; or the corners of an area.
    """
    regions = _regions(survey, where, question.since)
    if not regions:
        return Answer(misses=(Miss(Why.OUTSIDE),))
    ways = _ways(survey)
    rows = _wished(survey, ways, question.wishes, regions)
    if not rows:
        return Answer(misses=(Miss(Why.NOTHING_LEFT),))
    starts = ways.starts(rows, question.since)
    sprouts = _sprouts(survey, ways, [(r, s) for r, s in zip(rows, starts, strict=True) if s is not None])
    found = yield from _search(survey, checker, regions, sprouts, question, _crop)
    return _explained(found, survey, ways, rows, question)


def by_crop(
    survey: Survey, checker: Checker, crop_id: str, question: Question, variety: str | None = None
) -> Search:
    """All beds and weeks in which a crop, or one variety of it, could still be started this year."""
    ways = _ways(survey)
    rows = [
        n
        for n, w in enumerate(ways.every)
        if w.crop_id == crop_id and (w.variety == variety or (variety is None and w.variety is None))
    ]
    regions = [r for bed in survey.layout.beds if (r := _whole(survey, bed)) is not None]
    if not regions:
        return Answer(misses=(Miss(Why.OUTSIDE),))
    week = ways.week(question.since)
    begun = [
        (row, max(survey.season[0] + timedelta(weeks=w), question.since))
        for row in rows
        for w in range(week, ways.good.shape[1], _STEP)
        if ways.waited[row, w]
    ]
    sprouts = _sprouts(survey, ways, begun)
    found = yield from _search(survey, checker, regions, sprouts, question, _bed)
    return _explained(found, survey, ways, rows, question)


def by_date(survey: Survey, checker: Checker, question: Question) -> Search:
    """What can still be started in the week of a day, anywhere in the garden."""
    ways = _ways(survey)
    regions = [r for bed in survey.layout.beds if (r := _whole(survey, bed)) is not None]
    if not regions:
        return Answer(misses=(Miss(Why.OUTSIDE),))
    rows = _wished(survey, ways, question.wishes, regions)
    begun = [
        (row, on)
        for row in rows
        for on in sorted({question.since, question.since + timedelta(days=ways.every[row].nursery_d)})
        if on <= survey.season[1] and ways.good[row, ways.week(on)]
    ]
    sprouts = _sprouts(survey, ways, begun)
    found = yield from _search(survey, checker, regions, sprouts, question, _crop)
    return _explained(found, survey, ways, rows, question)


_STEP = 2  # weeks between starts that are asked about by crop


def finished(search: Search, is_cancelled: Callable[[], bool] = lambda: False) -> Answer:
    """The answer of a search, or nothing when it was cancelled."""
    try:
        while not is_cancelled():
            next(search)
    except StopIteration as end:
        found: Answer = end.value
        return found
    search.close()
    return Answer()


def _ways(survey: Survey) -> Ways:
    return ways_of(survey.garden.site, survey.catalogue, survey.season)


def _regions(survey: Survey, where: Point | Sequence[Point], since: date) -> list[Region]:
    if isinstance(where[0], int | float):
        point = (float(where[0]), float(where[1]))  # type: ignore[arg-type]
        bed = bed_at(survey.layout, point)
        found = None if bed is None else _round(survey, bed, point, since)
        return [found] if found is not None else []
    corners = [tuple(map(float, p)) for p in where]  # type: ignore[arg-type]
    if len(corners) < 3:
        return []
    area = shapely.make_valid(Polygon(corners))
    return [r for bed in survey.layout.beds if (r := _part(survey, bed, area)) is not None]


def _whole(survey: Survey, bed: Bed) -> Region | None:
    surveyed = survey.bed(bed)
    if surveyed is None:
        return None
    return Region(surveyed, np.ones(len(surveyed.field.plan), dtype=bool), surveyed.field.ground)


def _part(survey: Survey, bed: Bed, area: shapely.Geometry) -> Region | None:
    """What of a bed lies in an area."""
    surveyed = survey.bed(bed)
    if surveyed is None:
        return None
    field = surveyed.field
    ground = field.ground.intersection(area)
    if ground.area < 1e-6:
        return None
    points = shapely.dwithin(ground, shapely.points(field.plan), field.slip_m)
    return Region(surveyed, points, ground)


def _round(survey: Survey, bed: Bed, point: Point, since: date) -> Region | None:
    """The open ground round a point, or, where it is covered, a little ground round it."""
    surveyed = survey.bed(bed)
    if surveyed is None:
        return None
    field = surveyed.field
    away = np.hypot(*(field.plan - np.array(point)).T)
    at = int(away.argmin())
    free = _free(survey, surveyed, since)
    if not free[at]:
        return Region(surveyed, away <= max(STOOD_M, float(away[at])), field.ground)
    frame = field.to_frame(np.array([point]))[0]
    near = (np.abs(field.to_frame(field.plan) - frame) <= POINT_REACH_M).all(axis=1)
    piece = next(p for p in pieces(field, free & (near | (away == away[at]))) if p[at])
    return Region(surveyed, piece, field.ground)


def _free(survey: Survey, surveyed: Surveyed, on: date) -> Bools:
    weeks = season_slice(survey)
    at = min(max(survey.week(on), weeks.start), weeks.stop - 1)
    return ~taken(surveyed, slice(at, at + 1))[:, 0]


def _wished(survey: Survey, ways: Ways, wishes: Wishes, regions: Sequence[Region]) -> list[int]:
    """Rows of the ways that satisfy the wishes."""
    rows: Iterable[int] = range(len(ways.every))
    every = ways.every
    for crops in (wishes.tin, wishes.wanted):
        if crops is not None:
            rows = [r for r in rows if every[r].crop_id in crops]
    if wishes.no_raising:
        rows = [r for r in rows if every[r].kind != "raised"]
    if wishes.quick:
        rows = [r for r in rows if _quick(ways, r)]
    if wishes.new_family:
        ground = shapely.union_all([r.ground for r in regions])
        before = families_before(survey.garden, survey.layout, ground, survey.catalogue)
        rows = [r for r in rows if rests(every[r], before, survey.layout.year)]
    return list(rows)


def _quick(ways: Ways, row: int) -> bool:
    """Whether its books promise a harvest soon after it comes into the bed."""
    way = ways.every[row]
    days = way.crop.harvest_from_sowing_d if way.kind == "sown" else way.crop.harvest_from_planting_d
    return days is not None and days.mid <= QUICK_D and way.crop.life != "perennial"


_sprouts_known: OrderedDict[tuple[object, ...], tuple[Ways, Sprouts]] = OrderedDict()


def _sprouts(survey: Survey, ways: Ways, begun: Sequence[tuple[int, date]]) -> Sprouts | None:
    """Ways followed from their starts, remembered; None where there are none."""
    if not begun:
        return None
    key = (id(ways), tuple(begun))
    known = _sprouts_known.get(key)
    if known is None:
        some = sprouts_of(
            survey.garden.site, survey.season, [ways.every[r] for r, _ in begun], [on for _, on in begun]
        )
        known = _sprouts_known[key] = (ways, some)
        while len(_sprouts_known) > _SPROUTS_KEPT:
            _sprouts_known.popitem(last=False)
    return known[1]


@dataclass(frozen=True, slots=True, eq=False)
class _Found:
    proposals: tuple[Proposal, ...]
    clashes: tuple[tuple[str, str | None, Finding], ...]
    offers: tuple[Offers, ...]
    looked_at: int


def _crop(offer: Offers, row: int) -> object:
    """One proposal a crop."""
    return offer.sprouts.ways[row].crop_id


def _bed(offer: Offers, row: int) -> object:
    """One proposal a bed."""
    return offer.ground.region.surveyed.field.bed.id


def _search(
    survey: Survey,
    checker: Checker,
    regions: Sequence[Region],
    sprouts: Sprouts | None,
    question: Question,
    same: Callable[[Offers, int], object],
) -> Generator[Progress, None, _Found]:
    """Try the best offers in turn: on ground of their own first, then where ground is shared."""
    if sprouts is None:
        return _Found((), (), (), 0)
    grounds = [ground_of(survey, r) for r in regions]
    trials = Trials(survey.garden, survey.layout, checker)
    ground_m2 = max(sum(r.area_m2 for r in regions), 1e-6)
    found: list[Proposal] = []
    clashes: list[tuple[str, str | None, Finding]] = []
    done: set[object] = set()
    every: list[Offers] = []
    for room in (Room.OWN, Room.SHARED):
        if len(found) >= question.most:
            break
        now = _offered(survey, grounds, sprouts, room)
        yield Progress(trials.made, MOST_TRIALS, tuple(found))
        every += now
        ranking = Ranking(question.weights, ground_m2, best_of(every, ground_m2))
        tried = 0
        for offer, row in _in_order(now, ranking):
            key = same(offer, row)
            if key in done:
                continue
            if len(found) >= question.most or tried >= MOST_TRIALS:
                break
            before = _before(survey, offer.ground)
            made = trials.made
            one = proposed(survey, trials, offer, row, ranking, before)
            tried += trials.made - made
            if isinstance(one, Proposal):
                found.append(one)
                done.add(key)
            elif isinstance(one, Finding):
                way = offer.sprouts.ways[row]
                clashes.append((way.crop_id, way.variety, one))
                done.add((key, room))
            yield Progress(min(trials.made, MOST_TRIALS), MOST_TRIALS, tuple(found))
    if not found and every:
        ranking = Ranking(question.weights, ground_m2, best_of(every, ground_m2))
        found += yield from _last(survey, trials, every[-len(grounds) :], ranking)
    found.sort(key=lambda p: -p.score)
    return _Found(tuple(found), tuple(clashes), tuple(every), sprouts.count * len(regions))


def _last(
    survey: Survey, trials: Trials, every: Sequence[Offers], ranking: Ranking
) -> Generator[Progress, None, list[Proposal]]:
    """Single plants where there is most clearance, though not enough by any rule: the engine decides.

    Not in a drawn area: it says how far plants may spread.
    """
    beds = [(n, o) for n, o in enumerate(every) if o.ground.region.whole]
    rows = [(float(o.short_m[r]), n, r) for n, o in beds for r in np.flatnonzero(o.lit).tolist()]
    for _, number, row in sorted(rows)[:_LAST_ROWS]:
        offer = every[number]
        region = offer.ground.region
        least = np.array([stems(offer.sprouts, n.stand)[row] for n in region.surveyed.neighbours])
        for at in region.roomiest(offer.apart[row], least, _LAST_PLACES):
            one = proposed(survey, trials, offer, row, ranking, _before(survey, offer.ground), at)
            if isinstance(one, Proposal):
                return [one]
            yield Progress(MOST_TRIALS, MOST_TRIALS)
    return []


def _offered(survey: Survey, grounds: Sequence[Ground], sprouts: Sprouts, room: Room) -> list[Offers]:
    return [offers(survey, g, sprouts, room) for g in grounds]


def _in_order(every: Sequence[Offers], ranking: Ranking) -> list[tuple[Offers, int]]:
    """All offers that can be, the best first."""
    scores = [o.order(ranking.weights, ranking.ground_m2, ranking.best) for o in every]
    if not scores:
        return []
    flat = np.concatenate(scores)
    width = [len(s) for s in scores]
    owner = np.repeat(np.arange(len(every)), width)
    row = np.concatenate([np.arange(n) for n in width])
    order = np.argsort(-flat, kind="stable")
    return [(every[owner[n]], int(row[n])) for n in order if np.isfinite(flat[n])]


def _before(survey: Survey, ground: Ground) -> dict[str, int]:
    return families_before(survey.garden, survey.layout, ground.region.ground, survey.catalogue)


def _explained(found: _Found, survey: Survey, ways: Ways, rows: Sequence[int], question: Question) -> Answer:
    """The answer, with what came nearest where there is none."""
    if found.proposals:
        return Answer(found.proposals, (), found.looked_at)
    return Answer(
        (), misses(found.offers, found.clashes, survey, ways, rows, question.since), found.looked_at
    )
