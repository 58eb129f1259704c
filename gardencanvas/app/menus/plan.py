"""The Plan menu: tools, successions, crops, the site."""

from PySide6.QtCore import QObject, Qt

from gardencanvas.app import commands
from gardencanvas.app.crop_commands import crop_commands
from gardencanvas.app.menus.bar import Menus
from gardencanvas.app.menus.layouts import add_layouts


class PlanMenu(QObject):
    """What is drawn and planted, and where it lies."""

    def __init__(self, menus: Menus) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        menu = menus.menu(self.tr("&Plan"))
        for tool, text, key in (
            ("select", self.tr("&Select and move"), "V"),
            ("bed", self.tr("Draw a &bed"), "B"),
            ("polygon", self.tr("Draw a bed by &corners"), "Shift+B"),
            ("measure", self.tr("&Measure"), "M"),
            ("pan", self.tr("&Pan"), "H"),
        ):
            menus.add(menu, f"tool {tool}", text, lambda tool=tool: self._window.view.set_tool(tool), key)
        menu.addSeparator()
        menus.add(menu, "again", self.tr("&Again…"), self._again, "Ctrl+Shift+D", self._not_repeatable)
        menus.add(menu, "find crop", self.tr("&Find a crop in the seed tin"), self._find_crop, "Ctrl+F")
        for name, text, do, key in crop_commands(self._window):
            menus.add(menu, name, text, do, key)
        menu.addSeparator()
        menus.add(menu, "site", self.tr("S&ite, frost and climate…"), self.edit_site)
        self._layouts = add_layouts(menus, menu)

    def edit_site(self) -> None:
        """Change where the garden lies."""
        from gardencanvas.app.site_dialog import edit_site  # not needed to start

        edit_site(self._menus.session, self._window, self._window.units)

    def _not_repeatable(self) -> str:
        if commands.repeatable(self._menus.session) is not None:
            return ""
        return self.tr("Select one planting, or one succession, first.")

    def _again(self) -> None:
        from gardencanvas.app.succession_dialog import ask

        planting = commands.repeatable(self._menus.session)
        if planting is not None:
            ask(self._window, planting)

    def _find_crop(self) -> None:
        self._window.left.setCurrentWidget(self._window.tin)
        self._window.tin.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self._window.tin.search.selectAll()
