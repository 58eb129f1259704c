"""Water: neighbours whose needs differ, and thirsty ones that need it most at the same time."""

from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.fit.adjoining import Adjoining
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of
from gardencanvas.fit.known import Known
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import RADIUS, Stand
from gardencanvas.fit.thresholds import ADJOIN_DAYS, GROWN_IN, SOURCE

Bools = NDArray[np.bool_]
Ints = NDArray[np.intp]


def water(side: Adjoining, known: Known, touching: Ints | None) -> Judged | None:
    """What two stands that adjoin mean for watering.

    A dry-ground perennial beside a thirsty crop strains: watered with it, it grows soft and rots. An annual
    that needs little stands it, which is told as sharing. Two thirsty crops whose leaves overlap and whose
    sensitive stages fall together are told when.

    Parameters
    ----------
    known
        Of the crops of ``side.a`` and ``side.b``, in that order.
    touching
        Stations of ``side.a`` whose footprints the other's overlap for weeks; None where none do.
    """
    if known.unlike_water:
        dry = side.a if known.dry[0] else side.b
        return _unlike(side, dry, side.b if dry is side.a else side.a)
    if touching is not None and len(touching) and all(known.thirsty):
        return _thirsty(side, touching)
    return None


def _unlike(side: Adjoining, dry: Stand, wet: Stand) -> Judged:
    some = side.of(dry)
    verdict = Verdict.STRAINS if suffers_wet(dry.crop) else Verdict.SHARES
    marks = np.full(len(some), verdict, dtype=np.uint8)
    source = dry.crop.water.source if dry.crop.water else SOURCE
    finding = finding_of(
        Kind.WATER, Code.UNLIKE_WATER, dry, (wet,), some, marks, side.days, {"stations": len(some)},
        source=source,
    )  # fmt: skip
    return Judged(finding, marks)


def suffers_wet(crop: Crop) -> bool:
    """Whether wet ground harms a crop that needs little water: woody and dry-ground perennials.

    Common practice: thyme, sage, lavender and their like die in soil kept moist, above all in winter, while
    annuals of dry ground only grow more leaf.
    """
    return crop.life == "perennial" and crop.water is not None and crop.water.value == "low"


def _thirsty(side: Adjoining, touching: Ints) -> Judged | None:
    a, b = side.a, side.b
    both = np.flatnonzero(sensitive(a) & sensitive(b))
    if 7 * len(both) < ADJOIN_DAYS:
        return None
    first, last = int(both[0]), int(both[-1])
    days: tuple[date, date] = (
        max(a.first_day(first), b.first_day(first)),
        min(a.last_day(last), b.last_day(last)),
    )
    marks = np.full(len(touching), Verdict.SHARES, dtype=np.uint8)
    critical = a.crop.water_critical or b.crop.water_critical
    finding = finding_of(
        Kind.WATER, Code.THIRSTY_TOGETHER, a, (b,), touching, marks, days,
        {"days": 7 * len(both), "stations": len(touching)},
        source=critical.source if critical else SOURCE,
    )  # fmt: skip
    return Judged(finding, marks)


def sensitive(stand: Stand) -> Bools:
    """Weeks in which lack of water costs a crop most, shape (weeks,); none where that is not known.

    What the sources name in words is put into weeks: *whole season*; *establishment* and *germination*, the
    first ``GROWN_IN`` days; all else (heads, roots, flowers, pods, fruits) from full leaf, as FAO-56 begins
    the middle stage, to the harvest, of crops picked over to its end.
    """
    week = np.arange(stand.weeks.count)
    stands = (week >= stand.begin) & (week < stand.end)
    critical = stand.crop.water_critical
    if critical is None or stand.begin == stand.end:
        return np.zeros(len(week), dtype=bool)
    if "whole season" in critical.value:
        return stands
    start = week < stand.begin + GROWN_IN // 7
    radius = stand.sizes[RADIUS]
    until = stand.times.harvest_first if stand.crop.harvest is Harvest.SINGLE else stand.times.harvest_last
    full = (radius >= 0.9 * stand.peak_m) & (week <= stand.weeks.index(until))
    early = any(word in critical.value for word in ("establishment", "germination"))
    late = not early or "," in critical.value  # "establishment, fruit enlargement"
    weeks: Bools = stands & ((start & early) | (full & late))
    return weeks
