"""Patterns cut into parts: nothing is lost, nothing is doubled."""

import numpy as np
import pytest
from hypothesis import given

from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Block, Drift, Edging, RingPattern, Rows, Spots, Strip
from gardencanvas.planner.succession.cutting import cut, most_parts
from gardencanvas.planner.succession.rhythm import Way
from tests.planner.cuts import cuts

THREE_ROWS = Rows(origin=(1.0, 2.0), angle_deg=90.0, length_m=2.0, rows=3, spacing_m=0.3, row_spacing_m=0.25)


@given(cuts())
def test_the_parts_have_the_stations_of_the_whole(cutting):
    pattern, way, parts = cutting
    pieces = cut(pattern, way, parts)
    assert len(pieces) == parts
    assert sum(p.pattern.count for p in pieces) == pattern.count
    together = np.concatenate([p.pattern.stations for p in pieces])
    away = np.hypot(*(together[:, None] - pattern.stations[None]).transpose(2, 0, 1))
    assert away.min(axis=0).max() < 1e-5
    assert away.min(axis=1).max() < 1e-5
    assert len(set(away.argmin(axis=1))) == pattern.count or pattern.kind == "spots"  # spots may coincide


@given(cuts())
def test_parts_are_as_equal_as_may_be(cutting):
    pattern, way, parts = cutting
    counts = [p.pattern.count for p in cut(pattern, way, parts)]
    line = pattern.count // most_parts(pattern, way)
    assert max(counts) - min(counts) <= line
    assert counts == sorted(counts, reverse=True)


@given(cuts())
def test_first_stations_say_where_a_part_begins(cutting):
    pattern, way, parts = cutting
    for piece in cut(pattern, way, parts):
        assert piece.pattern.stations[0] == pytest.approx(pattern.stations[piece.first], abs=1e-5)


@pytest.mark.parametrize("pattern", [
    THREE_ROWS,
    Strip(length_m=1.5, width_m=0.6, spacing_m=0.1, across_m=0.2, angle_deg=30.0),
    Block(length_m=0.9, width_m=0.9, spacing_m=0.3, origin=(3.0, 1.0)),
], ids=["rows", "strip", "block"])  # fmt: skip
def test_each_row_becomes_a_pattern_of_the_same_kind(pattern):
    pieces = cut(pattern, Way.ROWS, 3)
    assert all(type(p.pattern) is type(pattern) for p in pieces)
    columns = pattern.count // 3
    for row, piece in enumerate(pieces):
        expected = pattern.stations[row * columns : (row + 1) * columns]
        assert piece.pattern.stations == pytest.approx(expected, abs=1e-5)


def test_the_ground_of_the_parts_is_the_ground_of_the_whole():
    """2 m of row hold six plants at 0.3 m and 0.2 m are left over: the last part keeps them."""
    pieces = cut(THREE_ROWS, Way.PARTS, 4)
    assert sum(p.pattern.length_m for p in pieces) == pytest.approx(2.0)
    assert [p.pattern.length_m for p in pieces] == pytest.approx([0.6, 0.6, 0.3, 0.5])
    assert [p.pattern.count for p in pieces] == [6, 6, 3, 3]


def test_arcs_of_a_ring_lie_together():
    ring = RingPattern(origin=(2.0, 2.0), radius_m=1.0, spacing_m=0.2)
    first = cut(ring, Way.PARTS, 2)[0].pattern
    assert isinstance(first, Spots)
    assert (first.stations[:, 1] >= 2.0 - 1e-6).all()  # half the circle


def test_drifts_are_cut_from_end_to_end():
    outline = ((0.0, 0.0), (3.0, 0.0), (3.0, 0.8), (0.0, 0.8))
    drift = Drift(outline=outline, spacing_m=0.2, plants=30, angle_deg=90.0)
    one, two = cut(drift, Way.PARTS, 2)
    assert one.pattern.stations[:, 1].max() <= two.pattern.stations[:, 1].min()


@pytest.mark.parametrize(("pattern", "way", "parts", "words"), [
    (THREE_ROWS, Way.ROWS, 4, "3 rows: too few for 4 parts"),
    (THREE_ROWS, Way.PARTS, 7, "6 plants along it: too few for 7 parts"),
    (Rows(length_m=0.5, spacing_m=0.3, row_spacing_m=0.3), Way.PARTS, 2, "one plant along it only"),
    (Rows(length_m=2.0, spacing_m=0.3, row_spacing_m=0.3), Way.ROWS, 2, "one row only"),
    (RingPattern(radius_m=1.0, spacing_m=0.3), Way.ROWS, 2, "kind ring has no rows"),
    (Block(length_m=1.0, width_m=1.0, spacing_m=0.2, staggered=True), Way.ROWS, 2, "staggered block has no"),
    (Edging(line=((0.0, 0.0), (1.0, 0.0)), spacing_m=0.4), Way.PARTS, 3, "2 plants along it"),
])  # fmt: skip
def test_too_small_a_pattern_says_why(pattern, way, parts, words):
    with pytest.raises(Refusal, match=words):
        cut(pattern, way, parts)
