"""The Season menu: the date cursor and the findings."""

from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QObject

from gardencanvas.app.menus.bar import Menus
from gardencanvas.app.session import default_date

if TYPE_CHECKING:
    from gardencanvas.app.gaps.panel import GapsPanel


class SeasonMenu(QObject):
    """Through the year, and through what is found."""

    def __init__(self, menus: Menus) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        menu = menus.menu(self.tr("&Season"))
        menus.add(menu, "week back", self.tr("A week &earlier"), self._week_back, "Ctrl+Left")
        menus.add(menu, "week on", self.tr("A week &later"), self._week_on, "Ctrl+Right")
        menus.add(menu, "play", self.tr("&Play the season"), self._window.season.play.toggle, "P")
        menus.add(menu, "today", self.tr("&Today"), self._today, "Ctrl+T")
        menu.addSeparator()
        menus.add(menu, "what fits", self.tr("What &fits at a place…"), self._what_fits, "W")
        menus.add(menu, "where fits", self.tr("Where does the &crop fit?"), self._where_fits, "Shift+W")
        menus.add(menu, "start now", self.tr("What can be &started now?"), self._start_now)
        menu.addSeparator()
        menus.add(menu, "next finding", self.tr("&Next finding"), self._next_finding, "F8")
        menus.add(menu, "previous finding", self.tr("&Previous finding"), self._previous_finding, "Shift+F8")

    def _week_back(self) -> None:
        self._window.ribbon.step(-7)

    def _week_on(self) -> None:
        self._window.ribbon.step(7)

    def _today(self) -> None:
        self._menus.session.show_date(default_date(self._menus.session.layout))

    def _what_fits(self) -> None:
        self._gaps().choose_place()

    def _where_fits(self) -> None:
        self._gaps().ask_crop()

    def _start_now(self) -> None:
        self._gaps().ask_now()

    def _gaps(self) -> "GapsPanel":
        return cast("GapsPanel", self._window.show_tab("gaps"))

    def _next_finding(self) -> None:
        self._window.hints.used("findings")
        self._window.bottom.setCurrentWidget(self._window.findings)
        self._window.findings.go_next()

    def _previous_finding(self) -> None:
        self._window.hints.used("findings")
        self._window.bottom.setCurrentWidget(self._window.findings)
        self._window.findings.go_next(-1)
