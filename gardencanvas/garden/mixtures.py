"""Sequences of varieties along the stations of a planting, in the shortest form that says the same."""

from collections import Counter
from collections.abc import Sequence
from functools import reduce
from math import gcd


def mixture(sequence: Sequence[str]) -> tuple[tuple[str, ...], tuple[int, ...]]:
    """Varieties and shares of a sequence that repeats along the stations.

    A, B, A, B is A, B in turns. Where one comes oftener than another, as in A, A, B, it has a larger share:
    2 to 1, evenly mixed.

    Parameters
    ----------
    sequence
        Ids of varieties in order.

    Returns
    -------
    varieties, shares
        Each variety once, in order; shares are empty where all have the same.
    """
    counts = Counter(sequence)
    return tuple(counts), shortest(tuple(counts.values()))


def shortest(shares: Sequence[int]) -> tuple[int, ...]:
    """Shares by their greatest common divisor; empty where all are the same."""
    if len(set(shares)) <= 1:
        return ()
    common = reduce(gcd, shares)
    return tuple(n // common for n in shares)
