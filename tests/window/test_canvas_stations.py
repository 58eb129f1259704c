"""Single plants of a planting left out, put back and moved, by mouse and by keys; each one undo step."""

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, Qt

from tests.window.hand import Hand, two_rows

KEY = Qt.Key


@pytest.fixture
def hand(qtbot):
    hand = Hand(qtbot, two_rows())
    hand.session.select({"leeks"})
    hand.view.set_tool("stations")
    return hand


def station(hand, index):
    x, y = hand.planting("leeks").stations[index]
    return hand.pixel((float(x), float(y)))


def click(hand, at):
    hand.press(at)
    hand.release(at)


def test_a_click_leaves_a_plant_out_and_a_click_on_its_place_puts_it_back(hand):
    before = hand.planting("leeks")
    at = station(hand, 4)
    click(hand, at)
    after = hand.planting("leeks")
    assert after.pattern.count == before.pattern.count - 1
    assert after.pattern.left_out == (4,)
    np.testing.assert_array_equal(after.stations[4:], before.stations[5:])
    click(hand, at)
    assert hand.planting("leeks").pattern == before.pattern
    assert hand.session.history.count() == 2


def test_a_drag_moves_one_plant_and_undo_puts_it_back(hand):
    before = hand.planting("leeks")
    hand.drag(station(hand, 3), station(hand, 3) + QPoint(0, 40))
    after = hand.planting("leeks")
    moved = np.flatnonzero(np.hypot(*(after.stations - before.stations).T) > 0.02)
    assert moved.tolist() == [3]
    assert after.stations[3, 1] > before.stations[3, 1]
    hand.session.history.undo()
    assert hand.planting("leeks") == before


def test_keys_walk_leave_out_and_move(hand):
    before = hand.planting("leeks")
    hand.key(KEY.Key_Tab)
    hand.key(KEY.Key_Tab)
    hand.key(KEY.Key_Down)
    assert hand.planting("leeks").stations[2, 1] == pytest.approx(before.stations[2, 1] + 0.01)
    hand.key(KEY.Key_Space)
    assert hand.planting("leeks").pattern.left_out == (2,)
    hand.key(KEY.Key_Escape)
    assert hand.view.tool.name == "select"


def test_a_double_click_on_a_planting_begins_it(qtbot):
    hand = Hand(qtbot, two_rows())
    at = station(hand, 2)
    click(hand, at)
    hand.send(QEvent.Type.MouseButtonDblClick, at)
    assert hand.view.tool.name == "stations"
    assert hand.session.selection == {"leeks"}


def test_the_last_plant_is_not_left_out(hand):
    for _ in range(hand.planting("leeks").pattern.count + 2):
        hand.key(KEY.Key_Space)
    assert hand.planting("leeks").pattern.count == 1
    assert any("delete the planting instead" in sentence for sentence in hand.said)
