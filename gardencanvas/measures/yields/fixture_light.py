"""What walls, fences, hedges, trees and sheds leave of the light of each stand, over its own time.

Yields go with light (Monteith 1977), so that a harvest shrinks with it; ratios to the same crop alone on the
same ground do not.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.beside import vault
from gardencanvas.fit.stands import RADIUS, Stand, months_of
from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.site import Site
from gardencanvas.light.fixtures import open_sky
from gardencanvas.measures.yields.bedful import Bedful

Floats = NDArray[np.float64]

LOOKED_AT = 8  # stations of a stand, evenly


def fixture_light(beds: Sequence[Bedful], site: Site, fixtures: Sequence[Fixture]) -> list[Floats]:
    """Share of open-sky light that fixtures leave, for each bed of shape (stands,)."""
    if not fixtures or not beds:
        return [np.ones(len(b.stands)) for b in beds]
    some = [_some(s) for b in beds for s in b.stands]
    sky = open_sky(site, fixtures, np.concatenate(some))
    ends = np.cumsum([len(xy) for xy in some])[:-1]
    of_stand = iter([part.mean(axis=0) for part in np.split(sky, ends)])
    strength = vault(site).strength
    return [np.array([_share(s, next(of_stand), strength) for s in b.stands]) for b in beds]


def _some(stand: Stand) -> Floats:
    """Some of its stations, the ends included."""
    count = len(stand.index)
    return stand.xy[np.linspace(0, count - 1, min(count, LOOKED_AT)).round().astype(np.intp)]


def _share(stand: Stand, sky: Floats, strength: Floats) -> float:
    """Mean over its weeks, by their sunlight and its footprint."""
    months = months_of(stand.weeks)[stand.begin : stand.end] % 12
    weight = strength[months] * stand.sizes[RADIUS, stand.begin : stand.end] ** 2
    total = float(weight.sum())
    return float(weight @ sky[months]) / total if total > 0.0 else 1.0
