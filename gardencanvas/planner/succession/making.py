"""Making a succession of a planting."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import count
from typing import Any, NamedTuple

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.garden.edits import rebuilt, with_layout
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.pattern import Pattern
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import Site
from gardencanvas.planner.succession.ahead import check_harvest, outlook_of
from gardencanvas.planner.succession.copying import Stay, ground_taken, laid_beside
from gardencanvas.planner.succession.cutting import check, cut, most_parts
from gardencanvas.planner.succession.dates import starts
from gardencanvas.planner.succession.group import members, started
from gardencanvas.planner.succession.harvest import (
    Floats,
    Part,
    course_of,
    evenness,
    growing_of,
    parts_of,
    weekly_harvest,
)
from gardencanvas.planner.succession.rhythm import MOST_PARTS, Between, Rhythm, Way, check_parts


@dataclass(frozen=True, slots=True, eq=False)
class Succession:
    """A garden with a succession in it, and what is to be known of its parts."""

    garden: Garden
    group: str
    parts: tuple[Part, ...]  # early ones first
    stayed: frozenset[str] = frozenset()  # parts left as they are: pinned or locked
    crowded: frozenset[str] = frozenset()  # copies that found no free ground

    @property
    def weekly(self) -> Floats:
        """``weekly_harvest`` of its parts."""
        return weekly_harvest(self.parts)

    @property
    def evenness(self) -> float | None:
        """``evenness`` of that."""
        return evenness(self.weekly)


class _Lot(NamedTuple):
    """What a part gets of the pattern."""

    pattern: Pattern
    varieties: tuple[str, ...]
    crowded: bool = False


def succeed(
    garden: Garden,
    layout_id: str,
    planting_id: str,
    rhythm: Rhythm,
    way: Way,
    catalogue: Catalogue,
    parts: int | None = None,
) -> Succession:
    """Make a succession of a planting: its first part keeps id and start, the others are new and not pinned.

    Where the grower ends the planting, each part is ended as long after its own harvest begins. Parts made of
    several varieties go on with the one whose turn it is; cut along several rows at once, the turns are those
    of the first row.

    Parameters
    ----------
    parts
        How many; None for as many as the way has room for and as still ripen before frost and winter.

    Raises
    ------
    Refusal
        If there is no such planting, it cannot be started again or is in a succession already, interval or
        number are out of bounds, its pattern is too small to cut, or it is too late in the year.
    """
    rhythm.check()
    check_parts(parts)
    layout = garden.layout(layout_id)
    planting = _planting(layout, planting_id)
    most = _room(planting, way, parts)
    begun = _begun(garden.site, layout, planting, rhythm, most, parts or 2, catalogue)
    lots = _lots(garden.site, layout, planting, begun, way, catalogue)
    group = _unused(planting.id, {p.succession for p in layout.plantings})
    new = _parts(layout, planting, begun, lots, group)
    after = _with_parts(garden, layout, planting, new)
    crowded = frozenset(p.id for p, lot in zip(new, lots, strict=True) if lot.crowded)
    told = parts_of(garden.site, after.layout(layout_id), new, catalogue)
    return Succession(after, group, told, crowded=crowded)


def too_late(site: Site, rhythm: Rhythm, possible: int, wanted: int) -> str:
    """Why there cannot be so many parts."""
    until = "within a year" if site.frost.first is None else "before frost or winter"
    if possible == 1:
        what = "Started" if rhythm.between is Between.STARTS else "With a first harvest"
        return (
            f"It is too late in the year for a second part: {what.lower()} {rhythm.days} days later it would "
            f"not be ripe {until} in an average year."
        )
    return f"In an average year only {possible} parts would be ripe {until}, not {wanted}."


def _planting(layout: Layout, planting_id: str) -> Planting:
    planting = layout.by_id.get(planting_id)
    if not isinstance(planting, Planting):
        raise Refusal("There is no planting with the id {id!r} in this layout.", id=planting_id)
    if planting.succession is not None and len(members(layout, planting.succession)) > 1:
        raise Refusal("This planting is part of a succession already: change its interval instead.")
    return planting


def _room(planting: Planting, way: Way, parts: int | None) -> int:
    """How many parts there can be at most; raises ``Refusal`` where the pattern cannot be cut into those."""
    if way is Way.COPIES:
        return parts or MOST_PARTS
    if planting.locked:
        raise Refusal("This planting is locked: it is not cut into parts.")
    check(planting.pattern, way, parts or 2)
    return parts or min(most_parts(planting.pattern, way), MOST_PARTS)


def _begun(
    site: Site,
    layout: Layout,
    planting: Planting,
    rhythm: Rhythm,
    most: int,
    least: int,
    catalogue: Catalogue,
) -> list[Planting]:
    """The planting started on each day of the rhythm; raises ``Refusal`` where too few ripen."""
    found = outlook_of(site, layout, planting, catalogue)
    check_harvest(planting, found, rhythm, catalogue)
    taken = starts(found.harvest, rhythm, most)
    if len(taken) < least:
        raise Refusal(too_late(site, rhythm, len(taken), least))
    return [started(planting, found.on(s), int(found.harvest[s] - found.harvest[0])) for s in taken]


def _lots(
    site: Site, layout: Layout, planting: Planting, begun: Sequence[Planting], way: Way, catalogue: Catalogue
) -> list[_Lot]:
    """Pattern and varieties of each part."""
    kinds = planting.varieties
    if way is Way.COPIES:
        bed = bed_of(layout, planting)
        others = [p for p in layout.plantings if p is not planting and bed_of(layout, p) is bed]
        stays = _stays(site, layout, others, catalogue)
        times = [(s.first, s.last) for s in _stays(site, layout, begun, catalogue)]
        copies = laid_beside(planting.pattern, bed, times, stays)
        return [_Lot(planting.pattern, kinds), *(_Lot(c.pattern, kinds, not c.free) for c in copies)]
    pieces = cut(planting.pattern, way, len(begun))
    turns = [piece.first % len(kinds) if kinds else 0 for piece in pieces]
    return [_Lot(piece.pattern, kinds[t:] + kinds[:t]) for piece, t in zip(pieces, turns, strict=True)]


def _stays(site: Site, layout: Layout, plantings: Sequence[Planting], catalogue: Catalogue) -> list[Stay]:
    """The ground of plantings and their days in the bed."""
    if not plantings:
        return []
    course = course_of(site, layout, [growing_of(layout, p, catalogue) for p in plantings])
    firsts, lasts = course.in_bed.astype(object), course.out.astype(object)
    return [Stay(ground_taken(p.pattern), firsts[i], lasts[i]) for i, p in enumerate(plantings)]


def _parts(
    layout: Layout, planting: Planting, begun: Sequence[Planting], lots: Sequence[_Lot], group: str
) -> list[Planting]:
    ids = _fresh_ids(layout, planting.id)
    parts = []
    for number, (part, lot) in enumerate(zip(begun, lots, strict=True)):
        fields: dict[str, Any] = {"pattern": lot.pattern, "varieties": lot.varieties, "succession": group}
        if number > 0:
            fields |= {"id": next(ids), "start": rebuilt(part.start, pinned=False), "locked": False}
        parts.append(rebuilt(part, **fields))
    return parts


def _with_parts(garden: Garden, layout: Layout, planting: Planting, parts: Sequence[Planting]) -> Garden:
    """The garden with a planting's parts in its place."""
    at = layout.plantings.index(planting)
    plantings = (*layout.plantings[:at], *parts, *layout.plantings[at + 1 :])
    return with_layout(garden, rebuilt(layout, plantings=plantings))


def _fresh_ids(layout: Layout, base: str) -> Iterator[str]:
    """``leek-2``, ``leek-3`` …, as far as they are not taken: the same garden always gives the same ids."""
    names = (f"{base[:34]}-{number}" for number in count(2))
    return (name for name in names if name not in layout.by_id)


def _unused(name: str, taken: set[str | None]) -> str:
    if name not in taken:
        return name
    return next(n for n in (f"{name[:34]}-{number}" for number in count(2)) if n not in taken)
