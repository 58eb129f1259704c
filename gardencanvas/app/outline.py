"""The outline: beds and plantings as a tree, with verdicts in words.

It is the accessible face of the canvas: the same selection, the same commands.
"""

from PySide6.QtCore import (
    QItemSelection,
    QItemSelectionModel,
    QModelIndex,
    QPoint,
    QSize,
    QSortFilterProxyModel,
    Qt,
    Signal,
)
from PySide6.QtGui import QResizeEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QLineEdit, QTreeView, QVBoxLayout, QWidget

from gardencanvas.app.labels import verdict_word
from gardencanvas.app.session import Session
from gardencanvas.app.shown_and_locked import ShownAndLocked
from gardencanvas.app.soon import Soon
from gardencanvas.app.tin.marks import mark_icon
from gardencanvas.canvas.naming import structure_name
from gardencanvas.fit.report import FitReport, PlantingFit
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import counted, planting_name, span

_ID = Qt.ItemDataRole.UserRole


class Outline(QWidget):
    """A filtered tree that shares its selection with the canvas."""

    context_menu = Signal(QPoint, object)  # global place, frozenset of ids

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._following = False
        self._items: dict[str, QStandardItem] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        self.filter = QLineEdit()
        self.filter.setPlaceholderText(self.tr("name or verdict…"))
        self.filter.setClearButtonEnabled(True)
        self.filter.setAccessibleName(self.tr("Filter the outline"))
        self.filter.textChanged.connect(self._filtered)
        self._model = QStandardItemModel(0, 2, self)
        self._model.setHorizontalHeaderLabels([self.tr("Bed, planting"), self.tr("Verdict")])
        self._shown = QSortFilterProxyModel(self)
        self._shown.setSourceModel(self._model)
        self._shown.setRecursiveFilteringEnabled(True)
        self._shown.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self._shown.setFilterKeyColumn(-1)
        self._make_tree()
        self.parts = ShownAndLocked(session)
        column.addWidget(self.filter)
        column.addWidget(self.tree, 1)
        column.addWidget(self.parts)
        self._soon = Soon(self, self.rebuild)
        session.changed.connect(self._soon.ask)
        session.layout_changed.connect(self._soon.ask)
        session.hidden_changed.connect(self._soon.ask)
        session.previewed.connect(self._previewed)
        session.selection_changed.connect(self._follow)
        self.rebuild()

    def _make_tree(self) -> None:
        self.tree = QTreeView()
        self.tree.setModel(self._shown)
        self.tree.setAccessibleName(self.tr("Outline of beds and plantings"))
        self.tree.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.tree.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.tree.setUniformRowHeights(True)
        self.tree.setIconSize(QSize(13, 13))  # no higher than the words
        self.tree.setTextElideMode(Qt.TextElideMode.ElideRight)
        header = self.tree.header()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        self.tree.selectionModel().selectionChanged.connect(self._chosen)
        self.tree.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.tree.customContextMenuRequested.connect(self._ask_menu)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.parts.fit_into(self.height())

    def rebuild(self) -> None:
        """Show the layout as it is now."""
        session = self._session
        report = session.report
        self._following = True
        self._items.clear()
        self._model.removeRows(0, self._model.rowCount())
        layout = session.layout
        parents: dict[str | None, QStandardItem] = {}
        for bed in layout.beds:
            parents[bed.id] = self._row(self._model.invisibleRootItem(), bed.id, bed.name, "")
        bare: QStandardItem | None = None
        for planting in layout.plantings:
            bed = bed_of(layout, planting)
            if bed is None and bare is None:
                bare = self._row(self._model.invisibleRootItem(), "", self.tr("On bare plan"), "")
            parent = parents[bed.id] if bed is not None else bare
            if parent is not None:
                self._planting_row(parent, planting, report)
        others = [*layout.supports, *layout.covers, *layout.paths, *session.garden.fixtures]
        if others:
            parent = self._row(self._model.invisibleRootItem(), "", self.tr("Structures"), "")
            for thing in others:
                self._row(parent, thing.id, thing.name, structure_name(getattr(thing, "kind", "path")))
        self._mark(layout, session)
        for item in list(parents.values()):
            count = item.rowCount()
            item.setToolTip(counted(count, self.tr("planting"), self.tr("plantings")))
        self.tree.expandAll()
        self._following = False
        self._follow(session.selection)

    def _mark(self, layout: Layout, session: Session) -> None:
        """Mark what is hidden or locked, also in words for those who do not see the marks."""
        quiet = self.palette().placeholderText().color()
        icons = {name: mark_icon(name, quiet.name(), quiet.name()) for name in ("unseen", "lock")}
        for thing in (*layout.items(), *session.garden.fixtures):
            item, hidden = self._items.get(thing.id), session.hidden.hides(thing)
            if item is None or not (hidden or thing.locked):
                continue
            item.setIcon(icons["unseen" if hidden else "lock"])
            if hidden:
                item.setForeground(quiet)
            told = item.data(Qt.ItemDataRole.AccessibleTextRole) or item.text()
            words = self.tr("{0}, locked") if thing.locked else "{0}"
            words = words.format(told)
            item.setData(
                self.tr("{0}, hidden").format(words) if hidden else words, Qt.ItemDataRole.AccessibleTextRole
            )

    def _ask_menu(self, place: QPoint) -> None:
        """Offer the commands for what is selected here."""
        if self._session.selection:
            self.context_menu.emit(self.tree.viewport().mapToGlobal(place), self._session.selection)

    def _row(self, parent: QStandardItem, item_id: str, name: str, word: str) -> QStandardItem:
        first, second = QStandardItem(name), QStandardItem(word)
        first.setData(item_id, _ID)
        if not item_id:
            first.setFlags(Qt.ItemFlag.ItemIsEnabled)
            second.setFlags(Qt.ItemFlag.ItemIsEnabled)
        parent.appendRow([first, second])
        if item_id:
            self._items[item_id] = first
        return first

    def _planting_row(self, parent: QStandardItem, planting: Planting, report: FitReport) -> None:
        name = f"{planting_name(self._session.catalogue, planting)} × {planting.plants}"
        fit = report.plantings.get(planting.id)
        item = self._row(parent, planting.id, name, verdict_word(fit.verdict) if fit else "")
        if fit is not None:
            self._tell(item, name, fit)

    def _tell(self, item: QStandardItem, name: str, fit: PlantingFit) -> None:
        told = self.tr("{0}, {1}, harvest {2}").format(
            name, verdict_word(fit.verdict), span(fit.harvest_first, fit.harvest_last)
        )
        item.setData(told, Qt.ItemDataRole.AccessibleTextRole)
        item.setToolTip(told.replace("<", "‹"))

    def _previewed(self, report: FitReport | None) -> None:
        report = report or self._session.report
        for planting_id, fit in report.plantings.items():
            item = self._items.get(planting_id)
            if item is not None:
                word = self._model.itemFromIndex(item.index().siblingAtColumn(1))
                if word.text() != verdict_word(fit.verdict):
                    word.setText(verdict_word(fit.verdict))

    def _filtered(self, text: str) -> None:
        self._shown.setFilterFixedString(text.strip())
        self.tree.expandAll()

    def _follow(self, ids: frozenset[str]) -> None:
        if self._following:
            return
        self._following = True
        chosen = QItemSelection()
        last = QModelIndex()
        for item_id in ids:
            item = self._items.get(item_id)
            if item is not None:
                last = self._shown.mapFromSource(item.index())
                chosen.select(last, last.siblingAtColumn(1))
        flags = QItemSelectionModel.SelectionFlag
        self.tree.selectionModel().select(chosen, flags.ClearAndSelect | flags.Rows)
        if last.isValid():
            self.tree.scrollTo(last)
        self._following = False

    def _chosen(self) -> None:
        if self._following:
            return
        self._following = True
        rows = self.tree.selectionModel().selectedRows(0)
        self._session.select(i for i in (row.data(_ID) for row in rows) if i)
        self._following = False
