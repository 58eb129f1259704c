"""Patterns against closed forms and packing bounds."""

from math import floor, pi, sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError
from shapely import Polygon, points

from gardencanvas.garden.pattern import Block, Drift, Edging, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.value import MAX_STATIONS

lengths = st.floats(0.3, 12.0)
spacings = st.floats(0.1, 0.3)
angles = st.floats(-180.0, 180.0)
places = st.floats(-40.0, 40.0)


@pytest.mark.parametrize(
    ("length", "width", "spacing", "square", "triangular"),
    [
        # counts with centres at least s/2 from every edge, computed by hand from the closed forms
        (3.6, 1.2, 0.30, 48, 46),
        (2.4, 1.2, 0.25, 36, 45),
        (1.2, 1.2, 0.30, 16, 14),
        (3.0, 1.0, 0.15, 120, 137),
        (10.0, 10.0, 0.30, 1089, 1235),
    ],
)
def test_block_counts_match_the_closed_forms(length, width, spacing, square, triangular):
    plain = Block(length_m=length, width_m=width, spacing_m=spacing)
    staggered = Block(length_m=length, width_m=width, spacing_m=spacing, staggered=True)
    assert plain.count == square == len(plain.stations)
    assert staggered.count == triangular == len(staggered.stations)


@given(lengths, lengths, spacings)
def test_square_count_is_floor_times_floor(length, width, spacing):
    block = Block(length_m=length, width_m=width, spacing_m=spacing)
    assert block.count == floor(length / spacing + 1e-9) * floor(width / spacing + 1e-9)


@given(lengths, lengths, spacings)
def test_staggered_density_never_beats_the_hexagonal_packing(length, width, spacing):
    """At most 2A/(√3 s²) + P/2s + 1 points s apart lie in a convex A of perimeter P (Groemer 1960)."""
    block = Block(length_m=length, width_m=width, spacing_m=spacing, staggered=True)
    inner_l, inner_w = length - spacing, width - spacing  # hull of the allowed centres
    bound = 2 / sqrt(3) * inner_l * inner_w / spacing**2 + (inner_l + inner_w) / spacing + 1
    assert block.count <= bound + 1e-6


@given(lengths, lengths, spacings)
def test_staggered_stations_keep_their_distance(length, width, spacing):
    block = Block(length_m=min(length, 2.0), width_m=min(width, 2.0), spacing_m=spacing, staggered=True)
    xy = block.stations
    gap = np.hypot(*(xy[:, None] - xy[None]).transpose(2, 0, 1))
    np.fill_diagonal(gap, np.inf)
    assert len(xy) == 1 or gap.min() >= spacing - 1e-9


@given(st.floats(0.1, 3.0), spacings)
def test_ring_holds_as_many_as_its_circumference_allows(radius, spacing):
    ring = RingPattern(radius_m=radius, spacing_m=spacing)
    xy = ring.stations
    assert ring.count == floor(2 * pi * radius / spacing + 1e-9) == len(xy)
    assert np.allclose(np.hypot(xy[:, 0], xy[:, 1]), radius)
    if ring.count > 1:
        chord = np.hypot(*(xy[1] - xy[0]))
        assert chord == pytest.approx(2 * radius * np.sin(pi / ring.count))


def test_edging_follows_the_rim_of_a_bed():
    """A 2 × 1 m rim is 6 m long: twenty stations at 30 cm, all on the rim."""
    edging = Edging(line=((0, 0), (2, 0), (2, 1), (0, 1)), closed=True, spacing_m=0.3)
    rim = Polygon(edging.line).exterior
    assert edging.length_m == pytest.approx(6.0)
    assert edging.count == 20 == len(edging.stations)
    assert all(rim.distance(p) < 1e-9 for p in points(edging.stations))


def test_drift_is_stable_and_keeps_its_distance():
    outline = ((0, 0), (3, 0.2), (2.5, 2), (0.3, 1.8))
    drift = Drift(outline=outline, spacing_m=0.25, plants=25, seed=7)
    again = Drift(outline=outline, spacing_m=0.25, plants=25, seed=7)
    xy = drift.stations
    gap = np.hypot(*(xy[:, None] - xy[None]).transpose(2, 0, 1))
    np.fill_diagonal(gap, np.inf)
    assert np.array_equal(xy, again.stations)
    assert gap.min() >= 0.25
    assert all(Polygon(outline).covers(p) for p in points(xy))


def _examples():
    return [
        Rows(length_m=2.4, rows=3, spacing_m=0.2, row_spacing_m=0.35),
        Strip(length_m=1.9, width_m=0.31, spacing_m=0.05, across_m=0.1),
        Block(length_m=1.3, width_m=1.1, spacing_m=0.21),
        Block(length_m=1.3, width_m=1.1, spacing_m=0.21, staggered=True),
        RingPattern(radius_m=0.6, spacing_m=0.2),
        Edging(line=((0, 0), (1.5, 0.3), (2, 2)), spacing_m=0.17),
        Drift(outline=((0, 0), (2, 0), (2, 2), (0, 2)), spacing_m=0.2, plants=30, seed=3),
        Spots(points=((0, 0), (0.4, 0.1), (1.0, 2.0))),
    ]


@pytest.mark.parametrize("pattern", _examples(), ids=lambda p: p.kind)
def test_stations_lie_inside_the_ground_the_pattern_takes(pattern):
    ground = Polygon(pattern.corners).buffer(1e-9)
    assert all(ground.covers(p) for p in points(pattern.stations))


@pytest.mark.parametrize("pattern", _examples(), ids=lambda p: p.kind)
@given(x=places, y=places, angle=angles)
def test_moving_and_turning_the_frame_moves_the_stations_exactly(pattern, x, y, angle):
    fields = {k: getattr(pattern, k) for k in type(pattern).model_fields}
    moved = type(pattern)(**{**fields, "origin": (x, y), "angle_deg": angle})
    turn = np.deg2rad(angle)
    ax, ay = pattern.stations.T
    expected = np.stack(
        [x + ax * np.cos(turn) - ay * np.sin(turn), y + ax * np.sin(turn) + ay * np.cos(turn)], axis=1
    )
    assert np.allclose(moved.stations, expected, atol=1e-9)


def test_a_million_stations_are_refused_before_they_are_made():
    with pytest.raises(ValidationError, match=f"{MAX_STATIONS:,}"):
        Block(length_m=900, width_m=900, spacing_m=0.005)


@pytest.mark.parametrize("bad", [0.0, -0.3, float("nan"), float("inf")])
def test_senseless_spacings_are_refused(bad):
    with pytest.raises(ValidationError):
        Rows(length_m=2.0, rows=1, spacing_m=bad, row_spacing_m=0.3)


def test_stations_cannot_be_written_to():
    with pytest.raises(ValueError, match="read-only"):
        Spots(points=((0, 0),)).stations[0, 0] = 1.0
