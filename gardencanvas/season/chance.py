"""Quantiles of the normal and of Student's distribution, without scipy on the start path."""

from collections.abc import Callable
from math import atan, erf, pi, sqrt


def normal_below(z: float) -> float:
    """Probability that a standard normal value lies below z."""
    return 0.5 * (1.0 + erf(z / sqrt(2.0)))


def student_below(t: float, df: int) -> float:
    """Probability that Student's t with ``df`` degrees of freedom lies below t.

    The finite series for whole degrees of freedom (Abramowitz & Stegun 26.7.3 and 26.7.4).
    """
    theta = atan(abs(t) / sqrt(df))
    # cos² and sin of theta without calling them: exact for large t too.
    cos2 = df / (df + t * t)
    sin = abs(t) / sqrt(df + t * t)
    if df % 2:
        term, total = sqrt(cos2), 0.0
        for k in range(1, df - 1, 2):
            total += term
            term *= cos2 * (k + 1) / (k + 2)
        both = 2.0 / pi * (theta + sin * total)
    else:
        term, total = 1.0, 0.0
        for k in range(0, df - 1, 2):
            total += term
            term *= cos2 * (k + 1) / (k + 2)
        both = sin * total
    return 0.5 * (1.0 + both) if t >= 0 else 0.5 * (1.0 - both)


def _quantile(below: Callable[[float], float], p: float) -> float:
    if not 0.0 < p < 1.0:
        raise ValueError(f"a probability of {p} has no quantile; it must lie between 0 and 1")
    low, high = -1.0, 1.0
    while below(low) > p:
        low *= 2.0
    while below(high) < p:
        high *= 2.0
    for _ in range(100):
        middle = (low + high) / 2
        low, high = (middle, high) if below(middle) < p else (low, middle)
    return (low + high) / 2


def normal_quantile(p: float) -> float:
    """The standard normal value below which a share p lies."""
    return _quantile(normal_below, p)


def student_quantile(p: float, df: int) -> float:
    """The value of Student's t below which a share p lies."""
    return _quantile(lambda t: student_below(t, df), p)
