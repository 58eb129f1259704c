"""Ground cover: how much of a bed's soil lies under leaves, week by week.

Soil under leaves grows fewer weeds and loses less water; how much fewer depends on more than cover, so that
the share itself is shown and nothing is promised.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil, sqrt

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import LEAF, RADIUS, Stand, grid
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground
from gardencanvas.season.course import Weeks

Floats = NDArray[np.float64]

CELL_M = 0.025  # a finger's breadth …
MOST_CELLS = 10_000  # … and coarser in large beds


@dataclass(frozen=True, slots=True, eq=False)
class CoverShare:
    """Shares of a bed's soil by week, shape (weeks,), 0–1.

    ``covered``: under leaves, seen from above; ``shaded``: of the light that falls on the bed from above,
    what the leaves take.
    """

    weeks: Weeks
    covered: Floats
    shaded: Floats

    def within(self, first: date, last: date) -> "CoverShare":
        """Only the weeks from that of the first day to that of the last."""
        a, b = self.weeks.index(first), self.weeks.index(last) + 1
        weeks = Weeks(self.weeks.first + timedelta(days=7 * a), b - a)
        return CoverShare(weeks, self.covered[a:b], self.shaded[a:b])


def cover_share(stands: Sequence[Stand], bed: Bed, weeks: Weeks, places: Floats | None = None) -> CoverShare:
    """How much of a bed the leaves of some stands cover.

    A plant covers a disc of its canopy radius; where several overlap, their ground counts once, and the light
    each lets through is let through by all in turn (Beer–Lambert: 1 − exp(−Σ k L)). Plants of one stand that
    overlap share their leaves' area, as in the stand's own sizes.

    Parameters
    ----------
    stands
        Those that may reach the bed, wherever they are rooted.
    weeks
        Their grid.
    places
        Where to look, evenly over the bed, shape (n, 2); by default a fine grid.

    Returns
    -------
    CoverShare
        Exact to about the bed's rim times a cell (2.5 cm, or a fraction of a larger bed) over its area.
    """
    cells = _cells(bed) if places is None else places
    under = np.zeros((weeks.count, len(cells)), dtype=bool)
    leaf = np.zeros((weeks.count, len(cells)))
    for stand in stands:
        if stand.end == stand.begin:
            continue
        distance = _distance(cells, stand)
        for week in range(stand.begin, stand.end):
            below = distance < stand.sizes[RADIUS, week]
            under[week] |= below
            leaf[week][below] += stand.sizes[LEAF, week]
    return CoverShare(weeks, under.mean(axis=1), np.abs(np.expm1(-leaf)).mean(axis=1))


def bed_cover(garden: Garden, layout: Layout, bed: Bed, catalogue: Catalogue) -> CoverShare:
    """How much of a bed the leaves of a layout's plantings cover."""
    stands = Standing(catalogue, garden.site, layout).of(layout)
    x0, y0, x1, y1 = bed_ground(bed).bounds
    return cover_share(
        [
            s
            for each in stands.values()
            for s in each
            if s.reach[0] < x1 and s.reach[1] < y1 and s.reach[2] > x0 and s.reach[3] > y0
        ],
        bed,
        grid(layout.season),
    )


def _cells(bed: Bed) -> Floats:
    """Middles of the squares of a grid that lie in a bed, shape (n, 2)."""
    ground = bed_ground(bed)
    x0, y0, x1, y1 = ground.bounds
    cell = max(CELL_M, sqrt((x1 - x0) * (y1 - y0) / MOST_CELLS))
    across, down = max(ceil((x1 - x0) / cell), 1), max(ceil((y1 - y0) / cell), 1)
    x = x0 + (np.arange(across) + 0.5) * (x1 - x0) / across
    y = y0 + (np.arange(down) + 0.5) * (y1 - y0) / down
    every = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    inside: Floats = every[shapely.contains_xy(ground, every[:, 0], every[:, 1])]
    return inside if len(inside) else np.array([[*ground.representative_point().coords[0]]])


def _distance(cells: Floats, stand: Stand) -> Floats:
    """Distance of each cell to the stand's nearest station, infinite beyond its widest leaves."""
    stations, made = shapely.points(stand.xy), shapely.points(cells)
    found, distance = STRtree(stations).query_nearest(
        made, max_distance=max(stand.peak_m, 1e-6), return_distance=True, all_matches=False
    )
    nearest = np.full(len(cells), np.inf)
    nearest[found[0]] = distance
    return nearest
