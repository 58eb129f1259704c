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
    means; the conditions of Karush, Kuhn and Tucker make that one linear system, which is the same for all
    climates (month lengths are all it holds) and so is solved once.
    """
    second = np.roll(np.eye(YEAR), -1, axis=1) - 2 * np.eye(YEAR) + np.roll(np.eye(YEAR), 1, axis=1)
    means = np.zeros((12, YEAR))
    start = 0
    for month, length in enumerate(MONTH_DAYS):
        means[month, start : start + length] = 1.0 / length
        start += length
    system = np.block([[2.0 * second.T @ second, means.T], [means, np.zeros((12, 12))]])
    right = np.vstack([np.zeros((YEAR, 12)), np.eye(12)])
    operator: Floats = np.linalg.solve(system, right)[:YEAR]
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
