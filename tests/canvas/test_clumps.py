"""Clumps as they are drawn: within the ground that n plants take, which is n times that of one."""

from math import sqrt

import numpy as np
import pytest
from shapely import MultiPoint, Point

from gardencanvas.canvas.items.clumps import MOST_DRAWN, clumped, shown

AT = np.array([[100.0, 50.0], [300.0, 50.0]])


@pytest.mark.parametrize("count", [2, 3, 4, 6, 7])
def test_seedlings_lie_apart_within_the_ground_of_their_clump(count):
    radius = 8.0
    xy = clumped(AT, radius, count, count).reshape(2, count, 2)
    for station, plants in zip(AT, xy, strict=True):
        away = np.hypot(*(plants - station).T)
        assert away.max() + radius == pytest.approx(radius * sqrt(count))
        between = np.hypot(*(plants[:, None] - plants[None]).transpose(2, 0, 1))
        np.fill_diagonal(between, np.inf)
        assert between.min() > radius / 3
        # together they cover most of the disc of n times one plant's area
        covered = MultiPoint(plants).buffer(radius).area
        assert covered >= 0.6 * Point(station).buffer(radius * sqrt(count)).area


def test_one_plant_stands_on_its_station():
    assert clumped(AT, 8.0, 1, 1) == pytest.approx(AT)


def test_large_clumps_and_large_plantings_are_drawn_with_fewer():
    assert shown(4, 100) == 4
    assert shown(20, 100) == MOST_DRAWN
    assert shown(4, 19_000) == 1
