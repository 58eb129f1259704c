"""Where and when two stands meet, and what each takes from the other."""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.capture import LEAST_LEAF
from gardencanvas.fit.geometry import SAME_M, TOUCH_M, crossing_area
from gardencanvas.fit.near import Pairs, near_pairs
from gardencanvas.fit.stands import BASE, HEIGHT, IN_BED, LEAF, RADIUS, Stand
from gardencanvas.fit.thresholds import ALIKE, RISE_M, UNLIKE
from gardencanvas.light.overhead import taken_under

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Bools = NDArray[np.bool_]


@dataclass(frozen=True, slots=True, eq=False)
class Side:
    """What one stand bears from the other; arrays of shape (touched stations, spells).

    A spell is a run of weeks in which neither changes size.
    """

    stations: Ints  # of the stand, those that are touched
    covered: Floats  # share of the footprint that lies under or in the other's, summed over its plants
    crowd: Floats  # others' leaves over its own on its ground, as far as heights are alike (``capture``)
    passed: Floats  # logarithm of the share of light that the other's taller canopy lets through
    overhung: bool  # whether the other's canopy takes any light at all
    nearest_m: Floats  # (touched stations,): distance of each one's nearest neighbour
    beside: Floats  # the part of ``passed`` that those of like height have, slightly above
    pressed: Floats  # (touched stations,): mean of what both may take over its growth, at most


@dataclass(frozen=True, slots=True, eq=False)
class Meeting:
    """Two stands whose footprints overlap on the plan, at the same or at different dates.

    Weeks ``[begin, end)`` of the grid: from the later one's first week to the later one's last. ``spell`` has
    shape (end − begin,): which spell a week belongs to; ``starts`` the first week of each spell, counted from
    ``begin``.
    """

    a: Stand
    b: Stand
    begin: int
    end: int
    spell: Ints
    starts: Ints
    lengths: Ints  # (spells,): weeks of each
    together: Bools  # (spells,): both stand in the bed
    growth_a: Floats  # (spells,): how much of its growth falls into each
    growth_b: Floats
    of_a: Side
    of_b: Side

    def growth(self, stand: Stand) -> Floats:
        """How much of that stand's growth falls into each spell."""
        return self.growth_a if stand is self.a else self.growth_b

    def side(self, stand: Stand) -> Side:
        """What that stand bears."""
        return self.of_a if stand is self.a else self.of_b


def meet(a: Stand, b: Stand, near: Pairs | None = None) -> Meeting | None:
    """The meeting of two stands; None where their footprints never share ground.

    Each side counts only weeks in which the other stands in the bed; a plant already lifted is taken at its
    last size, to see what would have closed over it.

    Parameters
    ----------
    near
        Pairs of their stations, all that lie within the sum of their greatest radii at least; sought where
        not given.
    """
    begin, end = max(a.begin, b.begin), max(a.end, b.end)
    if begin >= end or a.end == a.begin or b.end == b.begin:
        return None
    one, two = a.sizes[:, begin:end], b.sizes[:, begin:end]
    reach = float((one[RADIUS] + two[RADIUS]).max()) - TOUCH_M
    pairs = near_pairs(a.xy, b.xy, a.box, b.box, reach) if near is None else near.within(reach)
    if len(pairs.i) == 0:
        return None
    of = _spells(a.origin, b.origin)
    of_a, of_b = _sides(pairs, of)
    growth_a, growth_b = of.of_a.growth, of.of_b.growth
    return Meeting(
        a, b, begin, end, of.spell, of.starts, of.lengths, of.together, growth_a, growth_b, of_a, of_b
    )


@dataclass(frozen=True, slots=True, eq=False)
class _Bearing:
    """What one stand bears from the other by spell, wherever both lie; arrays of shape (spells,)."""

    growth: Floats  # how much of its growth falls into each
    per_m2: Floats  # share of its footprint that a square metre of the other's takes
    crowd: Floats  # others' leaves over its own, as far as heights are alike
    under: Floats  # 1 while the other stands, taller


@dataclass(frozen=True, slots=True, eq=False)
class _Spells:
    """Two stands' sizes in runs of weeks in which neither changes, wherever they lie."""

    spell: Ints  # (weeks,)
    starts: Ints
    lengths: Ints
    together: Bools
    radii: tuple[Floats, Floats]
    reach: Floats  # distance below which footprints overlap
    alike: Floats
    taken: Floats  # of the light under the taller one's leaves
    low_m2: Floats  # footprint of the lower one
    of_a: _Bearing
    of_b: _Bearing


