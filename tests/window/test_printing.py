"""The bed map's dialog: live options, pages turned and enlarged by hand, saved and sent to printers."""

import re
from datetime import date

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QMarginsF, QPoint, QPointF, Qt
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrinter, QPrinterInfo
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog, QMessageBox

from gardencanvas.app.printing import dialog as dialogs
from gardencanvas.app.printing.bedmap_dialog import BedMapDialog
from gardencanvas.app.printing.sending import chosen_pages, hold_to
from gardencanvas.app.session import Session
from gardencanvas.app.start import demo_garden
from gardencanvas.files import CannotWrite
from gardencanvas.garden import edits
from gardencanvas.paper.document import print_on, write_pdf
from tests.garden.makers import bed, garden, row


@pytest.fixture
def shown(open_window):
    made = []

    def show(value=None):
        dialog = BedMapDialog(open_window(Session(value or demo_garden())))
        made.append(dialog)
        dialog.show()
        dialog.refresh()
        return dialog

    yield show
    for dialog in made:
        dialog.close()
        dialog.deleteLater()


def text_of(path):
    return [" ".join(p.extract_text().split()) for p in PdfReader(path).pages]


def test_every_option_changes_the_pages_at_once(shown, qtbot):
    dialog = shown()
    beds = len(demo_garden().layouts[0].beds)
    before = len(dialog.view.document.pages)
    assert before >= beds + 1
    dialog.overview.setChecked(False)
    qtbot.waitUntil(lambda: len(dialog.view.document.pages) == before - 1)
    for index in range(1, dialog.beds.count()):
        dialog.beds.item(index).setCheckState(Qt.CheckState.Unchecked)
    dialog.stages.item(5).setCheckState(Qt.CheckState.Checked)
    dialog.stages.item(7).setCheckState(Qt.CheckState.Checked)
    dialog.paper.setCurrentIndex(dialog.paper.findData("a3"))
    dialog.way.setCurrentIndex(1)
    dialog.scale.setCurrentIndex(dialog.scale.findData(50))
    dialog.refresh()
    options = dialog.options
    assert options.beds == (demo_garden().layouts[0].beds[0].id,)
    assert options.stages == (date(2027, 5, 15), date(2027, 7, 15))
    assert (options.scale, options.overview, options.whole) == (50, False, False)
    size = dialog.view.document.setup.size_mm
    assert (size.width(), size.height()) == pytest.approx((297, 420), abs=0.5)  # ISO 216: A3 upright


def test_beds_that_are_selected_are_the_ones_printed(open_window, shown):
    value = garden(row(), beds=(bed("a"), bed("b", y=3.0)))
    main = open_window(Session(value))
    main.session.select({"b"})
    dialog = BedMapDialog(main)
    assert dialog.options.beds == ("b",)
    assert not dialog.options.overview
    dialog.deleteLater()


def test_no_bed_ticked_is_said_and_nothing_can_be_printed(shown):
    dialog = shown(garden(row()))
    dialog.beds.item(0).setCheckState(Qt.CheckState.Unchecked)
    dialog.refresh()
    assert "choose one" in dialog.message.text()
    assert not dialog.save.isEnabled()
    assert not dialog.print.isEnabled()


def test_pages_turn_and_grow_by_keyboard(shown):
    view = shown().view
    last = len(view.document.pages) - 1
    for key, number in (
        (Qt.Key.Key_PageDown, 1), (Qt.Key.Key_Right, 2), (Qt.Key.Key_End, last), (Qt.Key.Key_PageDown, last),
        (Qt.Key.Key_Home, 0), (Qt.Key.Key_PageUp, 0),
    ):  # fmt: skip
        QTest.keyClick(view, key)
        assert view.number == number
    QTest.keyClicks(view, "+++")
    assert view.zoom == pytest.approx(1.25**3)
    before = view.verticalScrollBar().value(), view.horizontalScrollBar().value()
    QTest.keyClick(view, Qt.Key.Key_Down)
    QTest.keyClick(view, Qt.Key.Key_Right)
    assert view.verticalScrollBar().value() > before[0]
    assert view.horizontalScrollBar().value() > before[1]
    assert view.number == 0
    QTest.keyClicks(view, "-0")
    assert view.zoom == 1.0


def test_zooming_keeps_the_point_under_the_mouse(shown):
    view = shown().view
    at = QPointF(view.viewport().width() * 0.6, view.viewport().height() * 0.55)

    def share():
        box = view.sheet_box()
        return (at.x() - box.x()) / box.width(), (at.y() - box.y()) / box.height()

    before = share()
    view.zoom_to(4.0, at)
    assert share() == pytest.approx(before, abs=0.01)


def test_an_enlarged_page_is_dragged(shown):
    view = shown().view
    view.zoom_to(3.0)
    before = view.horizontalScrollBar().value()
    port = view.viewport()
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=QPoint(300, 200))
    QTest.mouseMove(port, QPoint(240, 200))
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=QPoint(240, 200))
    assert view.horizontalScrollBar().value() == before + 60


