"""The Arrange menu in the window: what each command does, previews, reasons, and one undo step each."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QDialog

from gardencanvas.app.session import Session
from gardencanvas.garden import edits
from gardencanvas.garden.pattern import RingPattern
from gardencanvas.garden.places import bounds
from tests.garden.makers import row
from tests.window.hand import two_rows


@pytest.fixture
def main(open_window):
    return open_window(Session(two_rows()))


def layout(main):
    return main.session.layout


def in_dialog(do):
    """Do something with the dialog that opens next."""

    def later():
        dialog = QApplication.activeModalWidget()
        assert isinstance(dialog, QDialog)
        do(dialog)

    QTimer.singleShot(0, later)


@pytest.mark.parametrize("name", ["mirror left and right", "align left", "gaps across", "repeat", "join"])
def test_a_command_that_cannot_be_done_says_why(main, name):
    main.session.select(())
    action = main.actions_.all[name]
    assert not action.isEnabled()
    assert action.toolTip().endswith("first.")


def test_beds_are_aligned_and_put_back_by_one_undo(main):
    before = main.session.garden
    main.session.select(["leeks", "beets"])
    main.actions_.all["align bottom"].trigger()
    leeks, beets = (bounds([layout(main).by_id[i]]) for i in ("leeks", "beets"))
    assert leeks[3] == pytest.approx(beets[3])
    main.session.history.undo()
    assert main.session.garden is before


def test_a_mirrored_bed_takes_its_plantings_along(main):
    before = layout(main).by_id["leeks"].stations
    main.session.select(["bed-1"])
    main.actions_.all["mirror top and bottom"].trigger()
    after = layout(main).by_id["leeks"].stations
    assert after[:, 1] == pytest.approx(1.2 - before[:, 1])


def test_repeating_previews_and_adds_copies(main):
    main.session.select(["bed-1"])

    def work(dialog):
        dialog.across.setValue(3)
        dialog.refresh()
        assert len(main.session.shown_garden.layout("l1").beds) == 4
        assert len(main.session.garden.layout("l1").beds) == 2
        dialog.accept()

    in_dialog(work)
    main.actions_.all["repeat"].trigger()
    assert len(layout(main).beds) == 4
    assert len(layout(main).plantings) == 6


def test_a_repeat_given_up_leaves_nothing(main):
    before = main.session.garden
    main.session.select(["bed-1"])
    in_dialog(lambda dialog: dialog.reject())
    main.actions_.all["repeat"].trigger()
    assert main.session.garden is before
    assert main.session.shown_garden is before


def test_a_planting_is_split_and_joined_again(main):
    before = layout(main).by_id["leeks"]
    main.session.select(["leeks"])

    def work(dialog):
        dialog.at.setValue(5)
        dialog.accept()

    in_dialog(work)
    main.actions_.all["split"].trigger()
    parts = [p for p in layout(main).plantings if p.crop == "leek"]
    assert sorted(p.pattern.count for p in parts) == [5, before.pattern.count - 5]
    main.session.select([p.id for p in parts])
    main.actions_.all["join"].trigger()
    (whole,) = [p for p in layout(main).plantings if p.crop == "leek"]
    np.testing.assert_allclose(whole.stations, before.stations, atol=1e-9)


def test_unlike_plantings_are_not_joined_and_the_reason_is_said(main):
    before = main.session.garden
    main.session.select(["leeks", "beets"])
    main.actions_.all["join"].trigger()
    assert main.session.garden is before
    assert "differ in crop" in main.statusBar().currentMessage()


def test_three_rows_get_equal_gaps_in_one_step(main):
    session = main.session
    third = row("onions", "onion", 0.1, 0.2, on=date(2027, 4, 1))
    session.propose(edits.add(session.garden, "l1", [third]), "Add")
    session.select(["leeks", "beets", "onions"])
    main.actions_.all["gaps down"].trigger()
    tops = sorted(bounds([layout(main).by_id[i]])[1] for i in ("leeks", "beets", "onions"))
    assert np.diff(tops) == pytest.approx([0.3, 0.3])  # 10, 20 and 70 cm down, each 30 cm wide
    session.history.undo()
    assert bounds([layout(main).by_id["onions"]])[1] == pytest.approx(0.2)


def test_a_row_is_repeated_in_a_grid(main):
    main.session.select(["leeks"])

    def twice(dialog):
        dialog.across.setValue(1)
        dialog.down.setValue(3)
        dialog.step_y.setValue(40.0)
        dialog.accept()

    in_dialog(twice)
    main.actions_.all["repeat"].trigger()
    across = sorted(p.stations[0, 1] for p in layout(main).plantings if p.crop == "leek")
    assert across == pytest.approx([0.25, 0.65, 1.05])


def test_two_crops_share_the_places_of_a_ring(main):
    session = main.session
    ring = RingPattern(origin=(1.8, 2.6), radius_m=0.4, spacing_m=0.1)
    session.propose(edits.add(session.garden, "l1", [row("ring", "lettuce", pattern=ring)]), "Add")
    assert main.actions_.all["share places"].toolTip() == "Select one planting first."
    session.select(["ring"])
    main.tin.reveal("radish", None)
    main.actions_.all["share places"].trigger()
    lettuce, radish = layout(main).by_id["ring"], layout(main).plantings[-1]
    assert (radish.crop, lettuce.pattern.count, radish.pattern.count) == ("radish", 13, 12)
    x, y = (np.concatenate([lettuce.stations, radish.stations]) - (1.8, 2.6)).T
    order = np.argsort(np.round(np.arctan2(y, x) % (2 * np.pi), 9))
    assert (np.diff(order < 13) != 0).all()  # lettuce, radish, lettuce, radish …
    assert session.selection == {"ring", radish.id}
    session.history.undo()
    assert layout(main).by_id["ring"].pattern.count == 25


def test_a_bed_is_copied_with_what_grows_in_it(main):
    main.session.select(["bed-1"])
    main.actions_.all["duplicate"].trigger()
    assert len(layout(main).beds) == 3
    assert sorted(p.crop for p in layout(main).plantings) == ["beetroot", "beetroot", "leek", "leek"]
    main.session.history.undo()
    main.session.select(["bed-1"])
    main.actions_.all["copy"].trigger()
    main.actions_.all["paste"].trigger()
    assert sorted(p.crop for p in layout(main).plantings) == ["beetroot", "beetroot", "leek", "leek"]
