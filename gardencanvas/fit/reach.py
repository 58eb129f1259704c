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
    hidden: dict[int, tuple[str, ...]] = {}
    for edges, some in _from_edges(stand, ground):
        hidden.update(_hidden(stand, some, edges.feet, tall))
    if not hidden:
        return None
    names = {name for each in hidden.values() for name in each}
    others = tuple(p for p in tall if p.planting.id in names)
    return _judged(stand, others, np.array(sorted(hidden), dtype=np.intp), {"arm_m": ARM_M}, 0)


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


def _hidden(stand: Stand, some: Ints, feet: Floats, tall: Sequence[Stand]) -> dict[int, tuple[str, ...]]:
    """Stations every straight way to which, from an edge within reach, crosses a tall plant."""
    weeks = _picking(stand)
    centres = np.concatenate([t.xy for t in tall])
    each = [PICKED_SHARE * float(t.sizes[RADIUS, weeks].max(initial=0.0)) for t in tall]
    wide = np.repeat(each, [len(t.xy) for t in tall])
    owner = np.repeat(np.arange(len(tall)), [len(t.xy) for t in tall])
    xy = stand.xy[some]
    close = near_pairs(xy, centres, box(xy), box(centres), ARM_M + float(wide.max()))
    shut = _shut(xy, feet, close, centres, wide)
    by = np.isin(close.i, shut)
    found: dict[int, set[str]] = {int(some[row]): set() for row in shut}
    for row, tall_one in zip(close.i[by].tolist(), owner[close.j[by]].tolist(), strict=True):
        found[int(some[row])].add(tall[tall_one].planting.id)
    return {row: tuple(sorted(names)) for row, names in found.items()}


def _shut(xy: Floats, feet: Floats, close: Pairs, centres: Floats, wide: Floats) -> Ints:
    """Stations all of whose straight ways from places within reach pass through a disc.

    Parameters
    ----------
    close
        Pairs of stations and discs, all that may lie across a way.
    """
    shut = np.zeros(len(xy), dtype=bool)
    shut[close.i] = True
    rows, place = np.flatnonzero(shut), np.cumsum(shut) - 1
    away = np.hypot(xy[rows, :1] - feet[:, 0], xy[rows, 1:] - feet[:, 1])
    order = away.argsort(axis=1)
    ways = (away <= ARM_M + OUTSIDE_M).sum(axis=1)
    shut[rows[ways == 0]] = False
    i, j = close.i, close.j
    to = centres[j] - xy[i]
    for way in range(int(ways.max(initial=0))):
        # the shortest way first: only stations shut off from it need a look at the next
        left = np.flatnonzero(shut[i] & (ways[place[i]] > way))
        if len(left) == 0:
            break
        step = feet[order[place[i[left]], way]] - xy[i[left]]
        crossed = _crosses(step, to[left], wide[j[left]])
        closed = np.bincount(i[left[crossed]], minlength=len(xy)) > 0
        asked = np.zeros(len(xy), dtype=bool)
        asked[i[left]] = True
        shut &= ~asked | closed
    return np.flatnonzero(shut)


def _crosses(step: Floats, to: Floats, wide: Floats) -> Bools:
    """Whether straight ways ``step`` pass through discs at ``to``, both from one spot, shapes (n, 2)."""
    length = np.maximum((step * step).sum(axis=1), 1e-12)
    along = np.clip((step * to).sum(axis=1) / length, 0.0, 1.0)
    off = to - along[:, None] * step
    crossed: Bools = np.hypot(off[:, 0], off[:, 1]) < wide - OUTSIDE_M
    return crossed


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
