"""Room in the nursery, counted by hand."""

from datetime import date

import pytest
from scipy.stats import binom

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.garden.pattern import Rows
from gardencanvas.measures.emergence import GLASS
from gardencanvas.measures.jobs import Job, JobKind, jobs
from gardencanvas.measures.nursery import CELLS_IN_TRAY, TrayWeek, most, nursery_weeks
from tests.garden.makers import garden, row

MONDAYS = [date(2027, 3, d) for d in (1, 8, 15, 22, 29)]


def job(kind, on, **numbers):
    return Job(f"p:{kind}", kind, on, on, "p", None, "leek", None, numbers)


def rows(count):
    return Rows(length_m=0.2 * count, spacing_m=0.2, row_spacing_m=0.3)


def test_seedlings_wait_in_one_tray_and_then_stand_in_cells_until_they_are_planted_out():
    """Sown on a Wednesday, pricked out on the Wednesday two weeks later, planted out two weeks after that."""
    numbers = {"stations": 50, "per_station": 1, "seeds": 90}
    weeks = nursery_weeks([
        job(JobKind.RAISE, date(2027, 3, 3), **numbers),
        job(JobKind.PRICK_OUT, date(2027, 3, 17), **numbers),
        job(JobKind.PLANT_OUT, date(2027, 3, 31), **numbers),
    ])  # fmt: skip
    assert [(w.week, w.sowings, w.cells) for w in weeks] == list(
        zip(MONDAYS, [1, 1, 0, 0, 0], [0, 0, 50, 50, 50], strict=True)
    )
    assert [w.trays for w in weeks] == [1, 1, 2, 2, 2]  # 50 cells take two trays of 40


@pytest.mark.parametrize(("each", "cells"), [(1, 90), (4, 50)])
def test_what_is_not_pricked_out_has_a_cell_for_each_seed_or_clump(each, cells):
    numbers = {"stations": 50, "per_station": each, "seeds": 90}
    weeks = nursery_weeks([
        job(JobKind.RAISE, date(2027, 3, 1), **numbers),
        job(JobKind.PLANT_OUT, date(2027, 3, 15), **numbers),
    ])  # fmt: skip
    assert [(w.week, w.cells) for w in weeks] == [(MONDAYS[0], cells), (MONDAYS[1], cells)]


def test_large_seed_takes_as_many_pots_as_are_sown():
    """A courgette is sown one seed to a pot: 10 plants need the binomial's number of pots."""
    made = garden(row("p", "courgette", pattern=rows(10), kind="raised", on=date(2027, 5, 25)))
    share = catalogue().resolve("courgette", None).germination_share.mid * GLASS
    pots = most(nursery_weeks(jobs(made, "l1"))).cells
    assert binom.sf(9, pots, share) >= 0.95 > binom.sf(9, pots - 1, share)


def test_plantings_in_the_nursery_at_once_are_added():
    made = garden(
        row("a", "leek", pattern=rows(20), kind="raised", on=date(2027, 5, 20)),
        row("b", "lettuce", pattern=rows(5), kind="raised", on=date(2027, 5, 20), y=0.6),
    )
    found = jobs(made, "l1")
    weeks = nursery_weeks(found)
    assert max(w.cells for w in weeks) == 25
    assert all(w.week.weekday() == 0 for w in weeks)
    assert weeks[-1].week < date(2027, 5, 20)
    first = min(j.on for j in found if j.kind == "raise")
    assert 0 <= (first - weeks[0].week).days < 7


def test_what_is_sown_in_place_needs_no_nursery():
    assert nursery_weeks(jobs(garden(row("a", "carrot")), "l1")) == ()


def test_a_tray_more_for_one_cell_more():
    full = TrayWeek(MONDAYS[0], 2 * CELLS_IN_TRAY, 0)
    assert full.trays == 2
    assert TrayWeek(MONDAYS[0], full.cells + 1, 0).trays == 3
