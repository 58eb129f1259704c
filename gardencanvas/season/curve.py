"""Daily values from monthly normals: the smoothest curve round the year that keeps every month's mean."""

from collections.abc import Sequence
from functools import cache

import numpy as np
from numpy.typing import NDArray

from gardencanvas.season.dayofyear import MONTH_DAYS, YEAR

Floats = NDArray[np.float64]


@cache
def _operator() -> Floats:
    """Matrix (365, 12) from monthly means to daily values.

    The curve minimises the sum of its squared second differences round the year under twelve exact month
    means. Going round, differences are a convolution: in Fourier terms the conditions of Karush, Kuhn and
    Tucker fall apart day by day, and a system of thirteen (twelve multipliers and the yearly mean) is left.
    It is the same for all climates and solved once.
    """
    means = np.zeros((12, YEAR))
    start = 0
    for month, length in enumerate(MONTH_DAYS):
        means[month, start : start + length] = 1.0 / length
        start += length
    turn = 2.0 * np.pi * np.arange(YEAR // 2 + 1) / YEAR
    stiffness = (2.0 - 2.0 * np.cos(turn)) ** 2
    bends = np.divide(1.0, stiffness, out=np.zeros_like(stiffness), where=stiffness > 0.0)
    shapes = np.fft.irfft(np.fft.rfft(means.T, axis=0) * bends[:, None], n=YEAR, axis=0)
    system = np.block([[means @ shapes, np.ones((12, 1))], [np.ones((1, 12)), np.zeros((1, 1))]])
    solved = np.linalg.solve(system, np.vstack([np.eye(12), np.zeros((1, 12))]))
    operator: Floats = shapes @ solved[:12] + solved[12]
    operator.setflags(write=False)
    return operator


def daily(months: Sequence[float]) -> Floats:
    """Daily values of a climate year from twelve monthly means.

    Parameters
    ----------
    months
        Twelve monthly means, January first.

    Returns
    -------
    ndarray, shape (365,)
        Day 0 is 1 January; the mean over each month is that month's, to rounding.
    """
    return np.asarray(_operator() @ np.asarray(months, dtype=np.float64))
