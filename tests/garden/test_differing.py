"""Differences between layouts, and items taken over from one into the other, against edits made by hand."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden import edits, layouts
from gardencanvas.garden.differing import Differs, differences, taken_over
from gardencanvas.garden.errors import Refusal
from tests.garden.makers import bed, garden, row


@pytest.fixture
def value():
    return edits.add(garden(row("a"), row("b", y=0.5)), "l1", [bed("bed", length=4.0, width=1.0)])


def copied(value):
    return layouts.duplicated(value, "l1", "Other")


def both(value, other):
    a, b = value.layout("l1"), value.layout(other)
    return differences(a, b), differences(b, a)


def test_a_copy_differs_in_nothing_for_another_year_too(value):
    value, other = copied(value)
    assert both(value, other) == ({}, {})
    value, later = layouts.for_year(value, "l1", "Later", value.layout("l1").year + 3)
    assert both(value, later) == ({}, {})


def test_each_edit_is_told_as_what_it_is(value):
    value, other = copied(value)
    start = value.layout(other).by_id["b"].start
    later = edits.rebuilt(start, on=start.on + timedelta(days=9))
    edited = edits.shift(value, other, ["a"], 0.1, 0.0)
    edited = edits.change(edited, other, "b", start=later)
    edited = edits.change(edited, other, "bed", name="Renamed")
    edited = edits.add(edited, other, [row("new", y=0.8)])
    here, there = both(edited, other)
    expected = {"a": (Differs.MOVED,), "b": (Differs.RETIMED,), "bed": (Differs.OTHERWISE,)}
    assert here == expected
    assert there == expected | {"new": (Differs.ONLY_HERE,)}


@given(st.sets(st.sampled_from(["a", "b", "bed"]), min_size=1), st.integers(-3, 3))
def test_what_is_taken_over_no_longer_differs(ids, years):
    value = edits.add(garden(row("a"), row("b", y=0.5)), "l1", [bed("bed", length=4.0, width=1.0)])
    value, other = layouts.for_year(value, "l1", "Other", value.layout("l1").year + years)
    changed = edits.shift(value, "l1", ["a", "b", "bed"], 0.25, 0.0)
    over = taken_over(changed, "l1", other, ids)
    left = differences(over.layout("l1"), over.layout(other))
    moved = {"a", "b", "bed"} if "bed" in ids else ids  # the bed takes along what lies in it
    assert set(left) == {"a", "b", "bed"} - moved
    assert over.layout("l1") == changed.layout("l1")


def test_a_bed_goes_with_its_plantings_into_a_layout_without_them(value):
    value, other = layouts.with_empty(value, "Empty", value.layout("l1").year, "l1")
    value = edits.remove(value, other, ["bed"])
    over = taken_over(value, "l1", other, ["bed"])
    assert {"bed", "a", "b"} <= set(over.layout(other).by_id)


def test_dates_follow_the_year_of_the_layout_they_come_into(value):
    value, other = layouts.for_year(value, "l1", "Next", value.layout("l1").year + 1)
    leap = edits.change(value, "l1", "a", start=edits.rebuilt(row().start, on=date(2028, 2, 29)))
    over = taken_over(leap, "l1", other, ["a"])
    assert over.layout(other).by_id["a"].start.on == date(2029, 2, 28)


def test_nothing_selected_and_a_locked_planting_are_refused_in_words(value):
    value, other = copied(value)
    with pytest.raises(Refusal, match="Select"):
        taken_over(value, "l1", other, [])
    locked = edits.change(value, other, "a", locked=True)
    with pytest.raises(Refusal, match="locked"):
        taken_over(locked, "l1", other, ["a"])
