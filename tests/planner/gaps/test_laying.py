"""Patterns laid into ground: counts of packings, and brute force on a 2 cm grid."""

from math import floor, sqrt

import numpy as np
import pytest
import shapely

from gardencanvas.garden.pattern import Rows
from gardencanvas.planner.gaps.clearance import Region
from gardencanvas.planner.gaps.laying import Spacing, lay
from tests.fit.makers import spot
from tests.garden.makers import bed, garden
from tests.planner.gaps.askers import surveyed


def region_of(some):
    survey, _ = surveyed(some)
    there = survey.bed(some.layouts[0].beds[0])
    return Region(there, np.ones(len(there.field.plan), dtype=bool), there.field.ground)


def square(length, width, s):
    """Squares of a side: textbook count of a grid whose stations keep half a spacing from the sides."""
    return floor(length / s + 1e-9) * floor(width / s + 1e-9)


def triangles(length, width, s):
    """The same in staggered rows, the long way and the short way round."""

    def along(a, b):
        rows = floor((b - s) / (s * sqrt(3) / 2) + 1e-9) + 1
        even, odd = floor(a / s + 1e-9), floor(a / s - 0.5 + 1e-9)
        return even * ((rows + 1) // 2) + odd * (rows // 2)

    return max(along(length, width), along(width, length))


@pytest.mark.parametrize(
    ("length", "width", "s", "known"),
    [(3.6, 1.2, 0.30, 48), (2.4, 1.2, 0.25, 45), (1.2, 1.2, 0.30, 16), (3.0, 1.0, 0.15, 137)],
)
def test_packings_of_an_empty_bed(length, width, s, known):
    region = region_of(garden(beds=(bed(length=length, width=width),)))
    assert known == max(square(length, width, s), triangles(length, width, s))
    laid = lay(region, Spacing(s, s), np.zeros(0), s / 2)
    assert laid.plants >= known
    assert laid.pattern.count == laid.plants


def test_rows_lie_along_a_turned_bed():
    turn = np.deg2rad(30.0)
    corners = np.array([[0.0, 0.0], [3.0, 0.0], [3.0, 1.0], [0.0, 1.0]])
    outline = corners @ np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]])
    there = bed().model_copy(update={"outline": tuple(map(tuple, outline.tolist()))})
    laid = lay(region_of(garden(beds=(there,))), Spacing(0.1, 0.4), np.zeros(0), 0.05)
    assert isinstance(laid.pattern, Rows)
    assert laid.pattern.angle_deg % 90.0 == pytest.approx(30.0)
    assert laid.plants >= 30 * 3  # ten a metre in rows at 5, 45 and 85 cm


CASES = [
    ("between two", [(0.4, 0.6), (1.4, 0.6)], 1.8, 1.2, 0.30, 0.35),
    ("round one", [(0.75, 0.5)], 1.5, 1.0, 0.25, 0.40),
    ("off the middle", [(0.3, 0.3), (1.1, 0.7), (1.7, 0.2)], 2.0, 0.9, 0.20, 0.30),
    ("a strip", [(0.2, 0.15), (0.6, 0.15), (1.0, 0.15)], 1.2, 0.6, 0.20, 0.25),
]


@pytest.mark.parametrize(
    ("points", "length", "width", "s", "apart"), [c[1:] for c in CASES], ids=[c[0] for c in CASES]
)
def test_as_many_as_brute_force_finds(points, length, width, s, apart):
    """All shifts of a square and a staggered lattice, both ways round, in steps of 2 cm."""
    some = garden(spot("p", "cabbage", points), beds=(bed(length=length, width=width),))
    region = region_of(some)
    laid = lay(region, Spacing(s, s), np.array([apart]), s / 2)
    stations = laid.pattern.stations
    _clear(stations, points, length, width, s, apart)
    assert laid.plants >= 0.95 * _most(points, length, width, s, apart)


def _clear(stations, points, length, width, s, apart):
    """Every station keeps its distances: checked with shapely."""
    inner = shapely.box(0, 0, length, width).buffer(-s / 2 + 1e-4)
    at = shapely.points(stations)
    assert shapely.covers(inner, at).all()
    assert (shapely.distance(at[:, None], shapely.points(points)[None, :]) >= apart - 2e-3).all()
    own = shapely.distance(at[:, None], at[None, :]) + 9.0 * np.eye(len(at))
    assert own.min() >= s - 1e-3


def _most(points, length, width, s, apart):
    best = 0
    for a, b, late in ((s, s, 0.0), (s, s * sqrt(3) / 2, s / 2)):
        for turned in (False, True):
            wide, high = (width, length) if turned else (length, width)
            for x0 in np.arange(0.0, a, 0.02):
                for y0 in np.arange(0.0, b, 0.02):
                    lines = np.arange(0, int(high / b) + 2)
                    x = x0 + np.arange(-1, int(wide / a) + 2)[None, :] * a + (lines % 2)[:, None] * late
                    y = np.broadcast_to(y0 + lines[:, None] * b, x.shape)
                    free = (x >= s / 2 - 1e-9) & (x <= wide - s / 2 + 1e-9)
                    free &= (y >= s / 2 - 1e-9) & (y <= high - s / 2 + 1e-9)
                    for px, py in points:
                        qx, qy = (py, px) if turned else (px, py)
                        free &= np.hypot(x - qx, y - qy) >= apart - 1e-9
                    best = max(best, int(free.sum()))
    return best


def test_a_place_a_centimetre_wide_is_found():
    """A lone spot in the middle of four plants, where no point of the bed's field lies."""
    points = [(0.313, 0.317), (1.113, 0.317), (0.313, 1.117), (1.113, 1.117)]
    some = garden(spot("p", "cabbage", points), beds=(bed(length=1.43, width=1.43),))
    reach = float(np.hypot(0.4, 0.4)) - 0.005
    laid = lay(region_of(some), Spacing(0.5, 0.5), np.array([reach]), 0.5)
    assert laid.plants == 1
    assert laid.pattern.stations[0] == pytest.approx((0.713, 0.717), abs=0.01)
    assert lay(region_of(some), Spacing(0.5, 0.5), np.array([reach + 0.02]), 0.5) is None
