"""Places spread evenly over a bed, that no row of plants can keep step with."""

from functools import lru_cache
from math import ceil, sqrt

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground

Floats = NDArray[np.float64]

PLACES = 900  # what a share of the bed is told from: right to 1 % (standard deviation)
SEED = 20_270_102


@lru_cache(maxsize=1024)
def places(bed: Bed, count: int = PLACES) -> Floats:
    """About ``count`` places in a bed, shape (n, 2), plan metres, read-only; always the same ones.

    One at random in each square of a grid: as even as the grid, without its regularity.
    """
    ground = bed_ground(bed)
    x0, y0, x1, y1 = ground.bounds
    side = sqrt(max(ground.area, 1e-9) / count)
    across, down = ceil((x1 - x0) / side), ceil((y1 - y0) / side)
    square = np.stack(np.meshgrid(np.arange(across), np.arange(down)), axis=-1).reshape(-1, 2)
    shift = np.random.default_rng(SEED).random(square.shape)
    xy = np.array([x0, y0]) + (square + shift) / [across, down] * [x1 - x0, y1 - y0]
    inside: Floats = xy[shapely.contains_xy(ground, xy[:, 0], xy[:, 1])]
    if len(inside) == 0:
        inside = np.array([ground.representative_point().coords[0]])
    inside.setflags(write=False)
    return inside
