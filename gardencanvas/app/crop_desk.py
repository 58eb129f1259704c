"""What is done with crops beside the plan: their page; own varieties, crops and seed lots; their files.

Page and forms are loaded when they are first opened: thirty milliseconds less until the window is ready.
"""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from gardencanvas.app.keeping import GARDEN, LIBRARY
from gardencanvas.app.session import Session
from gardencanvas.app.shelf import NotKept
from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.crops.model import Crop, Variety
from gardencanvas.crops.tin import SeedLot
from gardencanvas.garden import own
from gardencanvas.garden.errors import Refusal
from gardencanvas.words.plain import Measure, crop_name
from gardencanvas.words.refusals import why_refused
from gardencanvas.words.tin import lot_words

if TYPE_CHECKING:
    from gardencanvas.app.crop_page import CropPage
    from gardencanvas.app.own_form.form import OwnForm

Key = tuple[str, str | None]
SUFFIX = ".toml"


def ask_import(window: QWidget) -> Path | None:
    """Ask which file of own crops to take in."""
    kinds = window.tr("Crops (*.toml)")
    name, _ = QFileDialog.getOpenFileName(window, window.tr("Take in crops of your own"), "", kinds)
    return Path(name) if name else None


def ask_export(window: QWidget) -> Path | None:
    """Ask where to write one's own crops."""
    kinds = window.tr("Crops (*.toml)")
    name, _ = QFileDialog.getSaveFileName(
        window, window.tr("Write your own crops to a file"), "my-crops.toml", kinds
    )
    path = Path(name)
    return None if not name else path if path.suffix else path.with_suffix(SUFFIX)


def ask_remove(window: QWidget, name: str) -> bool:
    """Ask whether to take something out of the library: it cannot be undone."""
    box = QMessageBox(window)
    box.setIcon(QMessageBox.Icon.Question)
    box.setWindowTitle(window.tr("Take it out?"))
    box.setText(window.tr("“{0}” is taken out of your library for good.").format(name.replace("<", "‹")))
    box.setStandardButtons(QMessageBox.StandardButton.Ok | QMessageBox.StandardButton.Cancel)
    return box.exec() == QMessageBox.StandardButton.Ok


