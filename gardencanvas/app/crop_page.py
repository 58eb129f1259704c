"""The crop page: everything known of a crop, with its sources, beside the plan."""

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.crop_sheet import Sheet
from gardencanvas.app.labels import ElidedLabel, PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.canvas.palette import Palette, palette, tint_of
from gardencanvas.canvas.symbols.draw import draw_plant
from gardencanvas.crops.catalogue import UnknownCrop
from gardencanvas.crops.model import Crop
from gardencanvas.words.named import shipped
from gardencanvas.words.plain import Measure, crop_name, name_of

_WIDE = 700  # pixels from which there are two columns


class CropPage(QDialog):
    """A window of its own that stays beside the plan; it shows one crop, or one variety, at a time."""

    picked_up = Signal(str, object)  # crop id, variety id or None
    variety_wanted = Signal(str)  # crop id

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._measure = Measure()
        self._colours: Palette = palette(False)
        self.shown: tuple[str, str | None] | None = None
        self.setModal(False)
        self.setMinimumSize(QSize(340, 320))
        self.resize(820, 700)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 12, 12, 12)
        column.setSpacing(8)
        column.addLayout(self._heading())
        self.scroll = QScrollArea()
        self.scroll.setWidgetResizable(True)
        self.scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.scroll.setProperty("role", "panel")
        self.scroll.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.scroll.setAccessibleName(self.tr("What is known of the crop"))
        column.addWidget(self.scroll, 1)
        column.addLayout(self._buttons())
        session.crops_changed.connect(self.refresh)
        session.date_changed.connect(self._stale)
        session.library.marked_changed.connect(self.refresh)

    def _heading(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(12)
        self._symbol = _Symbol()
        row.addWidget(self._symbol, 0, Qt.AlignmentFlag.AlignTop)
        words = QVBoxLayout()
        words.setSpacing(1)
        self.name = ElidedLabel(role="title")
        self.botanical = PlainLabel(role="body")
        self.others = PlainLabel(role="quiet")
        for label in (self.name, self.botanical, self.others):
            words.addWidget(label)
        row.addLayout(words, 1)
        return row

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.carry = QPushButton(self.tr("Carry to the plan"))
        self.carry.clicked.connect(self._carry)
        self.vary = QPushButton(self.tr("New variety…"))
        self.vary.clicked.connect(self._vary)
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        close.rejected.connect(self.reject)
        for button in (self.carry, self.vary):
            button.setAutoDefault(False)
            row.addWidget(button)
        row.addStretch(1)
        row.addWidget(close)
        return row

    # what is shown

    def set_look(self, measure: Measure, colours: Palette) -> None:
        """Use other units or colours."""
        self._measure, self._colours = measure, colours
        self.refresh()

    def show_crop(self, crop_id: str, variety_id: str | None = None) -> None:
        """Show a crop, or one of its varieties; the window opens if it is closed."""
        self.shown = (crop_id, variety_id)
        self.refresh()
        self.show()
        self.activateWindow()
        self.scroll.setFocus(Qt.FocusReason.OtherFocusReason)

    def _stale(self, *_: object) -> None:
        if self.isVisible():
            self.refresh()

    def refresh(self) -> None:
        """Show the crop as it is known now; the window closes where it is no longer known."""
        if self.shown is None:
            return
        crop_id, variety_id = self.shown
        known = self._session.catalogue
        try:
            crop = known.resolve(crop_id, variety_id)
        except UnknownCrop:
            self.hide()
            return
        name = crop_name(known, crop_id, variety_id)
        self.setWindowTitle(name)
        self.name.setText(name)
        family = shipped(known.families.get(crop.family, ""))
        self.botanical.setText(f"{crop.botanical} · {crop.family}" + (f", {family}" if family else ""))
        others = [n for n in (crop.name, *crop.other_names, *crop.names.values()) if n != name_of(crop)]
        self.others.setText(", ".join(dict.fromkeys(others)))
        self.others.setVisible(bool(others))
        self._symbol.show_crop(crop, self._colours)
        self._fill(crop, variety_id)

    def _fill(self, crop: Crop, variety_id: str | None) -> None:
        at = self.scroll.verticalScrollBar().value()
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(14, 12, 14, 12)
        column.setSpacing(14)
        self._sides = QBoxLayout(self._direction())
        self._sides.setSpacing(24)
        sheet = Sheet(self._session, crop, variety_id, self._measure, self._colours)
        self._sides.addWidget(sheet.seen(), 1)
        self._sides.addWidget(sheet.facts(), 1)
        column.addLayout(self._sides)
        column.addWidget(sheet.sources())
        column.addStretch(1)
        old = self.scroll.takeWidget()
        if old is not None:
            old.deleteLater()
        self.scroll.setWidget(inside)
        self.scroll.verticalScrollBar().setValue(at)

    def _direction(self) -> QBoxLayout.Direction:
        wide = self.width() >= _WIDE * self.fontMetrics().height() / 16
        return QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.shown is not None:
            self._sides.setDirection(self._direction())

    # what is done

    def _carry(self) -> None:
        if self.shown is not None:
            self.picked_up.emit(*self.shown)

    def _vary(self) -> None:
        if self.shown is not None:
            self.variety_wanted.emit(self.shown[0])

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_F3, Qt.Key.Key_Space):
            self.reject()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._carry()
        else:
            super().keyPressEvent(event)


class _Symbol(QWidget):
    """The crop from above, as it is drawn on the plan."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._crop: Crop | None = None
        self._colours: Palette = palette(False)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(64, 64)

    def show_crop(self, crop: Crop, colours: Palette) -> None:
        """Draw another crop."""
        self._crop, self._colours = crop, colours
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._crop is None:
            return
        painter = QPainter(self)
        tint = tint_of(self._crop.family, self._crop.id, self._colours.dark)
        radius = min(self.width(), self.height()) / 2
        draw_plant(painter, self._crop.habit, tint, QPointF(radius, radius), radius - 1, seed=3)
        painter.end()
