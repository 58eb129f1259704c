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

_NO_END = np.datetime64(date.max, "D")


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
            Needs(base, top, grown_at, WARMER_C),
            endures_c(crop),
        )
        if len(_known) > _MOST_KNOWN:
            _known.clear()
        _known[key] = known
    return known


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
    free_from: Ints  # first day of the year without killing frost
    free_for: Ints  # days
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
    row = np.array(
        [
            rows.setdefault(k.warmed if p.warmed else k.needs, len(rows))
            for k, p in zip(known, plantings, strict=True)
        ],
        dtype=np.int64,
    )
    bears = [k.endures + SHIELDS_C * p.warmed for k, p in zip(known, plantings, strict=True)]
    free = {each: frost_free(site, each) for each in set(bears)}
    matrix = np.array([k.traits for k in known], dtype=np.float64).reshape(len(known), len(Traits._fields))
    columns = Traits(*matrix.T)
    warmth = Warmth.of(site.climate, tuple(rows))
    rate = warmth.rate[row]
    in_bed = np.array([p.start.on for p in plantings], dtype="datetime64[D]")
    end = np.array([p.end or _NO_END for p in plantings], dtype="datetime64[D]")
    seasonal = np.isinf(columns.full_d)
    year = np.maximum(warmth.total[row] / rate, 1.0)
    return Batch(
        traits=columns,
        row=row,
        needs=tuple(rows),
        warmth=warmth,
        rate=rate,
        initial_d=np.where(seasonal, SEASONAL_TENTH * year, columns.initial_d),
        full_d=np.where(seasonal, year, columns.full_d),
        perennial=columns.perennial > 0.0,
        free_from=np.array([free[b].begin for b in bears], dtype=np.int64),
        free_for=np.array([free[b].length for b in bears], dtype=np.int64),
        in_bed=in_bed,
        tau=climate_days(in_bed),
        end=np.minimum(climate_days(end), FAR),
    )
