"""Copy, cut and paste in the window, between two windows, and what is said where it cannot be."""

import numpy as np
import pytest
from PySide6.QtGui import QGuiApplication

from gardencanvas.app.session import Session
from tests.garden.makers import garden
from tests.window.hand import two_rows


@pytest.fixture
def main(open_window):
    QGuiApplication.clipboard().clear()
    return open_window(Session(two_rows()))


def test_a_planting_is_cut_and_pasted_with_one_undo_step_each(main):
    before = main.session.garden
    leeks = main.session.layout.by_id["leeks"]
    main.session.select(["leeks"])
    main.actions_.all["cut"].trigger()
    assert "leeks" not in main.session.layout.by_id
    main.actions_.all["paste"].trigger()
    (pasted,) = [p for p in main.session.layout.plantings if p.crop == "leek"]
    assert main.session.selection == {pasted.id}
    step = pasted.stations - leeks.stations
    np.testing.assert_allclose(step, np.tile(step[0], (len(step), 1)), atol=1e-9)
    main.session.history.undo()
    main.session.history.undo()
    assert main.session.garden is before


def test_a_bed_is_copied_into_another_garden_s_window(main, open_window):
    other = open_window(Session(garden(beds=())))
    main.session.select(["bed-1"])
    main.actions_.all["copy"].trigger()
    assert other.actions_.all["paste"].isEnabled()
    other.actions_.all["paste"].trigger()
    assert sorted(p.crop for p in other.session.layout.plantings) == ["beetroot", "leek"]


def test_other_text_on_the_clipboard_cannot_be_pasted_and_the_reason_is_shown(main):
    QGuiApplication.clipboard().setText("<b>shopping list</b>")
    action = main.actions_.all["paste"]
    assert not action.isEnabled()
    assert "nothing that was copied" in action.toolTip()
