"""The crop's year agrees with the start windows and simulated harvests that it is made of."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import DayOfYear
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.crop_year import ALWAYS, Task, YearSpan, crop_year, tasks_on
from gardencanvas.season.growth import follow
from gardencanvas.season.starting import start_window
from tests.season.crops_for_tests import BEAN, LETTUCE, RADISH, RHUBARB, SITE, SOUTH, TOMATO, TROPICS

FIRST = date(2027, 1, 1)
days = st.dates(date(2025, 1, 1), date(2028, 12, 31))


def test_a_span_over_the_new_year():
    span = YearSpan(DayOfYear(month=11, day=30), 63)  # 1 day of November, 31, 31
    assert span.last == DayOfYear(month=1, day=31)
    assert span.holds(date(2027, 12, 31))
    assert span.holds(date(2027, 1, 31))
    assert not span.holds(date(2027, 2, 1))
    assert not span.holds(date(2027, 11, 29))


@given(days)
def test_always_is_always(on):
    assert ALWAYS.holds(on)


@pytest.mark.parametrize("crop", [LETTUCE, TOMATO, BEAN, RADISH], ids=lambda c: c.id)
def test_days_in_the_bed_are_those_of_the_start_window(crop):
    for way in crop_year(SITE, crop, FIRST):
        window = start_window(SITE, crop, way.kind)
        assert (way.in_bed.first, way.in_bed.last) == (window.first, window.last)


def test_what_is_raised_is_sown_its_nursery_time_before():
    (way,) = crop_year(SITE, TOMATO, FIRST)
    opens, sown = way.in_bed.first, way.under_glass.first
    apart = date(2027, opens.month, opens.day) - date(2027, sown.month, sown.day)
    assert apart == timedelta(days=TOMATO.nursery_d.mid)


def test_a_tender_crop_goes_out_after_the_last_frost_and_is_sown_under_glass_before():
    last = SITE.frost.last
    frosty = date(2027, last.month, last.day) - timedelta(days=5)
    assert tasks_on(SITE, TOMATO, frosty) == (Task.SOW_UNDER_GLASS,)
    assert tasks_on(SITE, BEAN, date(2027, 12, 20)) == ()


@pytest.mark.parametrize("crop", [LETTUCE, BEAN, RADISH], ids=lambda c: c.id)
def test_the_average_year_of_a_start_inside_harvests_inside(crop):
    """An average year, followed day by day (``season.growth``), against simulated years."""
    for way in crop_year(SITE, crop, FIRST):
        middle = date(2027, way.in_bed.first.month, way.in_bed.first.day)
        middle += timedelta(days=way.in_bed.days // 2)
        course = follow(SITE, [Growing(crop, Start(kind=way.kind, on=middle))], Weeks(FIRST, 104))
        assert way.harvest.holds(course.harvest_first[0].astype(object))
        assert way.harvest.holds(course.harvest_last[0].astype(object))


def test_a_grown_perennial_is_harvested_in_spring_on_either_half_of_the_world():
    """Rhubarb is pulled from spring to early summer: extension calendars; half a year later in the south."""
    (north, *_), (south, *_) = crop_year(SITE, RHUBARB, FIRST), crop_year(SOUTH, RHUBARB, date(2027, 7, 1))
    assert north.later_year
    assert north.harvest.first.month in {4, 5}
    assert south.harvest.first.month in {10, 11}


def test_where_no_frost_comes_a_warm_crop_can_always_start():
    assert all(way.in_bed == ALWAYS for way in crop_year(TROPICS, BEAN, FIRST))
