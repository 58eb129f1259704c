"""The beta growth function and its calibration.

Yin, X., Goudriaan, J., Lantinga, E. A., Vos, J., Spiertz, H. J. (2003): A flexible sigmoid function of
determinate growth. Annals of Botany 91:361–371.
"""

from functools import lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

TENTH = 0.10  # ground cover at the end of the initial stage (FAO-56, chapter 6)


def beta(x: ArrayLike, p: ArrayLike) -> Floats:
    """Share of full growth at a share ``x`` of the time to full growth.

    ``f(x) = (1 + p(1 − x)) x^p`` on 0–1, which is Yin's ``w/wmax`` with ``p = te/(te − tm) > 1``.
    """
    share = np.clip(np.asarray(x, dtype=np.float64), 0.0, 1.0)
    power = np.asarray(p, dtype=np.float64)
    return np.asarray((1.0 + power * (1.0 - share)) * share**power)


def shape_of(end: float, fastest: float) -> float:
    """The exponent p from the time of full growth and the time of fastest growth."""
    return end / (end - fastest)


@lru_cache(maxsize=4096)
def calibrate(x: float, target: float = TENTH) -> float:
    """The exponent p for which growth is ``target`` at a share ``x`` of the time to full growth.

    Found by bisection in 1–60, where f falls with p; the nearer end where no p fits.
    """
    low, high = 1.0 + 1e-9, 60.0
    if float(beta(x, low)) <= target:
        return low
    if float(beta(x, high)) >= target:
        return high
    for _ in range(60):
        middle = (low + high) / 2
        if (1.0 + middle * (1.0 - x)) * x**middle > target:
            low = middle
        else:
            high = middle
    return (low + high) / 2
