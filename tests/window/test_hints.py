"""Hints for a first-time user: in place, one at a time, gone once used, back when asked for."""

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from gardencanvas.app import settings
from gardencanvas.app.session import Session
from gardencanvas.app.start import new_garden
from gardencanvas.garden import edits
from tests.garden.makers import bed, row
from tests.window.hand import two_rows


@pytest.fixture(autouse=True)
def new_user():
    settings.keep("hints used", "")
    yield
    settings.keep("hints used", "")


def said(main):
    return [line.words.text() for line in main.hints.lines.values() if line.isVisible()]


def test_each_is_shown_until_it_was_done_once(open_window):
    main = open_window(Session(new_garden(2027)))
    session, layout_id = main.session, main.session.layout_id
    assert said(main) == [], "the empty plan speaks for itself"
    assert main.view.frame_.empty.isVisible()
    session.propose(edits.add(session.garden, layout_id, [bed()]), "Draw")
    assert [text.split()[:3] for text in said(main)] == [["Drag", "a", "crop"]]
    session.propose(edits.add(session.garden, layout_id, [row()]), "Add")
    assert [text.split()[:3] for text in said(main)] == [["Drag", "the", "date:"]]
    assert main.hints.lines["season"].isVisible(), "where the date is"
    session.show_date(session.on + timedelta(days=7))
    assert "F8" in said(main)[0]
    main.actions_.all["next finding"].trigger()
    assert "between the rows" in said(main)[0]
    main.view.carry("radish", None, "between")
    QTest.keyClick(main.view, Qt.Key.Key_Return)
    assert "Ctrl+K" in said(main)[0]
    main.hints.used("commands")
    assert said(main) == []


def test_what_was_used_stays_away_in_the_next_window_until_asked_for(open_window):
    first = open_window(Session(two_rows()))
    assert "Drag a crop" in said(first)[0]
    assert not first.actions_.all["hints"].isEnabled()
    QTest.mouseClick(first.hints.lines["plan"].away, Qt.MouseButton.LeftButton)
    assert "Drag the date" in said(first)[0]
    second = open_window(Session(two_rows()))
    assert "Drag the date" in said(second)[0]
    second.actions_.refresh()
    second.actions_.all["hints"].trigger()
    assert "Drag a crop" in said(second)[0]


def test_a_hint_takes_its_own_room_and_can_be_sent_away_by_keyboard(open_window, qtbot):
    main = open_window(Session(two_rows()), 1024, 700)
    line = main.hints.lines["plan"]
    assert not line.geometry().intersects(main.view.geometry())
    assert line.away.accessibleName()
    with qtbot.waitActive(main):
        main.activateWindow()
    line.away.setFocus(Qt.FocusReason.TabFocusReason)
    assert line.away.hasFocus()
    QTest.keyClick(line.away, Qt.Key.Key_Space)
    assert not line.isVisible()
    assert main.view.hasFocus(), "the focus does not fall into nothing"
