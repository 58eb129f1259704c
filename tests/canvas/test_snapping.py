"""Snapping: what it moves, and how far at most."""

from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF

from gardencanvas.canvas.snapping import GRID_CM, Snapping, lines_of

cm = st.floats(-5000, 5000)


@given(cm, cm)
def test_a_point_rests_on_the_grid_at_most_half_a_step_away(x, y):
    at = Snapping().point(QPointF(x, y))
    for got, asked in ((at.x(), x), (at.y(), y)):
        assert abs(got - asked) <= GRID_CM / 2 + 1e-9
        assert abs(got / GRID_CM - round(got / GRID_CM)) < 1e-9


@given(cm, cm)
def test_switched_off_it_changes_nothing(x, y):
    assert Snapping(on=False).point(QPointF(x, y)) == QPointF(x, y)


@given(cm, st.floats(10, 500), st.floats(-300, 300), st.lists(cm, max_size=6))
def test_a_box_rests_with_an_edge_on_a_line_or_its_corner_on_the_grid(left, wide, by, lines):
    box = QRectF(left, 0, wide, 10)
    snap = Snapping(xs=tuple(lines), pull_cm=3.0)
    moved = snap.shift(box, QPointF(by, 0)).x()
    assert abs(moved - by) <= max(3.0, GRID_CM / 2) + 1e-6
    edges = (left + moved, left + wide / 2 + moved, left + wide + moved)
    on_line = any(abs(edge - line) < 1e-6 for edge in edges for line in lines)
    on_grid = abs(edges[0] / GRID_CM - round(edges[0] / GRID_CM)) < 1e-6
    assert on_line or on_grid or abs(by) <= 1e-9


def test_a_bed_offers_its_edges_and_middles():
    xs, ys = lines_of([QRectF(0, 0, 360, 120)])
    assert xs == (0, 180, 360)
    assert ys == (0, 60, 120)
