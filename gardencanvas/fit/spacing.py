"""Spacing inside a planting, against what the handbooks give."""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.density import held_back, size_at
from gardencanvas.fit.ground import pattern_spacing
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.near import own_pairs
from gardencanvas.fit.report import Finding, Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import (
    CLOSE_ENOUGH,
    CLOSE_TOLD,
    CLUMP_CLOSE,
    DENSE,
    DENSE_AND_CLOSE,
    SOURCE,
)
from gardencanvas.garden.pattern import Spots

Ints = NDArray[np.intp]


class _Rule(NamedTuple):
    """Spacing of a planting's crop, or the mean of its varieties', metres."""

    along: float  # usual
    across: float
    least_along: float  # that any source gives
    least_across: float


def spacing(stands: Sequence[Stand]) -> Judged | None:
    """Whether a planting's own plants stand closer than the closest source allows.

    A clump counts as one station. Plants in wide rows may stand close in the row and the other way round, so
    the ground of each plant is compared as well as the distance in the row, no wider than it can use. Closer
    than usual costs size before it fails (``size_at``), and that is told.

    Parameters
    ----------
    stands
        Those of one planting.
    """
    rule = _Rule(*np.mean([_rule(s) for s in stands], axis=0).tolist())
    stand = stands[0]
    if isinstance(stand.planting.pattern, Spots):
        return _spots(stand, rule)
    along, across = pattern_spacing(stand.planting)
    usable = max(rule.across, along)
    given = along * (usable if across is None else min(across, usable))
    density = rule.along * rule.across / given
    least = rule.least_along * rule.least_across
    close = along < CLOSE_ENOUGH * rule.least_along or given < CLOSE_ENOUGH**2 * least
    verdict = Verdict.SHARES if density >= CLOSE_TOLD else Verdict.CLEAR
    if close or density >= DENSE:
        verdict = Verdict.STRAINS
    if close and density >= DENSE_AND_CLOSE:
        verdict = Verdict.CLASHES
    if verdict is Verdict.CLEAR:
        return None
    return _judged(stand, rule, np.arange(stand.planting.pattern.count), verdict, along, density)


def least_spacing_m(stand: Stand) -> float:
    """The closest spacing in the row that any source gives, metres."""
    return _rule(stand).least_along


def _rule(stand: Stand) -> _Rule:
    crop, ground = stand.crop, stand.ground
    usual = (ground.along_m, ground.across_m)
    if stand.planting.per_station > 1:
        clump = crop.clump_spacing_m
        low = clump.low / clump.mid if clump else CLUMP_CLOSE
        return _Rule(*usual, ground.along_m * low, ground.across_m * low)
    along = crop.in_row_m.low if crop.in_row_m else ground.along_m
    across = crop.between_rows_m.low if crop.between_rows_m else ground.across_m
    return _Rule(*usual, along, across)


def _spots(stand: Stand, rule: _Rule) -> Judged | None:
    """Loose spots: each by its nearest neighbour in the planting."""
    pairs = own_pairs(stand.planting.stations, CLOSE_ENOUGH * rule.least_along)
    nearest = np.full(stand.planting.pattern.count, np.inf)
    np.minimum.at(nearest, pairs.i, pairs.distance_m)
    close = np.flatnonzero(np.isfinite(nearest))
    if len(close) == 0:
        return None
    distance = float(nearest[close].min())
    verdict = Verdict.CLASHES if distance < rule.least_along / 2 else Verdict.STRAINS
    return _judged(stand, rule, close, verdict, distance, rule.along / max(distance, 1e-3))


def _judged(
    stand: Stand, rule: _Rule, stations: Ints, verdict: Verdict, distance: float, density: float
) -> Judged:
    """A finding on stations of the planting, whatever their variety."""
    planting = stand.planting
    x, y = planting.stations[stations[0]]
    quantity = stand.crop.in_row_m if planting.per_station == 1 else stand.crop.clump_spacing_m
    back = held_back(stand.crop, rule.along * rule.across, planting.per_station)
    least, most = size_at(density, back.high), size_at(density, back.low)
    code, source = Code.TOO_CLOSE, quantity.source if quantity else SOURCE
    if verdict is Verdict.SHARES:
        half = stand.crop.half_weight_per_m2
        code, source = Code.SMALLER_EACH, half.source if half else "shinozaki-kira"
    finding = Finding(
        id=f"{Kind.CROWDING.value}:{planting.id}",
        kind=Kind.CROWDING,
        verdict=verdict,
        plantings=(planting.id,),
        first=stand.span[0],
        last=stand.span[1],
        code=code.value,
        numbers={
            "distance_m": round(distance, 6),
            "minimum_m": round(rule.least_along, 6),
            "usual_m": round(rule.along, 6),
            "usual_across_m": round(rule.across, 6),
            "density": round(density, 6),
            "size_low": round(least, 6),
            "size_high": round(most, 6),
            "yield_low": round(least * density, 6),
            "yield_high": round(most * density, 6),
            "stations": len(stations),
        },
        source=source,
        place=(float(x), float(y)),
        stations=stations.astype(np.int32),
    )
    return Judged(finding, np.full(len(stations), verdict, dtype=np.uint8))
