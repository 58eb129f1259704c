"""Distances while a planting is dragged, and the pull of equal gaps and half spacings."""

from datetime import date

import pytest
from PySide6.QtCore import QPoint

from gardencanvas.garden.pattern import Rows
from tests.garden.makers import bed, garden, row
from tests.window.hand import CTRL, Hand


def three_rows():
    """Three short rows of one crop in a bed of 3.6 × 1.2 m, their ground 0.2 m wide."""
    rows = [
        row(name, "leek", pattern=Rows(origin=(0.5, y), length_m=1.5, spacing_m=0.15, row_spacing_m=0.2),
            kind="raised", on=date(2027, 5, 20))
        for name, y in (("a", 0.02), ("b", 0.31), ("c", 0.9))
    ]  # fmt: skip
    return garden(*rows, beds=(bed(),))


@pytest.fixture
def hand(qtbot):
    return Hand(qtbot, three_rows())


def lines(hand):
    gesture = hand.view.tool._gesture
    return [note.text for note in gesture._readout._sketch.notes]


def test_the_gaps_to_neighbours_and_edges_are_written_while_it_is_dragged(hand):
    x, y = hand.planting("b").stations[0]
    at = hand.pixel((float(x), float(y)))
    hand.press(at)
    hand.move(at + QPoint(0, 3), keys=CTRL)
    hand.move(at + QPoint(0, 6), keys=CTRL)
    hand.view._flush()
    assert any("cm" in text for text in lines(hand))
    hand.release(at + QPoint(0, 6), keys=CTRL)
    assert hand.view.tool._gesture is None


def test_a_row_comes_to_rest_midway_between_its_neighbours(hand):
    """Between 0.22 and 0.9 midway is 0.46 for ground 0.2 m wide; the grid alone would give 0.45."""
    x, y = hand.planting("b").stations[0]
    scale = hand.view.look.scale
    hand.drag((float(x), float(y)), (float(x), float(y) + 0.145))
    after = hand.planting("b").pattern.origin[1]
    assert after == pytest.approx(0.46, abs=1e-6)
    assert scale > 1.0  # pixels to a centimetre: the drag came within the pull
