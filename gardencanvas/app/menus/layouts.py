"""The part of the Plan menu that is about layouts: which is shown, and copies to try things in."""

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QInputDialog, QMenu

from gardencanvas.app import commands
from gardencanvas.app.menus.bar import Menus


def add_layouts(menus: Menus, menu: QMenu) -> "Layouts":
    """Put the commands about layouts at the end of a menu; whoever asks must keep what is returned."""
    return Layouts(menus, menu)


class Layouts(QObject):
    """Choosing and copying layouts."""

    def __init__(self, menus: Menus, menu: QMenu) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        self._shown = menu.addMenu(self.tr("Show &layout"))
        self._shown.aboutToShow.connect(self._fill)
        menus.add(menu, "duplicate layout", self.tr("&Duplicate this layout…"), self._duplicate)
        menus.add(menu, "layouts", self.tr("A&ll layouts…"), self._all, "Ctrl+Shift+Y")
        menus.add(
            menu, "compare", self.tr("&Compare layouts…"), self._compare, "Ctrl+Shift+C", self._only_one
        )
        menus.add(
            menu, "two plans", self.tr("Two &plans side by side…"), self._two, "Ctrl+Alt+Y", self._only_one
        )

    def _only_one(self) -> str:
        if len(self._menus.session.garden.layouts) > 1:
            return ""
        return self.tr("There is one layout only: duplicate it to try something else.")

    def _all(self) -> None:
        from gardencanvas.app.comparing.layouts_dialog import LayoutsDialog  # not needed to start

        LayoutsDialog(self._window).exec()

    def _compare(self) -> None:
        from gardencanvas.app.comparing.dialog import ComparisonDialog  # not needed to start

        ComparisonDialog(self._window).exec()

    def _two(self) -> None:
        from gardencanvas.app.comparing.plans_dialog import PlansDialog  # not needed to start

        dialog = PlansDialog(self._window)
        dialog.exec()
        dialog.deleteLater()

    def _fill(self) -> None:
        session = self._menus.session
        self._shown.clear()
        for layout in session.garden.layouts:
            action = self._shown.addAction(f"{layout.name}, {layout.year}".replace("&", "&&"))
            action.setCheckable(True)
            action.setChecked(layout.id == session.layout_id)
            action.setData(layout.id)
            action.triggered.connect(self._show)

    def _show(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self._menus.session.show_layout(action.data())

    def _duplicate(self) -> None:
        session = self._menus.session
        suggested = self.tr("{0}, second try").format(session.layout.name)
        name, done = QInputDialog.getText(
            self._window, self.tr("Duplicate the layout"), self.tr("Name of the copy"), text=suggested
        )
        if done and name.strip():
            commands.duplicate_layout(session, name.strip()[:200])
