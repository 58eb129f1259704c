"""Reach: crops picked again and again that no arm reaches from a path or the edge of the bed.

Common practice: beds are made 1.2 m wide, 1.5 m at most, so that an arm reaches their middle from both sides.
Ground much wider than a bed is walked on between its rows, and is not judged.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import NamedTuple

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from gardencanvas.crops.model import Crop, Group, Harvest
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of, worst_of
from gardencanvas.fit.near import Pairs, box, near_pairs
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.same import same_items
from gardencanvas.fit.stands import HEIGHT, IN_BED, RADIUS, Stand
from gardencanvas.fit.thresholds import (
    ARM_M,
    EDGE_STEP_M,
    LEAN_OVER_M,
    OUTSIDE_M,
    PICKED_SHARE,
    WALKED_M,
    WAY_M,
)
from gardencanvas.garden.ground import Bed, Fixture, Path
from gardencanvas.garden.places import bed_ground

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Bools = NDArray[np.bool_]


def picked_often(crop: Crop) -> bool:
    """Whether a grower comes back to it every few days: pods, fruits, leaves and herbs of the year.

    Perennials are few plants in their place, to which one steps.
    """
    often = crop.harvest in (Harvest.REPEATED, Harvest.CUT_AGAIN) and crop.life != "perennial"
    return often and crop.group not in (Group.FLOWER, Group.GREEN_MANURE)


class Edges(NamedTuple):
    """Where one stands to reach into a bed, and places there, shape (n, 2)."""

    line: BaseGeometry
    feet: Floats


@dataclass(frozen=True, eq=False)
class Ground:
    """What one reaches in from, and what stands in the way of that.

    From an edge along a wall, fence, hedge or shed nobody reaches in.
    """

    beds: tuple[Bed, ...]
    paths: tuple[Path, ...]
    fixtures: tuple[Fixture, ...]

    def same(self, beds: Sequence[Bed], paths: Sequence[Path], fixtures: Sequence[Fixture]) -> bool:
        """Whether it is made of these very things."""
        mine, theirs = (self.beds, self.paths, self.fixtures), (beds, paths, fixtures)
        return all(same_items(a, b) for a, b in zip(mine, theirs, strict=True))

    @cached_property
    def boxes(self) -> Floats:
        """Box of each bed, widened by the tolerance of its rim, shape (beds, 4)."""
        wide = np.array([-OUTSIDE_M, -OUTSIDE_M, OUTSIDE_M, OUTSIDE_M])
        boxes: Floats = np.array([bed_ground(b).bounds for b in self.beds]).reshape(-1, 4) + wide
        return boxes

    def numbers_at(self, stand: Stand) -> list[int]:
        """Which beds the box of a stand meets, in the order they were drawn."""
        boxes, (a0, b0, a1, b1) = self.boxes, stand.bounds
        meets = (boxes[:, 0] <= a1) & (boxes[:, 1] <= b1) & (boxes[:, 2] >= a0) & (boxes[:, 3] >= b0)
        found: list[int] = np.flatnonzero(meets).tolist()
        return found

    def beds_at(self, stand: Stand) -> list[Bed]:
        """The beds that the box of a stand meets."""
        return [self.beds[k] for k in self.numbers_at(stand)]

    def edges(self, bed: int) -> Edges | None:
        """The edges of a bed; None of ground that is walked on between its rows."""
        if bed not in self._edges:
            made = _edges(self.beds[bed], self.paths, self.fixtures)
            self._edges[bed] = None if made is None else Edges(made, _feet(made))
        return self._edges[bed]

    @cached_property
    def _edges(self) -> dict[int, Edges | None]:
        return {}


def too_far(stand: Stand, ground: Ground) -> Judged | None:
    """Stations of an often picked crop out of an arm's reach of every path and edge."""
    if not picked_often(stand.crop) or stand.begin == stand.end:
        return None
    far = np.zeros(len(stand.index))
    for edges, some in _from_edges(stand, ground):
        far[some] = shapely.distance(edges.line, shapely.points(stand.xy[some]))
    some = np.flatnonzero(far > ARM_M + OUTSIDE_M)
    if len(some) == 0:
        return None
    worst = worst_of(np.zeros(len(some), dtype=np.uint8), far[some])
    numbers = {"distance_m": round(float(far[some[worst]]), 6), "arm_m": ARM_M}
    return _judged(stand, (), some, numbers, worst)


def in_the_way(stand: Stand, partners: Iterable[Stand]) -> list[Stand]:
    """Those of other plantings' stands that may close the way to an often picked crop."""
    if not picked_often(stand.crop) or stand.begin == stand.end:
        return []
    return [p for p in partners if _in_the_way(p, stand)]