class CropDesk(QObject):
    """Opens pages and forms for one session, and keeps what they bring."""

    picked_up = Signal(str, object)  # crop id, variety id or None
    kept = Signal(str, object)  # crop id, variety id or None: something new to show
    said = Signal(str)

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._window = session, window
        self._measure, self._colours = Measure(), palette(False)
        self.page: CropPage | None = None
        self.form: OwnForm | None = None

    def set_look(self, measure: Measure, colours: Palette) -> None:
        """Use other units or colours."""
        self._measure, self._colours = measure, colours
        if self.page is not None:
            self.page.set_look(measure, colours)

    # the page

    def show_page(self, crop_id: str, variety_id: str | None = None) -> None:
        """Show all that is known of a crop or variety."""
        from gardencanvas.app.crop_page import CropPage

        if self.page is None:
            self.page = CropPage(self._session, self._window)
            self.page.set_look(self._measure, self._colours)
            self.page.picked_up.connect(self.picked_up)
            self.page.variety_wanted.connect(self.new_variety)
        self.page.show_crop(crop_id, variety_id)

    # forms

    def new_variety(self, crop_id: str | None) -> None:
        """A form for a new variety of a crop."""
        from gardencanvas.app.own_form.variety_form import VarietyForm

        form = VarietyForm(self._session.catalogue, crop_id, self._measure, None, self._window)
        form.keep_where(LIBRARY)
        self._open(form)

    def new_crop(self, like: str | None) -> None:
        """A form for a new crop, from nothing or like another."""
        from gardencanvas.app.own_form.crop_form import CropForm

        known = self._session.catalogue
        base = None if like is None else known.crop(like)
        form = CropForm(known, self._measure, base, None, self._window)
        form.keep_where(LIBRARY)
        self._open(form)

    def change(self, key: Key) -> None:
        """A form for one's own crop or variety, kept where it is kept now."""
        from gardencanvas.app.own_form.crop_form import CropForm
        from gardencanvas.app.own_form.variety_form import VarietyForm

        known, (crop_id, variety_id) = self._session.catalogue, key
        if variety_id is None:
            form: OwnForm = CropForm(known, self._measure, None, known.crop(crop_id), self._window)
        else:
            variety = known.variety(crop_id, variety_id)
            form = VarietyForm(known, crop_id, self._measure, variety, self._window)
        form.keep_where(GARDEN if self._in_garden(key) else LIBRARY)
        self._open(form)

    def add_lot(self, key: Key | None) -> None:
        """A form for a new seed lot."""
        if key is not None:
            self._lot_form(key, None)

    def change_lot(self, lot: SeedLot) -> None:
        """A form for a seed lot that is there."""
        self._lot_form((lot.crop, lot.variety), lot)

    def _lot_form(self, key: Key, lot: SeedLot | None) -> None:
        from gardencanvas.app.own_form.lot_form import LotForm

        session, (crop_id, variety_id) = self._session, key
        crop = session.catalogue.resolve(crop_id)
        taken = {each.id for each in session.library.own.lots}
        self._open(LotForm(session.catalogue, crop, session.on, taken, lot, variety_id, self._window))

    def _open(self, form: "OwnForm") -> None:
        if self.form is not None:
            self.form.reject()
        self.form = form
        form.wanted.connect(self._keep)
        form.finished.connect(self._closed)
        form.open()

    def _closed(self) -> None:
        form, self.form = self.form, None
        if form is not None:
            form.deleteLater()

    # keeping

    def _keep(self, record: object, where: str) -> None:
        form = self.form
        try:
            if isinstance(record, SeedLot):
                self._session.library.put_lot(record)
            elif where == GARDEN:
                self._keep_in_garden(record)
            elif isinstance(record, Crop):
                self._session.library.put_crop(record)
            elif isinstance(record, Variety):
                self._session.library.put_variety(record)
        except (NotKept, Refusal) as error:
            if form is not None:
                form.refuse(why_refused(error))
            return
        if form is not None:
            form.accept()
        if isinstance(record, Crop):
            self.kept.emit(record.id, None)
        elif isinstance(record, Variety):
            self.kept.emit(record.crop, record.id)

    def _keep_in_garden(self, record: object) -> None:
        session = self._session
        if isinstance(record, Crop):
            after = own.put_crop(session.garden, record)
            session.propose(after, self.tr("Keep crop {0}").format(record.name))
        elif isinstance(record, Variety):
            after = own.put_variety(session.garden, record)
            session.propose(after, self.tr("Keep variety {0}").format(record.name))

    def want(self, crop_id: str) -> None:
        """Put a crop on the wanted list, or take it off."""
        library = self._session.library
        try:
            library.mark_wanted(crop_id, on=crop_id not in library.marked.wanted)
        except NotKept as error:
            self._session.refused.emit(why_refused(error))

    # one's own

    def is_own(self, key: Key) -> bool:
        """Whether a crop or variety is the grower's own."""
        return self._in_garden(key) or self._in_library(key) is not None

    def _in_garden(self, key: Key) -> bool:
        garden, (crop_id, variety_id) = self._session.garden, key
        if variety_id is None:
            return any(c.id == crop_id for c in garden.crops)
        return any((v.crop, v.id) == key for v in garden.varieties)

    def _in_library(self, key: Key) -> Crop | Variety | None:
        library, (crop_id, variety_id) = self._session.library.own, key
        if variety_id is None:
            return next((c for c in library.crops if c.id == crop_id), None)
        return next((v for v in library.varieties if (v.crop, v.id) == key), None)

    def lots(self, key: Key) -> list[tuple[SeedLot, str]]:
        """Seed lots of a row with what they hold."""
        return [(lot, lot_words(lot)) for lot in self._session.library.lots_of(*key)]

    def remove(self, key: Key) -> None:
        """Take one's own crop or variety out of the library, after asking, and out of the garden."""
        session, name = self._session, crop_name(self._session.catalogue, *key)
        record = self._in_library(key)
        try:
            if record is not None and ask_remove(self._window, name):
                session.library.remove(record)
            elif record is not None:
                return
            if self._in_garden(key):
                session.propose(self._without(key), self.tr("Take out {0}").format(name))
        except (NotKept, Refusal) as error:
            session.refused.emit(why_refused(error))

    def _without(self, key: Key) -> own.Garden:
        crop_id, variety_id = key
        if variety_id is None:
            return own.without_crop(self._session.garden, crop_id)
        return own.without_variety(self._session.garden, crop_id, variety_id)

    # files

    def import_file(self) -> None:
        """Take in crops, varieties and lots from a file, into the library."""
        path = ask_import(self._window)
        if path is None:
            return
        try:
            result = self._session.library.import_from(path)
        except NotKept as error:
            self._tell(self.tr("Nothing was taken in"), why_refused(error))
            return
        taken = len(result.own.crops), len(result.own.varieties), len(result.own.lots)
        words = self.tr("Your library holds {0} crops, {1} varieties and {2} seed lots now.").format(*taken)
        if result.replaced:
            words += " " + self.tr("Replaced: {0}.").format(", ".join(result.replaced[:8]))
        self.said.emit(words)

    def export_file(self) -> None:
        """Write the library to a file."""
        path = ask_export(self._window)
        if path is None:
            return
        try:
            self._session.library.export_to(path)
        except NotKept as error:
            self._tell(self.tr("Nothing was written"), why_refused(error))
            return
        self.said.emit(self.tr("Written to {0}.").format(path.name))

    def _tell(self, title: str, sentence: str) -> None:
        from gardencanvas.app import filing

        filing.tell(self._window, title, sentence)
