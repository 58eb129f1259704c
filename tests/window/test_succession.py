"""Again…: what would be is shown at once, Cancel leaves nothing behind, OK is one step."""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialogButtonBox

from gardencanvas.app.ribbon.bars import groups, joined
from gardencanvas.app.session import Session
from gardencanvas.app.succession_dialog import SuccessionDialog
from gardencanvas.garden import edits
from gardencanvas.garden.pattern import Rows, Spots
from gardencanvas.planner.succession import Between, Rhythm, Way, members, succeed, told
from tests.garden.makers import bed, garden, row

FOUR_ROWS = Rows(origin=(0.0, 0.0), length_m=3.0, rows=4, spacing_m=0.05, row_spacing_m=0.15)


def value(**changes):
    fields = {"crop": "radish", "on": date(2027, 4, 5), "pattern": FOUR_ROWS}
    other = row("l", "lettuce", y=1.5, on=date(2027, 4, 20))
    return garden(row("r", **{**fields, **changes}), other, beds=[bed(width=2.4)])


@pytest.fixture
def main(open_window):
    return open_window(Session(value()))


def opened(main, *ids):
    main.session.select(ids or ("r",))
    main.actions_.all["again"].trigger()
    dialog = main.findChild(SuccessionDialog)
    assert dialog.isVisible()
    return dialog


def ok(dialog):
    return dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)


def starts(layout, group="r"):
    return [p.start.on for p in members(layout, group)]


def shown_in(dialog):
    table = dialog.table
    return [table.topLevelItem(i).text(0) for i in range(table.topLevelItemCount())]


def choose(field, value):
    field.setCurrentIndex(field.findData(value))


def test_opening_it_shows_what_would_be_and_changes_nothing(main, qtbot):
    before = main.session.garden
    dialog = opened(main)
    qtbot.waitUntil(lambda: main.ribbon.bar_rect("r-4") is not None)
    assert main.session.garden is before
    shown = main.session.shown_garden.layout("l1")
    assert len(starts(shown)) == 4
    assert "r-4" in main.view.plan.parts
    assert main.session.shown_report.plantings.keys() == {"r", "r-2", "r-3", "r-4", "l"}
    assert len(shown_in(dialog)) == 4
    dialog.reject()


def test_each_change_is_previewed(main, qtbot):
    dialog = opened(main)
    seen = []
    main.session.previewed.connect(seen.append)
    choose(dialog.between, Between.STARTS)
    dialog.days.setValue(7)
    qtbot.waitUntil(lambda: bool(seen))
    days = starts(main.session.shown_garden.layout("l1"))
    assert days == [date(2027, 4, 5) + timedelta(days=7 * n) for n in range(4)]
    choose(dialog.way, Way.PARTS)
    dialog.as_many.setChecked(False)
    dialog.parts.setValue(2)
    qtbot.waitUntil(lambda: len(shown_in(dialog)) == 2)
    assert shown_in(dialog) == ["5 April", "12 April"]
    choose(dialog.way, Way.COPIES)
    qtbot.waitUntil(lambda: main.session.shown_report.plantings["r-2"].plants == 240)
    weeks = dialog.bars.accessibleDescription().split(":")[1].split(",")
    assert sum(map(float, weeks)) == pytest.approx(480, abs=len(weeks))  # what both parts hold
    assert "varies by" in dialog.evenness.text()
    dialog.reject()


@pytest.mark.parametrize("way_out", ["button", "escape", "close"])
def test_cancel_restores_everything(main, qtbot, way_out):
    before, report = main.session.garden, main.session.report
    bars = len(main.ribbon._rows())
    dialog = opened(main)
    dialog.days.setValue(9)
    qtbot.waitUntil(lambda: main.ribbon.bar_rect("r-2") is not None)
    if way_out == "button":
        QTest.mouseClick(
            dialog.buttons.button(QDialogButtonBox.StandardButton.Cancel), Qt.MouseButton.LeftButton
        )
    elif way_out == "escape":
        QTest.keyClick(dialog, Qt.Key.Key_Escape)
    else:
        dialog.close()
    qtbot.waitUntil(lambda: main.ribbon.bar_rect("r-2") is None)
    assert main.session.garden is before
    assert main.session.shown_garden is before
    assert main.session.shown_report is report
    assert main.session.history.count() == 0
    assert set(main.view.plan.parts) == {"bed-1", "r", "l"}
    assert len(main.ribbon._rows()) == bars
    assert main.session.selection == {"r"}


def test_ok_is_one_undo_step(main, qtbot):
    before = main.session.garden
    dialog = opened(main)
    dialog.days.setValue(9)  # not yet shown when OK comes
    QTest.mouseClick(ok(dialog), Qt.MouseButton.LeftButton)
    wanted = succeed(before, "l1", "r", Rhythm(9, Between.HARVESTS), Way.ROWS, main.session.catalogue)
    assert main.session.garden == wanted.garden
    assert main.session.history.count() == 1
    assert "adish" in main.actions_.all["undo"].text()
    assert main.session.selection == {"r", "r-2", "r-3", "r-4"}
    main.session.history.undo()
    assert main.session.garden is before
    assert not main.actions_.all["select succession"].isEnabled()