def shut_off(stand: Stand, tall: Sequence[Stand], ground: Ground) -> Judged | None:
    """Stations within an arm's reach to which other, tall crops close every way.

    Parameters
    ----------
    tall
        Those ``in_the_way``.
    """
    hidden = np.zeros(len(stand.xy), dtype=bool)
    hiding = np.zeros(len(tall), dtype=bool)
    for edges, some in _from_edges(stand, ground):
        shut, by = _hidden(stand, some, edges.feet, tall)
        hidden[shut] = True
        hiding |= by
    if not hidden.any():
        return None
    names = {t.planting.id for t, hides in zip(tall, hiding.tolist(), strict=True) if hides}
    others = tuple(p for p in tall if p.planting.id in names)
    return _judged(stand, others, hidden.nonzero()[0], {"arm_m": ARM_M}, 0)


def _from_edges(stand: Stand, ground: Ground) -> list[tuple[Edges, Ints]]:
    """Edges one reaches its stations from, bed by bed; of beds that overlap, the one drawn last counts."""
    free = np.ones(len(stand.xy), dtype=bool)
    found = []
    for bed in reversed(ground.numbers_at(stand)):
        inside = free & shapely.intersects_xy(bed_ground(ground.beds[bed]), stand.xy[:, 0], stand.xy[:, 1])
        if inside.any():
            free &= ~inside
            edges = ground.edges(bed)
            found += [(edges, np.flatnonzero(inside))] if edges is not None else []
    return found


def _edges(bed: Bed, paths: Sequence[Path], fixtures: Sequence[Fixture]) -> BaseGeometry | None:
    """Where one stands to reach into a bed; None of ground that is walked on between its rows."""
    x0, y0, x1, y1 = bed_ground(bed).bounds
    bounds = (x0, y0, x1, y1)
    near = tuple((p.line, p.width_m) for p in paths if _meets(p.line, p.width_m, bounds))
    walls = tuple(f.outline for f in fixtures if f.kind != "tree" and _meets(f.outline, WAY_M, bounds))
    return _edges_of(bed.outline, bed.holes, near, walls)


def _meets(points: Sequence[tuple[float, float]], wide: float, bounds: tuple[float, ...]) -> bool:
    x, y = [p[0] for p in points], [p[1] for p in points]
    x0, y0, x1, y1 = bounds
    return min(x) - wide <= x1 and max(x) + wide >= x0 and min(y) - wide <= y1 and max(y) + wide >= y0


@lru_cache(maxsize=1024)
def _edges_of(
    outline: tuple[tuple[float, float], ...],
    holes: tuple[tuple[tuple[float, float], ...], ...],
    paths: tuple[tuple[tuple[tuple[float, float], ...], float], ...],
    walls: tuple[tuple[tuple[float, float], ...], ...],
) -> BaseGeometry | None:
    ground = shapely.Polygon(outline, holes)
    if _width_m(ground) > WALKED_M:
        return None
    edges: BaseGeometry = ground.boundary
    for wall in walls:
        edges = edges.difference(shapely.Polygon(wall).buffer(WAY_M))
    trodden = [shapely.LineString(line).buffer(width / 2, cap_style="flat") for line, width in paths]
    edges = shapely.union_all([edges, *(t.intersection(ground) for t in trodden)])
    if edges.is_empty:  # walled in on all sides: one gets in somehow
        edges = ground.boundary
    return edges


def _width_m(ground: shapely.Polygon) -> float:
    """The shorter side of the least rectangle round a bed."""
    ring = np.asarray(shapely.minimum_rotated_rectangle(ground).exterior.coords)
    return float(np.hypot(*np.diff(ring[:3], axis=0).T).min())


def _picking(stand: Stand) -> slice:
    """Weeks of its harvest."""
    first = stand.weeks.index(stand.times.harvest_first)
    last = stand.weeks.index(stand.times.harvest_last)
    return slice(max(first, stand.begin), max(min(last + 1, stand.end), 0))


def _in_the_way(other: Stand, stand: Stand) -> bool:
    """Whether it stands too tall to lean over for weeks while the stand is picked."""
    weeks = _picking(stand)
    over = other.sizes[HEIGHT, weeks] >= np.maximum(LEAN_OVER_M, stand.sizes[HEIGHT, weeks])
    tall = np.count_nonzero(over & (other.sizes[IN_BED, weeks] > 0))
    return bool(2 * tall > len(over))


