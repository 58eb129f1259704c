"""Cover: plants that outgrow what lies over them, and flowers that no bee can reach."""

from collections.abc import Sequence
from datetime import date, timedelta

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Group, Harvest
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import HEIGHT, Stand
from gardencanvas.fit.thresholds import COVER_TIGHT, FRUIT_SET_D, LAST_SET_D, SHUT_IN_D
from gardencanvas.garden.ground import Cover

Ints = NDArray[np.intp]

# Frames and cloches are opened on warm days as a matter of course; these lie closed until they are taken off.
CLOSED = ("fleece", "mesh")


def covering(stand: Stand, covers: Sequence[Cover]) -> tuple[Judged, ...]:
    """What covers do to a stand that grows under them."""
    judged = []
    for cover in covers:
        under = _under(stand, cover)
        if len(under):
            judged += [
                f for f in (_outgrown(stand, cover, under), _shut_in(stand, cover, under)) if f is not None
            ]
    return tuple(judged)


def _under(stand: Stand, cover: Cover) -> Ints:
    x, y = stand.xy[:, 0], stand.xy[:, 1]
    some: Ints = np.flatnonzero(shapely.intersects_xy(shapely.Polygon(cover.outline), x, y))
    return some


def _outgrown(stand: Stand, cover: Cover, under: Ints) -> Judged | None:
    """It touches the cover while that lies: bent and broken, or chilled and eaten through it."""
    week = np.arange(stand.weeks.count)
    tall = (stand.sizes[HEIGHT] > cover.height_m * COVER_TIGHT) & (week >= stand.begin) & (week < stand.end)
    lies = [_lies(stand, cover, int(w)) for w in np.flatnonzero(tall)]
    weeks = [w for w in lies if w is not None]
    if not weeks:
        return None
    marks = np.full(len(under), Verdict.STRAINS, dtype=np.uint8)
    finding = finding_of(
        Kind.COVER, Code.OUTGROWS_COVER, stand, (), under, marks, (weeks[0][0], weeks[-1][1]),
        {
            "cover": cover.kind,
            "cover_m": cover.height_m,
            "height_m": round(float(stand.sizes[HEIGHT, stand.end - 1]), 6),
            "on": weeks[0][0],
            "stations": len(under),
        },
        mark=cover.id,
    )  # fmt: skip
    return Judged(finding, marks)


def _lies(stand: Stand, cover: Cover, week: int) -> tuple[date, date] | None:
    """Days of a week on which the cover lies over the stand."""
    first = max(stand.first_day(week), cover.first or date.min)
    last = min(stand.last_day(week), cover.last or date.max)
    return (first, last) if first <= last else None


def needs_bees(crop: Crop) -> bool:
    """Whether a crop bears only where insects reach its flowers.

    Gourds, strawberries, currants and other soft fruit, and those fruits and pods of which the catalogue
    remarks on pollination (runner and broad beans, tomatillo); tomatoes, peppers, peas and French beans set
    by themselves, grasses and vines by the wind.
    """
    if crop.harvest is Harvest.NONE or crop.family in ("Poaceae", "Vitaceae"):
        return False
    if crop.group is Group.SOFT_FRUIT or (crop.family == "Cucurbitaceae" and crop.group is Group.FRUITING):
        return True
    remarked = any(r.topic == "pollination" for r in crop.remarks)
    return remarked and crop.group in (Group.FRUITING, Group.LEGUME)


def flowering(stand: Stand) -> tuple[date, date]:
    """Days in which its flowers must be reached: from about four weeks before the first harvest."""
    first = stand.times.harvest_first - timedelta(days=FRUIT_SET_D)
    last = stand.times.harvest_last - timedelta(days=LAST_SET_D)
    return max(first, stand.times.in_bed), max(last, first, stand.times.in_bed)


def _shut_in(stand: Stand, cover: Cover, under: Ints) -> Judged | None:
    if cover.kind not in CLOSED or not needs_bees(stand.crop):
        return None
    begin, end = flowering(stand)
    first, last = max(begin, cover.first or date.min), min(end, cover.last or date.max)
    if (last - first).days + 1 < SHUT_IN_D:
        return None
    marks = np.full(len(under), Verdict.STRAINS, dtype=np.uint8)
    remark = next((r for r in stand.crop.remarks if r.topic == "pollination"), None)
    finding = finding_of(
        Kind.COVER, Code.NO_BEES, stand, (), under, marks, (first, last),
        {"cover": cover.kind, "flowers": begin, "days": (last - first).days + 1, "stations": len(under)},
        source=remark.source if remark else "common-practice", mark=f"{cover.id}:bees",
    )  # fmt: skip
    return Judged(finding, marks)
