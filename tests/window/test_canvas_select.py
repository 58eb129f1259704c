"""Selecting, moving, turning, copying on the plan with real mouse and key events."""

import numpy as np
import pytest
from PySide6.QtCore import Qt

from gardencanvas.garden import edits
from tests.window.hand import ALT, CTRL, SHIFT, Hand, two_rows

KEY = Qt.Key
LEEK = (0.175, 0.25)  # the first leek: half a spacing from the row's begin, half a row from its edge
BEET = (0.175, 0.85)


@pytest.fixture
def hand(qtbot):
    return Hand(qtbot, two_rows())


def moved(before, after):
    """How far all stations moved; fails where they did not move alike."""
    steps = after.stations - before.stations
    np.testing.assert_allclose(steps, np.broadcast_to(steps[0], steps.shape), atol=1e-9)
    return steps[0]


def test_a_click_selects_the_plant_under_it_and_bare_paper_selects_nothing(hand):
    hand.click(LEEK)
    assert hand.session.selection == {"leeks"}
    hand.click((5.0, 1.5))
    assert hand.session.selection == frozenset()


def test_shift_adds_and_takes_away(hand):
    hand.click(LEEK)
    hand.click(BEET, SHIFT)
    assert hand.session.selection == {"leeks", "beets"}
    hand.click(LEEK, SHIFT)
    assert hand.session.selection == {"beets"}


def test_a_drag_moves_what_is_under_it_as_one_named_step(hand):
    before = hand.planting("leeks")
    hand.drag(LEEK, (LEEK[0] + 0.2, LEEK[1] + 0.15))
    dx, dy = moved(before, hand.planting("leeks"))
    assert (dx, dy) == pytest.approx((0.2, 0.15), abs=0.051)  # within the grid's step
    assert round((0.1 + dx) / 0.05, 6) == round((0.1 + dx) / 0.05)  # its corner rests on the 5 cm grid
    assert hand.session.history.count() == 1
    assert hand.session.history.undo_text == "Move Leek"


def test_undo_after_a_drag_gives_back_the_identical_garden(hand):
    before = hand.session.garden
    hand.drag(LEEK, (1.0, 0.5))
    assert hand.session.garden is not before
    hand.session.history.undo()
    assert hand.session.garden is before


def test_escape_during_a_drag_leaves_no_trace(hand):
    before = hand.session.garden
    items = {i: p.value for i, p in hand.view.plan.parts.items()}
    hand.drag(LEEK, (1.5, 0.6), let_go=False)
    assert hand.view.plan.parts["leeks"].value is not items["leeks"]  # it was shown moved
    hand.key(KEY.Key_Escape)
    hand.release((1.5, 0.6))
    assert hand.session.garden is before
    assert {i: p.value for i, p in hand.view.plan.parts.items()} == items
    assert hand.session.history.count() == 0
    assert not hand.view.frame_.words.isVisible()


def test_a_bed_moves_only_once_it_is_selected_and_carries_its_plantings(hand):
    bare = (2.0, 0.6)
    hand.drag(bare, (2.4, 0.65))
    assert hand.session.history.count() == 0
    hand.click(bare)
    assert hand.session.selection == {"bed-1"}
    leeks = hand.planting("leeks")
    hand.drag(bare, (bare[0] + 0.5, bare[1] + 0.5))
    x, y = hand.layout.beds[0].outline[0]
    assert (x, y) == pytest.approx((0.5, 0.5), abs=0.051)
    assert moved(leeks, hand.planting("leeks")) == pytest.approx((x, y))
    assert hand.layout.beds[1].outline[0] == (0.0, 2.0)


def test_a_rubber_band_selects_what_lies_in_it(hand):
    hand.drag((-0.3, -0.35), (3.9, 0.55))
    assert hand.session.selection == {"leeks"}
    hand.drag((-0.3, 0.62), (3.9, 1.18), SHIFT)
    assert hand.session.selection == {"leeks", "beets"}


def test_escape_in_a_rubber_band_gives_back_the_selection(hand, qtbot):
    hand.click(BEET)
    hand.drag((-0.3, -0.35), (3.9, 0.55), let_go=False)
    qtbot.waitUntil(lambda: hand.session.selection == {"leeks"})  # moves are shown once a frame
    hand.key(KEY.Key_Escape)
    assert hand.session.selection == {"beets"}


def test_alt_drag_leaves_the_original_and_moves_a_copy(hand):
    original = hand.planting("leeks")
    hand.drag(LEEK, (LEEK[0], LEEK[1] + 2.0), ALT)
    assert hand.planting("leeks") is original
    (copy,) = [p for p in hand.layout.plantings if p.id not in {"leeks", "beets"}]
    assert copy.crop == "leek"
    assert moved(original, copy) == pytest.approx((0.0, 2.0), abs=0.051)
    assert hand.session.selection == {copy.id}
    assert hand.session.history.undo_text == "Copy Leek"


