"""Yield and density: how the yield of the ground goes with the number of plants on it."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

THINNEST = 0.5  # of the usual density: published ones end there (Ratkowsky 1983; Carmer & Jackobs 1965)


def relative_yield(density: ArrayLike, held_back: ArrayLike, crowd: ArrayLike = 0.0) -> Floats:
    """Yield over that of the usual density: D / (1 − c + c (D + E)).

    Plants with more than twice the usual ground are taken to weigh no more than with twice of it.

    The reciprocal yield law 1/w = a + b N (Shinozaki & Kira 1956; w weight of a plant, N plants per m²) in
    shares of the usual number: D plants weigh ``fit.density.size_at`` each.

    Parameters
    ----------
    density
        D: plants over the usual number.
    held_back
        How far plants hold each other back at the usual density, c = b N / (a + b N): 0 not at all, 1 where
        the yield of the ground is the same at any density.
    crowd
        E: what plants of other crops take, as so many of its own over the usual number (Spitters 1983).
    """
    d, c, e = (np.asarray(x, dtype=np.float64) for x in (density, held_back, crowd))
    return np.asarray(d / (1.0 - c + c * np.maximum(d + e, THINNEST)))
