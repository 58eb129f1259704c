"""The season panel with a real mouse and keys: date cursor, bars dragged in time, play."""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from gardencanvas.app.session import Session
from gardencanvas.app.start import demo_garden


@pytest.fixture
def window(open_window):
    return open_window(Session(demo_garden()))


def _middle(window, planting_id):
    rect = window.ribbon.bar_rect(planting_id)
    return QPoint(round(rect.center().x()), round(rect.center().y()))


def test_a_click_on_the_months_moves_the_date_cursor(window):
    ribbon = window.ribbon
    x = round(ribbon.x_of(date(2027, 5, 20)))
    QTest.mouseClick(ribbon.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(x, 8))
    assert abs((window.session.on - date(2027, 5, 20)).days) <= 1


def test_keys_step_by_day_week_and_month(window):
    window.ribbon.setFocus()
    before = window.session.on
    QTest.keyClick(window.ribbon, Qt.Key.Key_Right)
    assert window.session.on == before + timedelta(days=1)
    QTest.keyClick(window.ribbon, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert window.session.on == before - timedelta(days=6)
    QTest.keyClick(window.ribbon, Qt.Key.Key_PageDown)
    assert window.session.on == before + timedelta(days=24)
    QTest.keyClick(window.ribbon, Qt.Key.Key_Home)
    assert window.session.on == window.ribbon.first_day


def test_dragging_a_bar_moves_the_planting_in_time_with_live_verdicts(window):
    session, port = window.session, window.ribbon.viewport()
    before = session.garden
    start = session.layout.by_id["p-radish"].start.on
    seen = []
    session.previewed.connect(seen.append)
    begin = _middle(window, "p-radish")
    month = round(window.ribbon.x_of(date(2027, 7, 1)) - window.ribbon.x_of(date(2027, 6, 1)))
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=begin)
    for part in (0.3, 0.6, 1.0):
        QTest.mouseMove(port, begin + QPoint(round(part * month), 0))
    assert session.garden is before
    assert any(r is not None for r in seen)
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=begin + QPoint(month, 0))
    moved = session.layout.by_id["p-radish"].start
    assert 26 <= (moved.on - start).days <= 34
    assert moved.pinned
    assert session.history.count() == 1
    session.history.undo()
    assert session.garden is before


def test_escape_while_dragging_a_bar_restores_everything(window):
    session, port = window.session, window.ribbon.viewport()
    before = session.garden
    begin = _middle(window, "p-radish")
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=begin)
    QTest.mouseMove(port, begin + QPoint(60, 0))
    QTest.mouseMove(port, begin + QPoint(90, 0))
    QTest.keyClick(window.ribbon, Qt.Key.Key_Escape)
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=begin + QPoint(90, 0))
    assert session.garden is before
    assert session.shown_report is session.report


def test_a_locked_planting_is_not_moved_in_time(window):
    from gardencanvas.garden.edits import change

    session, port = window.session, window.ribbon.viewport()
    session.propose(change(session.garden, session.layout_id, "p-radish", locked=True), "Lock")
    QTest.qWait(30)
    begin = _middle(window, "p-radish")
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=begin)
    QTest.mouseMove(port, begin + QPoint(90, 0))
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=begin + QPoint(90, 0))
    assert session.history.count() == 1


def test_clicking_a_bar_selects_its_planting_everywhere(window):
    QTest.mouseClick(window.ribbon.viewport(), Qt.MouseButton.LeftButton, pos=_middle(window, "p-spinach"))
    assert window.session.selection == {"p-spinach"}
    window.inspector.refresh()
    assert "Spinach" in window.inspector.planting.findChild(type(window.inspector.planting._name)).text()


def test_play_shows_the_garden_growing_and_stops_at_the_end(window, qtbot):
    window.session.show_date(window.ribbon.last_day - timedelta(days=20))
    window.season.play.click()
    qtbot.waitUntil(lambda: window.session.on == window.ribbon.last_day, timeout=5000)
    assert not window.season.play.isChecked()


def test_zoom_keeps_the_date_cursor_in_place(window):
    window.session.show_date(date(2027, 7, 1))
    before = window.ribbon.x_of(window.session.on)
    window.season.zoom.setValue(60)
    assert window.ribbon.x_of(window.session.on) == pytest.approx(before, abs=3)
    assert window.ribbon.x_of(date(2027, 7, 15)) - before > 60