def test_bad_wishes_are_answered_in_words_and_ok_waits(open_window, qtbot):
    main = open_window(Session(value(on=date(2027, 7, 20), crop="dwarf-bean")))
    dialog = opened(main)
    dialog.as_many.setChecked(False)
    dialog.parts.setValue(20)
    qtbot.waitUntil(lambda: "4 rows: too few for 20 parts" in dialog.message.text())
    assert not ok(dialog).isEnabled()
    assert dialog.message.isVisible()
    assert main.session.shown_garden is main.session.garden
    choose(dialog.way, Way.COPIES)
    dialog.days.setValue(60)
    dialog.parts.setValue(2)
    qtbot.waitUntil(lambda: "too late in the year" in dialog.message.text())
    dialog.accept()
    assert dialog.isVisible()
    assert main.session.history.count() == 0
    dialog.days.setValue(2)
    qtbot.waitUntil(lambda: ok(dialog).isEnabled())
    dialog.reject()


def test_only_ways_that_are_possible_are_offered(open_window):
    main = open_window(Session(value(pattern=Spots(points=((0.5, 0.5),)))))
    dialog = opened(main)
    assert [Way(dialog.way.itemData(i)) for i in range(dialog.way.count())] == [Way.COPIES]
    dialog.reject()


def made(main):
    result = succeed(main.session.garden, "l1", "r", Rhythm(10), Way.ROWS, main.session.catalogue)
    main.session.propose(result.garden, "Succession")
    return result


def test_one_member_leads_to_the_whole_succession(main):
    made(main)
    main.session.select(["l"])
    assert not main.actions_.all["select succession"].isEnabled()
    main.session.select(["r-3"])
    main.actions_.all["select succession"].trigger()
    assert main.session.selection == {"r", "r-2", "r-3", "r-4"}


def test_a_member_opens_its_succession_with_its_interval(main, qtbot):
    result = made(main)
    dialog = opened(main, "r-3")
    assert dialog.days.value() == 10
    assert main.session.shown_garden == result.garden
    dialog.days.setValue(15)
    qtbot.waitUntil(lambda: shown_in(dialog)[1] == "20 April")
    dialog.first.setDate(dialog.first.date().addDays(3))
    qtbot.waitUntil(lambda: shown_in(dialog)[0] == "8 April")
    QTest.mouseClick(ok(dialog), Qt.MouseButton.LeftButton)
    days = starts(main.session.layout)
    assert days == [date(2027, 4, 8) + timedelta(days=15 * n) for n in range(4)]
    assert main.session.history.count() == 2
    assert main.session.layout.by_id["l"] is result.garden.find("l1", "l")


def test_pinned_parts_stay_and_the_dialog_says_so(main):
    made(main)
    start = edits.rebuilt(main.session.layout.by_id["r-2"].start, pinned=True)
    main.session.propose(edits.change(main.session.garden, "l1", "r-2", start=start), "Pin")
    dialog = opened(main, "r", "r-2", "r-3", "r-4")
    dialog.days.setValue(20)
    dialog.refresh()
    assert "1 part stays on its day" in dialog.message.text()
    assert main.session.shown_garden.find("l1", "r-2").start == start
    dialog.reject()


def test_nothing_or_several_things_cannot_come_again(main):
    again = main.actions_.all["again"]
    for ids in ((), ("r", "l"), ("bed-1",)):
        main.session.select(ids)
        assert not again.isEnabled()
    main.session.select(["l"])
    assert again.isEnabled()


def test_copies_of_parts_are_a_succession_of_their_own(main):
    made(main)
    session = main.session
    session.select(["r", "r-2"])
    main.actions_.all["duplicate"].trigger()
    assert len(members(session.layout, "r")) == 4
    (own,) = {session.layout.by_id[i].succession for i in session.selection}
    assert len(members(session.layout, own)) == 2
    session.select(["r-3"])
    main.actions_.all["duplicate"].trigger()
    (copy,) = session.selection
    assert session.layout.by_id[copy].succession is None


def test_names_are_shown_as_the_characters_they_are(main):
    dialog = opened(main)
    assert dialog.message.textFormat() is Qt.TextFormat.PlainText
    assert dialog.evenness.textFormat() is Qt.TextFormat.PlainText
    dialog.reject()


def test_members_stand_together_on_the_ribbon_and_are_joined(main):
    """A lettuce that starts between two radishes stands after them all."""
    made(main)
    session = main.session
    (group,) = groups(session, session.layout.plantings, "bare")
    assert [b.id for b in group.bars] == ["r", "r-2", "r-3", "r-4", "l"]
    assert joined(group.bars) == [(0, 1), (1, 2), (2, 3)]
    main.ribbon.rebuild()
    above, below = main.ribbon.bar_rect("r"), main.ribbon.bar_rect("r-2")
    picture = main.ribbon.viewport().grab().toImage()
    scale = picture.devicePixelRatio()
    x, y = above.left() + 5, (above.bottom() + below.top()) / 2
    line = picture.pixelColor(round(x * scale), round(y * scale))
    beside = picture.pixelColor(round((x - 4) * scale), round(y * scale))
    assert line.lightness() < beside.lightness() - 20


def test_the_dialog_tells_what_the_planner_tells(main):
    dialog = opened(main)
    again = told(dialog.made.garden, "l1", "r", main.session.catalogue)
    assert again.parts == dialog.made.parts
    dialog.reject()
