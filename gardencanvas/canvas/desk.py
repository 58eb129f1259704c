"""What the canvas sees of the window's session: the garden on the desk, and one way to change it.

``app.session.Session`` adds the path, saving and the undo stack. Everything a gesture changes goes through
``propose``; everything that is shown follows ``changed``.
"""

from collections.abc import Iterable
from datetime import date

from PySide6.QtCore import QObject, Signal

from gardencanvas.canvas.hidden import Hidden
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden, Layout


class Desk(QObject):
    """The garden being worked on, its shown layout, date, selection and report."""

    changed = Signal(object, object)  # garden before, garden after: once per committed edit, undo or redo
    previewed = Signal(object)  # FitReport of a garden not yet committed (a drag), or None when it ends
    selection_changed = Signal(object)  # frozenset of ids
    date_changed = Signal(object)  # datetime.date
    layout_changed = Signal(str)  # another layout is shown
    refused = Signal(str)  # a sentence: an edit that could not be done
    hidden_changed = Signal(object)  # Hidden

    garden: Garden
    layout_id: str
    selection: frozenset[str]
    on: date
    hidden: Hidden = Hidden()

    @property
    def layout(self) -> Layout:
        """The shown layout."""
        return self.garden.layout(self.layout_id)

    @property
    def shown_garden(self) -> Garden:
        """The garden on the screen: the one previewed, else the committed one."""
        return self.garden

    @property
    def catalogue(self) -> Catalogue:
        """All crops known here, the garden's own included."""
        raise TypeError("Desk is a base: use Session")

    @property
    def checker(self) -> Checker:
        """The engine that judges here, for searches on the window's own thread."""
        raise TypeError("Desk is a base: use Session")

    @property
    def report(self) -> FitReport:
        """The engine's report of the committed garden; computed when asked for."""
        raise TypeError("Desk is a base: use Session")

    def preview(self, garden: Garden | None) -> FitReport | None:
        """Judge a garden that is not committed (emits ``previewed``); None ends the preview."""
        raise TypeError("Desk is a base: use Session")

    def propose(self, after: Garden, text: str) -> bool:
        """Commit an edit as one undo step named ``text``; False when nothing changed."""
        raise TypeError("Desk is a base: use Session")

    def hide(self, hidden: Hidden) -> None:
        """Hide this, and nothing else."""
        raise TypeError("Desk is a base: use Session")

    def select(self, ids: Iterable[str]) -> None:
        """Select items of the shown layout or fixtures by id."""
        raise TypeError("Desk is a base: use Session")

    def show_date(self, on: date) -> None:
        """Move the date cursor."""
        raise TypeError("Desk is a base: use Session")
