"""Timing: laws of days to spare, and plain calendar arithmetic."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.fit.report import Kind
from gardencanvas.garden.site import Climate
from gardencanvas.season.departing import departure_c
from tests.fit.makers import judged, rows
from tests.garden.makers import MEANS, site

MAINS = {
    "courgette": rows("main", "courgette", 3.0, 2, 0.9, 0.9, date(2027, 5, 20)),
    "cabbage": rows("main", "cabbage", 3.0, 3, 0.45, 0.5, date(2027, 5, 1)),
    "winter-squash": rows("main", "winter-squash", 3.0, 1, 1.3, 1.8, date(2027, 5, 25)),
}
DISTANCE = {"courgette": 0.75, "cabbage": 0.35, "winter-squash": 0.9}


def catch(crop, main, on, kind="raised"):
    return rows("quick", crop, 3.0, 1, 0.2, 0.3, on, kind, y=DISTANCE[main])


def days(main, crop, on):
    return judged(MAINS[main], catch(crop, main, on)).plantings["quick"].days_to_spare


@given(
    st.sampled_from(sorted(MAINS)),
    st.sampled_from(["lettuce", "radish", "spinach"]),
    st.integers(0, 60),
    st.integers(1, 30),
)
def test_an_earlier_start_never_leaves_fewer_days_to_spare(main, crop, day, earlier):
    late = date(2027, 4, 10) + timedelta(days=day)
    first, second = days(main, crop, late - timedelta(days=earlier)), days(main, crop, late)
    if first is not None and second is not None:
        # Closing over is seen by the week: an earlier, by then larger, plant may be met one week earlier.
        assert first >= second - 7


def test_days_to_spare_lie_between_the_dates_named():
    report = judged(MAINS["courgette"], catch("radish", "courgette", date(2027, 5, 5), "sown"))
    (finding,) = [f for f in report.findings if f.kind is Kind.TIMING]
    numbers = finding.numbers
    assert (numbers["closes"] - numbers["harvest_last"]).days == numbers["days"]
    assert report.plantings["quick"].days_to_spare == numbers["days"]
    assert numbers["harvest_last"] == report.plantings["quick"].harvest_last
    assert report.plantings["main"].days_to_spare is None


@pytest.mark.parametrize("on", [date(2027, 5, 1), date(2027, 5, 20), date(2027, 6, 10)])
def test_days_to_spare_in_a_cold_and_a_warm_year_are_those_of_a_colder_and_a_warmer_place(on):
    """A place all of whose months are warmer by the departure is, in its average year, the warm year here.

    Closing over is seen by the week there, by the day of gathered warmth here.
    """

    def spare(**changes):
        report = judged(MAINS["courgette"], catch("lettuce", "courgette", on), **changes)
        (finding,) = [f for f in report.findings if f.kind is Kind.TIMING]
        return finding.numbers, report.plantings["quick"]

    numbers, fit = spare()
    departure = departure_c((fit.harvest_last - on).days)
    for key, by in (("days_cold", -departure), ("days_warm", departure)):
        there, _ = spare(site=site(climate=Climate(mean_c=tuple(m + by for m in MEANS))))
        assert abs(numbers[key] - there["days"]) <= 4


def test_leaves_cover_the_ground_earlier_by_what_the_catch_crop_is_ahead():
    """Radishes have full leaf in a month (FAO-56 table 11), courgettes set out on 20 May in seven weeks."""
    report = judged(MAINS["courgette"], catch("radish", "courgette", date(2027, 4, 20), "sown"))
    (finding,) = [f for f in report.findings if f.kind is Kind.TIMING]
    assert 14 <= finding.numbers["earlier"] <= 63
    assert finding.numbers["families"] == 2
    late = judged(MAINS["courgette"], catch("radish", "courgette", date(2027, 7, 1), "sown"))
    assert all(f.numbers["earlier"] == 0 for f in late.findings if f.code in ("out in time", "too late"))


def test_ground_used_in_turns_names_the_days_between():
    first = rows("first", "spinach", 3.0, 3, 0.1, 0.25, date(2027, 4, 1), "sown", end=date(2027, 6, 20))
    second = rows("second", "leek", 3.0, 3, 0.15, 0.3, date(2027, 7, 20))
    (finding,) = judged(first, second).findings
    assert finding.code == "in turns"
    assert finding.numbers["out"] == date(2027, 6, 20)
    assert finding.numbers["days_between"] == 30


def test_a_crop_as_slow_as_its_neighbour_is_no_catch_crop():
    report = judged(MAINS["cabbage"], catch("cabbage", "cabbage", date(2027, 5, 1)))
    assert report.plantings["quick"].days_to_spare is None
