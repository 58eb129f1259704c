"""Several neighbours press a plant together: by the lens formula, and whoever planted them."""

from datetime import date
from math import cos, pi, sin

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.fit.geometry import lens_area
from gardencanvas.fit.ground import usual_spacing
from gardencanvas.fit.own import usual_load
from gardencanvas.fit.report import Verdict
from tests.fit.makers import WIDE, judged, spot
from tests.garden.makers import garden

ON = date(2027, 5, 1)
CROP = catalogue().resolve("cabbage")
RADIUS = float(np.sqrt(np.prod(usual_spacing(CROP)) / pi))  # of the ground it has at its usual spacing


def apart(share):
    """Distance at which two grown cabbages overlap by a share of their footprint (lens formula)."""
    area = pi * RADIUS**2

    def off(d):
        return float(lens_area(np.array(RADIUS), np.array(RADIUS), np.array(d))) / area - share

    return brentq(off, 1e-6, 2 * RADIUS)


def around(count, distance):
    return [(distance * cos(2 * pi * k / count), distance * sin(2 * pi * k / count)) for k in range(count)]


def crowded(report, planting_id="middle"):
    return [f for f in report.findings if f.code == "crowded" and f.plantings[0] == planting_id]


def test_three_that_each_take_a_fifth_are_worse_than_one():
    unused = float(usual_load(np.array([RADIUS]), *usual_spacing(CROP))[0])
    share = (unused + 0.36) / 3
    assert share < unused + 0.30  # one alone is within what usual spacing takes
    points = around(3, apart(share))
    middle = spot("middle", "cabbage", [(0.0, 0.0)], ON)
    plantings = [spot(f"n-{k}", "broccoli", [p], ON) for k, p in enumerate(points)]
    assert not crowded(judged(middle, plantings[0]))
    (finding,) = crowded(judged(middle, *plantings))
    assert set(finding.plantings[1:]) == {"n-0", "n-1", "n-2"}
    assert finding.verdict >= Verdict.STRAINS
    assert finding.numbers["distance_m"] == pytest.approx(apart(share), abs=1e-6)


@given(st.integers(2, 5), st.floats(0.2, 0.9))
def test_it_is_the_same_whether_one_planting_presses_or_many(count, part):
    points = around(count, 2 * RADIUS * part)
    middle = spot("middle", "cabbage", [(0.0, 0.0)], ON)
    one = judged(middle, spot("all", "cabbage", points, ON))
    many = judged(middle, *[spot(f"n-{k}", "cabbage", [p], ON) for k, p in enumerate(points)])
    assert one.plantings["middle"].verdict is many.plantings["middle"].verdict
    # told together only where that is worse than what each does alone
    for together in (f for f in crowded(many) if len(f.plantings) > 2):
        (by_one,) = crowded(one)
        assert together.numbers["share"] == pytest.approx(by_one.numbers["share"], abs=1e-5)


@given(st.integers(2, 4), st.floats(0.3, 0.9), st.integers(0, 60))
def test_another_neighbour_never_gives_ground_back(count, part, later):
    points = around(count, 2 * RADIUS * part)
    plantings = [spot("middle", "cabbage", [(0.0, 0.0)], ON)]
    plantings += [
        spot(f"n-{k}", "cabbage", [p], date.fromordinal(ON.toordinal() + later * (k % 2)))
        for k, p in enumerate(points)
    ]
    verdicts = [
        check(garden(*plantings[: n + 1], beds=WIDE)).plantings["middle"].verdict for n in range(count + 1)
    ]
    assert verdicts == sorted(verdicts)
