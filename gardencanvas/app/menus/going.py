"""The part of the View menu that brings the keyboard to a panel."""

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QMenu, QTabWidget, QWidget

from gardencanvas.app.menus.bar import Menus


def add_going(menus: Menus, menu: QMenu) -> "Going":
    """Put a menu of panels to go to at the end of a menu; whoever asks must keep what is returned."""
    return Going(menus, menu)


class Going(QObject):
    """Alt and a digit brings the keyboard to a panel, unfolding it where it is hidden."""

    def __init__(self, menus: Menus, menu: QMenu) -> None:
        super().__init__(menus)
        self._window = window = menus.window
        into = menu.addMenu(self.tr("Go to a &panel"))
        for name, text, key, panel, first in (
            ("plan", self.tr("&Plan"), "Alt+1", window.view, window.view),
            ("seed tin", self.tr("Seed &tin"), "Alt+2", window.tin, window.tin.search),
            ("outline", self.tr("&Outline"), "Alt+3", window.outline, window.outline.tree),
            ("inspector", self.tr("&Inspector"), "Alt+4", window.inspector, None),
            ("season", self.tr("&Season"), "Alt+5", window.season, window.ribbon),
            ("findings", self.tr("&Findings"), "Alt+6", window.findings, window.findings.list),
        ):
            menus.add(into, f"go to {name}", text, lambda p=panel, f=first: self._go(p, f), key)

    def _go(self, panel: QWidget, first: QWidget | None) -> None:
        """Show a panel, its tab to the front, and give the keyboard to its first part that takes it."""
        above = panel.parentWidget()
        while above is not None and above is not self._window:
            if isinstance(above, QTabWidget):
                above.setCurrentWidget(_page(above, panel))
            if above.isHidden():
                above.show()
            above = above.parentWidget()
        target = first or _first(panel)
        if target is not None:
            target.setFocus(Qt.FocusReason.ShortcutFocusReason)


def _page(group: QTabWidget, panel: QWidget) -> QWidget:
    return next(w for i in range(group.count()) if (w := group.widget(i)) is panel or w.isAncestorOf(panel))


def _first(panel: QWidget) -> QWidget | None:
    """The first part of a panel that the Tab key stops at."""
    at = panel.nextInFocusChain()
    while at is not panel:
        stops = at.focusPolicy() & Qt.FocusPolicy.TabFocus
        if stops and panel.isAncestorOf(at) and at.isVisible() and at.isEnabled():
            return at
        at = at.nextInFocusChain()
    return None
