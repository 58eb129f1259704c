"""Filling a bed: what is proposed is judged again by the engine from scratch."""

from itertools import pairwise
from math import sqrt

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import open_garden
from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.edits import add
from gardencanvas.garden.places import bed_ground
from gardencanvas.planner.filling.ground import free_strips
from gardencanvas.planner.filling.searching import Filled, Lack
from gardencanvas.planner.gaps.planting import plant
from gardencanvas.resources_folder import resources
from tests.garden.makers import bed, garden, row
from tests.planner.filling.makers import even, filled, usual


def troubles(report):
    return {f.id: f.verdict for f in report.findings if f.verdict >= Verdict.STRAINS}


def held_to(value, answer, worst=Verdict.CLASHES):
    """A fresh check of the garden with the planting: none of it is bad, and nothing became worse by it."""
    layout = value.layouts[0]
    before, after = check(value, layout.id), check(plant(value, layout.id, answer), layout.id)
    assert all(f.verdict < worst for f in after.of(answer.planting.id))
    old, new = troubles(before), troubles(after)
    assert all(new[i] <= old[i] for i in old.keys() & new.keys())
    for fit in before.plantings.values():
        marks = after.plantings[fit.id].station_verdicts
        assert (marks >= worst).sum() <= (fit.station_verdicts >= worst).sum()
    assert after.plantings[answer.planting.id].verdict == answer.verdict


@pytest.mark.parametrize(
    ("number", "crop"), [(0, "radish"), (2, "cabbage"), (3, "lettuce"), (4, "lettuce"), (5, "cabbage")]
)
def test_no_clash_in_a_fresh_check_of_beds_that_are_planted(number, crop):
    value = open_garden(resources() / "demo" / "demo.gardencanvas")
    ground = value.layouts[0].beds[number]
    answer = filled(value, crop, bed=ground)
    assert isinstance(answer, Filled)
    held_to(value, answer)
    assert all(bed_ground(ground).covers(p) for p in _points(answer))


def _points(answer):
    from shapely import points

    return points(answer.planting.stations)


def test_an_empty_bed_is_filled_by_the_closed_form():
    # 3.6 × 1.2 m at 0.4 m: 9 × 3 square; triangular 9 + 8 + 9 = 26 along it, (3 + 2)·5 = 25 across it
    answer = filled(garden(beds=(bed(),)), "cabbage", even(0.4))
    assert answer.planting.pattern.count == 27
    # at 0.45 m: 8·2 square; triangular lines 0.39 m apart: 8 + 7 along it, nine of 2 across it
    assert filled(garden(beds=(bed(),)), "cabbage", even(0.45)).planting.pattern.count == 18
    # at 0.3 m: 12·4 square; triangular lines 0.26 m apart: 12 + 11 + 12 + 11 = 46
    assert filled(garden(beds=(bed(),)), "lettuce", even(0.3)).planting.pattern.count == 48
    # at 0.25 m, lines 0.2165 m apart: 14·4 square, 14·3 + 13·2 = 68 triangular
    assert filled(garden(beds=(bed(),)), "lettuce", even(0.25)).planting.pattern.count == 68


@pytest.mark.parametrize("crop", ["lettuce", "beetroot"])
def test_closer_spacing_never_gives_fewer_beside_what_grows(crop):
    value = garden(row("leeks", "leek", 0.1, 0.4), beds=(bed(),))
    counts = [filled(value, crop, even(s)).planting.plants for s in (0.36, 0.32, 0.28, 0.25)]
    assert all(a <= b for a, b in pairwise(counts))
    # and never more than discs of that width in the bed could be (Segre & Mahler 1944)
    assert counts[-1] <= 3.6 * 1.2 * 2 / (sqrt(3) * 0.25**2)


def test_where_nothing_may_strain_no_more_fit_and_nothing_does():
    value = garden(row("leeks", "leek", 0.1, 0.4), beds=(bed(),))
    loose = filled(value, "lettuce", even(0.25))
    strict = filled(value, "lettuce", even(0.25), worst=Verdict.STRAINS)
    held_to(value, loose)
    held_to(value, strict, Verdict.STRAINS)
    assert strict.planting.plants <= loose.planting.plants


def test_the_free_strips_of_a_bed_lie_between_its_rows_and_its_edges():
    value = garden(row("a", "leek", 0.1, 0.1), row("b", "leek", 0.1, 0.7), beds=(bed(),))
    layout = value.layouts[0]
    strips = free_strips(layout, layout.beds[0])  # rows at 0.25 and 0.85 m
    assert [(s.begin_m, s.end_m) for s in strips] == [(0.0, 0.25), (0.25, 0.85), (0.85, 1.2)]
    answer = filled(value, "radish", area=strips[1].outline)
    held_to(value, answer)
    across = answer.planting.stations[:, 1]
    assert across.min() > 0.25
    assert across.max() < 0.85
    assert free_strips(garden(beds=(bed(),)).layouts[0], bed()) == ()


def test_an_area_of_a_bed_keeps_its_plants_within_it():
    value = garden(beds=(bed(),))
    answer = filled(value, "lettuce", even(0.25), area=((1.0, -1.0), (2.0, -1.0), (2.0, 0.5), (1.0, 0.5)))
    assert answer.planting.pattern.count == 8  # 1.0 × 0.5 m: 4 × 2
    assert answer.planting.stations.max(axis=0).tolist() == pytest.approx([1.875, 0.375])


def test_why_nothing_fits_is_told():
    value = garden(beds=(bed(),))
    off = filled(value, "lettuce", area=((9.0, 9.0), (10.0, 9.0), (10.0, 10.0)))
    assert off.lack is Lack.NO_GROUND
    late = filled(value, "tomato", on="2027-09-20")
    assert late.lack is Lack.FORBIDDEN
    assert late.finding.code == "seldom ripe"
    field = garden(beds=(bed(length=40.0, width=40.0),))
    assert filled(field, "radish", even(0.05)).lack is Lack.TOO_MANY
    tight = garden(row("p", "kale", 0.0, 0.0), beds=(bed(length=3.0, width=0.3),))
    assert filled(tight, "kale", usual(catalogue().crop("kale"))).lack in (Lack.NO_ROOM, Lack.FORBIDDEN)


def test_the_planting_can_be_made_twice():
    value = garden(beds=(bed(), bed("bed-2", y=3.0)))
    answer = filled(value, "lettuce")
    twice = plant(plant(value, "l1", answer), "l1", answer)
    assert len({p.id for p in twice.layouts[0].plantings}) == 2
    assert add(value, "l1", [answer.planting]).layouts[0].plantings == (answer.planting,)
