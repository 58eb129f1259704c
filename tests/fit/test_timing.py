"""Timing: laws of days to spare, and plain calendar arithmetic."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.fit.report import Kind
from tests.fit.makers import judged, rows

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
