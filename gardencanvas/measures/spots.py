"""Places spread evenly over a bed, that no row of plants can keep step with."""

from functools import lru_cache

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground

Floats = NDArray[np.float64]

PLACES = 600  # what a share of the bed is told from: right to about 2 %
# Steps of the R₂ sequence: 1/g and 1/g² with g³ = g + 1 (Roberts 2018, from memory).
_STEPS = np.array([0.7548776662466927, 0.5698402909980532])


@lru_cache(maxsize=1024)
def places(bed: Bed, count: int = PLACES) -> Floats:
    """About ``count`` places in a bed, shape (n, 2), plan metres, read-only; always the same ones."""
    ground = bed_ground(bed)
    x0, y0, x1, y1 = ground.bounds
    box = max((x1 - x0) * (y1 - y0), 1e-9)
    tries = int(min(count * box / max(ground.area, 1e-9), 50 * count)) + 1
    xy = np.array([x0, y0]) + (np.arange(1, tries + 1)[:, None] * _STEPS % 1.0) * [x1 - x0, y1 - y0]
    inside: Floats = xy[shapely.contains_xy(ground, xy[:, 0], xy[:, 1])]
    if len(inside) == 0:
        inside = np.array([ground.representative_point().coords[0]])
    inside.setflags(write=False)
    return inside
