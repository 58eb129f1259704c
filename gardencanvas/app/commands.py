"""Commands that belong to the window rather than to the plan: locking, successions, copies of a layout."""

from gardencanvas.app.session import Session
from gardencanvas.garden import edits, sorts
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import new_id
from gardencanvas.planner.succession import members


def lock(session: Session, *, locked: bool) -> None:
    """Lock or unlock what is selected: locked things are not moved or deleted."""
    text = session.tr("Lock") if locked else session.tr("Unlock")
    session.propose(sorts.locked(session.garden, session.layout_id, session.selection, on=locked), text)


def repeatable(session: Session) -> Planting | None:
    """The planting that can come again: the only one selected, or the first of the one succession that is."""
    chosen = [session.layout.by_id.get(i) for i in session.selection]
    plantings = [p for p in chosen if isinstance(p, Planting)]
    if len(plantings) == len(chosen) == 1:
        return plantings[0]
    groups = {p.succession for p in plantings}
    if len(plantings) < len(chosen) or len(groups) != 1:
        return None
    (group,) = groups
    return members(session.layout, group)[0] if group is not None else None


def successions(session: Session) -> frozenset[str]:
    """Ids of all parts of the successions of which something is selected."""
    chosen = (session.layout.by_id.get(i) for i in session.selection)
    groups = {p.succession for p in chosen if isinstance(p, Planting)} - {None}
    if not groups:
        return frozenset()
    return frozenset(p.id for p in session.layout.plantings if p.succession in groups)


def duplicate_layout(session: Session, name: str) -> None:
    """Copy the shown layout under a new name, as a variant to try things in, and show it."""
    copy: Layout = edits.rebuilt(session.layout, id=new_id("layout"), name=name, kept=False)
    after = edits.rebuilt(session.garden, layouts=(*session.garden.layouts, copy))
    if session.propose(after, session.tr("Duplicate layout")):
        session.show_layout(copy.id)
