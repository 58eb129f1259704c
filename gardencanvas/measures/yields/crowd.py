"""What neighbours of other crops take of a stand, counted in plants of its own.

A stand yields D / (1 − c + c (D + E)) of a full stand of its own (Spitters 1983, Netherlands Journal of
Agricultural Science 31:1–11, from memory: the reciprocal yield law of two crops, 1/w₁ = b₁₀ + b₁₁ N₁ +
b₁₂ N₂). D is its density, E as many plants of its own as would hold it back like all others do, b₁₂ N₂ / b₁₁
in shares of the usual number. Coefficients of pairs of vegetables are not published; here they follow from
what plants share above ground and below, each for a half, because which of both is short is not known.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.rooting import overlap
from gardencanvas.fit.stands import Stand

Floats = NDArray[np.float64]

# Of the nitrogen in grain legumes about so much comes from the air (means of crops: 40 % in common bean to
# 75 % in broad bean; Herridge, Peoples & Boddey 2008, Plant and Soil 311:1–18; from memory).
FIXED = 0.65
_STEPS = 10


def light(leaf: Floats, sunlight: Floats) -> Floats:
    """Light each of some even canopies captures through the weeks, shape (stands,).

    Parameters
    ----------
    leaf
        Leaf area times extinction, shape (stands, weeks).
    sunlight
        Of each week, shape (weeks,).
    """
    captured: Floats = -np.expm1(-leaf) @ sunlight
    return captured


def by_light(leaf: Floats, sunlight: Floats, density: Floats, left: Floats) -> Floats:
    """So many plants of its own would take as much light from a stand as its neighbours do, shape (stands,).

    Leaves L of its own and x times as many more of the same height capture (1 − e^(−L (1 + x))) / (1 + x) for
    it; that is solved for x.

    Parameters
    ----------
    leaf
        Leaf area times extinction at the usual spacing, shape (stands, weeks).
    density
        Plants over the usual number.
    left
        What neighbours leave of the light it would capture without them.
    """
    crowd = np.zeros_like(density)
    some = np.flatnonzero((left < 1.0 - 1e-9) & (density > 0.0))
    if len(some) == 0:
        return crowd
    leaf, own = leaf[some], density[some]
    share = np.maximum(left[some], 1e-6) * light(leaf * own[:, None], sunlight) / own  # of each plant
    # Newton's steps for all plants together, in logarithms: from above, where no light is left over, the
    # concave curve is approached from one side
    total = sunlight.sum() / np.maximum(share, 1e-12)
    for _ in range(_STEPS):
        depth = leaf * total[:, None]
        through = np.exp(-depth)
        taken = (1.0 - through) @ sunlight
        slope = (depth * through) @ sunlight / taken - 1.0
        total = total * np.exp(np.log(share * total / taken) / slope)
    crowd[some] = np.maximum(total - own, 0.0)
    return crowd


def in_soil(stands: Sequence[Stand], weight: Floats, filled: Floats, weeks: slice, near: Floats) -> Floats:
    """So many plants of its own would root and feed where a stand's neighbours do, shape (stands,).

    Plants of others count by the part of its growth in which they fill their ground, by the overlap of roots
    in depth, and by that of their sources of nitrogen: Schoener's, as of depths. Legumes have it from the air
    for the most part and so share little of it with other crops, and all with each other.

    Parameters
    ----------
    weight
        How much of each stand's growth falls into each week, shape (stands, weeks); rows sum to 1.
    filled
        Share of its ground that each fills in each week, of the same shape.
    weeks
        Of the stands' grid, those of the arrays.
    near
        Density of each near some spots of the bed, shape (spots, stands).
    """
    bands = np.stack([s.root_room.bands[:, weeks] for s in stands])
    fixes = np.array([s.crop.nutrients is not None and s.crop.nutrients.value == "fixing" for s in stands])
    mean = np.maximum(near.mean(axis=0), 1e-12)
    met = near.T @ near / len(near) / mean[:, None]  # density of others where plants of each stand
    crowd = np.zeros(len(stands))
    for k in range(len(stands)):
        depths = overlap(np.swapaxes(bands, 0, 1), bands[k][:, None, :])  # (stands, weeks)
        nitrogen = np.where(fixes == fixes[k], 1.0, 1.0 - FIXED)
        beside = (depths * filled) @ weight[k] * nitrogen * met[k]
        beside[k] = 0.0
        crowd[k] = beside.sum()
    return crowd
