"""The View menu."""

from PySide6.QtCore import QObject, Qt

from gardencanvas.app import language, settings, theme
from gardencanvas.app.menus.bar import Menus
from gardencanvas.app.menus.going import add_going
from gardencanvas.canvas.hidden import Hidden


class ViewMenu(QObject):
    """What is seen, and how."""

    def __init__(self, menus: Menus) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        menu = menus.menu(self.tr("&View"))
        view = self._window.view
        menus.add(menu, "zoom in", self.tr("Zoom &in"), view.zoom_in, ["Ctrl++", "Ctrl+="])
        menus.add(menu, "zoom out", self.tr("Zoom &out"), view.zoom_out, "Ctrl+-")
        menus.add(menu, "fit", self.tr("&Fit the plan"), view.fit, "Ctrl+9")
        menus.add(
            menu, "fit selection", self.tr("Fit the &selection"), self._fit_selection, "Ctrl+8",
            self._nothing_selected,
        )  # fmt: skip
        menu.addSeparator()
        menus.add(
            menu, "show all", self.tr("Show &everything"), self._show_all, "Ctrl+Shift+H", self._all_shown
        )
        menus.add(menu, "shown and locked", self.tr("What is shown and &locked"), self._shown_and_locked)
        menu.addSeparator()
        grid, snap = settings.flag("grid", default=True), settings.flag("snap", default=True)
        view.set_grid(grid)
        view.set_snap(snap)
        menus.check(menu, "grid", self.tr("&Grid"), self._grid, on=grid, keys="G")
        menus.check(menu, "snap", self.tr("S&nap"), self._snap, on=snap, keys="N")
        menu.addSeparator()
        for name, text, widget, key in (
            ("left panel", self.tr("Seed &tin and outline"), self._window.across.widget(0), "F6"),
            ("inspector panel", self.tr("&Inspector"), self._window.across.widget(2), "F7"),
            ("season panel", self.tr("Season and &findings"), self._window.down.widget(1), "F9"),
        ):
            menus.check(menu, name, text, widget.setVisible, on=True, keys=key)
        self._going = add_going(menus, menu)
        menu.addSeparator()
        look = menu.addMenu(self.tr("&Colours"))
        menus.choice(look, "theme", "system", {
            "system": self.tr("As the &system"), "light": self.tr("&Light"), "dark": self.tr("&Dark"),
        }, self._theme)  # fmt: skip
        units = menu.addMenu(self.tr("&Units"))
        menus.choice(units, "units", "metric", {
            "metric": self.tr("&Centimetres and metres"), "imperial": self.tr("&Inches and feet"),
        }, self._units)  # fmt: skip
        tongue = menu.addMenu(self.tr("Lan&guage"))
        menus.choice(tongue, "language", language.SYSTEM, {
            language.SYSTEM: self.tr("As the &system"), **language.LANGUAGES,
        }, self._language)  # fmt: skip

    def _nothing_selected(self) -> str:
        return "" if self._menus.session.selection else self.tr("Select something first.")

    def _all_shown(self) -> str:
        return "" if self._menus.session.hidden else self.tr("Nothing is hidden.")

    def _show_all(self) -> None:
        self._menus.session.hide(Hidden())

    def _shown_and_locked(self) -> None:
        window = self._window
        window.left.parentWidget().show()
        window.left.setCurrentWidget(window.outline)
        window.outline.parts.fold.setChecked(True)
        window.outline.parts.table.setFocus(Qt.FocusReason.ShortcutFocusReason)
        window.outline.parts.table.setCurrentCell(0, 1)

    def _fit_selection(self) -> None:
        self._window.view.zoom_to(self._menus.session.selection)

    def _grid(self, on: bool) -> None:
        settings.keep("grid", on)
        self._window.view.set_grid(on)

    def _snap(self, on: bool) -> None:
        settings.keep("snap", on)
        self._window.view.set_snap(on)

    def _theme(self, name: str) -> None:
        settings.keep("theme", name)
        self._window.dark = theme.wants_dark(name)
        self._window.apply_look()

    def _language(self, code: str) -> None:
        settings.keep("language", code)
        self._window.say(self.tr("The language changes when the program is opened the next time."))

    def _units(self, units: str) -> None:
        settings.keep("units", units)
        self._window.units = "imperial" if units == "imperial" else "metric"
        self._window.apply_look()
