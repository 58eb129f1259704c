"""Light taken from beside, against rays cast through leafy cylinders."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.light.compass import to_compass
from gardencanvas.light.diffuse import diffuse_share
from gardencanvas.light.neighbours import AZIMUTH_CELLS, ELEVATION_CELLS, G, share_beside, sky
from gardencanvas.light.sun import sun_path
from tests.season.crops_for_tests import POLAR, SITE, SOUTH, TROPICS, site


def cast(where, month, dx, dy, radius, top, base, leaf, at=0.0):
    """The share left, ray by ray: 360 × 90 of the sky and 480 of the sun, Beer's law along each."""
    ((east, north),) = to_compass([(dx, dy)], where.bearing_deg)
    density = G * leaf / (top - base)

    def passes(azimuth, elevation):
        along = east * np.sin(azimuth) + north * np.cos(azimuth)
        inside = along**2 - (east**2 + north**2 - radius**2)
        half = np.sqrt(np.maximum(inside, 0.0))
        tangent = np.tan(elevation)
        enters = np.maximum(np.maximum(along - half, max(base - at, 0.0) / tangent), 0.0)
        leaves = np.minimum(along + half, (top - at) / tangent)
        way = np.maximum(leaves - enters, 0.0) / np.cos(elevation)
        return np.exp(-density * np.where(inside > 0.0, way, 0.0))

    azimuth, elevation = np.meshgrid(
        (np.arange(360) + 0.5) * np.pi / 180, (np.arange(90) + 0.5) * np.pi / 180
    )
    weight = np.sin(elevation) * np.cos(elevation)
    even = float((weight * passes(azimuth, elevation)).sum() / weight.sum())
    path = sun_path(where.latitude_deg, 480)
    beam = float(
        (path.weight[month] * passes(path.azimuth[month], np.maximum(path.elevation[month], 1e-6))).sum()
    )
    diffuse = float(diffuse_share(where.climate)[month])
    return diffuse * even + (1 - diffuse) * beam


CANOPIES = ((1.8, 0.0, 3.0, 0.0), (1.8, 0.8, 3.0, 0.2), (0.6, 0.0, 3.0, 0.2), (2.5, 0.0, 1.5, 0.3))


@pytest.mark.parametrize("month", [2, 5, 8])
@pytest.mark.parametrize("direction", [0, 90, 180, 225])
def test_against_rays(month, direction):
    where = site(bearing_deg=30.0)
    for distance in (0.4, 0.6, 0.8, 1.5):
        dx, dy = distance * np.sin(np.radians(direction)), -distance * np.cos(np.radians(direction))
        for top, base, leaf, at in CANOPIES:
            got = float(share_beside(where, month, dx, dy, 0.3, top, base, leaf, at))
            want = cast(where, month, dx, dy, 0.3, top, base, leaf, at)
            assert got == pytest.approx(want, abs=0.065)


def test_at_the_rim_itself():
    for month in (2, 5, 8):
        for top, base, leaf, at in CANOPIES:
            got = float(share_beside(SITE, month, 0.0, 0.31, 0.3, top, base, leaf, at))
            assert got == pytest.approx(cast(SITE, month, 0.0, 0.31, 0.3, top, base, leaf, at), abs=0.13)


def test_the_mean_error_is_small():
    rng = np.random.default_rng(9)
    errors = []
    for _ in range(150):
        distance, angle = rng.uniform(0.4, 2.0), rng.uniform(0, 2 * np.pi)
        canopy = (distance * np.sin(angle), distance * np.cos(angle), 0.3, rng.uniform(0.4, 2.2), 0.0, 3.0)
        month = int(rng.integers(12))
        errors.append(float(share_beside(SITE, month, *canopy)) - cast(SITE, month, *canopy))
    assert abs(np.mean(errors)) < 0.01
    assert np.std(errors) < 0.025


places = st.sampled_from([SITE, SOUTH, TROPICS, POLAR])


@given(
    places, st.integers(0, 11), st.floats(-3, 3), st.floats(-3, 3), st.floats(0.0, 1.0), st.floats(0.1, 3.0),
    st.floats(0.0, 0.9), st.floats(0.0, 6.0), st.floats(0.0, 1.0),
)  # fmt: skip
def test_a_share_is_a_share(where, month, dx, dy, radius, top, part, leaf, at):
    left = float(share_beside(where, month, dx, dy, radius, top, top * part, leaf, at))
    assert 0.0 <= left <= 1.0 + 1e-12
    more = float(share_beside(where, month, dx, dy, radius, top, top * part, leaf + 0.5, at))
    assert more <= left + 1e-9


def test_mirrored_east_to_west_and_turned():
    rng = np.random.default_rng(2)
    dx, dy = rng.uniform(-2, 2, (2, 200))
    month = rng.integers(0, 12, 200)
    here = share_beside(SITE, month, dx, dy, 0.3, 1.8, 0.2, 3.0)
    assert share_beside(SITE, month, -dx, dy, 0.3, 1.8, 0.2, 3.0) == pytest.approx(here, abs=0.006)
    # Plan turned a quarter clockwise: (x, y) to (-y, x), the top edge faces a quarter further left.
    there = share_beside(site(bearing_deg=270.0), month, -dy, dx, 0.3, 1.8, 0.2, 3.0)
    assert there == pytest.approx(here, abs=1e-9)


def test_under_a_canopy_and_below_its_height_of_sight_nothing_is_taken():
    assert float(share_beside(SITE, 5, 0.1, 0.0, 0.3, 1.8, 0.0, 3.0)) == 1.0
    assert float(share_beside(SITE, 5, 0.6, 0.0, 0.3, 0.5, 0.0, 3.0, 0.5)) == 1.0
    assert float(share_beside(SITE, 5, 0.6, 0.0, 0.0, 0.5, 0.0, 3.0)) == 1.0


def test_the_south_side_counts_in_the_north():
    month = np.arange(12)
    south_of_it = share_beside(SITE, month, 0.0, 0.6, 0.3, 1.8, 0.0, 3.0)
    north_of_it = share_beside(SITE, month, 0.0, -0.6, 0.3, 1.8, 0.0, 3.0)
    assert np.all(south_of_it < north_of_it)
    south_of_it = share_beside(SOUTH, month, 0.0, 0.6, 0.3, 1.8, 0.0, 3.0)
    north_of_it = share_beside(SOUTH, month, 0.0, -0.6, 0.3, 1.8, 0.0, 3.0)
    assert np.all(south_of_it > north_of_it)


def test_the_whole_sky_is_one():
    for where in (SITE, SOUTH, TROPICS, POLAR):
        light = sky(where).light
        assert light.shape == (12, AZIMUTH_CELLS + 1, ELEVATION_CELLS + 1)
        assert light[:, -1, -1] == pytest.approx(1.0)
        # It never falls on the way round and up.
        assert np.all(np.diff(light, axis=1) >= 0.0)
        assert np.all(np.diff(light, axis=2) >= -1e-12)
