"""A document sent to a printer or written as PDF, with progress that can be cancelled."""

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtPrintSupport import QAbstractPrintDialog, QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QDialog, QProgressDialog, QWidget

from gardencanvas.files import CannotWrite
from gardencanvas.paper.document import Document, GivenUp, Told, print_on, write_pdf

_ALIKE_MM = 0.5
_SHOWN_AFTER_MS = 400


def save(parent: QWidget, document: Document, path: Path) -> bool:
    """Write a document as PDF; whether it was, and not given up.

    Raises
    ------
    CannotWrite
        If it cannot be written; nothing half-written stays.
    """
    return _watched(parent, len(document.pages), lambda told: write_pdf(document, path, told))


def send(parent: QWidget, document: Document) -> bool:
    """Ask for a printer and send it the document, true to scale; whether it was sent.

    Raises
    ------
    CannotWrite
        If there is no printer, or it does not take the document or the paper.
    """
    if not QPrinterInfo.availablePrinterNames():
        raise CannotWrite(
            parent.tr(
                "No printer is set up on this computer: save the pages as PDF and print them elsewhere."
            )
        )
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setPageLayout(document.setup.page_layout)
    printer.setDocName(document.title)
    asked = QPrintDialog(printer, parent)
    asked.setOption(QAbstractPrintDialog.PrintDialogOption.PrintPageRange)
    asked.setMinMax(1, len(document.pages))
    if asked.exec() != QDialog.DialogCode.Accepted:
        return False
    pages = chosen_pages(printer, len(document.pages))
    hold_to(document, printer, parent)
    return _watched(
        parent, len(pages), lambda told: print_on(document, printer, printer.resolution(), told, pages)
    )


def chosen_pages(printer: QPrinter, count: int) -> Sequence[int]:
    """The pages asked for, counted from 0."""
    if printer.printRange() is not QPrinter.PrintRange.PageRange or printer.fromPage() < 1:
        return range(count)
    return range(min(printer.fromPage(), count) - 1, min(max(printer.toPage(), printer.fromPage()), count))


def hold_to(document: Document, printer: QPrinter, parent: QWidget) -> None:
    """Have the printer use the document's paper and margins, whatever was chosen in its own dialog.

    Raises
    ------
    CannotWrite
        If it cannot: on another paper the scale would no longer be true, or something would be cut off.
    """
    wanted = document.setup.page_layout
    printer.setPageLayout(wanted)
    got, want = (x.paintRect(wanted.units()) for x in (printer.pageLayout(), wanted))
    sides = (
        (got.x(), want.x()),
        (got.y(), want.y()),
        (got.width(), want.width()),
        (got.height(), want.height()),
    )
    if any(abs(a - b) > _ALIKE_MM for a, b in sides):
        raise CannotWrite(
            parent.tr("This printer does not take {0} with margins of 12 mm: choose another paper.").format(
                wanted.pageSize().name()
            )
        )


def _watched(parent: QWidget, count: int, do: Callable[[Told], object]) -> bool:
    """Do something page by page; whether it was done, and not given up."""
    bar = QProgressDialog(parent.tr("Pages…"), parent.tr("Cancel"), 0, count, parent)
    bar.setWindowModality(Qt.WindowModality.WindowModal)
    bar.setMinimumDuration(_SHOWN_AFTER_MS)

    def told(number: int, _count: int) -> bool:
        bar.setValue(number)
        QCoreApplication.processEvents()
        return not bar.wasCanceled()

    try:
        do(told)
    except GivenUp:
        return False
    finally:
        bar.reset()
        bar.deleteLater()
    return True
