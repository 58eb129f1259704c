"""What differs between two layouts of one garden, item by item, and taking items from one into the other."""

from collections.abc import Collection, Iterable
from enum import StrEnum

from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item, Layout
from gardencanvas.garden.ground import Cover
from gardencanvas.garden.layouts import dates_moved
from gardencanvas.garden.planting import Planting


class Differs(StrEnum):
    """How an item of one layout differs from the one with the same id in the other."""

    ONLY_HERE = "only here"
    MOVED = "moved"  # elsewhere, turned or of another size
    RETIMED = "re-timed"
    OTHERWISE = "changed"  # another crop, name, height …


_LIES = ("pattern", "outline", "begin", "end", "centre", "radius_m", "bed")
_TIMED = ("start", "end", "first", "last")


def differences(here: Layout, there: Layout) -> dict[str, tuple[Differs, ...]]:
    """Items of ``here`` that ``there`` lacks or has otherwise, by id.

    Dates are compared within the year of each layout: a copy for another year differs in nothing.
    """
    years = here.year - there.year
    found = {}
    for item in here.items():
        other = there.by_id.get(item.id)
        how = _how(item, dates_moved(other, years)) if other is not None else (Differs.ONLY_HERE,)
        if how:
            found[item.id] = how
    return found


def _how(item: Item, other: Item) -> tuple[Differs, ...]:
    if item is other or item == other:
        return ()
    if type(item) is not type(other):
        return (Differs.OTHERWISE,)
    timed = _TIMED if isinstance(item, Planting | Cover) else ()
    lies = tuple(f for f in _LIES if f not in timed)
    fields = [f for f in type(item).model_fields if getattr(item, f) != getattr(other, f)]
    how = [
        d for d, some in ((Differs.MOVED, lies), (Differs.RETIMED, timed)) if any(f in some for f in fields)
    ]
    if any(f not in lies and f not in timed for f in fields):
        how.append(Differs.OTHERWISE)
    return tuple(how)


def taken_over(garden: Garden, source: str, target: str, ids: Collection[str]) -> Garden:
    """The garden with items of one layout put into another, a bed with all that lies in it.

    What the target has under the same id is replaced; dates follow the target's year.

    Raises
    ------
    Refusal
        If the source has none of them, or the target's own is locked.
    """
    here, there = garden.layout(source), garden.layout(target)
    items = [here.by_id[i] for i in edits.with_contents(here, ids) if i in here.by_id]
    if not items:
        raise Refusal("Select a bed or a planting to take over first.")
    locked = [i for i in items if getattr(there.by_id.get(i.id), "locked", False)]
    if locked:
        raise Refusal(
            "“{name}” is locked in “{layout}”. Unlock it there first.",
            name=_name(locked[0]),
            layout=there.name,
        )
    moved = [dates_moved(item, there.year - here.year) for item in items]
    garden = edits.replace(garden, target, _some(moved, there, known=True))
    return edits.add(garden, target, _some(moved, there, known=False))


def _some(items: Iterable[Item], there: Layout, *, known: bool) -> list[Item]:
    return [item for item in items if (item.id in there.by_id) is known]


def _name(item: Item) -> str:
    return item.crop if isinstance(item, Planting) else item.name
