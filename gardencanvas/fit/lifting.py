"""Lifting: a root dug up while a shallow-rooted neighbour still grows within reach of the fork."""

from datetime import date, timedelta
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.interactions import Effect, between
from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.fit.codes import Code
from gardencanvas.fit.held import Held
from gardencanvas.fit.judged import Judged, finding_of, worst_of
from gardencanvas.fit.near import Pairs
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import FORK_M, LIFTED_EARLY_D, SHALLOW_ROOTED_M

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]


def lifting(a: Stand, b: Stand, near: Pairs) -> tuple[Judged, ...]:
    """What two stands lose when the other one is lifted.

    Common practice: the fork goes in a hand's breadth outside what is lifted, so that all between is torn up.
    It strains a neighbour that roots in the soil turned over, stood there before the first harvest of the one
    that is lifted, and grows on after its last: no date of lifting spares it.

    Parameters
    ----------
    near
        Pairs of their stations, all that lie within the reach of either fork at least.
    """
    found = (
        _torn(a, b, near.i, near.distance_m) if _dug(b) and _stays(a, b) else None,
        _torn(b, a, near.j, near.distance_m) if _dug(a) and _stays(b, a) else None,
    )
    return tuple(j for j in found if j is not None)


def fork_reach_m(stand: Stand) -> float:
    """How far from the middle of a plant the soil is broken when it is lifted, metres.

    Those whose roots or tubers spread take their whole ground with them; others come out of a hole of the
    fork's own width.
    """
    wide = min(stand.ground.radius_m, stand.peak_m) if lifted_wide(stand.crop) else 0.0
    return wide + FORK_M


def lifted_wide(crop: Crop) -> bool:
    """Whether lifting a crop breaks the soil deep and wide, whatever stands beside it."""
    return _lifted_wide(Held(crop))


@lru_cache(maxsize=4096)
def _lifted_wide(held: Held) -> bool:
    return any(i.effect is Effect.HARVEST_DISTURBS and i.counts for i in between(held.crop, held.crop))


def _dug(stand: Stand) -> bool:
    return stand.crop.harvest_disturbs is True


def _stays(stand: Stand, lifted: Stand) -> bool:
    """Whether shallow roots stand there before, and grow on after, any day of lifting."""
    return (
        0.0 < stand.root_m <= SHALLOW_ROOTED_M
        and stand.times.in_bed < lifted.times.harvest_first
        and _grows_until(stand) > lifted.times.harvest_last + timedelta(days=LIFTED_EARLY_D)
    )


def _grows_until(stand: Stand) -> date:
    if stand.crop.life == "perennial":
        return stand.times.out
    once = stand.crop.harvest is Harvest.SINGLE
    return stand.times.harvest_first if once else stand.times.harvest_last


def _torn(stand: Stand, lifted: Stand, own: Ints, distance_m: Floats) -> Judged | None:
    reach = fork_reach_m(lifted)
    close = np.flatnonzero(distance_m < reach)
    if len(close) == 0:
        return None
    nearest = np.full(len(stand.index), np.inf)
    np.minimum.at(nearest, own[close], distance_m[close])
    some = np.flatnonzero(np.isfinite(nearest))
    marks = np.full(len(some), Verdict.STRAINS, dtype=np.uint8)
    worst = worst_of(marks, -nearest[some])
    finding = finding_of(
        Kind.TIMING, Code.DUG_BESIDE, stand, (lifted,), some, marks,
        (lifted.times.harvest_first, lifted.times.harvest_last),
        {
            "distance_m": round(float(nearest[some[worst]]), 6),
            "reach_m": round(reach, 6),
            "root_depth_m": stand.root_m,
            "until": _grows_until(stand),
            "stations": len(some),
        },
        worst=worst, mark="lifting",
    )  # fmt: skip
    return Judged(finding, marks)
