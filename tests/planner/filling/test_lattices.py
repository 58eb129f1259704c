"""Patterns that hold most plants of a ground, against closed forms and packing bounds.

A square grid of plants that keep half their spacing s from the sides of a rectangle holds ⌊L/s⌋·⌊W/s⌋; in a
triangular one the lines lie s·√3/2 apart. No arrangement of discs of width s in a convex ground of up to six
sides takes more than π/√12 of it (Segre & Mahler 1944, Amer. Math. Monthly 51:261); points of a convex ground
of area A and rim P that keep a distance s are no more than 2A/(√3 s²) + P/(2s) + 1 (Oler 1961, Acta Math.
105:19).
"""

from math import floor, pi, sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, box
from shapely.affinity import rotate

from gardencanvas.garden.errors import Refusal
from gardencanvas.planner.filling.ground import within
from gardencanvas.planner.filling.lattices import laid_in, lattices
from tests.planner.filling.makers import even

SIDES = st.floats(0.5, 4.0).map(lambda v: round(v, 2))
SPACINGS = st.integers(10, 50).map(lambda n: n / 100)
ANGLES = st.sampled_from([0.0, 17.0, 60.0])


def drained(steps):
    while True:
        try:
            next(steps)
        except StopIteration as end:
            return end.value


def most(ground, spacing, kinds=("square", "staggered"), angle=0.0):
    """The pattern that holds most in a ground, of these kinds."""
    room = within(ground, spacing / 2)
    found = [p for lat in lattices(even(spacing), angle, kinds) for p in drained(laid_in(room, lat))]
    return max(found, key=lambda laid: laid.count)


def along(length, spacing):
    return floor(length / spacing + 1e-9)


def triangular(length, width, spacing):
    """Plants of a triangular grid with its lines along ``length``."""
    lines = floor((width - spacing) / (spacing * sqrt(3) / 2) + 1e-9) + 1
    late = floor((length - spacing / 2) / spacing + 1e-9)
    return along(length, spacing) * ((lines + 1) // 2) + late * (lines // 2)


@given(length=SIDES, width=SIDES, spacing=SPACINGS, angle=ANGLES)
def test_a_rectangle_holds_as_many_as_the_closed_forms_say_and_no_more_than_can_be(
    length, width, spacing, angle
):
    ground = rotate(box(0, 0, length, width), angle, origin=(0, 0))
    square = most(ground, spacing, ("square",), angle).count
    assert square == along(length, spacing) * along(width, spacing)
    both = most(ground, spacing, angle=angle).count
    assert both >= max(square, triangular(length, width, spacing), triangular(width, length, spacing))
    assert both * pi * spacing**2 / 4 <= pi / sqrt(12) * length * width + 1e-9


@given(spacing=SPACINGS, length=SIDES, width=SIDES, angle=ANGLES, closer=st.floats(0.4, 1.0))
def test_closer_spacing_never_holds_fewer(spacing, length, width, angle, closer):
    ground = rotate(box(0, 0, length, width), angle, origin=(0, 0))
    wide = most(ground, spacing, angle=angle).count
    assert most(ground, round(spacing * closer, 4), angle=angle).count >= wide


@given(
    corners=st.lists(st.tuples(st.floats(0, 3), st.floats(0, 2)), min_size=5, max_size=9),
    spacing=st.sampled_from([0.12, 0.2, 0.31]),
    kinds=st.sampled_from([("rows",), ("square",), ("staggered",), ("rows", "square", "staggered")]),
)
def test_plants_stand_in_their_ground_and_apart_whatever_its_shape(corners, spacing, kinds):
    ground = Polygon(corners).convex_hull
    if ground.area < 0.5 or within(ground, spacing / 2).area < 0.05:
        return
    laid = [
        p
        for lat in lattices(even(spacing), 0.0, kinds)
        for p in drained(laid_in(within(ground, spacing / 2), lat))
    ]
    for pattern, count in ((p.pattern, p.count) for p in laid):
        xy = pattern.stations
        assert (
            len(xy) == count <= 2 * ground.area / (sqrt(3) * spacing**2) + ground.length / (2 * spacing) + 1
        )
        away = np.hypot(*(xy[:, None] - xy[None]).transpose(2, 0, 1))
        np.fill_diagonal(away, np.inf)
        assert away.min(initial=np.inf) >= spacing - 2e-6
        assert all(ground.buffer(-spacing / 2 + 1e-4).buffer(1e-4).covers(p) for p in _points(xy))


def _points(xy):
    from shapely import points

    return points(xy)


def test_ground_narrower_than_the_spacing_takes_one_line_down_its_middle():
    laid = most(box(0, 0, 3.0, 0.2), 0.4, ("rows",))
    assert laid.pattern.stations[:, 1] == pytest.approx(0.1, abs=0.001)
    assert laid.count == 8  # seven steps of 0.4 m in the 2.8 m that leave 0.1 m at either end


def test_ground_for_more_than_a_planting_may_hold_is_refused():
    with pytest.raises(Refusal, match="plants; a planting holds 20,000"):
        most(box(0, 0, 20.0, 20.0), 0.1, ("square",))
