"""Light taken by taller stands beside, against two other models of it."""

from datetime import date

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.beside import SECTORS, beside, vault
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import BASE, HEIGHT, LEAF, RADIUS, months_of
from gardencanvas.fit.thresholds import RISE_M
from gardencanvas.garden.ground import Fixture
from gardencanvas.light.fixtures import open_sky
from gardencanvas.light.neighbours import share_beside
from tests.fit.makers import rows, spot
from tests.garden.makers import garden, site

OVER = vault(site())


def pair(low, tall):
    made = garden(low, tall)
    found = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])
    return found[low.id][0], found[tall.id][0]


def left_in_last_month(found):
    return float(np.exp(found.passed[0, -1]))


def test_the_whole_sky_holds_all_light_in_every_month():
    assert OVER.light.shape[:2] == (12, SECTORS)
    np.testing.assert_allclose(OVER.light[:, :, -1].sum(axis=1), 1.0, atol=1e-9)


@pytest.mark.parametrize("direction", [0.0, 90.0, 180.0, 225.0])
@pytest.mark.parametrize("distance", [0.4, 0.6, 1.0, 1.5])
def test_one_plant_beside_takes_what_a_leafy_cylinder_takes(direction, distance):
    """``light.neighbours`` is within 0.06 of rays cast through cylinders; this is within as much of it."""
    east, south = np.sin(np.radians(direction)), -np.cos(np.radians(direction))
    low, tall = pair(
        spot("low", "lettuce", [(5.0, 5.0)], date(2027, 6, 25)),
        spot("tall", "tomato", [(5.0 + distance * east, 5.0 + distance * south)], date(2027, 5, 1)),
    )
    found = beside(low, tall, OVER)
    week = found.end - 1
    size, own_height = tall.sizes[:, week], low.sizes[HEIGHT, week]
    month = months_of(low.weeks)[week] % 12
    canopy = (size[RADIUS], size[HEIGHT] - RISE_M, size[BASE], size[LEAF] / tall.extinction)
    expected = share_beside(site(), month, distance * east, distance * south, *canopy, own_height)
    assert left_in_last_month(found) == pytest.approx(float(expected), abs=0.06)


@pytest.mark.parametrize("distance", [0.6, 1.0, 1.5])
def test_a_dense_leafy_row_hides_what_a_wall_of_its_height_hides(distance):
    """Independent: the horizon that ``light.fixtures`` sees over 72 directions."""
    tall = rows("tall", "runner-bean", 20.0, 1, 0.05, 0.3, date(2027, 5, 1), "sown", y=4.85)
    low, tall = pair(spot("low", "lettuce", [(10.0, 5.0 + distance)], date(2027, 7, 25)), tall)
    week = min(low.end, tall.end) - 1
    thick = tall.sizes.copy()
    thick[LEAF] *= 1e3  # no light comes through a wall
    thick[BASE] = 0.0
    wall_like = type(tall)(**{**{f: getattr(tall, f) for f in tall.__dataclass_fields__}, "sizes": thick})
    found = beside(low, wall_like, OVER)
    r, height = tall.sizes[RADIUS, week], tall.sizes[HEIGHT, week] - low.sizes[HEIGHT, week] - RISE_M
    wall = Fixture(
        id="wall", name="wall", kind="wall", height_m=float(height),
        outline=((0.0, 5.0 - r), (20.0, 5.0 - r), (20.0, 5.0 + r), (0.0, 5.0 + r)),
    )  # fmt: skip
    month = months_of(low.weeks)[week] % 12
    expected = open_sky(site(), [wall], [(10.0, 5.0 + distance)])[0, month]
    assert left_in_last_month(found) == pytest.approx(float(expected), abs=0.08)


def test_plants_behind_each_other_do_not_hide_the_same_sky_twice():
    """Ten opaque rows one behind the other hide hardly more than the first: never the product of all."""
    low = spot("low", "lettuce", [(5.0, 5.0)], date(2027, 7, 25))
    lost = []
    for count in (1, 10):
        tall = rows("tall", "tomato", 8.0, count, 0.2, 0.1, date(2027, 5, 1), x=1.0, y=5.5)
        found = beside(*pair(low, tall), OVER)
        lost.append(1.0 - left_in_last_month(found))
    assert lost[0] < lost[1] < 2.5 * lost[0]
    assert lost[1] < 0.6  # half the sky, the sunny one, is all that stands behind a row to the south


def test_a_crop_hardly_taller_takes_nothing_from_beside():
    low, tall = pair(
        spot("low", "lettuce", [(0.0, 0.0)], date(2027, 5, 1)),
        spot("tall", "cabbage", [(0.5, 0.0)], date(2027, 5, 1)),
    )
    assert beside(low, tall, OVER) is None
