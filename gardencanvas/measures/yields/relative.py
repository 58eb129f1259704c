"""Relative yields: what each stand of a bed gives, over what it would give alone on all of the bed.

The light it captures beside its neighbours over the light it captures alone at its usual spacing, in the
same weeks, with constant light-use efficiency (Monteith 1977). Light is shared in layers by height
(Beer–Lambert; Spitters & Aerts 1983; Keating & Carberry 1993).
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.beside import Vault
from gardencanvas.fit.stands import months_of
from gardencanvas.light.canopy import layered
from gardencanvas.measures.yields.bedful import Bedful
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
    weeks = np.flatnonzero(bedful.present.any(axis=0))
    sunlight = over.strength[months_of(bedful.stands[0].weeks)[weeks] % 12]
    leaf, top, base = (x[first][:, weeks] for x in (bedful.leaf, bedful.height_m, bedful.base_m))
    alone = _light(leaf, sunlight)
    thinned = np.minimum(_ratio(_light(leaf * density[:, None], sunlight), alone, density), 1.0)
    near = (local_density(bedful) if near is None else near) @ same
    leaves = near[:, None, :] * leaf.T  # (spots, weeks, alike)
    shares = layered(1.0, leaves, top.T, base.T)
    beside = np.einsum("cws,w->s", shares, sunlight)
    without = np.einsum("cws,w->s", -np.expm1(-leaves), sunlight)
    left = _ratio(beside, without, np.ones_like(without))
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


def _light(leaf: Floats, sunlight: Floats) -> Floats:
    """Light each of some even canopies captures through the weeks, shape (stands,)."""
    captured: Floats = -np.expm1(-leaf) @ sunlight
    return captured


def _ratio(part: Floats, whole: Floats, instead: Floats) -> Floats:
    """One over the other; ``instead`` where there is no light to speak of."""
    return np.where(whole > 1e-9, part / np.maximum(whole, 1e-9), instead)
