"""Start dates against a worked example of degree-days, and laws of even intervals."""

from datetime import date, timedelta
from math import pi

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.garden.errors import Refusal
from gardencanvas.planner.succession.dates import Outlook, inverted, outlook, starts
from gardencanvas.planner.succession.rhythm import LONGEST_D, MOST_PARTS, Between, Rhythm, check_parts
from tests.season.crops_for_tests import RADISH, SITE, SOUTH, TROPICS, make, planted, site

# T = 11 + 9 sin(2π(J − 110)/365) °C on day J of the year, base 4 °C, C(J) the degree-days of days 1 … J, 700
# of them to the harvest: for harvests on days 170, 177 … 205 sow on these days (C(h) − C(s) = D, solved with
# numpy alone).
SOWINGS = (106.9, 120.6, 131.9, 141.9, 150.9, 159.3)
HARVESTS = np.arange(170, 206, 7)


def sine_site():
    """The climate of the example as means of months, days counted in the middle of each."""
    means, begin = [], 0
    for length in (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31):
        days = np.arange(begin, begin + length) + 0.5
        means.append(float(np.mean(11 + 9 * np.sin(2 * pi * (days - 110) / 365))))
        begin += length
    return site(tuple(means))


def ahead(where, crop, on, days=365, kind=None):
    return outlook(where, [planted(crop, on + timedelta(days=d), kind) for d in range(days)])


def test_inverting_degree_days_gives_the_worked_example():
    day = np.arange(1, 366)
    warmth = np.cumsum(np.maximum(11 + 9 * np.sin(2 * pi * (day - 110) / 365) - 4, 0))
    harvest = np.interp(warmth[89:179] + 700, warmth, day)  # of sowings on days 90 … 179
    assert inverted(harvest, HARVESTS) + 90 == pytest.approx(SOWINGS, abs=0.06)


def test_sowings_of_a_crop_in_that_climate_come_on_those_days():
    """From monthly means to dates: within a day of the example, which knows no whole days."""
    crop = make("example", (20.0, 25.0, 15.0, 10.0), grown_at_c=14.0, harvest_from_sowing_d=70.0)
    found = ahead(sine_site(), crop, date(2026, 1, 1) + timedelta(days=round(SOWINGS[0])), 120)
    taken = starts(found.harvest, Rhythm(7, Between.HARVESTS), 6)
    assert np.array(taken) + 107 == pytest.approx(SOWINGS, abs=1.0)
    assert found.harvest[0] + 107 == pytest.approx(170, abs=1.5)


def test_sowings_come_closer_together_towards_summer():
    """Interval of sowings ≈ interval of harvests × warmth at harvest / warmth at sowing: it falls."""
    found = ahead(SITE, RADISH, date(2026, 3, 20))
    steps = np.diff(starts(found.harvest, Rhythm(14, Between.HARVESTS), 6))
    assert steps[0] > steps[-1]
    assert steps[0] > 14


@pytest.mark.parametrize(("where", "on"), [(SITE, date(2026, 3, 15)), (SOUTH, date(2026, 9, 13))])
def test_half_the_world_round_is_half_a_year_on(where, on):
    found = ahead(where, RADISH, on)
    north = ahead(SITE, RADISH, date(2026, 3, 15))
    taken, there = (starts(f.harvest, Rhythm(10, Between.HARVESTS), 8) for f in (found, north))
    assert np.abs(np.array(taken) - there).max() <= 4  # half-years differ by a few days


def test_nothing_is_sown_that_frost_would_kill_before_it_is_ripe():
    """A tender crop of 60 warm days: the last sowing is ripe before the first frost, one more is not."""
    bean = make("bean", (20.0, 30.0, 30.0, 10.0), grown_at_c=20.0, base_temperature_c=10.0,
                harvest_from_sowing_d=60.0, frost="tender", top_temperature_c=30.0)  # fmt: skip
    found = ahead(SITE, bean, date(2026, 5, 20))
    last = found.on(int(found.harvest[-1]))
    assert last < date(2026, 10, 12)
    assert len(found.harvest) < 365
    more = ahead(SITE, bean, found.on(len(found.harvest)))
    assert len(more.harvest) == 0


def test_hardy_crops_are_not_sown_for_next_spring():
    found = ahead(SITE, RADISH, date(2026, 4, 1))
    assert found.on(int(found.harvest[-1])) < date(2027, 2, 1)


def test_without_frost_it_goes_on_all_the_year():
    found = ahead(TROPICS, RADISH, date(2026, 1, 1))
    assert len(found.harvest) == 365
    every = starts(found.harvest, Rhythm(30, Between.HARVESTS), MOST_PARTS)
    assert np.diff(every).tolist() == [30] * (len(every) - 1)  # the same warmth each day


def test_every_ten_days_is_every_ten_days():
    found = Outlook(date(2026, 4, 1), np.arange(100, 195))
    taken = starts(found.harvest, Rhythm(10), MOST_PARTS)
    assert [found.on(s) for s in taken][:3] == [date(2026, 4, 1), date(2026, 4, 11), date(2026, 4, 21)]
    assert len(taken) == 10


CROPS = st.sampled_from(["radish", "lettuce", "carrot", "spinach", "dwarf-bean", "kohlrabi"])


@given(CROPS, st.dates(date(2027, 3, 1), date(2027, 7, 15)), st.integers(1, 40), st.sampled_from(Between))
def test_dates_increase_and_harvests_keep_their_interval(crop, on, days, between):
    crop = catalogue().resolve(crop, None)
    found = ahead(SITE, crop, on)
    if len(found.harvest) == 0:
        return
    taken = starts(found.harvest, Rhythm(days, between), 12)
    assert taken[0] == 0
    assert (np.diff(taken) > 0).all()
    if between is Between.STARTS:
        assert set(np.diff(taken)) <= {days}
        return
    harvest = found.harvest
    for before, start, target in zip(taken, taken[1:], harvest[0] + days * np.arange(1, 12), strict=False):
        least = np.abs(harvest[before + 1 :] - target).min()
        assert abs(harvest[start] - target) == least  # no other whole day does better
        jump = harvest[start] - harvest[start - 1]
        if jump <= 2 and before < start - 1:
            assert least <= 1


@pytest.mark.parametrize("days", [0, -7, LONGEST_D + 1])
def test_an_interval_must_be_one(days):
    with pytest.raises(Refusal, match=f"{days} days: allowed is 1 to 180"):
        Rhythm(days).check()


@pytest.mark.parametrize("parts", [1, 0, -3, 53])
def test_so_must_a_number_of_parts(parts):
    with pytest.raises(Refusal, match=f"{parts}: allowed is 2 to 52"):
        check_parts(parts)


def test_as_many_as_ripen_is_allowed():
    check_parts(None)
