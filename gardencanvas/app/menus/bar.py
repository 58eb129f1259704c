"""The menu bar of a window: builds its menus and knows every command by name."""

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QPoint
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

from gardencanvas.app import settings
from gardencanvas.app.menus.letters import give_letters
from gardencanvas.app.session import Session

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

Keys = QKeySequence.StandardKey | str | list[str] | None
WhyNot = Callable[[], str]  # why a command cannot be done now, in a sentence; empty when it can


class Menus(QObject):
    """Every command with its menu, its keys and, where it cannot be done, the reason."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self.window = window
        self.all: dict[str, QAction] = {}
        self._why_not: dict[str, WhyNot] = {}
        self._sections: list[QObject] = []
        self.rebuild()

    @property
    def session(self) -> Session:
        """The session of the window, which may change."""
        return self.window.session

    def rebuild(self) -> None:
        """Make the menus anew, for a new session."""
        from gardencanvas.app.menus.arrange import ArrangeMenu
        from gardencanvas.app.menus.edit import EditMenu
        from gardencanvas.app.menus.file import FileMenu
        from gardencanvas.app.menus.help import HelpMenu
        from gardencanvas.app.menus.plan import PlanMenu
        from gardencanvas.app.menus.season import SeasonMenu
        from gardencanvas.app.menus.view import ViewMenu

        self.window.menuBar().clear()
        self.all.clear()
        self._why_not.clear()
        for section in self._sections:
            section.deleteLater()
        self._sections = [
            kind(self) for kind in (FileMenu, EditMenu, ViewMenu, PlanMenu, ArrangeMenu, SeasonMenu, HelpMenu)
        ]
        for action in self.window.menuBar().actions():
            menu = action.menu()
            if isinstance(menu, QMenu):
                give_letters(menu)
        self.window.view.context_menu.connect(self.show_menu)
        self.window.outline.context_menu.connect(self.show_menu)
        self.session.hidden_changed.connect(self.refresh)
        self.session.selection_changed.connect(self.refresh)
        self.session.changed.connect(self.refresh)
        self.session.layout_changed.connect(self.refresh)
        self.session.path_changed.connect(self.refresh)
        self.refresh()

    def menu(self, title: str) -> QMenu:
        """A new menu at the end of the bar."""
        menu = self.window.menuBar().addMenu(title)
        menu.setToolTipsVisible(True)
        return menu

    def add(
        self,
        menu: QMenu,
        name: str,
        text: str,
        do: Callable[[], object],
        keys: Keys = None,
        why_not: WhyNot | None = None,
    ) -> QAction:
        """Put a command at the end of a menu; ``name`` is what the program calls it."""
        action = QAction(text, self)
        _set_keys(action, keys)
        action.triggered.connect(lambda _checked=False: do())
        return self._keep(menu, name, action, why_not)

    def check(
        self, menu: QMenu, name: str, text: str, do: Callable[[bool], object], *, on: bool, keys: Keys = None
    ) -> QAction:
        """Put something that is on or off into a menu."""
        action = QAction(text, self)
        action.setCheckable(True)
        action.setChecked(on)
        _set_keys(action, keys)
        action.toggled.connect(do)
        return self._keep(menu, name, action, None)

    def choice(
        self, menu: QMenu, key: str, default: str, words: dict[str, str], do: Callable[[str], object]
    ) -> None:
        """Put one of several into a menu; what is chosen is kept in the settings under ``key``."""
        group = QActionGroup(self)
        chosen = settings.text(key, default)
        for value, text in words.items():
            action = QAction(text, self)
            action.setCheckable(True)
            action.setChecked(value == chosen)
            action.triggered.connect(lambda _checked=False, value=value: do(value))
            group.addAction(action)
            self._keep(menu, f"{key} {value}", action, None)

    def _keep(self, menu: QMenu, name: str, action: QAction, why_not: WhyNot | None) -> QAction:
        menu.addAction(action)
        self.all[name] = action
        if why_not is not None:
            self._why_not[name] = why_not
        return action

    def refresh(self, *_: object) -> None:
        """Ask each command whether it can be done now; one that cannot says why."""
        for name, why_not in self._why_not.items():
            reason = why_not()
            action = self.all[name]
            action.setEnabled(not reason)
            action.setToolTip(reason)
            action.setStatusTip(reason)

    def why_not(self, name: str) -> str:
        """Why a command cannot be done now; empty when it can."""
        reason = self._why_not.get(name)
        return reason() if reason is not None else ""

    def show_menu(self, place: QPoint, ids: frozenset[str]) -> None:
        """The menu of what was clicked on the plan."""
        if not ids <= self.session.selection:
            self.session.select(ids)
        menu = QMenu(self.window)
        menu.setToolTipsVisible(True)
        for name in self._on_the_plan(ids):
            if name in self.all:
                menu.addAction(self.all[name])
        menu.exec(place)
        menu.deleteLater()

    def _on_the_plan(self, ids: frozenset[str]) -> Iterable[str]:
        if not ids:
            return ("select all", "tool bed", "fit")
        often = ("duplicate", "delete", "turn right", "turn left", "lock", "unlock", "hide", "fit selection")
        some = ("keep volunteer", "thin volunteer", "fill", "again", "select succession")
        return (*often, *(n for n in some if not self.why_not(n)))


def _set_keys(action: QAction, keys: Keys) -> None:
    if isinstance(keys, QKeySequence.StandardKey):
        action.setShortcuts(keys)
    elif keys is not None:
        several = [keys] if isinstance(keys, str) else keys
        action.setShortcuts([QKeySequence(k) for k in several])
