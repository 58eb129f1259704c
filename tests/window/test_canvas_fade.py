"""A changed verdict fades in; with reduced motion it is there at once."""

from gardencanvas.fit.report import Verdict
from gardencanvas.garden import edits
from tests.window.hand import Hand, two_rows


def crowd(hand):
    """Move the beets between the leeks."""
    session = hand.session
    session.propose(edits.shift(session.garden, session.layout_id, {"beets"}, 0.0, -0.6), "Move")
    assert any(m.verdict is not Verdict.CLEAR for m in hand.view.plan.marks.values())


def test_a_change_fades_in_within_its_time(qtbot):
    hand = Hand(qtbot, two_rows())
    crowd(hand)
    faint = [m for m in hand.view.plan.marks.values() if m.opacity() < 1.0]
    assert faint
    qtbot.waitUntil(lambda: all(m.opacity() == 1.0 for m in faint), timeout=1000)


def test_reduced_motion_fades_nothing(qtbot):
    hand = Hand(qtbot, two_rows())
    hand.view.set_reduced_motion(True)
    crowd(hand)
    assert all(m.opacity() == 1.0 for m in hand.view.plan.marks.values())


def test_a_planting_deleted_while_it_fades_does_no_harm(qtbot):
    hand = Hand(qtbot, two_rows())
    crowd(hand)
    session = hand.session
    session.propose(edits.remove(session.garden, session.layout_id, {"beets"}), "Delete")
    qtbot.wait(200)
    assert set(hand.view.plan.marks) == {"leeks"}
