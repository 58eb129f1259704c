"""Open ground against polygons, a closed form and what can be seen on paper."""

from math import pi

import numpy as np
import pytest
import shapely

from gardencanvas.fit.stands import IN_BED, RADIUS
from gardencanvas.garden.ground import Cover, Fixture, Path
from gardencanvas.planner.gaps.open_ground import exact, gaps, unused, weeks_free, widest
from tests.fit.makers import spot
from tests.garden.makers import bed, garden
from tests.planner.gaps.askers import day, surveyed

BED = shapely.box(0.0, 0.0, 3.6, 1.2)
TWO = np.array([[0.6, 0.6, 0.3], [1.8, 0.6, 0.3]])


def test_middles_of_small_plants_between_two_large_ones():
    # inner rectangle 3.3 × 0.9, less two discs of 0.45 m that it cuts off nowhere but at its long sides:
    # by segments of height 0.45 − 0.45 = 0, so less two whole discs: 2.97 − 2 π 0.45²
    assert exact(BED, TWO, 0.15).area == pytest.approx(3.3 * 0.9 - 2 * pi * 0.45**2, abs=5e-4)


def test_the_largest_circle_between_plant_and_end_of_the_bed():
    _, radius = widest(exact(BED, TWO, 0.0))
    assert radius == pytest.approx(0.6, abs=0.002)  # half the width of the bed


def test_points_agree_with_polygons():
    some = garden(spot("p", "cabbage", [(0.9, 0.6), (2.1, 0.5)], on=day(5, 1)))
    survey, _ = surveyed(some)
    week = survey.week(day(7, 20))
    (stand,) = survey.stands["p"]
    assert stand.sizes[IN_BED, week] == 1.0
    discs = np.array([[x, y, stand.sizes[RADIUS, week]] for x, y in stand.xy])
    (gap,) = gaps(survey, day(7, 20))
    field = survey.bed(some.layouts[0].beds[0]).field
    rim = 2 * pi * discs[:, 2].sum()
    assert gap.now_m2 == pytest.approx(exact(BED, discs, 0.0).area, abs=rim * field.step_m / 2)


def test_an_empty_bed_is_one_gap_all_year():
    survey, _ = surveyed(garden())
    (gap,) = gaps(survey, day(6, 1))
    assert (gap.first, gap.last) == survey.season
    assert gap.area_m2 == pytest.approx(3.6 * 1.2, rel=0.02)
    assert gap.light == pytest.approx(1.0)
    assert gap.beside == ()
    assert gap.height_m is None
    assert gap.wide_m == pytest.approx(1.2, abs=0.08)
    assert unused(survey) == 1.0


def test_a_bed_across_a_path_is_two_gaps():
    some = garden(beds=(bed(),))
    layout = some.layouts[0].model_copy(update={"paths": (Path(id="w", line=((1.0, -1.0), (1.0, 2.0))),)})
    survey, _ = surveyed(some.model_copy(update={"layouts": (layout,)}))
    areas = sorted(g.area_m2 for g in gaps(survey, day(6, 1)))
    assert areas == pytest.approx([0.8 * 1.2, 2.4 * 1.2], rel=0.05)


def test_a_gap_ends_when_its_neighbour_grows_over_it():
    some = garden(spot("p", "winter-squash", [(0.6, 0.6)], on=day(5, 25)), beds=(bed(length=1.2),))
    survey, _ = surveyed(some)
    gap = max(gaps(survey, day(6, 1)), key=lambda g: g.now_m2)
    assert gap.beside == ("p",)
    assert day(6, 1) < gap.last < survey.season[1]
    free = weeks_free(survey, survey.bed(some.layouts[0].beds[0]), day(6, 1))
    near = survey.bed(some.layouts[0].beds[0]).neighbours[0].away_m
    order = np.argsort(near)
    assert (
        np.diff(free[order].astype(int)) >= 0
    ).all()  # ground nearer to the plant is never free for longer


def test_less_is_unused_with_more_plants_and_a_plant_of_another_year_counts_nothing():
    one = garden(spot("p", "cabbage", [(0.9, 0.6)]))
    two = garden(spot("p", "cabbage", [(0.9, 0.6), (2.1, 0.6)]))
    past = garden(spot("p", "lettuce", [(0.9, 0.6)], on=day(4, 1, 2025)))
    shares = [unused(surveyed(g)[0]) for g in (two, one, past)]
    assert shares[0] < shares[1] < shares[2] == 1.0
    assert 1.0 - shares[0] == pytest.approx(2 * (1.0 - shares[1]), rel=0.1)


def test_what_lies_over_the_ground():
    cover = Cover(
        id="c", kind="mesh", name="Mesh", outline=((0.0, 0.0), (3.6, 0.0), (3.6, 1.2)), height_m=0.5
    )
    wall = Fixture(
        id="w", name="Wall", kind="wall", height_m=3.0,
        outline=((-1.0, 1.3), (5.0, 1.3), (5.0, 1.5), (-1.0, 1.5)),
    )  # fmt: skip
    some = garden(fixtures=(wall,))
    layout = some.layouts[0].model_copy(update={"covers": (cover,)})
    survey, _ = surveyed(some.model_copy(update={"layouts": (layout,)}))
    (gap,) = gaps(survey, day(6, 1))
    assert gap.height_m == 0.5
    assert gap.light < 0.8  # at the north foot of a wall thrice as high as the bed is wide


def test_no_bed_no_figure():
    some = garden()
    layout = some.layouts[0].model_copy(update={"beds": ()})
    survey, _ = surveyed(some.model_copy(update={"layouts": (layout,)}))
    assert gaps(survey, day(6, 1)) == ()
    assert unused(survey) is None
