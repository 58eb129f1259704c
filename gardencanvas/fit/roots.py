"""Roots: plants whose roots want the same soil, weighted by how much water and food both want."""

from datetime import date
from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Basis, Crop, Fact, Harvest
from gardencanvas.fit.codes import Code
from gardencanvas.fit.geometry import crossing_area
from gardencanvas.fit.judged import Judged, finding_of, worst_of
from gardencanvas.fit.near import Pairs
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.rooting import overlap
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import DEPTHS_APART, ROOTS_SHOWN, ROOTS_STRAINED

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

# How much a class of need weighs; legumes that fix nitrogen do not compete for it.
_WEIGHT = {"low": 0.5, "medium": 0.75, "high": 1.0, "fixing": 0.0}


class _Mixed(NamedTuple):
    """How far the roots of two stands are in each other's soil, wherever both lie."""

    part: float  # of the sufferer's soil and time, for each footprint of the other's in its room
    apart: float  # Schoener overlap of depths, mean of the time both root there
    days: int


class _Taken(NamedTuple):
    """What one stand bears from the other below ground."""

    sufferer: Stand
    other: Stand
    stations: Ints  # touched
    share: Floats  # (touched,): of the soil it would have at its usual spacing
    apart: float  # Schoener overlap of depths, mean of the time both root there
    days: int


def roots(a: Stand, b: Stand, near: Pairs, sides: tuple[bool, bool] = (True, True)) -> tuple[Judged, ...]:
    """What two stands that meet take from each other's soil.

    A plant shares its root room evenly with all roots in it. With those of its like at usual spacing, which
    fill it u times over, it has 1 / (1 + u) of it; with e more, a part e / (1 + u + e) of that is lost. e is
    the part of its room in which the other's roots lie (lens of both rooms), less what its own spacing leaves
    unused, times the overlap in depth, times how far the other fills its own room, over the time the plant
    grows, each week weighing as far as it fills its room.

    It strains where that loss, times the weight of what both want most (``draw``), is great; deep beside
    shallow roots overlap less and are told as sharing. Roots alone never make a clash.

    Parameters
    ----------
    near
        Pairs of their stations, all that lie within the sum of their root rooms' radii at least.
    sides
        Whether to look at what ``a`` bears and at what ``b`` bears: not where worse is known of it. What the
        two share is only told where nothing is.
    """
    begin, end = max(a.begin, b.begin), min(a.end, b.end)
    if begin >= end or not any(sides):
        return ()
    r, s = a.root_room.radius_m, b.root_room.radius_m
    pairs = near.within(r + s)
    if len(pairs.i) == 0:
        return ()
    if not (_known(a.crop) and _known(b.crop)):
        return _not_known(a, b, pairs)
    lens = _lens(r, s, pairs.distance_m)
    taken = []
    for stand, other, place, asked in ((a, b, pairs.i, sides[0]), (b, a, pairs.j, sides[1])):
        if asked:
            load: Floats = np.bincount(place, lens, len(stand.index)).astype(np.float64, copy=False)
            taken.append(_taken(stand, other, load))
    judged = [j for t in taken if (j := _strained(t)) is not None]
    return tuple(judged) if judged or not all(sides) else _told(taken)


def _lens(r: float, s: float, distance_m: Floats) -> Floats:
    """Ground common to root rooms that are known to overlap, m²."""
    area: Floats = np.full(len(distance_m), np.pi * min(r, s) ** 2)
    cut = np.flatnonzero(distance_m > abs(r - s))
    area[cut] = crossing_area(np.array(r), np.array(s), distance_m[cut])
    return area


def draw(one: Crop, two: Crop) -> float:
    """How much two crops want the same, 0–1: the lesser need of both, of water or of food."""
    water = min(_weight(one.water), _weight(two.water))
    food = min(_weight(one.nutrients), _weight(two.nutrients))
    return max(water, food)


def _weight(need: Fact | None) -> float:
    return _WEIGHT.get(need.value, 0.75) if need else 0.75


def _known(crop: Crop) -> bool:
    """Whether a source gives the depth of its roots."""
    return crop.root_depth_m is not None and crop.root_depth_m.basis is not Basis.FALLBACK


