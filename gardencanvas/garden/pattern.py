"""The seven patterns a planting can have; each knows its stations.

A pattern lies in a frame of its own: ``origin`` on the plan, turned clockwise by ``angle_deg`` (x right,
y down). Rows, strip and block fill a rectangle from the origin: every station keeps half a spacing from
the sides, so the rectangle is the ground the planting takes.

A pattern has *places*, numbered from 0, and its *stations* are those of them that are planted: every
``every``-th one from ``first`` on (so that two crops share the places of one ring or row), but for those
``left_out``; a ``moved`` one stands off its place. Stations are computed once per value and returned as
read-only arrays of shape (n, 2) in plan metres.
"""

from functools import cached_property
from math import floor, hypot, pi, sqrt
from typing import Annotated, Literal, Self

import numpy as np
from numpy.typing import NDArray
from pydantic import Field, model_validator
from shapely import LineString, Polygon, contains_xy, line_interpolate_point

from gardencanvas.garden.value import MAX_STATIONS, Angle, Length, Point, Ring, Spacing, Value

Floats = NDArray[np.float64]

_EPSILON = 1e-9  # so that 3.6 m holds twelve spacings of 0.3 m, not eleven


def how_many(length_m: float, spacing_m: float) -> int:
    """How many spacings fit along a length: n = ⌊L/s⌋."""
    return floor(length_m / spacing_m + _EPSILON)


PlaceNumber = Annotated[int, Field(ge=0, lt=MAX_STATIONS)]
Off = Annotated[float, Field(ge=-5.0, le=5.0)]


class Moved(Value):
    """A station that stands off its place, by metres along and across the pattern's own frame."""

    place: PlaceNumber
    along_m: Off
    across_m: Off


class _Pattern(Value):
    """What all patterns share: a frame, and a bounded number of places, of which some are planted."""

    origin: Point = (0.0, 0.0)
    angle_deg: Angle = 0.0
    every: Annotated[int, Field(ge=1, le=20)] = 1
    first: Annotated[int, Field(ge=0, le=19)] = 0
    left_out: Annotated[tuple[PlaceNumber, ...], Field(max_length=2000)] = ()  # beyond the last: ignored
    moved: Annotated[tuple[Moved, ...], Field(max_length=2000)] = ()

    @property
    def places(self) -> int:
        """Number of places, known before any is computed."""
        raise TypeError(f"{type(self).__name__} has no places")

    @property
    def count(self) -> int:
        """Number of stations: ⌈(places − first)/every⌉ less those left out."""
        places = self.places
        if self.every == 1 and not self.left_out:
            return places
        shared = len(range(self.first, places, self.every))
        gone = sum(i < places and i % self.every == self.first for i in self.left_out)
        return shared - gone

    @cached_property
    def numbers(self) -> NDArray[np.int64]:
        """The numbers of the planted places, shape (count,), in planting order, read-only."""
        numbers = np.arange(self.first, self.places, self.every, dtype=np.int64)
        if self.left_out:
            numbers = numbers[~np.isin(numbers, np.array(self.left_out, dtype=np.int64))]
        numbers.setflags(write=False)
        return numbers

    def _local(self) -> Floats:
        raise TypeError(f"{type(self).__name__} has no stations")

    @model_validator(mode="after")
    def _bounded(self) -> Self:
        if self.places > MAX_STATIONS:
            raise ValueError(
                f"this pattern would hold {self.places:,} stations; a planting holds at most {MAX_STATIONS:,}"
            )
        if self.first >= self.every:
            raise ValueError(
                f"every {self.every}. place from number {self.first} on leaves out the ones before"
            )
        if len(set(self.left_out)) < len(self.left_out):
            raise ValueError("a place is left out twice")
        if len({m.place for m in self.moved}) < len(self.moved):
            raise ValueError("a station is moved twice")
        if self.count < 1:
            raise ValueError(
                "not one station fits: make the pattern larger or its spacing smaller"
                if self.places < 1
                else "no station would be left: delete the planting instead"
            )
        return self

    @cached_property
    def stations(self) -> Floats:
        """Where the stations are: shape (count, 2), plan metres, in planting order, read-only."""
        return self._on_plan(self._planted())

    @cached_property
    def all_places(self) -> Floats:
        """Where its places are, planted or not: shape (places, 2), plan metres, read-only."""
        return self._on_plan(self._local())

    def _planted(self) -> Floats:
        local = self._local()
        if self.moved:
            local = local.copy()
            for moved in self.moved:
                if moved.place < len(local):
                    local[moved.place] += (moved.along_m, moved.across_m)
        return local if self.every == 1 and not self.left_out else local[self.numbers]

    def _on_plan(self, local: Floats) -> Floats:
        turn = np.deg2rad(self.angle_deg)
        cos, sin = np.cos(turn), np.sin(turn)
        xy: Floats = local @ np.array([[cos, sin], [-sin, cos]]) + np.array(self.origin)
        xy.setflags(write=False)
        return xy

    @cached_property
    def corners(self) -> Floats:
        """Outline of the ground the pattern takes: shape (k, 2), plan metres, read-only."""
        return self._on_plan(self._frame())

    def _frame(self) -> Floats:
        raise TypeError(f"{type(self).__name__} has no outline")


