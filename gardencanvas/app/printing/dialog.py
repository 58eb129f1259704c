"""The dialog that shows a document page by page, saves it as PDF and prints it."""

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QMessageBox,
    QPushButton,
    QToolButton,
    QVBoxLayout,
)

from gardencanvas.app import settings
from gardencanvas.app.filing import tell
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.printing.page_view import STEP, PageView
from gardencanvas.app.printing.sending import save, send
from gardencanvas.app.soon import Soon
from gardencanvas.files import CannotWrite
from gardencanvas.garden.errors import Refusal
from gardencanvas.paper.document import Document, Paper, Setup
from gardencanvas.words.language import figure
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

Make = Callable[[Setup], Document]
MANY_PAGES = 60  # a ream's eighth: more is asked about


class PrintDialog(QDialog):
    """Options left, the page right; what is shown is what is printed.

    ``make`` makes the document for a paper; a subclass adds options of its own to ``form`` and calls
    ``ask`` when one changes.
    """

    def __init__(self, window: "MainWindow", title: str, make: Make, *, landscape: bool = False) -> None:
        super().__init__(window)
        self._window, self._make = window, make
        self.setWindowTitle(title)
        self.resize(1000, 680)
        self._soon = Soon(self, self.refresh, 60)
        self.view = PageView()
        row = QHBoxLayout(self)
        row.addLayout(self._options(landscape))
        row.addLayout(self._pages(), 1)
        self.ask()

    # parts

    def _options(self, landscape: bool) -> QVBoxLayout:
        column = QVBoxLayout()
        self.form = QFormLayout()
        self.paper = QComboBox()
        names: tuple[tuple[str, Paper], ...] = (
            ("A4", "a4"), ("A3", "a3"), ("Letter", "letter"), ("Tabloid", "tabloid"),
        )  # fmt: skip
        for name, paper in names:
            self.paper.addItem(name, paper)
        self.paper.setCurrentIndex(max(self.paper.findData(settings.text("paper", "a4")), 0))
        self.way = QComboBox()
        self.way.addItem(self.tr("Landscape"), True)
        self.way.addItem(self.tr("Portrait"), False)
        self.way.setCurrentIndex(0 if landscape else 1)
        self.form.addRow(self.tr("&Paper"), self.paper)
        self.form.addRow(self.tr("&Lies"), self.way)
        for box in (self.paper, self.way):
            box.currentIndexChanged.connect(self.ask)
        column.addLayout(self.form)
        self.message = PlainLabel(role="quiet")
        self.message.setMinimumWidth(250)
        self.message.setMaximumWidth(290)
        column.addWidget(self.message)
        column.addStretch(1)
        self.save = QPushButton(self.tr("&Save as PDF…"))
        self.print = QPushButton(self.tr("P&rint…"))
        close = QPushButton(self.tr("&Close"))
        self.save.clicked.connect(self._save)
        self.print.clicked.connect(self._print)
        close.clicked.connect(self.reject)
        for button in (self.save, self.print, close):
            button.setAutoDefault(False)
            column.addWidget(button)
        return column

    def _pages(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.addWidget(self.view, 1)
        row = QHBoxLayout()
        row.addStretch(1)
        self.which = PlainLabel("", "quiet")
        self.which.setWordWrap(False)
        self.large = PlainLabel("", "quiet")
        self.large.setWordWrap(False)
        row.addWidget(self._button("‹", self.tr("Page before (Page Up)"), lambda: self._turn(-1)))
        row.addWidget(self.which)
        row.addWidget(self._button("›", self.tr("Next page (Page Down)"), lambda: self._turn(1)))
        row.addSpacing(24)
        view = self.view
        row.addWidget(self._button("−", self.tr("Smaller (-)"), lambda: view.zoom_to(view.zoom / STEP)))
        row.addWidget(self.large)
        row.addWidget(self._button("+", self.tr("Larger (+)"), lambda: view.zoom_to(view.zoom * STEP)))
        row.addWidget(
            self._button(self.tr("Whole page"), self.tr("Whole page (0)"), lambda: view.zoom_to(1.0))
        )
        row.addStretch(1)
        column.addLayout(row)
        view.turned.connect(self._told)
        view.zoomed.connect(self._zoomed)
        self._zoomed(view.zoom)
        return column

    def _button(self, text: str, name: str, do: Callable[[], None]) -> QToolButton:
        button = QToolButton()
        button.setText(text)
        button.setAccessibleName(name)
        button.setToolTip(name)
        button.clicked.connect(do)
        return button

    def _turn(self, step: int) -> None:
        self.view.turn_to(self.view.number + step)

    # what is shown

    @property
    def setup(self) -> Setup:
        """The paper as chosen."""
        return Setup(self.paper.currentData(), bool(self.way.currentData()))

    def ask(self, *_: object) -> None:
        """Make the pages anew, soon."""
        self._soon.ask()

    def refresh(self) -> None:
        """Make the pages anew, now."""
        try:
            document = self.made()
        except Refusal as refusal:
            self.message.setText(why_refused(refusal))
            self._enable(False)
            return
        self._enable(True)
        self.view.show_document(document)
        self.message.setText(self._remark(len(document.pages)))

    def _remark(self, count: int) -> str:
        """What is to be known before so many pages are printed."""
        if count <= MANY_PAGES:
            return ""
        said = self.tr("These are {0} pages. A smaller scale or a larger paper takes fewer.")
        return said.format(figure(count, ","))

    def made(self) -> Document:
        """The document as the options want it; raises ``Refusal``."""
        return self._make(self.setup)

    def _enable(self, on: bool) -> None:
        self.save.setEnabled(on)
        self.print.setEnabled(on)

    def _told(self, number: int) -> None:
        count = len(self.view.document.pages) if self.view.document is not None else 0
        self.which.setText(self.tr("{0} of {1}").format(number + 1, count))

    def _zoomed(self, zoom: float) -> None:
        self.large.setText(self.tr("{0} %").format(round(100 * zoom)))

    # writing

    def _wanted(self) -> Document | None:
        """The document, after a question where it has very many pages."""
        self._soon.stop()
        self.refresh()
        document = self.view.document
        if document is None or not self.save.isEnabled():
            return None
        count = len(document.pages)
        if count > MANY_PAGES:
            question = self.tr("These are {0} pages. Go on?").format(figure(count, ","))
            if QMessageBox.question(self, self.windowTitle(), question) != QMessageBox.StandardButton.Yes:
                return None
        settings.keep("paper", self.paper.currentData())
        return document

    def _save(self) -> None:
        document = self._wanted()
        if document is None:
            return
        name, _ = QFileDialog.getSaveFileName(
            self, self.tr("Save as PDF"), f"{_plain(document.title)}.pdf", self.tr("PDF (*.pdf)")
        )
        if name:
            path = Path(name if name.lower().endswith(".pdf") else f"{name}.pdf")
            self._do(lambda: save(self, document, path), self.tr("Saved as {0}.").format(path.name))

    def _print(self) -> None:
        document = self._wanted()
        if document is not None:
            self._do(lambda: send(self, document), self.tr("Sent to the printer."))

    def _do(self, do: Callable[[], bool], done: str) -> None:
        """Do something and say how it went; troubles in a sentence."""
        try:
            well = do()
        except CannotWrite as error:
            tell(self, self.windowTitle(), why_refused(error))
            return
        self.message.setText(done if well else self.tr("Given up; nothing was written."))


def _plain(title: str) -> str:
    """A title as the name of a file."""
    return "".join(c if c.isalnum() or c in " -_" else "-" for c in title).strip()[:80] or "pages"
