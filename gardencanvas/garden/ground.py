"""What lies and stands on the ground: beds, paths, fixtures, supports and covers."""

from datetime import date
from math import ceil, hypot, tau
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator
from shapely import Polygon

from gardencanvas.garden.value import Depth, Height, Id, Length, Name, Note, Point, Ring, Value


class Bed(Value):
    """Ground that is planted: any simple polygon, in plan metres."""

    id: Id
    name: Name
    outline: Ring
    holes: Annotated[tuple[Ring, ...], Field(max_length=50)] = ()
    soil_depth_m: Depth | None = None  # None: not known
    raised_m: Depth = 0.0
    path_note: Note = ""  # where one walks and reaches from
    edge_note: Note = ""  # boards, stones, grass
    locked: bool = False

    @model_validator(mode="after")
    def _holes_inside(self) -> Self:
        if not self.holes:  # asked again with each edit of the layout
            return self
        outline = Polygon(self.outline)
        for hole in self.holes:
            if not outline.contains(Polygon(hole)):
                raise ValueError("a hole must lie inside the bed's outline")
        return self


class Path(Value):
    """Ground that is walked on."""

    id: Id
    name: Name = "Path"
    line: Annotated[tuple[Point, ...], Field(min_length=2, max_length=2000)]
    width_m: Length = 0.4
    locked: bool = False


class Fixture(Value):
    """What stands there and throws shade; ``clear_share`` of the light passes (a bare tree, a fence)."""

    id: Id
    name: Name
    kind: Literal["wall", "fence", "hedge", "tree", "shed"]
    outline: Ring
    height_m: Height
    base_m: Annotated[float, Field(ge=0.0, le=60.0)] = 0.0  # underside of a tree's crown
    clear_share: Annotated[float, Field(ge=0.0, le=1.0)] = 0.0
    locked: bool = False

    @model_validator(mode="after")
    def _base_below_top(self) -> Self:
        if self.base_m >= self.height_m:
            raise ValueError(f"the underside {self.base_m} m must lie below the top {self.height_m} m")
        return self


CANES_APART_M = 0.3  # common practice: a cane every 25 to 30 cm for climbing beans
POSTS_APART_M = 2.0  # common practice: posts of a net or trellis
Canes = Annotated[int, Field(ge=1, le=500)]


class RingSupport(Value):
    """A ring of canes, or a single stake, round a centre."""

    shape: Literal["ring"] = "ring"
    id: Id
    kind: Literal["cane ring", "stake"]
    name: Name
    centre: Point
    radius_m: Annotated[float, Field(ge=0.0, le=5.0)]
    height_m: Height
    canes: Canes | None = None  # None: one every ``CANES_APART_M`` round it
    locked: bool = False

    @property
    def cane_count(self) -> int:
        """How many canes stand in it: three at least, a stake is one."""
        if self.kind == "stake":
            return 1
        return self.canes or max(3, round(tau * self.radius_m / CANES_APART_M))


class LineSupport(Value):
    """A row of canes, a net or a trellis between two points."""

    shape: Literal["line"] = "line"
    id: Id
    kind: Literal["cane row", "net", "trellis"]
    name: Name
    begin: Point
    end: Point
    height_m: Height
    canes: Canes | None = None  # None: one every ``CANES_APART_M``, posts every ``POSTS_APART_M``
    locked: bool = False

    @property
    def cane_count(self) -> int:
        """How many canes, or posts of a net or trellis, stand in it, both ends included."""
        length = hypot(self.end[0] - self.begin[0], self.end[1] - self.begin[1])
        apart = CANES_APART_M if self.kind == "cane row" else POSTS_APART_M
        return self.canes or max(2, ceil(length / apart - 1e-9) + 1)

    @model_validator(mode="after")
    def _has_length(self) -> Self:
        if self.begin == self.end:
            raise ValueError("begin and end of a support must differ")
        return self


Support = Annotated[RingSupport | LineSupport, Field(discriminator="shape")]


class Cover(Value):
    """Fleece, mesh, cloche or frame over some ground, for part or all of the season."""

    id: Id
    kind: Literal["fleece", "mesh", "cloche", "frame"]
    name: Name
    outline: Ring
    height_m: Height
    first: date | None = None  # None: from the start of the season
    last: date | None = None  # None: to its end
    locked: bool = False

    @model_validator(mode="after")
    def _ordered(self) -> Self:
        if self.first and self.last and self.last < self.first:
            raise ValueError(f"it comes off on {self.last}, before it goes on, {self.first}")
        return self
