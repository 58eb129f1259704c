"""Things dragged by mouse out of one plan into the one beside it."""

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest

from gardencanvas.app.comparing.plans_dialog import PlansDialog
from gardencanvas.app.session import Session
from gardencanvas.garden import edits, layouts
from gardencanvas.garden.ground import Bed
from tests.window.hand import two_rows

LEFT = Qt.MouseButton.LeftButton
LEEK, BEET = (1.075, 0.25), (1.075, 0.85)  # one plant of each row


@pytest.fixture
def open_plans(open_window, qtbot):
    opened = []

    def make(*, without_bed: str | None = None):
        value, other = layouts.with_empty(two_rows(), "Empty", 2027, "l1")
        if without_bed is not None:
            value = edits.remove(value, other, [without_bed])
        dialog = PlansDialog(open_window(Session(value), 1280, 800))
        opened.append(dialog)
        dialog.resize(1240, 700)
        dialog.show()
        qtbot.waitExposed(dialog)
        dialog.views[0].set_snap(False)
        dialog.views[1].set_snap(False)
        return dialog

    yield make
    for dialog in opened:
        dialog.close()
        dialog.deleteLater()


def pixel(view, place) -> QPoint:
    return view.mapFromScene(QPointF(*place) * 100)


def across(source, target, place) -> QPoint:
    """The pixel of a place on the target's plan, as the source's viewport counts."""
    return source.viewport().mapFromGlobal(target.viewport().mapToGlobal(pixel(target, place)))


def pull(qtbot, source, begin: QPoint, end: QPoint) -> None:
    """Press and drag, without letting go."""
    QTest.mousePress(source.viewport(), LEFT, pos=begin)
    for step in range(1, 9):
        QTest.mouseMove(source.viewport(), begin + (end - begin) * step / 8)
        qtbot.wait(20)


def drag(qtbot, source, begin: QPoint, end: QPoint) -> None:
    pull(qtbot, source, begin, end)
    QTest.mouseRelease(source.viewport(), LEFT, pos=end)


def moved_by(dialog, planting_id, ids) -> np.ndarray:
    """How far the copy in the right layout lies from the planting in the left one."""
    here, there = dialog.desks[0].layout, dialog.desks[1].layout
    (copy,) = [there.by_id[i] for i in ids]
    return (copy.stations - here.by_id[planting_id].stations).mean(axis=0)


def test_a_planting_dropped_on_the_other_plan_is_copied_to_that_place(open_plans, qtbot):
    dialog = open_plans()
    first, second = dialog.views
    before = dialog._session.garden
    grip, place = LEEK, (1.6, 2.5)
    begin, end = pixel(first, grip), across(first, second, place)
    drag(qtbot, first, begin, end)
    # what the two pixels really stand for: a pixel is some millimetres wide
    at = first._at(QPointF(begin)), second._at(QPointF(pixel(second, place)))
    wanted = (at[1] - at[0]) / 100
    got = moved_by(dialog, "leeks", dialog.desks[1].selection)
    assert got == pytest.approx((wanted.x(), wanted.y()), abs=0.001)
    assert dialog.desks[0].layout == before.layout("l1"), "the source stays as it was"
    assert dialog._session.history.undo_text == "Copy Leek into Empty"
    assert second.hasFocus()
    dialog._session.history.undo()
    assert dialog._session.garden is before


def test_the_verdict_there_is_told_while_it_hovers(open_plans, qtbot):
    dialog = open_plans()
    first, second = dialog.views
    drag(qtbot, first, pixel(first, LEEK), across(first, second, (1.0, 2.4)))
    before = dialog._session.garden
    pull(qtbot, first, pixel(first, BEET), across(first, second, (1.0, 2.42)))
    assert second.frame_.words.isVisible()
    assert not first.frame_.words.isVisible()
    crowded = second._trial.plantings["beets"].verdict
    assert crowded > second._trial.plantings["beets"].verdict.CLEAR
    assert second.plan.ghosts == {"beets"}
    QTest.mouseMove(first.viewport(), across(first, second, (1.0, 0.6)))
    qtbot.waitUntil(lambda: second._trial.plantings["beets"].verdict < crowded)
    QTest.keyClick(first, Qt.Key.Key_Escape)
    assert dialog._session.garden is before
    assert not second.frame_.words.isVisible()
    assert "beets" not in second.plan.parts
    QTest.mouseRelease(first.viewport(), LEFT, pos=across(first, second, (1.0, 0.6)))
    assert dialog._session.garden is before


def test_several_go_together(open_plans, qtbot):
    dialog = open_plans()
    first, second = dialog.views
    dialog.desks[0].select(["leeks", "beets"])
    drag(qtbot, first, pixel(first, LEEK), across(first, second, (1.0, 0.2)))
    assert dialog.desks[1].selection == {"leeks", "beets"}
    steps = [moved_by(dialog, i, [i]) for i in ("leeks", "beets")]
    assert steps[0] == pytest.approx(steps[1], abs=1e-9)


def test_a_bed_that_is_there_already_receives_what_lies_in_it(open_plans, qtbot):
    dialog = open_plans()
    first, second = dialog.views
    dialog.desks[0].select(["bed-1"])
    drag(qtbot, first, pixel(first, (3.4, 1.1)), across(first, second, (3.0, 2.9)))
    there = dialog.desks[1].layout
    assert [b.id for b in there.beds] == ["bed-1", "bed-2"]
    assert {p.id for p in there.plantings} == {"leeks", "beets"}
    assert there.by_id["leeks"].stations == pytest.approx(dialog.desks[0].layout.by_id["leeks"].stations)


def test_a_bed_that_is_not_there_comes_with_all_that_lies_in_it(open_plans, qtbot):
    dialog = open_plans(without_bed="bed-1")
    first, second = dialog.views
    dialog.desks[0].select(["bed-1"])
    drag(qtbot, first, pixel(first, (3.4, 1.1)), across(first, second, (3.4, 0.7)))
    there = dialog.desks[1].layout
    assert set(there.by_id) == {"bed-1", "bed-2", "leeks", "beets"}
    bed = there.by_id["bed-1"]
    assert isinstance(bed, Bed)
    assert bed.outline[0][1] == pytest.approx(-0.4, abs=0.01)


def test_let_go_between_the_plans_nothing_happens_and_back_home_it_moves(open_plans, qtbot):
    dialog = open_plans()
    first, second = dialog.views
    before = dialog._session.garden
    begin = pixel(first, LEEK)
    pull(qtbot, first, begin, across(first, second, (1.0, 2.5)))
    between = QPoint(first.viewport().width() + 8, 200)
    QTest.mouseMove(first.viewport(), between)
    qtbot.wait(40)
    assert "leeks" not in second.plan.parts
    QTest.mouseRelease(first.viewport(), LEFT, pos=between)
    assert dialog._session.garden is before
    pull(qtbot, first, begin, across(first, second, (1.0, 2.5)))
    home = pixel(first, (1.075, 0.55))
    QTest.mouseMove(first.viewport(), home)
    qtbot.wait(40)
    QTest.mouseRelease(first.viewport(), LEFT, pos=home)
    assert dialog.desks[0].layout.by_id["leeks"].pattern.origin[1] == pytest.approx(0.4, abs=0.01)
    assert not dialog.desks[1].layout.plantings


def test_one_over_the_other_a_drag_moves_within_its_plan(open_plans, qtbot):
    dialog = open_plans()
    dialog.over.setChecked(True)
    assert [view.beside for view in dialog.views] == [None, None]
