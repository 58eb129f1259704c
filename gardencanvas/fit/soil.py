"""Soil: beds too shallow for the roots, and plants on ground that is walked on."""

from collections.abc import Sequence
from functools import lru_cache

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.crops.model import Basis, Crop
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of, worst_of
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import OUTSIDE_M, PATH_EDGE_M, SHALLOW_M
from gardencanvas.garden.ground import Bed, Path
from gardencanvas.garden.places import bed_ground

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]


def shallow(stand: Stand, beds: Sequence[Bed]) -> Judged | None:
    """Stations whose bed has less soil than the roots need.

    What they need is the least effective root depth in the books, or what they reach before they are out,
    where that is less. Of beds that overlap, the one drawn last counts.
    """
    need = needed_m(stand)
    if not any(b.soil_depth_m is not None and b.soil_depth_m < need - SHALLOW_M for b in beds):
        return None
    depth = _depth(stand.xy, beds)
    bad = np.flatnonzero(depth < need - SHALLOW_M)
    if len(bad) == 0:
        return None
    marks = np.full(len(bad), Verdict.STRAINS, dtype=np.uint8)
    worst = worst_of(marks, -depth[bad])
    rooted = stand.crop.root_depth_m
    finding = finding_of(
        Kind.OUTSIDE, Code.SHALLOW_SOIL, stand, (), bad, marks, stand.span,
        {
            "soil_m": round(float(depth[bad[worst]]), 6),
            "needed_m": need,
            "root_depth_m": stand.root_m,
            "stations": len(bad),
            "of": len(stand.index),
        },
        source=rooted.source if rooted else "fao56", worst=worst, mark="soil",
    )  # fmt: skip
    return Judged(finding, marks)


def needed_m(stand: Stand) -> float:
    """Least depth of soil its roots need, metres; 0 where no source gives their depth."""
    return round(min(_least_m(stand.crop), stand.root_m), 6)


def _least_m(crop: Crop) -> float:
    known = crop.root_depth_m
    return known.low if known is not None and known.basis is not Basis.FALLBACK else 0.0


def _depth(xy: Floats, beds: Sequence[Bed]) -> Floats:
    """Soil depth at points, shape (n,); infinite where it is not known."""
    depth = np.full(len(xy), np.inf)
    made = shapely.points(xy)
    for bed in beds:
        inside = shapely.dwithin(bed_ground(bed), made, OUTSIDE_M)
        depth[inside] = np.inf if bed.soil_depth_m is None else bed.soil_depth_m
    return depth


def walked(stand: Stand, paths: Sequence[Path]) -> Bools:
    """Which stations stand on a path, well inside its edges, shape (n,)."""
    on = np.zeros(len(stand.xy), dtype=bool)
    for path in paths:
        ground = _trodden(path)
        if ground is not None:
            on |= shapely.contains_xy(ground, stand.xy[:, 0], stand.xy[:, 1])
    return on


@lru_cache(maxsize=4096)
def _trodden(path: Path) -> shapely.Polygon | None:
    """A path's ground without its edges, where plants may lean in; None of one too narrow."""
    half = path.width_m / 2 - PATH_EDGE_M
    if half <= 0.0:
        return None
    ground: shapely.Polygon = shapely.LineString(path.line).buffer(half, cap_style="flat")
    shapely.prepare(ground)
    return ground


def on_path(stand: Stand, on: Bools) -> Judged | None:
    """Stations that stand where one walks."""
    some = np.flatnonzero(on)
    if len(some) == 0:
        return None
    marks = np.full(len(some), Verdict.STRAINS, dtype=np.uint8)
    finding = finding_of(
        Kind.OUTSIDE, Code.ON_PATH, stand, (), some, marks, stand.span,
        {"stations": len(some), "of": len(stand.index)}, mark="path",
    )  # fmt: skip
    return Judged(finding, marks)
