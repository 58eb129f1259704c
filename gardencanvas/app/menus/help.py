"""The Help menu."""

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QMessageBox

from gardencanvas import __version__
from gardencanvas.app.menus.bar import Menus


class HelpMenu(QObject):
    """What the marks mean, and what this is."""

    def __init__(self, menus: Menus) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        menu = menus.menu(self.tr("&Help"))
        menus.add(menu, "find command", self.tr("&Find a command…"), self._find_command, "Ctrl+K")
        menus.add(menu, "marks", self.tr("The four &verdicts"), self._verdicts, "F1")
        menus.add(menu, "hints", self.tr("Show &hints again"), self._hints, None, self._no_hints)
        menus.add(menu, "about", self.tr("&About Garden Canvas"), self._about)

    def _no_hints(self) -> str:
        return self.tr("No hint was used or sent away yet.") if self._window.hints.none_used() else ""

    def _hints(self) -> None:
        self._window.hints.again()
        self._menus.refresh()

    def _find_command(self) -> None:
        self._window.hints.used("commands")
        from gardencanvas.app.finding import find_command  # not needed to start

        find_command(self._window).exec()

    def _verdicts(self) -> None:
        box = self._box(self.tr("The four verdicts"))
        box.setText(
            self.tr(
                "clear – thin outline: nothing else uses this space while the plant stands.\n\n"
                "shares – double outline: it overlaps a neighbour and that works, since they differ in "
                "height, roots or time.\n\n"
                "strains – dashed outline: it works at a cost that is named: less light, a late harvest, "
                "thirst.\n\n"
                "clashes – thick, hatched outline: one of them fails."
            )
        )
        box.exec()

    def _about(self) -> None:
        box = self._box(self.tr("About Garden Canvas"))
        box.setText(self.tr("Garden Canvas {0}").format(__version__))
        box.setInformativeText(
            self.tr(
                "Plans several crops in the same ground. Its figures are handbook values with their ranges "
                "and sources; your soil and weather are your own. Follow local rules and qualified advice "
                "where a plant can hurt someone."
            )
        )
        box.exec()

    def _box(self, title: str) -> QMessageBox:
        box = QMessageBox(self._window)
        box.setWindowTitle(title)
        box.setTextFormat(Qt.TextFormat.PlainText)
        return box
