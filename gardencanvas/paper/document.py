"""Documents: pages that draw themselves on a sheet, on a PDF, a printer or a picture alike."""

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Literal

from PySide6.QtCore import QBuffer, QByteArray, QCoreApplication, QIODevice, QMarginsF, QSizeF
from PySide6.QtGui import (
    QGuiApplication,
    QPagedPaintDevice,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPicture,
)

from gardencanvas.files import CannotWrite, write_whole
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.language import say

Paper = Literal["a4", "a3", "letter", "tabloid"]
PAPERS: dict[Paper, QPageSize.PageSizeId] = {
    "a4": QPageSize.PageSizeId.A4,
    "a3": QPageSize.PageSizeId.A3,
    "letter": QPageSize.PageSizeId.Letter,
    "tabloid": QPageSize.PageSizeId.Tabloid,
}
MARGIN_MM = 12.0  # home printers leave 3 to 6 mm unprinted; a clipboard's clamp takes the rest
RESOLUTION = 1200
PER_MM = RESOLUTION / 25.4

Page = Callable[[Sheet], None]
Told = Callable[[int, int], bool]  # pages done, pages in all; False gives up


class GivenUp(Exception):  # noqa: N818 - nothing went wrong
    """The writing was given up by whoever watched it; nothing was written."""


@dataclass(frozen=True, slots=True)
class Setup:
    """The paper: its size and which way it lies."""

    paper: Paper = "a4"
    landscape: bool = True

    @property
    def page_layout(self) -> QPageLayout:
        """Qt's word for it, margins included."""
        way = QPageLayout.Orientation.Landscape if self.landscape else QPageLayout.Orientation.Portrait
        margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
        return QPageLayout(QPageSize(PAPERS[self.paper]), way, margins, QPageLayout.Unit.Millimeter)

    @property
    def box(self) -> Box:
        """What may be drawn on, in millimetres from the margins' corner."""
        room = self.page_layout.paintRect(QPageLayout.Unit.Millimeter)
        return Box(0.0, 0.0, room.width(), room.height())

    @property
    def size_mm(self) -> QSizeF:
        """The whole sheet."""
        return self.page_layout.fullRect(QPageLayout.Unit.Millimeter).size()


@dataclass(frozen=True, slots=True)
class Document:
    """Pages with a title; the same pages are shown, printed and written."""

    title: str
    setup: Setup
    pages: tuple[Page, ...]


@cache
def fonts_ready() -> QCoreApplication:
    """The application that fonts need; one without a screen is made, and kept, where there is none."""
    return QGuiApplication.instance() or QGuiApplication(["gardencanvas", "-platform", "offscreen"])


def write_pdf(document: Document, path: Path, told: Told | None = None) -> int:
    """Write a document as PDF: vectors, text that can be selected, fonts embedded; the number of pages.

    Raises
    ------
    CannotWrite
        If the file cannot be written; nothing half-written stays.
    GivenUp
        If ``told`` returned False.
    """
    fonts_ready()
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    # the layout first, then the resolution, then the painter: in another order the scale is off
    writer.setPageLayout(document.setup.page_layout)
    writer.setResolution(RESOLUTION)
    writer.setTitle(document.title)
    writer.setCreator("Garden Canvas")
    painter = QPainter()
    if not painter.begin(writer):
        raise CannotWrite(say("{file} could not be written: no PDF can be made here.", file=path.name))
    try:
        _paint_all(document, painter, writer, writer.resolution() / 25.4, told)
    finally:
        painter.end()
    buffer.close()
    write_whole(path, bytes(data.data()))
    return len(document.pages)


def print_on(
    document: Document,
    printer: QPagedPaintDevice,
    dpi: int,
    told: Told | None = None,
    pages: Sequence[int] | None = None,
) -> None:
    """Send a document, or some of its pages counted from 0, to a printer whose page layout is the document's.

    Raises
    ------
    CannotWrite
        If the printer does not take it.
    GivenUp
        If ``told`` returned False.
    """
    painter = QPainter()
    if not painter.begin(printer):
        raise CannotWrite(say("The printer takes nothing now: is it connected and switched on?"))
    try:
        _paint_all(document, painter, printer, dpi / 25.4, told, pages)
    finally:
        painter.end()


def _paint_all(
    document: Document,
    painter: QPainter,
    device: QPagedPaintDevice,
    per_mm: float,
    told: Told | None,
    pages: Sequence[int] | None = None,
) -> None:
    box = document.setup.box
    wanted = range(len(document.pages)) if pages is None else pages
    for done, number in enumerate(wanted):
        if told is not None and not told(done, len(wanted)):
            raise GivenUp
        if done and not device.newPage():
            raise CannotWrite(say("The printer took some pages and then no more."))
        painter.save()
        document.pages[number](_sheet(painter, per_mm, box))
        painter.restore()


def _sheet(painter: QPainter, per_mm: float, box: Box) -> Sheet:
    """A sheet whose letters are measured alike on every device, so that every line breaks alike."""
    painter.scale(per_mm / PER_MM, per_mm / PER_MM)
    return Sheet(painter, PER_MM, box)


@contextmanager
def measuring(box: Box) -> Iterator[Sheet]:
    """A sheet that is thrown away: to see how much room words take."""
    picture, painter = QPicture(), QPainter()
    painter.begin(picture)
    try:
        yield Sheet(painter, PER_MM, box)
    finally:
        painter.end()


def paint_page(document: Document, number: int, painter: QPainter, per_mm: float) -> None:
    """One page on any painter, its margins included: the painter's origin is the sheet's corner."""
    painter.save()
    painter.translate(MARGIN_MM * per_mm, MARGIN_MM * per_mm)
    document.pages[number](_sheet(painter, per_mm, document.setup.box))
    painter.restore()
