"""Outlines of plantings, hatches and dashes."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainterPath
from shapely import LineString, Point, box, covers, points, unary_union

from gardencanvas.canvas.items.hatch import hatch_lines
from gardencanvas.canvas.items.outline_shape import Shape
from gardencanvas.canvas.shapes import hull, reach
from gardencanvas.garden.pattern import Block, Drift, Edging, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting, Start

PATTERNS = [
    Rows(length_m=3.0, spacing_m=0.15, row_spacing_m=0.3, rows=2, angle_deg=20.0),
    Strip(length_m=2.0, width_m=0.4, spacing_m=0.1, across_m=0.08),
    Block(length_m=1.2, width_m=1.0, spacing_m=0.25, staggered=True),
    RingPattern(radius_m=0.6, spacing_m=0.2),
    Edging(line=((0.0, 0.0), (2.0, 0.0), (2.0, 1.0)), spacing_m=0.25),
    Drift(outline=((0.0, 0.0), (2.0, 0.0), (1.5, 1.5)), spacing_m=0.3, plants=12, seed=4),
    Spots(points=((0.0, 0.0), (1.0, 0.5)), spacing_m=0.5),
]


def planting(pattern):
    return Planting(id="p", crop="leek", pattern=pattern, start=Start(kind="sown", on=date(2027, 5, 1)))


@pytest.mark.parametrize("pattern", PATTERNS, ids=lambda p: p.kind)
@pytest.mark.parametrize("full_m", [0.02, 0.15, 0.8])
def test_an_outline_holds_every_plant_with_room_round_it(pattern, full_m):
    one = planting(pattern)
    shape = hull(one, full_m)
    stations = one.stations * 100
    assert covers(shape, points(stations)).all()
    nearest = min(shape.boundary.distance(Point(*xy)) for xy in stations)
    assert nearest == pytest.approx(reach(one, full_m) * 100, rel=0.12)  # the arcs are polygons


@pytest.mark.parametrize("full_m", [0.05, 0.2, 1.0])
def test_outlines_of_rows_side_by_side_do_not_cross(full_m):
    """Rows laid at their own distance: each outline stays on its half of the ground between them."""
    first = planting(Rows(length_m=3.0, spacing_m=0.15, row_spacing_m=0.3))
    second = planting(Rows(origin=(0.0, 0.3), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3))
    assert hull(first, full_m).intersection(hull(second, full_m)).area < 1.0


def ring_path():
    path = QPainterPath()
    path.addEllipse(QRectF(10, 10, 80, 60))
    path.addEllipse(QRectF(35, 30, 30, 20))
    return path


@pytest.mark.parametrize("crossed", [False, True])
def test_hatch_lines_stay_in_the_shape_and_keep_their_distance(crossed):
    path = QPainterPath()
    path.addRect(QRectF(0, 0, 120, 80))
    lines = hatch_lines(path, 12, crossed=crossed)
    ground = box(0, 0, 120, 80).buffer(1e-6)
    assert all(ground.covers(LineString([(k.x1(), k.y1()), (k.x2(), k.y2())])) for k in lines)
    slanting = [k for k in lines if (k.x2() - k.x1()) * (k.y2() - k.y1()) < 0]
    offsets = sorted({round((k.x1() + k.y1()) / 2**0.5, 6) for k in slanting})
    np.testing.assert_allclose(np.diff(offsets), 12.0, atol=1e-6)
    assert (len(slanting) < len(lines)) == crossed


def test_dashes_cover_the_same_share_of_every_outline():
    """A dash of 7.4 after a gap of 4.9 pixels covers 60 % of the way."""
    path = QPainterPath()
    path.addEllipse(QRectF(0, 0, 200, 200))
    long, short = Shape(path).dashed(1.0)
    assert not long
    drawn = sum(line.length() for line in short)
    assert drawn / (np.pi * 200) == pytest.approx(7.4 / 12.3, rel=0.03)


def test_long_sides_are_left_to_the_pen():
    path = QPainterPath()
    path.addRect(QRectF(0, 0, 500, 300))
    long, short = Shape(path).dashed(1.0)
    assert sorted(round(line.length()) for line in long) == [300, 300, 500, 500]
    assert short == []


def test_fewer_sides_are_drawn_of_small_outlines_and_none_strays():
    shape = Shape(ring_path())
    fine, mid, coarse = shape.lines(0.1), shape.lines(1.0), shape.lines(10.0)
    assert len(coarse) < len(mid) < len(fine)
    rim = unary_union([LineString([(k.x1(), k.y1()), (k.x2(), k.y2())]) for k in fine])
    for lines, share in ((mid, 0.006), (coarse, 0.09)):
        middles = [Point((k.x1() + k.x2()) / 2, (k.y1() + k.y2()) / 2) for k in lines]
        assert max(rim.distance(p) for p in middles) <= 60 * share + 1e-9  # 60 units wide