def _hidden(stand: Stand, some: Ints, feet: Floats, tall: Sequence[Stand]) -> tuple[Ints, Bools]:
    """Stations every straight way to which, from an edge within reach, crosses a tall plant.

    Also whether a plant of each tall stand is near any of them, shape (tall,).
    """
    weeks = _picking(stand)
    counts = [len(t.xy) for t in tall]
    centres = np.concatenate([t.xy for t in tall])
    wide = np.repeat([PICKED_SHARE * float(t.sizes[RADIUS, weeks].max(initial=0.0)) for t in tall], counts)
    owner = np.repeat(np.arange(len(tall)), counts)
    xy = stand.xy.take(some, axis=0)
    close = near_pairs(xy, centres, box(xy), box(centres), ARM_M + float(wide.max()))
    shut = _shut(xy, feet, close, centres, wide)
    by = np.bincount(owner[close.j[shut[close.i]]], minlength=len(tall)) > 0
    return some[shut], by


@dataclass(frozen=True, slots=True, eq=False)
class _Ways:
    """Straight ways to stations, past the plants near them: ``count`` of ``close`` from ``first`` on."""

    xy: Floats
    feet: Floats
    close: Pairs
    centres: Floats
    wide: Floats
    first: Ints  # (stations,)
    count: Ints  # (stations,)

    def closed(self, to: Ints, foot: Ints) -> Bools:
        """Whether a disc lies across the way from a foot to a station, shape (ways,)."""
        count = self.count[to]
        way = np.repeat(np.arange(len(to)), count)
        pair = np.arange(len(way)) + np.repeat(self.first[to] - np.cumsum(count) + count, count)
        disc = self.close.j[pair]
        here = self.xy.take(to, axis=0)
        step = self.feet.take(foot, axis=0) - here
        off = self.centres.take(disc, axis=0) - here.take(way, axis=0)
        crossed = _crosses(step.take(way, axis=0), off, self.wide[disc])
        across: Bools = np.bincount(way[crossed], minlength=len(to)) > 0
        return across


def _crosses(step: Floats, to: Floats, wide: Floats) -> Bools:
    """Whether straight ways ``step`` pass through discs at ``to``, both from one spot, shapes (n, 2)."""
    (x, y), (u, v) = step.T, to.T
    length = np.maximum(x * x + y * y, 1e-12)
    along = np.clip((x * u + y * v) / length, 0.0, 1.0)
    u, v, near = u - along * x, v - along * y, np.maximum(wide - OUTSIDE_M, 0.0)
    crossed: Bools = u * u + v * v < near * near
    return crossed


def _shut(xy: Floats, feet: Floats, close: Pairs, centres: Floats, wide: Floats) -> Bools:
    """Stations all of whose straight ways from places within reach pass through a disc, shape (n,).

    Parameters
    ----------
    close
        Pairs of stations and discs, all that may lie across a way.
    """
    shut = np.zeros(len(xy), dtype=bool)
    count = np.bincount(close.i, minlength=len(xy))
    reached = near_pairs(xy, feet, box(xy), box(feet), ARM_M + OUTSIDE_M)
    asked = (count[reached.i] > 0).nonzero()[0]
    if len(asked) == 0:
        return shut
    to, foot, distance = reached.i[asked], reached.j[asked], reached.distance_m[asked]
    ways = _Ways(xy, feet, close, centres, wide, np.cumsum(count) - count, count)
    begins = np.concatenate([[True], to[1:] != to[:-1]]).nonzero()[0]
    least = np.repeat(np.minimum.reduceat(distance, begins), np.diff(np.append(begins, len(to))))
    # the shortest ways first: only stations shut off from those need a look at the others
    shortest = (distance == least).nonzero()[0]
    shut[to[shortest]] = True
    shut[to[shortest][~ways.closed(to[shortest], foot[shortest])]] = False
    rest = (shut[to] & (distance > least)).nonzero()[0]
    if len(rest):
        shut[to[rest][~ways.closed(to[rest], foot[rest])]] = False
    return shut


def _feet(edges: BaseGeometry) -> Floats:
    """Points along the edges, a hand's breadth apart at most, shape (n, 2)."""
    return np.asarray(shapely.get_coordinates(shapely.segmentize(edges, EDGE_STEP_M)))


def _judged(
    stand: Stand,
    others: tuple[Stand, ...],
    some: Ints,
    numbers: dict[str, float],
    worst: int,
) -> Judged:
    times, marks = stand.times, np.full(len(some), Verdict.STRAINS, dtype=np.uint8)
    finding = finding_of(
        Kind.TIMING, Code.OUT_OF_REACH, stand, others, some, marks, (times.harvest_first, times.harvest_last),
        {**numbers, "stations": len(some), "of": len(stand.index)}, worst=worst, mark="reach",
    )  # fmt: skip
    return Judged(finding, marks)
