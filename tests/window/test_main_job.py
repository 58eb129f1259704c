"""The main job with a real mouse: draw a bed, drag a crop in, read it, undo, save, close, reopen."""

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt, QTimer, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QMouseEvent
from PySide6.QtWidgets import QApplication, QMessageBox

from gardencanvas.app import filing, settings
from gardencanvas.app.session import Session
from gardencanvas.app.start import demo_garden, new_garden
from gardencanvas.files import CannotWrite, open_garden, save_garden
from gardencanvas.garden import edits
from tests.garden.makers import bed


@pytest.fixture
def window(open_window):
    return open_window(Session(new_garden(2027)))


@pytest.fixture
def with_bed(window, qtbot):
    session = window.session
    session.propose(edits.add(session.garden, session.layout_id, [bed("bed-1", 0, 0, 3.6, 1.2)]), "Draw bed")
    window.view.fit()
    qtbot.wait(50)
    return window


def _mouse(kind, widget, at, button=Qt.MouseButton.LeftButton, held=Qt.MouseButton.LeftButton):
    """A mouse event as the platform sends it, with its global point."""
    event = QMouseEvent(
        kind, QPointF(at), QPointF(widget.mapToGlobal(at)), button, held, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(widget, event)


def _tin_row(window, crop_id):
    model = window.tin.model
    for row in range(model.rowCount()):
        crop = model.index(row, 0).data(Qt.ItemDataRole.UserRole)
        if crop is not None and crop.id == crop_id:
            window.tin.list.scrollTo(model.index(row, 0))
            return window.tin.list.visualRect(model.index(row, 0)).center()
    raise AssertionError(f"{crop_id} is not in the seed tin")


def _on_plan(window, x_m, y_m):
    return window.view.mapFromScene(QPointF(100 * x_m, 100 * y_m))


def _drag_from_tin(window, qtbot, crop_id, x_m, y_m, *, drop=True):
    window.tin.search.setText(crop_id)
    source = window.tin.list.viewport()
    begin = _tin_row(window, crop_id)
    target = source.mapFromGlobal(window.view.viewport().mapToGlobal(_on_plan(window, x_m, y_m)))
    _mouse(QEvent.Type.MouseButtonPress, source, begin)
    for step in (0.2, 0.5, 0.8, 1.0):
        at = QPoint(
            round(begin.x() + step * (target.x() - begin.x())),
            round(begin.y() + step * (target.y() - begin.y())),
        )
        _mouse(QEvent.Type.MouseMove, source, at, Qt.MouseButton.NoButton)
        qtbot.wait(20)
    if drop:
        _mouse(QEvent.Type.MouseButtonRelease, source, target, held=Qt.MouseButton.NoButton)
        qtbot.wait(20)
    return source


def test_a_crop_dragged_into_a_bed_becomes_a_planting(with_bed, qtbot):
    before = with_bed.session.garden
    _drag_from_tin(with_bed, qtbot, "leek", 1.8, 0.6)
    plantings = with_bed.session.layout.plantings
    assert [p.crop for p in plantings] == ["leek"]
    assert plantings[0].plants > 5
    y = plantings[0].stations[:, 1]
    assert ((y > 0) & (y < 1.2)).all()
    assert with_bed.session.selection == {plantings[0].id}
    assert with_bed.session.unsaved
    with_bed.session.history.undo()
    assert with_bed.session.garden is before


def test_escape_while_dragging_restores_everything(with_bed, qtbot):
    before, report = with_bed.session.garden, with_bed.session.report
    source = _drag_from_tin(with_bed, qtbot, "leek", 1.8, 0.6, drop=False)
    qtbot.keyClick(with_bed.tin.list, Qt.Key.Key_Escape)
    assert with_bed.session.garden is before
    assert with_bed.session.shown_report is report
    assert with_bed.session.history.count() == 1  # the bed's own
    _mouse(QEvent.Type.MouseButtonRelease, source, QPoint(5, 5), held=Qt.MouseButton.NoButton)
    assert with_bed.session.garden is before


def test_the_report_is_live_while_the_mouse_still_holds_the_crop(with_bed, qtbot):
    _drag_from_tin(with_bed, qtbot, "cabbage", 1.8, 0.6)
    seen = []
    with_bed.session.previewed.connect(seen.append)
    _drag_from_tin(with_bed, qtbot, "cauliflower", 1.8, 0.65, drop=False)
    during = [r for r in seen if r is not None]
    assert during
    assert during[-1].worst.word in {"strains", "clashes"}
    qtbot.keyClick(with_bed.tin.list, Qt.Key.Key_Escape)
    assert seen[-1] is None


def test_saved_closed_and_reopened_everything_is_there(with_bed, qtbot, tmp_path, monkeypatch):
    _drag_from_tin(with_bed, qtbot, "leek", 1.8, 0.6)
    path = tmp_path / "my garden.gardencanvas"
    monkeypatch.setattr(filing, "ask_save", lambda *_: path)
    with_bed.actions_.all["save"].trigger()
    assert not with_bed.session.unsaved
    assert not with_bed.isWindowModified()
    assert settings.recent_files()[0] == path.resolve()
    value = with_bed.session.garden
    assert open_garden(path) == value
    with_bed.actions_.all["new"].trigger()
    assert with_bed.session.garden != value
    monkeypatch.setattr(filing, "ask_open", lambda *_: path)
    with_bed.actions_.all["open"].trigger()
    assert with_bed.session.garden == value
    assert with_bed.session.path == path


@pytest.mark.parametrize("answer", ["Save", "Discard", "Cancel"])
def test_closing_asks_about_unsaved_changes(with_bed, qtbot, tmp_path, monkeypatch, answer):
    path = tmp_path / "g.gardencanvas"
    monkeypatch.setattr(filing, "ask_unsaved", lambda *_: getattr(QMessageBox.StandardButton, answer))
    monkeypatch.setattr(filing, "ask_save", lambda *_: path)
    closed = with_bed.close()
    assert closed is (answer != "Cancel")
    assert path.exists() is (answer == "Save")


def test_a_failed_save_keeps_the_changes_and_says_so(with_bed, monkeypatch, tmp_path):
    told = []
    monkeypatch.setattr(filing, "ask_save", lambda *_: tmp_path / "g.gardencanvas")
    monkeypatch.setattr(filing, "tell", lambda _w, _t, sentence: told.append(sentence))

    def full(*_):
        raise CannotWrite("g.gardencanvas could not be written: No space left on device.")

    monkeypatch.setattr("gardencanvas.app.saving.write_whole", full)
    with_bed.actions_.all["save"].trigger()
    assert with_bed.session.unsaved
    assert "No space left" in told[0]
    assert "still here" in told[0]


def test_a_bad_file_leaves_the_open_garden_as_it_was(with_bed, monkeypatch, tmp_path):
    told = []
    monkeypatch.setattr(filing, "tell", lambda _w, _t, sentence: told.append(sentence))
    monkeypatch.setattr(filing, "ask_unsaved", lambda *_: QMessageBox.StandardButton.Discard)
    bad = tmp_path / "bad.gardencanvas"
    bad.write_bytes(b"\x00\xff nonsense")
    before, session = with_bed.session.garden, with_bed.session
    assert not with_bed.open_path(bad)
    assert with_bed.session is session
    assert with_bed.session.garden is before
    assert told == ["bad.gardencanvas is not a garden file: it is not text in UTF-8."]


def test_a_file_dropped_on_the_window_is_opened(open_window, tmp_path):
    main = open_window(Session(new_garden(2027)))
    path = tmp_path / "dropped.gardencanvas"
    save_garden(demo_garden(), path)
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    place, action, buttons, keys = (
        QPoint(300, 300),
        Qt.DropAction.CopyAction,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    enter = QDragEnterEvent(place, action, data, buttons, keys)
    QApplication.sendEvent(main, enter)
    assert enter.isAccepted()
    QApplication.sendEvent(main, QDropEvent(QPointF(place), action, data, buttons, keys))
    assert main.session.path == path
    assert main.session.garden == demo_garden()


def test_undo_names_what_it_undoes(with_bed, qtbot):
    _drag_from_tin(with_bed, qtbot, "leek", 1.8, 0.6)
    assert "eek" in with_bed.actions_.all["undo"].text()
    assert with_bed.actions_.all["undo"].isEnabled()


def test_outline_and_canvas_share_one_selection(open_window):
    main = open_window(Session(demo_garden()))
    main.session.select(["p-leek"])
    rows = main.outline.tree.selectionModel().selectedRows(0)
    assert [r.data(Qt.ItemDataRole.UserRole) for r in rows] == ["p-leek"]
    main.outline.tree.clearSelection()
    assert main.session.selection == frozenset()


def test_exact_numbers_in_the_inspector_make_one_undo_step(open_window, qtbot):
    main = open_window(Session(demo_garden()))
    main.session.select(["p-leek"])
    main.inspector.refresh()
    field = main.inspector.planting.exact.pattern.lengths["spacing_m"]
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, "20")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    planting = main.session.layout.by_id["p-leek"]
    assert planting.pattern.spacing_m == pytest.approx(0.20)
    assert main.session.history.count() == 1
    main.session.history.undo()
    assert main.session.layout.by_id["p-leek"].pattern.spacing_m == pytest.approx(0.15)


def test_names_are_shown_as_the_characters_they_are(open_window):
    garden = demo_garden()
    name = '<img src="x"> <b>Rows</b>'
    session = Session(edits.change(garden, garden.layouts[0].id, "bed-1", name=name))
    main = open_window(session)
    session.select(["bed-1"])
    main.inspector.refresh()
    assert main.inspector.bed.name.text() == name
    assert main.inspector.garden.name.text()


def test_bed_map_and_picture_are_saved_from_the_menu(with_bed, qtbot, tmp_path, monkeypatch):
    _drag_from_tin(with_bed, qtbot, "leek", 1.8, 0.6)
    chosen = tmp_path / "out"
    monkeypatch.setattr(filing.QFileDialog, "getSaveFileName", lambda *_: (str(chosen), ""))

    def save():
        dialog = QApplication.activeModalWidget()
        dialog.refresh()
        dialog._save()
        dialog.reject()

    QTimer.singleShot(0, save)
    with_bed.actions_.all["bed map"].trigger()
    QTimer.singleShot(0, lambda: QApplication.activeModalWidget().accept())
    with_bed.actions_.all["picture"].trigger()
    assert (tmp_path / "out.pdf").read_bytes().startswith(b"%PDF-")
    assert (tmp_path / "out.png").read_bytes().startswith(b"\x89PNG")
