"""Light that a taller stand takes from plants beside it, not under it.

The sky is cut into sectors of compass direction. In each, the plants of the taller stand hide what lies below
their tops, as far as they fill the sector's width and as far as their leaves let no light through. Unlike a
product over single plants (``light.neighbours``), plants that stand behind each other hide the same light
once.

Approximations: the canopies reach down to the ground; a sector's horizon is the fourth-power mean of its
plants', so near ones count most; one state a month; stations within 0.3 m of each other see the same.
"""

from dataclasses import dataclass
from functools import lru_cache
from math import pi, radians
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.near import near_pairs
from gardencanvas.fit.stands import BASE, HEIGHT, LEAF, RADIUS, Stand, months_of
from gardencanvas.fit.thresholds import RISE_M, SHADE_REACH
from gardencanvas.garden.site import Site
from gardencanvas.light.neighbours import AZIMUTH_CELLS, ELEVATION_CELLS, G, sky
from gardencanvas.season.course import Weeks
from gardencanvas.season.radiation import MID_MONTH, extraterrestrial

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

SECTORS = 18
_WIDTH = 2 * pi / SECTORS
_SPREAD = 3  # sectors to each side that one near plant may fill


@dataclass(frozen=True, slots=True, eq=False)
class Vault:
    """A site's sky by month: ``light[m, k, e]`` is month m's share of light in sector k below e cells."""

    light: Floats  # (12, SECTORS, ELEVATION_CELLS + 1)
    strength: Floats  # (12,): MJ/m² a day that reach the top of the air
    bearing_deg: float


@dataclass(frozen=True, slots=True, eq=False)
class Beside:
    """What a stand loses to a taller one beside it in the weeks ``[begin, end)``.

    ``passed`` is the logarithm of the share of light left, shape (spots, months); ``spot`` says which spot a
    station belongs to, ``month`` which column a week has.
    """

    low: Stand
    tall: Stand
    begin: int
    end: int
    passed: Floats
    month: Ints


