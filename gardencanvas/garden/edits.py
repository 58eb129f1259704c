"""Edits: pure functions from a garden to a new garden that shares every unchanged part.

Each builds the changed part anew through its constructor, so an invalid edit raises ``Refusal`` and the
old garden stays as it was. Items are found by id; an id that is not there raises ``Refusal`` too.
"""

from collections.abc import Callable, Collection, Iterable, Mapping
from typing import Any, TypeVar

import numpy as np
from pydantic import BaseModel, ValidationError

from gardencanvas.garden.errors import Refusal, refusal
from gardencanvas.garden.garden import Garden, Item, Layout
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, Path, RingSupport
from gardencanvas.garden.places import contents
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point

M = TypeVar("M", bound=BaseModel)

# fields that say where a thing lies and how large it is
_PLACED: dict[type, frozenset[str]] = {
    Bed: frozenset({"outline", "holes"}),
    Path: frozenset({"line", "width_m"}),
    RingSupport: frozenset({"centre", "radius_m"}),
    LineSupport: frozenset({"begin", "end"}),
    Cover: frozenset({"outline"}),
    Fixture: frozenset({"outline"}),
    Planting: frozenset({"pattern"}),
}

_FOLDERS: dict[type, str] = {
    Bed: "beds",
    Path: "paths",
    RingSupport: "supports",
    LineSupport: "supports",
    Cover: "covers",
    Planting: "plantings",
}


def rebuilt(value: M, /, **changes: Any) -> M:
    """The value with some fields changed, validated as a whole.

    Raises
    ------
    Refusal
        If the changed value is not allowed.
    """
    fields = {name: getattr(value, name) for name in type(value).model_fields}
    try:
        return type(value)(**{**fields, **changes})
    except ValidationError as error:
        raise refusal(error) from error


def made(kind: type[M], /, **fields: Any) -> M:
    """A new value of that kind; raises ``Refusal`` instead of pydantic's own error."""
    try:
        return kind(**fields)
    except ValidationError as error:
        raise refusal(error) from error


def with_layout(garden: Garden, layout: Layout) -> Garden:
    """The garden with that layout in the place of the one with the same id."""
    return rebuilt(garden, layouts=tuple(layout if x.id == layout.id else x for x in garden.layouts))


def add(garden: Garden, layout_id: str, items: Iterable[Item]) -> Garden:
    """Add items: beds, paths, supports, covers and plantings to the layout, fixtures to the garden."""
    layout = garden.layout(layout_id)
    added: dict[str, list[Any]] = {}
    fixtures: list[Fixture] = []
    for item in items:
        if isinstance(item, Fixture):
            fixtures.append(item)
        else:
            added.setdefault(_FOLDERS[type(item)], []).append(item)
    if added:
        garden = with_layout(
            garden, rebuilt(layout, **{k: (*getattr(layout, k), *v) for k, v in added.items()})
        )
    if fixtures:
        garden = rebuilt(garden, fixtures=(*garden.fixtures, *fixtures))
    return garden


def remove(garden: Garden, layout_id: str, ids: Collection[str]) -> Garden:
    """Remove items by id; locked ones stay."""
    gone = set(ids)

    def kept(items: tuple[Any, ...]) -> tuple[Any, ...]:
        left = tuple(x for x in items if x.id not in gone or getattr(x, "locked", False))
        return items if len(left) == len(items) else left

    return _each_folder(garden, layout_id, kept)


def replace(garden: Garden, layout_id: str, items: Iterable[Item]) -> Garden:
    """Put each item in the place of the one with the same id."""
    new = {item.id: item for item in items}
    known = {i for i in new if garden.find(layout_id, i) is not None}
    if known != set(new):
        raise Refusal("There is nothing with the id {id!r} in this layout.", id=min(set(new) - known))
    return _each_folder(
        garden,
        layout_id,
        lambda items: tuple(new.get(x.id, x) for x in items) if any(x.id in new for x in items) else items,
    )


