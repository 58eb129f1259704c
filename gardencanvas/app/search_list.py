"""A search field over a list: type a few letters, choose with the arrows, Enter does it, Esc goes back."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QLineEdit, QTreeWidget, QTreeWidgetItem, QVBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel
from gardencanvas.crops.spelling import folded

_KEYS_OF_LIST = (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown)


@dataclass(frozen=True, slots=True)
class Entry:
    """One line: what it is, a note beside it, what choosing it does; ``reason`` says why it cannot be."""

    text: str
    note: str
    do: Callable[[], object]
    reason: str = ""


class SearchList(QDialog):
    """Lists entries; words typed narrow them, in any order and without accents."""

    def __init__(self, parent: QWidget, title: str, hint: str, entries: Sequence[Entry]) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.resize(520, 420)
        self._entries = entries
        column = QVBoxLayout(self)
        self.field = QLineEdit()
        self.field.setPlaceholderText(hint)
        self.field.setAccessibleName(hint)
        self.field.setClearButtonEnabled(True)
        self.field.textChanged.connect(self._narrow)
        self.field.returnPressed.connect(self._choose)
        self.field.installEventFilter(self)
        self.list = QTreeWidget()
        self.list.setColumnCount(2)
        self.list.setHeaderHidden(True)
        self.list.setRootIsDecorated(False)
        self.list.setUniformRowHeights(True)
        self.list.setAccessibleName(title)
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.itemActivated.connect(self._choose)
        self.list.itemClicked.connect(self._choose)
        self.list.currentItemChanged.connect(self._explain)
        self.reason = PlainLabel(role="quiet")
        for part in (self.field, self.list, self.reason):
            column.addWidget(part)
        self._narrow("")

    def _narrow(self, text: str) -> None:
        words = folded(text).split()
        self.list.clear()
        for number, entry in enumerate(self._entries):
            if all(word in folded(f"{entry.text} {entry.note}") for word in words):
                line = QTreeWidgetItem([entry.text, entry.note])
                line.setData(0, Qt.ItemDataRole.UserRole, number)
                line.setDisabled(False)
                if entry.reason:
                    for side in (0, 1):
                        line.setForeground(side, self.palette().placeholderText())
                self.list.addTopLevelItem(line)
        self.list.resizeColumnToContents(1)
        width = self.list.viewport().width() - min(self.list.columnWidth(1), 220)
        self.list.setColumnWidth(0, max(width, 160))
        if self.list.topLevelItemCount():
            self.list.setCurrentItem(self.list.topLevelItem(0))
        else:
            self.reason.setText(self.tr("Nothing is called so."))

    def _entry(self) -> Entry | None:
        line = self.list.currentItem()
        return self._entries[line.data(0, Qt.ItemDataRole.UserRole)] if line is not None else None

    def _explain(self, *_: object) -> None:
        entry = self._entry()
        self.reason.setText(entry.reason if entry is not None else "")

    def _choose(self, *_: object) -> None:
        entry = self._entry()
        if entry is None or entry.reason:
            return
        self.accept()
        entry.do()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The arrows move through the list while the field has the focus."""
        if (
            watched is self.field
            and event.type() == QEvent.Type.KeyPress
            and isinstance(event, QKeyEvent)
            and event.key() in _KEYS_OF_LIST
        ):
            self.list.keyPressEvent(event)
            return True
        return super().eventFilter(watched, event)
