"""What of the plan is shown and what is locked, sort by sort, as boxes to tick under the outline."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app import settings
from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.app.tin.marks import mark_icon
from gardencanvas.garden import laying_under, sorts
from gardencanvas.garden.sorts import Sort

if TYPE_CHECKING:
    from gardencanvas.garden.garden import Item

_NAME, _SHOWN, _LOCKED = range(3)
_CHECKED, _PARTLY, _OFF = (
    Qt.CheckState.Checked,
    Qt.CheckState.PartiallyChecked,
    Qt.CheckState.Unchecked,
)
_HIGH = 23
_KEY = "shown and locked"
_ROOM_PX = 460  # height of the outline that has room for both


class ShownAndLocked(QWidget):
    """A row for each sort of thing, and one for the background picture; it can be folded."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        self.fold = QToolButton()
        self.fold.setText(self.tr("Shown and locked"))
        self.fold.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.fold.setCheckable(True)
        self.fold.setProperty("role", "fold")
        self.fold.setChecked(settings.text(_KEY, "") != "folded")
        self.fold.toggled.connect(self._unfold)
        self.fold.clicked.connect(self._chosen)
        column.addWidget(self.fold)
        self.table = QTableWidget(len(Sort) + 1, 3)
        self.table.setAccessibleName(self.tr("What is shown and what is locked on the plan"))
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.table.setShowGrid(False)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setDefaultSectionSize(_HIGH)
        self.table.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.table.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(_NAME, QHeaderView.ResizeMode.Stretch)
        for narrow in (_SHOWN, _LOCKED):
            header.setSectionResizeMode(narrow, QHeaderView.ResizeMode.Fixed)
            header.resizeSection(narrow, 30)
        header.setFixedHeight(_HIGH)
        self.table.setFixedHeight(_HIGH * (self.table.rowCount() + 1) + 2)
        self.table.itemChanged.connect(self._ticked)
        column.addWidget(self.table)
        self._soon = Soon(self, self.refresh)
        for signal in (session.changed, session.layout_changed, session.hidden_changed):
            signal.connect(self._soon.ask)
        self._unfold(self.fold.isChecked())
        self.refresh()

    def _names(self) -> dict[Sort, str]:
        return {
            Sort.PLANTINGS: self.tr("Plantings"),
            Sort.COVERS: self.tr("Covers"),
            Sort.SUPPORTS: self.tr("Supports"),
            Sort.FIXTURES: self.tr("Fixtures"),
            Sort.BEDS: self.tr("Beds"),
            Sort.PATHS: self.tr("Paths"),
        }

    def refresh(self) -> None:
        """Show how things stand."""
        session, names = self._session, self._names()
        self.table.blockSignals(True)
        self._header()
        for row, sort in enumerate(Sort):
            of_it = sorts.things(session.garden, session.layout_id, sort)
            name = self.tr("{0} ({1})").format(names[sort], len(of_it))
            self._row(row, names[sort], name, self._shown(sort, of_it), self._lock(of_it), on=bool(of_it))
        backdrop = session.garden.backdrop
        name = self.tr("Background picture")
        shown = _CHECKED if backdrop is None or backdrop.shown else _OFF
        locked = _CHECKED if backdrop is not None and backdrop.locked else _OFF
        self._row(len(Sort), name, self.tr("Background"), shown, locked, on=backdrop is not None)
        self.table.blockSignals(False)

    def _shown(self, sort: Sort, of_it: "tuple[Item, ...]") -> Qt.CheckState:
        hidden = self._session.hidden
        if sort in hidden.sorts:
            return _OFF
        return _PARTLY if any(item.id in hidden.ids for item in of_it) else _CHECKED

    def _lock(self, of_it: "tuple[Item, ...]") -> Qt.CheckState:
        locked = sum(item.locked for item in of_it)
        if locked == 0:
            return _OFF
        return _CHECKED if locked == len(of_it) else _PARTLY

    def _header(self) -> None:
        colour = self.palette().windowText().color().name()
        titles = ((_NAME, ""), (_SHOWN, self.tr("Shown")), (_LOCKED, self.tr("Locked")))
        for column, title in titles:
            head = QTableWidgetItem()
            head.setToolTip(title)
            head.setData(Qt.ItemDataRole.AccessibleTextRole, title)
            if title:
                head.setIcon(mark_icon("seen" if column == _SHOWN else "lock", colour, colour))
            self.table.setHorizontalHeaderItem(column, head)

    def _row(
        self, row: int, said: str, name: str, shown: Qt.CheckState, locked: Qt.CheckState, *, on: bool
    ) -> None:
        first = QTableWidgetItem(name)
        first.setFlags(Qt.ItemFlag.ItemIsEnabled if on else Qt.ItemFlag.NoItemFlags)
        if not on:
            first.setForeground(self.palette().placeholderText())
        self.table.setItem(row, _NAME, first)
        for column, state, told in (
            (_SHOWN, shown, self.tr("{0}: shown")),
            (_LOCKED, locked, self.tr("{0}: locked")),
        ):
            box = QTableWidgetItem()
            if on:
                box.setCheckState(state)
            box.setData(Qt.ItemDataRole.AccessibleTextRole, told.format(said))
            box.setToolTip(told.format(said))
            flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsUserCheckable
            box.setFlags(flags if on else Qt.ItemFlag.NoItemFlags)
            self.table.setItem(row, column, box)

    # what is ticked

    def _ticked(self, box: QTableWidgetItem) -> None:
        on = box.checkState() is _CHECKED
        if box.row() == len(Sort):
            self._tick_backdrop(on, locks=box.column() == _LOCKED)
        elif box.column() == _SHOWN:
            self._show(list(Sort)[box.row()], on)
        elif box.column() == _LOCKED:
            self._tick_lock(list(Sort)[box.row()], on)

    def _show(self, sort: Sort, on: bool) -> None:
        session = self._session
        of_it = sorts.things(session.garden, session.layout_id, sort)
        hidden = session.hidden.showing(of_it) if on else session.hidden.with_sort(sort, on=True)
        session.hide(hidden.with_sort(sort, on=not on))

    def _tick_lock(self, sort: Sort, on: bool) -> None:
        session = self._session
        ids = [item.id for item in sorts.things(session.garden, session.layout_id, sort)]
        text = self.tr("Lock all: {0}") if on else self.tr("Unlock all: {0}")
        after = sorts.locked(session.garden, session.layout_id, ids, on=on)
        session.propose(after, text.format(self._names()[sort]))

    def _tick_backdrop(self, on: bool, *, locks: bool) -> None:
        session = self._session
        if session.garden.backdrop is None:
            return
        if locks:
            text = self.tr("Lock the background picture") if on else self.tr("Unlock the background picture")
            session.propose(laying_under.changed(session.garden, locked=on), text)
        else:
            text = self.tr("Show the background picture") if on else self.tr("Hide the background picture")
            session.propose(laying_under.changed(session.garden, shown=on), text)

    def fit_into(self, height: int) -> None:
        """Fold where there is little room, unless the grower has chosen."""
        if not settings.text(_KEY, ""):
            self.fold.setChecked(height >= _ROOM_PX)

    def _unfold(self, on: bool) -> None:
        self.table.setVisible(on)
        self.fold.setArrowType(Qt.ArrowType.DownArrow if on else Qt.ArrowType.RightArrow)

    def _chosen(self) -> None:
        settings.keep(_KEY, "open" if self.fold.isChecked() else "folded")

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self._soon.ask()


def hide_selected(session: Session) -> None:
    """Hide what is selected, until it is shown again."""
    session.hide(session.hidden.with_ids(session.selection))
