"""Layouts listed and compared: copies, kept ones, the table in the grower's own order, plots, files."""

import pytest
from PySide6.QtWidgets import QFileDialog

from gardencanvas.app.comparing.dialog import ComparisonDialog
from gardencanvas.app.comparing.layouts_dialog import LayoutsDialog
from gardencanvas.app.session import Session
from gardencanvas.garden import edits, layouts
from gardencanvas.measures.codes import Code
from gardencanvas.paper.document import Setup
from tests.window.hand import two_rows


@pytest.fixture
def main(open_window):
    value, copy = layouts.duplicated(two_rows(), "l1", "Without beets")
    return open_window(Session(edits.remove(value, copy, ["beets"])))


@pytest.fixture
def listed(main):
    dialog = LayoutsDialog(main)
    yield dialog
    dialog.close()
    dialog.deleteLater()


@pytest.fixture
def compared(main):
    dialog = ComparisonDialog(main)
    dialog.refresh()
    yield dialog
    dialog.close()
    dialog.deleteLater()


def names(main):
    return [x.name for x in main.session.garden.layouts]


def test_a_layout_is_duplicated_named_kept_and_deleted_each_with_one_undo_step(main, listed):
    before = main.session.garden
    listed.name.setText("Third")
    listed.buttons["copy"].click()
    assert "Third" in names(main)
    assert main.session.layout.name == "Third"
    listed.name.setText("Third, mended")
    listed.note.setPlainText("fewer leeks")
    listed.buttons["name"].click()
    assert (main.session.layout.name, main.session.layout.note) == ("Third, mended", "fewer leeks")
    listed.buttons["keep"].click()
    assert [x.name for x in main.session.garden.layouts if x.kept] == ["Third, mended"]
    listed.buttons["delete"].click()
    assert "Third, mended" not in names(main)
    for _ in range(4):
        main.session.history.undo()
    assert main.session.garden is before


def test_a_copy_for_another_year_has_its_dates_there(main, listed):
    listed.year.setValue(2029)
    listed.buttons["year"].click()
    assert main.session.layout.year == 2029
    assert {p.start.on.year for p in main.session.layout.plantings} == {2029}


def test_the_table_shows_both_apart_difference_and_what_is_better(compared):
    assert compared.table.rowCount() == len(compared.rows())
    harvest = next(i for i, m in enumerate(compared.rows()) if m.code == Code.HARVEST)
    cells = [compared.table.item(harvest, c).text() for c in range(6)]
    assert cells[0] == "Harvest"
    assert all(cells)
    assert compared.table.item(harvest, 0).toolTip()
    cost = next(i for i, m in enumerate(compared.rows()) if m.code == Code.SEED_COST)
    assert compared.table.item(cost, 1).text() == "not known"


def test_weights_put_rows_in_order_and_nothing_else(compared):
    before = {m.code: m for m in compared.rows()}
    last = compared.rows()[-1].code
    compared._weights = dict.fromkeys(Code, 1) | {Code(last): 3}
    compared._show()
    assert compared.rows()[0].code == last
    assert {m.code: m for m in compared.rows()}[last] == before[last]
    compared._weights[Code(last)] = 0
    compared._show()
    assert last not in {m.code for m in compared.rows()}


def test_a_layout_against_itself_differs_in_nothing(compared):
    compared.second.setCurrentIndex(compared.first.currentIndex())
    compared.refresh()
    assert "differs in nothing" in compared.said.text()
    assert all(m.difference.value in (0.0, None) for m in compared.rows())


def test_it_is_saved_as_a_table_and_as_pages(compared, tmp_path, monkeypatch):
    target = tmp_path / "two"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(target), ""))
    compared.save_table()
    assert (tmp_path / "two.csv").read_text("utf-8").count("\n") > len(compared.rows())
    assert len(compared.document(Setup()).pages) >= 1


def test_one_layout_alone_cannot_be_compared_and_the_reason_is_said(open_window):
    action = open_window(Session(two_rows())).actions_.all["compare"]
    assert not action.isEnabled()
    assert "one layout only" in action.toolTip()
