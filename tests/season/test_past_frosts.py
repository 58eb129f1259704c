"""What a list of past frosts allows to be said."""

from datetime import date, timedelta
from math import sqrt

import pytest
import scipy.stats
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.season.dayofyear import day_index
from gardencanvas.season.past_frosts import told


def year_of(day_number, year=2022):
    """The date of a day of the year, 1 for 1 January, of a year without 29 February."""
    return date(year, 1, 1) + timedelta(days=day_number - 1)


SPRING = (101, 95, 110, 118, 103, 99, 121, 107, 112, 96, 105, 115, 109, 100, 104)


def test_fifteen_years_of_last_frosts():
    """Worked by hand: mean 106.33, s 7.816; frost after day 117.19 in one year of ten (Student's t)."""
    known = told([year_of(n) for n in SPRING], south=False, spring=True)
    assert day_index(known.mean) + 1 == 106
    assert day_index(known.safe) + 1 == 117
    assert (day_index(known.earliest) + 1, day_index(known.latest) + 1) == (95, 121)
    assert (known.years, known.frosty, known.trust) == (15, 15, "enough years")


def test_autumn_is_the_mirror_of_spring():
    known = told([year_of(365 - n) for n in SPRING], south=False, spring=False)
    assert day_index(known.safe) + 1 == pytest.approx(365 - 117.19, abs=0.51)


@pytest.mark.parametrize(
    ("years", "trust"),
    [(1, "few years"), (4, "few years"), (5, "wide limit"), (9, "wide limit"), (10, "enough years")],
)
def test_fewer_years_say_less(years, trust):
    known = told([year_of(n) for n in SPRING[:years]], south=False, spring=True)
    assert known.trust == trust
    assert (known.safe is None) == (trust == "few years")


@given(st.lists(st.integers(60, 160), min_size=5, max_size=30))
def test_the_safe_day_is_a_reference_library_s_prediction_limit(days):
    known = told([year_of(n) for n in days], south=False, spring=True)
    n, mean = len(days), sum(days) / len(days)
    s = sqrt(sum((d - mean) ** 2 for d in days) / (n - 1))
    limit = mean + scipy.stats.t.ppf(0.9, n - 1) * s * sqrt(1 + 1 / n)
    assert day_index(known.safe) + 1 == pytest.approx(limit, abs=0.51)


def test_years_without_frost_make_frost_rarer():
    """Thom's mixed distribution: the tenth of all years is an eighth of those with frost."""
    days = [year_of(n) for n in SPRING]
    rare = told([*days[:12], None, None, None], south=False, spring=True)
    always = told(days[:12], south=False, spring=True)
    assert (rare.years, rare.frosty) == (15, 12)
    assert day_index(rare.safe) < day_index(always.safe)
    assert told([days[0], *([None] * 19)], south=False, spring=True).safe is None


def test_no_year_with_frost_tells_nothing():
    assert told([None] * 6, south=False, spring=True) is None
    assert told([], south=False, spring=True) is None


def test_a_southern_spring_and_autumns_across_new_year():
    south = told([date(2024, 9, 20), date(2025, 9, 10)], south=True, spring=True)
    assert (south.mean.month, south.mean.day) == (9, 15)
    mild = told([date(2024, 12, 20), date(2026, 1, 10)], south=False, spring=False)
    assert (mild.mean.month, mild.mean.day) in {(12, 30), (12, 31)}
    assert (mild.earliest.month, mild.latest.month) == (12, 1)
