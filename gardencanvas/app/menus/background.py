"""The part of the Plan menu that is about the picture under the plan."""

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QMenu

from gardencanvas.app.menus.bar import Menus


def add_background(menus: Menus, menu: QMenu) -> "BackgroundMenu":
    """Put its commands into a menu of their own; whoever asks must keep what is returned."""
    return BackgroundMenu(menus, menu)


class BackgroundMenu(QObject):
    """Choosing, scaling, moving, showing, locking and removing it."""

    def __init__(self, menus: Menus, menu: QMenu) -> None:
        super().__init__(menus)
        self._menus, self._do = menus, menus.window.background
        into = menu.addMenu(self.tr("Background pict&ure"))
        into.setToolTipsVisible(True)
        none, fixed = self._do.why_none, self._do.why_fixed
        menus.add(into, "backdrop", self.tr("&Choose a background picture…"), self._do.choose)
        menus.add(
            into,
            "backdrop scale",
            self.tr("&Scale the background picture by two points"),
            self._scale,
            None,
            fixed,
        )
        menus.add(
            into, "backdrop move", self.tr("&Move and turn the background picture"), self._move, None, fixed
        )
        menus.add(
            into,
            "backdrop show",
            self.tr("Show or &hide the background picture"),
            self._show,
            "Ctrl+Shift+B",
            none,
        )
        menus.add(
            into, "backdrop lock", self.tr("&Lock or unlock the background picture"), self._lock, None, none
        )
        menus.add(
            into, "backdrop remove", self.tr("&Remove the background picture"), self._do.remove, None, none
        )

    def _scale(self) -> None:
        self._do.work("backdrop scale")

    def _move(self) -> None:
        self._do.work("backdrop")

    def _show(self) -> None:
        backdrop = self._menus.session.garden.backdrop
        if backdrop is not None:
            self._do.show(on=not backdrop.shown)

    def _lock(self) -> None:
        backdrop = self._menus.session.garden.backdrop
        if backdrop is not None:
            self._do.lock(on=not backdrop.locked)
