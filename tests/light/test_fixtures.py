"""Light left by fixtures: laws, closed forms, and rays cast one by one."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon

from gardencanvas.garden.site import Climate
from gardencanvas.light.compass import to_compass, to_plan
from gardencanvas.light.diffuse import diffuse_share
from gardencanvas.light.fixtures import open_sky
from gardencanvas.light.sun import sun_path
from tests.light.ground_for_tests import GARDEN, POINTS, SITE, block, box, moved, tree
from tests.season.crops_for_tests import POLAR, SOUTH, TROPICS, site


def turned(by_deg: float):
    """Turn plan points clockwise on the plan (y down)."""
    a = np.radians(by_deg)
    matrix = np.array([[np.cos(a), np.sin(a)], [-np.sin(a), np.cos(a)]])
    return lambda xy: np.asarray(xy) @ matrix


@given(st.floats(0.0, 359.0), st.floats(0.0, 359.9))
def test_turning_the_garden_with_its_bearing_changes_nothing(bearing, by):
    # The plan turned clockwise by some degrees: what was up now points as many degrees to the right, so the
    # direction the new top edge faces lies as many degrees to the left.
    here = site(bearing_deg=bearing)
    there = site(bearing_deg=(bearing - by) % 360.0)
    change = turned(by)
    before = open_sky(here, GARDEN, POINTS)
    after = open_sky(there, [moved(f, change) for f in GARDEN], change(POINTS))
    # A ray that grazes a corner may change sides by rounding: one of 24 sun positions of a month.
    assert np.mean(np.abs(after - before) > 1e-5) < 0.01
    assert np.abs(after - before).max() < 0.08


def test_mirrored_east_to_west_changes_nothing():
    mirror = lambda xy: np.asarray(xy) * np.array([-1.0, 1.0])  # noqa: E731
    before = open_sky(SITE, GARDEN, POINTS)
    after = open_sky(SITE, [moved(f, mirror) for f in GARDEN], mirror(POINTS))
    assert np.mean(np.abs(after - before) > 1e-5) < 0.01
    assert np.abs(after - before).max() < 0.08


@given(st.floats(-200.0, 200.0), st.floats(-200.0, 200.0))
def test_moving_everything_changes_nothing(dx, dy):
    shift = lambda xy: np.asarray(xy) + np.array([dx, dy])  # noqa: E731
    before = open_sky(SITE, GARDEN, POINTS)
    after = open_sky(SITE, [moved(f, shift) for f in GARDEN], shift(POINTS))
    assert np.mean(np.abs(after - before) > 1e-5) < 0.01


def test_every_point_alone_gets_the_same():
    together = open_sky(SITE, GARDEN, POINTS)
    alone = np.vstack([open_sky(SITE, GARDEN, p) for p in POINTS])
    assert together == pytest.approx(alone, abs=1e-12)


def test_more_fixtures_never_bring_more_light():
    less = open_sky(SITE, GARDEN[:2], POINTS)
    more = open_sky(SITE, GARDEN, POINTS)
    assert np.all(more <= less + 1e-6)
    assert np.all((more >= 0.0) & (more <= 1.0))


def test_open_sky_without_fixtures():
    assert open_sky(SITE, (), POINTS) == pytest.approx(1.0)
    far = open_sky(SITE, [box(900.0, 900.0, 1.0, 1.0, 2.0)], [(0.0, 0.0)])
    assert far == pytest.approx(1.0, abs=1e-4)


def test_inside_a_wall_it_is_dark_and_glass_passes_its_share():
    assert open_sky(SITE, [box(-1.0, -1.0, 2.0, 2.0, 2.0)], [(0.0, 0.0)]) == pytest.approx(0.0, abs=1e-9)
    assert open_sky(SITE, [box(-1.0, -1.0, 2.0, 2.0, 2.0, clear=0.3)], [(0.0, 0.0)]) == pytest.approx(
        0.3, abs=1e-6
    )


def test_north_of_a_wall_is_darker_than_south_of_it():
    wall = box(-10.0, 0.0, 20.0, 0.2, 2.0)
    (north, south) = open_sky(SITE, [wall], [(0.0, -0.7), (0.0, 0.9)])
    assert np.all(north < south)
    # In the south of the Earth it is the other way round.
    (north, south) = open_sky(SOUTH, [wall], [(0.0, -0.7), (0.0, 0.9)])
    assert np.all(north > south)


def test_a_wall_to_the_south_takes_most_in_winter():
    (light,) = open_sky(SITE, [box(-30.0, 0.0, 60.0, 0.2, 2.0)], [(0.0, -3.0)])
    assert light[11] < light[5]
    # On 11 June at noon the sun stands at 61°: the shadow of 2 m is 1.1 m and does not reach.
    # On 10 December it stands at 15°: the shadow of 7.4 m does, all day.
    share = 1 - diffuse_share(SITE.climate)[11]
    sky = (light[11]) / (1 - share)
    assert sky <= 1.0
    assert light[5] > 0.9


def test_a_raised_crown_lets_the_low_sun_under_it():
    crown, grounded = tree(0.0, 3.0, 1.5, 5.0, 3.0), tree(0.0, 3.0, 1.5, 5.0, 0.0)
    (under,) = open_sky(SITE, [crown], [(0.0, 0.0)])
    (full,) = open_sky(SITE, [grounded], [(0.0, 0.0)])
    assert under[11] > full[11] + 0.2
    assert under[5] >= full[5]


def test_polar_night_and_day_and_tropics():
    for where in (POLAR, TROPICS, SOUTH):
        light = open_sky(where, GARDEN, POINTS)
        assert np.all(np.isfinite(light))
        assert np.all((light >= 0.0) & (light <= 1.0))


def rays(site, fixtures, point, month):
    """The same light by casting single rays with shapely: sun positions of the month, and a sky of rays."""
    east, north = to_compass([point], site.bearing_deg)[0]
    solids = [
        (Polygon(to_compass(f.outline, site.bearing_deg)), f.base_m, f.height_m, f.clear_share)
        for f in fixtures
    ]

    def passes(azimuth, elevation):
        share = 1.0
        for outline, base, top, clear in solids:
            begin, end = base / np.tan(elevation), top / np.tan(elevation)
            way = np.array([np.sin(azimuth), np.cos(azimuth)])
            line = LineString([(east, north) + begin * way, (east, north) + end * way])
            if line.intersects(outline):
                share *= clear
        return share

    path = sun_path(site.latitude_deg)
    beam = sum(
        w * passes(a, e)
        for w, a, e in zip(path.weight[month], path.azimuth[month], path.elevation[month], strict=True)
    )
    azimuths = np.arange(72) * np.pi / 36
    # Bands of equal sin² of elevation: each holds the same light of an even sky on level ground.
    elevations = np.arcsin(np.sqrt((np.arange(60) + 0.5) / 60))
    sky = np.mean([[passes(a, e) for e in elevations] for a in azimuths])
    diffuse = diffuse_share(site.climate)[month]
    return diffuse * sky + (1 - diffuse) * beam


@pytest.mark.parametrize("month", [2, 5, 11])
def test_against_rays_cast_one_by_one(month):
    where = site(bearing_deg=20.0)
    for point in POINTS[:6]:
        if any(Polygon(f.outline).distance(Point(point)) < 0.05 for f in GARDEN):
            continue
        (light,) = open_sky(where, GARDEN, point)
        # Directions are taken to the nearest 5°: a sun position or two of 24 may fall on the other side.
        assert light[month] == pytest.approx(rays(where, GARDEN, point, month), abs=0.06)


def test_diffuse_share_from_the_daily_range():
    # Kt = .16 √10 = .506; 1 − 1.13 Kt = .428.
    some = Climate(mean_c=(10.0,) * 12, min_c=(5.0,) * 12, max_c=(15.0,) * 12)
    assert diffuse_share(some) == pytest.approx(0.428, abs=0.001)
    assert diffuse_share(Climate(mean_c=(10.0,) * 12)) == pytest.approx(0.5)


def test_plan_and_compass():
    # Top edge faces east: up is east, right is south.
    assert to_compass([(0.0, -1.0), (1.0, 0.0)], 90.0) == pytest.approx(np.array([[1.0, 0.0], [0.0, -1.0]]))
    assert to_plan(to_compass(POINTS, 33.0), 33.0) == pytest.approx(POINTS)


def test_the_sun_path_is_even_about_noon():
    path = sun_path(52.0)
    assert path.weight.sum(axis=1) == pytest.approx(1.0)
    assert path.weight == pytest.approx(path.weight[:, ::-1])
    assert (path.azimuth + path.azimuth[:, ::-1]) % (2 * np.pi) == pytest.approx(
        0.0, abs=1e-9
    ) or np.allclose(np.cos(path.azimuth), np.cos(path.azimuth[:, ::-1]))
    assert sun_path(78.0).weight[11].sum() == 0.0  # polar night
    assert sun_path(-78.0).weight[11].sum() == pytest.approx(1.0)  # polar day


def test_a_hollow_outline_shades_as_its_parts_do():
    hollow = block([(0, 0), (4, 0), (4, 4), (3, 4), (3, 1), (1, 1), (1, 4), (0, 4)], 2.0)
    parts = [box(0, 0, 4, 1, 2.0), box(0, 0, 1, 4, 2.0), box(3, 0, 1, 4, 2.0)]
    points = [(2.0, 2.5), (2.0, -1.0), (6.0, 2.0), (2.0, 5.5)]
    assert open_sky(SITE, [hollow], points) == pytest.approx(open_sky(SITE, parts, points), abs=1e-6)
