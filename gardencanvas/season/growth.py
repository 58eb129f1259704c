"""How plantings grow: sizes week by week, harvest dates and the end, all plantings at once."""

from collections.abc import Sequence
from datetime import date, timedelta
from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.garden.site import Site
from gardencanvas.season.beta import beta
from gardencanvas.season.course import Course, Days, Floats, Growing, Weeks
from gardencanvas.season.covers import SHIELDS_C, WARMER_C
from gardencanvas.season.dayofyear import YEAR, Ints, climate_days, dates
from gardencanvas.season.killing import endures_c, frost_free
from gardencanvas.season.traits import ROOT_LEAST_M, Traits, base_top, traits
from gardencanvas.season.warmth import Needs, Warmth, mean_curve

Bools = NDArray[np.bool_]

FAR = 1_000_000  # a climate day that never comes


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
        if len(_known) > 20_000:
            _known.clear()
        _known[key] = known
    return known


class _Batch(NamedTuple):
    """Plantings as columns, shape (n,) each."""

    traits: Traits[Floats]  # its fields hold arrays here
    row: Ints  # of the warmth
    warmth: Warmth
    free_from: Ints  # first day of the year without killing frost
    free_for: Ints  # days
    in_bed: Days
    tau: Ints  # climate day in the bed
    end: Ints  # climate day the grower ends it; FAR where they do not


def _batch(site: Site, plantings: Sequence[Growing]) -> _Batch:
    known = [_knowledge(p) for p in plantings]
    rows: dict[Needs, int] = {}
    row = [
        rows.setdefault(k.warmed if p.warmed else k.needs, len(rows))
        for k, p in zip(known, plantings, strict=True)
    ]
    bears = [k.endures + SHIELDS_C * p.warmed for k, p in zip(known, plantings, strict=True)]
    free = {each: frost_free(site, each) for each in set(bears)}
    matrix = np.array([k.traits for k in known], dtype=np.float64).reshape(len(known), len(Traits._fields))
    in_bed = np.array([p.start.on for p in plantings], dtype="datetime64[D]")
    end = np.array([p.end or date.max for p in plantings], dtype="datetime64[D]")
    return _Batch(
        Traits(*matrix.T),
        np.array(row, dtype=np.int64),
        Warmth.of(site.climate, list(rows)),
        np.array([free[b].begin for b in bears], dtype=np.int64),
        np.array([free[b].length for b in bears], dtype=np.int64),
        in_bed,
        climate_days(in_bed),
        np.minimum(climate_days(end), FAR),
    )


class _Times(NamedTuple):
    """Climate days, shape (n,) each."""

    first: Ints
    last: Ints
    out: Ints
    frosted: Bools
    ripe: Bools


def _frost(batch: _Batch) -> tuple[Ints, Bools]:
    """The climate day on which frost kills, and whether a planting shows before the frosts are over."""
    t = batch.traits
    longest = t.longest_d.astype(np.int64)
    shows, _ = batch.warmth.reach(batch.row, batch.tau, t.shows_d * batch.warmth.rate[batch.row], longest)
    early = (shows - batch.free_from) % YEAR >= batch.free_for
    killed = shows + (batch.free_from + batch.free_for - shows) % YEAR
    return np.where(batch.free_for < YEAR, killed, FAR), early


def _times(batch: _Batch, since: Ints, season_end: int) -> _Times:
    """Harvest and end: by warmth, by frost, by the grower's word."""
    t, warmth, row = batch.traits, batch.warmth, batch.row
    rate = warmth.rate[row]
    longest = t.longest_d.astype(np.int64)
    first, ripe = warmth.reach(row, since, t.ripe_d * rate, longest)
    picking: Ints = np.rint(t.picking_d).astype(np.int64)
    warm_last, _ = warmth.reach(row, first, t.picking_d * rate, 2 * picking)
    last = np.where(t.picking_thermal > 0, warm_last, first + picking)
    perennial = t.perennial > 0
    killed, early = _frost(batch)
    frosted = early | (killed <= first)
    out = np.where(perennial, np.maximum(season_end, batch.tau), np.where(ripe, last, first))
    out = np.minimum(np.minimum(out, killed), batch.end)
    ripe = ripe & (first <= out) & (first < killed)
    return _Times(np.where(ripe, first, out), np.where(ripe, np.minimum(last, out), out), out, frosted, ripe)


@lru_cache(maxsize=256)
def _grid(weeks: Weeks) -> tuple[Days, Ints]:
    """The middle day of each week and its climate day."""
    middle = weeks.starts + 3
    return middle, climate_days(middle)


