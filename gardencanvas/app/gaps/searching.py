"""Looking for what fits while the window has nothing else to do; stopped at once, never stale."""

from collections.abc import Callable, Generator
from time import perf_counter

from PySide6.QtCore import QObject, QTimer, Signal

from gardencanvas.app.session import Session
from gardencanvas.fit.checker import Checker
from gardencanvas.planner.gaps.answers import Progress
from gardencanvas.planner.gaps.survey import Survey, Surveyor

SLICE_S = 0.012  # a step more and it is still within two frames

Search = Generator[Progress, None, object]  # what it returns is what was found
Ask = Callable[[Survey, Checker], Search]


class GapSearch(QObject):
    """Runs one search at a time in slices between the window's events."""

    told = Signal(object)  # Progress
    found = Signal(object)  # what the search returns

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._surveyor: Surveyor | None = None
        self._checker: Checker | None = None
        self._search: Search | None = None
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._slice)
        session.changed.connect(self.stop)
        session.layout_changed.connect(self.stop)
        session.crops_changed.connect(self._forget)

    @property
    def busy(self) -> bool:
        """Whether it is looking."""
        return self._search is not None

    def survey(self) -> Survey:
        """The open ground of the committed garden's shown layout."""
        session = self._session
        if self._surveyor is None or self._surveyor.catalogue is not session.catalogue:
            self._surveyor = Surveyor(session.catalogue)
        return self._surveyor.survey(session.garden, session.layout_id)

    def ask(self, ask: Ask) -> None:
        """Begin a search in the place of any other. It has an engine of its own: previews go on meanwhile."""
        self.stop()
        if self._checker is None:
            self._checker = Checker(self._session.catalogue)
        self._search = ask(self.survey(), self._checker)
        self._timer.start()

    def stop(self, *_: object) -> None:
        """Look no further."""
        self._timer.stop()
        if self._search is not None:
            self._search.close()
            self._search = None

    def _forget(self) -> None:
        self.stop()
        self._surveyor = self._checker = None

    def _slice(self) -> None:
        until = perf_counter() + SLICE_S
        progress: Progress | None = None
        while self._search is not None and perf_counter() < until:
            try:
                progress = next(self._search)
            except StopIteration as end:
                self._search = None
                self._timer.stop()
                self.found.emit(end.value)
                return
            except Exception:
                self.stop()
                raise
        if progress is not None:
            self.told.emit(progress)
