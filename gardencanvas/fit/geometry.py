"""Areas where two footprints overlap.

Footprints are discs. shapely's buffered circles are inscribed polygons, up to 1.4 % low in a thin lens, so
the exact formula decides.
"""

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

SAME_M = 1e-12  # centres nearer than this are one point: the formula divides by their distance
TOUCH_M = 0.001  # footprints that meet by less than this only touch


def lens_area(r: Floats, s: Floats, d: Floats) -> Floats:
    """Area common to two discs of radii ``r`` and ``s`` whose centres lie ``d`` apart, m².

    Two circular segments: r² acos((d² + r² − s²) / 2dr) + s² acos((d² + s² − r²) / 2ds)
    − ½ √((s + r − d)(d + r − s)(d − r + s)(d + r + s)).

    Parameters
    ----------
    r, s, d
        Radii and distance, metres; arrays that broadcast together.

    Returns
    -------
    ndarray
        0 where the discs lie apart, the whole smaller disc where it lies inside the larger one.
    """
    r, s, d = np.broadcast_arrays(r, s, d)
    small = np.minimum(r, s)
    area: Floats = np.where(d < r + s, np.pi * small * small, 0.0)
    cut = (d < r + s) & (d > np.abs(r - s) + SAME_M) & (small > 0.0)
    area[cut] = crossing_area(r[cut], s[cut], d[cut])
    return area


def crossing_area(r: Floats, s: Floats, d: Floats) -> Floats:
    """Lens of discs whose rims are known to cross: |r−s| < d < r+s, all positive."""
    rr, ss, dd = r * r, s * s, d * d
    p = rr * np.arccos(np.clip((dd + rr - ss) / (2.0 * d * r), -1.0, 1.0))
    q = ss * np.arccos(np.clip((dd + ss - rr) / (2.0 * d * s), -1.0, 1.0))
    triangles = (r + s - d) * (d + r - s) * (d - r + s) * (d + r + s)
    area: Floats = p + q - 0.5 * np.sqrt(np.maximum(triangles, 0.0))
    return area