def _not_known(a: Stand, b: Stand, pairs: Pairs) -> tuple[Judged, ...]:
    """What was not checked, so that nobody takes it for well; of a crop beside its own kind spacing tells."""
    if a.crop.id == b.crop.id:
        return ()
    stand = b if _known(a.crop) else a
    some = np.flatnonzero(np.bincount(pairs.i if stand is a else pairs.j))
    marks = np.full(len(some), Verdict.SHARES, dtype=np.uint8)
    finding = finding_of(
        Kind.ROOTS, Code.ROOTS_UNKNOWN, stand, (b if stand is a else a,), some, marks, _both_stand(a, b),
        {"unknown": stand.crop.id, "stations": len(some)}, source="gerwitz-page",
    )  # fmt: skip
    return (Judged(finding, marks),)


def _both_stand(one: Stand, two: Stand) -> tuple[date, date]:
    """First and last day on which both stand."""
    begin, end = max(one.begin, two.begin), min(one.end, two.end)
    return (
        max(one.first_day(begin), two.first_day(begin)),
        min(one.last_day(end - 1), two.last_day(end - 1)),
    )


@lru_cache(maxsize=256)  # so many pairs as lie round what is dragged
def _mixed(stand: Stand, other: Stand) -> _Mixed:
    begin, end = max(stand.begin, other.begin), min(stand.end, other.end)
    room, its = stand.root_room, other.root_room
    depths = overlap(room.bands[:, begin:end], its.bands[:, begin:end])
    own = room.filled[stand.begin : stand.end].copy()
    if stand.crop.harvest is Harvest.SINGLE:  # grown by its first harvest, and only waiting after it
        ready = stand.weeks.index(stand.times.harvest_first)
        own[max(ready + 1 - stand.begin, 1) :] = 0.0
    both = own[begin - stand.begin : end - stand.begin] * its.filled[begin:end]
    whole, together, part = float(own.sum()), float(both.sum()), float(both @ depths)
    return _Mixed(
        part / whole if whole > 0.0 else 0.0,
        part / together if together > 0.0 else 1.0,
        7 * int(np.count_nonzero(both)),
    )


def _taken(stand: Stand, other: Stand, load: Floats) -> _Taken:
    room, mixed = stand.root_room, _mixed(stand.origin, other.origin)
    touched = np.flatnonzero(load)
    beyond = np.maximum(load[touched] / (np.pi * room.radius_m**2) - stand.root_spare[touched], 0.0)
    more = beyond * mixed.part
    share = np.round(more / (1.0 + room.usual + more), 6)
    return _Taken(stand, other, touched, share, mixed.apart, mixed.days)


def _strained(t: _Taken) -> Judged | None:
    bad = np.flatnonzero(t.share * draw(t.sufferer.crop, t.other.crop) >= ROOTS_STRAINED)
    return _judged(t, Code.SAME_ROOTS, bad, Verdict.STRAINS) if len(bad) else None


def _told(taken: list[_Taken]) -> tuple[Judged, ...]:
    """Roots at different depths, said once for both: for the one whose soil is shared most."""
    some = [t for t in taken if t.apart <= DEPTHS_APART and (t.share >= ROOTS_SHOWN).any()]
    if not some:
        return ()
    most = max(some, key=lambda t: float(t.share.max()))
    return (_judged(most, Code.ROOTS_APART, np.flatnonzero(most.share >= ROOTS_SHOWN), Verdict.SHARES),)


def _judged(t: _Taken, code: Code, some: Ints, verdict: Verdict) -> Judged:
    marks = np.full(len(some), verdict, dtype=np.uint8)
    stand, other = t.sufferer, t.other
    worst = worst_of(marks, t.share[some])
    finding = finding_of(
        Kind.ROOTS, code, stand, (other,), t.stations[some], marks, _both_stand(stand, other),
        {
            "share": float(t.share[some[worst]]),
            "depth_overlap": round(t.apart, 6),
            "depth_m": stand.root_m,
            "other_depth_m": other.root_m,
            "draw": draw(stand.crop, other.crop),
            "days": t.days,
            "stations": len(some),
            "families": len({stand.crop.family, other.crop.family}),
        },
        source="gerwitz-page", worst=worst,
    )  # fmt: skip
    return Judged(finding, marks)
