"""A table one types into: Enter edits, Delete empties, Tab leaves, rows are pasted."""

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QTableWidget, QTableWidgetItem, QWidget

from gardencanvas.app.site.cells import WRONG, Cells
from gardencanvas.app.site.look import colours

_MOST_PASTED = 20_000  # characters


class TypedTable(QTableWidget):
    """Base of the dialog's tables. ``edited`` comes once for each thing the grower does."""

    edited = Signal()

    def __init__(self, rows: int, columns: int, parent: QWidget | None = None) -> None:
        super().__init__(rows, columns, parent)
        self._quiet = False
        self.setTabKeyNavigation(False)
        self.setCornerButtonEnabled(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ContiguousSelection)
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(
            triggers.AnyKeyPressed
            | triggers.DoubleClicked
            | triggers.EditKeyPressed
            | triggers.SelectedClicked
        )
        self.setItemDelegate(Cells(self))
        self.setStyleSheet(f"QTableView {{ gridline-color: {colours().line}; }}")
        self.itemChanged.connect(self._changed)

    def wrong_cells(self) -> list[tuple[int, int]]:
        """Row and column of every cell that cannot be taken."""
        raise NotImplementedError

    def taken(self) -> None:
        """Cells were edited: read them."""

    def text(self, row: int, column: int) -> str:
        """What stands in a cell, without spaces round it."""
        item = self.item(row, column)
        return item.text().strip() if item is not None else ""

    def show_wrong(self) -> None:
        """Bring the first wrong cell into view and make it current."""
        wrong = self.wrong_cells()
        if wrong:
            self.setCurrentCell(*wrong[0])
            self.scrollToItem(self.currentItem())

    def mark(self) -> None:
        """Mark the wrong cells; the sentences beside the table say what is wrong."""
        wrong = set(self.wrong_cells())
        with _Quiet(self):
            for row in range(self.rowCount()):
                for column in range(self.columnCount()):
                    item = self.item(row, column)
                    if item is not None:
                        item.setData(WRONG, (row, column) in wrong)

    def quietly(self, change: Callable[[], None]) -> None:
        """Change cells without that counting as an edit."""
        with _Quiet(self):
            change()

    def all_at_once(self, change: Callable[[], None]) -> None:
        """Change several cells as one edit."""
        self.quietly(change)
        self._settle()

    def paste(self, text: str) -> None:
        """Put cells in from the current one on: rows by line, columns by tabs."""
        lines = [line.split("\t") for line in text[:_MOST_PASTED].strip("\r\n").splitlines()]
        self.all_at_once(lambda: self.lay(lines))

    def lay(self, lines: list[list[str]]) -> None:
        """Write rows of texts from the current cell on; what has no room is left out."""
        top, left = max(self.currentRow(), 0), max(self.currentColumn(), 0)
        for down, line in enumerate(lines):
            for across, text in enumerate(line):
                item = self.item(top + down, left + across)
                if item is not None:
                    item.setText(text.strip())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.matches(QKeySequence.StandardKey.Paste):
            self.paste(QGuiApplication.clipboard().text())
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self.state() != QAbstractItemView.State.EditingState and self.currentItem() is not None:
                self.editItem(self.currentItem())
            event.accept()  # Enter in a table never closes the dialog
        elif event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.all_at_once(self._empty_selected)
        else:
            super().keyPressEvent(event)

    def _empty_selected(self) -> None:
        for item in self.selectedItems():
            item.setText("")

    def _changed(self, _item: QTableWidgetItem) -> None:
        if not self._quiet:
            self._settle()

    def _settle(self) -> None:
        self.quietly(self.taken)
        self.mark()
        self.edited.emit()


class _Quiet:
    """While it is held, changed cells are nobody's edit; it may be held within itself."""

    def __init__(self, table: TypedTable) -> None:
        self._table, self._before = table, table._quiet

    def __enter__(self) -> None:
        self._table._quiet = True

    def __exit__(self, *_: object) -> None:
        self._table._quiet = self._before
