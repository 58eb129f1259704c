"""From plan to compass: metres east and north of the plan's origin, and back.

On the plan x runs right and y down; ``bearing_deg`` is the compass direction that the top edge faces.
"""

from math import cos, radians, sin

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]


def _turn(bearing_deg: float) -> Floats:
    """Matrix that takes (x, y) rows to (east, north) rows; it is its own inverse."""
    b = radians(bearing_deg)
    return np.array([[cos(b), -sin(b)], [-sin(b), -cos(b)]])


def to_compass(xy: ArrayLike, bearing_deg: float) -> Floats:
    """Plan points (n, 2) as metres east and north (n, 2)."""
    return np.asarray(np.asarray(xy, dtype=np.float64) @ _turn(bearing_deg))


def to_plan(east_north: ArrayLike, bearing_deg: float) -> Floats:
    """Metres east and north (n, 2) as plan points (n, 2)."""
    return np.asarray(np.asarray(east_north, dtype=np.float64) @ _turn(bearing_deg).T)
