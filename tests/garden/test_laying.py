"""Patterns laid into a bed: where they lie, and how many plants they hold."""

from math import cos, radians, sin

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import Polygon, covers, points
from shapely.affinity import rotate

from gardencanvas.garden import laying
from gardencanvas.garden.ground import Bed
from tests.garden.makers import bed

angles = st.floats(-89, 89)
spacings = st.floats(0.05, 0.6)


def turned(angle_deg, length=3.6, width=1.2, x=0.0, y=0.0):
    """A rectangular bed turned clockwise on the plan about its first corner."""
    a = radians(angle_deg)

    def at(u, v):
        return x + u * cos(a) - v * sin(a), y + u * sin(a) + v * cos(a)

    ring = (at(0, 0), at(length, 0), at(length, width), at(0, width))
    return Bed(id="b", name="b", outline=ring), at


@given(angles, st.floats(0, 3.6), st.floats(0, 1.2), spacings, st.floats(0.05, 1.0))
def test_a_row_follows_the_long_side_of_a_turned_bed(angle, u, v, in_row, between):
    here, at = turned(angle)
    row = laying.row_in(here, at(u, v), in_row, max(between, in_row), step_m=0.0)
    assert row is not None
    stations = row.stations
    assert len(stations) == int(3.6 / in_row + 1e-6)  # ⌊length / spacing⌋
    assert covers(Polygon(here.outline).buffer(1e-6), points(stations)).all()
    along = np.array([cos(radians(angle)), sin(radians(angle))])
    if len(stations) > 1:
        step = np.diff(stations, axis=0)
        np.testing.assert_allclose(step @ along, in_row, atol=1e-5)
        np.testing.assert_allclose(step @ np.array([-along[1], along[0]]), 0.0, atol=1e-5)
    across = stations @ np.array([-along[1], along[0]])
    assert across == pytest.approx(min(max(v, in_row / 2), 1.2 - in_row / 2), abs=1e-5)
    ends = stations @ along
    assert ends[0] - 0 == pytest.approx(3.6 - ends[-1], abs=1e-5)  # what is left over is shared


@given(st.floats(0, 3.6), st.floats(0, 1.2))
def test_rows_rest_on_steps_from_the_edge(u, v):
    here, at = turned(0.0)
    row = laying.row_in(here, at(u, v), 0.1, 0.3, step_m=0.05)
    y = row.stations[0, 1]
    assert y / 0.05 == pytest.approx(round(y / 0.05), abs=1e-6)
    assert abs(y - min(max(v, 0.05), 1.15)) <= 0.025 + 1e-6


@given(st.floats(0.1, 2.9), st.floats(0.1, 1.9), spacings)
def test_plants_of_a_row_stay_on_any_ground(x, y, in_row):
    """An L-shaped bed with a hole: every plant with half its spacing along the row lies on soil."""
    here = Bed(
        id="b",
        name="b",
        outline=((0, 0), (3, 0), (3, 1), (1.5, 1), (1.5, 2), (0, 2)),
        holes=(((0.5, 0.4), (0.9, 0.4), (0.9, 0.7), (0.5, 0.7)),),
    )
    row = laying.row_in(here, (x, y), in_row, in_row, step_m=0.0)
    if row is not None:
        ground = Polygon(here.outline, here.holes).buffer(1e-5)
        assert covers(ground, points(row.stations)).all()
        assert covers(ground, points(row.stations + np.array([in_row / 2 - 1e-4, 0.0]))).all()


@given(angles, st.floats(0, 3.6), st.floats(0, 1.2), spacings)
def test_a_block_is_as_large_as_it_may_be_and_lies_in_the_bed(angle, u, v, spacing):
    here, at = turned(angle)
    block = laying.block_in(here, at(u, v), spacing, step_m=0.0)
    assert block is not None
    assert block.length_m == pytest.approx(1.2)  # BLOCK_M, as wide as this bed
    assert block.width_m == pytest.approx(1.2)
    assert Polygon(here.outline).buffer(1e-5).covers(Polygon(block.corners))


@given(st.floats(-0.9, 0.9), st.floats(-0.9, 0.9))
def test_a_block_in_a_round_bed_stays_in_it(x, y):
    assume(x * x + y * y < 0.8)
    ring = tuple((cos(radians(k)), sin(radians(k))) for k in range(0, 360, 5))
    here = Bed(id="b", name="b", outline=ring)
    block = laying.block_in(here, (x, y), 0.1)
    if block is not None:
        assert Polygon(ring).buffer(1e-5).covers(Polygon(block.corners))


def test_a_bed_too_small_has_no_room():
    assert laying.row_in(bed(length=0.2, width=0.1), (0.1, 0.05), 0.3, 0.3) is None
    assert laying.block_in(bed(length=0.2, width=0.1), (0.1, 0.05), 0.3) is None


def test_bare_plan_takes_a_short_row_and_a_block_about_the_point():
    row = laying.row_outside((5.0, 2.0), 0.25, 0.4)
    assert len(row.stations) == 4  # ⌊1.2 / 0.25⌋
    np.testing.assert_allclose(row.stations.mean(axis=0), (5.0, 2.0))
    block = laying.block_outside((5.0, 2.0), 0.3)
    assert len(block.stations) == 16
    np.testing.assert_allclose(block.stations.mean(axis=0), (5.0, 2.0))


@given(angles, st.floats(0.5, 5.0), st.floats(0.5, 5.0))
def test_the_axes_of_a_bed_turn_with_it(angle, length, width):
    assume(abs(length - width) > 0.01)
    here, _ = turned(angle, length, width)
    frame = laying.frame_of(here)
    expected = angle if length > width else angle + 90
    assert (frame.angle_deg - expected + 90) % 180 - 90 == pytest.approx(0.0, abs=1e-6)
    u, v = frame.local((1.7, 0.3))
    assert frame.plan(u, v) == pytest.approx((1.7, 0.3), abs=1e-6)
    x0, y0, x1, y1 = frame.ground.bounds
    assert sorted((x1 - x0, y1 - y0)) == pytest.approx(sorted((length, width)))
    assert rotate(frame.ground, frame.angle_deg, origin=(0, 0)).area == pytest.approx(length * width)
