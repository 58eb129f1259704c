"""Frost risks: lists of years, rare frost, both hemispheres, and the rough estimate."""

from datetime import date

import numpy as np
import pytest
import scipy.stats
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.site import Climate, DayOfYear
from gardencanvas.season.chance import normal_quantile, student_below, student_quantile
from gardencanvas.season.frost import (
    YEAR_TO_YEAR_D,
    History,
    estimate,
    frost_of_years,
    history,
    mixed_day,
    risk_after,
)
from tests.season.crops_for_tests import TEMPERATE


@given(st.floats(0.001, 0.999), st.integers(1, 60))
def test_quantiles_are_those_of_a_reference_library(p, df):
    assert student_quantile(p, df) == pytest.approx(scipy.stats.t.ppf(p, df), rel=1e-8, abs=1e-9)
    assert normal_quantile(p) == pytest.approx(scipy.stats.norm.ppf(p), rel=1e-8, abs=1e-9)


@given(st.floats(-40.0, 40.0), st.integers(1, 60))
def test_student_is_that_of_a_reference_library(t, df):
    assert student_below(t, df) == pytest.approx(scipy.stats.t.cdf(t, df), abs=1e-10)


def test_no_quantile_outside_zero_and_one():
    with pytest.raises(ValueError, match="between 0 and 1"):
        student_quantile(1.0, 5)


@given(st.floats(60.0, 140.0), st.floats(1.0, 25.0), st.integers(2, 40), st.floats(0.02, 0.48))
def test_safer_is_later(mean, sd, years, risk):
    past = History(mean, sd, years)
    assert past.day(risk) > past.day(risk + 0.01) > mean
    # Few years: a wider limit than the normal one.
    assert past.day(risk) > mean + sd * normal_quantile(1 - risk)


def test_rare_frost():
    rare = History(106.0, 8.0, 12, share=0.05)
    assert rare.day(0.10) is None
    assert mixed_day(106.0, 8.0, 0.05, 0.10) is None
    assert mixed_day(106.0, 8.0, 0.8, 0.10) < mixed_day(106.0, 8.0, 1.0, 0.10)


def test_one_year_is_no_risk():
    with pytest.raises(ValueError, match="at least two years"):
        History(106.0, 0.0, 1).day(0.1)
    with pytest.raises(ValueError, match="none of these years"):
        history([None, None], south=False, spring=True)


def test_autumn_frost_after_new_year_is_later_than_one_before():
    # A mild place: first frosts on 20 December and 10 January have their mean between.
    past = history([date(2024, 12, 20), date(2026, 1, 10)], south=False, spring=False)
    assert past.mean == pytest.approx((353 + 374) / 2)
    typical = frost_of_years([date(2025, 2, 1)], [date(2024, 12, 20), date(2026, 1, 10)], south=False)
    assert (typical.first.month, typical.first.day) in {(12, 30), (12, 31)}


def test_southern_years():
    past = history([date(2024, 9, 20), date(2025, 9, 10)], south=True, spring=True)
    assert past.mean == pytest.approx((262 + 252) / 2, abs=0.6)
    typical = frost_of_years(
        [date(2024, 9, 20), date(2025, 9, 10)], [date(2024, 5, 1), date(2025, 5, 11)], south=True
    )
    assert typical.last == DayOfYear(month=9, day=15)
    assert typical.first == DayOfYear(month=5, day=6)
    assert typical.basis == "past years"


def test_most_years_without_frost_have_no_frost_date():
    typical = frost_of_years([date(2024, 2, 1), None, None], [date(2024, 12, 24), None, None], south=False)
    assert typical.last is None
    assert typical.basis == "none"


def test_even_odds_on_the_typical_day():
    assert risk_after(129.0, 129.0) == pytest.approx(0.5)
    assert risk_after(129.0 + 1.2816 * YEAR_TO_YEAR_D, 129.0) == pytest.approx(0.1, abs=1e-4)


def test_the_estimate_says_that_it_is_one():
    guess = estimate(Climate(mean_c=TEMPERATE))
    assert guess.frost.basis == "estimated"
    assert guess.minima == "guessed"
    day = lambda d: (d.month, d.day)  # noqa: E731
    assert day(guess.last[0]) < day(guess.last[1]) < day(guess.last[2])
    assert day(guess.first[0]) < day(guess.first[1]) < day(guess.first[2])
    assert guess.last[1] == guess.frost.last


def test_the_estimate_in_the_south_is_half_a_year_on():
    north = estimate(Climate(mean_c=TEMPERATE))
    south = estimate(Climate(mean_c=TEMPERATE[6:] + TEMPERATE[:6]))
    assert south.frost.last.month in {
        (north.frost.last.month + 5) % 12 + 1,
        (north.frost.last.month + 6) % 12 + 1,
    }


def test_no_frost_is_estimated_in_the_tropics():
    guess = estimate(Climate(mean_c=(26.0,) * 12))
    assert guess.frost.last is None
    assert guess.years_with_frost == 0.0


def test_the_estimate_against_a_real_place():
    # Seattle 2012–2015 (NOAA): its last frosts (`<= 0` °C) fell on days 79, 63, 40 and 63, its first ones on
    # days 315, 325, 316 and 327 of the year. From the monthly means of the same minima the estimate's
    # eight years in ten must hold their means.
    from tests.oracles.test_season_rows import records

    weather = records("seattle_weather_2012_2015.csv")
    months = np.array([int(r["date"][5:7]) for r in weather])
    column = lambda k: np.array([float(r[k]) for r in weather])  # noqa: E731
    low, high = column("temp_min"), column("temp_max")
    of = lambda values: tuple(float(values[months == m].mean()) for m in range(1, 13))  # noqa: E731
    guess = estimate(Climate(mean_c=of((low + high) / 2), min_c=of(low), max_c=of(high)))
    assert guess.minima == "known"
    day = lambda d: date(2025, d.month, d.day).timetuple().tm_yday  # noqa: E731
    assert day(guess.last[0]) <= (79 + 63 + 40 + 63) / 4 <= day(guess.last[2])
    assert day(guess.first[0]) <= (315 + 325 + 316 + 327) / 4 <= day(guess.first[2])
