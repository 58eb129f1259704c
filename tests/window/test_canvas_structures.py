"""Every structure drawn with the mouse, typed exact, undone; refusals change nothing."""

from itertools import pairwise
from math import dist, hypot

import pytest
from PySide6.QtCore import QEvent, Qt

from gardencanvas.garden.structures import KINDS
from tests.window.hand import Hand, two_rows

KEY = Qt.Key


@pytest.fixture
def hand(qtbot):
    hand = Hand(qtbot, two_rows())
    hand.view.zoom_out()
    return hand


def fresh(hand, before):
    layout = hand.layout
    items = [*layout.items(), *hand.session.garden.fixtures]
    return [i for i in items if i.id not in before]


def ids(hand):
    return {i.id for i in (*hand.layout.items(), *hand.session.garden.fixtures)}


@pytest.mark.parametrize("kind", [k for k, v in KINDS.items() if v.how in {"box", "line", "round"}])
def test_a_drag_draws_it_and_undo_takes_it_away(hand, kind):
    before, garden = ids(hand), hand.session.garden
    hand.view.set_tool(kind)
    hand.drag((0.4, 3.6), (1.4, 4.0))
    (item,) = fresh(hand, before)
    assert hand.session.selection == {item.id}
    if kind not in {"circle bed", "keyhole bed"}:
        assert item.kind == kind
    assert hand.view.tool.name == kind  # one after the other until Esc
    hand.session.history.undo()
    assert hand.session.garden is garden
    hand.key(KEY.Key_Escape)
    assert hand.view.tool.name == "select"


def test_a_typed_radius_and_length_are_exact(hand):
    before = ids(hand)
    hand.view.set_tool("cane ring")
    hand.press((1.0, 4.0))
    hand.move((1.3, 4.0))
    hand.write("45cm")
    hand.release((1.3, 4.0))
    (ring,) = fresh(hand, before)
    assert ring.radius_m == pytest.approx(0.45)
    assert ring.cane_count == round(2 * 3.14159 * 0.45 / 0.3)
    hand.view.set_tool("net")
    hand.press((0.0, 4.2))
    hand.move((1.0, 4.2))
    hand.write("2.5")
    hand.key(KEY.Key_Return)
    net = next(i for i in fresh(hand, before) if i.name == "Net")
    assert hypot(net.end[0] - net.begin[0], net.end[1] - net.begin[1]) == pytest.approx(2.5)


def test_a_path_is_clicked_point_after_point(hand):
    before = ids(hand)
    hand.view.set_tool("path")
    for at in ((0.0, 3.5), (2.0, 3.5), (2.0, 4.2)):
        hand.press(at)
        hand.release(at)
    hand.send(QEvent.Type.MouseButtonDblClick, (2.0, 4.2))
    (path,) = fresh(hand, before)
    assert path.line == ((0.0, 3.5), (2.0, 3.5), (2.0, 4.2))


def test_typed_lengths_of_a_path_are_exact(hand):
    hand.view.set_tool("path")
    hand.click((0.2, 0.2))
    hand.move((0.8, 0.2), held=Qt.MouseButton.NoButton)
    hand.write("2.5")
    hand.key(Qt.Key.Key_Return)
    hand.move((2.7, 0.9), held=Qt.MouseButton.NoButton)
    hand.write("80cm")
    hand.key(Qt.Key.Key_Return)
    hand.key(Qt.Key.Key_Return)
    (path,) = hand.layout.paths
    assert path.line[0] == pytest.approx((0.2, 0.2))
    assert [dist(a, b) for a, b in pairwise(path.line)] == pytest.approx([2.5, 0.8])


def test_a_hole_is_cut_into_the_bed_it_begins_in(hand):
    hand.view.set_tool("hole")
    for at in ((1.0, 2.4), (2.0, 2.4), (2.0, 2.8), (1.0, 2.8)):
        hand.press(at)
        hand.release(at)
    hand.key(KEY.Key_Return)
    bed = hand.planting("bed-2")
    assert bed.holes == (((1.0, 2.4), (2.0, 2.4), (2.0, 2.8), (1.0, 2.8)),)


def test_a_hole_outside_any_bed_is_refused(hand):
    before = hand.session.garden
    hand.view.set_tool("hole")
    for at in ((1.0, 3.5), (2.0, 3.5), (2.0, 4.0)):
        hand.press(at)
        hand.release(at)
    hand.key(KEY.Key_Return)
    assert hand.session.garden is before
    assert any("begin inside one" in sentence for sentence in hand.said)


def test_a_stake_stands_where_it_was_clicked(hand):
    before = ids(hand)
    hand.view.set_tool("stake")
    hand.press((1.5, 3.8))
    hand.release((1.5, 3.8))
    (stake,) = fresh(hand, before)
    assert stake.centre == pytest.approx((1.5, 3.8), abs=0.026)
    assert stake.cane_count == 1


def test_too_small_a_thing_is_refused_in_words(hand):
    before = hand.session.garden
    hand.view.set_tool("tree")
    hand.press((1.0, 4.0))
    hand.release((1.0, 4.0))
    assert hand.session.garden is before
    assert any("less than 2 cm" in sentence for sentence in hand.said)