def _box(length_m: float, width_m: float) -> Floats:
    return np.array([[0.0, 0.0], [length_m, 0.0], [length_m, width_m], [0.0, width_m]])


def _circle(radius_m: float, turn: Floats) -> Floats:
    return np.stack([radius_m * np.cos(turn), radius_m * np.sin(turn)], axis=1)


def _grid(columns: int, rows: int, along_m: float, across_m: float) -> Floats:
    x = (np.arange(columns) + 0.5) * along_m
    y = (np.arange(rows) + 0.5) * across_m
    return np.stack([np.tile(x, rows), np.repeat(y, columns)], axis=1)


class Rows(_Pattern):
    """Parallel rows: ``rows`` of them, ``row_spacing_m`` apart, plants every ``spacing_m``."""

    kind: Literal["rows"] = "rows"
    length_m: Length
    rows: Annotated[int, Field(ge=1, le=1000)] = 1
    spacing_m: Spacing
    row_spacing_m: Spacing

    @property
    def width_m(self) -> float:
        """Ground taken across the rows."""
        return self.rows * self.row_spacing_m

    @property
    def places(self) -> int:
        """⌊length/spacing⌋ stations in each row."""
        return how_many(self.length_m, self.spacing_m) * self.rows

    def _local(self) -> Floats:
        return _grid(how_many(self.length_m, self.spacing_m), self.rows, self.spacing_m, self.row_spacing_m)

    def _frame(self) -> Floats:
        return _box(self.length_m, self.width_m)


class Strip(_Pattern):
    """A band of given width, filled with close rows ``across_m`` apart."""

    kind: Literal["strip"] = "strip"
    length_m: Length
    width_m: Length
    spacing_m: Spacing
    across_m: Spacing

    @property
    def places(self) -> int:
        """⌊length/spacing⌋ · ⌊width/across⌋."""
        return how_many(self.length_m, self.spacing_m) * how_many(self.width_m, self.across_m)

    def _local(self) -> Floats:
        columns, rows = how_many(self.length_m, self.spacing_m), how_many(self.width_m, self.across_m)
        return _grid(columns, rows, self.spacing_m, self.across_m)

    def _frame(self) -> Floats:
        return _box(self.length_m, self.width_m)


