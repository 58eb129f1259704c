"""How fast the season and the light answer.

Goals on two slow cores: 1,000 plantings × 52 weeks under 50 ms; one planting, as in each step of a drag in
time, under .4 ms; light of six fixtures at 200 stations of a bed under 3 ms and at 20,000 points under .4 s.
"""

from datetime import date, timedelta

import numpy as np
import pytest

from gardencanvas.light.fixtures import open_sky
from gardencanvas.light.neighbours import share_beside
from gardencanvas.season.course import Weeks
from gardencanvas.season.growth import follow, span
from gardencanvas.season.windows import windows
from tests.light.ground_for_tests import GARDEN, box
from tests.season.crops_for_tests import ALL, SITE, TOMATO, planted

WEEKS = Weeks(date(2026, 1, 1), 52)
SEASON = (date(2026, 1, 1), date(2026, 12, 31))
MANY = [planted(ALL[n % len(ALL)], date(2026, 3, 1) + timedelta(days=n % 150)) for n in range(1000)]
FIXTURES = (*GARDEN, box(12.0, 0.0, 4.0, 0.2, 2.0), box(-9.0, 5.0, 0.2, 4.0, 2.0))


def within(benchmark, seconds: float) -> None:
    """The quickest run keeps its goal: the others tell what else the machine does. Only when switched on."""
    if benchmark.stats is not None:
        assert benchmark.stats.stats.min < seconds


@pytest.mark.parametrize(("count", "goal_s"), [(1, 0.0004), (10, 0.0006), (1000, 0.050)])
def test_follow(benchmark, count, goal_s):
    course = benchmark(follow, SITE, MANY[:count], WEEKS)
    assert course.radius_m.shape == (count, 52)
    within(benchmark, goal_s)


def test_follow_a_planting_dragged_through_time(benchmark):
    days = [planted(TOMATO, date(2026, 4, 1) + timedelta(days=n)) for n in range(90)]
    step = iter(range(10**9))
    benchmark(lambda: follow(SITE, [days[next(step) % 90]], WEEKS))
    within(benchmark, 0.0004)


def test_span(benchmark):
    assert benchmark(span, SITE, MANY, SEASON).count >= 53
    within(benchmark, 0.030)


@pytest.mark.parametrize(("points", "size_m", "goal_s"), [(200, 3.0, 0.003), (20_000, 30.0, 0.4)])
def test_light_of_six_fixtures(benchmark, points, size_m, goal_s):
    xy = np.random.default_rng(0).uniform(-size_m / 3, size_m * 2 / 3, (points, 2))
    light = benchmark(open_sky, SITE, FIXTURES, xy)
    assert light.shape == (points, 12)
    within(benchmark, goal_s)


def test_light_beside_100_000_pairs(benchmark):
    rng = np.random.default_rng(0)
    dx, dy = rng.uniform(-2.0, 2.0, (2, 100_000))
    left = benchmark(share_beside, SITE, 5, dx, dy, 0.3, 1.8, 0.0, 3.0, 0.2)
    assert left.shape == (100_000,)
    within(benchmark, 0.1)


def test_harvest_windows_of_a_planting(benchmark):
    (window,) = benchmark(windows, SITE, [planted(TOMATO, date(2026, 5, 20))], WEEKS)
    assert window.first is not None
    within(benchmark, 0.02)
