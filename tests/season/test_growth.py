"""How plantings grow, in all the ways of starting and ending."""

from datetime import date, timedelta
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.site import Climate, DayOfYear, Frost
from gardencanvas.season.course import Course, Weeks
from gardencanvas.season.growth import follow, span
from tests.season.crops_for_tests import (
    ALL,
    BEAN,
    CHARD,
    GARLIC,
    LETTUCE,
    POLAR,
    RADISH,
    RHUBARB,
    SITE,
    SOUTH,
    SQUASH,
    TEMPERATE,
    THYME,
    TOMATO,
    TROPICS,
    TWO_YEARS,
    YEAR,
    later,
    make,
    planted,
    site,
)

DAY = np.timedelta64(1, "D")
ANNUALS = (LETTUCE, TOMATO, BEAN, SQUASH, GARLIC, CHARD, RADISH)
starts = st.dates(date(2026, 1, 1), date(2026, 12, 31))
annuals = st.sampled_from(ANNUALS)
crops = st.sampled_from(ALL)
shifts = st.floats(-6.0, 8.0)


def one(crop, on, where=SITE, weeks=TWO_YEARS, **own) -> Course:
    return follow(where, [planted(crop, on, **own)], weeks)


def warmer(by: float):
    return site(tuple(t + by for t in TEMPERATE))


@given(annuals, starts, shifts, st.floats(0.1, 6.0))
def test_warmer_never_delays_a_harvest(crop, on, base, more):
    cool, warm = one(crop, on, warmer(base)), one(crop, on, warmer(base + more))
    if cool.ripe[0]:
        assert warm.ripe[0] or warm.frosted[0]
    if cool.ripe[0] and warm.ripe[0]:
        assert warm.harvest_first[0] <= cool.harvest_first[0]


@given(annuals, starts, st.integers(1, 120), shifts)
def test_later_sowing_never_brings_an_earlier_harvest(crop, on, days, base):
    where = warmer(base)
    early, late = one(crop, on, where), one(crop, later(on, days), where)
    if early.ripe[0] and late.ripe[0]:
        assert early.harvest_first[0] <= late.harvest_first[0]


@given(annuals, starts, st.booleans())
def test_growth_never_falls_until_harvest(crop, on, supported):
    course = one(crop, on, supported=supported)
    before = (course.weeks.starts + 3 >= course.in_bed[0]) & (
        course.weeks.starts + 3 < course.harvest_first[0]
    )
    for sizes in (course.radius_m, course.height_m, course.root_m, course.leaf_area):
        assert np.all(np.diff(sizes[0][before]) >= -1e-12)


@given(crops, starts)
def test_no_plant_outgrows_its_crop(crop, on):
    course = one(crop, on, supported=crop is BEAN)
    assert course.radius_m.max() <= crop.spread_m.mid / 2 + 1e-12
    assert course.height_m.max() <= crop.height_m.mid + 1e-12
    assert course.root_m.max() <= crop.root_depth_m.mid + 1e-12
    assert np.all(course.base_m <= course.height_m)


@given(crops, starts, st.sampled_from([SITE, SOUTH, TROPICS, POLAR]))
def test_dates_follow_each_other(crop, on, where):
    course = one(crop, on, where)
    order = (course.sown, course.in_bed, course.harvest_first, course.harvest_last, course.out)
    for before, after in pairwise(order):
        assert before[0] <= after[0]
    days = course.weeks.starts + 3
    assert np.array_equal(course.present[0], (days >= course.in_bed[0]) & (days <= course.out[0]))
    for sizes in (course.radius_m, course.height_m, course.base_m, course.root_m, course.leaf_area):
        assert np.all(sizes[0][~course.present[0]] == 0.0)
        assert np.all(np.isfinite(sizes))


@given(st.lists(st.tuples(crops, starts, st.booleans()), min_size=1, max_size=8))
def test_a_planting_does_not_depend_on_its_company(chosen):
    plantings = [planted(crop, on, warmed=warmed) for crop, on, warmed in chosen]
    together = follow(SITE, plantings, YEAR)
    for row, planting in enumerate(plantings):
        alone = follow(SITE, [planting], YEAR)
        for name in Course.__dataclass_fields__:
            if name != "weeks":
                one, two = getattr(together, name)[row], getattr(alone, name)[0]
                assert np.array_equal(one, two, equal_nan=True), name


