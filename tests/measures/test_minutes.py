"""Hours of work and cost of seed by hand."""

import pytest

from gardencanvas.crops.tin import SeedLot
from gardencanvas.measures.codes import Code
from gardencanvas.measures.comparison import measured
from gardencanvas.measures.jobs import JobKind, jobs
from gardencanvas.measures.minutes import MINUTES, Minutes, Task, hours
from gardencanvas.measures.reckoned.work import hours_of, tasks
from gardencanvas.measures.seed_order import seed_order
from tests.garden.makers import bed
from tests.measures.beds_for_tests import filled, garden_of, ground_of, layout


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


def test_hours_of_a_layout_are_those_of_its_jobs():
    """Every kind of job has its minutes; picking comes back each week of its harvest."""
    assert set(MINUTES) >= {kind.value for kind in JobKind}
    planting = filled("a", "leek", rows=2)
    made = garden_of(layout("l1", [ground_of(planting)], planting))
    listed = jobs(made, "l1")
    result = measured(made, "l1")
    assert result.whole.of(Code.HOURS) == hours_of(listed)
    assert result.beds["bed-1"].of(Code.HOURS) == hours_of(listed)
    beans = garden_of(layout("l1", [bed()], filled("b", "dwarf-bean")))
    (pick,) = [j for j in jobs(beans, "l1") if j.kind == "pick"]
    weeks = -(-((pick.until - pick.on).days + 1) // 7)
    assert len(tasks([pick])) == weeks >= 2


def test_hours_by_the_growers_own_minutes():
    planting = filled("a", "leek")
    made = garden_of(layout("l1", [ground_of(planting)], planting))
    own = {kind.value: Minutes(60.0) for kind in JobKind}
    assert measured(made, "l1", minutes=own).whole.of(Code.HOURS).value == len(tasks(jobs(made, "l1")))


def test_cost_of_seed_is_known_where_every_price_is():
    """At 0.01 a seed; without a price it is not known, and with enough seed in the tin it costs nothing."""
    planting = filled("a", "leek", rows=2)
    made = garden_of(layout("l1", [ground_of(planting)], planting))
    priced = SeedLot(id="one", crop="leek", seeds=1, year=2026, price=0.01)
    enough = SeedLot(id="two", crop="leek", seeds=5000, year=2026)
    (line,) = seed_order(made, "l1", [priced])
    assert not measured(made, "l1").whole.of(Code.SEED_COST).known
    cost = measured(made, "l1", lots=[priced]).whole.of(Code.SEED_COST)
    assert cost.value == pytest.approx(0.01 * line.order)
    assert measured(made, "l1", lots=[enough]).whole.of(Code.SEED_COST).value == 0.0


def test_sets_are_no_seed():
    planting = filled("a", "garlic", kind="set")
    made = garden_of(layout("l1", [ground_of(planting)], planting))
    assert not measured(made, "l1").whole.of(Code.SEED_COST).known


def test_no_jobs_take_no_time():
    assert hours([]).value == 0.0
