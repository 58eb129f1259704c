"""What differs between two states of a garden, in words."""

from collections.abc import Callable, Iterable

from gardencanvas.files.differences import Difference, How
from gardencanvas.words.language import mark, say, say_many

# What a field holds, counted, in the order of weight.
_THINGS: dict[str, Callable[[int], str]] = {
    "layouts": lambda n: say_many("{n} layout", "{n} layouts", n),
    "fixtures": lambda n: say_many("{n} fixture", "{n} fixtures", n),
    "beds": lambda n: say_many("{n} bed", "{n} beds", n),
    "paths": lambda n: say_many("{n} path", "{n} paths", n),
    "supports": lambda n: say_many("{n} support", "{n} supports", n),
    "covers": lambda n: say_many("{n} cover", "{n} covers", n),
    "plantings": lambda n: say_many("{n} planting", "{n} plantings", n),
    "crops": lambda n: say_many("{n} crop of your own", "{n} crops of your own", n),
    "varieties": lambda n: say_many("{n} variety of your own", "{n} varieties of your own", n),
}
_HAPPENED = {
    How.ADDED: mark("{things} added"),
    How.REMOVED: mark("{things} removed"),
    How.CHANGED: mark("{things} changed"),
}
_HAPPENED_IN = {
    How.ADDED: mark("{things} added in {layout}"),
    How.REMOVED: mark("{things} removed in {layout}"),
    How.CHANGED: mark("{things} changed in {layout}"),
}
_SINGLE = {
    "name": mark("the name"),
    "note": mark("the note"),
    "site": mark("the site"),
    "year": mark("the year"),
    "backdrop": mark("the background picture"),
    "first_month": mark("the first month"),
    "kept": mark("whether it is kept"),
    "accepted": mark("what you live with"),
    "done": mark("jobs done"),
    "format": mark("the file format"),
}


def difference(one: Difference) -> str:
    """Such as “2 plantings added in Spring”."""
    if one.field in _THINGS:
        things = _THINGS[one.field](one.count)
    elif one.field in _SINGLE:
        things = say(_SINGLE[one.field])
    else:
        things = one.field.replace("_", " ")  # a field that has no words yet: rather told than hidden
    if one.layout:
        return say(_HAPPENED_IN[one.how], things=things, layout=one.layout)
    return say(_HAPPENED[one.how], things=things)


def in_words(found: Iterable[Difference], most: int = 6) -> str:
    """All that differs, as one sentence; “Nothing differs.” where nothing does."""
    told = [difference(one) for one in sorted(found, key=_weight)]
    if not told:
        return say("Nothing differs.")
    more = len(told) - most
    listed = "; ".join(told[:most])
    if more > 0:
        listed = say_many(
            "{listed}; and {n} more difference", "{listed}; and {n} more differences", more, listed=listed
        )
    return listed[:1].upper() + listed[1:] + "."


def _weight(one: Difference) -> tuple[int, int]:
    order = [*_THINGS, *_SINGLE]
    return (order.index(one.field) if one.field in order else len(order), list(How).index(one.how))
