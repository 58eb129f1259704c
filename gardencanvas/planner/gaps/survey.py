"""A survey of a layout: what stands when, and the beds as fields, kept as long as they are the same."""

from collections import OrderedDict
from dataclasses import dataclass, field
from datetime import date
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import Stand, grid
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.planner.gaps.field import REACH_M, Field, field_of

Floats = NDArray[np.float64]
Singles = NDArray[np.float32]
K = TypeVar("K")
V = TypeVar("V")

_KEPT = 2000  # fields, and distances, that are remembered


@dataclass(frozen=True, eq=False)
class Neighbour:
    """A stand that may matter in a bed, and how far each of the bed's points lies from it."""

    stand: Stand
    stations: Floats  # in the bed's frame
    away_m: Singles


@dataclass(frozen=True, eq=False)
class Surveyed:
    """A bed with all that stands in or near it in the layout's year."""

    field: Field
    neighbours: tuple[Neighbour, ...]


@dataclass(frozen=True, eq=False)
class Survey:
    """One layout of one garden."""

    garden: Garden
    layout: Layout
    catalogue: Catalogue
    stands: dict[str, tuple[Stand, ...]]
    surveyor: "Surveyor"
    _beds: dict[str, Surveyed | None] = field(default_factory=dict)

    @property
    def season(self) -> tuple[date, date]:
        """First and last day of the layout's year."""
        return self.layout.season

    def week(self, on: date) -> int:
        """Week of the engine's grid that holds a day."""
        return grid(self.season).index(on)

    def bed(self, bed: Bed) -> Surveyed | None:
        """A bed and its neighbours; None where nothing of it can be planted."""
        if bed.id not in self._beds:
            self._beds[bed.id] = self.surveyor.surveyed(self, bed)
        return self._beds[bed.id]


class Surveyor:
    """Makes surveys of a garden as it changes, and does again only what did."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.catalogue = catalogue
        self._standing: Standing | None = None
        self._fields: OrderedDict[tuple[object, ...], tuple[object, Field | None]] = OrderedDict()
        self._away: OrderedDict[tuple[int, int], tuple[Field, Stand, Neighbour | None]] = OrderedDict()
        self._last: Survey | None = None

    def survey(self, garden: Garden, layout_id: str) -> Survey:
        """The survey of a layout."""
        last, layout = self._last, garden.layout(layout_id)
        if last is not None and last.layout is layout and last.garden is garden:
            return last
        if self._standing is None or not self._standing.serves(garden.site, layout):
            self._standing = Standing(self.catalogue, garden.site, layout)
        stands = self._standing.of(layout)
        self._last = Survey(garden, layout, self.catalogue, stands, self)
        return self._last

    def surveyed(self, survey: Survey, bed: Bed) -> Surveyed | None:
        """A bed's field and neighbours."""
        found = self._field(survey.garden, survey.layout, bed)
        if found is None:
            return None
        every = (s for stands in survey.stands.values() for s in stands)
        near = (self._neighbour(found, s) for s in every if _might(found, s))
        return Surveyed(found, tuple(n for n in near if n is not None))

    def _field(self, garden: Garden, layout: Layout, bed: Bed) -> Field | None:
        key = (id(bed), tuple(map(id, layout.paths)), tuple(map(id, garden.fixtures)))
        known = self._fields.get(key)
        if known is None:
            held = (bed, layout.paths, garden.fixtures)  # so that no identity is given to another
            known = self._fields[key] = (held, field_of(garden, layout, bed))
            _trim(self._fields)
        return known[1]

    def _neighbour(self, found: Field, stand: Stand) -> Neighbour | None:
        key = (id(found), id(stand))
        known = self._away.get(key)
        if known is None:
            stations = found.near(stand)
            near = None if stations is None else Neighbour(stand, stations, found.distance(stations))
            known = self._away[key] = (found, stand, near)
            _trim(self._away)
        return known[2]


def _trim(kept: OrderedDict[K, V]) -> None:
    while len(kept) > _KEPT:
        kept.popitem(last=False)


def _might(found: Field, stand: Stand) -> bool:
    """Whether a stand may have stations near a bed."""
    x0, y0, x1, y1 = found.ground.bounds
    a0, b0, a1, b1 = stand.box
    return (
        bool(a0 <= x1 + REACH_M and a1 >= x0 - REACH_M and b0 <= y1 + REACH_M and b1 >= y0 - REACH_M)
        and stand.end > stand.begin
    )
