"""Outside: stations that lie in no bed."""

from collections.abc import Sequence

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import OUTSIDE_M
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground


def _bounds(bed: Bed) -> tuple[float, float, float, float]:
    """Box of a bed, widened by the tolerance."""
    x, y = zip(*bed.outline, strict=True)
    return min(x) - OUTSIDE_M, min(y) - OUTSIDE_M, max(x) + OUTSIDE_M, max(y) + OUTSIDE_M


def in_beds(xy: NDArray[np.float64], beds: Sequence[Bed]) -> NDArray[np.bool_]:
    """Which points lie in a bed or on its rim, shape (n,)."""
    inside = np.zeros(len(xy), dtype=bool)
    low, high = xy.min(axis=0), xy.max(axis=0)
    for bed in beds:
        x0, y0, x1, y1 = _bounds(bed)
        if x0 > high[0] or y0 > high[1] or x1 < low[0] or y1 < low[1]:
            continue
        rest = np.flatnonzero(~inside)
        inside[rest] = shapely.dwithin(bed_ground(bed), shapely.points(xy[rest]), OUTSIDE_M)
        if inside.all():
            break
    return inside


def outside(stand: Stand, beds: Sequence[Bed], walked: NDArray[np.bool_]) -> Judged | None:
    """Stations of a stand on bare plan: nobody prepared that ground.

    ``walked`` are those on a path, of which that is told instead; shape (n,).
    """
    out = np.flatnonzero(~in_beds(stand.xy, beds) & ~walked)
    if len(out) == 0:
        return None
    marks = np.full(len(out), Verdict.STRAINS, dtype=np.uint8)
    finding = finding_of(
        Kind.OUTSIDE, Code.ON_BARE_PLAN, stand, (), out, marks, stand.span,
        {"stations": len(out), "of": len(stand.index)},
    )  # fmt: skip
    return Judged(finding, marks)
