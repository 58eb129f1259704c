"""Copies of one layout's items at a place in another, against the plan read by hand."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden import edits, layouts
from gardencanvas.garden.carrying import carried_over
from gardencanvas.garden.errors import Refusal
from tests.garden.makers import bed, garden, row


def emptied(**changes):
    """Two layouts: the first with beds and two plantings in ``bed-1``, the other with the beds only."""
    value = garden(
        row("a", y=0.1, **changes), row("b", y=0.5, **changes), beds=(bed("bed-1"), bed("bed-2", y=2.0))
    )
    return layouts.with_empty(value, "Empty", 2027, "l1")


def stations(value, layout_id, planting_id):
    return value.layout(layout_id).by_id[planting_id].stations


@given(st.floats(-9, 9), st.floats(-9, 9))
def test_a_copy_lies_exactly_the_step_away_and_the_source_is_untouched(dx, dy):
    value, other = emptied()
    after, ids = carried_over(value, "l1", other, ["a"], dx, dy)
    assert ids == {"a"}, "the same planting in both layouts"
    wanted = np.add(stations(value, "l1", "a"), (dx, dy))
    np.testing.assert_allclose(stations(after, other, "a"), wanted, atol=1e-9)
    assert after.layout("l1") is value.layout("l1")


def test_what_the_other_has_under_that_id_stays_and_the_copy_is_a_planting_of_its_own():
    value = garden(row("a"))
    value, other = layouts.duplicated(value, "l1", "Copy")
    after, ids = carried_over(value, "l1", other, ["a"], 0.0, 0.4)
    assert after.layout(other).by_id["a"] is value.layout(other).by_id["a"]
    (copy,) = ids
    assert copy != "a"
    np.testing.assert_allclose(stations(after, other, copy), np.add(stations(value, "l1", "a"), (0, 0.4)))


def test_a_bed_that_the_other_lacks_comes_with_all_that_lies_in_it():
    value, other = emptied()
    value = edits.remove(value, other, ["bed-1"])
    after, ids = carried_over(value, "l1", other, ["bed-1"], 1.0, 0.0)
    assert ids == {"bed-1", "a", "b"}
    assert after.layout(other).by_id["bed-1"].outline[0] == (1.0, 0.0)
    np.testing.assert_allclose(stations(after, other, "b"), np.add(stations(value, "l1", "b"), (1, 0)))


def test_a_bed_that_the_other_has_receives_what_lies_in_it_where_it_lies_there():
    value, other = emptied()
    value = edits.shift(value, other, ["bed-1"], 6.0, 1.0)
    before = value.layout(other).by_id["bed-1"]
    after, ids = carried_over(value, "l1", other, ["bed-1"], -3.0, 0.2)
    assert ids == {"a", "b"}
    assert after.layout(other).by_id["bed-1"] is before
    np.testing.assert_allclose(stations(after, other, "a"), np.add(stations(value, "l1", "a"), (6, 1)))


def test_dates_follow_the_year_and_locks_are_not_copied():
    value = garden(row("a", locked=True))
    value, other = layouts.with_empty(value, "Next", 2028, "l1")
    for ids in (["a"], ["bed-1"]):
        after, _ = carried_over(value, "l1", other, ids, 0.0, 0.0)
        copy = after.layout(other).by_id["a"]
        assert (copy.start.on, copy.locked) == (date(2028, 5, 1), False)


def test_parts_of_a_succession_stay_together():
    value, other = emptied(succession="s")
    after, ids = carried_over(value, "l1", other, ["a", "b"], 0.0, 0.0)
    after, again = carried_over(after, "l1", other, ["a", "b"], 0.0, 3.0)
    first, second = ({after.layout(other).by_id[i].succession for i in some} for some in (ids, again))
    assert first == {"s"}
    assert len(second) == 1
    assert second.isdisjoint({"s", None})


def test_nothing_to_copy_is_refused_in_words():
    value, other = emptied()
    for ids, words in (([], "Select"), (["bed-2"], "nothing lies in it")):
        with pytest.raises(Refusal, match=words):
            carried_over(value, "l1", other, ids, 0.0, 0.0)
    kept = edits.add(value, other, [row("a", locked=True)])
    with pytest.raises(Refusal, match="locked"):
        carried_over(kept, "l1", other, ["bed-1"], 0.0, 0.0)
