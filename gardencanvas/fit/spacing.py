"""Spacing inside a planting, against what the handbooks give."""

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.ground import pattern_spacing
from gardencanvas.fit.judged import Judged, Number, finding_of
from gardencanvas.fit.near import own_pairs
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import CLOSE_ENOUGH, DENSE, DENSE_AND_CLOSE
from gardencanvas.garden.pattern import Spots

Ints = NDArray[np.intp]


def spacing(stand: Stand) -> Judged | None:
    """Whether a stand's own plants stand closer than the closest source allows.

    A clump counts as one station. Plants in wide rows may stand close in the row and the other way round, so
    the ground of each plant is compared as well as the distance in the row; the size plants reach falls about
    as their number per m² rises beyond the usual (Shinozaki & Kira 1956).
    """
    along, across = pattern_spacing(stand.planting)
    if isinstance(stand.planting.pattern, Spots):
        return _spots(stand)
    ground = stand.ground
    least_along, least_across = _least(stand)
    given = along * (across if across is not None else max(ground.across_m, along))
    density = ground.need_m2 / given
    close = along < CLOSE_ENOUGH * least_along or given < CLOSE_ENOUGH**2 * least_along * least_across
    verdict = Verdict.CLEAR
    if close or density >= DENSE:
        verdict = Verdict.STRAINS
    if close and density >= DENSE_AND_CLOSE:
        verdict = Verdict.CLASHES
    if verdict is Verdict.CLEAR:
        return None
    stations = np.arange(len(stand.index))
    return _judged(stand, stations, verdict, along, density)


def _least(stand: Stand) -> tuple[float, float]:
    """Least spacing in the row and between rows that a source gives."""
    crop, ground = stand.crop, stand.ground
    if stand.planting.per_station > 1:
        low = crop.clump_spacing_m.low / crop.clump_spacing_m.mid if crop.clump_spacing_m else 0.8
        return ground.along_m * low, ground.across_m * low
    along = crop.in_row_m.low if crop.in_row_m else ground.along_m
    across = crop.between_rows_m.low if crop.between_rows_m else ground.across_m
    return along, across


def _spots(stand: Stand) -> Judged | None:
    """Loose spots: each by its nearest neighbour in the planting."""
    least = _least(stand)[0]
    pairs = own_pairs(stand.planting.stations, CLOSE_ENOUGH * least)
    nearest = np.full(stand.planting.pattern.count, np.inf)
    np.minimum.at(nearest, pairs.i, pairs.distance_m)
    nearest = nearest[stand.index]
    close = np.flatnonzero(np.isfinite(nearest))
    if len(close) == 0:
        return None
    distance = float(nearest[close].min())
    verdict = Verdict.CLASHES if distance < least / 2 else Verdict.STRAINS
    return _judged(stand, close, verdict, distance, least / max(distance, 1e-3))


def _judged(stand: Stand, stations: Ints, verdict: Verdict, distance: float, density: float) -> Judged:
    marks = np.full(len(stations), verdict, dtype=np.uint8)
    least = _least(stand)
    numbers: dict[str, Number] = {
        "distance_m": round(distance, 6),
        "minimum_m": round(least[0], 6),
        "usual_m": round(stand.ground.along_m, 6),
        "usual_across_m": round(stand.ground.across_m, 6),
        "density": round(density, 6),
        "stations": len(stations),
    }
    quantity = stand.crop.in_row_m if stand.planting.per_station == 1 else stand.crop.clump_spacing_m
    finding = finding_of(
        Kind.CROWDING, Code.TOO_CLOSE, stand, (), stations, marks, stand.span,
        numbers, source=quantity.source if quantity else "common-practice",
    )  # fmt: skip
    return Judged(finding, marks)
