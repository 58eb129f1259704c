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
from gardencanvas.measures.bedful import Bedful
from gardencanvas.measures.mingling import local_density

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Shared:
    """How the stands of a bed share its light; shape (stands,) each but for ``taken``.

    ``thinned`` is the yield at the stand's own density over that at the usual one, ``left`` what neighbours
    of other stands leave of it; their product is the relative yield. ``taken``, shape (weeks,), is the share
    of the bed's light that all leaves take.
    """

    thinned: Floats
    left: Floats
    taken: Floats

    @property
    def relative(self) -> Floats:
        """Yield over the yield alone, per m² of the bed."""
        return self.thinned * self.left


def shared(bedful: Bedful, over: Vault) -> Shared:
    """How the stands of a bed share light through all weeks in which one of them stands."""
    weeks = np.flatnonzero(bedful.present.any(axis=0))
    sunlight = over.strength[months_of(bedful.stands[0].weeks)[weeks] % 12]
    leaf = bedful.leaf[:, weeks]
    density = bedful.density
    alone = _light(leaf, sunlight)
    thinned = np.minimum(_ratio(_light(leaf * density[:, None], sunlight), alone, density), 1.0)
    taken = np.zeros(bedful.present.shape[1])
    near = local_density(bedful)
    # (spots, weeks, stands): leaves near each spot
    leaves = near[:, None, :] * leaf.T
    shares = layered(1.0, leaves, bedful.height_m[:, weeks].T, bedful.base_m[:, weeks].T)
    taken[weeks] = shares.sum(axis=2).mean(axis=0)
    beside = np.einsum("cws,w->s", shares, sunlight) / len(near)
    without = np.einsum("cws,w->s", -np.expm1(-leaves), sunlight) / len(near)
    return Shared(thinned, _ratio(beside, without, np.ones_like(without)), taken)


def _light(leaf: Floats, sunlight: Floats) -> Floats:
    """Light each of some even canopies captures through the weeks, shape (stands,)."""
    captured: Floats = -np.expm1(-leaf) @ sunlight
    return captured


def _ratio(part: Floats, whole: Floats, instead: Floats) -> Floats:
    """One over the other; ``instead`` where there is no light to speak of."""
    return np.where(whole > 1e-9, part / np.maximum(whole, 1e-9), instead)
