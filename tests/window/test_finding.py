"""Finding commands and things on the plan by name, with the keyboard alone."""

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from gardencanvas.app.search_list import SearchList
from gardencanvas.app.session import Session
from tests.window.hand import two_rows


@pytest.fixture
def main(open_window):
    return open_window(Session(two_rows()))


def typed(main, name, text, key=Qt.Key.Key_Return):
    """Open a list by its command, type into it and press a key; what its first line was."""
    seen = []

    def work():
        dialog = QApplication.activeModalWidget()
        assert isinstance(dialog, SearchList)
        QTest.keyClicks(dialog.field, text)
        line = dialog.list.currentItem()
        seen.append((line.text(0) if line else None, dialog.reason.text()))
        QTest.keyClick(dialog.field, key)
        if dialog.isVisible():
            dialog.reject()

    QTimer.singleShot(0, work)
    main.actions_.all[name].trigger()
    return seen[0]


def test_a_planting_is_found_by_a_few_letters_selected_and_brought_into_view(main):
    main.view.zoom_to({"bed-2"})
    found, _ = typed(main, "find on plan", "beet")
    assert found == "Beetroot"
    assert main.session.selection == {"beets"}
    seen = main.view.mapToScene(main.view.viewport().rect()).boundingRect()
    assert seen.contains(main.view.plan.parts["beets"].sceneBoundingRect().center())


def test_nothing_found_is_said_and_enter_does_nothing(main):
    found, reason = typed(main, "find on plan", "zzz")
    assert found is None
    assert reason == "Nothing is called so."
    assert main.session.selection == frozenset()


def test_a_command_is_found_by_words_in_any_order_and_done(main):
    found, _ = typed(main, "find command", "all select")
    assert found == "Select all"
    assert main.session.selection == {"leeks", "beets"}


def test_a_command_that_cannot_be_done_says_why_and_is_not_done(main):
    found, reason = typed(main, "find command", "duplicate arrange")
    assert found is None
    found, reason = typed(main, "find command", "turn right")
    assert found == "Turn right 15°"
    assert reason == "Select something first."


def test_every_command_is_listed_once(main):
    from gardencanvas.app.finding import find_command

    dialog = find_command(main)
    assert dialog.list.topLevelItemCount() == len(main.actions_.all)
    assert all(dialog.list.topLevelItem(i).text(0) for i in range(dialog.list.topLevelItemCount()))
    dialog.reject()
    dialog.deleteLater()


def test_the_steps_are_listed_and_one_goes_back_to_any_and_on_again(main):
    before = main.session.garden
    main.session.select(["leeks"])
    main.actions_.all["turn right"].trigger()
    main.actions_.all["delete"].trigger()
    after = main.session.garden
    newest, _ = typed(main, "steps", "")  # Enter on the newest: nothing moves
    assert newest == main.session.history.undo_text
    assert main.session.garden is after
    typed(main, "steps", "at first")
    assert main.session.garden is before
    typed(main, "steps", newest)
    assert main.session.garden is after


def test_without_a_step_the_list_says_why_it_cannot_be_opened(main):
    assert not main.actions_.all["steps"].isEnabled()
    assert main.actions_.why_not("steps")
