"""Edits: pure, exact, refusing."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport
from gardencanvas.garden.planting import Planting, Start
from tests.garden.makers import bed, garden, row


def test_an_edit_shares_every_unchanged_part():
    before = garden(row("p-1", y=0.1), row("p-2", y=0.6))
    after = edits.shift(before, "l1", ["p-1"], 0.1, 0.0)
    assert after.layouts[0].plantings[1] is before.layouts[0].plantings[1]
    assert after.layouts[0].beds[0] is before.layouts[0].beds[0]
    assert after.site is before.site
    assert before.layouts[0].plantings[0].pattern.origin == (0.0, 0.1)
    assert after.layouts[0].plantings[0].pattern.origin == (0.1, 0.1)


def test_a_bed_carries_what_lies_in_it():
    net = LineSupport(id="s-1", kind="net", name="net", begin=(0.2, 0.5), end=(1.2, 0.5), height_m=1.8)
    before = garden(row("inside", y=0.2), row("outside", y=3.0))
    before = edits.add(before, "l1", [net])
    after = edits.shift(before, "l1", ["bed-1"], 2.0, 1.0)
    assert after.find("l1", "inside").pattern.origin == (2.0, 1.2)
    assert after.find("l1", "outside") is before.find("l1", "outside")
    assert after.find("l1", "s-1").begin == (2.2, 1.5)


def test_turning_a_bed_there_and_back_leaves_stations_where_they_were():
    before = garden(row("p-1", x=0.2, y=0.2))
    there = edits.turn(before, "l1", ["bed-1"], 37.0, (1.8, 0.6))
    back = edits.turn(there, "l1", ["bed-1"], -37.0, (1.8, 0.6))
    assert np.allclose(back.find("l1", "p-1").stations, before.find("l1", "p-1").stations)
    assert not np.allclose(there.find("l1", "p-1").stations, before.find("l1", "p-1").stations)


def test_locked_things_stay():
    before = garden(row("p-1", locked=True))
    assert edits.remove(before, "l1", ["p-1"]) is before
    assert edits.shift(before, "l1", ["p-1"], 1.0, 0.0) == before


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda: edits.made(Bed, id="b", name="b", outline=((0, 0), (2, 2), (2, 0), (0, 2))), "crosses it"),
        (lambda: edits.made(Bed, id="b", name="b", outline=((0, 0), (2, 0))), "at least 3"),
        (lambda: edits.made(Bed, id="b", name="b", outline=((0, 0), (2, 0), (float("nan"), 2))), "finite"),
        (lambda: edits.made(Bed, id="b", name="b", outline=((0, 0), (5e9, 0), (2, 2))), "1000"),
        (lambda: edits.made(Bed, id="b", name="", outline=((0, 0), (2, 0), (2, 2))), "at least 1 character"),
        (lambda: edits.rebuilt(row(), end=date(2027, 4, 1)), "2027-04-01"),
        (lambda: edits.rebuilt(row().pattern, spacing_m=0.0), "spacing_m is 0.0: allowed is at least 0.005"),
        (lambda: edits.rebuilt(row(), per_station=500), "per_station is 500: allowed is at most 20"),
        (
            lambda: edits.made(
                Cover, id="c", kind="mesh", name="m", outline=bed().outline, height_m=0.5,
                first=date(2027, 6, 1), last=date(2027, 5, 1),
            ),
            "before it goes on",
        ),
        (
            lambda: edits.made(
                Fixture, id="f", kind="tree", name="t", outline=bed().outline, height_m=2.0, base_m=3.0
            ),
            "below the top",
        ),
        (lambda: edits.made(Start, kind="sown", on=date(2027, 5, 1), sown_on=date(2027, 4, 1)), "raised"),
        (lambda: edits.change(garden(row()), "l1", "nobody", note="x"), "'nobody'"),
        (lambda: edits.replace(garden(row()), "l1", [row("nobody")]), "'nobody'"),
        (lambda: edits.add(garden(row()), "l1", [row()]), "'p-1' is used twice"),
    ],
)  # fmt: skip
def test_invalid_values_are_refused_by_field_value_and_range(make, words):
    with pytest.raises(Refusal, match=words):
        make()


numbers = st.floats(-3.0, 3.0).map(lambda x: round(x, 3))
steps = st.one_of(
    st.tuples(st.just("shift"), st.sampled_from(["a", "b", "c", "bed-1"]), numbers, numbers),
    st.tuples(st.just("turn"), st.sampled_from(["a", "b", "c", "bed-1"]), numbers, numbers),
    st.tuples(st.just("remove"), st.sampled_from(["a", "b", "c"]), numbers, numbers),
    st.tuples(st.just("add"), st.sampled_from(["a", "b", "c"]), numbers, numbers),
    st.tuples(st.just("space"), st.sampled_from(["a", "b", "c"]), numbers, numbers),
)


def _apply(value, step):
    what, item_id, x, y = step
    present = value.find("l1", item_id) is not None
    if what == "shift":
        return edits.shift(value, "l1", [item_id], x, y)
    if what == "turn":
        return edits.turn(value, "l1", [item_id], 40 * x, (x, y))
    if what == "remove":
        return edits.remove(value, "l1", [item_id])
    if what == "add":
        return value if present else edits.add(value, "l1", [row(item_id, x=x, y=y)])
    item = value.find("l1", item_id)
    if not isinstance(item, Planting):
        return value
    return edits.change(
        value, "l1", item_id, pattern=edits.rebuilt(item.pattern, spacing_m=0.1 + abs(x) / 10)
    )


@given(st.lists(steps, max_size=12))
def test_any_sequence_of_edits_leaves_every_earlier_value_as_it_was(sequence):
    """Undo is a list of values: each must still be what it was, to the byte, whatever came after."""
    value = garden(row("a", y=0.1), row("b", y=0.5))
    history = [(value, value.model_dump_json())]
    for step in sequence:
        value = _apply(value, step)
        history.append((value, value.model_dump_json()))
    for kept, text in history:
        assert kept.model_dump_json() == text
        assert type(kept).model_validate_json(text) == kept


def test_equal_values_are_equal_whatever_was_computed_from_them():
    one, two = row("a"), row("a")
    assert one.stations is not two.stations
    assert one == two
    assert hash(one) == hash(two)
    assert garden(one) == garden(two)
    assert row("a") != row("b")