@lru_cache(maxsize=16)
def vault(site: Site) -> Vault:
    """The sky of a site, cut into sectors."""
    edges = slice(None, AZIMUTH_CELLS + 1, AZIMUTH_CELLS // SECTORS)
    cumulated = sky(site).light[:, edges, : ELEVATION_CELLS + 1]
    light = np.ascontiguousarray(np.diff(cumulated, axis=1))
    strength = np.array([extraterrestrial(site.latitude_deg, day) for day in MID_MONTH])
    return Vault(light, strength, site.bearing_deg)


def beside(low: Stand, tall: Stand, over: Vault) -> Beside | None:
    """What ``low`` loses to ``tall``; None where that is nothing."""
    begin, end = max(low.begin, tall.begin), min(low.end, tall.end)
    most = SHADE_REACH * (tall.top_m - RISE_M)
    gap2 = low.gap2(tall)
    if begin >= end or most <= 0.0 or gap2 >= most * most:
        return None
    above = _above(low.origin, tall.origin)
    reach, radius, own = SHADE_REACH * above.highest_m, above.radius_m, above.low_m
    if reach <= 0.0 or gap2 >= reach * reach or radius <= 0.0 or own <= 0.0:
        return None
    spots = low.spots
    pairs = near_pairs(spots.xy, tall.xy, spots.box, tall.box, reach)
    aside = np.clip((pairs.distance_m - abs(radius - own)) / (2 * min(radius, own)), 0.0, 1.0)
    some = aside.nonzero()[0]
    if len(some) == 0:
        return None
    i, j = pairs.i[some], pairs.j[some]
    (low_x, low_y), (tall_x, tall_y) = spots.xy.T, tall.xy.T
    azimuth = np.arctan2(tall_x[j] - low_x[i], low_y[i] - tall_y[j]) + radians(over.bearing_deg)
    filled, steep = _sectors(i, azimuth, pairs.distance_m[some], aside[some], radius, len(spots.xy))
    passed = _passed(above, over, filled / radius, steep)
    return Beside(low, tall, begin, end, passed, above.month) if float(passed.min()) < -1e-6 else None


class _Above(NamedTuple):
    """A taller stand over a lower one while both stand, wherever they lie; arrays of shape (months,)."""

    highest_m: float  # most that it rises above the lower one
    radius_m: float  # its widest canopy
    low_m: float  # that of the lower one
    month: Ints  # (weeks,): place of each week's month
    months: Ints  # 0–11
    rise: Floats
    radius: Floats
    depth: Floats  # leaf area met on the way through the middle of its canopy


@lru_cache(maxsize=512)  # so many pairs as lie round what is dragged
def _above(low: Stand, tall: Stand) -> _Above:
    begin, end = max(low.begin, tall.begin), min(low.end, tall.end)
    weeks, month = _months(low.weeks, begin, end)
    rise = tall.sizes[HEIGHT] - low.sizes[HEIGHT] - RISE_M
    size = tall.sizes[:, weeks]
    density = G / tall.extinction * size[LEAF] / np.maximum(size[HEIGHT] - size[BASE], 1e-6)
    return _Above(
        float(rise[begin:end].max()),
        float(tall.sizes[RADIUS, begin:end].max()),
        float(low.sizes[RADIUS, begin:end].max()),
        month,
        months_of(low.weeks)[weeks] % 12,
        np.maximum(rise[weeks], 0.0),
        size[RADIUS],
        density * size[RADIUS] * (pi / 2),
    )


def _sectors(
    spot: Ints, azimuth: Floats, distance: Floats, aside: Floats, radius: float, count: int
) -> tuple[Floats, Floats]:
    """How full each sector is of canopies, and how steep per metre of rise; shapes (spots, SECTORS).

    Each plant counts as far as it stands ``aside`` and not over the spot (0–1); one that is over it is taken
    as standing at its rim. Fullness may exceed 1 where canopies stand behind each other.
    """
    distance = np.maximum(distance, radius)
    half = np.arcsin(radius / distance)
    steep = 1.0 / (distance - radius * pi / 4)  # to the fourth power
    steep *= steep
    steep *= steep
    part = aside / _WIDTH
    home = np.floor(azimuth / _WIDTH)
    left, right = azimuth - half, azimuth + half
    sector = np.maximum(np.floor(left / _WIDTH), home - _SPREAD)
    last = np.minimum(np.floor(right / _WIDTH), home + _SPREAD)
    left = np.maximum(left, sector * _WIDTH)
    cells, shares, weights = [], [], []
    while True:  # from the first sector each plant fills to its last: most fill one or two
        edge = (sector + 1.0) * _WIDTH
        share = np.maximum(np.minimum(right, edge) - left, 0.0) * part
        cells.append(spot * SECTORS + sector.astype(np.intp) % SECTORS)
        shares.append(share)
        weights.append(share * steep)
        some = (sector < last).nonzero()[0]
        if len(some) == 0:
            break
        spot, part, right, steep = spot[some], part[some], right[some], steep[some]
        sector, last, left = sector[some] + 1.0, last[some], edge[some]
    cell = np.concatenate(cells)
    filled = np.bincount(cell, np.concatenate(shares), count * SECTORS).astype(np.float64, copy=False)
    weighted = np.bincount(cell, np.concatenate(weights), count * SECTORS)
    mean: Floats = np.sqrt(np.sqrt(weighted / np.maximum(filled, 1e-12)))
    return filled.reshape(count, SECTORS), mean.reshape(count, SECTORS)


@lru_cache(maxsize=1024)
def _months(grid: Weeks, begin: int, end: int) -> tuple[Ints, Ints]:
    """The middle week of each month's part of a span, and the month's place for each week."""
    months = months_of(grid)[begin:end]
    change = np.concatenate([[True], months[1:] != months[:-1]])
    starts = np.flatnonzero(change)
    lengths = np.diff(starts, append=end - begin)
    return begin + starts + lengths // 2, np.cumsum(change) - 1


def _passed(above: _Above, over: Vault, per_metre: Floats, steep: Floats) -> Floats:
    """Logarithm of light left, shape (spots, months)."""
    spot, sector = per_metre.nonzero()  # the sectors that anything stands in
    high = np.arctan(steep[spot, sector][:, None] * above.rise)
    light = _below(over, above.months, sector, high)
    full = per_metre[spot, sector][:, None] * above.radius
    cover = np.minimum(full, 1.0)
    depth = above.depth / np.maximum(np.cos(high / 2), 0.1)
    behind = full / np.maximum(cover, 1e-12)
    lost = np.zeros((len(per_metre), len(above.months)))
    first = np.concatenate([[True], spot[1:] != spot[:-1]]).nonzero()[0]
    lost[spot[first]] = np.add.reduceat(light * cover * -np.expm1(-depth * behind), first)
    passed: Floats = np.log1p(-np.minimum(lost, 0.999))
    return passed


def _below(over: Vault, months: Ints, sector: Ints, high: Floats) -> Floats:
    """Light of sectors below an elevation (radians), shape of ``high``: (sectors, months)."""
    cells = high * (ELEVATION_CELLS / (pi / 2))
    whole = np.minimum(cells.astype(np.intp), ELEVATION_CELLS - 1)
    part = cells - whole
    at = (months * SECTORS + sector[:, None]) * (ELEVATION_CELLS + 1) + whole
    flat = over.light.ravel()
    below: Floats = flat[at] * (1.0 - part) + flat[at + 1] * part
    return below
