"""Plantings as columns of numbers, so that all are followed at once."""

from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.garden.site import Site
from gardencanvas.season.course import Days, Floats, Growing
from gardencanvas.season.covers import SHIELDS_C, WARMER_C
from gardencanvas.season.dayofyear import Ints, climate_days
from gardencanvas.season.killing import endures_c, frost_free
from gardencanvas.season.traits import SEASONAL_TENTH, Traits, base_top, traits
from gardencanvas.season.warmth import Needs, Warmth

FAR = 1_000_000  # a climate day that never comes
_MOST_KNOWN = 20_000


class _Known(NamedTuple):
    crop: Crop  # held, so that its identity is not given to another
    traits: Traits[float]
    needs: Needs
    warmed: Needs
    endures: float


_known: dict[tuple[int, str, int | None, bool], _Known] = {}


def _knowledge(planting: Growing) -> _Known:
    """The numbers of a planting's crop, remembered by the crop's identity."""
    start, crop = planting.start, planting.crop
    nursery = None if start.sown_on is None else (start.on - start.sown_on).days
    key = (id(crop), start.kind, nursery, planting.supported)
    known = _known.get(key)
    if known is None:
        base, top, grown_at = base_top(crop)
        known = _Known(
            crop,
            traits(crop, start.kind, nursery, planting.supported),
            Needs(base, top, grown_at),
            Needs(base, top, grown_at, WARMER_C.mid),
            endures_c(crop),
        )
        if len(_known) > _MOST_KNOWN:
            _known.clear()
        _known[key] = known
    return known


class Safe(NamedTuple):
    """Days of the year without killing frost, shape (n,) each."""

    begin: Ints
    length: Ints  # a whole year where frost never kills


class Batch(NamedTuple):
    """Plantings as columns, shape (n,) each."""

    traits: Traits[Floats]
    row: Ints  # of the warmth and the needs
    needs: tuple[Needs, ...]
    warmth: Warmth
    rate: Floats  # degree-days of a day under the crop's own conditions
    initial_d: Floats  # as in the traits, made finite for this site
    full_d: Floats
    perennial: NDArray[np.bool_]
    open_row: Ints  # of the warmth without a cover
    until: Ints  # last climate day under a cover; FAR where it stays, or is none
    free: Safe  # under the cover, if any
    open: Safe  # without it
    in_bed: Days
    tau: Ints  # climate day in the bed
    end: Ints  # climate day the grower ends it; FAR where they do not


def batch(site: Site, plantings: Sequence[Growing]) -> Batch:
    """Lay plantings side by side.

    Raises
    ------
    ValueError
        If a crop lacks a number that growth cannot do without.
    """
    known = [_knowledge(p) for p in plantings]
    rows: dict[Needs, int] = {}
    row, open_row = [], []
    for each, planting in zip(known, plantings, strict=True):
        bare = rows.setdefault(each.needs, len(rows)) if not planting.warmed or planting.warmed_until else -1
        row.append(rows.setdefault(each.warmed, len(rows)) if planting.warmed else bare)
        open_row.append(bare if bare >= 0 else row[-1])
    matrix = np.array([k.traits for k in known], dtype=np.float64).reshape(len(known), len(Traits._fields))
    columns = Traits(*matrix.T)
    warmth = Warmth.of(site.climate, tuple(rows))
    rows_of = np.array(row, dtype=np.int64)
    rate = warmth.rate[rows_of]
    in_bed = _days([p.start.on for p in plantings])
    seasonal = np.isinf(columns.full_d)
    year = np.maximum(warmth.total[rows_of] / rate, 1.0)
    bears = [k.endures for k in known]
    shielded = [b + SHIELDS_C.mid * p.warmed for b, p in zip(bears, plantings, strict=True)]
    return Batch(
        traits=columns,
        row=rows_of,
        needs=tuple(rows),
        warmth=warmth,
        rate=rate,
        initial_d=np.where(seasonal, SEASONAL_TENTH * year, columns.initial_d),
        full_d=np.where(seasonal, year, columns.full_d),
        perennial=columns.perennial > 0.0,
        open_row=np.array(open_row, dtype=np.int64),
        until=_ends([p.warmed_until if p.warmed else None for p in plantings]),
        free=_safe(site, shielded),
        open=_safe(site, bears),
        in_bed=in_bed,
        tau=climate_days(in_bed),
        end=_ends([p.end for p in plantings]),
    )


def _days(on: Sequence[date]) -> Days:
    return np.array(on, dtype="datetime64[D]")


def _ends(on: Sequence[date | None]) -> Ints:
    """Climate days; FAR for none."""
    if not any(on):
        return np.full(len(on), FAR, dtype=np.int64)
    return np.minimum(climate_days(_days([each or date.max for each in on])), FAR)


def _safe(site: Site, endures: Sequence[float]) -> Safe:
    free = {each: frost_free(site, each) for each in set(endures)}
    return Safe(
        np.array([free[each].begin for each in endures], dtype=np.int64),
        np.array([free[each].length for each in endures], dtype=np.int64),
    )


def reach(plants: Batch, since: Ints, need: Floats, within: Ints) -> tuple[Ints, NDArray[np.bool_]]:
    """Climate day on which each planting meets a need, under its cover and then without: ``Warmth.reach``."""
    day, met = plants.warmth.reach(plants.row, since, need, within)
    late = day > plants.until
    if not late.any():
        return day, met
    off = np.where(late, np.maximum(since, plants.until), since)
    gained = plants.warmth.until(plants.row, off) - plants.warmth.until(plants.row, since)
    rest = np.maximum(since + within - off, 0)
    bare, bare_met = plants.warmth.reach(plants.open_row, off, np.maximum(need - gained, 0.0), rest)
    return np.where(late, bare, day), np.where(late, bare_met, met)


def gathered(plants: Batch, tau: Ints) -> Floats:
    """Degree-days each planting has gathered until climate days, shape (n, days); 0 before it came."""
    warmth, came = plants.warmth, plants.warmth.until(plants.row, plants.tau)[:, None]
    sums = np.maximum(warmth.table(tau)[plants.row] - came, 0.0)
    off = np.flatnonzero(plants.until < FAR)
    if len(off):
        last = np.maximum(plants.until[off], plants.tau[off])
        bare = warmth.table(tau)[plants.open_row[off]] - warmth.until(plants.open_row[off], last)[:, None]
        under = warmth.until(plants.row[off], last)[:, None] - came[off]
        sums[off] = np.where(tau > last[:, None], under + bare, sums[off])
    return sums
