"""Open ground: what of a bed no footprint covers, from when until when, in pieces and as one figure.

A bed is looked at point by point (``Field``): areas are sums of points, each a cell of ``step_m``; the rim of
an area is off by half a cell at most. ``exact`` gives the same by polygons.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from gardencanvas.fit.stands import IN_BED, RADIUS, grid, season_weeks
from gardencanvas.planner.gaps.above import above, free_height_m
from gardencanvas.planner.gaps.field import Field
from gardencanvas.planner.gaps.survey import Survey, Surveyed

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]
Ints = NDArray[np.intp]

LEAST_M2 = 0.02  # smaller pieces are no gaps: a square of 14 cm, less than one lettuce wants (our choice)
STAYS = 0.75  # of a gap's ground: it is free as long as so much of it is (our choice)
_QUAD_SEGS = 64  # circles as polygons of so many sides: 0.01 % too small


@dataclass(frozen=True, eq=False)
class Gap:
    """A connected piece of open ground in one bed on a date.

    It is free from ``first`` to ``last``; ``area_m2`` is free all that time, ``now_m2`` on the date asked.
    ``light`` is the share of open-sky light low plants have there meanwhile; ``height_m`` what is free
    above, None for open sky; ``root_m`` the bed's soil, None where not known; ``beside`` the plantings next
    to it, nearest first; ``place`` its point farthest from all of them, ``wide_m`` across.
    """

    bed: str
    points: Bools  # of the field's points inside
    now_m2: float
    area_m2: float
    first: date
    last: date
    light: float
    height_m: float | None
    root_m: float | None
    beside: tuple[str, ...]
    place: tuple[float, float]
    wide_m: float


def taken(surveyed: Surveyed, weeks: slice) -> Bools:
    """Which of the bed's points a footprint covers, week by week: shape (points, weeks)."""
    count = weeks.stop - weeks.start
    covered = np.zeros((len(surveyed.field.plan), count), dtype=bool)
    for each in surveyed.neighbours:
        sizes = each.stand.sizes[:, weeks]
        radius = np.where(sizes[IN_BED] > 0, sizes[RADIUS], 0.0).astype(np.float32)
        peak = radius.max(initial=0.0)
        close = np.flatnonzero(each.away_m < peak)
        if len(close):
            covered[close] |= each.away_m[close, None] < radius[None, :]
    return covered


def season_slice(survey: Survey) -> slice:
    """Weeks of the engine's grid that lie in the season."""
    inside = np.flatnonzero(season_weeks(grid(survey.season), survey.season))
    return slice(int(inside[0]), int(inside[-1]) + 1)


def unused(survey: Survey) -> float | None:
    """Share of the beds' ground, over all weeks of the season, under no footprint; None without beds."""
    weeks, free, whole = season_slice(survey), 0.0, 0.0
    for surveyed in _beds(survey):
        share = 1.0 - float(taken(surveyed, weeks).mean())
        free += share * surveyed.field.area_m2
        whole += surveyed.field.area_m2
    return free / whole if whole > 0.0 else None


def weeks_free(survey: Survey, surveyed: Surveyed, on: date) -> Ints:
    """For each point of a bed, how many weeks from a date on it stays free; 0 where it is covered."""
    weeks = season_slice(survey)
    at = min(max(survey.week(on), weeks.start), weeks.stop - 1)
    covered = taken(surveyed, slice(at, weeks.stop))
    until = covered.argmax(axis=1)
    free: Ints = np.where(covered.any(axis=1), until, covered.shape[1]).astype(np.intp)
    return free


def gaps(survey: Survey, on: date) -> tuple[Gap, ...]:
    """The gaps of all beds on a date, the largest first."""
    found = [gap for surveyed in _beds(survey) for gap in gaps_of(survey, surveyed, on)]
    return tuple(sorted(found, key=lambda g: -g.area_m2))


def gaps_of(survey: Survey, surveyed: Surveyed, on: date) -> Iterator[Gap]:
    """The gaps of one bed on a date."""
    weeks = season_slice(survey)
    at = min(max(survey.week(on), weeks.start), weeks.stop - 1) - weeks.start
    covered = taken(surveyed, weeks)
    for piece in pieces(surveyed.field, ~covered[:, at]):
        if piece.sum() * surveyed.field.cell_m2 >= LEAST_M2:
            yield _gap(survey, surveyed, piece, covered, at)


def pieces(field: Field, free: Bools) -> list[Bools]:
    """Connected pieces of some of a field's points, each over its points inside."""
    grid_ = np.zeros(field.inside.shape, dtype=bool)
    grid_[field.inside] = free
    label = _labels(grid_)[field.inside]
    return [label == n for n in range(1, int(label.max(initial=0)) + 1)]