class Block(_Pattern):
    """A block at equal spacing, square or staggered (triangular)."""

    kind: Literal["block"] = "block"
    length_m: Length
    width_m: Length
    spacing_m: Spacing
    staggered: bool = False

    def _shape(self) -> tuple[int, int, int]:
        """Stations in even rows, in odd rows, and rows."""
        s = self.spacing_m
        even = how_many(self.length_m, s)
        if not self.staggered:
            return even, even, how_many(self.width_m, s)
        odd = max(0, how_many(self.length_m - s / 2, s))
        rows = (
            floor((self.width_m - s) / (s * sqrt(3) / 2) + _EPSILON) + 1
            if self.width_m >= s - _EPSILON
            else 0
        )
        return even, odd, rows

    @property
    def places(self) -> int:
        """Square: ⌊l/s⌋·⌊w/s⌋. Staggered: rows s·√3/2 apart, every second one half a spacing on."""
        even, odd, rows = self._shape()
        return even * ((rows + 1) // 2) + odd * (rows // 2)

    def _local(self) -> Floats:
        even, odd, rows = self._shape()
        s = self.spacing_m
        if not self.staggered:
            return _grid(even, rows, s, s)
        lines = []
        for row in range(rows):
            x = (np.arange(odd if row % 2 else even) + (1.0 if row % 2 else 0.5)) * s
            lines.append(np.stack([x, np.full(len(x), s / 2 + row * s * sqrt(3) / 2)], axis=1))
        return np.concatenate(lines)

    def _frame(self) -> Floats:
        return _box(self.length_m, self.width_m)


class RingPattern(_Pattern):
    """Stations evenly round a circle, at least ``spacing_m`` of arc apart; ``origin`` is the centre."""

    kind: Literal["ring"] = "ring"
    radius_m: Length
    spacing_m: Spacing

    @property
    def places(self) -> int:
        """⌊2πr/s⌋."""
        return how_many(2 * pi * self.radius_m, self.spacing_m)

    def _local(self) -> Floats:
        turn = 2 * pi * np.arange(self.places) / self.places
        return _circle(self.radius_m, turn)

    def _frame(self) -> Floats:
        return _circle(self.radius_m + self.spacing_m / 2, 2 * pi * np.arange(48) / 48)


class Edging(_Pattern):
    """Stations along a line, such as a bed's rim: the first half a spacing from its begin."""

    kind: Literal["edging"] = "edging"
    line: Annotated[tuple[Point, ...], Field(min_length=2, max_length=2000)]
    closed: bool = False
    spacing_m: Spacing

    @property
    def length_m(self) -> float:
        """Length of the line, closing side included."""
        return float(LineString(self._path()).length)

    def _path(self) -> tuple[Point, ...]:
        return (*self.line, self.line[0]) if self.closed else self.line

    @property
    def places(self) -> int:
        """⌊length/spacing⌋."""
        return how_many(self.length_m, self.spacing_m)

    def _local(self) -> Floats:
        pitch = self.length_m / self.places if self.closed else self.spacing_m
        at = (np.arange(self.places) + 0.5) * pitch
        points = line_interpolate_point(LineString(self._path()), at)
        return np.array([[p.x, p.y] for p in points])

    def _frame(self) -> Floats:
        band = LineString(self._path()).buffer(self.spacing_m / 2, quad_segs=4)
        return np.asarray(band.exterior.coords[:-1], dtype=np.float64)


class _Apart:
    """Points that keep a least distance, in squares of that side, so that few need be looked at."""

    def __init__(self, distance_m: float) -> None:
        self._distance_m = distance_m
        self._squares: dict[tuple[int, int], list[tuple[float, float]]] = {}
        self.points: list[tuple[float, float]] = []

    def offer(self, x: float, y: float) -> None:
        """Keep a point if it is far enough from all that are kept."""
        column, row = floor(x / self._distance_m), floor(y / self._distance_m)
        for c in (column - 1, column, column + 1):
            for r in (row - 1, row, row + 1):
                for near_x, near_y in self._squares.get((c, r), ()):
                    if hypot(near_x - x, near_y - y) < self._distance_m:
                        return
        self._squares.setdefault((column, row), []).append((x, y))
        self.points.append((x, y))

    @property
    def array(self) -> Floats:
        """The points kept, shape (n, 2)."""
        return np.array(self.points, dtype=np.float64).reshape(-1, 2)


class Drift(_Pattern):
    """An irregular group that keeps a least distance; the same seed gives the same places."""

    kind: Literal["drift"] = "drift"
    outline: Ring
    spacing_m: Spacing
    plants: Annotated[int, Field(ge=1, le=2000)]
    seed: Annotated[int, Field(ge=0, le=2**31)] = 0

    @property
    def places(self) -> int:
        """The plants asked for, or as many as found a place."""
        return len(self._darts)

    @cached_property
    def _darts(self) -> Floats:
        """Darts thrown at the outline; one is kept when it is ``spacing_m`` from all before it."""
        area = Polygon(self.outline)
        x0, y0, x1, y1 = area.bounds
        draw = np.random.default_rng(self.seed)
        kept = _Apart(self.spacing_m)
        for _ in range(8):
            darts = draw.uniform((x0, y0), (x1, y1), size=(min(4 * self.plants + 50, 4000), 2))
            for x, y in darts[contains_xy(area, darts[:, 0], darts[:, 1])].tolist():
                kept.offer(x, y)
                if len(kept.points) == self.plants:
                    return kept.array
        return kept.array

    def _local(self) -> Floats:
        return self._darts.copy()

    def _frame(self) -> Floats:
        return np.array(self.outline, dtype=np.float64)


class Spots(_Pattern):
    """Single plants, each where it was put."""

    kind: Literal["spots"] = "spots"
    points: Annotated[tuple[Point, ...], Field(min_length=1, max_length=2000)]
    spacing_m: Spacing = 0.3  # the ground each takes, for its outline

    @property
    def places(self) -> int:
        """One station a point."""
        return len(self.points)

    def _local(self) -> Floats:
        return np.array(self.points, dtype=np.float64)

    def _frame(self) -> Floats:
        reach = self.spacing_m / 2
        low = self._local().min(axis=0) - reach
        high = self._local().max(axis=0) + reach
        box: Floats = low + _box(float(high[0] - low[0]), float(high[1] - low[1]))
        return box


Pattern = Annotated[Rows | Strip | Block | RingPattern | Edging | Drift | Spots, Field(discriminator="kind")]
