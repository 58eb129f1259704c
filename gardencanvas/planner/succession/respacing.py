"""Giving a succession another interval, and telling of one as it is."""

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.garden.edits import replace
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.succession.ahead import check_harvest, outlook_of
from gardencanvas.planner.succession.dates import Outlook, nearest
from gardencanvas.planner.succession.group import members, started, stays
from gardencanvas.planner.succession.harvest import parts_of
from gardencanvas.planner.succession.making import Succession, too_late
from gardencanvas.planner.succession.rhythm import Between, Rhythm


def told(garden: Garden, layout_id: str, group: str, catalogue: Catalogue) -> Succession:
    """A succession as it stands; raises ``Refusal`` where there is none of that name."""
    layout = garden.layout(layout_id)
    own = _members(layout, group)
    return Succession(garden, group, parts_of(garden.site, layout, own, catalogue))


def respace(garden: Garden, layout_id: str, group: str, rhythm: Rhythm, catalogue: Catalogue) -> Succession:
    """Give the parts of a succession another interval, counted from the first one, which stays.

    Pinned and locked parts keep their dates; the others come when they would if those had moved, too.

    Raises
    ------
    Refusal
        If there is no such succession of two parts and more, or its last parts would not be ripe in time.
    """
    rhythm.check()
    layout = garden.layout(layout_id)
    first, *rest = _members(layout, group)
    if not rest:
        raise Refusal("This succession has one part left: there is no interval to change.")
    ahead = _Ahead(garden, layout, first, catalogue)
    begin = ahead.of(first)
    check_harvest(first, begin, rhythm, catalogue)
    moved, before = [], 0
    for number, part in enumerate(rest, 1):
        if stays(part):
            continue
        found = ahead.of(part)
        start = _start(found, int(begin.harvest[0]), number, rhythm, before)
        if start is None:
            raise Refusal(too_late(garden.site, rhythm, number, len(rest) + 1))
        before = start
        on = found.on(start)
        if on != part.start.on:
            moved.append(started(part, on, _later(found, part, start)))
    after = replace(garden, layout_id, moved) if moved else garden
    parts = parts_of(garden.site, after.layout(layout_id), members(after.layout(layout_id), group), catalogue)
    stayed = frozenset(p.id for p in (first, *rest) if stays(p))
    return Succession(after, group, parts, stayed=stayed)


def _members(layout: Layout, group: str) -> tuple[Planting, ...]:
    own = members(layout, group)
    if not own:
        raise Refusal("There is no succession {group!r} in this layout.", group=group)
    return own


class _Ahead:
    """Outlooks from the first part's day on; parts that grow alike share one."""

    def __init__(self, garden: Garden, layout: Layout, first: Planting, catalogue: Catalogue) -> None:
        self._site, self._layout, self._first, self._catalogue = garden.site, layout, first, catalogue
        self._known: dict[object, Outlook] = {}

    def of(self, part: Planting) -> Outlook:
        """The outlook of a part."""
        start = part.start
        nursery = None if start.sown_on is None else start.on - start.sown_on
        key = (part.crop, part.variety, start.kind, nursery)
        if key not in self._known:
            on = self._first.start.on
            self._known[key] = outlook_of(self._site, self._layout, part, self._catalogue, on)
        return self._known[key]


def _start(found: Outlook, first_harvest: int, number: int, rhythm: Rhythm, before: int) -> int | None:
    """The day on which a part is started; None where it is too late."""
    steps = number * rhythm.days
    if rhythm.between is Between.STARTS:
        return steps if steps < len(found.harvest) else None
    if len(found.harvest) == 0 or first_harvest + steps > found.harvest[-1]:
        return None
    return nearest(found.harvest, first_harvest + steps, before)


def _later(found: Outlook, part: Planting, start: int) -> int:
    """By how many days a part's harvest moves, and with it its end."""
    was = (part.start.on - found.first).days
    if 0 <= was < len(found.harvest):
        return int(found.harvest[start] - found.harvest[was])
    return start - was