def half_a_year_on(on: date) -> date:
    """The same day six months on, at most the 28th."""
    return date(on.year + (on.month > 6), (on.month + 5) % 12 + 1, min(on.day, 28))


@given(annuals, starts)
def test_south_is_north_half_a_year_on(crop, on):
    north = one(crop, on.replace(day=min(on.day, 28)), SITE)
    south = one(crop, half_a_year_on(on), SOUTH, Weeks(date(2026, 7, 1), 105))
    if north.ripe[0] and south.ripe[0]:
        # The halves' months have not the same lengths (February, August), so the curves differ a little; in
        # winter, when a day brings little warmth, the same difference takes more days to make up.
        ripe = north.harvest_first[0].astype(object)
        slack = 6 if 4 <= ripe.month <= 10 else 25
        assert abs((south.harvest_first[0].astype(object) - half_a_year_on(ripe)).days) <= slack
        assert south.radius_m.max() == pytest.approx(north.radius_m.max(), rel=0.05)


def test_nothing_grows_below_the_base():
    # Invented: 3 °C the year round with a day's range of a degree, base 4.
    cold = site(climate=Climate(mean_c=(3.0,) * 12, min_c=(2.5,) * 12, max_c=(3.5,) * 12))
    course = one(CHARD, date(2026, 4, 1), cold)
    assert not course.ripe[0]
    assert course.radius_m.max() == 0.0


def test_cold_is_slower():
    warm, cold = one(RADISH, date(2026, 6, 1)), one(RADISH, date(2026, 3, 1))
    took = lambda c: (c.harvest_first[0] - c.in_bed[0]) / DAY  # noqa: E731
    assert took(warm) < took(cold)


def test_raised_plants_bring_their_nursery_with_them():
    course = one(TOMATO, date(2026, 5, 20))
    assert course.sown[0] == np.datetime64("2026-05-20") - 45 * DAY
    # A tomato is planted out 8–15 cm wide and high (common practice).
    week = TWO_YEARS.index(date(2026, 5, 25))
    assert 0.04 <= course.radius_m[0, week] <= 0.08


def test_a_young_raised_plant_is_later_and_an_old_one_not_earlier():
    on = date(2026, 5, 20)
    usual = one(TOMATO, on)
    young = one(TOMATO, on, sown_on=later(on, -20))
    old = one(TOMATO, on, sown_on=later(on, -90))
    assert young.harvest_first[0] > usual.harvest_first[0]
    assert old.harvest_first[0] == usual.harvest_first[0]
    assert old.sown[0] < usual.sown[0] < young.sown[0]


def test_sown_in_place_takes_longer_in_the_bed_than_raised():
    on = date(2026, 5, 20)
    sown, raised = one(LETTUCE, on, kind="sown"), one(LETTUCE, on, kind="raised")
    assert sown.harvest_first[0] > raised.harvest_first[0]
    assert sown.sown[0] == sown.in_bed[0]


def test_single_harvest_stands_its_length_in_days():
    course = one(LETTUCE, date(2026, 6, 1))
    assert course.harvest_last[0] - course.harvest_first[0] == 14 * DAY
    assert course.out[0] == course.harvest_last[0]


def test_repeated_harvest_goes_by_warmth_and_twice_its_days_at_most():
    summer = one(CHARD, date(2026, 4, 15))
    autumn = one(CHARD, date(2026, 8, 20))
    length = lambda c: (c.harvest_last[0] - c.harvest_first[0]) / DAY  # noqa: E731
    assert length(summer) < length(autumn) <= 200


def test_cut_and_come_again_stands_lower_while_it_is_cut():
    course = one(CHARD, date(2026, 4, 15))
    week = TWO_YEARS.index(course.harvest_first[0].astype(object)) + 2
    assert course.height_m[0, week] == pytest.approx(0.75 * 0.3, rel=0.05)
    assert course.radius_m[0, week] == pytest.approx(0.15, rel=0.05)


def test_the_grower_ends_it():
    course = one(TOMATO, date(2026, 5, 20), end=date(2026, 7, 1))
    assert course.out[0] == np.datetime64("2026-07-01")
    assert not course.ripe[0]
    assert course.harvest_first[0] == course.harvest_last[0] == course.out[0]
    assert not course.frosted[0]


def test_first_frost_ends_tender_crops():
    course = one(TOMATO, date(2026, 5, 20))
    assert course.ripe[0]
    assert course.out[0] == np.datetime64("2026-10-12")


