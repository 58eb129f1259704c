"""The pieces: how much a remedy changes, patterns made wider or cut, what is refused."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.fit.report import Remedy
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Block, Drift, Rows, Spots, Strip
from gardencanvas.garden.site import DayOfYear
from gardencanvas.planner.changes.leaving_out import cut
from gardencanvas.planner.changes.spacing import widened
from gardencanvas.planner.changes.starting import is_open
from gardencanvas.planner.changes.supporting import put_up
from gardencanvas.planner.codes import Change
from gardencanvas.planner.effort import effort
from gardencanvas.planner.remedies import apply
from gardencanvas.season.starting import StartWindow
from tests.garden.makers import garden
from tests.planner.gardens import LAYOUT, day, loose_plants, rows, two_brassicas

FOUR_ROWS = Rows(origin=(1.0, 2.0), angle_deg=90.0, length_m=3.0, rows=4, spacing_m=0.3, row_spacing_m=0.25)


def left(pattern, smaller):
    """Which stations of a pattern a cut one still has, by their places."""
    apart = np.hypot(*(pattern.stations[:, None] - smaller.stations[None]).transpose(2, 0, 1))
    kept = apart.min(axis=1) < 1e-6
    assert kept.sum() == len(smaller.stations), "a station has moved"
    return kept.reshape(4, 10)


@pytest.mark.parametrize(
    ("side", "gone"),
    [("first", np.s_[:1]), ("last", np.s_[3:]), ("begin", np.s_[:, :1]), ("end", np.s_[:, 9:])],
)
def test_cutting_a_side_leaves_the_others_where_they_stood(side, gone):
    expected = np.ones((4, 10), dtype=bool)
    expected[gone] = False
    assert (left(FOUR_ROWS, cut(FOUR_ROWS, side, 1)) == expected).all()


def test_blocks_and_strips_are_cut_too():
    block = Block(length_m=3.0, width_m=1.2, spacing_m=0.3)
    strip = Strip(length_m=3.0, width_m=0.8, spacing_m=0.3, across_m=0.2)
    for pattern in (block, strip):
        assert left(pattern, cut(pattern, "first", 1))[1:].all()
        assert left(pattern, cut(pattern, "end", 2))[:, :8].all()


def test_a_pattern_is_never_cut_away():
    with pytest.raises(Refusal):
        cut(FOUR_ROWS, "first", 4)
    with pytest.raises(Refusal):
        cut(Spots(points=((0.0, 0.0),)), "first", 1)


def test_fewer_rows_lie_in_the_middle_of_their_ground():
    wider = widened(FOUR_ROWS, "row_spacing_m", 0.3)
    assert (wider.rows, wider.row_spacing_m) == (3, 0.3)
    assert wider.stations.mean(axis=0) == pytest.approx(FOUR_ROWS.stations.mean(axis=0))


def test_a_drift_keeps_its_plants_per_area():
    drift = Drift(outline=((0, 0), (2, 0), (2, 2), (0, 2)), spacing_m=0.2, plants=40)
    wider = widened(drift, "spacing_m", 0.4)
    assert wider.plants == drift.count // 4


def test_the_effort_of_a_change_is_told_in_units_of_common_practice():
    """Five centimetres, a week, and one plant in twenty are alike; costs add up."""
    planting = {"planting": "p"}
    assert effort(Remedy("shift", {**planting, "distance_m": 0.05})) == pytest.approx(1.0)
    assert effort(Remedy("start", {**planting, "days": -7})) == pytest.approx(1.0)
    assert effort(Remedy("widen", {**planting, "plants": 20, "fewer": 1})) == pytest.approx(1.0)
    late = {"days": 7, "harvest_lost_d": 10, "harvest_d": 100}
    assert effort(Remedy("start", {**planting, **late})) == pytest.approx(3.0)
    few = {"distance_m": 0.1, "count": 2, "plants": 20}
    assert effort(Remedy("shift stations", {**planting, **few})) == pytest.approx(1.1)


def test_a_window_may_go_over_the_turn_of_the_year():
    autumn = StartWindow(DayOfYear(month=9, day=15), DayOfYear(month=2, day=10))
    assert is_open(autumn, date(2027, 12, 31))
    assert is_open(autumn, date(2028, 2, 10))
    assert not is_open(autumn, date(2027, 5, 1))
    assert is_open(StartWindow(None, None, always=True), date(2027, 5, 1))
    assert not is_open(StartWindow(None, None), date(2027, 5, 1))


def test_rows_too_far_apart_get_a_support_each():
    """A climber finds a support within 30 cm: two rows 40 cm apart share one, two 80 cm apart do not."""
    for across, count in ((0.4, 1), (0.8, 2)):
        before = garden(rows("climbing-bean", "bean", 0.1, day(5, 20), "sown", 0.2, across, 2))
        put = put_up(before.layout(LAYOUT), before.find(LAYOUT, "bean"), "trellis", 2.0)
        assert [s.kind for s in put] == ["trellis"] * count
        assert len({s.id for s in put}) == count


def test_moving_some_spots_of_a_turned_planting_moves_them_on_the_plan():
    before = edits.turn(loose_plants(), LAYOUT, ["cabbage"], 30.0, (1.0, 0.5))
    numbers = {"planting": "cabbage", "stations": "0 2", "dx_m": 0.03, "dy_m": -0.04}
    after = apply(before, LAYOUT, Remedy("shift stations", numbers))
    moved = after.find(LAYOUT, "cabbage").stations - before.find(LAYOUT, "cabbage").stations
    assert moved == pytest.approx(np.array([[0.03, -0.04], [0.0, 0.0], [0.03, -0.04]]))


def test_a_raised_plants_sowing_day_moves_with_its_start():
    start = {"sown_on": day(4, 1)}
    before = garden(rows("cabbage", "cabbage", 0.3, day(5, 10), start=start))
    remedy = Remedy("start", {"planting": "cabbage", "days": 9, "on": day(5, 19)})
    assert apply(before, LAYOUT, remedy).find(LAYOUT, "cabbage").start.sown_on == day(4, 10)


@pytest.mark.parametrize("more", [{"locked": True}, {"start": {"pinned": True}}], ids=["locked", "pinned"])
def test_what_must_stay_is_refused(more):
    before = two_brassicas(**more)
    remedy = Remedy("start", {"planting": "cabbage", "days": 9, "on": day(5, 19)})
    with pytest.raises(Refusal):
        apply(before, LAYOUT, remedy)


def test_a_planting_that_is_gone_is_refused():
    before = edits.remove(two_brassicas(), LAYOUT, ["cabbage"])
    with pytest.raises(Refusal):
        apply(before, LAYOUT, Remedy(Change.THIN, {"planting": "cabbage", "per_station": 1}))
