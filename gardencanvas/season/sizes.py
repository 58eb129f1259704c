"""Sizes through the weeks: the beta function in thermal time."""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Site
from gardencanvas.season.batch import Batch, gathered
from gardencanvas.season.beta import beta
from gardencanvas.season.course import Floats, Weeks
from gardencanvas.season.dayofyear import YEAR, Ints, day_index
from gardencanvas.season.ripening import coldest, grid

Bools = NDArray[np.bool_]

ROOT_LEAST_M = 0.15  # rooting depth of the initial stage (FAO-56 p. 279, from memory)


class Sizes(NamedTuple):
    """Shape (n, weeks) each."""

    radius: Floats
    height: Floats
    base: Floats
    root: Floats
    leaf: Floats


def _age(site: Site, plants: Batch, tau: Ints) -> tuple[Floats, Floats]:
    """Days of growth under the crop's own conditions: since it came, and since it last began to grow anew."""
    rate = plants.rate[:, None]
    whole = gathered(plants, tau) / rate
    if not plants.traits.regrows.any():
        return whole, whole
    spring = tau - (tau - coldest(site)) % YEAR
    table = plants.warmth.table
    anew = np.minimum(whole, (table(tau) - table(spring))[plants.row] / rate)
    return whole, np.where(plants.traits.regrows[:, None] > 0.0, anew, whole)


def _died_down(site: Site, tau: Ints) -> Bools:
    """Weeks between the first frost and the coldest day, in which regrowing perennials show no leaf."""
    if site.frost.first is None:
        return np.zeros(len(tau), dtype=np.bool_)
    first = day_index(site.frost.first)
    return np.asarray((tau - first) % YEAR < (coldest(site) - first) % YEAR)


def sizes(site: Site, plants: Batch, weeks: Weeks, present: Bools, picked: Bools) -> Sizes:
    """Sizes in the middle of each week.

    Parameters
    ----------
    present, picked
        Shape (n, weeks): it stands in the bed; its harvest has begun.
    """
    t = plants.traits
    tau = grid(weeks)[1]
    whole, age = _age(site, plants, tau)
    full, initial = plants.full_d[:, None], plants.initial_d[:, None]
    grown = np.maximum(beta(age / full, t.power[:, None]), t.floor[:, None]) * present
    if t.regrows.any():
        grown *= ~(_died_down(site, tau) & (t.regrows[:, None] > 0.0))
    rooted = np.clip((whole - initial) / (full - initial), 0.0, 1.0)
    least = np.minimum(ROOT_LEAST_M, t.root_m)[:, None]
    # Leaf area that, by Beer–Lambert, takes the light of the ground covered so far.
    cover, some = t.cover[:, None], np.maximum(grown, 1e-9)
    leaf = t.leaf_area[:, None] * np.log1p(-cover * some) / (some * np.log1p(-cover))
    kept = np.where(picked, t.cut[:, None], 1.0)
    high = grown * kept
    return Sizes(
        radius=t.radius_m[:, None] * np.sqrt(grown),
        height=t.height_m[:, None] * high,
        base=t.base_m[:, None] * high,
        root=(least + (t.root_m[:, None] - least) * rooted) * present,
        leaf=leaf * kept * (grown > 0.0),
    )
