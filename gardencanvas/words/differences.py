"""What differs between two states of a garden, in words."""

from collections.abc import Iterable

from gardencanvas.files.differences import Difference, How
from gardencanvas.words.plain import counted

# One and several of what a field holds; a field that is not named here is told as a detail.
_THINGS = {
    "layouts": ("layout", "layouts"),
    "fixtures": ("fixture", "fixtures"),
    "beds": ("bed", "beds"),
    "paths": ("path", "paths"),
    "supports": ("support", "supports"),
    "covers": ("cover", "covers"),
    "plantings": ("planting", "plantings"),
    "crops": ("crop of your own", "crops of your own"),
    "varieties": ("variety of your own", "varieties of your own"),
}
_SINGLE = {"name": "the name", "note": "the note", "site": "the site", "year": "the year"}


def difference(one: Difference) -> str:
    """Such as “2 plantings added in Spring”."""
    if one.field in _THINGS:
        what = f"{counted(one.count, *_THINGS[one.field])} {one.how}"
    elif one.field in _SINGLE:
        what = f"{_SINGLE[one.field]} {one.how}"
    else:
        what = f"{one.field.replace('_', ' ')} {one.how}"
    return f"{what} in {one.layout}" if one.layout else what


def in_words(found: Iterable[Difference], most: int = 6) -> str:
    """All that differs, as one sentence; “Nothing differs.” where nothing does."""
    told = [difference(one) for one in sorted(found, key=_weight)]
    if not told:
        return "Nothing differs."
    more = len(told) - most
    listed = "; ".join(told[:most]) + (
        f"; and {counted(more, 'more difference', 'more differences')}" if more > 0 else ""
    )
    return listed[:1].upper() + listed[1:] + "."


def _weight(one: Difference) -> tuple[int, int]:
    order = [*_THINGS, *_SINGLE]
    return (order.index(one.field) if one.field in order else len(order), list(How).index(one.how))
