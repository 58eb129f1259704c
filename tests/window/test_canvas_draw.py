"""Drawing beds and measuring on the plan with real mouse and key events."""

from math import dist

import pytest
from PySide6.QtCore import Qt
from shapely import Polygon

from gardencanvas.garden import edits
from tests.garden.makers import garden
from tests.window.hand import CTRL, SHIFT, Hand

KEY = Qt.Key


@pytest.fixture
def hand(qtbot):
    value = garden()
    return Hand(qtbot, edits.remove(value, "l1", {"bed-1"}))


def sides(bed):
    x0, y0, x1, y1 = Polygon(bed.outline).bounds
    return round(x1 - x0, 6), round(y1 - y0, 6)


def test_an_empty_plan_says_what_to_do_until_there_is_a_bed(hand):
    assert hand.view.frame_.empty.isVisible()
    assert "Press B" in hand.view.frame_.empty.text()
    hand.view.set_tool("bed")
    hand.drag((1.0, 1.0), (3.0, 2.0))
    assert not hand.view.frame_.empty.isVisible()


def test_a_drag_draws_a_rectangle_on_the_grid(hand):
    hand.view.set_tool("bed")
    hand.drag((1.003, 1.004), (4.598, 2.203))
    (bed,) = hand.layout.beds
    assert bed.outline == ((1.0, 1.0), (4.6, 1.0), (4.6, 2.2), (1.0, 2.2))
    assert hand.session.history.undo_text == "Draw Bed 1"
    assert hand.session.selection == {bed.id}
    assert hand.view.tool.name == "select"


def test_typed_measures_are_exact(hand):
    hand.view.set_tool("bed")
    hand.drag((1.0, 1.0), (2.0, 1.5), let_go=False)
    hand.write("3.63x1.17")
    hand.key(KEY.Key_Return)
    hand.release((2.0, 1.5))
    (bed,) = hand.layout.beds
    assert sides(bed) == (3.63, 1.17)


def test_one_typed_side_leaves_the_other_to_the_mouse(hand):
    hand.view.set_tool("bed")
    hand.drag((1.0, 1.0), (2.0, 1.5), let_go=False)
    hand.write("2,4m")
    hand.release((2.0, 1.5))
    assert sides(hand.layout.beds[0]) == (2.4, 0.5)


def test_feet_and_inches(hand):
    """12 ft 6 in by 4 ft are 3.81 m by 1.2192 m: a foot is 0.3048 m by definition."""
    hand.view.set_units("imperial")
    hand.view.set_tool("bed")
    hand.drag((1.0, 1.0), (2.0, 1.5), let_go=False)
    hand.write("12'6\"x4")
    hand.key(KEY.Key_Return)
    assert sides(hand.layout.beds[0]) == (3.81, 1.2192)


def test_escape_gives_up_drawing(hand):
    before = hand.session.garden
    hand.view.set_tool("bed")
    hand.drag((1.0, 1.0), (2.0, 1.5), let_go=False)
    hand.key(KEY.Key_Escape)
    hand.release((2.0, 1.5))
    assert hand.session.garden is before
    assert hand.view.tool.name == "bed"
    hand.key(KEY.Key_Escape)
    assert hand.view.tool.name == "select"


def test_shift_draws_a_square_and_a_mere_click_draws_nothing(hand):
    hand.view.set_tool("bed")
    hand.click((1.0, 1.0))
    assert hand.layout.beds == ()
    hand.drag((1.0, 1.0), (2.0, 1.5), SHIFT)
    assert sides(hand.layout.beds[0]) == (1.0, 1.0)


def test_a_polygon_is_closed_by_enter_and_backspace_takes_a_corner_back(hand):
    hand.view.set_tool("polygon")
    for corner in ((1.0, 1.0), (3.0, 1.0), (3.0, 2.0), (5.0, 3.0)):
        hand.click(corner)
    hand.key(KEY.Key_Backspace)
    hand.click((1.0, 2.5))
    hand.key(KEY.Key_Return)
    assert hand.layout.beds[0].outline == ((1.0, 1.0), (3.0, 1.0), (3.0, 2.0), (1.0, 2.5))


def test_typed_sides_of_a_polygon_are_exact(hand):
    """A triangle of 3, 4 and so 5 m: its third side is closed by Enter alone."""
    hand.view.set_tool("polygon")
    hand.click((0.0, 0.0))
    hand.move((0.9, 0.0), held=Qt.MouseButton.NoButton)
    hand.write("3")
    hand.key(Qt.Key.Key_Return)
    hand.move((3.0, 1.0), held=Qt.MouseButton.NoButton)
    hand.write("49")
    hand.key(Qt.Key.Key_Backspace)
    hand.key(Qt.Key.Key_Return)
    hand.key(Qt.Key.Key_Return)
    corners = hand.layout.beds[-1].outline
    assert len(corners) == 3
    sides = [dist(a, b) for a, b in zip(corners, (*corners[1:], corners[0]), strict=True)]
    assert sides == pytest.approx([3.0, 4.0, 5.0])


def test_a_double_click_closes_a_polygon_once(hand):
    hand.view.set_tool("polygon")
    hand.click((1.0, 1.0))
    hand.click((3.0, 1.0))
    hand.double_click((3.0, 2.0))
    assert len(hand.layout.beds) == 1
    assert hand.layout.beds[0].outline == ((1.0, 1.0), (3.0, 1.0), (3.0, 2.0))


def test_a_crossing_polygon_is_refused_in_words_and_changes_nothing(hand):
    before = hand.session.garden
    hand.view.set_tool("polygon")
    for corner in ((1.0, 1.0), (3.0, 3.0), (3.0, 1.0), (1.0, 3.0)):
        hand.click(corner)
    hand.key(KEY.Key_Return)
    assert hand.session.garden is before
    assert "crosses itself" in hand.said[-1]


def test_measuring_says_the_distance(hand):
    """A right triangle of 3 and 4 m has a side of 5 m."""
    hand.view.set_tool("measure")
    hand.drag((1.0, 0.5), (4.0, 4.5), CTRL)
    assert hand.view.tools["measure"].distance_m == pytest.approx(5.0, abs=0.02)
    hand.drag((1.0, 0.5), (4.0, 4.5))
    assert hand.view.tools["measure"].distance_m == pytest.approx(5.0, abs=1e-9)
    assert hand.session.history.count() == 0


def test_a_round_bed_is_pulled_wider_by_its_rim(hand):
    hand.view.set_tool("circle bed")
    hand.drag((2.0, 2.0), (2.8, 2.0))
    hand.view.set_tool("select")
    (round_bed,) = hand.layout.beds
    hand.session.select([round_bed.id])
    hand.drag((2.8, 2.0), (3.0, 2.0))
    outline = hand.layout.beds[0].outline
    assert [dist(p, (2.0, 2.0)) for p in outline] == pytest.approx([1.0] * len(outline), abs=0.03)
    hand.session.history.undo()
    assert hand.layout.beds[0] == round_bed
