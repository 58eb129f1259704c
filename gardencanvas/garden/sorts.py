"""The sorts of things on a plan, as they are shown, hidden and locked together."""

from collections.abc import Iterable
from enum import StrEnum

from gardencanvas.garden import edits
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.ground import Bed, Cover, Fixture, Path
from gardencanvas.garden.planting import Planting


class Sort(StrEnum):
    """A sort of thing, from the topmost on the plan down."""

    PLANTINGS = "plantings"
    COVERS = "covers"
    SUPPORTS = "supports"
    FIXTURES = "fixtures"
    BEDS = "beds"
    PATHS = "paths"


def sort_of(item: Item) -> Sort:
    """The sort of a thing."""
    if isinstance(item, Planting):
        return Sort.PLANTINGS
    if isinstance(item, Bed):
        return Sort.BEDS
    if isinstance(item, Path):
        return Sort.PATHS
    if isinstance(item, Cover):
        return Sort.COVERS
    return Sort.FIXTURES if isinstance(item, Fixture) else Sort.SUPPORTS


def things(garden: Garden, layout_id: str, sort: Sort) -> tuple[Item, ...]:
    """All things of a sort: of the layout, or of the garden where they are fixtures."""
    holder = garden if sort is Sort.FIXTURES else garden.layout(layout_id)
    return tuple(getattr(holder, sort.value))


def locked(garden: Garden, layout_id: str, ids: Iterable[str], *, on: bool) -> Garden:
    """Lock or unlock things; the same garden where all are so already."""
    found = (garden.find(layout_id, i) for i in ids)
    changed = [edits.rebuilt(item, locked=on) for item in found if item is not None and item.locked is not on]
    return edits.replace(garden, layout_id, changed) if changed else garden
