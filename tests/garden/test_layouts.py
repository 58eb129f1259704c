"""Layouts copied, moved to another year, kept and removed."""

from datetime import date

import pytest

from gardencanvas.garden import layouts
from gardencanvas.garden.errors import Refusal
from tests.garden.makers import garden, row


def test_a_copy_differs_in_name_and_id_alone_and_shares_what_it_holds():
    value = garden(row())
    after, copy_id = layouts.duplicated(value, "l1", "Second try", "more leeks")
    old, new = after.layouts
    assert (new.id, new.name, new.note, new.kept) == (copy_id, "Second try", "more leeks", False)
    assert new.plantings == old.plantings
    assert after.layout("l1") is value.layout("l1")


def test_another_year_moves_every_date_by_whole_years():
    value = garden(row(on=date(2028, 2, 29), end=date(2028, 9, 1)), row("p-2", on=date(2028, 5, 1)))
    after, copy_id = layouts.for_year(value, "l1", "Next", 2029)
    first, second = after.layout(copy_id).plantings
    assert first.start.on == date(2030, 2, 28)  # the layout's own year is 2027: two years on
    assert second.start.on == date(2030, 5, 1)
    assert first.end == date(2030, 9, 1)


def test_an_empty_one_has_the_beds_and_no_planting():
    value = garden(row())
    after, fresh = layouts.with_empty(value, "2028", 2028, "l1")
    assert after.layout(fresh).beds == value.layout("l1").beds
    assert after.layout(fresh).plantings == ()


def test_one_layout_of_a_year_is_kept():
    value, second = layouts.duplicated(garden(row()), "l1", "B")
    other, third = layouts.for_year(value, "l1", "C", 2028)
    after = layouts.kept(layouts.kept(layouts.kept(other, "l1"), third), second)
    assert [x.kept for x in after.layouts] == [False, True, True]
    assert layouts.kept(after, second) is after
    assert not layouts.kept(after, second, on=False).layout(second).kept


def test_the_last_layout_stays():
    value, second = layouts.duplicated(garden(), "l1", "B")
    assert [x.id for x in layouts.without(value, "l1").layouts] == [second]
    with pytest.raises(Refusal, match="at least one"):
        layouts.without(garden(), "l1")
