"""Frost, cold ground and ripening: how often weather undoes a planting, from simulated years."""

from collections.abc import Mapping
from datetime import date, timedelta

import numpy as np

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, Number, finding_of
from gardencanvas.fit.outlook import Outlook
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import (
    COLD_GROUND_D,
    COLD_GROUND_HARDY_D,
    DORMANT_D,
    FROST_CLASHES,
    FROST_STRAINS,
    RIPENS_CLASHES,
    RIPENS_STRAINS,
    SOURCE,
    SUMMER_D,
)
from gardencanvas.season.dayofyear import YEAR
from gardencanvas.season.killing import frost_free
from gardencanvas.season.starting import least_warmth


def frost(stand: Stand) -> list[Judged]:
    """Findings on spring frost, cold ground and years that bring no harvest, of a stand as it grows."""
    outlook = stand.outlook
    if outlook.lasting:
        return []
    spring = _frost_to_come(stand, outlook) or _too_early(stand, outlook)
    found = [spring, _seldom_ripe(stand, outlook)]
    return [each for each in found if each is not None]


def _frost_to_come(stand: Stand, outlook: Outlook) -> Judged | None:
    """Killing frost often still comes after the plants stand open to it."""
    odds, last = outlook.odds, outlook.last_frost
    if odds is None or last is None or odds.frost_after < FROST_STRAINS:
        return None
    verdict = Verdict.CLASHES if odds.frost_after >= FROST_CLASHES else Verdict.STRAINS
    known = stand.crop.frost_kill_c or stand.crop.frost
    return _judged(
        stand, Kind.FROST, Code.FROST_TO_COME, verdict, (outlook.exposed, last),
        {"risk_after": round(odds.frost_after, 4), "exposed": outlook.exposed, "last_frost": last},
        known.source if known else SOURCE,
    )  # fmt: skip


def _too_early(stand: Stand, outlook: Outlook) -> Judged | None:
    """Sown colder than its seed germinates, or planted colder than it grows, for long."""
    start = outlook.growing.start
    allowed = _cold_allowed(stand.crop, start.kind)
    if allowed is None:
        return None
    days = outlook.cold_days
    if not allowed < days <= DORMANT_D:
        return None
    least = least_warmth(stand.crop, start.kind)
    warm = start.on + timedelta(days=days)
    return _judged(
        stand, Kind.TIMING, Code.TOO_EARLY, Verdict.STRAINS, (start.on, warm),
        {"days": days, "least_c": least.mid, "warm_from": warm, "kind": start.kind},
        least.source, "early",
    )  # fmt: skip


def _cold_allowed(crop: Crop, kind: str) -> int | None:
    """Days in cold ground that do no harm; None where cold ground is nothing to it."""
    delicate = crop.frost is not None and crop.frost.value in ("tender", "half-hardy")
    if kind == "volunteer" or (kind == "set" and not delicate):
        return None  # nobody started it; dormant roots, bulbs and sets are put in cold
    return COLD_GROUND_D if delicate else COLD_GROUND_HARDY_D


def _seldom_ripe(stand: Stand, outlook: Outlook) -> Judged | None:
    """Too few years bring a harvest."""
    odds, crop = outlook.odds, stand.crop
    if odds is None or odds.ripens >= RIPENS_STRAINS or crop.harvest is Harvest.NONE:
        return None
    verdict = Verdict.CLASHES if odds.ripens < RIPENS_CLASHES else Verdict.STRAINS
    numbers: dict[str, Number] = {"ripens": round(odds.ripens, 4)}
    if outlook.warm_enough:
        numbers["ready"] = outlook.ready
        if outlook.killing_frost is not None:
            numbers["killing_frost"] = outlook.killing_frost
    days = (
        crop.harvest_from_sowing_d
        if outlook.growing.start.kind in ("sown", "volunteer")
        else crop.harvest_from_planting_d
    )
    span = (outlook.in_bed, max(stand.times.out, outlook.in_bed + timedelta(days=1)))
    kind, code = Kind.TIMING, Code.SELDOM_RIPE
    if _must_winter(outlook, crop):
        kind, code = Kind.FROST, Code.KILLED_IN_WINTER
        if (hardier := _hardier_c(outlook)) is not None:
            verdict, numbers["hardier_c"] = Verdict.STRAINS, hardier
    return _judged(stand, kind, code, verdict, span, numbers, days.source if days else SOURCE, "ripe")


def _must_winter(outlook: Outlook, crop: Crop) -> bool:
    """Whether it was started to stand through the killing frosts; what had a summer before them is late."""
    last, killing = outlook.last_frost, outlook.killing_frost
    if last is None or killing is None or not outlook.warm_enough:
        return False
    if (crop.frost is not None and crop.frost.value == "tender") or outlook.ready < killing:
        return False
    return outlook.in_bed > killing - timedelta(days=SUMMER_D) and outlook.ready > last + timedelta(days=YEAR)


def _hardier_c(outlook: Outlook) -> float | None:
    """To what °C the hardiest kinds of a crop live, if frost does not kill those here."""
    kill = outlook.growing.crop.frost_kill_c
    if kill is None or frost_free(outlook.site, max(0.0, -kill.low)).length < YEAR:
        return None
    return kill.low


def _judged(
    stand: Stand,
    kind: Kind,
    code: Code,
    verdict: Verdict,
    days: tuple[date, date],
    numbers: Mapping[str, Number],
    source: str,
    mark: str = "",
) -> Judged:
    """A finding on all stations of a stand."""
    stations = np.arange(len(stand.index))
    marks = np.full(len(stations), verdict, dtype=np.uint8)
    every = {**numbers, "in_bed": stand.times.in_bed, "stations": len(stations)}
    finding = finding_of(kind, code, stand, (), stations, marks, days, every, source=source, mark=mark)
    return Judged(finding, marks)
