"""Layouts and the garden: the whole of what a file holds."""

from collections import Counter
from collections.abc import Iterable, Iterator
from datetime import date
from functools import cached_property
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from gardencanvas.crops.model import Crop, Variety
from gardencanvas.garden.backdrop import Backdrop
from gardencanvas.garden.ground import Bed, Cover, Fixture, Path, Support
from gardencanvas.garden.planting import GardenDate, Planting
from gardencanvas.garden.site import Site
from gardencanvas.garden.value import MAX_LAYOUT_STATIONS, Id, Name, Note, Value

FORMAT = 2

Item = Bed | Path | Support | Cover | Planting | Fixture


class Accepted(Value):
    """A finding the grower lives with: what it was about, how bad it was, and why it may stay."""

    code: Annotated[str, Field(min_length=1, max_length=60)]
    plantings: Annotated[tuple[Id, ...], Field(min_length=1, max_length=20)]
    verdict: Literal["strains", "clashes"]
    note: Note = ""
    on: GardenDate

    def names(self, code: str, plantings: Iterable[str]) -> bool:
        """Whether it is about that code and these plantings, in whichever order."""
        return self.code == code and set(self.plantings) == set(plantings)


class Done(Value):
    """A job that was done; ``job`` is its id, which does not change with its date."""

    job: Annotated[str, Field(min_length=1, max_length=100)]
    on: GardenDate


class Layout(Value):
    """One arrangement of beds and plantings for one year."""

    id: Id
    name: Name
    year: Annotated[int, Field(ge=1900, le=2200)]
    first_month: Annotated[int, Field(ge=1, le=12)] = 1  # 7 in the southern hemisphere
    note: Note = ""
    kept: bool = False
    beds: Annotated[tuple[Bed, ...], Field(max_length=2000)] = ()
    paths: Annotated[tuple[Path, ...], Field(max_length=2000)] = ()
    supports: Annotated[tuple[Support, ...], Field(max_length=5000)] = ()
    covers: Annotated[tuple[Cover, ...], Field(max_length=5000)] = ()
    plantings: Annotated[tuple[Planting, ...], Field(max_length=20_000)] = ()
    accepted: Annotated[tuple[Accepted, ...], Field(max_length=5000)] = ()
    done: Annotated[tuple[Done, ...], Field(max_length=100_000)] = ()

    @model_validator(mode="after")
    def _sound(self) -> Self:
        ids = [item.id for item in self.items()]
        if len(set(ids)) != len(ids):
            twice = min(i for i, n in Counter(ids).items() if n > 1)
            raise ValueError(f"the id {twice!r} is used twice")
        total = sum(p.pattern.count for p in self.plantings)
        if total > MAX_LAYOUT_STATIONS:
            raise ValueError(
                f"the layout would hold {total:,} stations; at most {MAX_LAYOUT_STATIONS:,} are allowed"
            )
        return self

    def items(self) -> Iterator[Bed | Path | Support | Cover | Planting]:
        """Everything that can be selected, ground first."""
        yield from self.beds
        yield from self.paths
        yield from self.supports
        yield from self.covers
        yield from self.plantings

    @cached_property
    def by_id(self) -> dict[str, Bed | Path | Support | Cover | Planting]:
        """Items of the layout by id."""
        return {item.id: item for item in self.items()}

    @property
    def season(self) -> tuple[date, date]:
        """First and last day of the layout's year."""
        first = date(self.year, self.first_month, 1)
        return first, date.fromordinal(date(self.year + 1, self.first_month, 1).toordinal() - 1)

    @property
    def middle(self) -> date:
        """Middle of the growing season: the first day of the year's seventh month."""
        return date.fromordinal(self.season[0].toordinal() + 181)


class Garden(Value):
    """The garden: what a file holds."""

    format: Annotated[int, Field(ge=1)] = FORMAT
    name: Name
    site: Site
    fixtures: Annotated[tuple[Fixture, ...], Field(max_length=2000)] = ()
    layouts: Annotated[tuple[Layout, ...], Field(min_length=1, max_length=200)]
    crops: Annotated[tuple[Crop, ...], Field(max_length=1000)] = ()  # the grower's own
    varieties: Annotated[tuple[Variety, ...], Field(max_length=2000)] = ()  # the grower's own
    note: Note = ""
    backdrop: Backdrop | None = None  # a picture under the plan

    @model_validator(mode="after")
    def _ids_differ(self) -> Self:
        ids = [x.id for x in self.layouts]
        if len(set(ids)) != len(ids):
            raise ValueError("two layouts have the same id")
        return self

    def layout(self, layout_id: str | None = None) -> Layout:
        """The layout of that id (or name); the first where none is asked for.

        Raises
        ------
        KeyError
            If the garden has no such layout.
        """
        if layout_id is None:
            return self.layouts[0]
        for layout in self.layouts:
            if layout.id == layout_id:
                return layout
        for layout in self.layouts:
            if layout.name == layout_id:
                return layout
        raise KeyError(layout_id)

    def find(self, layout_id: str, item_id: str) -> Item | None:
        """The item of that id in the layout or among the fixtures; None where there is none."""
        item = self.layout(layout_id).by_id.get(item_id)
        if item is not None:
            return item
        return next((f for f in self.fixtures if f.id == item_id), None)
