"""Copies of things, laid somewhere else: beds bring along what lies in them."""

from collections import Counter
from collections.abc import Collection, Mapping

from gardencanvas.garden import edits
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import new_id


def copies_of(garden: Garden, layout_id: str, ids: Collection[str]) -> list[Item]:
    """The items and the contents of beds among them once more, under fresh ids and unlocked.

    Parts of a succession that are copied together make a succession of their own; a part copied alone is in
    none.
    """
    carried = edits.with_contents(garden.layout(layout_id), ids)
    items = [i for i in (garden.find(layout_id, x) for x in carried) if i is not None]
    parts = Counter(i.succession for i in items if isinstance(i, Planting) and i.succession is not None)
    groups = {name: new_id("succession") if number > 1 else None for name, number in parts.items()}
    return [fresh(item, groups) for item in items]


def fresh(item: Item, groups: Mapping[str, str | None]) -> Item:
    """The item once more under a fresh id, unlocked; ``groups`` gives successions their new names."""
    changed: dict[str, object] = {"locked": False} if hasattr(item, "locked") else {}
    if isinstance(item, Planting) and item.succession is not None:
        changed["succession"] = groups[item.succession]
    return edits.rebuilt(item, id=new_id(item.id.split("-")[0][:20]), **changed)


def add_shifted(garden: Garden, layout_id: str, items: list[Item], dx_m: float, dy_m: float) -> Garden:
    """The garden with these items added, each moved by the same step; raises ``Refusal``.

    They are moved on a sheet of their own first, so that a copied bed does not carry off what lies in the
    bed under it.
    """
    layout = garden.layout(layout_id)
    empty = edits.rebuilt(layout, beds=(), paths=(), supports=(), covers=(), plantings=())
    sheet = edits.with_layout(edits.rebuilt(garden, fixtures=()), empty)
    sheet = edits.add(sheet, layout_id, items)
    sheet = edits.shift(sheet, layout_id, {i.id for i in items}, dx_m, dy_m)
    moved = [found for i in items if (found := sheet.find(layout_id, i.id)) is not None]
    return edits.add(garden, layout_id, moved)
