"""A second desk on the garden of a session: another layout of it, worked on beside the first."""

from collections.abc import Iterable
from datetime import date

from PySide6.QtCore import QObject

from gardencanvas.app.session import Session
from gardencanvas.canvas.desk import Desk
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.layouts import day_moved


class BesideDesk(Desk):
    """Shows one layout; edits, undo and the date cursor are the session's, selection and report its own.

    The date is that of the session in the layout's own year.
    """

    def __init__(self, session: Session, layout_id: str, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.garden: Garden = session.garden
        self.layout_id = layout_id
        self.selection: frozenset[str] = frozenset()
        self.on = self._here(session.on)
        self._checker = Checker(session.catalogue)
        self._report: FitReport | None = None
        self._previewed: Garden | None = None
        session.changed.connect(self._follow)
        session.crops_changed.connect(self._know_anew)
        session.date_changed.connect(self._dated)

    def _years(self) -> int:
        return self.layout.year - self.session.layout.year

    def _here(self, on: date) -> date:
        return day_moved(on, self._years()) or on

    # what is known

    @property
    def catalogue(self) -> Catalogue:
        """The session's crops."""
        return self.session.catalogue

    @property
    def checker(self) -> Checker:
        """The engine that judges this layout."""
        return self._checker

    @property
    def report(self) -> FitReport:
        """The engine's report of this layout in the committed garden."""
        if self._report is None:
            self._report = self._checker.update(self.garden, self.layout_id)
        return self._report

    @property
    def shown_garden(self) -> Garden:
        """The garden previewed here, else the committed one."""
        return self._previewed or self.garden

    def _know_anew(self) -> None:
        self._checker, self._report = Checker(self.session.catalogue), None

    def _follow(self, before: Garden, after: Garden) -> None:
        self.garden, self._report = after, None
        if all(x.id != self.layout_id for x in after.layouts):
            self.show_layout(after.layouts[0].id)
        self.changed.emit(before, after)
        self.select(self.selection)

    # what is done

    def preview(self, garden: Garden | None) -> FitReport | None:
        """Judge a garden that is not committed; None ends the preview."""
        if garden is None and self._previewed is None:
            return None
        self._previewed = garden
        report = None if garden is None else self._checker.update(garden, self.layout_id)
        self.previewed.emit(report)
        return report

    def propose(self, after: Garden, text: str) -> bool:
        """Commit an edit as one step of the session."""
        self.preview(None)
        return self.session.propose(after, text)

    def select(self, ids: Iterable[str]) -> None:
        """Select items of this layout; unknown ids are dropped."""
        chosen = frozenset(i for i in ids if self.garden.find(self.layout_id, i) is not None)
        if chosen != self.selection:
            self.selection = chosen
            self.selection_changed.emit(chosen)

    def show_date(self, on: date) -> None:
        """Move the session's date cursor to that day in its year."""
        self.session.show_date(day_moved(on, -self._years()) or on)

    def _dated(self, on: date) -> None:
        self.on = self._here(on)
        self.date_changed.emit(self.on)

    def show_layout(self, layout_id: str) -> None:
        """Show another layout of the garden."""
        if layout_id == self.layout_id:
            return
        self.layout_id, self._report = layout_id, None
        self.select(())
        self.on = self._here(self.session.on)
        self.layout_changed.emit(layout_id)
        self.date_changed.emit(self.on)
