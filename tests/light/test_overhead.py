"""Light under one canopy, against rays cast through it and against its limits."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.light.overhead import taken_under
from tests.light.rays import even_sky, on_disc

depths, heights = st.floats(0.0, 6.0), st.floats(0.0, 20.0)


def by_rays(leaf, height):
    """Share of an even sky's light taken from places under a cylinder of radius 1 that stands on them.

    ``leaf`` is the leaf area per m² that half of which is met; ray by ray, from 200 places.
    """
    x, y = on_disc(0.0, 0.0, 1.0, 200)
    azimuth, elevation, weight = even_sky(24, 24)
    along = x[:, None] * np.sin(azimuth) + y[:, None] * np.cos(azimuth)
    rim = -along + np.sqrt(along**2 + 1.0 - (x * x + y * y)[:, None])
    way = np.minimum(rim / np.cos(elevation), height / np.sin(elevation))
    return 1.0 - float((np.exp(-0.5 * leaf / height * way) @ weight).mean())


@pytest.mark.parametrize("height", [0.2, 0.5, 1.0, 2.0, 5.0])
@pytest.mark.parametrize("leaf", [0.5, 1.5, 3.0, 6.0])
def test_it_takes_what_rays_lose(leaf, height):
    """k L of the same leaves as a closed canopy, by the same rays through a slab without a rim."""
    closed = 1.0 - by_rays_closed(leaf)
    depth = np.array([-np.log(closed)])
    assert taken_under(depth, np.array([height]))[0] == pytest.approx(by_rays(leaf, height), abs=0.02)


def by_rays_closed(leaf):
    _, elevation, weight = even_sky(1, 400)
    return 1.0 - float(np.exp(-0.5 * leaf / np.sin(elevation)) @ weight)


@given(depths)
def test_a_low_wide_canopy_is_a_closed_one(depth):
    """1 − exp(−k L), Monsi & Saeki 1953."""
    assert taken_under(np.array(depth), np.array(0.0)) == pytest.approx(1.0 - np.exp(-depth), abs=1e-9)


@given(depths, heights, st.floats(0.0, 5.0))
def test_a_slenderer_one_takes_less_and_a_leafier_one_more(depth, height, more):
    here = float(taken_under(np.array(depth), np.array(height)))
    assert float(taken_under(np.array(depth), np.array(height + more))) <= here + 1e-9
    assert float(taken_under(np.array(depth + more), np.array(height))) >= here - 1e-9
    assert 0.0 <= here <= 1.0
