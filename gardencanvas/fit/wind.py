"""Wind: tall plants that nothing holds and nothing shelters."""

from collections.abc import Sequence
from functools import lru_cache

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Layer
from gardencanvas.fit.aids import reached
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of
from gardencanvas.fit.near import own_pairs
from gardencanvas.fit.own import at_home
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import (
    AIDED_SHARE,
    AMONG,
    AMONG_M,
    LEE,
    OUTSIDE_M,
    SHELTER_M,
    STAKED_M,
    WIND_M,
)
from gardencanvas.garden.ground import Fixture, LineSupport, RingSupport
from gardencanvas.garden.pattern import Pattern

Bools = NDArray[np.bool_]


def stands_free(crop: Crop) -> bool:
    """Whether wind may blow a crop over: tall annuals, and what the sources would tie to a stake or net."""
    if crop.height_m is None or crop.layer is Layer.CLIMBING:
        return False
    tied = crop.support is not None and crop.support.value != "none"
    return crop.height_m.mid >= (STAKED_M if tied else WIND_M) and (tied or crop.life == "annual")


def wind(
    stand: Stand, supports: Sequence[LineSupport | RingSupport], fixtures: Sequence[Fixture]
) -> Judged | None:
    """Tall plants most of which stand open to wind; all common practice.

    A plant is held by a support within reach, sheltered by what is built or grown on the plot up to ten times
    its height away, whatever the wind's direction, and by three or more of its own planting round it. Other
    crops' shelter does not count: they may be out when it blows.
    """
    if not stands_free(stand.crop) or stand.end == stand.begin:
        return None
    safe = _among_its_like(stand)
    for support in supports:
        safe = safe | reached(stand.xy, support)
    for fixture in fixtures:
        safe = safe | _sheltered(stand, fixture)
    if safe.mean() >= AIDED_SHARE:
        return None
    some = np.flatnonzero(~safe)
    marks = np.full(len(some), Verdict.STRAINS, dtype=np.uint8)
    wanted, height = stand.crop.support, stand.crop.height_m
    finding = finding_of(
        Kind.SUPPORT, Code.OPEN_TO_WIND, stand, (), some, marks, stand.span,
        {
            "height_m": height.mid if height else 0.0,
            "support": wanted.value if wanted else "none",
            "stations": len(some),
            "of": len(safe),
        },
        mark="wind",
    )  # fmt: skip
    return Judged(finding, marks)


def _among_its_like(stand: Stand) -> Bools:
    among: Bools = _among(at_home(stand.planting.pattern))[stand.index]
    return among


@lru_cache(maxsize=4096)
def _among(pattern: Pattern) -> Bools:
    """Which stations of a pattern have some others of it round them."""
    pairs = own_pairs(pattern.stations, AMONG_M + OUTSIDE_M)
    among: Bools = np.bincount(pairs.i, minlength=pattern.count) >= AMONG
    return among


def _sheltered(stand: Stand, fixture: Fixture) -> Bools:
    """Which stations lie near what breaks the wind: of a tree, only where its crown comes down low."""
    if fixture.height_m < SHELTER_M or fixture.base_m > SHELTER_M:
        return np.zeros(len(stand.xy), dtype=bool)
    outline = shapely.Polygon(fixture.outline)
    near: Bools = shapely.dwithin(outline, shapely.points(stand.xy), LEE * fixture.height_m)
    return near
