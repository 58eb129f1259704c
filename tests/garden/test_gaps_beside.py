"""Gaps beside a box: measured against the definition on hand-drawn cases and random boxes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.gaps_beside import equal_places, gaps_beside

BED = (0.0, 0.0, 3.6, 1.2)


def test_gaps_to_neighbours_and_to_the_bed_s_edges():
    """A box of 0.4 × 0.2 m at (1.0, 0.5): 0.3 m left of it ends a neighbour, above and below is the bed."""
    gaps = gaps_beside((1.0, 0.5, 1.4, 0.7), [(0.2, 0.4, 0.7, 0.8), (2.0, 0.9, 2.4, 1.1)], BED)
    found = {(g.axis, round(g.begin, 6), round(g.end, 6)) for g in gaps}
    assert found == {(0, 0.7, 1.0), (0, 1.4, 3.6), (1, 0.0, 0.5), (1, 0.7, 1.2)}


def test_what_overlaps_has_no_gap_along_that_axis():
    gaps = gaps_beside((1.0, 0.5, 1.4, 0.7), [(1.2, 0.4, 1.6, 0.8)], None)
    assert gaps == ()


def test_midway_between_two_neighbours_and_as_far_on_as_they_are_apart():
    box = (0.9, 0.0, 1.1, 0.2)
    others = [(0.0, 0.0, 0.2, 0.2), (0.6, 0.0, 0.8, 0.2), (2.0, 0.0, 2.2, 0.2)]
    places = equal_places(box, others, None, 0)
    assert any(p == pytest.approx(1.3) for p in places)  # gaps of 0.5 to 0.8 and to 2.0
    assert any(p == pytest.approx(1.2) for p in places)  # 0.4 on, as the first two are apart


@given(
    st.lists(st.tuples(st.floats(0, 10), st.floats(0.05, 2)), min_size=2, max_size=6),
    st.floats(0, 10),
    st.floats(0.05, 1),
)
def test_at_an_equal_place_some_two_gaps_are_equal(spans, at, size):
    others = [(x, 0.0, x + w, 1.0) for x, w in spans]
    box = (at, 0.2, at + size, 0.8)
    edges = [x for x, _ in spans] + [x + w for x, w in spans]
    for place in equal_places(box, others, None, 0):
        low, high = place, place + size
        below = [low - e for e in edges if e <= low + 1e-9]
        above = [e - high for e in edges if e >= high - 1e-9]
        between = [b - a for a in edges for b in edges if b > a]
        equal = any(abs(a - b) < 1e-6 for a in below for b in above)
        like = any(abs(g - b) < 1e-6 for g in (*below, *above) for b in between)
        assert equal or like
