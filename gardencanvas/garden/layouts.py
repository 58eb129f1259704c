"""Edits of layouts as wholes: new ones, copies to try things in or for another year, kept ones, gone ones."""

from datetime import date

from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item, Layout
from gardencanvas.garden.ground import Cover
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import new_id


def duplicated(garden: Garden, layout_id: str, name: str, note: str = "") -> tuple[Garden, str]:
    """The garden with a copy of a layout after it, and its id; work done and ``kept`` are not copied."""
    copy = rebuilt(garden.layout(layout_id), id=new_id("layout"), name=name, note=note, kept=False, done=())
    at = next(i for i, x in enumerate(garden.layouts) if x.id == garden.layout(layout_id).id) + 1
    return rebuilt(garden, layouts=(*garden.layouts[:at], copy, *garden.layouts[at:])), copy.id


def with_empty(garden: Garden, name: str, year: int, like: str) -> tuple[Garden, str]:
    """The garden with a new layout that has all of another but its plantings."""
    model = garden.layout(like)
    covers = _covers(model, year - model.year)
    nothing = {"plantings": (), "accepted": (), "done": (), "covers": covers, "note": "", "kept": False}
    fresh = rebuilt(model, id=new_id("layout"), name=name, year=year, **nothing)
    return rebuilt(garden, layouts=(*garden.layouts, fresh)), fresh.id


def for_year(garden: Garden, layout_id: str, name: str, year: int) -> tuple[Garden, str]:
    """The garden with a copy of a layout for another year, every date moved by so many years.

    29 February becomes the 28th. What was accepted is asked about anew.
    """
    model = garden.layout(layout_id)
    years = year - model.year
    plantings = tuple(_planted(p, years) for p in model.plantings)
    moved = {"plantings": plantings, "covers": _covers(model, years), "accepted": (), "done": ()}
    copy = rebuilt(model, id=new_id("layout"), name=name, year=year, kept=False, **moved)
    return rebuilt(garden, layouts=(*garden.layouts, copy)), copy.id


def dates_moved(item: Item, years: int) -> Item:
    """The item with its dates moved by so many years; 29 February becomes the 28th."""
    if years == 0:
        return item
    if isinstance(item, Planting):
        return _planted(item, years)
    if isinstance(item, Cover):
        return _cover(item, years)
    return item


def _cover(cover: Cover, years: int) -> Cover:
    return rebuilt(cover, first=day_moved(cover.first, years), last=day_moved(cover.last, years))


def _covers(layout: Layout, years: int) -> tuple[Cover, ...]:
    return tuple(_cover(c, years) for c in layout.covers)


def _planted(planting: Planting, years: int) -> Planting:
    start = planting.start
    moved = rebuilt(start, on=day_moved(start.on, years), sown_on=day_moved(start.sown_on, years))
    return rebuilt(planting, start=moved, end=day_moved(planting.end, years))


def day_moved(day: date | None, years: int) -> date | None:
    """The same day so many years later; 29 February becomes the 28th."""
    if day is None:
        return None
    try:
        return day.replace(year=day.year + years)
    except ValueError:  # 29 February
        return day.replace(year=day.year + years, day=28)


def renamed(garden: Garden, layout_id: str, name: str, note: str) -> Garden:
    """The garden with another name and note of a layout; the same garden where nothing differs."""
    layout = garden.layout(layout_id)
    if (layout.name, layout.note) == (name, note):
        return garden
    return _with(garden, rebuilt(layout, name=name, note=note))


def kept(garden: Garden, layout_id: str, *, on: bool = True) -> Garden:
    """The garden with a layout marked as the one kept of its year, no other of that year being so."""
    chosen = garden.layout(layout_id)
    if on == chosen.kept:
        return garden
    layouts = tuple(
        rebuilt(x, kept=on and x.id == chosen.id) if x.year == chosen.year else x for x in garden.layouts
    )
    return rebuilt(garden, layouts=layouts)


def without(garden: Garden, layout_id: str) -> Garden:
    """The garden without a layout.

    Raises
    ------
    Refusal
        If it is the only one.
    """
    left = tuple(x for x in garden.layouts if x.id != garden.layout(layout_id).id)
    if not left:
        raise Refusal("A garden has at least one layout: make another one first.")
    return rebuilt(garden, layouts=left)


def _with(garden: Garden, layout: Layout) -> Garden:
    return rebuilt(garden, layouts=tuple(layout if x.id == layout.id else x for x in garden.layouts))
