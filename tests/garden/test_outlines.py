"""Outlines of beds against closed forms."""

from math import asin, pi, sqrt

import pytest
from shapely import LineString, Point, Polygon

from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.outlines import circle, curved, is_rectangle, keyhole, rectangle, with_corner


def test_a_circle_has_the_area_of_a_regular_polygon_of_72_sides():
    """½ n r² sin(2π/n), which is 0.13 % below π r²."""
    area = Polygon(circle((1.0, 2.0), 1.5)).area
    assert area == pytest.approx(pi * 1.5**2, rel=0.0013)
    assert area < pi * 1.5**2


@pytest.mark.parametrize(("radius", "path", "reach"), [(1.5, 0.4, 0.35), (1.2, 0.5, 0.25), (2.0, 0.3, 0.6)])
def test_a_keyhole_is_a_disc_less_its_path_and_place_to_stand(radius, path, reach):
    """Disc − place to stand − the path between them, by the areas of circular segments."""
    bed = Polygon(keyhole((0.0, 0.0), radius, path, reach))
    assert bed.is_valid
    half = path / 2

    def strip(r):  # area of the part of a disc below the centre within half a path of the middle line
        return half * sqrt(r * r - half * half) + r * r * asin(half / r)

    expected = pi * radius**2 - pi * reach**2 - (strip(radius) - strip(reach))
    assert bed.area == pytest.approx(expected, rel=0.004)
    assert not bed.contains(Point(0.0, (reach + radius) / 2))  # y points down: the path comes from below
    assert bed.contains(Point(0.0, -(reach + radius) / 2))


def test_a_keyhole_with_no_room_to_stand_is_refused():
    with pytest.raises(Refusal, match="keyhole"):
        keyhole((0, 0), 1.0, 0.5, 0.2)


def test_a_curved_edge_goes_through_all_its_points_and_does_not_cross_itself():
    points = ((0.0, 0.0), (3.0, 0.2), (3.4, 1.5), (1.5, 1.1), (0.2, 1.4))
    outline = curved(points)
    line = LineString([*outline, outline[0]])
    assert line.is_simple
    for point in points:
        assert line.distance(Point(point)) < 1e-6


def test_a_curve_through_a_regular_polygon_nears_its_circle():
    """Twelve points of a circle: the curve between them stays within 1 % of the radius."""
    outline = curved(circle((0.0, 0.0), 2.0)[::6])
    radii = [Point(p).distance(Point(0, 0)) for p in outline]
    assert min(radii) > 1.98
    assert max(radii) < 2.02


def test_a_rectangle_pulled_at_a_corner_stays_one():
    before = rectangle((0.0, 0.0), 3.0, 1.0)
    after = with_corner(before, 2, (3.5, 1.2))
    assert is_rectangle(after)
    assert after[0] == before[0]
    assert after[2] == (3.5, 1.2)
