"""What is done about plantings that nobody sowed: kept, thinned, removed; or why it cannot be."""

from collections.abc import Callable

from gardencanvas.app.session import Session
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.volunteers import keep
from gardencanvas.planner.thinning import thinned
from gardencanvas.words.plain import planting_name
from gardencanvas.words.refusals import why_refused

_Edit = Callable[[Planting], Garden]


class Volunteers:
    """Commands for the one volunteer that is selected."""

    def __init__(self, session: Session) -> None:
        self._session = session

    @property
    def chosen(self) -> Planting | None:
        """The one volunteer that is selected."""
        session = self._session
        if len(session.selection) != 1:
            return None
        item = session.layout.by_id.get(next(iter(session.selection)))
        return item if isinstance(item, Planting) and item.start.kind == "volunteer" else None

    def why_not(self) -> str:
        """Why nothing can be done about it; empty when something can."""
        planting = self.chosen
        if planting is None:
            return self._session.tr("Select one planting that came up by itself first.")
        return self._session.tr("It is locked; unlock it first.") if planting.locked else ""

    def why_not_keep(self) -> str:
        """Why it cannot be kept."""
        planting = self.chosen
        if planting is not None and planting.start.kept:
            return self._session.tr("It is kept already.")
        return self.why_not()

    def why_not_thin(self) -> str:
        """Why it cannot be thinned."""
        planting = self.chosen
        if planting is None or planting.locked:
            return self.why_not()
        try:
            self._thinned(planting)
        except Refusal as refusal:
            return why_refused(refusal)
        return ""

    def keep(self) -> None:
        """Decide to keep it."""
        session = self._session
        self._do(session.tr("Keep {0}"), lambda p: keep(session.garden, session.layout_id, p.id))

    def thin(self) -> None:
        """Leave out what stands nearer than its crop's usual distance."""
        self._do(self._session.tr("Thin {0}"), self._thinned)

    def remove(self) -> None:
        """Take it out."""
        session = self._session
        self._do(session.tr("Remove {0}"), lambda p: edits.remove(session.garden, session.layout_id, [p.id]))

    def _thinned(self, planting: Planting) -> Garden:
        session = self._session
        return thinned(session.garden, session.layout_id, planting, session.catalogue)

    def _do(self, text: str, edit: _Edit) -> None:
        planting = self.chosen
        if planting is None:
            self._session.refused.emit(self.why_not())
            return
        try:
            after = edit(planting)
        except Refusal as refusal:
            self._session.refused.emit(why_refused(refusal))
            return
        self._session.propose(after, text.format(planting_name(self._session.catalogue, planting)))
