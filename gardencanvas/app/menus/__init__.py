"""The menu bar: one module per menu, all commands by name in one place."""

from gardencanvas.app.menus.bar import Menus

__all__ = ["Menus"]
