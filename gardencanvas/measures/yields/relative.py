"""Relative yields: what each stand of a bed gives, over what it would give alone on all of the bed.

Alone, yield goes with density by the reciprocal yield law (``density``). Neighbours hold a stand back as so
many more plants of its own would (``crowd``): above ground as many as would leave it as much light, with
constant light-use efficiency (Monteith 1977) and light shared in layers by height (Beer–Lambert; Spitters &
Aerts 1983; Keating & Carberry 1993); below ground as many as would root where they do.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.beside import Vault
from gardencanvas.fit.density import held_back
from gardencanvas.fit.stands import Stand, months_of
from gardencanvas.light.canopy import layered
from gardencanvas.measures.yields.bedful import Bedful
from gardencanvas.measures.yields.crowd import by_light, in_soil
from gardencanvas.measures.yields.density import relative_yield
from gardencanvas.measures.yields.mingling import local_density

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]


@dataclass(frozen=True, slots=True, eq=False)
class Shared:
    """How the stands of a bed share its light; shape (stands,) each but for ``taken``.

    ``density`` is plants over the usual number, of all stands that grow alike. ``thinned`` is the yield at
    the stand's own density over that at the usual one, ``left`` what neighbours of other stands leave of it;
    their product is the relative yield. ``taken``, shape (weeks,), is the share of the bed's light that all
    leaves take.
    """

    density: Floats
    thinned: Floats
    left: Floats
    taken: Floats

    @property
    def relative(self) -> Floats:
        """Yield over the yield alone, per m² of the bed."""
        return self.thinned * self.left


def shared(bedful: Bedful, over: Vault, near: Floats | None = None) -> Shared:
    """How the stands of a bed share light through all weeks in which one of them stands.

    Stands of one crop with the same dates are one stand: however its rows were drawn, it yields the same.

    Parameters
    ----------
    near
        ``local_density`` of the bed, where it is known already.
    """
    first, same = _alike(bedful)
    parts = same.T @ np.diag(bedful.density)  # (alike, stands)
    density = parts.sum(axis=1)
    standing = np.flatnonzero(bedful.present.any(axis=0))
    weeks = slice(int(standing[0]), int(standing[-1]) + 1) if len(standing) else slice(0, 0)
    sunlight = over.strength[months_of(bedful.stands[0].weeks)[weeks] % 12]
    leaf, top, base = (x[first][:, weeks] for x in (bedful.leaf, bedful.height_m, bedful.base_m))
    near = (local_density(bedful) if near is None else near) @ same
    leaves = near[:, None, :] * leaf.T  # (spots, weeks, alike)
    shares = layered(1.0, leaves, top.T, base.T)
    beside = np.einsum("cws,w->s", shares, sunlight)
    without = np.einsum("cws,w->s", -np.expm1(-leaves), sunlight)
    lit = by_light(leaf, sunlight, density, _ratio(beside, without, np.ones_like(without)))
    cover = bedful.full_cover[first][:, weeks]
    weight = cover * sunlight
    weight = _ratio(weight, weight.sum(axis=1, keepdims=True), np.zeros_like(weight))
    filled = _ratio(cover, cover.max(axis=1, initial=0.0, keepdims=True), np.zeros_like(cover))
    stands = [bedful.stands[k] for k in first]
    crowd = (lit + in_soil(stands, weight, filled, weeks, near)) / 2.0
    back = np.array([_held_back(s) for s in stands])
    sole = relative_yield(density, back)
    left = _ratio(relative_yield(density, back, crowd), sole, np.ones_like(sole))
    thinned = np.minimum(sole, 1.0)
    taken = np.zeros(bedful.present.shape[1])
    taken[weeks] = shares.sum(axis=2).mean(axis=0)
    mine = _ratio(parts, density[:, None], np.zeros_like(parts))
    return Shared(same @ density, thinned @ mine, same @ left, taken)


def _alike(bedful: Bedful) -> tuple[Ints, Floats]:
    """The first of each set of stands that grow alike, and which stand belongs to which (stands, alike)."""
    keys = [(id(s.crop), s.begin, s.end, s.times, s.planting.per_station) for s in bedful.stands]
    places = {key: n for n, key in enumerate(dict.fromkeys(keys))}
    of = np.array([places[key] for key in keys])
    first: Ints = np.array([keys.index(key) for key in places], dtype=np.intp)
    same: Floats = (of[:, None] == np.arange(len(places))).astype(np.float64)
    return first, same


def _held_back(stand: Stand) -> float:
    return held_back(stand.crop, stand.ground.need_m2, stand.planting.per_station).mid


def _ratio(part: Floats, whole: Floats, instead: Floats) -> Floats:
    """One over the other; ``instead`` where there is no light to speak of."""
    return np.where(whole > 1e-9, part / np.maximum(whole, 1e-9), instead)
