"""A field to find a town in, with the list of what fits right below it."""

from PySide6.QtCore import QEvent, QModelIndex, QObject, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QLineEdit,
    QListView,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.site.place_rows import PLACE, PlaceRows
from gardencanvas.season.coordinates import written
from gardencanvas.season.places import Place, places

_ROWS = 5
_STEPS = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageDown: _ROWS, Qt.Key.Key_PageUp: -_ROWS}


class PlaceSearch(QWidget):
    """Search as one types; ``picked`` gives the place chosen by a click, or with the arrows and Enter.

    The list shows five places, or with ``grows`` as many as there is height for.
    """

    picked = Signal(object)  # Place

    def __init__(self, parent: QWidget | None = None, *, grows: bool = False) -> None:
        super().__init__(parent)
        self.field = QLineEdit()
        self.field.setPlaceholderText(self.tr("Find a town near the garden"))
        self.field.setClearButtonEnabled(True)
        self.field.setMaxLength(200)
        self.field.setAccessibleName(self.tr("Find a town near the garden"))
        self.field.setAccessibleDescription(
            self.tr("Arrow keys choose from the list below, Enter takes the chosen place")
        )
        self.field.textChanged.connect(self._fill)
        self.field.installEventFilter(self)
        self._model = QStandardItemModel(self)
        self.list = QListView()
        self.list.setModel(self._model)
        self.list.setItemDelegate(PlaceRows(self.list))
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the field's own arrows move in it
        self.list.setAccessibleName(self.tr("Places found"))
        self.list.clicked.connect(self._clicked)
        self._empty = PlainLabel("", "hint")
        self._empty.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._empty.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self._empty.setContentsMargins(4, 6, 4, 4)
        self._lay_out(grows=grows)
        self._fill("")

    def _lay_out(self, *, grows: bool) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        card = QFrame()
        card.setProperty("role", "card")
        inside = QVBoxLayout(card)
        inside.setContentsMargins(4, 4, 4, 4)
        inside.addWidget(self._empty)
        inside.addWidget(self.list, 1)
        column.addWidget(self.field)
        column.addWidget(card, 1)
        low = _ROWS * PlaceRows.height_of(self.list) + 10
        card.setMinimumHeight(low)
        if not grows:
            card.setMaximumHeight(low)
        # Its own hint is higher than five rows, and would come and go with what is found.
        self.list.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self.list.setStyleSheet("QListView { background: transparent; }")

    def sizeHint(self) -> QSize:
        return QSize(320, super().sizeHint().height())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self.field and event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            return self._key(event)
        return False

    def _key(self, event: QKeyEvent) -> bool:
        key = event.key()
        if key in _STEPS and self._model.rowCount():
            row = self.list.currentIndex().row() + _STEPS[Qt.Key(key)]
            row = min(max(row, 0), self._model.rowCount() - 1)
            self.list.setCurrentIndex(self._model.index(row, 0))
            self.field.setAccessibleDescription(str(self._model.index(row, 0).data()))
            return True
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._clicked(self.list.currentIndex())
            return True  # Enter here never closes the dialog
        if key == Qt.Key.Key_Escape and self.field.text():
            self.field.clear()
            return True
        return False

    def _clicked(self, index: QModelIndex) -> None:
        place = index.data(PLACE) if index.isValid() else None
        if isinstance(place, Place):
            self.picked.emit(place)

    def _fill(self, text: str) -> None:
        self._model.clear()
        found = places().search(text) if text.strip() else []
        for place in found:
            item = QStandardItem(place.label)
            item.setData(place, PLACE)
            where = f"{written(place.latitude_deg, 'latitude')}, {written(place.longitude_deg, 'longitude')}"
            item.setData(self.tr("{0}, {1}").format(place.label, where), Qt.ItemDataRole.AccessibleTextRole)
            self._model.appendRow(item)
        if found:
            self.list.setCurrentIndex(self._model.index(0, 0))
            self.list.scrollToTop()
        self._empty.setText(self._hint(text))
        self._empty.setVisible(not found)
        self.list.setVisible(bool(found))

    def _hint(self, text: str) -> str:
        if text.strip():
            return self.tr(
                "No town of this name is in the list of {0}. Try a larger one nearby, or give latitude and "
                "longitude below."
            ).format(len(places()))
        return self.tr(
            "Type the first letters of a town nearby: it brings its position, its climate and a rough guess "
            "of its frosts. All of it can be changed below."
        )
