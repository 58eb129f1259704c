"""Hours of work by hand."""

import pytest

from gardencanvas.measures.minutes import MINUTES, Minutes, Task, hours


def test_hours_are_jobs_times_minutes():
    """Two plantings out of 10 minutes and 0.75 for each plant: (10 + 9) + (10 + 18) minutes."""
    own = {**MINUTES, "plant out": Minutes(10.0, 0.75)}
    told = hours([Task("plant out", 12), Task("plant out", 24)], own)
    assert told.value == pytest.approx(47 / 60)
    assert told.low == pytest.approx(47 / 120, rel=0.2)
    assert told.high == pytest.approx(47 / 30, rel=0.2)


def test_the_growers_minutes_replace_the_stated_ones():
    assert hours([Task("thin", 10)], {"thin": Minutes(30.0)}).value == pytest.approx(0.5)


def test_a_job_without_minutes_is_not_known():
    assert not hours([Task("sow", 1), Task("whistle", 1)]).known


def test_no_jobs_take_no_time():
    assert hours([]).value == 0.0
