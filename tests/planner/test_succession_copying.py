"""Copies of a pattern keep to free ground of the bed as long as there is any."""

from datetime import date

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon

from gardencanvas.garden.pattern import Block, RingPattern, Rows
from gardencanvas.planner.succession.copying import Stay, ground_taken, laid_beside
from tests import strategies
from tests.garden.makers import bed

SPRING = (date(2027, 4, 1), date(2027, 6, 1))
SUMMER = (date(2027, 7, 1), date(2027, 9, 1))
ROW = Rows(origin=(0.0, 0.0), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3)
BED = bed(length=3.0, width=1.2)  # four rows wide


def tops(places):
    return [round(p.pattern.origin[1], 6) for p in places]


def test_rows_fill_the_bed_row_by_row_and_then_go_on():
    places = laid_beside(ROW, BED, [SPRING] * 6, [])
    assert tops(places) == [0.3, 0.6, 0.9, 1.2, 1.5]
    assert [p.free for p in places] == [True, True, True, False, False]


def test_a_row_in_the_middle_of_the_bed_finds_room_on_both_sides():
    middle = Rows(origin=(0.0, 0.6), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3)
    places = laid_beside(middle, BED, [SPRING] * 4, [])
    assert tops(places) == [0.9, 0.3, 0.0]
    assert all(p.free for p in places)


def test_short_rows_go_on_along_the_bed():
    short = Rows(origin=(0.0, 0.0), length_m=1.5, spacing_m=0.15, row_spacing_m=0.6)
    places = laid_beside(short, BED, [SPRING] * 4, [])
    assert [p.pattern.origin for p in places] == [(0.0, 0.6), (1.5, 0.0), (1.5, 0.6)]


def test_ground_taken_at_another_time_is_free():
    second = Polygon([(0, 0.3), (3, 0.3), (3, 0.6), (0, 0.6)])
    places = laid_beside(ROW, BED, [SPRING, SUMMER], [Stay(second, *SPRING)])
    assert tops(places) == [0.3]
    places = laid_beside(ROW, BED, [SPRING, SPRING], [Stay(second, *SPRING)])
    assert tops(places) == [0.6]


def test_ground_that_an_earlier_part_has_left_is_taken_before_the_path():
    """A full bed in spring: in summer the first row's ground is the nearest, then the second's."""
    places = laid_beside(ROW, BED, [*[SPRING] * 4, SUMMER, SUMMER], [])
    assert tops(places) == [0.3, 0.6, 0.9, 0.0, 0.3]
    assert all(p.free for p in places)


def test_it_turns_with_the_pattern():
    upright = Rows(origin=(1.0, 0.0), angle_deg=90.0, length_m=1.2, spacing_m=0.15, row_spacing_m=0.3)
    places = laid_beside(upright, BED, [SPRING] * 4, [])
    assert [p.pattern.origin[0] for p in places] == pytest.approx([0.7, 1.3, 0.4])


def test_rings_stand_side_by_side():
    ring = RingPattern(origin=(0.6, 0.6), radius_m=0.4, spacing_m=0.2)
    (place,) = laid_beside(ring, BED, [SPRING] * 2, [])
    assert place.free
    assert place.pattern.origin == pytest.approx((1.6, 0.6))


def shared(a, b):
    return shapely.intersection(a, b, grid_size=1e-6).area  # as on outlines alike but for the last digits


def test_no_two_copies_lie_on_one_spot_that_differs_in_the_last_digits():
    turned = Block(origin=(0.63, 0.2), angle_deg=217.0, length_m=1.33, width_m=0.6, spacing_m=0.1)
    places = laid_beside(turned, bed(x=-1.0, y=-1.0, length=8.0, width=5.0), [SPRING] * 7, [])
    assert len({p.pattern.origin for p in places}) == 6


@given(strategies.patterns(), st.booleans(), st.integers(1, 6))
def test_free_copies_overlap_nothing_and_lie_in_the_bed(pattern, in_bed, number):
    within = bed(x=-1.0, y=-1.0, length=8.0, width=5.0) if in_bed else None
    places = laid_beside(pattern, within, [SPRING] * (number + 1), [])
    assert len(places) == number
    grounds = [ground_taken(p.pattern) for p in places if p.free]
    for i, ground in enumerate(grounds):
        assert shared(ground, ground_taken(pattern)) <= 1e-4
        assert all(shared(ground, other) <= 1e-4 for other in grounds[:i])
        assert not in_bed or Polygon(within.outline).buffer(1e-5).covers(ground)


@given(strategies.patterns(), st.integers(1, 4))
def test_copies_are_the_pattern_moved(pattern, number):
    for place in laid_beside(pattern, None, [SPRING] * (number + 1), []):
        steps = place.pattern.stations - pattern.stations
        assert np.ptp(steps, axis=0) == pytest.approx(0.0, abs=1e-9)
        assert np.hypot(*steps[0]) > 0.0
