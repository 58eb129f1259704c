"""A planting: one crop in one pattern with one start."""

from datetime import date, timedelta
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from gardencanvas.garden.pattern import Floats, Pattern
from gardencanvas.garden.value import Id, Note, Value

EARLIEST, LATEST = date(1900, 1, 1), date(2200, 12, 31)
GardenDate = Annotated[date, Field(ge=EARLIEST, le=LATEST)]


class Start(Value):
    """When and how the plants came to stand in the bed.

    ``on`` is the day in the bed: sown in place, planted out, set, or (a volunteer) seen. ``sown_on`` is the
    day a raised planting was sown under glass; absent, the crop's usual nursery time before ``on`` is meant.
    A pinned date is never moved by the program.
    """

    kind: Literal["sown", "raised", "set", "volunteer"]
    on: GardenDate
    sown_on: GardenDate | None = None
    pinned: bool = False

    @model_validator(mode="after")
    def _ordered(self) -> Self:
        if self.sown_on is not None:
            if self.kind != "raised":
                raise ValueError("only a raised planting has a sowing day of its own")
            if not self.on - timedelta(days=400) <= self.sown_on <= self.on:
                raise ValueError(
                    f"sown on {self.sown_on}: it must lie in the 400 days before planting out, {self.on}"
                )
        return self


class Planting(Value):
    """One crop in one pattern with one start, and where the grower says so, one end.

    Several ``varieties`` repeat along the stations (A, B, A, B …). ``per_station`` seedlings raised
    together make a clump. Parts of one ``succession`` bear the same name of it.
    """

    id: Id
    crop: Annotated[str, Field(min_length=1, max_length=60)]
    varieties: Annotated[
        tuple[Annotated[str, Field(min_length=1, max_length=60)], ...], Field(max_length=20)
    ] = ()
    pattern: Pattern
    start: Start
    end: GardenDate | None = None
    per_station: Annotated[int, Field(ge=1, le=20)] = 1
    note: Note = ""
    locked: bool = False
    succession: Id | None = None

    @model_validator(mode="after")
    def _ends_after_start(self) -> Self:
        if self.end is not None and self.end <= self.start.on:
            raise ValueError(f"end {self.end} must come after the start, {self.start.on}")
        return self

    @property
    def stations(self) -> Floats:
        """Where its stations are: shape (n, 2), plan metres, cached with the pattern."""
        return self.pattern.stations

    @property
    def plants(self) -> int:
        """Number of plants: stations times seedlings per station."""
        return self.pattern.count * self.per_station

    @property
    def variety(self) -> str | None:
        """The first variety, which stands for the planting where one is asked for."""
        return self.varieties[0] if self.varieties else None
