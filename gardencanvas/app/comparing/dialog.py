"""Two layouts compared: a table sorted by what matters to the grower, and plots of their weeks."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app import settings
from gardencanvas.app.comparing.plot import Line, Plot
from gardencanvas.app.filing import tell
from gardencanvas.app.labels import PlainLabel, as_plain
from gardencanvas.app.number_fields import WholeField
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.palette import palette
from gardencanvas.files import CannotWrite, write_whole
from gardencanvas.measures.codes import Code, Through
from gardencanvas.measures.comparison import Comparison, Measure, Measured, compare
from gardencanvas.measures.importance import WEIGHTS, by_importance, weight
from gardencanvas.paper.document import Document, Setup
from gardencanvas.paper.listing import Column, Group, listing
from gardencanvas.paper.listing import Line as Row
from gardencanvas.words import comparing as words
from gardencanvas.words.comparing_csv import comparison_csv
from gardencanvas.words.plain import Measure as Units
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_PLOTS = (Through.HARVEST, Through.COVER, Through.WATER)


class ComparisonDialog(QDialog):
    """What each of two layouts would give, cost and risk; weights only put the rows in order."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window, self._session = window, window.session
        self._units = Units(window.units)
        self._found: Comparison | None = None
        self._weights: dict[Code, int] = {
            code: settings.number(f"weight {code}", weight(code, WEIGHTS)) for code in Code
        }
        self.setWindowTitle(self.tr("Two layouts side by side in numbers"))
        self.resize(1240, 700)
        self._soon = Soon(self, self.refresh, 30)
        self._sort_soon = Soon(self, self._show, 600)  # the number is still being typed or clicked
        column = QVBoxLayout(self)
        column.addLayout(self._top())
        self.said = PlainLabel("", "quiet")
        column.addWidget(self.said)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.table = self._made_table()
        self.tabs.addTab(self.table, self.tr("Table"))
        self.tabs.addTab(self._plots(), self.tr("Weeks"))
        column.addWidget(self.tabs, 1)
        column.addLayout(self._bottom())
        self._session.changed.connect(self._changed)
        self._changed()

    # parts

    def _top(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.first, self.second, self.bed = QComboBox(), QComboBox(), QComboBox()
        for text, box in (
            (self.tr("Compare"), self.first), (self.tr("with"), self.second), (self.tr("of"), self.bed),
        ):  # fmt: skip
            label = PlainLabel(text, "quiet")
            label.setWordWrap(False)
            row.addWidget(label)
            box.setAccessibleName(text)
            box.setMinimumContentsLength(14)
            row.addWidget(box)
        row.addStretch(1)
        self._fill_layouts()
        for box in (self.first, self.second):
            box.currentIndexChanged.connect(self._soon.ask)
        self.bed.currentIndexChanged.connect(self._show)
        return row

    def _fill_layouts(self) -> None:
        for box in (self.first, self.second):
            box.clear()
            for layout in self._session.garden.layouts:
                box.addItem(f"{layout.name}, {layout.year}", layout.id)
        self.first.setCurrentIndex(self.first.findData(self._session.layout_id))
        others = [x.id for x in self._session.garden.layouts if x.id != self._session.layout_id]
        self.second.setCurrentIndex(self.second.findData(others[0] if others else self._session.layout_id))

    def _made_table(self) -> QTableWidget:
        table = QTableWidget(0, 7)
        table.setAccessibleName(self.tr("The comparison"))
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setShowGrid(False)
        table.verticalHeader().hide()
        header = table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for column in range(7):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(5, QHeaderView.ResizeMode.Stretch)
        header.setMinimumSectionSize(60)
        return table

    def _plots(self) -> QWidget:
        box = QWidget()
        column = QVBoxLayout(box)
        self.plots = {code: Plot(words.label(code)) for code in _PLOTS}
        for plot in self.plots.values():
            column.addWidget(plot, 1)
        return box

    def _bottom(self) -> QHBoxLayout:
        row = QHBoxLayout()
        hint = self.tr(
            "Hover over a row to read what it means. “Matters” only puts the rows in order; 0 hides one."
        )
        row.addWidget(PlainLabel(hint, "quiet"), 1)
        for text, do in (
            (self.tr("&Table…"), self.save_table), (self.tr("&Print…"), self.print_pages),
            (self.tr("&Close"), self.reject),
        ):  # fmt: skip
            button = QPushButton(text)
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, do=do: do())
            row.addWidget(button)
        return row

    # reckoning

    def _changed(self, *_: object) -> None:
        self.said.setText(self.tr("Reckoning…"))
        self._soon.ask()

    def refresh(self) -> None:
        """Reckon anew what the two layouts give."""
        a, b = self.first.currentData(), self.second.currentData()
        known = {x.id for x in self._session.garden.layouts}
        if a not in known or b not in known:
            self._fill_layouts()
            return
        lots = self._session.library.own.lots
        self._found = compare(self._session.garden, a, b, lots=lots)
        self._fill_beds()
        self._show()

    def _fill_beds(self) -> None:
        found = self._found
        if found is None:
            return
        chosen = self.bed.currentData()
        garden = self._session.garden
        names = {bed.id: bed.name for m in (found.a, found.b) for bed in garden.layout(m.layout).beds}
        self.bed.blockSignals(True)
        self.bed.clear()
        self.bed.addItem(self.tr("the whole garden"), None)
        for bed in found.beds:
            self.bed.addItem(names.get(bed, bed), bed)
        self.bed.setCurrentIndex(max(self.bed.findData(chosen), 0))
        self.bed.blockSignals(False)

    def _names(self) -> tuple[str, str]:
        return self.first.currentText(), self.second.currentText()

    def rows(self) -> tuple[Measure, ...]:
        """The measures shown, in the order of what matters."""
        if self._found is None:
            return ()
        bed = self.bed.currentData()
        some = self._found.measures if bed is None else self._found.beds.get(bed, ())
        return by_importance(some, self._weights)

    def _show(self, *_: object) -> None:
        found = self._found
        if found is None:
            return
        a, b = self._names()
        self.table.setHorizontalHeaderLabels(
            [self.tr("Measure"), a, b, self.tr("Grown apart"), self.tr("Difference"), self.tr("Better"),
             self.tr("Matters")]
        )  # fmt: skip
        rows = self.rows()
        self.table.setRowCount(len(rows))
        for number, measure in enumerate(rows):
            self._fill_row(number, measure, a, b)
        same = found.a.layout == found.b.layout
        self.said.setText(
            self.tr("A layout against itself differs in nothing: choose another to compare it with.")
            if same
            else self.tr("Estimates are rounded and shown with the range that holds 8 times in 10.")
        )
        self._show_plots(found)

    def _fill_row(self, number: int, measure: Measure, a: str, b: str) -> None:
        cells = (
            words.label(measure.code),
            *(words.shown(e, measure.unit, self._units) for e in (measure.a, measure.b, measure.apart)),
            words.changed(measure.difference, measure.unit, self._units),
            words.outcome(measure, a, b),
        )
        why = words.explained(measure.code)
        for column, text in enumerate(cells):
            item = QTableWidgetItem(text)
            item.setToolTip(as_plain(why))
            item.setData(Qt.ItemDataRole.AccessibleDescriptionRole, why)
            self.table.setItem(number, column, item)
        spin = WholeField()
        spin.setRange(0, 3)
        spin.setValue(weight(measure.code, self._weights))
        spin.setAccessibleName(self.tr("How much it matters: {0}").format(words.label(measure.code)))
        spin.setFrame(False)
        code = Code(measure.code)
        spin.valueChanged.connect(lambda value, code=code: self._weigh(code, value))
        self.table.setCellWidget(number, 6, spin)

    def _weigh(self, code: Code, value: int) -> None:
        self._weights[code] = value
        settings.keep(f"weight {code}", value)
        self._sort_soon.ask()

    def _show_plots(self, found: Comparison) -> None:
        colours = palette(self._window.dark)
        for code, plot in self.plots.items():
            lines = tuple(
                _line(m, code, name) for m, name in zip((found.a, found.b), self._names(), strict=True)
            )
            unit = next((s.unit for s in found.a.series if s.code == code), "")
            plot.show_lines(unit, lines, colours)

    # files and paper

    def save_table(self) -> None:
        """Write the whole comparison as a table."""
        if self._found is None:
            return
        name, _ = QFileDialog.getSaveFileName(
            self, self.tr("Save the comparison"), "comparison.csv", self.tr("Table (*.csv)")
        )
        if not name:
            return
        path = Path(name if name.lower().endswith(".csv") else f"{name}.csv")
        text = comparison_csv(self._found, self._session.garden, self._session.catalogue)
        try:
            write_whole(path, text.encode("utf-8"))
        except CannotWrite as error:
            tell(self, self.windowTitle(), why_refused(error))
            return
        self.said.setText(self.tr("Saved as {0}.").format(path.name))

    def print_pages(self) -> None:
        """Show the table as pages."""
        from gardencanvas.app.printing.dialog import PrintDialog  # not needed to start

        PrintDialog(self._window, self.windowTitle(), self.document, landscape=True).exec()

    def document(self, setup: Setup) -> Document:
        """The table as pages."""
        a, b = self._names()
        lines = tuple(
            Row((
                words.label(m.code), *(words.shown(e, m.unit, self._units) for e in (m.a, m.b, m.apart)),
                words.changed(m.difference, m.unit, self._units), words.outcome(m, a, b),
            ))
            for m in self.rows()
        )  # fmt: skip
        shares = ((self.tr("Measure"), 26), (a, 17), (b, 17), (self.tr("Grown apart"), 17),
                  (self.tr("Difference"), 17), (self.tr("Better"), 24))  # fmt: skip
        columns = tuple(Column(name, share) for name, share in shares)
        title = self.tr("{0} and {1}").format(a, b)
        return listing(title, f"{self._session.garden.name} · {self.bed.currentText()}", columns,
                       [Group("", lines)], setup)  # fmt: skip


def _line(measured: Measured, code: Through, name: str) -> Line:
    """The weeks of one layout: harvests of all crops in one sum."""
    some = [s for s in measured.series if s.code == code]
    if not some:
        return Line(name, (), ())
    sums = [
        tuple(map(sum, zip(*(getattr(s, kind) or s.values for s in some), strict=True)))
        for kind in ("values", "low", "high")
    ]
    ranged = any(s.low for s in some)
    return Line(name, some[0].weeks, sums[0], *(sums[1:] if ranged else ((), ())))
