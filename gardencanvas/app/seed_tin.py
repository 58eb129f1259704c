"""The seed tin: the crops at hand, found by typing, dragged into a bed or carried by keyboard."""

from PySide6.QtCore import QModelIndex, QPoint, QPointF, QRect, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPixmap, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QButtonGroup,
    QComboBox,
    QHBoxLayout,
    QLineEdit,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.canvas.palette import Palette, palette, tint_of
from gardencanvas.canvas.symbols.draw import detail_for, draw_plant
from gardencanvas.crops.model import Crop, Group, Layer
from gardencanvas.crops.search import Wanted, search
from gardencanvas.words.plain import Measure

_CROP = Qt.ItemDataRole.UserRole
_VARIETY = Qt.ItemDataRole.UserRole + 1
_SYMBOL = 34


class SeedTin(QWidget):
    """Search field, filters, and the list.

    While a crop is carried the list keeps the mouse and passes its places on as global points, so that the
    gesture is the same with a mouse, in a test and on every platform.
    """

    picked_up = Signal(str, object, str)  # crop id, variety id or None, pattern: rows, block, single
    carried = Signal(QPoint)
    let_go = Signal()
    given_up = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._colours: Palette = palette(False)
        self._measure = Measure()
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 8, 6, 6)
        column.setSpacing(6)
        self.search = QLineEdit()
        self.search.setPlaceholderText(self.tr("name, family…"))
        self.search.setClearButtonEnabled(True)
        self.search.setAccessibleName(self.tr("Search the seed tin"))
        self.search.textChanged.connect(self.refill)
        column.addWidget(self.search)
        column.addLayout(self._filters())
        self.model = QStandardItemModel(self)
        self.list = _CropList(self)
        self.list.setModel(self.model)
        self.list.setItemDelegate(_CropDelegate(self))
        self.list.picked.connect(self._pick_up)
        self.list.carried.connect(self.carried)
        self.list.let_go.connect(self.let_go)
        self.list.given_up.connect(self.given_up)
        column.addWidget(self.list, 1)
        self.empty = PlainLabel(
            self.tr("No crop of that name. Try another spelling or fewer filters."), "hint"
        )
        column.addWidget(self.empty)
        column.addLayout(self._patterns())
        self.refill()

    def _filters(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(4)
        self.group = QComboBox()
        self.group.setAccessibleName(self.tr("Group of crops"))
        self.group.addItem(self.tr("all groups"), None)
        for group in Group:
            self.group.addItem(str(group), group)
        self.layer = QComboBox()
        self.layer.setAccessibleName(self.tr("Layer"))
        self.layer.addItem(self.tr("any layer"), None)
        for layer in Layer:
            self.layer.addItem(str(layer), layer)
        for box in (self.group, self.layer):
            box.setMinimumContentsLength(6)
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.activated.connect(self.refill)
            row.addWidget(box, 1)
        return row

    def _patterns(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(2)
        label = PlainLabel(self.tr("as"), "quiet")
        label.setWordWrap(False)
        row.addWidget(label)
        self._pattern = QButtonGroup(self)
        for pattern, text in (
            ("rows", self.tr("row")),
            ("block", self.tr("block")),
            ("single", self.tr("single")),
        ):
            button = QToolButton()
            button.setText(text)
            button.setCheckable(True)
            button.setChecked(pattern == "rows")
            button.setProperty("pattern", pattern)
            button.setToolTip(self.tr("Drop crops as: {0}").format(text))
            self._pattern.addButton(button)
            row.addWidget(button)
        row.addStretch(1)
        return row

    @property
    def pattern(self) -> str:
        """What a dropped crop becomes: rows, block or single."""
        return str(self._pattern.checkedButton().property("pattern"))

    def set_look(self, measure: Measure, colours: Palette) -> None:
        """Use other units or colours."""
        self._measure, self._colours = measure, colours
        self.list.viewport().update()

    def refill(self, *_: object) -> None:
        """List the crops that fit the search and the filters."""
        wanted = Wanted(group=self.group.currentData(), layer=self.layer.currentData())
        found = search(self._session.catalogue, self.search.text(), wanted)
        self.model.clear()
        group: Group | None = None
        typed = bool(self.search.text().strip())
        if not typed:
            found = tuple(sorted(found, key=lambda c: (list(Group).index(c.group), c.name)))
        for crop in found:
            if not typed and crop.group is not group:
                group = crop.group
                self._heading(str(group))
            self._row(crop)
        self.empty.setVisible(not found)
        self.list.setVisible(bool(found))
        self._to_first()

    def _heading(self, text: str) -> None:
        item = QStandardItem(text)
        item.setFlags(Qt.ItemFlag.NoItemFlags)
        self.model.appendRow(item)

    def _row(self, crop: Crop) -> None:
        item = QStandardItem(crop.name)
        item.setData(crop, _CROP)
        item.setData(None, _VARIETY)
        item.setEditable(False)
        item.setData(f"{crop.name}, {self.about(crop)}", Qt.ItemDataRole.AccessibleTextRole)
        lines = [crop.name, crop.botanical, crop.family, *crop.other_names]
        lines += [f"⚠ {h.part}: {h.hazard}" for h in crop.hazards if h.severity == "high"]
        item.setToolTip("\n".join(lines).replace("<", "‹"))
        self.model.appendRow(item)

    def about(self, crop: Crop) -> str:
        """Layer and roots in a few words: ``low, shallow roots``."""
        words = [str(crop.layer)]
        if crop.rooting is not None:
            words.append(self.tr("{0} roots").format(crop.rooting.value))
        return ", ".join(words)

    def _to_first(self) -> None:
        for row in range(self.model.rowCount()):
            index = self.model.index(row, 0)
            if index.data(_CROP) is not None:
                self.list.setCurrentIndex(index)
                return

    def _pick_up(self, crop: Crop, variety: object) -> None:
        self.picked_up.emit(crop.id, variety, self.pattern)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self.search.hasFocus() and event.key() in (Qt.Key.Key_Down, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)
            if event.key() != Qt.Key.Key_Down:
                self.list.pick_current()
            return
        super().keyPressEvent(event)


class _CropList(QListView):
    """A list whose rows are picked up by dragging, or by Enter."""

    picked = Signal(object, object)
    carried = Signal(QPoint)
    let_go = Signal()
    given_up = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._press: QPoint | None = None
        self._carrying = False
        self.setAccessibleName(self.tr("Crops in the seed tin"))
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setUniformItemSizes(False)
        self.setMouseTracking(True)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        super().mousePressEvent(event)
        index = self.indexAt(event.position().toPoint())
        held = event.button() == Qt.MouseButton.LeftButton and index.data(_CROP) is not None
        self._press = event.position().toPoint() if held else None

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
            self.picked.emit(index.data(_CROP), index.data(_VARIETY))
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
        self.pick_current()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self._carrying:
            self._carrying, self._press = False, None
            self.given_up.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.pick_current()
        else:
            super().keyPressEvent(event)

    def pick_current(self) -> None:
        """Pick up the current row to be carried by keyboard or placed by a click."""
        index = self.currentIndex()
        if index.data(_CROP) is not None:
            self.picked.emit(index.data(_CROP), index.data(_VARIETY))


class _CropDelegate(QStyledItemDelegate):
    """A symbol, the crop's name and a quiet line."""

    def __init__(self, tin: SeedTin) -> None:
        super().__init__(tin)
        self._tin = tin
        self._symbols: dict[tuple[str, float, bool], QPixmap] = {}

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex) -> QSize:
        if index.data(_CROP) is None:
            return QSize(100, option.fontMetrics.height() + 12)
        return QSize(100, max(_SYMBOL + 8, 2 * option.fontMetrics.height() + 8))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        crop: Crop | None = index.data(_CROP)
        colours = self._tin._colours
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area: QRect = option.rect
        if crop is None:
            self._paint_heading(painter, area, str(index.data()), colours)
        else:
            self._paint_crop(painter, option, area, crop, colours)
        painter.restore()

    def _paint_heading(self, painter: QPainter, area: QRect, text: str, colours: Palette) -> None:
        font = painter.font()
        font.setPointSizeF(font.pointSizeF() * 0.85)
        font.setBold(True)
        painter.setFont(font)
        painter.setPen(QColor(colours.quiet))
        painter.drawText(area.adjusted(6, 4, -6, 0), Qt.AlignmentFlag.AlignVCenter, text)

    def _paint_crop(
        self, painter: QPainter, option: QStyleOptionViewItem, area: QRect, crop: Crop, colours: Palette
    ) -> None:
        state = QStyle.StateFlag
        if option.state & (state.State_Selected | state.State_MouseOver):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours.selected))
            painter.setOpacity(1.0 if option.state & state.State_Selected else 0.5)
            painter.drawRoundedRect(area.adjusted(1, 1, -1, -1), 6, 6)
            painter.setOpacity(1.0)
        ratio = painter.device().devicePixelRatioF()
        middle = area.top() + (area.height() - _SYMBOL) // 2
        painter.drawPixmap(area.left() + 5, middle, self._symbol(crop, ratio, colours))
        left = area.left() + _SYMBOL + 14
        room = area.right() - left - 6
        about = self._tin.about(crop)
        if any(h.severity == "high" for h in crop.hazards):
            about = "⚠ " + about
        line = option.fontMetrics.height()
        top = area.top() + (area.height() - 2 * line) // 2
        font = painter.font()
        font.setBold(True)
        painter.setFont(font)
        painter.setPen(QColor(colours.ink))
        name = painter.fontMetrics().elidedText(crop.name, Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRect(left, top, room, line), Qt.AlignmentFlag.AlignVCenter, name)
        font.setBold(False)
        font.setPointSizeF(font.pointSizeF() * 0.88)
        painter.setFont(font)
        painter.setPen(QColor(colours.quiet))
        about = painter.fontMetrics().elidedText(about, Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRect(left, top + line, room, line), Qt.AlignmentFlag.AlignVCenter, about)

    def _symbol(self, crop: Crop, ratio: float, colours: Palette) -> QPixmap:
        key = (crop.id, ratio, colours.dark)
        if key not in self._symbols:
            pixmap = QPixmap(int(_SYMBOL * ratio), int(_SYMBOL * ratio))
            pixmap.setDevicePixelRatio(ratio)
            pixmap.fill(Qt.GlobalColor.transparent)
            painter = QPainter(pixmap)
            radius = _SYMBOL / 2 - 1
            tint = tint_of(crop.family, crop.id, colours.dark)
            centre = QPointF(_SYMBOL / 2, _SYMBOL / 2)
            draw_plant(painter, crop.habit, tint, centre, radius, seed=3, detail=detail_for(radius * ratio))
            painter.end()
            self._symbols[key] = pixmap
        return self._symbols[key]
