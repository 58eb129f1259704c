"""Filling ground from the window: the bed selected, a strip or a box pointed at; previewed, planted."""

from datetime import date

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from gardencanvas.app.fill.asking import ask_fill
from gardencanvas.app.fill.dialog import FillDialog
from gardencanvas.app.session import Session
from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from gardencanvas.planner.filling.searching import Filled
from tests.garden.makers import bed, garden, row

pytestmark = pytest.mark.gui

LETTUCE = ("lettuce", None)


def two_rows():
    """Leeks at 25 cm and beetroot at 85 cm from the edge of a bed of 3.6 × 1.2 m; a bed that is empty."""
    return garden(
        row("leeks", "leek", 0.1, 0.1, kind="raised", on=date(2027, 5, 20)),
        row("beets", "beetroot", 0.1, 0.7, on=date(2027, 5, 1)),
        beds=(bed("bed-1"), bed("bed-2", 0.0, 2.0)),
    )


@pytest.fixture
def main(open_window):
    window = open_window(Session(two_rows()))
    window.view.fit()
    return window


def found(qtbot, dialog):
    qtbot.waitUntil(lambda: dialog.answer is not None, timeout=20_000)
    return dialog.answer


def shown():
    """The dialog on the screen."""
    return next(
        (w for w in QApplication.topLevelWidgets() if isinstance(w, FillDialog) and w.isVisible()), None
    )


def press_and_move(window, begin, end):
    view = window.view
    a, b = (view.mapFromScene(QPointF(*p) * 100) for p in (begin, end))
    QTest.mousePress(view.viewport(), Qt.MouseButton.LeftButton, pos=a)
    QTest.mouseMove(view.viewport(), (a + b) / 2)
    QTest.mouseMove(view.viewport(), b)
    QTest.mouseRelease(view.viewport(), Qt.MouseButton.LeftButton, pos=b)


def test_a_selected_bed_is_filled_previewed_planted_and_undone(qtbot, main):
    session = main.session
    session.select(["bed-2"])
    dialog = ask_fill(main, LETTUCE)
    answer = found(qtbot, dialog)
    assert session.shown_garden.layout("l1").by_id[answer.planting.id].plants == answer.planting.plants
    assert len(session.layout.plantings) == 2  # not yet planted
    assert str(answer.planting.plants) in dialog.message.text()
    assert dialog.where.hasFocus()
    QTest.keyClick(dialog.where, Qt.Key.Key_Return)  # Enter plants, wherever one is
    (planted,) = session.layout.plantings[2:]
    assert planted.plants == answer.planting.plants
    assert session.selection == {planted.id}
    assert check(session.garden).plantings[planted.id].verdict < Verdict.CLASHES
    main.actions_.all["undo"].trigger()
    assert len(session.layout.plantings) == 2
    main.actions_.all["redo"].trigger()
    assert session.layout.plantings[2] == planted


def test_the_bed_of_a_selected_planting_is_meant_and_escape_leaves_all_as_it_was(qtbot, main):
    session = main.session
    before = session.garden
    session.select(["beets"])
    QTest.keyClick(main.view, Qt.Key.Key_F)
    dialog = shown()
    assert dialog.windowTitle() == "Fill with Beetroot"
    assert dialog.where.currentText() == "all of bed-1"
    found(qtbot, dialog)
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert session.garden is before
    assert session.shown_garden is before


def test_a_click_between_rows_means_that_strip_and_a_box_its_ground(qtbot, main):
    assert ask_fill(main, LETTUCE) is None
    assert main.view.tool.name == "fill"
    press_and_move(main, (1.5, 0.55), (1.5, 0.55))
    dialog = shown()
    assert dialog.where.currentIndex() == 2
    assert "25" in dialog.where.currentText()
    answer = found(qtbot, dialog)
    assert isinstance(answer, Filled)
    across = answer.planting.stations[:, 1]
    assert across.min() > 0.25
    assert across.max() < 0.85
    dialog.reject()
    ask_fill(main, LETTUCE)
    press_and_move(main, (1.0, 1.9), (2.0, 3.0))
    dialog = shown()
    assert dialog.where.currentText() == "the box that was drawn"
    assert found(qtbot, dialog).planting.stations[:, 0].max() < 2.0
    dialog.reject()


def test_closer_spacing_another_pattern_and_another_day_are_looked_for_anew(qtbot, main):
    main.session.select(["bed-2"])
    dialog = ask_fill(main, LETTUCE)
    most = found(qtbot, dialog).planting.plants
    dialog.kinds.setCurrentIndex(2)
    dialog.look()
    square = found(qtbot, dialog).planting
    assert square.pattern.kind == "block"
    assert not square.pattern.staggered
    assert square.plants <= most
    dialog.in_row.setValue(20.0)
    dialog.between.setValue(20.0)
    dialog.look()
    assert found(qtbot, dialog).planting.plants == 18 * 6  # ⌊3.6/0.2⌋·⌊1.2/0.2⌋
    dialog.on.show_day(date(2027, 11, 20))
    dialog.look()
    found(qtbot, dialog)
    assert not dialog.plant_it.isEnabled()
    assert dialog.plant_it.toolTip().replace("\n", " ") == dialog.message.text() != ""
    dialog.accept()  # nothing to plant
    assert len(main.session.layout.plantings) == 2
    dialog.reject()


def test_a_search_can_be_stopped(qtbot, main):
    main.session.select(["bed-1"])
    dialog = ask_fill(main, LETTUCE)
    assert dialog.stop.isVisible()
    dialog.stop.click()
    qtbot.wait(50)
    assert dialog.answer is None
    assert not dialog.search.busy
    assert not dialog.plant_it.isEnabled()
    dialog.reject()


def test_the_seed_tins_crop_fills_and_without_one_it_says_so(qtbot, main):
    main.session.select(["bed-2"])
    main.tin.reveal(*LETTUCE)
    main.tin.fill_asked.emit()
    dialog = shown()
    assert dialog.windowTitle() == "Fill with Lettuce"
    dialog.reject()
    assert ask_fill(main, None) is None
    assert "seed tin" in main.statusBar().currentMessage()
