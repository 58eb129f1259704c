"""Harvest windows and start windows: what cold, average and warm years bring."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.garden.site import DayOfYear
from gardencanvas.season.growth import follow
from gardencanvas.season.starting import start_window
from gardencanvas.season.weather import PERSISTENCE, departures
from gardencanvas.season.windows import windows
from tests.season.crops_for_tests import (
    BEAN,
    CHARD,
    GARLIC,
    LETTUCE,
    POLAR,
    RADISH,
    RHUBARB,
    SITE,
    SOUTH,
    TOMATO,
    TROPICS,
    TWO_YEARS,
    later,
    planted,
)

annuals = st.sampled_from((LETTUCE, TOMATO, BEAN, CHARD, RADISH))


@given(annuals, st.dates(date(2026, 3, 1), date(2026, 8, 1)))
@settings(max_examples=15)
def test_the_average_year_lies_in_the_window(crop, on):
    planting = planted(crop, on)
    (window,) = windows(SITE, [planting], TWO_YEARS)
    course = follow(SITE, [planting], TWO_YEARS)
    assert 0.0 <= window.ripens <= 1.0
    if window.first is None or not course.ripe[0]:
        return
    early, middle, late = window.first
    assert early <= middle <= late
    assert window.last[0] <= window.last[1] <= window.last[2]
    assert early <= course.harvest_first[0].astype(object) <= late
    if window.ripens > 0.95:
        # Within a few days, not to the day: warmth above the base is not linear in the weather.
        assert abs((course.harvest_first[0].astype(object) - middle).days) <= 6


def test_eight_years_in_ten():
    # A radish in early summer: days of 15.9 °C, its need fixed. The middle 80 % of years is spread about as a
    # temperature sum of AR(1) days says: sd of the mean of n days = s √((1 + ρ)/(1 − ρ)/n), and .7 °C a year.
    (window,) = windows(SITE, [planted(RADISH, date(2026, 6, 1))], TWO_YEARS)
    course = follow(SITE, [planted(RADISH, date(2026, 6, 1))], TWO_YEARS)
    days = (course.harvest_first[0] - course.in_bed[0]).astype(int)
    spread = np.hypot(3.0 * np.sqrt((1 + 0.65) / (1 - 0.65) / days), 0.7)
    expected = 2 * 1.2816 * spread / (16.0 - 4.0) * days
    assert (window.first[2] - window.first[0]).days == pytest.approx(expected, abs=2.0)


def test_the_same_years_each_time_and_for_every_crop():
    planting = planted(LETTUCE, date(2026, 4, 20))
    (alone,) = windows(SITE, [planting], TWO_YEARS)
    together = windows(SITE, [planted(TOMATO, date(2026, 5, 20)), planting], TWO_YEARS)
    assert together[1] == alone


def test_departures_are_persistent_and_as_wide_as_asked():
    days = departures(400, 365, spread_c=3.0)
    assert days.shape == (400, 365)
    assert float(days.std()) == pytest.approx(3.0, rel=0.02)
    assert float(days[:, 0].std()) == pytest.approx(3.0, rel=0.1)
    correlation = np.corrcoef(days[:, :-1].ravel(), days[:, 1:].ravel())[0, 1]
    assert correlation == pytest.approx(PERSISTENCE, abs=0.02)


def test_odds_of_frost_fall_through_spring():
    days = [later(date(2026, 4, 10), 10 * n) for n in range(8)]
    odds = [w.frost_after for w in windows(SITE, [planted(TOMATO, on) for on in days], TWO_YEARS)]
    assert odds == sorted(odds, reverse=True)
    # On the typical last frost, 10 May, odds are even (definition).
    assert odds[3] == pytest.approx(0.5, abs=0.08)
    assert odds[-1] < 0.05


def test_a_plant_out_on_the_typical_last_frost_runs_even_odds():
    """By definition of that date; a week later Φ(−7/16), two weeks Φ(−14/16) from tables of the normal."""
    days = [date(2026, 5, 10), date(2026, 5, 17), date(2026, 5, 24)]
    odds = [w.frost_after for w in windows(SITE, [planted(TOMATO, on) for on in days], TWO_YEARS)]
    assert odds == pytest.approx([0.5, 0.3309, 0.1908], abs=0.0005)


springs = st.dates(date(2026, 1, 20), date(2026, 9, 1))  # from the coldest day to before the first frost


@given(annuals, springs, st.integers(1, 60))
@settings(max_examples=15)
def test_a_later_start_in_one_year_never_runs_more_risk_of_spring_frost(crop, on, days):
    late = min(later(on, days), date(2026, 9, 1))
    first, second = windows(SITE, [planted(crop, on), planted(crop, late)], TWO_YEARS)
    assert second.frost_after <= first.frost_after + 1e-12
    assert second.ripens <= first.ripens + 1e-12


def test_the_course_names_the_frosts_that_matter():
    """Last frost 10 May, first 12 October: those of a tender crop, whenever in between it is planted."""
    course = follow(SITE, [planted(TOMATO, date(2026, 5, 25)), planted(GARLIC, date(2026, 4, 1))], TWO_YEARS)
    assert course.last_frost[0] == np.datetime64("2026-05-10")
    assert course.killing_frost[0] == np.datetime64("2026-10-12")
    assert course.exposed[0] == np.datetime64("2026-05-25")
    assert np.isnat(course.killing_frost[1])
    assert np.isnat(course.last_frost[1])


def test_frost_and_the_growers_end_do_not_change_when_a_crop_would_be_ready():
    late, ended = planted(TOMATO, date(2026, 8, 10)), planted(TOMATO, date(2026, 5, 25), end=date(2026, 6, 1))
    free = planted(TOMATO, date(2026, 5, 25))
    course = follow(SITE, [late, ended, free], TWO_YEARS)
    assert not course.ripe[:2].any()
    assert course.ready[0] > course.killing_frost[0]
    assert course.ready[1] == course.ready[2] == course.harvest_first[2]


def test_a_cover_that_comes_off_lies_between():
    on = date(2026, 5, 4)
    always, spring, never = windows(
        SITE,
        [
            planted(TOMATO, on, warmed=True),
            planted(TOMATO, on, warmed=True, warmed_until=date(2026, 6, 1)),
            planted(TOMATO, on),
        ],
        TWO_YEARS,
    )
    assert always.first[1] < spring.first[1] < never.first[1]
    assert spring.frost_after < never.frost_after


def test_too_late_seldom_ripens():
    (window,) = windows(SITE, [planted(TOMATO, date(2026, 8, 10))], TWO_YEARS)
    assert window.ripens < 0.2
    assert window.first is None


def test_no_frost_no_odds():
    (window,) = windows(TROPICS, [planted(TOMATO, date(2026, 1, 10))], TWO_YEARS)
    assert window.frost_after == 0.0
    assert window.ripens == 1.0


def test_a_perennial_in_its_year():
    (window,) = windows(SITE, [planted(RHUBARB, date(2020, 3, 1))], TWO_YEARS)
    assert {d.year for d in window.first} <= {2026, 2027}


def inside(day: DayOfYear | None, first: tuple[int, int], last: tuple[int, int]) -> bool:
    return day is not None and first <= (day.month, day.day) <= last


def test_when_to_start():
    # Last frost 10 May, first 12 October. A tender plant goes out at the last frost and needs its warmth.
    tomato = start_window(SITE, TOMATO, "raised")
    assert inside(tomato.first, (5, 9), (5, 11))
    assert inside(tomato.last, (5, 25), (7, 20))
    # A seed may be sown before the last frost: it shows after it.
    bean = start_window(SITE, BEAN, "sown")
    assert inside(bean.first, (4, 15), (5, 10))
    under = start_window(SITE, BEAN, "sown", warmed=True)
    assert (under.first.month, under.first.day) < (bean.first.month, bean.first.day)


def test_every_start_in_the_window_ripens_and_its_neighbours_outside_do_not_all():
    window = start_window(SITE, TOMATO, "raised")
    on = date(2026, window.last.month, window.last.day)
    assert follow(SITE, [planted(TOMATO, on)], TWO_YEARS).ripe[0]
    assert not follow(SITE, [planted(TOMATO, later(on, 1))], TWO_YEARS).ripe[0]
    on = date(2026, window.first.month, window.first.day)
    assert not follow(SITE, [planted(TOMATO, on)], TWO_YEARS).frosted[0]


def test_the_south_starts_across_new_year():
    window = start_window(SOUTH, TOMATO, "raised")
    assert inside(window.first, (11, 7), (11, 9))
    assert inside(window.last, (11, 25), (12, 31)) or inside(window.last, (1, 1), (1, 20))


def test_the_tropics_start_at_any_time_and_the_pole_never():
    assert start_window(TROPICS, TOMATO, "raised").always
    polar = start_window(POLAR, TOMATO, "raised")
    assert polar.first is None
    assert not polar.always


def test_garlic_stands_over_winter():
    window = start_window(SITE, GARLIC, "set")
    assert window.always or inside(window.last, (9, 1), (12, 31))
