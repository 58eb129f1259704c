"""The File menu."""

from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence

from gardencanvas.app import filing, settings
from gardencanvas.app.labels import as_plain
from gardencanvas.app.menus.bar import Menus
from gardencanvas.app.session import Session
from gardencanvas.garden.planting import Planting

_KEY = QKeySequence.StandardKey


class FileMenu(QObject):
    """Gardens as files, and what is written from them."""

    def __init__(self, menus: Menus) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        menu = menus.menu(self.tr("&File"))
        menus.add(menu, "new", self.tr("&New garden"), self._new, _KEY.New)
        menus.add(menu, "open", self.tr("&Open…"), self._open, _KEY.Open)
        self._recent = menu.addMenu(self.tr("Open &recent"))
        self._recent.setToolTipsVisible(True)
        self._recent.aboutToShow.connect(self._fill_recent)
        menus.add(menu, "demo", self.tr("Open the &demo garden"), self._open_demo)
        menu.addSeparator()
        menus.add(menu, "save", self.tr("&Save"), self._save, _KEY.Save)
        menus.add(menu, "save as", self.tr("Save &as…"), self._save_as, "Ctrl+Shift+S")
        menus.add(menu, "versions", self.tr("Earlier &versions…"), self._versions, None, self._no_file)
        menus.add(menu, "recover", self.tr("Unsaved &work of before…"), self._recover)
        menu.addSeparator()
        menus.add(menu, "beds from file", self.tr("Beds &from a file…"), self._beds)
        menu.addSeparator()
        bed_map = self.tr("Print or save the &bed map…")
        menus.add(menu, "bed map", bed_map, self._bedmap, "Ctrl+P", self._no_bed)
        menus.add(
            menu, "strip", self.tr("P&lanting strip…"), self._strip, "Ctrl+Shift+P", self._not_one_planting
        )
        menus.add(menu, "picture", self.tr("Save a &picture…"), self._picture, "Ctrl+E")
        menu.addSeparator()
        menus.add(menu, "close", self.tr("&Quit"), self._window.close, "Ctrl+Q")

    def _new(self) -> None:
        from gardencanvas.app.start import new_garden

        if self._window.filing.may_leave(self._menus.session):
            self._window.set_session(Session(new_garden()))

    def _open(self) -> None:
        path = filing.ask_open(self._window)
        if path is not None:
            self._window.open_path(path)

    def _open_demo(self) -> None:
        from gardencanvas.app.start import demo_garden

        if self._window.filing.may_leave(self._menus.session):
            self._window.set_session(Session(demo_garden()))

    def _fill_recent(self) -> None:
        self._recent.clear()
        for path in settings.recent_files():
            action = self._recent.addAction(path.name.replace("&", "&&"))
            action.setData(str(path))
            action.setToolTip(as_plain(str(path)))
            action.triggered.connect(self._open_recent)
        if self._recent.isEmpty():
            none = self._recent.addAction(self.tr("none yet"))
            none.setEnabled(False)
            none.setToolTip(self.tr("No garden was opened or saved before."))
        else:
            self._recent.addSeparator()
            self._recent.addAction(self.tr("&Empty this list")).triggered.connect(settings.forget_files)

    def _open_recent(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self._window.open_path(Path(action.data()))

    def _save(self) -> None:
        self._window.filing.save(self._menus.session)

    def _save_as(self) -> None:
        self._window.filing.save_as(self._menus.session)

    def _no_file(self) -> str:
        if self._menus.session.path is not None:
            return ""
        return self.tr("Save the garden first: each save keeps a version.")

    def _versions(self) -> None:
        from gardencanvas.app.versions_dialog import VersionsDialog  # not needed to start

        dialog = VersionsDialog(self._window)
        dialog.exec()
        dialog.deleteLater()

    def _recover(self) -> None:
        from gardencanvas.app.recovery_dialog import offer_work  # not needed to start

        offer_work(self._window, asked=True)

    def _beds(self) -> None:
        from gardencanvas.app import beds_from_file  # not needed to start

        beds_from_file.ask(self._window)

    def _picture(self) -> None:
        from gardencanvas.app.printing.picture_dialog import PictureDialog  # not needed to start

        PictureDialog(self._window).exec()

    def _no_bed(self) -> str:
        if self._menus.session.layout.beds:
            return ""
        return self.tr("There is no bed in this layout yet: draw one first.")

    def _bedmap(self) -> None:
        from gardencanvas.app.printing.bedmap_dialog import BedMapDialog  # not needed to start

        BedMapDialog(self._window).exec()

    def _planting(self) -> Planting | None:
        session = self._menus.session
        found = [session.layout.by_id.get(i) for i in session.selection]
        return found[0] if len(found) == 1 and isinstance(found[0], Planting) else None

    def _not_one_planting(self) -> str:
        return "" if self._planting() is not None else self.tr("Select one planting first.")

    def _strip(self) -> None:
        from gardencanvas.app.printing.strip_dialog import StripDialog  # not needed to start

        planting = self._planting()
        if planting is not None:
            StripDialog(self._window, planting).exec()
