"""Support: climbers without one, too many on one, and tall legumes set too wide to hold each other."""

from collections.abc import Iterable, Sequence
from math import floor, pi

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Group, Layer
from gardencanvas.fit.aids import holders, reached, up_in_time
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, Number, finding_of
from gardencanvas.fit.near import near_pairs, own_pairs
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import HEIGHT, Stand
from gardencanvas.fit.thresholds import (
    AIDED_SHARE,
    GROWN_IN,
    HOLDER_M,
    LEANING_M,
    LOOSE,
    ROUND_STAKE_M,
    SUPPORT_REACH_M,
)
from gardencanvas.garden.ground import LineSupport, RingSupport

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Bools = NDArray[np.bool_]
AnySupport = LineSupport | RingSupport


def wants_support(crop: Crop) -> bool:
    """Whether a crop climbs and must have something to climb."""
    return crop.layer is Layer.CLIMBING and crop.support is not None and crop.support.value != "none"


def leans(crop: Crop) -> bool:
    """Whether a crop stands only because its like stand round it: tall beans that do not climb."""
    tall = crop.height_m is not None and crop.height_m.mid >= LEANING_M
    return (
        crop.group is Group.LEGUME and crop.family == "Fabaceae" and crop.layer is not Layer.CLIMBING and tall
    )


def support(stand: Stand, partners: Iterable[Stand], supports: Sequence[AnySupport]) -> tuple[Judged, ...]:
    """What a stand lacks to hold it up.

    Parameters
    ----------
    partners
        Stands of other plantings that it meets: some hold climbers, others climb on the same support.
    supports
        All of the layout.
    """
    if wants_support(stand.crop):
        near = list(partners)
        judged = [_bare(stand, near, supports), *(_crowded(stand, near, s) for s in supports)]
        return tuple(j for j in judged if j is not None)
    if leans(stand.crop):
        loose = _loose(stand, supports)
        return () if loose is None else (loose,)
    return ()


def _held(stand: Stand, supports: Iterable[AnySupport]) -> Bools:
    on = np.zeros(len(stand.xy), dtype=bool)
    for each in supports:
        on |= reached(stand.xy, each)
    return on


def _bare(stand: Stand, partners: Iterable[Stand], supports: Sequence[AnySupport]) -> Judged | None:
    """Climbers that reach nothing to climb.

    They strain: along the ground they bear less and rot more, and what they cover is told of their
    neighbours. A planting most of which is held counts as held.
    """
    on = _held(stand, supports)
    for other in partners:
        if _holds_up(other, stand):
            near = near_pairs(stand.xy, other.xy, stand.box, other.box, SUPPORT_REACH_M)
            on[near.i] = True
    if on.mean() >= AIDED_SHARE:
        return None
    some = np.flatnonzero(~on)
    numbers: dict[str, Number] = {"stations": len(some), "of": len(on)}
    if stand.crop.height_m is not None:
        numbers["height_m"] = stand.crop.height_m.mid
    if stand.crop.support is not None:
        numbers["support"] = stand.crop.support.value
    return _judged(stand, Code.NO_SUPPORT, some, numbers, "")


def _holds_up(other: Stand, climber: Stand) -> bool:
    """Whether another crop's stems hold a climber: they stand tall enough when it begins to climb."""
    if other.crop.id not in holders(climber.crop.id) or not up_in_time(other.planting, climber.planting):
        return False
    climbs = min(climber.begin + GROWN_IN // 7, climber.end - 1)
    return bool(other.begin <= climbs < other.end and other.sizes[HEIGHT, climbs] >= HOLDER_M)


def room_for(crop: Crop, support: AnySupport) -> int:
    """How many stations of a crop a support carries: at its closest spacing, on both sides of a line."""
    close = crop.in_row_m.low if crop.in_row_m else 0.1
    if isinstance(support, RingSupport):
        return max(floor(2 * pi * (support.radius_m + ROUND_STAKE_M) / close), 1)
    (x0, y0), (x1, y1) = support.begin, support.end
    return 2 * (floor(float(np.hypot(x1 - x0, y1 - y0)) / close) + 1)


def _crowded(stand: Stand, partners: Iterable[Stand], support: AnySupport) -> Judged | None:
    """More stations on one support than it carries, those of its partners counted."""
    some = np.flatnonzero(reached(stand.xy, support))
    if len(some) == 0:
        return None
    count = len(some) + sum(
        int(reached(p.xy, support).sum())
        for p in partners
        if wants_support(p.crop) and min(p.end, stand.end) > max(p.begin, stand.begin)
    )
    room = room_for(stand.crop, support)
    if count <= room:
        return None
    numbers: dict[str, Number] = {
        "on_it": count,
        "room": room,
        "support": support.kind,
        "stations": len(some),
    }
    return _judged(stand, Code.SUPPORT_FULL, some, numbers, support.id)


def _loose(stand: Stand, supports: Sequence[AnySupport]) -> Judged | None:
    """Tall beans that stand farther from each other than their usual spacing lets them lean."""
    usual = stand.ground.along_m
    pairs = own_pairs(stand.planting.stations, LOOSE * usual)
    alone = np.ones(stand.planting.pattern.count, dtype=bool)
    alone[pairs.i] = False
    some = np.flatnonzero(alone[stand.index] & ~_held(stand, supports))
    if len(some) == 0:
        return None
    numbers: dict[str, Number] = {"usual_m": round(usual, 6), "stations": len(some)}
    if stand.crop.height_m is not None:
        numbers["height_m"] = stand.crop.height_m.mid
    return _judged(stand, Code.STANDS_ALONE, some, numbers, "")


def _judged(stand: Stand, code: Code, some: Ints, numbers: dict[str, Number], mark: str) -> Judged:
    marks = np.full(len(some), Verdict.STRAINS, dtype=np.uint8)
    finding = finding_of(Kind.SUPPORT, code, stand, (), some, marks, stand.span, numbers, mark=mark)
    return Judged(finding, marks)
