"""Items of one layout copied to a place in another."""

from collections import Counter
from collections.abc import Collection, Iterable

from gardencanvas.garden import edits
from gardencanvas.garden.copies import add_shifted, fresh
from gardencanvas.garden.differing import taken_over
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.layouts import dates_moved
from gardencanvas.garden.places import bounds, contents
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import new_id


def carried_over(
    garden: Garden, source: str, target: str, ids: Collection[str], dx_m: float, dy_m: float
) -> tuple[Garden, frozenset[str]]:
    """The garden with copies of items of one layout in another, moved by a step, and their ids there.

    A bed brings along what lies in it. A bed that the target has as well (the same id) is not laid twice: it
    receives what lies in the source's bed, at the same place within it, whatever the step; what it has of
    that already is replaced. Other copies keep their id where the target has no such id, so that both layouts
    know them as the same, and are unlocked. Dates follow the target's year.

    Raises
    ------
    Refusal
        If there is nothing of the source's layout to copy, or what would be replaced is locked.
    """
    here, there = garden.layout(source), garden.layout(target)
    beds = [b for b in here.beds if b.id in ids and b.id in there.by_id]
    received = {i: bed for bed in beds for i in contents(here, bed)}
    shared = {b.id for b in beds}
    loose = [i for i in edits.with_contents(here, set(ids) - shared) if i in here.by_id and i not in received]
    if not loose and not received:
        raise Refusal(
            "The other layout has this bed, and nothing lies in it to copy."
            if beds
            else "Select a bed or a planting to take over first."
        )
    if received:
        garden = _received(garden, source, target, beds)
    copies = _copies([here.by_id[i] for i in loose], garden.layout(target), there.year - here.year)
    garden = add_shifted(garden, target, copies, dx_m, dy_m)
    return garden, frozenset(received) | {c.id for c in copies}


def _received(garden: Garden, source: str, target: str, beds: Iterable[Bed]) -> Garden:
    """The contents of beds taken over into the target's beds of the same ids."""
    for bed in beds:
        inside = contents(garden.layout(source), bed)
        if not inside:
            continue
        garden = taken_over(garden, source, target, inside)
        there = garden.layout(target).by_id[bed.id]
        (x0, y0, *_), (x1, y1, *_) = bounds([bed]), bounds([there])
        locked = {i for i in inside if getattr(garden.layout(target).by_id[i], "locked", False)}
        garden = _unlocked(garden, target, locked)
        garden = edits.shift(garden, target, inside, x1 - x0, y1 - y0)
    return garden


def _unlocked(garden: Garden, layout_id: str, ids: Collection[str]) -> Garden:
    by_id = garden.layout(layout_id).by_id
    return edits.replace(garden, layout_id, [edits.rebuilt(by_id[i], locked=False) for i in sorted(ids)])


def _copies(items: Iterable[Item], there: Layout, years: int) -> list[Item]:
    """The items as copies for a layout: under their own ids where those are free there."""
    moved = [dates_moved(item, years) for item in items]
    again = [i for i in moved if i.id in there.by_id]
    parts = Counter(i.succession for i in again if isinstance(i, Planting) and i.succession is not None)
    groups = {name: new_id("succession") if number > 1 else None for name, number in parts.items()}
    return [fresh(i, groups) if i.id in there.by_id else _free(i) for i in moved]


def _free(item: Item) -> Item:
    return edits.rebuilt(item, locked=False) if getattr(item, "locked", False) else item