@lru_cache(maxsize=256)  # so many pairs as lie round what is dragged
def _spells(a: Stand, b: Stand) -> _Spells:
    begin, end = max(a.begin, b.begin), max(a.end, b.end)
    one, two = a.sizes[:, begin:end], b.sizes[:, begin:end]
    changes = (one[:, 1:] != one[:, :-1]).any(axis=0) | (two[:, 1:] != two[:, :-1]).any(axis=0)
    starts = np.concatenate([[0], np.flatnonzero(changes) + 1])
    one, two = one[:, starts], two[:, starts]
    r, s = one[RADIUS], two[RADIUS]
    alike, a_low = likeness(one, two), one[HEIGHT] < two[HEIGHT]
    taken = taken_above(np.where(a_low, one, two), np.where(a_low, two, one))
    leaf_a, leaf_b = np.maximum(one[LEAF], LEAST_LEAF), np.maximum(two[LEAF], LEAST_LEAF)
    growth = [np.add.reduceat(s.alone.weight[begin:end], starts) for s in (a, b)]
    bearing = [
        _Bearing(grows, other / np.maximum(np.pi * own * own, 1e-12), alike * leaves, lower * other)
        for grows, other, own, lower, leaves in (
            (growth[0], two[IN_BED], r, a_low, leaf_b / leaf_a),
            (growth[1], one[IN_BED], s, ~a_low, leaf_a / leaf_b),
        )
    ]
    return _Spells(
        spell=np.concatenate([[0], np.cumsum(changes)]),
        starts=starts,
        lengths=np.append(starts[1:], end - begin) - starts,
        together=(one[IN_BED] > 0) & (two[IN_BED] > 0),
        radii=(r, s),
        reach=np.where((r > 0.0) & (s > 0.0), r + s - TOUCH_M, -np.inf),
        alike=alike,
        taken=np.minimum(taken, 0.999),
        low_m2=np.maximum(np.pi * np.where(a_low, r, s) ** 2, 1e-12),
        of_a=bearing[0],
        of_b=bearing[1],
    )


def likeness(one: Floats, two: Floats) -> Floats:
    """How alike two canopies are in height, 0 to 1.

    What both fill over what either fills, stretched so that clearly different storeys count as such.
    """
    both = np.minimum(one[HEIGHT], two[HEIGHT]) - np.maximum(one[BASE], two[BASE])
    either = np.maximum(one[HEIGHT], two[HEIGHT]) - np.minimum(one[BASE], two[BASE])
    share = np.maximum(both, 0.0) / np.maximum(either, 1e-9)
    alike: Floats = np.clip((share - UNLIKE) / (ALIKE - UNLIKE), 0.0, 1.0)
    return alike


def taken_above(low: Floats, tall: Floats) -> Floats:
    """Share of light that the leaves of one canopy above the top of another take from places under them.

    The leaves are spread evenly from the taller canopy's underside to its top; 0 where it is not taller.
    Light comes in from the side as well (``light.overhead``), but not in the first ``RISE_M`` above the lower
    one, in which plants beside it are not counted as taking any.
    """
    depth = tall[HEIGHT] - tall[BASE]
    above = np.maximum(tall[HEIGHT] - np.maximum(low[HEIGHT], tall[BASE]), 0.0)
    part = np.minimum(above / np.maximum(depth, 1e-9), 1.0)
    free = np.maximum(above - RISE_M, 0.0) / np.maximum(tall[RADIUS], 1e-6)
    return taken_under(tall[LEAF] * part, free)


def _sides(pairs: Pairs, of: _Spells) -> tuple[Side, Side]:
    """Both sides from near pairs."""
    spells = len(of.starts)
    overlap = (pairs.distance_m[:, None] < of.reach).ravel().nonzero()[0]
    pair = overlap // spells
    spell = overlap - pair * spells
    lens = _lens(of.radii[0][spell], of.radii[1][spell], pairs.distance_m[pair])
    # discs as if they lay over each other at random: light comes from all sides, not from above alone
    light = np.log1p(-np.minimum(lens / of.low_m2[spell], 1.0) * of.taken[spell])
    sides = []
    for stations, bears in ((pairs.i, of.of_a), (pairs.j, of.of_b)):
        touched, place = _touched(stations)
        cell, size = place[pair] * spells + spell, len(touched) * spells
        covered = _summed(cell, lens * bears.per_m2[spell], size, spells)
        crowd = covered * bears.crowd
        overhung = bool(bears.under.any())
        passed = np.zeros_like(covered)
        if overhung:
            passed = _summed(cell, light, size, spells) * bears.under
            overhung = bool(passed.any())
        beside = passed * of.alike
        nearest = _nearest(place, pairs.distance_m, len(touched))
        pressed = (crowd - beside) @ bears.growth
        sides.append(Side(touched, covered, crowd, passed, overhung, nearest, beside, pressed))
    return sides[0], sides[1]


def _lens(r: Floats, s: Floats, d: Floats) -> Floats:
    """Lens of overlapping discs: the smaller one whole where it lies inside the larger."""
    small = np.minimum(r, s)
    area: Floats = np.pi * small * small
    cut = np.flatnonzero(d > np.abs(r - s) + SAME_M)
    area[cut] = crossing_area(r[cut], s[cut], d[cut])
    return area


def _summed(cell: Ints, values: Floats, size: int, spells: int) -> Floats:
    total: Floats = np.bincount(cell, values, size).astype(np.float64, copy=False)
    return total.reshape(-1, spells)


def _nearest(place: Ints, distance_m: Floats, count: int) -> Floats:
    nearest = np.full(count, np.inf)
    np.minimum.at(nearest, place, distance_m)
    return nearest


def _touched(stations: Ints) -> tuple[Ints, Ints]:
    """The different stations, in order, and the place of each among them."""
    seen = np.zeros(int(stations.max()) + 1, dtype=bool)
    seen[stations] = True
    touched = np.flatnonzero(seen)
    place = np.cumsum(seen) - 1
    return touched, place[stations]
