"""What one edit made of a garden, kept small: only the parts that differ, so that undo can reach back far."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from pydantic import BaseModel

from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.garden import Garden, Layout

_Fields = dict[str, Any]


@dataclass(frozen=True, slots=True)
class _Piece:
    """A stretch of a tuple that became another one."""

    at: int
    old: tuple[Any, ...]
    new: tuple[Any, ...]


@dataclass(frozen=True, slots=True)
class _Whole:
    """A value that became another one."""

    old: Any
    new: Any


@dataclass(frozen=True, slots=True)
class _Layouts:
    """What changed within layouts, by their place among the layouts."""

    changes: tuple[tuple[int, "_Changes"], ...]


_Change = _Piece | _Whole | _Layouts
_Changes = tuple[tuple[str, _Change], ...]


@dataclass(frozen=True, slots=True)
class Step:
    """The way from one garden to the next, and back."""

    changes: _Changes

    @classmethod
    def between(cls, before: Garden, after: Garden) -> "Step":
        """The step that leads from one garden to another; parts they share are not held."""
        return cls(_changes(before, after))

    def forget_caches(self) -> None:
        """Drop what the values of this step have computed and kept beside their fields, such as stations."""
        for value in _values(self.changes):
            fields = type(value).model_fields
            for name in [n for n in value.__dict__ if n not in fields]:
                del value.__dict__[name]


def walked(garden: Garden, steps: Iterable[Step], *, back: bool) -> Garden:
    """The garden after some steps, in the order they are to be walked; ``back`` takes each of them back.

    Unchanged parts are those of ``garden``; the whole is built and validated once, at the end.
    """
    fields: _Fields = {}
    for step in steps:
        _apply(fields, garden, step.changes, back=back)
    return rebuilt(garden, **_settled(garden, fields)) if fields else garden


# finding what differs


def _changes(before: BaseModel, after: BaseModel) -> _Changes:
    found: list[tuple[str, _Change]] = []
    for name in type(before).model_fields:
        old, new = getattr(before, name), getattr(after, name)
        if old is not new and (name == "layouts" or old != new):
            found.append((name, _change(name, old, new)))
    return tuple(found)


def _change(name: str, old: Any, new: Any) -> _Change:
    if not isinstance(old, tuple) or not isinstance(new, tuple):
        return _Whole(old, new)
    if name == "layouts" and [x.id for x in old] == [x.id for x in new]:
        pairs = enumerate(zip(old, new, strict=True))
        return _Layouts(tuple((i, _changes(a, b)) for i, (a, b) in pairs if a is not b))
    return _piece(old, new)


def _piece(old: tuple[Any, ...], new: tuple[Any, ...]) -> _Piece:
    """The shortest stretch that differs: what comes before and after it is the same objects."""
    most = min(len(old), len(new))
    begin = next((i for i in range(most) if old[i] is not new[i]), most)
    left = most - begin
    end = next((i for i in range(left) if old[-1 - i] is not new[-1 - i]), left)
    return _Piece(begin, old[begin : len(old) - end], new[begin : len(new) - end])


def _values(changes: _Changes) -> Iterator[BaseModel]:
    """Every value held, and those within it."""
    for _, change in changes:
        if isinstance(change, _Layouts):
            for _, inner in change.changes:
                yield from _values(inner)
        else:
            for value in (change.old, change.new):
                yield from _within(value)


def _within(value: Any) -> Iterator[BaseModel]:
    if isinstance(value, tuple):
        for one in value:
            yield from _within(one)
    elif isinstance(value, BaseModel):
        yield value
        for name in type(value).model_fields:
            yield from _within(getattr(value, name))


# walking


def _apply(fields: _Fields, value: BaseModel, changes: _Changes, *, back: bool) -> None:
    """Change fields opened for change; tuples are opened as lists, layouts as fields of their own."""
    for name, change in changes:
        if isinstance(change, _Layouts):
            layouts = _opened(fields, value, name)
            for at, inner in change.changes:
                if not isinstance(layouts[at], tuple):
                    layouts[at] = (layouts[at], {})
                layout, inside = layouts[at]
                _apply(inside, layout, inner, back=back)
        elif isinstance(change, _Piece):
            gone, put = (change.new, change.old) if back else (change.old, change.new)
            _opened(fields, value, name)[change.at : change.at + len(gone)] = put
        else:
            fields[name] = change.old if back else change.new


def _opened(fields: _Fields, value: BaseModel, name: str) -> list[Any]:
    if not isinstance(fields.get(name), list):
        fields[name] = list(fields.get(name, getattr(value, name)))
    opened: list[Any] = fields[name]
    return opened


def _settled(garden: Garden, fields: _Fields) -> _Fields:
    """The changed fields as values again."""
    settled = {name: tuple(x) if isinstance(x, list) else x for name, x in fields.items()}
    if "layouts" in settled:
        settled["layouts"] = tuple(_closed(x) for x in settled["layouts"])
    return settled


def _closed(layout: Layout | tuple[Layout, _Fields]) -> Layout:
    if isinstance(layout, Layout):
        return layout
    before, fields = layout
    changed = {name: tuple(x) if isinstance(x, list) else x for name, x in fields.items()}
    return rebuilt(before, **changed) if changed else before
