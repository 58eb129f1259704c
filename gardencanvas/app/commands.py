"""The commands on what is selected, for menus, keys and outline alike: each proposes one edit."""

from collections.abc import Callable, Iterable

import numpy as np

from gardencanvas.app.session import Session
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item, Layout
from gardencanvas.garden.ground import LineSupport, RingSupport
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point, new_id
from gardencanvas.words.plain import planting_name

STEP = 0.10  # a copy is laid this far beside its original, metres


def described(session: Session, ids: Iterable[str]) -> str:
    """What some ids are, for the name of an undo step: ``leek``, ``bed 2`` or ``3 things``."""
    items = [i for i in (session.garden.find(session.layout_id, x) for x in ids) if i is not None]
    if len(items) != 1:
        return session.tr("{0} things").format(len(items))
    item = items[0]
    return planting_name(session.catalogue, item) if isinstance(item, Planting) else item.name


def delete(session: Session) -> None:
    """Remove what is selected; of a bed, what lies in it too."""
    ids = edits.with_contents(session.layout, session.selection)
    text = session.tr("Delete {0}").format(described(session, session.selection))
    _propose(session, edits.remove(session.garden, session.layout_id, ids), text)


def duplicate(session: Session) -> None:
    """Copy what is selected, beds with their contents, a little beside; the copies are selected."""
    ids = edits.with_contents(session.layout, session.selection)
    items = [i for i in (session.garden.find(session.layout_id, x) for x in ids) if i is not None]
    if not items:
        return
    copies = copied(items)
    text = session.tr("Duplicate {0}").format(described(session, session.selection))
    try:
        after = edits.add(session.garden, session.layout_id, copies)
        after = edits.shift(after, session.layout_id, own_ids(copies), STEP, STEP)
    except Refusal as error:
        session.refused.emit(str(error))
        return
    if session.propose(after, text):
        session.select(c.id for c in copies)


def own_ids(items: Iterable[Item]) -> set[str]:
    """Ids of some items: moving exactly these does not count a bed's contents twice."""
    return {i.id for i in items}


def copied(items: Iterable[Item]) -> list[Item]:
    """The items once more, under fresh ids and unlocked."""
    return [edits.rebuilt(i, id=new_id(i.id.split("-")[0][:20]), **_unlocked(i)) for i in items]


def _unlocked(item: Item) -> dict[str, bool]:
    return {"locked": False} if hasattr(item, "locked") else {}


def turn(session: Session, degrees: float) -> None:
    """Turn what is selected about its middle."""
    if session.selection:
        about = middle(session, session.selection)
        text = session.tr("Turn {0}").format(described(session, session.selection))
        _try(session, lambda g: edits.turn(g, session.layout_id, session.selection, degrees, about), text)


def nudge(session: Session, dx_m: float, dy_m: float) -> None:
    """Move what is selected by a step."""
    if session.selection:
        text = session.tr("Move {0}").format(described(session, session.selection))
        _try(session, lambda g: edits.shift(g, session.layout_id, session.selection, dx_m, dy_m), text)


def select_all(session: Session) -> None:
    """Select all plantings; where there are none, all beds."""
    layout = session.layout
    session.select([p.id for p in layout.plantings] or [b.id for b in layout.beds])


def lock(session: Session, *, locked: bool) -> None:
    """Lock or unlock what is selected: locked things are not moved or deleted."""
    items = [
        i
        for i in (session.garden.find(session.layout_id, x) for x in session.selection)
        if hasattr(i, "locked")
    ]
    changed = [edits.rebuilt(i, locked=locked) for i in items if i is not None]
    text = session.tr("Lock") if locked else session.tr("Unlock")
    _propose(session, edits.replace(session.garden, session.layout_id, changed), text)


def middle(session: Session, ids: Iterable[str]) -> Point:
    """Middle of the box round some items."""
    points = [
        p
        for i in ids
        if (item := session.garden.find(session.layout_id, i)) is not None
        for p in corners(item)
    ]
    xy = np.array(points)
    x, y = (xy.min(axis=0) + xy.max(axis=0)) / 2
    return float(x), float(y)


def corners(item: Item) -> list[Point]:
    """Points that span an item."""
    if isinstance(item, Planting):
        return [(float(x), float(y)) for x, y in item.pattern.corners]
    if isinstance(item, RingSupport):
        (x, y), r = item.centre, item.radius_m
        return [(x - r, y - r), (x + r, y + r)]
    if isinstance(item, LineSupport):
        return [item.begin, item.end]
    return list(item.line if hasattr(item, "line") else item.outline)


def duplicate_layout(session: Session, name: str) -> None:
    """Copy the shown layout under a new name, as a variant to try things in, and show it."""
    layout = session.layout
    copy: Layout = edits.rebuilt(layout, id=new_id("layout"), name=name, kept=False)
    after = edits.rebuilt(session.garden, layouts=(*session.garden.layouts, copy))
    if session.propose(after, session.tr("Duplicate layout")):
        session.show_layout(copy.id)


def _propose(session: Session, after: Garden, text: str) -> None:
    if not session.propose(after, text) and session.selection:
        session.refused.emit(session.tr("Nothing changed: what is locked stays as it is."))


def _try(session: Session, edit: Callable[[Garden], Garden], text: str) -> None:
    try:
        after = edit(session.garden)
    except Refusal as error:
        session.refused.emit(str(error))
        return
    _propose(session, after, text)
