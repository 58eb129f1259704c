"""All findings of the layout, worst first; a click goes to the place and the date."""

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHBoxLayout,
    QHeaderView,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel, verdict_word
from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import span

_ID = Qt.ItemDataRole.UserRole


class FindingsPanel(QWidget):
    """A table of verdict, when and why."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._soon = Soon(self, self.rebuild)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        top = QHBoxLayout()
        self.kind = QComboBox()
        self.kind.setAccessibleName(self.tr("Kind of finding"))
        self.kind.addItem(self.tr("all kinds"), None)
        for kind in Kind:
            self.kind.addItem(str(kind), kind)
        self.kind.activated.connect(self._soon.ask)
        self.least = QComboBox()
        self.least.setAccessibleName(self.tr("Least verdict shown"))
        self.least.addItem(self.tr("strains and clashes"), Verdict.STRAINS)
        self.least.addItem(self.tr("clashes only"), Verdict.CLASHES)
        self.least.addItem(self.tr("everything, gains too"), Verdict.CLEAR)
        self.least.activated.connect(self._soon.ask)
        self.count = PlainLabel("", "quiet")
        self.count.setWordWrap(False)
        for widget in (self.kind, self.least, self.count):
            top.addWidget(widget)
        top.addStretch(1)
        column.addLayout(top)
        self._model = QStandardItemModel(0, 3, self)
        self._model.setHorizontalHeaderLabels([self.tr("Verdict"), self.tr("When"), self.tr("Why")])
        self.table = QTableView()
        self.table.setModel(self._model)
        self.table.setAccessibleName(self.tr("Findings, worst first"))
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setShowGrid(False)
        self.table.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.table.setWordWrap(False)
        self.table.verticalHeader().hide()
        header = self.table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(2, QHeaderView.ResizeMode.Stretch)
        self.table.clicked.connect(self._go)
        self.table.activated.connect(self._go)
        self.empty = PlainLabel(self.tr("Nothing to worry about: no planting strains or clashes."), "hint")
        column.addWidget(self.table)
        column.addWidget(self.empty)
        session.changed.connect(self._soon.ask)
        session.layout_changed.connect(self._soon.ask)
        self.rebuild()

    def rebuild(self) -> None:
        """Show the committed garden's findings."""
        session = self._session
        least, kind = self.least.currentData(), self.kind.currentData()
        found = [f for f in session.report.findings if f.verdict >= least and kind in (None, f.kind)]
        self._model.removeRows(0, self._model.rowCount())
        for finding in found[:500]:
            said = reason(finding, session.garden, session.layout_id, session.catalogue)
            row = [
                QStandardItem(t)
                for t in (verdict_word(finding.verdict), span(finding.first, finding.last), said)
            ]
            row[0].setData(finding.id, _ID)
            row[2].setToolTip(said.replace("<", "‹"))
            self._model.appendRow(row)
        self.count.setText(self.tr("{0} findings").format(len(found)))
        self.table.setVisible(bool(found))
        self.empty.setVisible(not found)

    def go_next(self, step: int = 1) -> None:
        """Walk to the next or previous finding."""
        rows = self._model.rowCount()
        if rows:
            at = (self.table.currentIndex().row() + step) % rows
            self.table.selectRow(at)
            self._go(self._model.index(at, 0))

    def _go(self, index: QModelIndex) -> None:
        finding_id = index.siblingAtColumn(0).data(_ID)
        finding = next((f for f in self._session.report.findings if f.id == finding_id), None)
        if finding is not None:
            self._session.show_date(finding.first)
            self._session.select(finding.plantings)
            self._session.pointed_at.emit(finding.place)
