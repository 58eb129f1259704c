"""Handles: pulled, a pattern grows by whole stations and rows, its other side where it was; typed, exact."""

from math import hypot, pi

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.edits import made, rebuilt
from gardencanvas.garden.ground import LineSupport, RingSupport
from gardencanvas.garden.handles import handles_of, measure_of, reshaped, with_measure
from gardencanvas.garden.outlines import circle
from gardencanvas.garden.pattern import Block, Edging, RingPattern, Rows, Strip
from tests.garden.makers import bed, row
from tests.strategies import patterns

ROWS = made(Rows, origin=(1.0, 1.0), angle_deg=30.0, length_m=2.0, rows=3, spacing_m=0.2, row_spacing_m=0.4)


@given(patterns())
def test_a_handle_put_where_it_is_changes_nothing(pattern):
    planting = row(pattern=pattern)
    for name, at in handles_of(planting):
        after = reshaped(planting, name, at)
        np.testing.assert_allclose(after.stations, planting.stations, atol=2e-6)


@given(st.floats(0.4, 6.0))
def test_pulling_the_end_gives_as_many_stations_as_fit_and_moves_none(length):
    planting = row(pattern=ROWS)
    u = np.array([np.cos(np.pi / 6), np.sin(np.pi / 6)])
    x, y = np.array(ROWS.origin) + u * length
    after = reshaped(planting, "end", (float(x), float(y)))
    assert after.pattern.count == 3 * int(np.floor(round(length, 6) / 0.2 + 1e-9))
    common = min(after.pattern.count, planting.pattern.count) // 3
    np.testing.assert_allclose(after.stations[:common], planting.stations[:common], atol=1e-9)


@pytest.mark.parametrize(("handle", "kept"), [("side", 0), ("top", -1)])
def test_pulling_a_side_brings_rows_and_the_other_side_stays(handle, kept):
    planting = row(pattern=ROWS)
    after = with_measure(planting, handle, 2.0)
    assert after.pattern.rows == 5
    columns = 10
    first = np.s_[:columns] if kept == 0 else np.s_[-columns:]
    np.testing.assert_allclose(after.stations[first], planting.stations[first], atol=2e-6)


@pytest.mark.parametrize("handle", ["begin", "end", "side", "top"])
@pytest.mark.parametrize("kind", ["strip", "block"])
def test_a_typed_length_is_exact(handle, kind):
    pattern = (
        made(Strip, length_m=2.0, width_m=0.6, spacing_m=0.1, across_m=0.15)
        if kind == "strip"
        else made(Block, length_m=2.0, width_m=0.6, spacing_m=0.1)
    )
    after = with_measure(row(pattern=pattern), handle, 0.32)
    assert measure_of(after, handle) == pytest.approx(0.32, abs=1e-9)


def test_a_ring_pulled_to_a_radius_holds_its_circumference_over_its_spacing():
    ring = row(pattern=made(RingPattern, origin=(2.0, 2.0), radius_m=0.5, spacing_m=0.15))
    after = reshaped(ring, "radius", (2.0, 2.8))
    assert after.pattern.radius_m == pytest.approx(0.8)
    assert after.pattern.count == int(2 * pi * 0.8 / 0.15)


def test_an_edging_s_corner_is_pulled_and_its_length_follows():
    edging = row(pattern=made(Edging, line=((0, 0), (2, 0), (2, 1)), spacing_m=0.25))
    after = reshaped(edging, "corner 2", (2.0, 3.0))
    assert after.pattern.length_m == pytest.approx(5.0)
    assert after.pattern.count == 20


def test_supports_have_handles_too():
    stake = made(
        RingSupport, id="s-1", kind="cane ring", name="Canes", centre=(1, 1), radius_m=0.4, height_m=2
    )
    assert reshaped(stake, "radius", (1.0, 1.6)).radius_m == pytest.approx(0.6)
    net = made(LineSupport, id="s-2", kind="net", name="Net", begin=(0, 0), end=(2, 0), height_m=1.5)
    assert with_measure(net, "end", 3.2).end == pytest.approx((3.2, 0.0))
    assert with_measure(net, "begin", 3.0).begin == pytest.approx((-1.0, 0.0))


def test_a_bed_s_hole_is_reshaped_and_must_stay_inside():
    holed = rebuilt(bed(), holes=(((1.0, 0.3), (2.0, 0.3), (2.0, 0.8), (1.0, 0.8)),))
    names = [n for n, _ in handles_of(holed)]
    assert "hole 0 2" in names
    assert reshaped(holed, "hole 0 2", (2.5, 0.9)).holes[0][2] == (2.5, 0.9)


def test_what_is_locked_has_no_handles():
    assert handles_of(row(locked=True)) == []


def test_a_round_bed_is_pulled_by_its_rim_and_typed():
    round_bed = bed(outline=circle((2.0, 2.0), 0.8))
    ((name, at),) = handles_of(round_bed)
    assert name == "radius"
    assert hypot(at[0] - 2.0, at[1] - 2.0) == pytest.approx(0.8)
    assert measure_of(round_bed, "radius") == pytest.approx(0.8, abs=1e-5)
    for pulled in (reshaped(round_bed, "radius", (2.0, 3.1)), with_measure(round_bed, "radius", 1.1)):
        away = [hypot(x - 2.0, y - 2.0) for x, y in pulled.outline]
        assert away == pytest.approx([1.1] * len(away), abs=1e-5)
