"""Cold and warm years against the simulated ones, which know nothing of them."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.garden.site import Frost
from gardencanvas.season.departing import departing, departure_c, spread_c
from gardencanvas.season.growth import follow
from gardencanvas.season.weather import YEARLY_C, departures
from gardencanvas.season.windows import windows
from tests.season.crops_for_tests import (
    CHARD,
    LETTUCE,
    RADISH,
    SITE,
    TEMPERATE,
    TOMATO,
    TWO_YEARS,
    later,
    planted,
    site,
)

FROSTLESS = site(tuple(t + 2.0 for t in TEMPERATE), frost=Frost(basis="none"))
STARTS = [
    (RADISH, date(2026, 4, 10)),
    (RADISH, date(2026, 6, 1)),
    (LETTUCE, date(2026, 4, 20)),
    (LETTUCE, date(2026, 7, 1)),
    (CHARD, date(2026, 5, 1)),
    (TOMATO, date(2026, 5, 20)),
]


@pytest.mark.parametrize("days", [1, 10, 45, 120])
def test_the_mean_of_some_days_spreads_as_simulated_weather_does(days):
    mean = departures(20_000, days, spread_c=3.0).mean(axis=1)
    assert spread_c(days) == pytest.approx(float(np.hypot(mean.std(), YEARLY_C)), rel=0.03)


@pytest.mark.parametrize(("crop", "on"), STARTS)
def test_one_year_in_ten_is_later_than_the_cold_year_and_one_earlier_than_the_warm_one(crop, on):
    planting = planted(crop, on)
    # Frost would leave out the latest years. The tenth of 200 years is itself uncertain by a sixth of a °C.
    (window,) = windows(FROSTLESS, [planting], TWO_YEARS)
    days = (window.first[1] - on).days
    cold = departing(FROSTLESS, planting, TWO_YEARS, -departure_c(days)).ready
    warm = departing(FROSTLESS, planting, TWO_YEARS, departure_c(days)).ready
    assert (cold - window.first[2]).days == pytest.approx(0, abs=3)
    assert (warm - window.first[0]).days == pytest.approx(0, abs=3)


@pytest.mark.parametrize(("crop", "on"), STARTS)
def test_a_year_that_does_not_depart_is_the_average_one(crop, on):
    planting = planted(crop, on)
    course = follow(SITE, [planting], TWO_YEARS)
    same = departing(SITE, planting, TWO_YEARS, 0.0)
    assert same.ready == course.ready[0].astype(object)
    assert same.harvest_last == course.harvest_last[0].astype(object)
    for day in (0, 1, 17, 60):
        assert abs((same.as_grown(later(on, day)) - later(on, day)).days) <= 1


@given(
    st.sampled_from((LETTUCE, TOMATO, RADISH, CHARD)),
    st.dates(date(2026, 3, 1), date(2026, 7, 1)),
    st.sampled_from([None, date(2026, 5, 1)]),
    st.floats(0.1, 3.0),
    st.integers(0, 90),
)
@settings(max_examples=60)
def test_a_warmer_year_never_delays(crop, on, covered_until, departure, days):
    warmed = covered_until is not None and covered_until >= on
    planting = planted(crop, on, warmed=warmed, warmed_until=covered_until if warmed else None)
    day = later(on, days)
    cold, warm = (departing(SITE, planting, TWO_YEARS, d) for d in (-departure, departure))
    assert warm.ready <= cold.ready
    assert warm.as_grown(day) <= cold.as_grown(day)
    assert warm.as_grown(day) <= later(day, 1)
