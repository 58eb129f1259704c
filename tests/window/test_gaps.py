"""What else fits: asked by click, by crop and by date; tried out, planted, stopped; plain answers."""

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest

from gardencanvas.app.session import Session
from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from tests.garden.makers import garden
from tests.window.hand import two_rows


@pytest.fixture
def main(open_window):
    return open_window(Session(two_rows()))


@pytest.fixture
def panel(main, qtbot):
    panel = main.show_tab("gaps")
    panel.refresh_ground()
    return panel


def answered(panel, qtbot):
    qtbot.waitUntil(lambda: not panel.search.busy, timeout=30_000)


def click(main, x, y):
    main.view.fit()
    at = main.view.mapFromScene(QPointF(100 * x, 100 * y))
    QTest.mouseClick(main.view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)


def test_a_click_on_open_ground_is_answered_tried_out_and_planted_with_one_undo_step(main, panel, qtbot):
    before = main.session.garden
    main.actions_.all["what fits"].trigger()
    click(main, 1.8, 2.6)
    answered(panel, qtbot)
    assert panel.list.count() > 0
    panel.list.setCurrentRow(0)
    assert len(main.session.shown_garden.layout("l1").plantings) == 3
    assert main.session.garden is before
    proposal = panel._proposal(panel.list.item(0))
    QTest.keyClick(panel.list, Qt.Key.Key_Return)
    assert len(main.session.layout.plantings) == 3
    report = check(main.session.garden, "l1", main.session.catalogue)
    assert report.plantings[proposal.planting.id].verdict < Verdict.CLASHES
    main.session.history.undo()
    assert main.session.garden is before


def test_a_box_asks_about_an_area(main, panel, qtbot):
    main.view.set_tool("what fits")
    asked = []
    main.view.asked.connect(asked.append)
    port = main.view.viewport()
    a, b = (main.view.mapFromScene(QPointF(*p)) for p in ((40, 210), (300, 300)))
    QTest.mousePress(port, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, a)
    QTest.mouseMove(port, b)
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, b)
    assert len(asked[0]) == 4
    answered(panel, qtbot)


def test_a_click_outside_every_bed_gets_a_plain_answer(main, panel, qtbot):
    panel.ask_place((50.0, 50.0))
    answered(panel, qtbot)
    assert panel.list.count() == 0
    assert "There is no bed" in panel.said.text()
    panel.refresh_ground()  # as when the panel is shown again
    assert panel.list.count() == 0
    assert "There is no bed" in panel.said.text()


def test_the_seed_tin_s_crop_is_asked_about(main, panel, qtbot):
    panel.ask_crop()
    answered(panel, qtbot)
    current = main.tin.current
    assert current is not None
    assert all(p.crop == current[0] for p in panel._proposals)


def test_the_tin_s_menu_asks_where_a_crop_would_fit(main, qtbot):
    from gardencanvas.app.tin.menus import row_menu

    menu = row_menu(main.tin, main.session, main.tin.desk, ("lettuce", None))
    main.tin.reveal("lettuce", None)
    next(a for a in menu.actions() if a.text() == "Where would it fit?").trigger()
    panel = main.late["gaps"].panel
    assert panel.search.busy
    answered(panel, qtbot)
    assert {p.crop for p in panel._proposals} == {"lettuce"}
    assert len(panel._places.offered) == len(panel._proposals)


def test_a_search_is_stopped_at_once_and_by_an_edit(main, panel):
    panel.ask_now()
    assert panel.search.busy
    panel.stop.click()
    assert not panel.search.busy
    panel.ask_now()
    main.session.select(["beets"])
    main.actions_.all["delete"].trigger()
    assert not panel.search.busy


def test_the_open_ground_is_shown_while_the_panel_is_and_gone_after(main, panel):
    assert not panel._ground.rest.isEmpty()
    main.left.setCurrentWidget(main.tin)
    assert panel._ground.rest.isEmpty()


def test_without_a_bed_it_says_so(open_window, qtbot):
    main = open_window(Session(garden(beds=()).model_copy()))
    main.session.select(["bed-1"])
    main.actions_.all["delete"].trigger()
    panel = main.show_tab("gaps")
    panel.refresh_ground()
    assert panel.unused.text() == "There is no bed in this layout."
