"""Areas against published values, shapely's polygons, and laws; near pairs against every distance."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.fit.geometry import lens_area
from gardencanvas.fit.near import box, near_pairs, own_pairs
from tests.oracles.oracle_rows import rows

radii = st.floats(0.005, 3.0)
gaps = st.floats(0.0, 7.0)


def lens(r, s, d):
    return float(lens_area(np.array(r), np.array(s), np.array(d)))


def discs(r, s, d, quarter=1024):
    a = shapely.Point(0.0, 0.0).buffer(r, quad_segs=quarter)
    return a, shapely.Point(d, 0.0).buffer(s, quad_segs=quarter)


@pytest.mark.parametrize(
    ("row", "r", "s", "d"), [("O083", 1.0, 1.0, 1.0), ("O084", 0.3, 0.2, 0.4), ("O085", 0.25, 0.15, 0.05)]
)
def test_known_lenses(row, r, s, d):
    assert lens(r, s, d) == pytest.approx(float(rows()[row]["expected"]), abs=1e-6)


def test_two_unit_discs_at_distance_one_in_closed_form():
    assert lens(1.0, 1.0, 1.0) == pytest.approx(2 * math.pi / 3 - math.sqrt(3) / 2, rel=1e-12)


@given(radii, radii, gaps)
def test_a_lens_is_that_of_fine_polygons(r, s, d):
    """A buffer of 4·1024 sides is inscribed: each disc is 4e-7 of its area too small."""
    a, b = discs(r, s, d)
    error = 4e-7 * math.pi * (r * r + s * s) + 1e-12
    assert lens(r, s, d) == pytest.approx(a.intersection(b).area, abs=2 * error)


@given(radii, radii, gaps)
def test_a_lens_is_the_same_from_both_sides_and_never_more_than_the_smaller_disc(r, s, d):
    area = lens(r, s, d)
    assert area == pytest.approx(lens(s, r, d), rel=1e-9, abs=1e-12)
    assert 0.0 <= area <= math.pi * min(r, s) ** 2 * (1 + 1e-9)


@given(radii, radii, gaps, st.floats(0.0, 1.0))
def test_a_lens_shrinks_with_distance(r, s, d, more):
    assert lens(r, s, d + more) <= lens(r, s, d) + 1e-9


points = st.lists(st.tuples(st.floats(-3, 3), st.floats(-3, 3)), min_size=1, max_size=30).map(np.array)


@given(points, points, st.floats(0.01, 4.0))
def test_near_pairs_are_all_pairs_that_near(a, b, reach):
    found = near_pairs(a, b, box(a), box(b), reach)
    distance = np.hypot(a[:, None, 0] - b[:, 0], a[:, None, 1] - b[:, 1])
    surely, perhaps = distance < reach - 1e-9, distance < reach + 1e-9
    pairs = set(zip(found.i.tolist(), found.j.tolist(), strict=True))
    assert set(zip(*(x.tolist() for x in np.nonzero(surely)), strict=True)) <= pairs
    assert pairs <= set(zip(*(x.tolist() for x in np.nonzero(perhaps)), strict=True))
    np.testing.assert_allclose(found.distance_m, distance[found.i, found.j], atol=1e-12)


def test_many_points_are_paired_as_few_are():
    """The tree that serves large sets finds the same pairs, in the same order, as plain distances."""
    draw = np.random.default_rng(3)
    a, b = draw.uniform(0, 4, (400, 2)), draw.uniform(0, 4, (300, 2))
    found = near_pairs(a, b, box(a), box(b), 0.35)
    i, j = np.nonzero(np.hypot(a[:, None, 0] - b[:, 0], a[:, None, 1] - b[:, 1]) < 0.35)
    assert found.i.tolist() == i.tolist()
    assert found.j.tolist() == j.tolist()


def test_no_point_is_its_own_neighbour():
    xy = np.array([[0.0, 0.0], [0.1, 0.0], [0.0, 0.0]])
    found = own_pairs(xy, 0.05)
    assert set(zip(found.i.tolist(), found.j.tolist(), strict=True)) == {(0, 2), (2, 0)}