def test_too_late_for_a_tender_crop():
    course = one(TOMATO, date(2026, 8, 15))
    assert course.frosted[0]
    assert not course.ripe[0]
    assert course.out[0] == np.datetime64("2026-10-12")


def test_too_early_for_a_tender_crop():
    assert one(TOMATO, date(2026, 4, 20)).frosted[0]
    assert not one(TOMATO, date(2026, 5, 10)).frosted[0]
    # A seed is safe until it shows: a bean sown five days before the last frost comes up after it.
    assert not one(BEAN, date(2026, 5, 5)).frosted[0]


def test_hardy_crops_outlive_frost():
    course = one(GARLIC, date(2026, 10, 10))
    assert not course.frosted[0]
    assert course.ripe[0]
    assert date(2027, 6, 1) < course.harvest_first[0].astype(object) < date(2027, 8, 15)


def test_killing_temperature_moves_the_frost_dates_outward():
    tender = make(
        "tender", (20.0, 30.0, 30.0, 60.0), frost="tender", harvest="repeated", harvest_length_d=200.0
    )
    hardier = make(
        "hardier", (20.0, 30.0, 30.0, 60.0), frost="hardy", frost_kill_c=-5.0, harvest="repeated",
        harvest_length_d=200.0,
    )  # fmt: skip
    on = date(2026, 7, 1)
    assert one(tender, on).out[0] < one(hardier, on).out[0]


def test_a_cover_warms_and_shields():
    on = date(2026, 5, 4)
    bare, under = one(TOMATO, on), one(TOMATO, on, warmed=True)
    assert bare.frosted[0]
    assert not under.frosted[0]
    assert under.harvest_first[0] < bare.harvest_first[0]
    # Nothing shields from the frosts of early April.
    assert one(TOMATO, date(2026, 4, 5), warmed=True).frosted[0]


def test_a_cover_that_comes_off():
    on = date(2026, 5, 4)
    always = one(TOMATO, on, warmed=True)
    spring = one(TOMATO, on, warmed=True, warmed_until=date(2026, 6, 1))
    never = one(TOMATO, on)
    assert always.harvest_first[0] < spring.harvest_first[0] < never.harvest_first[0]
    # While it lies there both are alike, later the one lags behind.
    june, july = TWO_YEARS.index(date(2026, 5, 25)), TWO_YEARS.index(date(2026, 7, 10))
    assert spring.radius_m[0, june] == pytest.approx(always.radius_m[0, june])
    assert spring.radius_m[0, july] < always.radius_m[0, july]
    # Taken off before the last frost it shields no longer; the first frost of autumn comes as in the open.
    assert not spring.frosted[0]
    assert one(TOMATO, on, warmed=True, warmed_until=date(2026, 5, 6)).frosted[0]
    assert spring.out[0] <= np.datetime64("2026-10-12")


@given(annuals, starts, st.integers(1, 200))
def test_more_days_under_a_cover_never_delay(crop, on, days):
    shorter = one(crop, on, warmed=True, warmed_until=later(on, days))
    longer = one(crop, on, warmed=True, warmed_until=later(on, days + 10))
    if shorter.ripe[0] and longer.ripe[0]:
        assert longer.harvest_first[0] <= shorter.harvest_first[0]


def test_a_support_turns_spread_into_height():
    on = date(2026, 5, 20)
    up, down = one(BEAN, on, supported=True), one(BEAN, on)
    assert up.height_m.max() == pytest.approx(2.0)
    assert down.height_m.max() == pytest.approx(1.0)
    assert down.radius_m.max() > up.radius_m.max()
    # The same canopy: half the height over twice the ground.
    assert down.radius_m.max() ** 2 * down.height_m.max() == pytest.approx(
        up.radius_m.max() ** 2 * up.height_m.max()
    )
    led, run = one(SQUASH, on, supported=True), one(SQUASH, on)
    assert led.height_m.max() > run.height_m.max()
    assert led.radius_m.max() < run.radius_m.max()


def test_across_new_year():
    weeks = Weeks(date(2026, 9, 1), 60)
    course = follow(SITE, [planted(GARLIC, date(2026, 10, 10))], weeks)
    winter = slice(weeks.index(date(2026, 12, 15)), weeks.index(date(2027, 2, 15)))
    assert course.present[0, winter].all()
    assert np.all(np.diff(course.radius_m[0, winter]) < 0.02)
    assert course.radius_m[0, weeks.index(date(2027, 6, 10))] > 0.9 * 0.15