def test_what_is_saved_is_what_was_shown(shown, tmp_path, monkeypatch):
    dialog = shown()
    target = tmp_path / "out"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a, **k: (str(target), ""))
    dialog._save()
    assert dialog.message.text() == "Saved as out.pdf."
    assert len(text_of(tmp_path / "out.pdf")) == len(dialog.view.document.pages)


def test_an_unwritable_place_is_said_in_words(shown, tmp_path, monkeypatch):
    said = []
    monkeypatch.setattr(dialogs, "tell", lambda *a: said.append(a[-1]))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a, **k: (str(tmp_path / "no" / "m.pdf"), ""))
    shown()._save()
    assert "could not be written" in said[0]
    assert list(tmp_path.iterdir()) == []


def test_very_many_pages_are_told_and_asked_about(shown, tmp_path, monkeypatch):
    dialog = shown(garden(beds=(bed(length=60.0, width=60.0),)))
    dialog.scale.setCurrentIndex(dialog.scale.findData(10))
    dialog.refresh()
    count = len(dialog.view.document.pages)
    assert count > 500
    assert f"{count:,} pages" in dialog.message.text()
    asked = []
    monkeypatch.setattr(
        QMessageBox, "question", lambda *a: asked.append(a[2]) or QMessageBox.StandardButton.No
    )
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a, **k: pytest.fail("asked for a file"))
    dialog._save()
    assert f"{count:,}" in asked[0]


def test_without_a_printer_it_is_said_what_to_do(shown, monkeypatch):
    said = []
    monkeypatch.setattr(dialogs, "tell", lambda *a: said.append(a[-1]))
    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", list)
    shown()._print()
    assert "No printer is set up" in said[0]
    assert "PDF" in said[0]


@pytest.fixture
def printer(tmp_path):
    made = QPrinter(QPrinter.PrinterMode.HighResolution)
    made.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    made.setOutputFileName(str(tmp_path / "printed.pdf"))
    return made


def outlines(path, page):
    """Widths and heights in millimetres of the largest closed shapes on a page."""
    from tests.paper.test_scale import strokes

    return strokes(PdfReader(path).pages[page])


def test_a_printer_puts_down_the_same_pages_true_to_scale(shown, printer, tmp_path):
    """A printer of another resolution, and a paper chosen in its own dialog, change nothing."""
    dialog = shown(garden(row()))
    dialog.scale.setCurrentIndex(dialog.scale.findData(20))
    dialog.refresh()
    document = dialog.view.document
    printer.setResolution(600)
    printer.setPageLayout(
        QPageLayout(
            QPageSize(QPageSize.PageSizeId.A5), QPageLayout.Orientation.Portrait, QMarginsF(1, 1, 1, 1)
        )
    )
    hold_to(document, printer, dialog)
    print_on(document, printer, printer.resolution())
    write_pdf(document, tmp_path / "saved.pdf")
    printed, saved = text_of(tmp_path / "printed.pdf"), text_of(tmp_path / "saved.pdf")
    assert [re.sub(r"\s", "", t) for t in printed] == [re.sub(r"\s", "", t) for t in saved]
    found = outlines(tmp_path / "printed.pdf", 1)
    assert ((abs(found[:, 2] - 180) < 0.2) & (abs(found[:, 3] - 60) < 0.2)).any()  # 3.6 × 1.2 m at 1:20


def test_only_the_pages_asked_for_are_printed(shown, printer, tmp_path):
    document = shown().view.document
    printer.setPrintRange(QPrinter.PrintRange.PageRange)
    printer.setFromTo(2, 3)
    pages = chosen_pages(printer, len(document.pages))
    assert list(pages) == [1, 2]
    hold_to(document, printer, None)
    print_on(document, printer, printer.resolution(), None, pages)
    whole = len(document.pages)
    first, second = text_of(tmp_path / "printed.pdf")
    assert f"2 of {whole}" in first
    assert f"3 of {whole}" in second


def test_a_printer_that_cannot_hold_the_paper_is_refused_in_words(shown, monkeypatch):
    dialog = shown()

    class Stubborn:
        def setPageLayout(self, _layout):
            return False

        def pageLayout(self):
            return QPageLayout(
                QPageSize(QPageSize.PageSizeId.A5), QPageLayout.Orientation.Portrait, QMarginsF(),
                QPageLayout.Unit.Millimeter,
            )  # fmt: skip

    with pytest.raises(CannotWrite, match="choose another paper"):
        hold_to(dialog.view.document, Stubborn(), dialog)


def test_a_layout_without_beds_has_no_bed_map(open_window):
    main = open_window(Session(edits.remove(garden(), "l1", ["bed-1"])))
    assert not main.actions_.all["bed map"].isEnabled()
