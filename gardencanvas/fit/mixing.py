"""How well a bed mixes kinds: published indices of diversity, and of who stands beside whom.

The mixing index M sets the share u of neighbouring pairs that are unlike against the share E that a random
arrangement of the same plants would have: M = (u − E) / (1 − E), with E = 1 − Σ nᵢ(nᵢ − 1) / N(N − 1) (join
counts). 1: no plant stands beside its kind; 0: as by chance; below 0: kinds stand in clumps. Rows of one kind
beside rows of another come out about 0.

Fewer plant eaters settle on mixed stands on average of many trials (Letourneau et al. 2011; Root 1973), but
no number of it can be promised to one garden: the index is shown, and changes no verdict.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from shapely import STRtree, points

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import ADJOIN_M
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_of

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]


def shannon(shares: Floats) -> float:
    """Shannon's H = −Σ p ln p of shares that sum to 1."""
    some = shares[shares > 0.0]
    return float(-(some * np.log(some)).sum())


def evenness(shares: Floats) -> float:
    """Pielou's J = H / ln S; 1 for a single kind."""
    kinds = int(np.count_nonzero(shares > 0.0))
    return shannon(shares) / float(np.log(kinds)) if kinds > 1 else 1.0


def simpson(shares: Floats) -> float:
    """Simpson's 1 − Σ p²: how likely two plants met at random are unlike."""
    return float(1.0 - (shares * shares).sum())


def effective_kinds(shares: Floats) -> float:
    """1 / Σ p²: so many kinds of equal share are as diverse."""
    return 1.0 / float((shares * shares).sum())


def unlike_by_chance(counts: Ints) -> float:
    """E: share of unlike pairs among all pairs of some plants, of which ``counts`` are of each kind."""
    total = int(counts.sum())
    return 1.0 - float((counts * (counts - 1)).sum()) / (total * (total - 1)) if total > 1 else 0.0


def mixing(kinds: Ints, i: Ints, j: Ints) -> float | None:
    """The mixing index M of plants whose neighbours are known.

    Parameters
    ----------
    kinds
        Kind of each plant, shape (n,).
    i, j
        Pairs of neighbours, each once, shapes (pairs,).

    Returns
    -------
    float or None
        None for a single kind or where no plant has a neighbour.
    """
    chance = unlike_by_chance(np.unique(kinds, return_counts=True)[1])
    if len(i) == 0 or chance <= 0.0:
        return None
    if chance >= 1.0:  # every plant a kind of its own
        return 1.0
    unlike = float(np.mean(kinds[i] != kinds[j]))
    return (unlike - chance) / (1.0 - chance)


def segregation(table: NDArray[np.int64]) -> float:
    """Pielou's S of a table of nearest neighbours, shape (2, 2): rows the plant, columns its neighbour.

    1 − observed mixed pairs over those expected of independent margins (Pielou 1961). An index only: its
    chi-square test does not hold for plants that are all mapped (Dixon 1994).
    """
    total = table.sum()
    rows, columns = table.sum(axis=1), table.sum(axis=0)
    expected = (rows[0] * columns[1] + rows[1] * columns[0]) / total
    return float(1.0 - (table[0, 1] + table[1, 0]) / expected)


def neighbours_by_chance(counts: Ints) -> Floats:
    """Expected table of nearest neighbours of randomly placed kinds, shape (kinds, kinds) (Dixon 1994)."""
    n = counts.astype(np.float64)
    table: Floats = np.outer(n, n) / (n.sum() - 1.0)
    table[np.diag_indices(len(n))] = n * (n - 1.0) / (n.sum() - 1.0)
    return table


@dataclass(frozen=True, slots=True)
class BedMixing:
    """How one bed mixes families over a season.

    ``ground`` is each family's share of the ground all need at their usual spacing; ``apart`` the mixing
    index of each family against all others; ``index`` that of all families; None where it has no meaning.
    """

    ground: dict[str, float]
    apart: dict[str, float | None]
    index: float | None
    kinds: float  # effective number of families
    neighbours: int  # pairs of plants
    unlike: int  # of those, of different families


def bed_mixing(garden: Garden, layout: Layout, bed: Bed, catalogue: Catalogue) -> BedMixing:
    """How a bed mixes families: of plants whose leaves come within a hand's breadth while both stand."""
    inside = tuple(p for p in layout.plantings if bed_of(layout, p) is bed)
    part = rebuilt(layout, plantings=inside)
    stands = Standing(catalogue, garden.site, part).of(part)
    return mixing_of([s for each in stands.values() for s in each])


def mixing_of(stands: Sequence[Stand]) -> BedMixing:
    """How some stands mix families."""
    some = [s for s in stands if s.end > s.begin]
    if not some:
        return BedMixing({}, {}, None, 0.0, 0, 0)
    names, of_stand = np.unique([s.crop.family for s in some], return_inverse=True)
    sizes = [len(s.index) for s in some]
    kinds = np.repeat(of_stand, sizes).astype(np.intp)
    ground = np.bincount(of_stand, [s.ground.need_m2 * n for s, n in zip(some, sizes, strict=True)])
    shares: Floats = ground / ground.sum()
    i, j = _neighbours(some, sizes)
    apart = {str(name): mixing((kinds == k).astype(np.intp), i, j) for k, name in enumerate(names)}
    return BedMixing(
        {str(name): float(share) for name, share in zip(names, shares, strict=True)},
        apart,
        mixing(kinds, i, j),
        effective_kinds(shares),
        len(i),
        int(np.count_nonzero(kinds[i] != kinds[j])),
    )


def _neighbours(stands: Sequence[Stand], sizes: Sequence[int]) -> tuple[Ints, Ints]:
    """Pairs of plants that stand side by side at some time, each once."""
    xy = np.concatenate([s.xy for s in stands])
    radius = np.repeat([s.peak_m for s in stands], sizes)
    begin, end = (np.repeat([getattr(s, name) for s in stands], sizes) for name in ("begin", "end"))
    made = points(xy)
    reach = radius + float(radius.max()) + ADJOIN_M
    i, j = STRtree(made).query(made, predicate="dwithin", distance=reach)
    i, j = i[i < j], j[i < j]
    distance = np.hypot(*(xy[i] - xy[j]).T)
    side = (distance < radius[i] + radius[j] + ADJOIN_M) & (begin[i] < end[j]) & (begin[j] < end[i])
    return i[side].astype(np.intp), j[side].astype(np.intp)
