"""Sizes on a date against the season's own course."""

from datetime import date, timedelta

import numpy as np
import pytest

from gardencanvas.canvas.sizes import Sizes
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.stands import grid
from gardencanvas.garden import edits
from gardencanvas.garden.ground import LineSupport
from gardencanvas.season.course import Growing
from gardencanvas.season.growth import follow
from tests.garden.makers import garden, row

BEETS = row("beets", "beetroot", on=date(2027, 5, 1))


def growth(value, planting_id="beets"):
    sizes = Sizes()
    layout = value.layouts[0]
    sizes.prepare(value, layout, catalogue())
    return sizes.of(layout.by_id[planting_id])


def test_sizes_are_those_of_the_course_in_the_middle_of_a_week_and_between_them_in_between():
    value = garden(BEETS)
    beets = growth(value)
    weeks = grid(value.layouts[0].season)
    course = follow(value.site, [Growing(catalogue().crop("beetroot"), BEETS.start)], weeks)
    here = np.flatnonzero(course.present[0])[2:8]
    for week in here:
        middle = weeks.first + timedelta(days=7 * int(week) + 3)
        assert beets.on(middle).radius_m == pytest.approx(max(course.radius_m[0, week], 0.01))
        a, b = course.radius_m[0, week], course.radius_m[0, week + 1]
        assert min(a, b) - 1e-9 <= beets.on(middle + timedelta(days=4)).radius_m <= max(a, b, 0.01) + 1e-9
    assert beets.full_radius_m == pytest.approx(course.radius_m[0].max())


def test_a_planting_comes_stands_and_goes():
    beets = growth(garden(BEETS))
    assert beets.on(date(2027, 4, 30)).stage == "coming"
    assert beets.on(date(2027, 5, 1)).stage == "standing"
    assert beets.on(date(2028, 12, 30)).stage == "gone"
    assert not beets.on(date(2027, 5, 2)).ripe


def test_moving_keeps_the_curve_and_another_start_does_not():
    value = garden(BEETS)
    sizes = Sizes()
    sizes.prepare(value, value.layouts[0], catalogue())
    before = sizes.of(value.layouts[0].by_id["beets"])
    moved = edits.shift(value, "l1", {"beets"}, 1.0, 0.0)
    sizes.prepare(moved, moved.layouts[0], catalogue())
    assert sizes.of(moved.layouts[0].by_id["beets"]) is before
    later = edits.replace(value, "l1", [row("beets", "beetroot", on=date(2027, 6, 1))])
    sizes.prepare(later, later.layouts[0], catalogue())
    assert sizes.of(later.layouts[0].by_id["beets"]).on(date(2027, 5, 20)).stage == "coming"


def test_a_net_beside_a_climber_makes_it_narrower():
    """A climber without support sprawls; ``season.traits`` says by how much, here only that it differs."""
    beans = row("beans", "climbing-bean", on=date(2027, 5, 20))
    value = garden(beans)
    net = LineSupport(id="net", kind="net", name="net", begin=(0.0, 0.15), end=(3.0, 0.15), height_m=2.0)
    held = edits.add(value, "l1", [net])
    assert growth(held, "beans").full_radius_m < growth(value, "beans").full_radius_m


def test_maize_moved_away_lets_the_beans_on_it_sprawl():
    beans = row("beans", "climbing-bean", on=date(2027, 6, 10))
    maize = row("maize", "sweetcorn", y=0.1, on=date(2027, 5, 10))
    value = garden(beans, maize)
    sizes = Sizes()
    sizes.prepare(value, value.layouts[0], catalogue())
    held = sizes.of(beans).full_radius_m
    away = edits.shift(value, "l1", {"maize"}, 0.0, 2.0)
    sizes.prepare(away, away.layouts[0], catalogue())
    assert sizes.of(beans).full_radius_m == growth(away, "beans").full_radius_m > held


def test_a_crop_that_is_not_known_still_has_a_place():
    strange = growth(garden(row("x", "no-such-crop")), "x")
    assert strange.on(date(2027, 7, 1)).stage == "standing"
    assert strange.on(date(2027, 7, 1)).radius_m > 0