def change(garden: Garden, layout_id: str, item_id: str, **fields: Any) -> Garden:
    """Change some fields of one item; the same garden when nothing differs."""
    item = garden.find(layout_id, item_id)
    if item is None:
        raise Refusal("There is nothing with the id {id!r} in this layout.", id=item_id)
    if item.locked and not _PLACED[type(item)].isdisjoint(fields):
        raise Refusal("It is locked and stays where it is; unlock it first.")
    after = rebuilt(item, **fields)
    return garden if after == item else replace(garden, layout_id, [after])


def shift(garden: Garden, layout_id: str, ids: Collection[str], dx_m: float, dy_m: float) -> Garden:
    """Move items on the plan; a moved bed carries along the plantings, supports and covers that lie in it."""
    if dx_m == 0 and dy_m == 0:
        return garden
    return _moved(garden, layout_id, ids, lambda p: (p[0] + dx_m, p[1] + dy_m), 0.0)


def turn(garden: Garden, layout_id: str, ids: Collection[str], angle_deg: float, about: Point) -> Garden:
    """Turn items clockwise on the plan about a point; a turned bed carries along what lies in it."""
    if angle_deg % 360 == 0:
        return garden
    angle = np.deg2rad(angle_deg)
    cos, sin = float(np.cos(angle)), float(np.sin(angle))

    def turned(p: Point) -> Point:
        x, y = p[0] - about[0], p[1] - about[1]
        return (about[0] + x * cos - y * sin, about[1] + x * sin + y * cos)

    return _moved(garden, layout_id, ids, turned, angle_deg)


def _moved(
    garden: Garden, layout_id: str, ids: Collection[str], place: Callable[[Point], Point], angle_deg: float
) -> Garden:
    carried = with_contents(garden.layout(layout_id), ids)
    moved = []
    for item_id in carried:
        item = garden.find(layout_id, item_id)
        if item is not None and not getattr(item, "locked", False):
            moved.append(rebuilt(item, **_placed(item, place, angle_deg)))
    return replace(garden, layout_id, moved)


def _placed(item: Item, place: Callable[[Point], Point], angle_deg: float) -> Mapping[str, Any]:
    """The fields of an item that change when the plan under it moves."""
    if isinstance(item, Planting):
        pattern = item.pattern
        return {
            "pattern": rebuilt(
                pattern, origin=place(pattern.origin), angle_deg=(pattern.angle_deg + angle_deg) % 360
            )
        }
    if isinstance(item, RingSupport):
        return {"centre": place(item.centre)}
    if isinstance(item, LineSupport):
        return {"begin": place(item.begin), "end": place(item.end)}
    if isinstance(item, Path):
        return {"line": tuple(place(p) for p in item.line)}
    if isinstance(item, Bed):
        return {
            "outline": tuple(place(p) for p in item.outline),
            "holes": tuple(tuple(place(p) for p in hole) for hole in item.holes),
        }
    return {"outline": tuple(place(p) for p in item.outline)}


def _each_folder(
    garden: Garden, layout_id: str, edit: Callable[[tuple[Any, ...]], tuple[Any, ...]]
) -> Garden:
    layout = garden.layout(layout_id)
    changes = {}
    for folder in ("beds", "paths", "supports", "covers", "plantings"):
        before = getattr(layout, folder)
        after = edit(before)
        if after is not before:
            changes[folder] = after
    if changes:
        garden = with_layout(garden, rebuilt(layout, **changes))
    fixtures = edit(garden.fixtures)
    return garden if fixtures is garden.fixtures else rebuilt(garden, fixtures=fixtures)


def with_contents(layout: Layout, ids: Collection[str]) -> tuple[str, ...]:
    """The ids, and of each bed among them the ids of all that lies in it; in a stable order, no id twice."""
    found: dict[str, None] = dict.fromkeys(ids)
    for bed in layout.beds:
        if bed.id in ids:
            found.update(dict.fromkeys(contents(layout, bed)))
    return tuple(found)
