"""The list of the seed tin: rows are picked up by dragging or by Enter; typing goes to the search."""

from PySide6.QtCore import QEvent, QModelIndex, QPoint, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QAbstractItemView, QApplication, QListView, QWidget

from gardencanvas.app.tin.delegate import RowDelegate
from gardencanvas.app.tin.looks import RowLook
from gardencanvas.app.tin.rows import CROP, LOOK, VARIETY

_KEY = Qt.Key
_OWN_KEYS = {_KEY.Key_F3, _KEY.Key_Space, _KEY.Key_Home, _KEY.Key_Escape}


class CropList(QListView):
    """While a crop is carried the list keeps the mouse and passes its places on as global points, so that
    the gesture is the same with a mouse, in a test and on every platform.
    """  # noqa: D205

    picked = Signal(object, object)  # crop, variety id or None
    carried = Signal(QPoint)
    let_go = Signal()
    given_up = Signal()
    typed = Signal(str)
    fold = Signal(str, bool)  # crop id, whether to show its varieties
    starred = Signal(str)  # crop id
    page = Signal(str, object)  # crop id, variety id or None
    menu = Signal(QPoint)  # global: a menu for the current row is wanted
    cleared = Signal()  # Escape while nothing is carried

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._press: QPoint | None = None
        self._carrying = False
        self.rows = RowDelegate(self)
        self.setItemDelegate(self.rows)
        self.setAccessibleName(self.tr("Crops in the seed tin"))
        self.setAccessibleDescription(
            self.tr("Enter picks a crop up, F3 shows all that is known of it, Right shows its varieties.")
        )
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setUniformItemSizes(False)
        self.setMouseTracking(True)

    # mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = event.position().toPoint()
        index = self.indexAt(at)
        left = event.button() == Qt.MouseButton.LeftButton
        if left and self._press_mark(index, at):
            return
        super().mousePressEvent(event)
        self._press = at if left and index.data(CROP) is not None else None

    def _press_mark(self, index: QModelIndex, at: QPoint) -> bool:
        """Whether the press was on a mark of a row, and did what that mark is for."""
        crop = index.data(CROP)
        mark = "" if crop is None else self.rows.mark_at(self.visualRect(index), index, at, lively=True)
        if mark in ("open", "folded"):
            self.fold.emit(crop.id, mark == "folded")
        elif mark == "star":
            self.starred.emit(crop.id)
        elif mark == "page":
            self.setCurrentIndex(index)
            self.page.emit(crop.id, index.data(VARIETY))
        return bool(mark)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._press is None or not event.buttons() & Qt.MouseButton.LeftButton:
            super().mouseMoveEvent(event)
            return
        if not self._carrying:
            moved = (event.position().toPoint() - self._press).manhattanLength()
            if moved < QApplication.startDragDistance():
                return
            index = self.indexAt(self._press)
            self._carrying = True
            self.picked.emit(index.data(CROP), index.data(VARIETY))
        self.carried.emit(event.globalPosition().toPoint())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._carrying:
            self._carrying, self._press = False, None
            self.carried.emit(event.globalPosition().toPoint())
            self.let_go.emit()
            return
        self._press = None
        super().mouseReleaseEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        at = event.position().toPoint()
        index = self.indexAt(at)
        if not self._press_mark(index, at):
            self.pick_current()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        index = self.currentIndex()
        if event.reason() == QContextMenuEvent.Reason.Mouse:
            index = self.indexAt(event.pos())
            if index.data(CROP) is None:
                return
            self.setCurrentIndex(index)
            self.menu.emit(event.globalPos())
        elif index.data(CROP) is not None:
            self.menu.emit(self.viewport().mapToGlobal(self.visualRect(index).center()))

    # keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key == _KEY.Key_Escape:
            self._escape()
        elif key in (_KEY.Key_Return, _KEY.Key_Enter):
            self.pick_current()
        elif key in (_KEY.Key_F3, _KEY.Key_Space):
            self.page_current()
        elif key in (_KEY.Key_Left, _KEY.Key_Right):
            self._fold_current(key == _KEY.Key_Right)
        elif _is_text(event):
            self.typed.emit(event.text())
        else:
            super().keyPressEvent(event)

    def event(self, event: QEvent) -> bool:
        """Keep letters from the window's single-letter shortcuts while the list has the focus."""
        override = isinstance(event, QKeyEvent) and event.type() is QEvent.Type.ShortcutOverride
        if override and (_is_text(event) or event.key() in _OWN_KEYS):
            event.accept()
            return True
        return super().event(event)

    def keyboardSearch(self, search: str) -> None:
        """Typing goes to the search field instead."""

    def _escape(self) -> None:
        if self._carrying:
            self._carrying, self._press = False, None
            self.given_up.emit()
        else:
            self.cleared.emit()

    def _fold_current(self, show: bool) -> None:
        """Right shows a crop's varieties; Left hides them, and from a variety goes back to its crop."""
        index = self.currentIndex()
        look: RowLook | None = index.data(LOOK)
        if look is None:
            return
        crop = index.data(CROP)
        if index.data(VARIETY) is not None and not show:
            row = index.row()
            while self.model().index(row, 0).data(VARIETY) is not None:
                row -= 1
            self.setCurrentIndex(self.model().index(row, 0))
        elif look.varieties and look.open != show:
            self.fold.emit(crop.id, show)

    def pick_current(self) -> None:
        """Pick up the current row to be carried by keyboard or placed by a click."""
        index = self.currentIndex()
        if index.data(CROP) is not None:
            self.picked.emit(index.data(CROP), index.data(VARIETY))

    def page_current(self) -> None:
        """Ask for the page of the current row."""
        index = self.currentIndex()
        if index.data(CROP) is not None:
            self.page.emit(index.data(CROP).id, index.data(VARIETY))


def _is_text(event: QKeyEvent) -> bool:
    """Whether a key writes or takes back a character."""
    held = event.modifiers() & (Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier)
    writes = event.key() == _KEY.Key_Backspace or event.text().isprintable()
    return not held and bool(event.text()) and writes
