"""Two layouts drawn side by side: linked view, date and selection; differences; taking over; the swipe."""

from datetime import date

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from gardencanvas.app.comparing.plans_dialog import PlansDialog
from gardencanvas.app.session import Session
from gardencanvas.garden import edits, layouts
from tests.window.hand import two_rows


@pytest.fixture
def dialog(open_window, qtbot):
    value, copy = layouts.duplicated(two_rows(), "l1", "Without beets")
    main = open_window(Session(edits.remove(value, copy, ["beets"])))
    dialog = PlansDialog(main)
    dialog.show()
    qtbot.waitExposed(dialog)
    yield dialog
    dialog.close()
    dialog.deleteLater()


def seen(view):
    return view.mapToScene(view.viewport().rect()).boundingRect()


def test_both_show_the_same_part_of_the_plan_whichever_is_panned_or_zoomed(dialog, qtbot):
    first, second = dialog.views
    for moved in (first, second):
        moved.zoom_in()
        moved.pan_by(37, -21)
        assert first.look.scale == second.look.scale
        assert (seen(first).topLeft() - seen(second).topLeft()).manhattanLength() < 1.0
        assert first.viewport().size() == second.viewport().size()


def test_a_planting_selected_in_one_is_selected_in_the_other_where_it_is_there(dialog):
    first, second = dialog.desks
    first.select(["leeks"])
    assert second.selection == {"leeks"}
    first.select(["beets"])
    assert (first.selection, second.selection) == ({"beets"}, frozenset())
    assert dialog._session.selection == frozenset()


def test_the_date_is_one_for_both_in_the_year_of_each(open_window):
    value = two_rows()
    year = value.layout("l1").year
    value, _ = layouts.for_year(value, "l1", "Next", year + 1)
    dialog = PlansDialog(open_window(Session(value)))
    first, second = dialog.desks
    first.show_date(date(year, 7, 3))
    assert second.on == date(year + 1, 7, 3)
    second.show_date(date(year + 1, 5, 9))
    assert first.on == dialog._session.on == date(year, 5, 9)
    dialog.deleteLater()


def test_what_differs_is_told_and_gone_once_taken_over_with_one_undo_step(dialog, qtbot):
    assert dialog.said.text().startswith("Left: 1 only here. Right: nothing differs.")
    before = dialog._session.garden
    dialog.desks[0].select(["beets"])
    dialog.to_second.click()
    qtbot.waitUntil(lambda: dialog.said.text().startswith("Left: nothing differs. Right: nothing differs."))
    assert "beets" in dialog.desks[1].layout.by_id
    dialog._session.history.undo()
    assert dialog._session.garden is before


def test_nothing_selected_is_said_and_nothing_changes(dialog):
    before = dialog._session.garden
    dialog.to_second.click()
    assert "Select" in dialog.said.text()
    assert dialog._session.garden is before


def test_a_planting_dragged_in_one_moves_in_its_layout_only(dialog, qtbot):
    view = dialog.views[1]
    desk = dialog.desks[1]
    other = dialog.desks[0].layout
    at = view.mapFromScene(view.plan.parts["leeks"].sceneBoundingRect().center())
    QTest.mousePress(view.viewport(), Qt.MouseButton.LeftButton, pos=at)
    for step in range(1, 6):
        QTest.mouseMove(view.viewport(), at + QPoint(0, 4 * step))
        qtbot.wait(20)
    QTest.mouseRelease(view.viewport(), Qt.MouseButton.LeftButton, pos=at + QPoint(0, 20))
    moved = desk.layout.by_id["leeks"].pattern.origin
    assert moved != other.by_id["leeks"].pattern.origin
    assert dialog.desks[0].layout.by_id["leeks"] is other.by_id["leeks"]
    qtbot.waitUntil(lambda: "1 moved" in dialog.said.text())


def test_the_swipe_uncovers_the_second_from_the_slider_on(dialog, qtbot):
    dialog.over.setChecked(True)
    first, second = dialog.views
    assert first.geometry() == second.geometry()
    dialog.plans.slider.setValue(250)
    mask = second.mask().boundingRect()
    assert mask.left() == pytest.approx(dialog.plans.width() / 4, abs=1)
    assert mask.right() == pytest.approx(dialog.plans.width(), abs=2)
    dialog.over.setChecked(False)
    assert second.mask().isEmpty()
    assert not first.geometry().intersects(second.geometry())


def test_a_layout_that_is_taken_away_is_no_longer_shown(dialog):
    session = dialog._session
    gone = dialog.desks[1].layout_id
    session.propose(edits.rebuilt(session.garden, layouts=session.garden.layouts[:1]), "Delete the layout")
    assert dialog.desks[1].layout_id != gone
    assert [dialog.boxes[1].itemText(i) for i in range(dialog.boxes[1].count())] == ["First, 2027"]
