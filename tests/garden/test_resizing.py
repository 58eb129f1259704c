"""Beds made an exact size, against areas and lengths in closed form."""

from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon
from shapely.affinity import rotate

from gardencanvas.garden import outlines
from gardencanvas.garden.resizing import resized, size_of
from tests.garden.makers import bed

SIDE = st.floats(0.3, 8.0).map(lambda v: round(v, 3))
ANGLES = st.sampled_from([0.0, 12.0, 45.0, 90.0, 200.0])


def turned(outline, angle):
    ring = rotate(Polygon(outline), angle, origin=(0, 0)).exterior.coords[:-1]
    return tuple((round(x, 6), round(y, 6)) for x, y in ring)


def shaped(outline, **changes):
    return bed(outline=outline, **changes)


@given(length=SIDE, width=SIDE, to_length=SIDE, to_width=SIDE, angle=ANGLES)
def test_a_rectangle_gets_its_sides_and_keeps_its_first_corner(length, width, to_length, to_width, angle):
    one = shaped(turned(outlines.rectangle((1.0, 2.0), length, width), angle))
    two = resized(one, to_length, to_width)
    size = size_of(two)
    assert size.shape == "rectangle"
    assert (size.length_m, size.width_m) == pytest.approx((to_length, to_width), abs=1e-5)
    assert two.outline[0] == pytest.approx(one.outline[0])
    assert Polygon(two.outline).area == pytest.approx(to_length * to_width, abs=1e-4)


@given(radius=SIDE, to=SIDE)
def test_a_circle_gets_its_diameter_about_its_middle(radius, to):
    one = shaped(outlines.circle((2.0, 3.0), radius))
    assert size_of(one)[1:] == pytest.approx((2 * radius, 2 * radius), abs=1e-4)
    two = resized(one, 2 * to, 2 * to)
    assert size_of(two).shape == "circle"
    middle = Polygon(two.outline).centroid
    assert (middle.x, middle.y) == pytest.approx((2.0, 3.0), abs=1e-5)
    assert Polygon(two.outline).area == pytest.approx(pi * to * to, rel=0.002)  # 72 sides: 0.13 % small


@given(length=SIDE, width=SIDE, angle=ANGLES)
def test_any_other_bed_gets_the_box_round_it_and_its_area_goes_along(length, width, angle):
    corner = ((0.0, 0.0), (4.0, 0.0), (4.0, 1.0), (1.5, 1.0), (1.5, 2.0), (0.0, 2.0))
    one = shaped(turned(corner, angle), holes=(turned(((0.5, 0.5), (0.8, 0.5), (0.8, 0.8)), angle),))
    size = size_of(one)
    assert size.shape == "other"
    assert (size.length_m, size.width_m) == pytest.approx((4.0, 2.0), abs=1e-5)
    two = resized(one, length, width)
    share = length * width / 8.0
    assert Polygon(two.outline).area == pytest.approx(Polygon(corner).area * share, rel=1e-3)
    assert Polygon(two.holes[0]).area == pytest.approx(0.045 * share, rel=1e-2)


def test_a_keyhole_and_a_curved_bed_are_made_larger_as_a_whole():
    keyhole = shaped(outlines.keyhole((0.0, 0.0), 1.0, 0.35, 0.3))
    size = size_of(keyhole)
    twice = resized(keyhole, 2 * size.length_m, 2 * size.width_m)
    assert Polygon(twice.outline).area == pytest.approx(4 * Polygon(keyhole.outline).area, rel=1e-4)
