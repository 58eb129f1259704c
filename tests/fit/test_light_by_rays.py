"""Light the engine gives a plant between taller ones, against rays cast through their canopies.

``tests.light.rays`` shares no code with what it checks. Both are asked of one week, with the sizes that the
engine has in it.
"""

from dataclasses import replace
from datetime import date
from functools import cache

import numpy as np
import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.beside import beside, vault
from gardencanvas.fit.meeting import meet
from gardencanvas.fit.shading import lit
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import BASE, HEIGHT, LEAF, RADIUS
from tests.fit.makers import rows, spot
from tests.garden.makers import garden, site
from tests.light.rays import Cylinder, light_on

SITE = site()
MIDDLE_OF_JULY, DAY = date(2027, 7, 15), 199
SOWN = date(2027, 6, 15)
TALL = ("tomato", "sweetcorn", "brussels-sprouts")


def both(low, tall):
    """Light of the low planting's one plant in that week: the engine's, and that of rays."""
    made = garden(low, tall)
    found = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])
    (one,), (two,) = found[low.id], found[tall.id]
    week = one.weeks.index(MIDDLE_OF_JULY)
    a, b = (replace(s, begin=week, end=week + 1) for s in (one, two))
    meeting, aside = meet(a, b), beside(a, b, vault(SITE))
    engine = lit(a, [meeting] if meeting else [], [aside] if aside else [], vault(SITE), None).light
    canopies = [_cylinder(b, k, week) for k in range(len(b.index))]
    return float(engine[0]), light_on(_cylinder(a, 0, week), canopies, SITE.latitude_deg, DAY)


def _cylinder(stand, k, week):
    x, y = stand.xy[k]
    size = stand.sizes[:, week]
    leaf = size[LEAF] / stand.extinction
    return Cylinder(float(x), -float(y), size[RADIUS], size[BASE], size[HEIGHT], leaf)  # y runs down


@cache
def one_plant(crop, distance, direction):
    east, south = np.sin(np.radians(direction)), -np.cos(np.radians(direction))
    return both(
        spot("low", "lettuce", [(5.0, 5.0)], SOWN),
        spot("tall", crop, [(5.0 + distance * east, 5.0 + distance * south)], date(2027, 5, 1)),
    )


@cache
def in_rows(crop, low, along, across):
    return both(
        spot("low", low, [(5.0, 5.0)], date(2027, 5, 25)),
        rows("tall", crop, 8.0, 9, along, across, date(2027, 5, 10), x=1.0, y=5.0 - 4.5 * across),
    )


@cache
def beside_a_row(crop, distance):
    tall = rows("tall", crop, 8.0, 1, 0.4, 0.6, date(2027, 5, 10), x=1.0, y=4.7 + distance)
    return both(spot("low", "lettuce", [(5.0, 5.0)], SOWN), tall)


ROWS = [(0.35, 0.6, "sweetcorn"), (0.35, 1.2, "sweetcorn"), (0.45, 0.9, "tomato"), (0.2, 0.8, "runner-bean"),
        (0.6, 0.6, "brussels-sprouts")]  # fmt: skip


@pytest.mark.parametrize("crop", TALL)
@pytest.mark.parametrize("distance", [0.0, 0.1, 0.3, 0.4])
def test_a_plant_wholly_or_partly_under_another(crop, distance):
    for direction in (0, 90, 180):
        engine, rays = one_plant(crop, distance, direction)
        assert engine == pytest.approx(rays, abs=0.14)


@pytest.mark.parametrize("crop", TALL)
@pytest.mark.parametrize("distance", [0.6, 0.9])
def test_a_plant_beside_another(crop, distance):
    for direction in (0, 90, 180):
        engine, rays = one_plant(crop, distance, direction)
        assert engine == pytest.approx(rays, abs=0.07)


@pytest.mark.parametrize("crop", ["sweetcorn", "tomato"])
@pytest.mark.parametrize("distance", [-1.0, -0.6, -0.4, 0.4, 0.6, 1.0])
def test_a_plant_north_and_south_of_a_row(crop, distance):
    engine, rays = beside_a_row(crop, distance)
    assert engine == pytest.approx(rays, abs=0.07)


@pytest.mark.parametrize(("along", "across", "crop"), ROWS)
@pytest.mark.parametrize("low", ["lettuce", "cowpea", "dwarf-bean", "spinach"])
def test_a_low_crop_among_the_rows_of_a_tall_one(crop, low, along, across):
    engine, rays = in_rows(crop, low, along, across)
    assert engine == pytest.approx(rays, abs=0.12)


def test_errors_have_no_lean_and_are_small_on_the_whole():
    """Before light came in from the side, plants under others were given up to 0.48 too little."""
    cases = [one_plant(c, d, a) for c in TALL for d in (0.0, 0.1, 0.2, 0.3, 0.4, 0.6) for a in (0, 90, 180)]
    cases += [in_rows(c, low, i, a) for i, a, c in ROWS for low in ("lettuce", "cowpea", "dwarf-bean")]
    cases += [beside_a_row(c, d) for c in ("sweetcorn", "tomato") for d in (-1.0, -0.6, -0.4, 0.4, 0.6, 1.0)]
    error = np.array([engine - rays for engine, rays in cases])
    assert abs(error.mean()) < 0.025
    assert np.abs(error).mean() < 0.05
    assert np.abs(error).max() < 0.23
    assert np.corrcoef(np.array(cases).T)[0, 1] > 0.97
