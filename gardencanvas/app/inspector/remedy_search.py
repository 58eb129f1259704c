"""Looking for remedies while the window has nothing else to do."""

from collections import deque
from collections.abc import Iterable
from time import perf_counter
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from gardencanvas.app.session import Session
from gardencanvas.fit.report import Finding, Remedy
from gardencanvas.garden.garden import Garden

if TYPE_CHECKING:
    from gardencanvas.planner.remedies import Search

SLICE_S = 0.006  # with one trial more a slice stays within a frame
SETTLE_MS = 120  # a selection that is only passed over starts no search


class RemedySearch(QObject):
    """Searches in slices between the window's events, for findings of the committed garden only.

    It waits while anything is previewed, and drops what it has once garden or layout is another.
    """

    found = Signal(str, object)  # id of a finding, tuple of its remedies

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._of: tuple[Garden, str] | None = None
        self._known: dict[str, tuple[Remedy, ...]] = {}
        self._queue: deque[Finding] = deque()
        self._finding: Finding | None = None
        self._search: Search | None = None
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._slice)
        session.changed.connect(self._drop)
        session.layout_changed.connect(self._drop)
        session.previewed.connect(self._previewed)

    def look_for(self, findings: Iterable[Finding]) -> None:
        """Look for remedies of these findings, in this order, and of no others any more.

        ``found`` is emitted for each; at once for those that are known already.
        """
        session = self._session
        if self._of is None or self._of[0] is not session.garden or self._of[1] != session.layout_id:
            self._drop()
            self._of = (session.garden, session.layout_id)
        self._stop()
        for finding in findings:
            if finding.id in self._known:
                self.found.emit(finding.id, self._known[finding.id])
            else:
                self._queue.append(finding)
        if self._queue:
            self._timer.start(SETTLE_MS)

    @property
    def busy(self) -> bool:
        """Whether something is still being looked for."""
        return self._search is not None or bool(self._queue)

    def _stop(self) -> None:
        self._timer.stop()
        self._queue.clear()
        if self._search is not None:
            self._search.close()
        self._search = self._finding = None

    def _drop(self, *_: object) -> None:
        self._stop()
        self._known.clear()
        self._of = None

    def _previewed(self, report: object) -> None:
        if report is not None:
            self._timer.stop()
        elif self.busy:
            self._timer.start(SETTLE_MS)

    def _slice(self) -> None:
        self._timer.setInterval(0)
        until = perf_counter() + SLICE_S
        while perf_counter() < until:
            if self._search is None and not self._begin():
                self._timer.stop()
                return
            self._step()

    def _begin(self) -> bool:
        if not self._queue:
            return False
        from gardencanvas.planner.remedies import search  # not needed to start

        session = self._session
        self._finding = self._queue.popleft()
        self._search = search(
            session.garden, session.layout_id, self._finding, session.checker, session.catalogue
        )
        return True

    def _step(self) -> None:
        if self._search is None or self._finding is None:
            return
        try:
            next(self._search)
        except StopIteration as end:
            finding_id = self._finding.id
            self._known[finding_id] = end.value
            self._search = self._finding = None
            self.found.emit(finding_id, end.value)
        except Exception:
            self._stop()
            raise
