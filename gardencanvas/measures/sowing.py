"""How many seeds to sow so that enough come up."""

from functools import lru_cache
from math import ceil, exp, lgamma, log, log1p, sqrt

SURE = 0.95  # enough come up 95 times in 100
_Z = 1.645  # of the normal distribution, one-sided 0.95
MOST = 2_000_000_000  # more than any layout takes at the lowest germination the catalogue allows


def come_up(sown: int, wanted: int, share: float) -> float:
    """Probability that of so many seeds at least ``wanted`` come up: the upper tail of the binomial.

    Parameters
    ----------
    share
        Of seeds that come up, each by itself, 0–1.
    """
    if wanted <= 0:
        return 1.0
    if sown < wanted or share <= 0.0:
        return 0.0
    if share >= 1.0:
        return 1.0
    # the shorter tail, summed from its largest term outwards by the ratio of neighbouring terms
    mean = sown * share
    if wanted > mean:
        return _sum(sown, share, wanted, sown, wanted)
    return 1.0 - _sum(sown, share, 0, wanted - 1, wanted - 1)


def _sum(n: int, p: float, low: int, high: int, largest: int) -> float:
    """Σ C(n, k) pᵏ (1 − p)ⁿ⁻ᵏ for k from low to high, which rises to ``largest`` and falls from it."""
    first = exp(
        lgamma(n + 1)
        - lgamma(largest + 1)
        - lgamma(n - largest + 1)
        + largest * log(p)
        + (n - largest) * log1p(-p)
    )
    odds = p / (1.0 - p)
    total, term = first, first
    for k in range(largest + 1, high + 1):
        term *= (n - k + 1) / k * odds
        total += term
        if term < total * 1e-17:
            break
    term = first
    for k in range(largest - 1, low - 1, -1):
        term *= (k + 1) / (n - k) / odds
        total += term
        if term < total * 1e-17:
            break
    return total


@lru_cache(maxsize=4096)
def seeds_for(wanted: int, share: float, sure: float = SURE) -> int:
    """Fewest seeds m with P(at least ``wanted`` of m come up) ≥ ``sure``.

    Begins at the normal approximation with continuity correction, then seeks the exact number near it.

    Raises
    ------
    ValueError
        If no number will do, or more than two thousand million would be needed.
    """
    if wanted <= 0:
        return 0
    if not 0.0 < share <= 1.0:
        raise ValueError(f"a share of {share} cannot come up; allowed is more than 0, at most 1")
    if share == 1.0:
        return wanted
    spread = _Z * sqrt(share * (1 - share))
    root = (spread + sqrt(spread**2 + 4 * share * max(wanted - 0.5, 0.0))) / (2 * share)
    m = max(ceil(root**2), wanted)
    if m > MOST:
        raise ValueError(f"{wanted} plants at a share of {share} need more than {MOST:,} seeds")
    return _fewest(m, wanted, share, sure)


def _fewest(near: int, wanted: int, share: float, sure: float) -> int:
    """The least number that does, sought from one near it: the chance rises with every seed."""
    low, high, step = wanted - 1, near, 1
    while come_up(high, wanted, share) < sure:
        low, high, step = high, high + step, step * 2
    step = 1
    while high - step > low and come_up(high - step, wanted, share) >= sure:
        high, step = high - step, step * 2
    low = max(low, high - step)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if come_up(middle, wanted, share) >= sure else (middle, high)
    return high


@lru_cache(maxsize=4096)
def cells_filled(cells: int, seeds_each: int, share: float) -> float:
    """Probability that every one of so many cells has at least one seedling: (1 − (1 − p)ᵏ)ᶜ."""
    return float((1.0 - (1.0 - share) ** seeds_each) ** cells)
