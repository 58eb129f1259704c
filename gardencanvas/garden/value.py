"""The kinds of number and word that garden values are made of, with their allowed ranges."""

import secrets
from typing import Annotated

from pydantic import AfterValidator, BaseModel, ConfigDict, Field
from shapely import LinearRing, Polygon

Id = Annotated[str, Field(pattern=r"^[A-Za-z0-9_-]{1,40}$")]
Name = Annotated[str, Field(min_length=1, max_length=200)]
Note = Annotated[str, Field(max_length=10_000)]

# A kilometre each way is more than any bed plan needs and keeps a millimetre exact in double precision.
Coordinate = Annotated[float, Field(ge=-1000.0, le=1000.0)]
Length = Annotated[float, Field(gt=0.0, le=1000.0)]
Spacing = Annotated[float, Field(ge=0.005, le=50.0)]
Height = Annotated[float, Field(gt=0.0, le=60.0)]
Depth = Annotated[float, Field(ge=0.0, le=5.0)]
Angle = Annotated[float, Field(ge=-3600.0, le=3600.0)]
Point = tuple[Coordinate, Coordinate]

MAX_CORNERS = 2000
MAX_STATIONS = 20_000  # in one planting
MAX_LAYOUT_STATIONS = 200_000  # in one layout


class Value(BaseModel):
    """A frozen garden value: unknown fields, infinities and not-a-number are refused."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False)

    # pydantic compares what is cached beside the fields too, which fails for cached arrays
    def __eq__(self, other: object) -> bool:
        if self is other:
            return True
        if type(self) is not type(other):
            return NotImplemented
        return all(getattr(self, name) == getattr(other, name) for name in type(self).model_fields)

    def __hash__(self) -> int:
        return hash((type(self), *(getattr(self, name) for name in type(self).model_fields)))


def _simple_ring(ring: tuple[Point, ...]) -> tuple[Point, ...]:
    if not LinearRing(ring).is_simple:
        raise ValueError("the outline crosses itself; its sides may only meet at corners")
    if Polygon(ring).area < 1e-4:
        raise ValueError("the outline encloses less than 1 cm²")
    return ring


Ring = Annotated[tuple[Point, ...], Field(min_length=3, max_length=MAX_CORNERS), AfterValidator(_simple_ring)]


def new_id(prefix: str) -> str:
    """A fresh identifier such as ``bed-4f1c09ab``."""
    return f"{prefix}-{secrets.token_hex(4)}"
