"""The Plan menu: tools, successions, crops, the site."""

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QMenu

from gardencanvas.app import commands
from gardencanvas.app.crop_commands import crop_commands, crop_in_hand
from gardencanvas.app.menus.background import add_background
from gardencanvas.app.menus.bar import Menus
from gardencanvas.app.menus.layouts import add_layouts
from gardencanvas.app.menus.volunteers import add_volunteers
from gardencanvas.canvas.naming import structure_name
from gardencanvas.garden.planting import Planting


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
            menus.add(menu, f"tool {tool}", text, lambda tool=tool: self._take(tool), key)
        self._structures(menu)
        self._background = add_background(menus, menu)
        menus.add(
            menu, "single plants", self.tr("Single &plants of the planting"), self._single_plants, "E",
            self._not_one_planting,
        )  # fmt: skip
        menus.add(menu, "fill", self.tr("Fi&ll with the crop in hand…"), self._fill, "F", self._no_bed)
        self._volunteers = add_volunteers(menus, menu)
        menu.addSeparator()
        menus.add(menu, "again", self.tr("&Again…"), self._again, "Ctrl+Shift+D", self._not_repeatable)
        menus.add(menu, "find on plan", self.tr("&Find on the plan…"), self._find_on_plan, "Ctrl+F")
        menus.add(menu, "find crop", self.tr("Find a crop in the seed &tin"), self._find_crop, "Ctrl+Shift+F")
        for name, text, do, key in crop_commands(self._window):
            menus.add(menu, name, text, do, key)
        menu.addSeparator()
        menus.add(menu, "site", self.tr("S&ite, frost and climate…"), self.edit_site)
        self._layouts = add_layouts(menus, menu)

    def _structures(self, menu: QMenu) -> None:
        """A menu for each group of what can be drawn beside plain beds."""
        groups = (
            (self.tr("More be&ds and paths"), ("circle bed", "keyhole bed", "curved bed", "hole", "path")),
            (self.tr("S&upports"), ("cane ring", "cane row", "stake", "net", "trellis")),
            (self.tr("Co&vers"), ("fleece", "mesh", "cloche", "frame")),
            (self.tr("Fi&xtures"), ("wall", "fence", "hedge", "shed", "tree")),
        )
        for title, kinds in groups:
            into = menu.addMenu(title)
            for kind in kinds:
                name = structure_name(kind)
                self._menus.add(
                    into, f"tool {kind}", name[0].upper() + name[1:],
                    lambda kind=kind: self._take(kind),
                )  # fmt: skip

    def _take(self, tool: str) -> None:
        """Take a tool in hand; the keys that follow are for the plan."""
        self._window.view.set_tool(tool)
        self._window.view.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def edit_site(self) -> None:
        """Change where the garden lies."""
        from gardencanvas.app.site_dialog import edit_site  # not needed to start

        edit_site(self._menus.session, self._window, self._window.units)

    def _not_one_planting(self) -> str:
        session = self._menus.session
        chosen = [session.layout.by_id.get(i) for i in session.selection]
        if len(chosen) == 1 and isinstance(chosen[0], Planting):
            return self.tr("It is locked; unlock it first.") if chosen[0].locked else ""
        return self.tr("Select one planting first.")

    def _single_plants(self) -> None:
        self._window.view.set_tool("stations")
        self._window.view.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _no_bed(self) -> str:
        return "" if self._menus.session.layout.beds else self.tr("Draw a bed first.")

    def _fill(self) -> None:
        from gardencanvas.app.fill.asking import ask_fill  # not needed to start

        ask_fill(self._window, crop_in_hand(self._window))

    def _not_repeatable(self) -> str:
        if commands.repeatable(self._menus.session) is not None:
            return ""
        return self.tr("Select one planting, or one succession, first.")

    def _again(self) -> None:
        from gardencanvas.app.succession_dialog import ask

        planting = commands.repeatable(self._menus.session)
        if planting is not None:
            ask(self._window, planting)

    def _find_on_plan(self) -> None:
        from gardencanvas.app.finding import find_on_plan  # not needed to start

        find_on_plan(self._window).exec()

    def _find_crop(self) -> None:
        self._window.left.setCurrentWidget(self._window.tin)
        self._window.tin.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self._window.tin.search.selectAll()
