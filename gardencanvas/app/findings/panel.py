"""All findings of the layout, by bed, worst first; a click goes to the place and the date."""

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QSplitter,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.findings.detail import FindingDetail
from gardencanvas.app.findings.sorting import Group, by_bed
from gardencanvas.app.labels import PlainLabel, verdict_word
from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.palette import Palette
from gardencanvas.crops.spelling import folded
from gardencanvas.fit.accepted import acceptance
from gardencanvas.fit.report import Finding, Kind, Verdict
from gardencanvas.words import named
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import Measure, counted, span

_ID = Qt.ItemDataRole.UserRole
_MOST = 500  # rows listed: more are no help, and the filters find them


class FindingsPanel(QWidget):
    """A list by bed of verdict, when and what; beside it the chosen finding in full."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._measure = Measure()
        self._soon = Soon(self, self.rebuild)
        self._findings: dict[str, Finding] = {}
        self._chosen: str | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.addLayout(self._filters())
        self.detail = FindingDetail(session)
        self.list = self._made_list()
        self.empty = PlainLabel(self.tr("Nothing to worry about: no planting strains or clashes."), "hint")
        self.halves = QSplitter(Qt.Orientation.Horizontal)
        self.halves.addWidget(self.list)
        self.halves.addWidget(self.detail)
        self.halves.setStretchFactor(0, 3)
        self.halves.setStretchFactor(1, 2)
        self.halves.setChildrenCollapsible(False)
        self.detail.setMinimumWidth(300)
        self.halves.setSizes([760, 460])
        column.addWidget(self.halves, 1)
        column.addWidget(self.empty)
        session.changed.connect(self._soon.ask)
        session.layout_changed.connect(self._soon.ask)
        self.rebuild()

    # parts

    def _filters(self) -> QHBoxLayout:
        top = QHBoxLayout()
        self.kind = QComboBox()
        self.kind.setAccessibleName(self.tr("Kind of finding"))
        self.kind.addItem(self.tr("all kinds"), None)
        for kind in Kind:
            self.kind.addItem(named.kind(kind), kind)
        self.least = QComboBox()
        self.least.setAccessibleName(self.tr("Least verdict shown"))
        self.least.addItem(self.tr("strains and clashes"), Verdict.STRAINS)
        self.least.addItem(self.tr("clashes only"), Verdict.CLASHES)
        self.least.addItem(self.tr("everything, gains too"), Verdict.CLEAR)
        self.words = QLineEdit()
        self.words.setPlaceholderText(self.tr("crop or word"))
        self.words.setAccessibleName(self.tr("Words a finding must hold"))
        self.words.setClearButtonEnabled(True)
        self.words.setMaximumWidth(200)
        self.words.textChanged.connect(self._soon.ask)
        self.count = PlainLabel("", "quiet")
        self.count.setWordWrap(False)
        for box in (self.kind, self.least):
            box.activated.connect(self._soon.ask)
        for widget in (self.kind, self.least, self.words, self.count):
            top.addWidget(widget)
        top.addStretch(1)
        return top

    def _made_list(self) -> QTreeView:
        self._model = QStandardItemModel(0, 3, self)
        self._model.setHorizontalHeaderLabels([self.tr("Verdict"), self.tr("When"), self.tr("What")])
        tree = QTreeView()
        tree.setModel(self._model)
        tree.setAccessibleName(self.tr("Findings by bed, worst first"))
        tree.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        tree.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        tree.setTextElideMode(Qt.TextElideMode.ElideRight)
        tree.setUniformRowHeights(True)
        tree.setIndentation(14)
        tree.header().setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        tree.header().setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        tree.header().setSectionResizeMode(2, QHeaderView.ResizeMode.Stretch)
        tree.header().setSectionsMovable(False)
        tree.clicked.connect(self._go)
        tree.activated.connect(self._go)
        tree.selectionModel().currentChanged.connect(self._read)
        return tree

    def set_look(self, measure: Measure, _colours: Palette) -> None:
        """Use these units."""
        self._measure = measure
        self.detail.set_measure(measure)
        self._soon.ask()

    # the list

    def rebuild(self) -> None:
        """Show the committed garden's findings."""
        session = self._session
        chosen = self._chosen
        told = {f.id: self._said(f) for f in session.report.findings if self._wanted(f)}
        asked = folded(self.words.text()).split()
        found = [
            f for f in session.report.findings
            if f.id in told and all(word in folded(told[f.id]) for word in asked)
        ]  # fmt: skip
        self._findings = {f.id: f for f in found}
        self._model.removeRows(0, self._model.rowCount())
        for group in by_bed(found[:_MOST], session.layout):
            self._add(group, told)
        self.list.expandAll()
        for row in range(self._model.rowCount()):
            self.list.setFirstColumnSpanned(row, QModelIndex(), True)
        self.count.setText(counted(len(found), self.tr("finding"), self.tr("findings")))
        self.halves.setVisible(bool(found))
        self.empty.setVisible(not found)
        self._choose(chosen if chosen in self._findings else None)

    def _wanted(self, finding: Finding) -> bool:
        return finding.verdict >= self.least.currentData() and self.kind.currentData() in (None, finding.kind)

    def _said(self, finding: Finding) -> str:
        session = self._session
        return reason(finding, session.garden, session.layout_id, session.catalogue, self._measure)

    def _add(self, group: Group, told: dict[str, str]) -> None:
        name = group.bed.name if group.bed is not None else self.tr("On bare plan")
        head = QStandardItem(f"{name} ({len(group.findings)})")
        head.setFlags(Qt.ItemFlag.ItemIsEnabled)
        font = head.font()
        font.setBold(True)
        head.setFont(font)
        self._model.appendRow([head, QStandardItem(), QStandardItem()])
        for finding in group.findings:
            accepted = acceptance(finding, self._session.layout)
            said = told[finding.id]
            word = verdict_word(finding.verdict)
            if accepted is not None:
                word = self.tr("{0}, lived with").format(word)
                said = f"{accepted.note} – {said}" if accepted.note else said
            row = [QStandardItem(t) for t in (word, span(finding.first, finding.last), said)]
            row[0].setData(finding.id, _ID)
            row[0].setData(
                f"{word}, {span(finding.first, finding.last)}: {said}", Qt.ItemDataRole.AccessibleTextRole
            )
            row[2].setToolTip(said.replace("<", "‹"))
            if accepted is not None:
                for item in row:
                    item.setForeground(self.palette().placeholderText())
            head.appendRow(row)

    # choosing

    def _rows(self) -> list[QModelIndex]:
        """The rows of findings, in the order they are listed."""
        heads = [self._model.item(i) for i in range(self._model.rowCount())]
        return [head.child(j, 0).index() for head in heads for j in range(head.rowCount())]

    def _choose(self, finding_id: str | None) -> None:
        """Show a finding in full without going to it; None shows none."""
        index = next((i for i in self._rows() if i.data(_ID) == finding_id), None)
        if index is not None:
            self.list.setCurrentIndex(index)
        self._chosen = finding_id
        self.detail.show_finding(self._findings.get(finding_id) if finding_id is not None else None)

    def _read(self, index: QModelIndex) -> None:
        finding_id = index.siblingAtColumn(0).data(_ID)
        if finding_id is not None and finding_id != self._chosen:
            self._chosen = finding_id
            self.detail.show_finding(self._findings.get(finding_id))

    def go_next(self, step: int = 1) -> None:
        """Walk to the next or previous finding."""
        if self._soon.isActive():  # F8 right after an edit means the findings of now
            self._soon.stop()
            self.rebuild()
        rows = self._rows()
        if rows:
            here = next((i for i, r in enumerate(rows) if r.data(_ID) == self._chosen), None)
            at = (here + step) % len(rows) if here is not None else (0 if step > 0 else len(rows) - 1)
            self.list.setCurrentIndex(rows[at])
            self._go(rows[at])

    def _go(self, index: QModelIndex) -> None:
        finding = self._findings.get(index.siblingAtColumn(0).data(_ID) or "")
        if finding is not None:
            self._session.show_date(finding.first)
            self._session.select(finding.plantings)
            self._session.pointed_at.emit(finding.place)