def _labels(free: Bools) -> Ints:
    """Numbers of connected pieces (by sides), 0 where not free: rows cut into runs, runs joined."""
    ny, nx = free.shape
    padded = np.zeros((ny, nx + 2), dtype=np.int8)
    padded[:, 1:-1] = free
    edges = np.diff(padded, axis=1)
    row, begin = np.nonzero(edges == 1)
    end = np.nonzero(edges == -1)[1]
    parent = list(range(len(row)))

    def root(n: int) -> int:
        while parent[n] != n:
            parent[n] = parent[parent[n]]
            n = parent[n]
        return n

    first = np.searchsorted(row, np.arange(ny + 1))
    for y in range(1, ny):
        above_, here = int(first[y - 1]), int(first[y])
        while above_ < first[y] and here < first[y + 1]:
            if begin[above_] < end[here] and begin[here] < end[above_]:
                parent[root(here)] = root(above_)
            if end[above_] < end[here]:
                above_ += 1
            else:
                here += 1
    numbers: dict[int, int] = {}
    label = np.zeros(free.shape, dtype=np.intp)
    for n in range(len(row)):
        label[row[n], begin[n] : end[n]] = numbers.setdefault(root(n), len(numbers) + 1)
    return label


def _gap(survey: Survey, surveyed: Surveyed, piece: Bools, covered: Bools, at: int) -> Gap:
    field = surveyed.field
    open_ = 1.0 - covered[piece].mean(axis=0)
    good = open_ >= STAYS
    begin, end = at, at + 1
    while begin > 0 and good[begin - 1]:
        begin -= 1
    while end < len(good) and good[end]:
        end += 1
    weeks = season_slice(survey)
    first = grid(survey.season).first + timedelta(weeks=weeks.start + begin)
    last = grid(survey.season).first + timedelta(weeks=weeks.start + end, days=-1)
    if end == len(good):
        last = survey.season[1]
    always = ~covered[piece, begin:end].any(axis=1)
    away = _away(surveyed, piece, weeks.start + at)
    middle = int(away.argmax())
    spots = field.plan[piece][_spread(int(piece.sum()))]
    return Gap(
        bed=field.bed.id,
        points=piece,
        now_m2=float(piece.sum() * field.cell_m2),
        area_m2=float(always.sum() * field.cell_m2),
        first=max(first, survey.season[0]),
        last=min(last, survey.season[1]),
        light=above(survey, spots).mean(weeks.start + begin, weeks.start + end),
        height_m=free_height_m(survey, spots, weeks.start + at),
        root_m=field.bed.soil_depth_m,
        beside=_beside(surveyed, piece, weeks.start + at),
        place=(float(field.plan[piece][middle, 0]), float(field.plan[piece][middle, 1])),
        wide_m=2.0 * float(away[middle]),
    )


def _spread(count: int, most: int = 5) -> Ints:
    """A few indices spread over many."""
    return np.unique(np.linspace(0, count - 1, min(most, count)).astype(np.intp))


def _away(surveyed: Surveyed, piece: Bools, week: int) -> Floats:
    """How far the piece's points lie from the bed's edge and all footprints in a week."""
    away = surveyed.field.edge_m[piece].astype(np.float64)
    for each in surveyed.neighbours:
        if each.stand.sizes[IN_BED, week] > 0:
            away = np.minimum(away, each.away_m[piece] - each.stand.sizes[RADIUS, week])
    return away


def _beside(surveyed: Surveyed, piece: Bools, week: int) -> tuple[str, ...]:
    """Plantings that stand next to a piece in a week, the nearest first."""
    found: dict[str, float] = {}
    for each in surveyed.neighbours:
        if each.stand.sizes[IN_BED, week] > 0:
            rim = float(each.away_m[piece].min()) - float(each.stand.sizes[RADIUS, week])
            if rim <= 2 * surveyed.field.step_m + 0.05:
                name = each.stand.planting.id
                found[name] = min(found.get(name, np.inf), rim)
    return tuple(sorted(found, key=lambda p: (found[p], p)))


def _beds(survey: Survey) -> Iterator[Surveyed]:
    for bed in survey.layout.beds:
        surveyed = survey.bed(bed)
        if surveyed is not None:
            yield surveyed


def exact(ground: BaseGeometry, discs: Floats, radius_m: float) -> BaseGeometry:
    """Where the middle of a plant may stand: ground less a margin, less discs grown by the plant's radius.

    The same as the Minkowski difference of the ground and the union of the discs with a disc of that radius.

    Parameters
    ----------
    discs
        x, y and radius of each plant that stands there, shape (n, 3).
    """
    inner = ground.buffer(-radius_m, join_style="mitre") if radius_m > 0.0 else ground
    if len(discs) == 0:
        return inner
    grown = shapely.buffer(shapely.points(discs[:, :2]), discs[:, 2] + radius_m, quad_segs=_QUAD_SEGS)
    return inner.difference(shapely.union_all(grown))


def widest(free: BaseGeometry, tolerance_m: float = 0.001) -> tuple[tuple[float, float], float] | None:
    """Middle and radius of the largest circle in some free ground; None where there is no ground."""
    if free.is_empty:
        return None
    line = shapely.maximum_inscribed_circle(free, tolerance=tolerance_m)
    (x, y), _ = line.coords
    return (float(x), float(y)), float(line.length)
