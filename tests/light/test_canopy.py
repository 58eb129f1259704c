"""Shared light: what holds for any canopies."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.light.canopy import discs, layered, share_below, taken

some = st.lists(
    st.tuples(st.floats(0.3, 1.0), st.floats(0.0, 5.0), st.floats(0.05, 2.5), st.floats(0.0, 0.95)),
    min_size=1,
    max_size=6,
)


@given(some)
def test_the_shares_sum_to_what_all_leaves_take(canopies):
    k, leaf, top, part = np.array(canopies).T
    shares = layered(k, leaf, top, top * part)
    assert np.all(shares >= -1e-12)
    assert shares.sum() == pytest.approx(-np.expm1(-(k * leaf).sum()), abs=1e-9)


@given(some)
def test_shares_are_those_of_light_followed_down_in_small_steps(canopies):
    """Independent: dI/dz = Σ k l(z) I integrated by the midpoint rule over four thousand steps of height."""
    k, leaf, top, part = np.array(canopies).T
    base = top * part
    edges = np.linspace(float(top.max()), 0.0, 4001)
    step, middle = edges[0] / 4000, (edges[1:] + edges[:-1]) / 2
    inside = (middle[:, None] <= top) & (middle[:, None] > base)
    # each canopy's leaves on the steps it has, however they fall on its edges
    density = np.where(inside, k * leaf / np.maximum(inside.sum(axis=0) * step, 1e-12), 0.0)
    total = density.sum(axis=1) * step
    light = np.exp(-(np.cumsum(total) - total / 2))
    shares = (density * step * light[:, None]).sum(axis=0)
    thin = (top - base) < 20 * step  # a canopy of fewer steps has no shape left
    if not thin.any():
        assert np.abs(shares - layered(k, leaf, top, base)).max() < 0.02


@given(some, st.randoms())
def test_order_does_not_matter(canopies, random):
    shuffled = list(canopies)
    random.shuffle(shuffled)
    by_canopy = lambda rows: sorted(  # noqa: E731
        zip(map(tuple, rows), layered(*(np.array(rows).T[i] for i in range(3))).tolist(), strict=True)
    )
    for (a, x), (b, y) in zip(by_canopy(canopies), by_canopy(shuffled), strict=True):
        assert a == b
        assert x == pytest.approx(y, abs=1e-9)


@given(some)
def test_growing_taller_never_brings_less(canopies):
    k, leaf, top, _ = np.array(canopies).T
    taller = top.copy()
    taller[0] += 0.5
    assert layered(k, leaf, taller)[0] >= layered(k, leaf, top)[0] - 1e-9


def test_many_places_at_once():
    rng = np.random.default_rng(1)
    k, leaf, top = (
        rng.uniform(0.4, 0.9, (7, 5, 3)),
        rng.uniform(0, 4, (7, 5, 3)),
        rng.uniform(0.1, 2, (7, 5, 3)),
    )
    all_at_once = layered(k, leaf, top)
    assert all_at_once[3, 2] == pytest.approx(layered(k[3, 2], leaf[3, 2], top[3, 2]))


def test_light_below_discs():
    # What discs leave is what they do not take: L over the whole ground is cover times that over a footprint.
    for k, leaf, cover in ((0.6, 3.0, 0.4), (0.8, 1.0, 1.0), (0.5, 2.0, 0.1)):
        assert float(share_below(k, leaf, cover)) == pytest.approx(1 - float(discs(k, leaf * cover, cover)))
    assert float(share_below(0.65, 3.0, 0.0)) == 1.0
    assert float(share_below(0.65, 3.0, 1.0)) == pytest.approx(1 - float(taken(0.65, 3.0)))
