"""What differs between two states of a garden, as codes and counts; sentences are made elsewhere."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from gardencanvas.garden.garden import Garden, Layout


class How(StrEnum):
    """What happened to things of one kind."""

    ADDED = "added"
    REMOVED = "removed"
    CHANGED = "changed"


@dataclass(frozen=True, slots=True)
class Difference:
    """Some things of one kind that were added, removed or changed.

    ``field`` is the field of the garden or layout that holds them (``plantings``, ``site`` …); ``layout`` is
    the name of the layout, if they lie in one.
    """

    how: How
    field: str
    count: int
    layout: str = ""


def differences(before: Garden, after: Garden) -> tuple[Difference, ...]:
    """What one did to get from one state to the other; empty if they are equal."""
    return tuple(_garden(before, after))


def _garden(before: Garden, after: Garden) -> Iterator[Difference]:
    for field in type(after).model_fields:
        old, new = getattr(before, field), getattr(after, field)
        if field == "layouts":
            yield from _counted(field, old, new, "", changed=False)
            olds = {x.id: x for x in old}
            for layout in new:
                if layout.id in olds:
                    yield from _layout(olds[layout.id], layout)
        else:
            yield from _field(field, old, new, "")


def _layout(before: Layout, after: Layout) -> Iterator[Difference]:
    if before is after:
        return
    for field in type(after).model_fields:
        yield from _field(field, getattr(before, field), getattr(after, field), after.name)


def _field(field: str, old: Any, new: Any, layout: str) -> Iterator[Difference]:
    if old is new or old == new:
        return
    if isinstance(new, tuple) and all(hasattr(x, "id") for x in (*old, *new)):
        counted = list(_counted(field, old, new, layout))
        yield from counted or [Difference(How.CHANGED, field, len(new), layout)]  # only their order
    else:
        yield Difference(How.CHANGED, field, 1, layout)


def _counted(
    field: str, old: Iterable[Any], new: Iterable[Any], layout: str, *, changed: bool = True
) -> Iterator[Difference]:
    olds, news = {_key(x): x for x in old}, {_key(x): x for x in new}
    counts = {
        How.ADDED: len(news.keys() - olds.keys()),
        How.REMOVED: len(olds.keys() - news.keys()),
        How.CHANGED: sum(olds[k] != news[k] for k in olds.keys() & news.keys()) if changed else 0,
    }
    for how, count in counts.items():
        if count:
            yield Difference(how, field, count, layout)


def _key(thing: Any) -> tuple[str, str]:
    """Varieties of two crops may bear the same id."""
    return thing.id, getattr(thing, "crop", "") if type(thing).__name__ == "Variety" else ""
