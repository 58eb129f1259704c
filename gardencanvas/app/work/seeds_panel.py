"""What to order and raise for the shown layout, as a table."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFileDialog,
    QHBoxLayout,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.filing import tell
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.soon import Soon
from gardencanvas.files import CannotWrite, write_whole
from gardencanvas.measures.csv_writing import csv_text
from gardencanvas.measures.jobs import jobs
from gardencanvas.measures.nursery import nursery_weeks
from gardencanvas.measures.seed_order import SeedLine, seed_order
from gardencanvas.paper.document import Document, Setup
from gardencanvas.paper.listing import Column, Group, Line, listing
from gardencanvas.words.language import figure
from gardencanvas.words.plain import counted
from gardencanvas.words.refusals import why_refused
from gardencanvas.words.seeds import (
    headings,
    seeds_table,
    shown_row,
    sow_why,
    tray_week,
    trays_told,
    trays_why,
)

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_SORT = Qt.ItemDataRole.UserRole


class SeedsPanel(QWidget):
    """Plants wanted, seeds to sow and to order, what the tin covers; trays week by week below."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__()
        self._window, self._session = window, window.session
        self._lines: tuple[SeedLine, ...] = ()
        self._soon = Soon(self, self.refresh)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        top = QHBoxLayout()
        self.sum = PlainLabel("", "quiet")
        top.addWidget(self.sum, 1)
        for text, tip, do in (
            (self.tr("Table…"), self.tr("Save as a table (.csv)"), self.save_table),
            (self.tr("Print…"), self.tr("See, save or print the order"), self.print_list),
        ):
            button = QPushButton(text)
            button.setToolTip(tip)
            button.clicked.connect(do)
            top.addWidget(button)
        column.addLayout(top)
        self._model = QStandardItemModel(0, len(headings()), self)
        self._model.setSortRole(_SORT)
        self.table = QTableView()
        self.table.setModel(self._model)
        self.table.setAccessibleName(self.tr("What to order and raise"))
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setShowGrid(False)
        self.table.setSortingEnabled(True)
        self.table.verticalHeader().hide()
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.trays = PlainLabel("", "quiet")
        self.empty = PlainLabel(self.tr("Nothing is planted yet: nothing to order."), "hint")
        column.addWidget(self.table, 1)
        column.addWidget(self.trays)
        column.addWidget(self.empty)
        for signal in (self._session.changed, self._session.layout_changed):
            signal.connect(self._changed)
        self._session.library.marked_changed.connect(self._changed)
        self._soon.ask()

    def _changed(self, *_: object) -> None:
        if self.isVisible():
            self._soon.ask()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._soon.ask()

    def refresh(self) -> None:
        """Show the order of the committed garden's layout."""
        session = self._session
        lots = session.library.own.lots
        self._lines = seed_order(session.garden, session.layout_id, lots, session.catalogue)
        self.table.setSortingEnabled(False)
        self._model.clear()
        self._model.setHorizontalHeaderLabels(list(headings()))
        numbers = seeds_table(self._lines, session.catalogue)[1:]
        for line, raw in zip(self._lines, numbers, strict=True):
            self._model.appendRow(self._row(shown_row(line, session.catalogue), raw))
        self.table.setSortingEnabled(True)
        self.table.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        self.table.resizeColumnsToContents()
        for column in (5, 6):
            self._model.horizontalHeaderItem(column).setToolTip(sow_why())
        self._sum_up()
        self.table.setVisible(bool(self._lines))
        self.empty.setVisible(not self._lines)

    def _row(self, shown: tuple[str, ...], raw: object) -> list[QStandardItem]:
        row = []
        for number, (text, value) in enumerate(zip(shown, raw, strict=True)):  # type: ignore[call-overload]
            item = QStandardItem(text)
            item.setData(text if number in (0, len(shown) - 1) else float(value or 0), _SORT)
            if number == len(shown) - 1:
                item.setData(value, _SORT)
            if number not in (0, len(shown) - 1):
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            row.append(item)
        return row

    def _sum_up(self) -> None:
        session = self._session
        plants = sum(line.plants for line in self._lines)
        costs = [line.cost for line in self._lines if line.order]
        said = [
            counted(len(self._lines), self.tr("crop or variety"), self.tr("crops and varieties")),
            counted(plants, self.tr("plant"), self.tr("plants")),
        ]
        if any(c is not None for c in costs):
            known = sum(c for c in costs if c is not None)
            missing = sum(c is None for c in costs)
            more = self.tr(", {0} not known").format(missing) if missing else ""
            said.append(self.tr("seed for {0}{1}").format(figure(known, ",.2f"), more))
        self.sum.setText(" · ".join(said))
        lots = session.library.own.lots
        weeks = nursery_weeks(
            jobs(session.garden, session.layout_id, session.report, session.catalogue, lots)
        )
        if weeks:
            self.trays.setText(trays_told(weeks))
            self.trays.setToolTip("\n".join([trays_why(), "", *(tray_week(w) for w in weeks)]))
        self.trays.setVisible(bool(weeks))

    def save_table(self) -> None:
        """Write the order as a table."""
        name, _ = QFileDialog.getSaveFileName(
            self, self.tr("Save the order as a table"), f"seeds-{self._session.layout.year}.csv",
            self.tr("Table (*.csv)"),
        )  # fmt: skip
        if not name:
            return
        path = Path(name if name.lower().endswith(".csv") else f"{name}.csv")
        try:
            write_whole(path, csv_text(seeds_table(self._lines, self._session.catalogue)).encode("utf-8"))
        except CannotWrite as error:
            tell(self, self.tr("Seeds and plants"), why_refused(error))
            return
        self._window.say(self.tr("Saved as {0}.").format(path.name))

    def print_list(self) -> None:
        """Show the order as pages."""
        from gardencanvas.app.printing.dialog import PrintDialog  # not needed to start

        PrintDialog(self._window, self.tr("Seeds and plants"), self.document, landscape=True).exec()

    def document(self, setup: Setup) -> Document:
        """The order as pages, and the trays week by week."""
        session = self._session
        shares = (16, 6, 6, 9, 10, 8, 7, 9, 9, 8, 7, 12)
        names = headings()
        columns = tuple(
            Column(name, share, "left" if i in (0, len(names) - 1) else "right")
            for i, (name, share) in enumerate(zip(names, shares, strict=True))
        )
        lines = tuple(Line(shown_row(line, session.catalogue), tick=False) for line in self._lines)
        title = self.tr("Seeds and plants for {0}").format(session.layout.year)
        return listing(
            title, f"{session.garden.name} · {session.layout.name}", columns, [Group("", lines)], setup
        )