def _year_begins(site: Site, weeks: Weeks) -> int:
    """The coldest climate day before the middle of the grid: a perennial's year starts there."""
    coldest = int(np.argmin(mean_curve(site.climate)))
    middle = int(_grid(weeks)[1][weeks.count // 2])
    return middle - (middle - coldest) % YEAR


class _Sizes(NamedTuple):
    radius: Floats
    height: Floats
    base: Floats
    root: Floats
    leaf: Floats


def _sizes(batch: _Batch, weeks: Weeks, present: Bools, cut: Bools) -> _Sizes:
    """Sizes through the weeks, shape (n, weeks): the beta function in thermal time."""
    t, warmth, row = batch.traits, batch.warmth, batch.row
    years, day = np.divmod(_grid(weeks)[1], YEAR)
    reached = warmth.total[:, None] * years + warmth.cumulative[:, day]
    age = (reached[row] - warmth.until(row, batch.tau)[:, None]) / warmth.rate[row][:, None]
    full, initial = t.full_d[:, None], t.initial_d[:, None]
    grown = np.maximum(beta(age / full, t.power[:, None]), t.floor[:, None]) * present
    rooted = np.clip((age - initial) / (full - initial), 0.0, 1.0)
    least = np.minimum(ROOT_LEAST_M, t.root_m)[:, None]
    # Leaf area that, by Beer–Lambert, takes the light of the ground covered so far.
    cover = t.cover[:, None]
    some = np.maximum(grown, 1e-9)
    leaf = t.leaf_area[:, None] * np.log1p(-cover * some) / (some * np.log1p(-cover))
    kept = np.where(cut, t.cut[:, None], 1.0)
    return _Sizes(
        t.radius_m[:, None] * np.sqrt(grown),
        t.height_m[:, None] * grown * kept,
        t.base_m[:, None] * grown * kept,
        (least + (t.root_m[:, None] - least) * rooted) * present,
        leaf * kept * present,
    )


def follow(site: Site, plantings: Sequence[Growing], weeks: Weeks) -> Course:
    """The course of plantings through a grid of weeks.

    Growth is a beta function (Yin et al. 2003) of degree-days, a tenth of full cover at the end of the
    initial stage (FAO-56, chapter 6); the canopy radius goes with the square root of cover, height with
    cover, rooting depth linearly through the development stage (FAO-56 p. 279). Each planting's row depends
    on the site, the planting and the grid alone.

    Parameters
    ----------
    site
        Its climate and its frost dates.
    plantings
        With complete crops (``Catalogue.resolve``).
    weeks
        The grid asked for. Dates do not depend on it, but for perennials: they stand to its end.

    Raises
    ------
    ValueError
        If a crop lacks a number that growth cannot do without.
    """
    batch = _batch(site, plantings)
    middle, taus = _grid(weeks)
    perennial = batch.traits.perennial > 0
    since = np.where(perennial, np.maximum(batch.tau, _year_begins(site, weeks)), batch.tau)
    times = _times(batch, since, int(taus[-1]) + 3)
    out = np.maximum(dates(times.out), batch.in_bed)
    first, last = np.maximum(dates(times.first), batch.in_bed), np.maximum(dates(times.last), batch.in_bed)
    present = (middle >= batch.in_bed[:, None]) & (middle <= out[:, None])
    picked = middle >= first[:, None]
    sizes = _sizes(batch, weeks, present, picked)
    return Course(
        weeks=weeks,
        radius_m=sizes.radius,
        height_m=sizes.height,
        base_m=sizes.base,
        root_m=sizes.root,
        leaf_area=sizes.leaf,
        present=present,
        sown=batch.in_bed - np.rint(batch.traits.nursery_d).astype(np.int64),
        in_bed=batch.in_bed,
        harvest_first=first,
        harvest_last=last,
        out=out,
        frosted=times.frosted,
        ripe=times.ripe,
    )


SPAN_STEP = 4  # weeks by which the grid grows before and after the season
SPAN_LONGEST = 156  # weeks: three years


def span(site: Site, plantings: Sequence[Growing], season: tuple[date, date] | None = None) -> Weeks:
    """The grid of weeks that covers the season and every planting from its first day in the bed to its last.

    The grid begins on the season's first day or a whole number of four-week steps before it, so that the same
    layout always has the same grid and small changes seldom change it. It covers three years at most, one
    of them before the season.

    Parameters
    ----------
    season
        First and last day of the layout's year (``Layout.season``); absent, the year of the earliest start.
    """
    if season is None:
        year = min((p.start.on.year for p in plantings), default=date.min.year + 2000)
        season = date(year, 1, 1), date(year, 12, 31)
    count = -(-((season[1] - season[0]).days + 1) // 7)
    own = Weeks(season[0], count)
    if not plantings:
        return own
    batch = _batch(site, plantings)
    since = np.maximum(batch.tau, _year_begins(site, own)) if len(plantings) else batch.tau
    perennial = batch.traits.perennial > 0
    times = _times(batch, np.where(perennial, since, batch.tau), int(_grid(own)[1][-1]) + 3)
    annual = batch.traits.perennial == 0
    begin = min((d.astype(object) for d in batch.in_bed[annual]), default=season[0])
    close = max((d.astype(object) for d in dates(times.out)[annual]), default=season[1])
    before = -(-max((season[0] - begin).days, 0) // (7 * SPAN_STEP)) * SPAN_STEP
    before = min(before, 52)
    after = -(-max((close - season[1]).days, 0) // (7 * SPAN_STEP)) * SPAN_STEP
    return Weeks(season[0] - timedelta(weeks=before), min(count + before + after, SPAN_LONGEST))
