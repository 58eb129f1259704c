"""From plantings to stands: their crops, what helps them, and their course, remembered by identity."""

from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.fit.aids import growing_of, holders
from gardencanvas.fit.outlook import Outlook, outlook_of
from gardencanvas.fit.own import same_at_home
from gardencanvas.fit.same import same_items
from gardencanvas.fit.stands import Stand, grid, moved, stand_of
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.site import Site
from gardencanvas.season.course import Course, Growing
from gardencanvas.season.growth import follow

COURSES_KEPT = 5000


class _Kept(NamedTuple):
    """A planting's stands with the growth they came from; the planting is held by the stands."""

    growing: tuple[Growing, ...]
    stands: tuple[Stand, ...]


class Standing:
    """Stands of the plantings of one layout.

    A planting whose value, site, season and helping supports and covers are the same has the same stands:
    the identical objects.
    """

    def __init__(self, catalogue: Catalogue, site: Site, layout: Layout) -> None:
        self._catalogue = catalogue
        self._site = site
        self._season = layout.season
        self._weeks = grid(layout.season)
        self._kept: dict[str, _Kept] = {}
        self._aids: tuple[object, ...] = ()
        self._stems: tuple[Planting, ...] = ()
        self._courses: dict[_Key, tuple[Course, int, Outlook]] = {}  # the crop is held, and so its identity

    def serves(self, site: Site, layout: Layout) -> bool:
        """Whether these stands may be kept for a layout as it is now."""
        return (site is self._site or site == self._site) and layout.season == self._season

    def of(self, layout: Layout) -> dict[str, tuple[Stand, ...]]:
        """Stands of each planting, in the layout's order."""
        aids = (*layout.supports, *layout.covers)
        aided = same_items(aids, self._aids)
        climbed = frozenset().union(*map(holders, {p.crop for p in layout.plantings}))
        stems = tuple(p for p in layout.plantings if p.crop in climbed) if climbed else ()
        held = same_items(stems, self._stems)
        todo: list[tuple[Planting, tuple[Growing, ...]]] = []
        kept: dict[str, _Kept] = {}
        for planting in layout.plantings:
            old = self._kept.get(planting.id)
            same = old is not None and old.stands[0].planting is planting
            if old is not None and same and aided and (held or not holders(planting.crop)):
                kept[planting.id] = old
                continue
            growing = self._growing(planting, layout)
            if old is not None and same and _alike(old.growing, growing):
                kept[planting.id] = old
            else:
                todo.append((planting, growing))
        if todo:
            kept.update(self._followed(todo))
        self._kept = kept
        self._aids, self._stems = aids, stems
        return {p.id: kept[p.id].stands for p in layout.plantings}

    def _growing(self, planting: Planting, layout: Layout) -> tuple[Growing, ...]:
        crops: list[Crop] = [
            self._catalogue.resolve(planting.crop, variety)
            for variety in (planting.varieties or (None,))[: planting.pattern.count]
        ]
        return tuple(growing_of(layout, planting, crop) for crop in crops)

    def _followed(self, todo: Sequence[tuple[Planting, tuple[Growing, ...]]]) -> dict[str, _Kept]:
        self._follow([g for _, growing in todo for g in growing])
        return {
            planting.id: _Kept(
                growing,
                self._carried(planting, growing)
                or tuple(
                    stand_of(planting, number, each.crop, *self._courses[_key(each)], self._season)
                    for number, each in enumerate(growing)
                ),
            )
            for planting, growing in todo
        }

    def _carried(self, planting: Planting, growing: tuple[Growing, ...]) -> tuple[Stand, ...]:
        """The stands a planting had before it was moved as it is; none where more than its place differs."""
        old = self._kept.get(planting.id)
        if (
            old is None
            or not _alike(old.growing, growing)
            or not _only_moved(old.stands[0].planting, planting)
        ):
            return ()
        return tuple(moved(stand, planting) for stand in old.stands)

    def _follow(self, every: Sequence[Growing]) -> None:
        """See to it that the courses of all these are known."""
        if len(self._courses) > COURSES_KEPT:
            self._courses.clear()
        new = {key: g for g in every if (key := _key(g)) not in self._courses}
        if new:
            course = follow(self._site, list(new.values()), self._weeks)
            for row, (key, growing) in enumerate(new.items()):
                outlook = outlook_of(self._site, growing, course, row, self._season)
                self._courses[key] = (course, row, outlook)


_Key = tuple[int, Start, date | None, bool, bool, date | None]


def _key(growing: Growing) -> _Key:
    """What decides a course: the crop by identity, since values of its size are slow to compare."""
    aids = growing.supported, growing.warmed, growing.warmed_until
    return id(growing.crop), growing.start, growing.end, *aids


def _only_moved(one: Planting, two: Planting) -> bool:
    """Whether two plantings differ at most in where their pattern lies."""
    fields = (name for name in type(one).model_fields if name != "pattern")
    same = all(getattr(one, name) == getattr(two, name) for name in fields)
    return same and same_at_home(one.pattern, two.pattern)


def _alike(one: tuple[Growing, ...], two: tuple[Growing, ...]) -> bool:
    return len(one) == len(two) and all(
        a.crop is b.crop
        and (a.supported, a.warmed, a.warmed_until) == (b.supported, b.warmed, b.warmed_until)
        for a, b in zip(one, two, strict=True)
    )
