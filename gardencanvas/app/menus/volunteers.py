"""Commands for what came up by itself, in the Plan menu."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QMenu

from gardencanvas.app.crop_commands import crop_in_hand
from gardencanvas.app.volunteers import Volunteers

if TYPE_CHECKING:
    from gardencanvas.app.menus.bar import Menus


def add_volunteers(menus: "Menus", menu: QMenu) -> Volunteers:
    """Put the commands into a menu of their own; what they work on must be held."""
    window, do = menus.window, Volunteers(menus.session)

    def mark() -> None:
        key = crop_in_hand(window)
        if key is None:
            window.say(menus.tr("Choose a crop in the seed tin first."))
            return
        window.view.carry(*key, "single")
        window.view.place.came_up(on=True)

    into = menu.addMenu(menus.tr("What came &up by itself"))
    into.setToolTipsVisible(True)
    menus.add(into, "came up", menus.tr("&Mark a place where it came up"), mark, "U")
    menus.add(into, "keep volunteer", menus.tr("&Keep it"), do.keep, why_not=do.why_not_keep)
    menus.add(into, "thin volunteer", menus.tr("&Thin it to its spacing"), do.thin, why_not=do.why_not_thin)
    menus.add(into, "remove volunteer", menus.tr("&Remove it"), do.remove, why_not=do.why_not)
    return do
