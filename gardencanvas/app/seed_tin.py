"""The seed tin: the crops at hand, found by typing, dragged into a bed or carried by keyboard."""

from collections.abc import Iterable

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLineEdit, QToolButton, QVBoxLayout, QWidget

from gardencanvas.app.crop_desk import CropDesk
from gardencanvas.app.labels import ElidedLabel, PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.app.shelf import NotKept
from gardencanvas.app.soon import Soon
from gardencanvas.app.tin.crop_list import CropList
from gardencanvas.app.tin.filter_bar import FilterBar
from gardencanvas.app.tin.looks import Looks
from gardencanvas.app.tin.marks import mark_icon
from gardencanvas.app.tin.menus import add_menu, row_menu
from gardencanvas.app.tin.rows import CROP, VARIETY, Key, Rows
from gardencanvas.app.tin.sifting import Sifting
from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.crops.model import Crop, Group
from gardencanvas.crops.search import search
from gardencanvas.crops.spelling import folded
from gardencanvas.words.plain import Measure, name_of
from gardencanvas.words.refusals import why_refused

_GROUPS = {group: number for number, group in enumerate(Group)}


class SeedTin(QWidget):
    """Search field, filters, and the list.

    What is picked up is passed on as crop, variety and pattern; the list keeps the mouse while it is carried.
    """

    picked_up = Signal(str, object, str)  # crop id, variety id or None, pattern: rows, block, single
    carried = Signal(QPoint)
    let_go = Signal()
    given_up = Signal()
    where_asked = Signal()  # where would the current crop fit?
    fill_asked = Signal()  # fill ground with the current crop

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._colours: Palette = palette(False)
        self.desk = CropDesk(session, self)
        self.desk.picked_up.connect(self._pick_by_id)
        self.desk.kept.connect(self.reveal)
        self.sifting = Sifting(session, self)
        self._looks = Looks(session)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 8, 4, 6)
        column.setSpacing(6)
        column.addLayout(self._searching())
        self.filters = FilterBar()
        self.filters.know(session.catalogue)
        column.addWidget(self.filters)
        self.summary = ElidedLabel(role="quiet")
        column.addWidget(self.summary)
        column.addWidget(self._progress())
        self.model = Rows(self)
        self.list = CropList(self)
        self.list.setModel(self.model)
        column.addWidget(self.list, 1)
        self.empty = PlainLabel(role="hint")
        column.addWidget(self.empty)
        column.addLayout(self._patterns())
        self._refill_soon = Soon(self, self.refill, 0)
        self._connect(session)
        self.refill()

    # parts

    def _searching(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(2)
        self.search = QLineEdit()
        self.search.setPlaceholderText(self.tr("name, family…"))
        self.search.setClearButtonEnabled(True)
        self.search.setAccessibleName(self.tr("Search the seed tin"))
        row.addWidget(self.search, 1)
        self.add = QToolButton()
        self.add.setProperty("role", "small")
        self.add.setToolTip(self.tr("Add a variety, a crop or a seed lot of your own"))
        self.add.setAccessibleName(self.add.toolTip())
        self.add.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.add.setMenu(add_menu(self))
        row.addWidget(self.add)
        return row

    def _progress(self) -> QWidget:
        self.progress = QWidget()
        row = QHBoxLayout(self.progress)
        row.setContentsMargins(0, 0, 0, 0)
        self.progress_words = ElidedLabel(role="quiet")
        row.addWidget(self.progress_words, 1)
        self.stop = QToolButton()
        self.stop.setText(self.tr("Stop"))
        self.stop.setProperty("role", "small")
        row.addWidget(self.stop)
        return self.progress

    def _patterns(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(2)
        label = PlainLabel(self.tr("as"), "quiet")
        label.setWordWrap(False)
        label.setMinimumWidth(label.sizeHint().width())
        row.addWidget(label)
        row.addSpacing(2)
        self.patterns = QComboBox()
        self.patterns.setMinimumContentsLength(5)
        self.patterns.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.patterns.setAccessibleName(self.tr("Drop crops as"))
        self.patterns.setToolTip(self.tr("What a crop is dropped as; the digits 1–9 change it on the way"))
        for key, (pattern, text) in enumerate(
            (
                ("rows", self.tr("row")),
                ("block", self.tr("block")),
                ("single", self.tr("single plant")),
                ("strip", self.tr("strip")),
                ("staggered", self.tr("staggered block")),
                ("ring", self.tr("ring")),
                ("edging", self.tr("edging")),
                ("drift", self.tr("drift")),
                ("between", self.tr("between the rows")),
            ),
            1,
        ):
            self.patterns.addItem(f"{text}  ({key})", pattern)
        row.addWidget(self.patterns, 1)
        return row

    def _connect(self, session: Session) -> None:
        self.search.textChanged.connect(self._searched)
        self.filters.changed.connect(self._filtered)
        self.stop.clicked.connect(self._stopped)
        self.sifting.told.connect(self._refill_soon.ask)
        for signal, slot in (
            (self.list.picked, self._pick_up),
            (self.list.carried, self.carried),
            (self.list.let_go, self.let_go),
            (self.list.given_up, self.given_up),
            (self.list.typed, self._typed),
            (self.list.fold, self.fold),
            (self.list.starred, self.star),
            (self.list.page, self.desk.show_page),
            (self.list.menu, self._show_menu),
            (self.list.cleared, self.search.clear),
        ):
            signal.connect(slot)
        session.crops_changed.connect(self._know_anew)
        session.library.marked_changed.connect(self._marked_anew)

    # what is listed

    @property
    def pattern(self) -> str:
        """What a dropped crop becomes: rows, block or single."""
        return str(self.patterns.currentData())

    @property
    def current(self) -> Key | None:
        """Crop and variety of the current row."""
        index = self.list.currentIndex()
        crop = index.data(CROP)
        return None if crop is None else (crop.id, index.data(VARIETY))

    def set_look(self, measure: Measure, colours: Palette) -> None:
        """Use other units or colours."""
        self._colours = colours
        self.list.rows.colours = colours
        self.filters.set_colours(colours)
        self.add.setIcon(mark_icon("plus", colours.ink, colours.accent))
        self.desk.set_look(measure, colours)
        self.list.viewport().update()

    def refill(self, *_: object) -> None:
        """List the crops that fit the search and the filters; the current row stays where it can."""
        chosen, known = self.filters.chosen, self._session.catalogue
        text = self.search.text().strip()
        found: Iterable[Crop] = search(known, text, chosen.wanted)
        found = [c for c in found if self.sifting.lets(c, chosen)]
        if not text:
            found.sort(key=lambda c: (_GROUPS[c.group], folded(name_of(c))))
        was, at = self.current, self.list.verticalScrollBar().value()
        self._looks.said = self.sifting.said
        self.model.show(found, known, self._looks, grouped=not text)
        self.list.setCurrentIndex(self.model.find(None if text else was))
        if not text:
            self.list.verticalScrollBar().setValue(at)
        self._tell(found=bool(found))

    def _tell(self, *, found: bool) -> None:
        summary = self.filters.summary()
        self.summary.setText(summary)
        self.summary.setVisible(bool(summary) and self.filters.panel.isHidden())
        words = self.sifting.words()
        self.progress_words.setText(words)
        self.progress.setVisible(bool(words))
        self.stop.setVisible(self.sifting.running)
        self.empty.setText(self._session.library.trouble or self._why_empty())
        self.empty.setVisible(not found or bool(self._session.library.trouble))
        self.list.setVisible(found)

    def _why_empty(self) -> str:
        chosen = self.filters.chosen
        if chosen.fits and self.sifting.place is None:
            return self.tr("Select one bed or one planting on the plan: what fits there is listed here.")
        if self.sifting.running:
            return self.tr("Nothing found yet.")
        if chosen.favourites and not self._session.library.marked.favourites:
            return self.tr("No favourites yet. A star at a crop makes it one.")
        if chosen.in_tin and not self._session.library.own.lots:
            return self.tr("No seed lots yet. Add one with + or from a crop's menu.")
        return self.tr("No such crop. Try another spelling or fewer filters.")

    def _searched(self, text: str) -> None:
        self._looks.match(text)
        self.refill()

    def _filtered(self) -> None:
        self.sifting.ask(self.filters.chosen)
        self.refill()

    def _stopped(self) -> None:
        """Stop judging crops; the filters that need it are switched off."""
        self.sifting.stop()
        for name in ("fits", "now"):
            self.filters.switch_off(name)

    def _know_anew(self) -> None:
        self._looks.read_own()
        self.filters.know(self._session.catalogue)
        self.sifting.ask(self.filters.chosen)
        self.refill()

    def _marked_anew(self) -> None:
        self._looks.read_own()
        self.refill()

    def fold(self, crop_id: str, show: bool) -> None:
        """Show a crop's varieties under it, or hide them."""
        self._looks.fold(crop_id, show=show)
        was, at = self.current, self.list.verticalScrollBar().value()
        self.refill()
        if was is not None:
            self.list.setCurrentIndex(self.model.find(was))
            self.list.verticalScrollBar().setValue(at)

    def reveal(self, crop_id: str, variety_id: str | None) -> None:
        """Bring a crop or variety into view, whatever is searched for."""
        if variety_id is not None:
            self._looks.fold(crop_id, show=True)
        self.search.clear()
        self.refill()
        index = self.model.find((crop_id, variety_id))
        if index.isValid():
            self.list.setCurrentIndex(index)
            self.list.scrollTo(index)

    def star(self, crop_id: str) -> None:
        """Make a crop a favourite, or one no more."""
        library = self._session.library
        try:
            library.mark_favourite(crop_id, on=crop_id not in library.marked.favourites)
        except NotKept as error:
            self._session.refused.emit(why_refused(error))

    # the hand

    def _pick_up(self, crop: Crop, variety: object) -> None:
        self.picked_up.emit(crop.id, variety, self.pattern)

    def _pick_by_id(self, crop_id: str, variety: object) -> None:
        self.picked_up.emit(crop_id, variety, self.pattern)

    def _typed(self, text: str) -> None:
        """What is typed in the list goes on in the search field."""
        self.search.setFocus(Qt.FocusReason.OtherFocusReason)
        self.search.end(False)
        if text == "\b":
            self.search.backspace()
        else:
            self.search.insert(text)

    def _show_menu(self, at: QPoint) -> None:
        key = self.current
        if key is not None:
            menu = row_menu(self, self._session, self.desk, key)
            menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
            menu.popup(at)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if self.search.hasFocus() and key in (Qt.Key.Key_Down, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)
            if key != Qt.Key.Key_Down:
                self.list.pick_current()
        elif self.search.hasFocus() and key == Qt.Key.Key_F3:
            self.list.page_current()
        elif self.search.hasFocus() and key == Qt.Key.Key_Escape and self.search.text():
            self.search.clear()
        else:
            super().keyPressEvent(event)
