"""The Edit menu."""

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication, QKeySequence

from gardencanvas.app import clipboard, commands
from gardencanvas.app.menus.bar import Menus
from gardencanvas.app.shown_and_locked import hide_selected
from gardencanvas.canvas import keys

_KEY = QKeySequence.StandardKey


class EditMenu(QObject):
    """Undo, and what is done to the selection."""

    def __init__(self, menus: Menus) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        menu = menus.menu(self.tr("&Edit"))
        menus.add(menu, "undo", self.tr("&Undo"), self._undo, _KEY.Undo, self._nothing_to_undo)
        menus.add(menu, "redo", self.tr("&Redo"), self._redo, _KEY.Redo, self._nothing_to_redo)
        menus.add(menu, "steps", self.tr("&Steps…"), self._steps, "Ctrl+Alt+Z", self._no_steps)
        menu.addSeparator()
        some = self._nothing_selected
        menus.add(menu, "cut", self.tr("Cu&t"), lambda: clipboard.cut(self._window), _KEY.Cut, some)
        menus.add(menu, "copy", self.tr("&Copy"), lambda: clipboard.copy(self._window), _KEY.Copy, some)
        menus.add(
            menu,
            "paste",
            self.tr("&Paste"),
            lambda: clipboard.paste(self._window),
            _KEY.Paste,
            self._nothing_copied,
        )
        menus.add(menu, "duplicate", self.tr("&Duplicate"), self._duplicate, "Ctrl+D", some)
        menus.add(menu, "delete", self.tr("De&lete"), self._delete, ["Del", "Backspace"], some)
        menus.add(menu, "turn right", self.tr("&Turn right 15°"), self._turn_right, "R", some)
        menus.add(menu, "turn left", self.tr("Turn &left 15°"), self._turn_left, "Shift+R", some)
        menus.add(menu, "lock", self.tr("Loc&k"), self._lock, "Ctrl+L", some)
        menus.add(menu, "unlock", self.tr("U&nlock"), self._unlock, "Ctrl+Shift+L", some)
        menus.add(menu, "hide", self.tr("&Hide"), self._hide, "Ctrl+H", some)
        menu.addSeparator()
        menus.add(menu, "select all", self.tr("Select &all"), self._select_all, _KEY.SelectAll)
        menus.add(
            menu, "select succession", self.tr("Select the &whole succession"), self._select_succession,
            why_not=self._no_succession,
        )  # fmt: skip
        menus.add(menu, "deselect", self.tr("D&eselect"), self._deselect, "Ctrl+Shift+A", some)
        QGuiApplication.clipboard().dataChanged.connect(menus.refresh)
        menus.session.history.moved.connect(self._name_steps)
        self._name_steps()

    def _nothing_selected(self) -> str:
        return "" if self._menus.session.selection else self.tr("Select something first.")

    def _nothing_copied(self) -> str:
        if clipboard.holds_clipping():
            return ""
        return self.tr("The clipboard holds nothing that was copied from a garden.")

    def _no_succession(self) -> str:
        if commands.successions(self._menus.session):
            return ""
        return self.tr("Select a planting that comes again first.")

    def _nothing_to_undo(self) -> str:
        return "" if self._menus.session.history.undo_text is not None else self.tr("Nothing to take back.")

    def _nothing_to_redo(self) -> str:
        return "" if self._menus.session.history.redo_text is not None else self.tr("Nothing to do again.")

    def _no_steps(self) -> str:
        return "" if self._menus.session.history.count() else self.tr("Nothing has been changed yet.")

    def _steps(self) -> None:
        from gardencanvas.app.finding import find_step  # not needed to start

        find_step(self._window).exec()

    def _name_steps(self) -> None:
        history = self._menus.session.history
        for name, text, step in (
            ("undo", self.tr("&Undo {0}"), history.undo_text),
            ("redo", self.tr("&Redo {0}"), history.redo_text),
        ):
            action = self._menus.all.get(name)
            if action is not None:
                action.setText(text.format((step or "").replace("&", "&&")).rstrip())
        self._menus.refresh()

    def _undo(self) -> None:
        self._menus.session.history.undo()

    def _redo(self) -> None:
        self._menus.session.history.redo()

    def _duplicate(self) -> None:
        keys.duplicate(self._window.view)

    def _delete(self) -> None:
        keys.delete(self._window.view)

    def _turn_right(self) -> None:
        keys.turn(self._window.view, 15.0)

    def _turn_left(self) -> None:
        keys.turn(self._window.view, -15.0)

    def _lock(self) -> None:
        commands.lock(self._menus.session, locked=True)

    def _unlock(self) -> None:
        commands.lock(self._menus.session, locked=False)

    def _hide(self) -> None:
        hide_selected(self._menus.session)

    def _select_all(self) -> None:
        keys.select_all(self._window.view)

    def _select_succession(self) -> None:
        session = self._menus.session
        session.select(session.selection | commands.successions(session))

    def _deselect(self) -> None:
        self._menus.session.select(())