def test_leap_day_start():
    course = follow(SITE, [planted(CHARD, date(2028, 2, 29))], Weeks(date(2028, 1, 1), 60))
    assert course.in_bed[0] == np.datetime64("2028-02-29")
    assert course.harvest_first[0] > course.in_bed[0]


def test_the_tropics_have_no_frost():
    course = one(TOMATO, date(2026, 11, 1), TROPICS)
    assert course.ripe[0]
    assert not course.frosted[0]


def test_the_polar_summer_is_too_short():
    course = one(TOMATO, date(2026, 7, 2), POLAR)
    assert not course.ripe[0]
    assert course.frosted[0]
    assert course.out[0] == np.datetime64("2026-08-05")


def test_perennials_grow_anew_each_year():
    course = one(RHUBARB, date(2023, 3, 1), weeks=TWO_YEARS)
    at = lambda on: course.radius_m[0, TWO_YEARS.index(on)]  # noqa: E731
    for year in (2026, 2027):
        assert at(date(year, 2, 1)) < 0.1
        assert at(date(year, 7, 1)) == pytest.approx(0.55)
        assert at(date(year, 11, 20)) == 0.0
    assert course.present.all()
    assert course.root_m.min() == pytest.approx(0.4)


def test_a_perennial_is_picked_in_the_year_of_the_grid():
    course = follow(SITE, [planted(RHUBARB, date(2019, 3, 1))], YEAR)
    assert course.harvest_first[0].astype(object).year == 2026


def test_perennials_without_stage_days_grow_through_their_first_year():
    young, old = one(THYME, date(2026, 4, 1), weeks=YEAR), one(THYME, date(2024, 4, 1), weeks=YEAR)
    assert young.radius_m[0, YEAR.index(date(2026, 6, 1))] < 0.05
    assert young.radius_m[0, YEAR.index(date(2026, 12, 1))] > 0.14
    assert old.radius_m[0] == pytest.approx(0.15)


def test_neither_changeover_week_holds_both():
    # Out on one day, in on the next: no week counts both.
    first = one(RADISH, date(2026, 4, 1))
    nxt = one(LETTUCE, later(first.out[0].astype(object), 1))
    assert not np.any(first.present[0] & nxt.present[0])


def test_no_plantings():
    course = follow(SITE, [], YEAR)
    assert course.radius_m.shape == (0, 53)


def test_a_crop_without_its_numbers_is_refused():
    bare = make("bare", (20.0, 30.0, 15.0, 10.0), height_m=None)
    with pytest.raises(ValueError, match="'bare' has no height_m"):
        follow(SITE, [planted(bare, date(2026, 4, 1))], YEAR)


SEASON = (date(2026, 1, 1), date(2026, 12, 31))


def test_span_covers_the_season_and_every_planting():
    none = span(SITE, [], SEASON)
    assert none == Weeks(date(2026, 1, 1), 53)
    plantings = [planted(GARLIC, date(2025, 10, 10)), planted(GARLIC, date(2026, 10, 10))]
    weeks = span(SITE, plantings, SEASON)
    course = follow(SITE, plantings, weeks)
    assert np.all(course.in_bed >= weeks.starts[0])
    assert np.all(course.out < weeks.starts[-1] + 7)
    assert (SEASON[0] - weeks.first).days % 28 == 0
    assert span(SITE, plantings, SEASON) == weeks


@given(st.lists(st.tuples(crops, st.dates(date(2020, 1, 1), date(2032, 1, 1))), max_size=5))
def test_span_is_three_years_at_most(chosen):
    weeks = span(SITE, [planted(c, on) for c, on in chosen], SEASON)
    assert weeks.count <= 156
    assert weeks.first <= SEASON[0]
    assert weeks.first >= SEASON[0] - timedelta(weeks=52)
    assert weeks.first + timedelta(weeks=weeks.count) > SEASON[1]


def test_frost_dates_given_without_frost():
    free = site(frost=Frost(basis="none"))
    assert not one(TOMATO, date(2026, 2, 1), free).frosted[0]


def test_southern_frost_dates_are_read_across_new_year():
    # Frost-free from 8 November to 12 April.
    assert not one(TOMATO, date(2026, 11, 20), SOUTH).frosted[0]
    assert one(TOMATO, date(2026, 9, 1), SOUTH).frosted[0]
    assert one(TOMATO, date(2026, 11, 20), SOUTH).out[0] <= np.datetime64("2027-04-12")
    assert SOUTH.frost.last == DayOfYear(month=11, day=8)
