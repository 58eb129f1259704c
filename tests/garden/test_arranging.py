"""Mirror, align, distribute, array, split and join: geometry against its own definitions."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden import edits
from gardencanvas.garden.arranging import align, array, distribute
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.mirroring import mirror
from gardencanvas.garden.pattern import Drift, Rows, Spots
from gardencanvas.garden.places import bounds
from gardencanvas.garden.splitting import join, parts_of, split
from tests.garden.makers import bed, garden, row
from tests.strategies import patterns

WIDE = bed(x=-10.0, y=-10.0, length=30.0, width=30.0)


def _places(xy):
    rounded = np.round(np.asarray(xy), 5) + 0.0
    return rounded[np.lexsort(rounded.T)]


@given(patterns(), st.sampled_from(["left and right", "top and bottom"]))
def test_a_mirror_image_has_each_station_mirrored(pattern, sides):
    before = row(pattern=pattern)
    value = garden(before)
    x0, y0, x1, y1 = bounds([before])
    after = mirror(value, "l1", ["p-1"], sides).find("l1", "p-1")
    expected = before.stations.copy()
    axis, whole = (0, x0 + x1) if sides == "left and right" else (1, y0 + y1)
    expected[:, axis] = whole - expected[:, axis]
    if isinstance(pattern, Drift):  # a drift has places of its own in the mirrored outline
        assert isinstance(after.pattern, Drift)
        return
    np.testing.assert_allclose(_places(after.stations), _places(expected), atol=2e-5)


@given(patterns())
def test_mirroring_twice_brings_every_station_back(pattern):
    value = garden(row(pattern=pattern), beds=(WIDE,))
    if isinstance(pattern, Drift):
        return
    twice = mirror(
        mirror(value, "l1", ["bed-1", "p-1"], "top and bottom"), "l1", ["bed-1", "p-1"], "top and bottom"
    )
    np.testing.assert_allclose(
        _places(twice.find("l1", "p-1").stations), _places(value.find("l1", "p-1").stations), atol=2e-5
    )
    assert {tuple(np.round(p, 6)) for p in twice.find("l1", "bed-1").outline} == set(WIDE.outline)


@pytest.mark.parametrize(("edge", "column"), [("left", 0), ("top", 1), ("right", 2), ("bottom", 3)])
def test_aligned_things_share_that_edge_and_their_size(edge, column):
    value = garden(beds=(bed("a"), bed("b", 5.2, 2.1, 2.0, 1.0), bed("c", -1.3, 4.0, 1.0, 0.8)))
    after = align(value, "l1", ["a", "b", "c"], edge)
    boxes = [bounds([after.find("l1", i)]) for i in "abc"]
    want = [min, min, max, max][column](bounds([value.find("l1", i)])[column] for i in "abc")
    assert [b[column] for b in boxes] == pytest.approx([want] * 3, abs=1e-5)
    for box, i in zip(boxes, "abc", strict=True):
        x0, y0, x1, y1 = bounds([value.find("l1", i)])
        assert (box[2] - box[0], box[3] - box[1]) == pytest.approx((x1 - x0, y1 - y0), abs=1e-5)


@given(st.lists(st.tuples(st.floats(-20, 20), st.floats(0.3, 3)), min_size=3, max_size=6))
def test_distributed_things_have_equal_gaps(boxes):
    beds = tuple(bed(f"b{i}", x, 0.0, length) for i, (x, length) in enumerate(boxes))
    value = garden(beds=beds)
    after = distribute(value, "l1", [b.id for b in beds], "across")
    was = {b.id: bounds([b]) for b in beds}
    names = sorted(was, key=lambda i: (was[i][0] + was[i][2], i))
    order = [bounds([after.find("l1", i)]) for i in names]
    gaps = [right[0] - left[2] for left, right in pairwise(order)]
    assert gaps == pytest.approx([gaps[0]] * len(gaps), abs=1e-4)


def test_two_things_have_no_gaps_to_equal():
    with pytest.raises(Refusal, match="three"):
        distribute(garden(beds=(bed("a"), bed("b", 5))), "l1", ["a", "b"], "across")


def test_an_array_repeats_a_bed_with_what_lies_in_it():
    value = garden(row(), beds=(bed(),))
    after = array(value, "l1", ["bed-1"], 3, 2, 4.0, 2.0)
    layout = after.layout("l1")
    assert len(layout.beds) == len(layout.plantings) == 6
    corners = sorted(tuple(np.round(b.outline[0], 6)) for b in layout.beds)
    assert corners == sorted((x, y) for x in (0.0, 4.0, 8.0) for y in (0.0, 2.0))
    starts = sorted(
        tuple(np.round(p.stations[0] - value.layout("l1").plantings[0].stations[0], 6))
        for p in layout.plantings
    )
    assert starts == sorted((x, y) for x in (0.0, 4.0, 8.0) for y in (0.0, 2.0))


def test_too_large_an_array_is_refused():
    with pytest.raises(Refusal, match="at most"):
        array(garden(), "l1", ["bed-1"], 100, 100, 1.0, 1.0)


@given(patterns(), st.sampled_from(["along", "across"]), st.data())
def test_the_parts_of_a_split_stand_where_the_whole_stood_and_join_again(pattern, cut, data):
    value = garden(row(pattern=pattern))
    before = value.find("l1", "p-1")
    total = parts_of(pattern, cut)
    if total < 2:
        with pytest.raises(Refusal):
            split(value, "l1", "p-1", cut, 1)
        return
    at = data.draw(st.integers(1, total - 1))
    after, part = split(value, "l1", "p-1", cut, at)
    both = np.concatenate([after.find("l1", i).stations for i in ("p-1", part)])
    np.testing.assert_allclose(_places(both), _places(before.stations), atol=2e-5)
    whole, kept = join(after, "l1", ["p-1", part])
    assert kept == "p-1"
    assert len(whole.layout("l1").plantings) == 1
    np.testing.assert_allclose(_places(whole.find("l1", "p-1").stations), _places(before.stations), atol=2e-5)
    if isinstance(pattern, Rows):
        assert isinstance(whole.find("l1", "p-1").pattern, Rows)


def test_unlike_plantings_are_not_joined():
    with pytest.raises(Refusal, match="differ in crop"):
        join(garden(row(), row("p-2", crop="lettuce")), "l1", ["p-1", "p-2"])


def test_locked_things_are_neither_moved_nor_cut():
    value = garden(row(locked=True))
    assert mirror(value, "l1", ["p-1"], "left and right") == value
    with pytest.raises(Refusal, match="locked"):
        split(value, "l1", "p-1", "across", 2)


def test_spots_stay_spots():
    value = garden(row(pattern=Spots(points=((0, 0), (1, 0.5), (2, 0)))))
    after, part = split(value, "l1", "p-1", "along", 1)
    assert [after.find("l1", i).pattern.count for i in ("p-1", part)] == [1, 2]
    assert edits.remove(after, "l1", [part]).layout("l1").plantings[0].id == "p-1"
