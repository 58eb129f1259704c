"""Commands that belong to the window rather than to the plan: locking, and copies of a layout."""

from gardencanvas.app.session import Session
from gardencanvas.garden import edits
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.value import new_id


def lock(session: Session, *, locked: bool) -> None:
    """Lock or unlock what is selected: locked things are not moved or deleted."""
    found = (session.garden.find(session.layout_id, i) for i in session.selection)
    changed = [edits.rebuilt(i, locked=locked) for i in found if i is not None and hasattr(i, "locked")]
    text = session.tr("Lock") if locked else session.tr("Unlock")
    session.propose(edits.replace(session.garden, session.layout_id, changed), text)


def duplicate_layout(session: Session, name: str) -> None:
    """Copy the shown layout under a new name, as a variant to try things in, and show it."""
    copy: Layout = edits.rebuilt(session.layout, id=new_id("layout"), name=name, kept=False)
    after = edits.rebuilt(session.garden, layouts=(*session.garden.layouts, copy))
    if session.propose(after, session.tr("Duplicate layout")):
        session.show_layout(copy.id)
