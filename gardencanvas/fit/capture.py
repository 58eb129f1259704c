"""What a plant captures among others of its own height, against what it captures at its usual spacing.

Leaves mixed at one height share the light they take as their leaf area times extinction, k L (Spitters &
Aerts 1983; Keating & Carberry 1993): a plant with others' leaves x times its own on its ground captures
(1 − exp(−k L (1 + x))) / (1 + x). Growth goes by captured light (Monteith 1977), and capture of soil by roots
follows the same hyperbola, 1 / (1 + x), which is that of the yield–density law (Spitters 1983). What is kept
is the ratio to the usual x: that of its like at the usual spacing. Upright thin leaves, onion or leek, take
less from a cabbage than a cabbage would, and lose more to it.
"""

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.density import HeldBack, sizes_among
from gardencanvas.fit.ground import Ground
from gardencanvas.fit.own import Spare
from gardencanvas.season.course import Weeks

Floats = NDArray[np.float64]

LEAST_LEAF = 0.02  # the step to which leaf areas are rounded: younger leaves count as so much


def captured(leaf: Floats, crowd: Floats) -> Floats:
    """Light captured with others' leaves ``crowd`` times one's own on the same ground.

    Parameters
    ----------
    leaf
        Own leaf area times extinction, above 0.
    crowd
        Others' over one's own, 0 and more.
    """
    all_in = 1.0 + crowd
    share: Floats = -np.expm1(-leaf * all_in) / all_in
    return share


def kept(leaf: Floats, crowd: Floats, usual: Floats) -> Floats:
    """What is kept of a usual capture; 1 where there is room."""
    share: Floats = np.minimum(captured(leaf, crowd) / usual, 1.0)
    return share


class Alone(NamedTuple):
    """A stand among its own plants only.

    ``weight``, shape (weeks,), sums to 1: how much of its growth falls into each week, as the ground it
    covers, to the first harvest of a crop cut once and the last of all others. ``leaf``, shape (weeks,), is
    its leaf area times extinction, ``usual`` what it captures among its like at the usual spacing. ``own``,
    shape (stations, sizes), is the crowd of its own plants; ``kept``, shape (stations,), what that leaves of
    its whole growth. ``weekly``, shape (stations, weeks of growth), is the same week by week. ``heavier``,
    shape (stations,), is what published densities of the crop say of its weight over what capture alone says,
    and is in both; None where there are none.
    """

    weight: Floats
    leaf: Floats
    usual: Floats
    own: Floats
    size_of_week: NDArray[np.intp]
    kept: Floats
    weekly: Floats
    heavier: Floats | None


def alone(
    weeks: Weeks, growth: tuple[int, int], radius_m: Floats, leaf: Floats, ground: Ground, spare: Spare,
    back: HeldBack,
) -> Alone:  # fmt: skip
    """How a stand grows among its own plants.

    Parameters
    ----------
    growth
        First and last week of its growth.
    leaf
        Leaf area times extinction, less where the ground a pattern gives a station is less than its
        footprint: it grows so many fewer leaves.
    spare
        Crowds at the usual spacing and at its own.
    back
        How far its plants hold each other back. Where that is published of the crop, it tells what they leave
        each other; discs and light know nothing of its roots.
    """
    week = np.arange(weeks.count)
    square = radius_m * radius_m
    weight = np.where((week >= growth[0]) & (week <= growth[1]), square, 0.0)
    weight = weight / max(float(weight.sum()), 1e-12)
    area = np.maximum(np.pi * square, 1e-9)
    here, there = (np.minimum(m2 / area, 1.0) for m2 in (ground.station_m2, ground.usual_station_m2))
    usual = captured(np.maximum(leaf * there / here, LEAST_LEAF), spare.usual[spare.size_of_week])
    leaf = np.maximum(leaf, LEAST_LEAF)
    grows = slice(growth[0], growth[1] + 1)
    weekly = kept(leaf[grows], spare.own[:, spare.size_of_week[grows]], usual[grows])
    whole: Floats = weekly @ weight[grows] if weight.any() else np.ones(len(spare.own))
    if not back.known:
        return Alone(weight, leaf, usual, spare.own, spare.size_of_week, whole, weekly, None)
    peak = int(radius_m.argmax())
    among = spare.own[:, spare.size_of_week[peak]]
    size = sizes_among(among, float(radius_m[peak]), ground.along_m, ground.across_m, back.mid)
    heavier = size / np.maximum(whole, 1e-9)
    weekly = weekly * heavier[:, None]
    return Alone(weight, leaf, usual, spare.own, spare.size_of_week, size, weekly, heavier)
