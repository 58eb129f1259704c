"""One garden on the desk: its value, undo, file and live report. Knows no widget."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Signal

from gardencanvas.app.history import History
from gardencanvas.app.shelf import Shelf, shelf
from gardencanvas.canvas.desk import Desk
from gardencanvas.canvas.hidden import Hidden
from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.files import Stamp, open_stamped
from gardencanvas.fit.aids import growing_of
from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.own import adopted
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import Site
from gardencanvas.season.course import Course, Growing
from gardencanvas.season.growth import follow, span
from gardencanvas.season.windows import Window, windows


@dataclass
class _Followed:
    """A planting's way through the season, and what it was computed from."""

    site: Site
    growing: Growing
    course: Course
    window: Window | None = None


class Session(Desk):
    """The garden being worked on.

    ``propose`` is the only way to change it; ``changed(before, after)`` is emitted once for each committed
    edit, undo and redo.
    """

    path_changed = Signal()
    pointed_at = Signal(object)  # a plan point to bring into view
    unsaved_changed = Signal(bool)
    crops_changed = Signal()  # other crops or varieties are known

    def __init__(
        self,
        garden: Garden,
        path: Path | None = None,
        parent: QObject | None = None,
        library: Shelf | None = None,
        stamp: Stamp | None = None,
    ) -> None:
        super().__init__(parent)
        self.garden = garden
        self.stamp = stamp  # what the file was when it was opened or last saved; None: not known
        self.library = library or shelf()
        self.library.changed.connect(self._know_anew)
        self.path = path
        self.layout_id = garden.layouts[0].id
        self.selection: frozenset[str] = frozenset()
        self.on = default_date(garden.layouts[0])
        self.history = History(garden, self)
        self.history.moved.connect(self._put)
        self.history.clean_changed.connect(self._clean_changed)
        self._catalogue = self._known_with(garden)
        self._checker = Checker(self._catalogue)
        self._report: FitReport | None = None
        self._preview_report: FitReport | None = None
        self._preview_garden: Garden | None = None
        self._courses: dict[str, _Followed] = {}

    # what is known

    @property
    def catalogue(self) -> Catalogue:
        """All crops known here, the library's and the garden's own included."""
        return self._catalogue

    def _known_with(self, garden: Garden) -> Catalogue:
        return self.library.over(catalogue()).with_own(garden.crops, garden.varieties)

    def _know_anew(self) -> None:
        self._catalogue = self._known_with(self.garden)
        self._checker = Checker(self._catalogue)
        self._report = None
        self.crops_changed.emit()

    @property
    def checker(self) -> Checker:
        """The engine that judges here, for searches on the window's own thread."""
        return self._checker

    @property
    def report(self) -> FitReport:
        """The engine's report of the committed garden and shown layout."""
        if self._report is None:
            self._report = self._checker.update(self.garden, self.layout_id)
        return self._report

    @property
    def shown_report(self) -> FitReport:
        """The report of what is on the screen: the preview during a drag, else the committed garden's."""
        return self._preview_report or self.report

    @property
    def shown_garden(self) -> Garden:
        """The garden on the screen: the one previewed, else the committed one."""
        return self._preview_garden or self.garden

    def course(self, planting: Planting) -> Course:
        """How one planting grows through the season; computed anew only when that changes."""
        return self._followed(planting).course

    def harvest_window(self, planting: Planting) -> Window:
        """Its harvest over simulated years; computed when first asked for."""
        followed = self._followed(planting)
        if followed.window is None:
            site = self.garden.site
            (followed.window,) = windows(site, [followed.growing], followed.course.weeks)
        return followed.window

    def _followed(self, planting: Planting) -> _Followed:
        crop = self.catalogue.resolve(planting.crop, planting.variety)
        layout, site = self.layout, self.garden.site
        growing = growing_of(layout, planting, crop)
        known = self._courses.get(planting.id)
        if known is None or known.site is not site or known.growing != growing:
            weeks = span(site, [growing], layout.season)
            known = _Followed(site, growing, follow(site, [growing], weeks))
            self._courses[planting.id] = known
        return known

    @property
    def unsaved(self) -> bool:
        """Whether there are edits that no file holds."""
        return not self.history.is_clean()

    @property
    def title(self) -> str:
        """The garden's name."""
        return self.garden.name

    # changing it

    def propose(self, after: Garden, text: str) -> bool:
        """Commit an edit as one undo step named ``text``; False when nothing changed.

        What it plants of the grower's library is taken into the garden too, so that its file stands alone.
        """
        self.preview(None)
        after = adopted(self.garden, after, self._catalogue, catalogue())
        if after is self.garden or after == self.garden:
            return False
        self.history.push(after, text)
        return True

    def preview(self, garden: Garden | None) -> FitReport | None:
        """Judge a garden that is not committed; None ends the preview."""
        if garden is None:
            if self._preview_report is not None:
                self._preview_report = self._preview_garden = None
                self.previewed.emit(None)
            return None
        self._preview_report = self._checker.update(garden, self.layout_id)
        self._preview_garden = garden
        self.previewed.emit(self._preview_report)
        return self._preview_report

    def _put(self) -> None:
        before, garden = self.garden, self.history.garden
        self.garden = garden
        self._report = None
        others = garden.crops is not before.crops or garden.varieties is not before.varieties
        if others:
            self._catalogue = self._known_with(garden)
            self._checker = Checker(self._catalogue)
        if all(x.id != self.layout_id for x in garden.layouts):
            self.show_layout(garden.layouts[0].id)
        present = {i for i in self.selection if garden.find(self.layout_id, i) is not None}
        if others:
            self.crops_changed.emit()
        self._show_new(before, garden)
        self.changed.emit(before, garden)
        if present != self.selection:
            self.select(present)

    # what is shown

    def select(self, ids: Iterable[str]) -> None:
        """Select items of the shown layout or fixtures by id; unknown ids are dropped."""
        chosen = frozenset(i for i in ids if self.garden.find(self.layout_id, i) is not None)
        if chosen != self.selection:
            self.selection = chosen
            self.selection_changed.emit(chosen)

    def hide(self, hidden: Hidden) -> None:
        """Hide this, and nothing else; what is hidden is not selected any more."""
        if hidden == self.hidden:
            return
        self.hidden = hidden
        chosen = ((i, self.garden.find(self.layout_id, i)) for i in self.selection)
        self.select(i for i, item in chosen if item is not None and not hidden.hides(item))
        self.hidden_changed.emit(hidden)

    def _show_new(self, before: Garden, after: Garden) -> None:
        """Show what was drawn or planted just now, though its sort be hidden."""
        if not self.hidden or all(x.id != self.layout_id for x in before.layouts):
            return
        known = before.layout(self.layout_id).by_id.keys() | {f.id for f in before.fixtures}
        items = (*after.layout(self.layout_id).items(), *after.fixtures)
        new = [item for item in items if item.id not in known and self.hidden.hides(item)]
        if new:
            self.hide(self.hidden.showing(new))

    def show_date(self, on: date) -> None:
        """Move the date cursor."""
        if on != self.on:
            self.on = on
            self.date_changed.emit(on)

    def show_layout(self, layout_id: str) -> None:
        """Show another layout of the garden."""
        if layout_id != self.layout_id:
            year = self.layout.year if any(x.id == self.layout_id for x in self.garden.layouts) else None
            self.layout_id = layout_id
            self._report = None
            self.select(())
            self.layout_changed.emit(layout_id)
            if self.layout.year != year:
                self.show_date(default_date(self.layout))

    # the file

    def was_saved(self, garden: Garden, path: Path, stamp: Stamp) -> None:
        """Take note that a garden of this session was written to a file, which becomes its own."""
        self.stamp = stamp
        if path != self.path:
            self.path = path
            self.path_changed.emit()
        if garden is self.garden:
            self.history.set_clean()

    @classmethod
    def opened(cls, path: Path) -> "Session":
        """A session on a garden file; raises ``FileRefused``."""
        garden, stamp = open_stamped(path)
        return cls(garden, path, stamp=stamp)

    @classmethod
    def recovered(
        cls, worked: Garden, saved: Garden | None, path: Path | None, stamp: Stamp | None
    ) -> "Session":
        """A session on work that no file holds; where a file holds an earlier state, undo goes back to it."""
        session = cls(worked if saved is None else saved, path, stamp=stamp)
        if saved is None:
            session.history.set_unsaved()
        else:
            session.history.push(
                worked, QCoreApplication.translate("Session", "Work before the program ended")
            )
        return session

    def _clean_changed(self, clean: bool) -> None:
        self.unsaved_changed.emit(not clean)


def default_date(layout: Layout) -> date:
    """Today, if it lies in the layout's year; else the middle of its growing season."""
    first, last = layout.season
    today = date.today()
    if first <= today <= last:
        return today
    return layout.middle
