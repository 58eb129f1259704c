"""Where the garden lies: place, bearing of the plan, frost dates and monthly climate."""

from typing import Annotated, Literal, Self

from pydantic import AfterValidator, Field, model_validator

from gardencanvas.garden.value import Name, Note, Value

Celsius = Annotated[float, Field(ge=-60.0, le=55.0)]
Months = Annotated[tuple[Celsius, ...], Field(min_length=12, max_length=12)]
Rain = Annotated[tuple[Annotated[float, Field(ge=0.0, le=3000.0)], ...], Field(min_length=12, max_length=12)]

_DAYS = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)


class DayOfYear(Value):
    """A day that comes back each year."""

    month: Annotated[int, Field(ge=1, le=12)]
    day: Annotated[int, Field(ge=1, le=31)]

    @model_validator(mode="after")
    def _exists(self) -> Self:
        if self.day > _DAYS[self.month - 1]:
            raise ValueError(f"month {self.month} has no day {self.day}; it ends on {_DAYS[self.month - 1]}")
        return self


class Climate(Value):
    """Monthly normals, January first: °C and millimetres."""

    mean_c: Months
    min_c: Months | None = None
    max_c: Months | None = None
    rain_mm: Rain | None = None
    source: Note = ""

    @model_validator(mode="after")
    def _ordered(self) -> Self:
        for month in range(12):
            low = self.min_c[month] if self.min_c else self.mean_c[month]
            high = self.max_c[month] if self.max_c else self.mean_c[month]
            if not low <= self.mean_c[month] <= high:
                raise ValueError(
                    f"month {month + 1}: the mean {self.mean_c[month]} °C must lie between "
                    f"the minimum {low} °C and the maximum {high} °C"
                )
        return self


class Frost(Value):
    """Typical last and first frost; both absent where frost does not come."""

    last: DayOfYear | None = None
    first: DayOfYear | None = None
    basis: Literal["known", "past years", "estimated", "none"] = "known"

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if (self.last is None) != (self.first is None):
            raise ValueError("give both the last and the first frost, or neither where frost never comes")
        return self


class Site(Value):
    """The place a garden lies in.

    ``bearing_deg`` is the compass direction that the top edge of the plan faces: 0 when north is up,
    90 when east is up.
    """

    place: Name
    latitude_deg: Annotated[float, Field(ge=-90.0, le=90.0)]
    longitude_deg: Annotated[float, Field(ge=-180.0, le=180.0)]
    elevation_m: Annotated[float, Field(ge=-450.0, le=6000.0)] = 0.0
    bearing_deg: Annotated[float, Field(ge=0.0, le=360.0), AfterValidator(lambda d: d % 360.0)] = 0.0
    frost: Frost
    climate: Climate
