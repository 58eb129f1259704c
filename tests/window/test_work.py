"""Jobs and seeds in the window: weeks, marks, filters, going there, files, pages."""

from datetime import date

import icalendar
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog

from gardencanvas.app.printing.dialog import PrintDialog
from gardencanvas.app.session import Session
from gardencanvas.measures.jobs import jobs
from gardencanvas.measures.seed_order import seed_order
from gardencanvas.paper.document import Setup
from tests.garden.makers import garden
from tests.window.hand import two_rows

ID = Qt.ItemDataRole.UserRole


@pytest.fixture
def main(open_window):
    return open_window(Session(two_rows()))


@pytest.fixture
def panel(main):
    panel = main.show_tab("jobs")
    panel.refresh()
    return panel


def rows(panel):
    heads = [panel._model.item(i) for i in range(panel._model.rowCount())]
    return [head.child(j, 0) for head in heads for j in range(head.rowCount())]


def row_of(panel, job_id):
    return next(r for r in rows(panel) if r.data(ID) == job_id)


def test_every_job_stands_in_its_week_once(main, panel):
    expected = {j.id for j in jobs(main.session.garden, "l1")}
    assert {r.data(ID) for r in rows(panel)} == expected
    assert len(rows(panel)) == len(expected)


def test_a_click_goes_to_the_planting_and_the_day(main, panel):
    item = row_of(panel, "beets:sow")
    panel._go(item.index())
    assert main.session.on == date(2027, 5, 1)
    assert main.session.selection == {"beets"}


def test_space_marks_a_job_done_and_undo_takes_it_back(main, panel):
    before = main.session.garden
    panel.tree.setCurrentIndex(row_of(panel, "beets:sow").index())
    QTest.keyClick(panel.tree, Qt.Key.Key_Space)
    assert [d.job for d in main.session.layout.done] == ["beets:sow"]
    panel.refresh()
    assert row_of(panel, "beets:sow").checkState() is Qt.CheckState.Checked
    main.session.history.undo()
    assert main.session.garden is before
    panel.refresh()
    assert row_of(panel, "beets:sow").checkState() is Qt.CheckState.Unchecked


def test_kinds_words_and_state_narrow_the_list(main, panel):
    panel.words.setText("beet")
    panel.refresh()
    assert {r.data(ID).split(":")[0] for r in rows(panel)} == {"beets"}
    panel.kind.setCurrentIndex(panel.kind.findData("sow"))
    panel.refresh()
    assert [r.data(ID) for r in rows(panel)] == ["beets:sow"]
    panel.state.setCurrentIndex(panel.state.findData(True))
    panel.refresh()
    assert rows(panel) == []
    assert panel.empty.isVisibleTo(panel)


def test_the_calendar_holds_every_job(main, panel, tmp_path, monkeypatch):
    target = tmp_path / "jobs.ics"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a, **k: (str(target), ""))
    panel.save_calendar()
    events = icalendar.Calendar.from_ical(target.read_bytes()).walk("VEVENT")
    assert {str(e["UID"]).split(".l1@")[0] for e in events} == {j.id for j in jobs(main.session.garden, "l1")}


def test_a_file_that_cannot_be_written_is_said_and_nothing_is_left(panel, tmp_path, monkeypatch):
    target = tmp_path / "no-such-folder" / "jobs.csv"
    said = []
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a, **k: (str(target), ""))
    monkeypatch.setattr("gardencanvas.app.work.jobs_panel.tell", lambda *a: said.append(a[-1]))
    panel.save_table()
    assert "could not be written" in said[0]
    assert not target.parent.exists()


def test_the_printed_list_is_the_one_shown(panel):
    panel.words.setText("leek")
    panel.refresh()
    assert len(panel.document(Setup(landscape=False)).pages) == 1


def test_an_empty_layout_says_there_is_no_work(open_window):
    panel = open_window(Session(garden(beds=()))).show_tab("jobs")
    panel.refresh()
    assert panel.empty.isVisibleTo(panel)


def test_the_seed_order_is_that_of_the_engine_and_sorts_by_number(main):
    panel = main.show_tab("seeds")
    panel.refresh()
    lines = seed_order(main.session.garden, "l1")
    assert panel._model.rowCount() == len(lines)
    panel.table.sortByColumn(1, Qt.SortOrder.DescendingOrder)
    plants = [int(panel._model.item(i, 1).text().replace(",", "")) for i in range(panel._model.rowCount())]
    assert plants == sorted((line.plants for line in lines), reverse=True)


def test_pages_are_shown_turned_and_saved(main, panel, tmp_path, monkeypatch):
    dialog = PrintDialog(main, "Jobs", panel.document)
    dialog.show()
    dialog.refresh()
    assert dialog.which.text() == "1 of 1"
    QTest.keyClick(dialog.view, Qt.Key.Key_PageDown)
    assert dialog.view.number == 0
    target = tmp_path / "list"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a, **k: (str(target), ""))
    dialog._save()
    assert (tmp_path / "list.pdf").read_bytes().startswith(b"%PDF")
    dialog.close()
    dialog.deleteLater()