def test_a_copied_bed_brings_its_plantings_and_leaves_the_originals(hand):
    before = hand.layout
    hand.click((2.0, 0.6))
    hand.key(KEY.Key_D, CTRL)
    assert hand.layout.beds[0] is before.beds[0]
    assert hand.planting("leeks") is before.by_id["leeks"]
    assert len(hand.layout.beds) == 3
    assert sorted(p.crop for p in hand.layout.plantings) == ["beetroot", "beetroot", "leek", "leek"]


def test_arrows_nudge_by_a_centimetre_and_with_shift_by_ten(hand):
    hand.click(LEEK)
    before = hand.planting("leeks")
    hand.key(KEY.Key_Right)
    assert moved(before, hand.planting("leeks")) == pytest.approx((0.01, 0.0))
    hand.key(KEY.Key_Up, SHIFT)
    assert moved(before, hand.planting("leeks")) == pytest.approx((0.01, -0.10))


def test_delete_removes_and_locked_things_stay(hand):
    hand.click(LEEK)
    hand.key(KEY.Key_Delete)
    assert "leeks" not in hand.layout.by_id
    assert hand.session.history.undo_text == "Delete Leek"
    session = hand.session
    session.propose(edits.change(session.garden, session.layout_id, "beets", locked=True), "Lock")
    locked = session.garden
    hand.click(BEET)
    hand.key(KEY.Key_Delete)
    hand.drag(BEET, (2.0, 0.5))
    assert session.garden is locked


def test_r_turns_by_fifteen_degrees_about_the_middle(hand):
    hand.click(LEEK)
    before = hand.planting("leeks")
    hand.key(KEY.Key_R)
    after = hand.planting("leeks")
    assert after.pattern.angle_deg == pytest.approx(15.0)
    np.testing.assert_allclose(after.stations.mean(axis=0), before.stations.mean(axis=0), atol=1e-9)


def test_the_turning_handle_turns_in_steps(hand):
    hand.click(LEEK)
    (grip,) = [h for h in hand.view._handles if h.name == "turn"]
    begin = hand.view.mapFromScene(grip.pos())
    hand.drag(begin, (1.6, 3.0))  # from right of the middle to below it
    assert hand.planting("leeks").pattern.angle_deg % 15 == pytest.approx(0.0, abs=1e-6)
    assert hand.planting("leeks").pattern.angle_deg > 60
    assert hand.session.history.undo_text == "Turn Leek"


def test_an_end_handle_makes_a_row_longer_by_whole_plants(hand):
    hand.click(LEEK)
    (grip,) = [h for h in hand.view._handles if h.name == "end"]
    before = hand.planting("leeks")
    hand.drag(hand.view.mapFromScene(grip.pos()), (3.4, 0.25))
    after = hand.planting("leeks")
    assert after.pattern.length_m == pytest.approx(3.3, abs=0.06)
    assert len(after.stations) == int(after.pattern.length_m / 0.15 + 1e-9)
    np.testing.assert_allclose(after.stations[: len(before.stations)], before.stations, atol=1e-9)


def test_a_corner_handle_keeps_a_bed_a_rectangle(hand):
    hand.click((2.0, 2.6))
    (grip,) = [h for h in hand.view._handles if h.name == "corner 2"]
    hand.drag(hand.view.mapFromScene(grip.pos()), (4.0, 3.5))
    assert hand.layout.beds[1].outline == ((0.0, 2.0), (4.0, 2.0), (4.0, 3.5), (0.0, 3.5))


def test_tab_walks_in_reading_order_and_select_all_takes_the_plantings(hand):
    seen = []
    for _ in range(4):
        hand.key(KEY.Key_Tab)
        seen.append(next(iter(hand.session.selection)))
    assert seen == ["bed-1", "leeks", "beets", "bed-2"]
    hand.key(KEY.Key_Backtab, SHIFT)
    assert hand.session.selection == {"beets"}
    hand.key(KEY.Key_A, CTRL)
    assert hand.session.selection == {"leeks", "beets"}
    hand.key(KEY.Key_Escape)
    assert hand.session.selection == frozenset()


def test_ctrl_lets_a_thing_leave_the_grid(hand):
    before = hand.planting("leeks")
    at = hand.pixel(LEEK)
    to = at + hand.pixel((0.0, 0.0)) * 0
    to.setX(at.x() + 37)
    hand.drag(at, to, CTRL)
    dx, dy = moved(before, hand.planting("leeks"))
    assert dx == pytest.approx(0.37 / hand.view.look.scale, abs=1e-5)
    assert dy == 0
