"""Outside: stations that lie in no bed."""

from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.fit.judged import Judged, finding_of
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import OUTSIDE_M
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground


def in_beds(xy: NDArray[np.float64], beds: Sequence[Bed]) -> NDArray[np.bool_]:
    """Which points lie in a bed or on its rim, shape (n,)."""
    inside = np.zeros(len(xy), dtype=bool)
    low, high = xy.min(axis=0) - OUTSIDE_M, xy.max(axis=0) + OUTSIDE_M
    for bed in beds:
        ground = bed_ground(bed)
        x0, y0, x1, y1 = ground.bounds
        if x0 > high[0] or y0 > high[1] or x1 < low[0] or y1 < low[1]:
            continue
        rest = np.flatnonzero(~inside)
        inside[rest] = shapely.dwithin(ground, shapely.points(xy[rest]), OUTSIDE_M)
        if inside.all():
            break
    return inside


def outside(stand: Stand, beds: Sequence[Bed]) -> Judged | None:
    """Stations of a stand on bare plan: nobody prepared that ground."""
    out = np.flatnonzero(~in_beds(stand.xy, beds))
    if len(out) == 0:
        return None
    marks = np.full(len(out), Verdict.STRAINS, dtype=np.uint8)
    finding = finding_of(
        Kind.OUTSIDE, "on bare plan", stand, (), out, marks, (stand.times.in_bed, stand.times.out),
        {"stations": len(out), "of": len(stand.index)},
    )  # fmt: skip
    return Judged(finding, marks)
