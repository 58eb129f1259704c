"""Shadows and shared light against closed forms and printed values."""

import numpy as np
import pytest
from shapely import Point, Polygon

from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.site import Climate, Frost, Site
from gardencanvas.light.canopy import discs, layered, rows, taken
from gardencanvas.light.fixtures import open_sky
from gardencanvas.light.shadow import displacement, shadow
from tests.oracles.oracle_rows import expected, tolerance


def near(row, value):
    want = expected(row)
    got = tuple(np.ravel(value)) if isinstance(want, tuple) else float(value)
    assert got == pytest.approx(want, abs=tolerance(row)), row


def test_displacement():
    near("O024", displacement(2.0, 45.0, 180.0))
    near("O025", displacement(1.8, 30.0, 135.0))


def wall(width: float, depth: float, height: float) -> Fixture:
    ring = ((0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth))
    return Fixture(id="w", name="Wall", kind="wall", outline=ring, height_m=height)


def test_area_of_a_box_shadow():
    near("O026", shadow(wall(1.0, 0.1, 2.0), 0.0, 30.0, 225.0).area)


def test_shaded_cells_north_of_a_wall():
    # Sun in the south at 45°: a 2 m wall shades 2 m to its north, up the plan: 40 cells of 5 cm.
    ground = shadow(wall(4.0, 0.1, 2.0), 0.0, 45.0, 180.0)
    cells = [Point(2.0, -0.025 - 0.05 * n) for n in range(80)]
    near("O027", sum(ground.contains(cell) for cell in cells))


def test_sky_view_of_a_gap_between_two_walls():
    # Fixtures leave the sky view factor of an overcast sky. Two long walls of height 1, a gap of 1 between.
    site = Site(
        place="Gap",
        latitude_deg=89.9,
        longitude_deg=0.0,
        frost=Frost(basis="none"),
        climate=Climate(mean_c=(10,) * 12),
    )
    sides = [
        Fixture(
            id=f"w{side}", name="Wall", kind="wall", height_m=1.0,
            outline=((-400.0, y), (400.0, y), (400.0, y + 0.1), (-400.0, y + 0.1)),
        )
        for side, y in (("a", -0.1), ("b", 1.0))
    ]  # fmt: skip
    across = (np.arange(200) + 0.5) / 200
    points = np.column_stack([np.zeros(200), across])
    # Polar night at 89.9° N in December: what is left is the sky's share alone.
    view = open_sky(site, sides, points)[:, 11]
    assert float(view.mean()) == pytest.approx(expected("O028"), abs=0.004)
    # In the middle of the gap: cos(atan(2H/P)), the same source.
    middle = float(open_sky(site, sides, [(0.0, 0.5)])[0, 11])
    assert middle == pytest.approx(np.cos(np.arctan(2.0)), abs=0.004)


def test_beer_lambert():
    near("O052", taken(0.65, 3.0))


def test_layers():
    near("O053", layered([0.5, 0.5], [1.0, 2.0], [1.0, 1.0]))
    near("O054", layered([0.5, 0.7], [2.0, 1.5], [1.8, 0.4], [0.4, 0.0]))
    near("O055", layered([0.5, 0.7], [2.0, 1.5], [1.8, 0.4]))
    three = layered([0.6, 0.7, 0.8], [2.5, 2.0, 1.0], [1.5, 0.5, 0.2])
    near("O056", three.sum())


def test_layers_against_the_closed_form_without_layers():
    """Wallace's closed form, printed in Camargo 2014, shares the same light otherwise, by relative height."""
    by_height = np.array(expected("O057"))
    by_layer = layered([0.5, 0.5, 0.5], [1.0, 1.0, 1.0], [1.0, 2.0, 1.0])
    assert by_layer.sum() == pytest.approx(by_height.sum(), abs=1e-6)
    assert np.abs(by_layer - by_height).max() < 0.035
    assert by_layer[1] > by_height[1] > by_height[0] > by_layer[0]


def test_rows():
    near("O058", rows(0.6, 2.0, 0.3, 0.3, 0.5))
    compressed, homogeneous = expected("O059")
    assert float(rows(0.6, 2.0, 0.3, 0.3, 1e-9)) == pytest.approx(compressed, abs=tolerance("O059"))
    assert float(rows(0.6, 2.0, 0.3, 0.3, 1e4)) == pytest.approx(homogeneous, abs=2e-4)


def test_discs():
    near("O060", discs(0.6, 1.2, 0.4))


def test_shadow_of_a_disc_has_the_closed_form_area():
    # pi r² + 2 r L, with a polygon of 720 corners.
    angles = np.linspace(0.0, 2 * np.pi, 720, endpoint=False)
    ring = tuple((0.5 * float(np.cos(a)), 0.5 * float(np.sin(a))) for a in angles)
    tree = Fixture(id="t", name="Tree", kind="tree", outline=ring, height_m=3.0)
    length = 3.0 / np.tan(np.radians(40.0))
    assert shadow(tree, 0.0, 40.0, 200.0).area == pytest.approx(np.pi * 0.25 + length, rel=1e-4)
    crown = tree.model_copy(update={"base_m": 2.0})
    lifted = 1.0 / np.tan(np.radians(40.0))
    assert shadow(crown, 0.0, 40.0, 200.0).area == pytest.approx(np.pi * 0.25 + lifted, rel=1e-4)


def test_hollow_outline_is_swept_exactly():
    # An L: brute force by union of many copies along the way.
    ring = ((0.0, 0.0), (3.0, 0.0), (3.0, 0.2), (0.2, 0.2), (0.2, 2.0), (0.0, 2.0))
    hedge = Fixture(id="h", name="Hedge", kind="hedge", outline=ring, height_m=1.5)
    got = shadow(hedge, 30.0, 35.0, 200.0)
    from shapely import union_all
    from shapely.affinity import translate

    from gardencanvas.light.compass import to_plan

    (step,) = to_plan([displacement(1.5, 35.0, 200.0)], 30.0)
    copies = [translate(Polygon(ring), *(step * s)) for s in np.linspace(0, 1, 401)]
    assert got.symmetric_difference(union_all(copies)).area < 0.01
