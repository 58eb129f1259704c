"""Degree-days: warmth above a base temperature and not above a top, day by day.

Where daily minimum and maximum are known a day's course is taken as a sine (Baskerville & Emin 1969,
Ecology 50:514); where only means are, daily means are taken as normally distributed around theirs and the
expectation is used, because a mean just below the base still brings warm days. Both are cut off
horizontally at the top.
"""

from math import erf, exp, pi, sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

DAY_TO_DAY_C = 3.0  # standard deviation of a day's mean; 2.5–4 °C in mid latitudes, from memory


def average(low_c: ArrayLike, high_c: ArrayLike, base_c: ArrayLike) -> Floats:
    """Degree-days by the average of minimum and maximum, the plainest method."""
    middle = (np.asarray(low_c, dtype=np.float64) + np.asarray(high_c, dtype=np.float64)) / 2
    return np.asarray(np.maximum(middle - np.asarray(base_c, dtype=np.float64), 0.0))


def sine_excess(mean_c: ArrayLike, half_range_c: ArrayLike, over_c: ArrayLike) -> Floats:
    """Mean excess over a threshold of a day whose temperature is a sine, °C.

    ``[(M − T)(π/2 − θ) + W cos θ] / π`` with ``θ = asin((T − M)/W)`` where the sine crosses T
    (Baskerville & Emin 1969).
    """
    above = np.asarray(mean_c, dtype=np.float64) - np.asarray(over_c, dtype=np.float64)
    half = np.maximum(np.asarray(half_range_c, dtype=np.float64), 1e-9)
    angle = np.arcsin(np.clip(-above / half, -1.0, 1.0))
    return np.asarray((above * (pi / 2 - angle) + half * np.cos(angle)) / pi)


def normal_excess(mean_c: ArrayLike, spread_c: float, over_c: ArrayLike) -> Floats:
    """Expected excess over a threshold of a normally distributed temperature, °C.

    ``(μ − T) Φ(z) + s φ(z)`` with ``z = (μ − T)/s``: the partial expectation of the normal distribution.
    """
    above = np.asarray(mean_c, dtype=np.float64) - np.asarray(over_c, dtype=np.float64)
    flat = [
        x * 0.5 * (1 + erf(x / spread_c / sqrt(2)))
        + spread_c * exp(-0.5 * (x / spread_c) ** 2) / sqrt(2 * pi)
        for x in above.ravel().tolist()
    ]
    return np.asarray(flat, dtype=np.float64).reshape(above.shape)


def degree_days(
    mean_c: ArrayLike,
    base_c: float,
    top_c: float,
    *,
    half_range_c: ArrayLike | None = None,
    spread_c: float = DAY_TO_DAY_C,
) -> Floats:
    """Degree-days of each day between base and top.

    Parameters
    ----------
    mean_c
        Mean temperature of the days, any shape.
    base_c, top_c
        No growth below the one, no more growth above the other; ``top_c`` above ``base_c``.
    half_range_c
        Half the day's range; where absent the normal expectation with ``spread_c`` is taken.

    Raises
    ------
    ValueError
        If the top does not lie above the base.
    """
    if not top_c > base_c:
        raise ValueError(f"the top temperature {top_c} °C must lie above the base {base_c} °C")
    if half_range_c is None:
        return normal_excess(mean_c, spread_c, base_c) - normal_excess(mean_c, spread_c, top_c)
    return sine_excess(mean_c, half_range_c, base_c) - sine_excess(mean_c, half_range_c, top_c)
