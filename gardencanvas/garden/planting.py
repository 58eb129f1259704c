"""A planting: one crop in one pattern with one start."""

from datetime import date, timedelta
from functools import cached_property
from typing import Annotated, Literal, Self

import numpy as np
from numpy.typing import NDArray
from pydantic import Field, model_validator

from gardencanvas.garden.pattern import Floats, Pattern
from gardencanvas.garden.value import Id, Note, Value

EARLIEST, LATEST = date(1900, 1, 1), date(2200, 12, 31)
GardenDate = Annotated[date, Field(ge=EARLIEST, le=LATEST)]


class Start(Value):
    """When and how the plants came to stand in the bed.

    ``on`` is the day in the bed: sown in place, planted out, set, or (a volunteer) come up. ``sown_on`` is
    the day a raised planting was sown under glass; absent, the crop's usual nursery time before ``on`` is
    meant.
    A pinned date is never moved by the program. Of a volunteer the day it came up is estimated, right to
    ``within_d`` days either way where that is said; one that is ``kept`` was decided on.
    """

    kind: Literal["sown", "raised", "set", "volunteer"]
    on: GardenDate
    sown_on: GardenDate | None = None
    pinned: bool = False
    within_d: Annotated[int, Field(ge=1, le=183)] | None = None
    kept: bool = False

    @model_validator(mode="after")
    def _ordered(self) -> Self:
        if self.sown_on is not None:
            if self.kind != "raised":
                raise ValueError("only a raised planting has a sowing day of its own")
            if not self.on - timedelta(days=400) <= self.sown_on <= self.on:
                raise ValueError(
                    f"sown on {self.sown_on}: it must lie in the 400 days before planting out, {self.on}"
                )
        if self.kind != "volunteer" and (self.within_d is not None or self.kept):
            raise ValueError("only of a volunteer the day is estimated, and only a volunteer is kept")
        return self


class Planting(Value):
    """One crop in one pattern with one start, and where the grower says so, one end.

    Several ``varieties`` repeat along the stations (A, B, A, B …), or, where they have ``shares``, come in
    these proportions, evenly mixed. ``per_station`` seedlings raised together make a clump. Parts of one
    ``succession`` bear the same name of it.
    """

    id: Id
    crop: Annotated[str, Field(min_length=1, max_length=60)]
    varieties: Annotated[
        tuple[Annotated[str, Field(min_length=1, max_length=60)], ...], Field(max_length=20)
    ] = ()
    shares: Annotated[tuple[Annotated[int, Field(ge=1, le=100)], ...], Field(max_length=20)] = ()
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
        if self.shares and len(self.shares) != len(self.varieties):
            raise ValueError(
                f"there are {len(self.varieties)} varieties and {len(self.shares)} shares; give one to each"
            )
        return self

    @property
    def stations(self) -> Floats:
        """Where its stations are: shape (n, 2), plan metres, cached with the pattern."""
        return self.pattern.stations

    @cached_property
    def mixed(self) -> NDArray[np.int64]:
        """Which of the varieties stands at each station, shape (n,), read-only.

        With shares, each station goes to the variety that is farthest behind its share of those so far, so
        that any stretch is mixed as the whole is.
        """
        count, kinds = self.pattern.count, max(len(self.varieties), 1)
        if self.shares:
            which = _by_share(count, np.array(self.shares, dtype=np.float64))
        else:
            which = np.arange(count, dtype=np.int64) % kinds
        which.setflags(write=False)
        return which

    @property
    def plants(self) -> int:
        """Number of plants: stations times seedlings per station."""
        return self.pattern.count * self.per_station

    @property
    def variety(self) -> str | None:
        """The first variety, which stands for the planting where one is asked for."""
        return self.varieties[0] if self.varieties else None


def _by_share(count: int, shares: Floats) -> NDArray[np.int64]:
    kinds = len(shares)
    if count <= kinds:
        return np.arange(count, dtype=np.int64)
    want = shares / shares.sum()
    used = np.zeros(kinds)
    which = np.empty(count, dtype=np.int64)
    for station in range(count):
        missing = np.flatnonzero(used == 0)  # each variety stands somewhere, however small its share
        last_chance = count - station <= len(missing)
        turn = int(missing[0]) if last_chance else int(np.argmax(want * (station + 1) - used))
        which[station] = turn
        used[turn] += 1
    return which
