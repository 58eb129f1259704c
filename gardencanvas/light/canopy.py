"""How canopies share light: Beer–Lambert by layers, by discs and by rows."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]


def taken(k: ArrayLike, leaf_area: ArrayLike) -> Floats:
    """Share of light a closed canopy takes: ``1 − exp(−k L)`` (Monsi & Saeki 1953)."""
    return np.asarray(-np.expm1(-np.asarray(k, dtype=np.float64) * np.asarray(leaf_area, dtype=np.float64)))


def share_below(k: ArrayLike, leaf_area: ArrayLike, cover: ArrayLike) -> Floats:
    """Share of light left under canopies that cover part of the ground.

    Parameters
    ----------
    k
        Extinction coefficient.
    leaf_area
        m² leaf per m² of the canopy's own footprint.
    cover
        Share of the ground below that the footprint covers, 0–1.

    Returns
    -------
    ndarray
        ``1 − cover (1 − exp(−k L))``; with the leaf area of the field ``L·cover`` this is the clumped form
        ``fc (1 − exp(−k L_field / fc))`` taken from the whole.
    """
    return np.asarray(1.0 - np.asarray(cover, dtype=np.float64) * taken(k, leaf_area))


def discs(k: ArrayLike, field_leaf_area: ArrayLike, cover: ArrayLike) -> Floats:
    """Share of light that individual discs take: ``fc (1 − exp(−k L / fc))``, L over the whole ground."""
    part = np.maximum(np.asarray(cover, dtype=np.float64), 1e-12)
    return np.asarray(part * taken(k, np.asarray(field_leaf_area, dtype=np.float64) / part))


def layered(k: ArrayLike, leaf_area: ArrayLike, top_m: ArrayLike, base_m: ArrayLike = 0.0) -> Floats:
    """Share of light that each of several mixed canopies takes.

    The air is cut at every top and underside; in each layer the canopies share what it takes in proportion
    to k × leaf area there, which is spread evenly over each canopy's height (Spitters & Aerts 1983; Keating
    & Carberry 1993). The shares always sum to ``1 − exp(−Σ k L)``, whatever the heights.

    Parameters
    ----------
    k, leaf_area, top_m, base_m
        Shape (..., s) for s canopies over the same ground; leaf area per m² of that ground. A canopy without
        height lies on its underside and takes its part there.

    Returns
    -------
    ndarray, shape (..., s)
    """
    k, leaf, top, base = np.broadcast_arrays(
        *(np.asarray(a, dtype=np.float64) for a in (k, leaf_area, top_m, base_m))
    )
    top = np.maximum(top, base + 1e-9)
    cuts = np.sort(np.concatenate([top, base], axis=-1), axis=-1)[..., ::-1]
    density = k * leaf / (top - base)
    light = np.ones(k.shape[:-1])
    shares = np.zeros(k.shape)
    for layer in range(cuts.shape[-1] - 1):
        upper, lower = cuts[..., layer, None], cuts[..., layer + 1, None]
        depth = density * np.maximum(np.minimum(top, upper) - np.maximum(base, lower), 0.0)
        total = depth.sum(axis=-1)
        # (1 − e^−K)/K tends to 1 in an empty layer.
        part = np.where(total > 1e-12, -np.expm1(-total) / np.maximum(total, 1e-12), 1.0)
        shares += (light * part)[..., None] * depth
        light = light * np.exp(-total)
    return shares


def rows(
    k: ArrayLike, leaf_area: ArrayLike, row_m: ArrayLike, path_m: ArrayLike, height_m: ArrayLike
) -> Floats:
    """Share of light that a crop in rows takes, rows and paths together.

    Between the compressed canopy of its rows and a homogeneous one, weighted by how much sky the paths see
    (Goudriaan 1977; Pronk et al. 2003; Gou et al. 2017).

    Parameters
    ----------
    leaf_area
        Over rows and paths together.
    row_m, path_m, height_m
        Width of a row and of a path, height of the canopy; row and path above 0.
    """
    k, leaf, row, path, height = (
        np.asarray(a, dtype=np.float64) for a in (k, leaf_area, row_m, path_m, height_m)
    )
    compressed = leaf * (row + path) / row
    sky_path = (np.hypot(height, path) - height) / path
    sky_row = (np.hypot(height, row) - height) / row
    through, through_row = np.exp(-k * leaf), np.exp(-k * compressed)
    on_path = sky_path + (1 - sky_path) * through
    on_row = sky_row * through_row + (1 - sky_row) * through
    weight = (on_path - on_row) / (1 - through_row)
    return np.asarray(weight * (1 - through_row) * row / (row + path) + (1 - weight) * (1 - through))
