"""Published measures of growing crops together, from relative yields."""

from collections.abc import Sequence

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

# Upper end of what meta-analyses report as means: land saved 16–29 %, that is 1.19–1.41 (Li et al. 2020).
LER_DOUBTFUL = 1.41


def ler(relative: ArrayLike) -> Floats:
    """Land equivalent ratio: Σ Yᵢ/Mᵢ (Mead & Willey 1980), over the last axis."""
    return np.asarray(np.sum(np.asarray(relative, dtype=np.float64), axis=-1))


def ater(relative: ArrayLike, days: ArrayLike, total_days: float) -> Floats:
    """Area-time equivalency ratio: Σ (Yᵢ/Mᵢ) tᵢ / T (Hiebsch & McCollum 1987), over the last axis."""
    area_time = np.asarray(relative, dtype=np.float64) * np.asarray(days, dtype=np.float64)
    return np.asarray(area_time.sum(axis=-1) / total_days)


def apart_in_time(one: tuple[float, float], two: tuple[float, float]) -> float:
    """Temporal niche differentiation of two crops' first and last days (Yu et al. 2015).

    1 − days together / days from the first to the last: 0 for the same time, 1 for times apart.
    """
    together = max(min(one[1], two[1]) - max(one[0], two[0]), 0.0)
    whole = max(one[1], two[1]) - min(one[0], two[0])
    return 1.0 - together / whole if whole > 0.0 else 0.0


def competitive_ratio(relative: Sequence[float], land: Sequence[float]) -> float:
    """How much stronger the first of two crops competes: (L₁/L₂)(Z₂/Z₁) (Willey & Rao 1980)."""
    return relative[0] / relative[1] * land[1] / land[0]
