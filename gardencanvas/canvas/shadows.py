"""Shadows of fixtures on the plan, soft at the far edge."""

from datetime import date

from PySide6.QtGui import QPainterPath

from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.site import Site


def shadow_of(site: Site, fixture: Fixture, on: date) -> list[QPainterPath]:
    """The fixture's shadow about midday on a date; nothing until the light is known."""
    return []
