"""Regular patterns laid into a room so that they hold most plants: rows, and square or staggered blocks.

A lattice is shifted along both its axes; flush with an end of the room it is best for a rectangle, where it
reaches the closed forms of ``garden.pattern.Block``.
"""

from collections.abc import Generator
from dataclasses import dataclass
from math import ceil, cos, floor, radians, sin, sqrt
from typing import Literal

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely.affinity import rotate
from shapely.geometry.base import BaseGeometry

from gardencanvas.garden.edits import made
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.laid import Spacings
from gardencanvas.garden.pattern import Block, Pattern, Rows
from gardencanvas.garden.value import MAX_STATIONS

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]
Kind = Literal["rows", "square", "staggered"]
KINDS: tuple[Kind, ...] = ("rows", "square", "staggered")

_EDGE_M = 1e-6  # a plant may stand exactly on the edge of its room
_EPSILON = 1e-9
_FINE = 6  # digits kept of a metre
_SHIFTS = 6  # tried along each axis beside flush and middle ones
_MANY = 2000  # places: with more, a shift changes their number little, and fewer are tried
_HOLED = 0.4  # a pattern of which less is planted is no pattern (our choice)


@dataclass(frozen=True, slots=True)
class Lattice:
    """A regular pattern before it is laid: plants every ``a``, lines every ``b``, turned by ``angle_deg``."""

    kind: Kind
    a: float
    b: float
    angle_deg: float

    @property
    def late(self) -> float:
        """How far every second line is shifted."""
        return self.a / 2 if self.kind == "staggered" else 0.0


def lattices(room: Spacings, angle_deg: float, kinds: tuple[Kind, ...], across: float = 0.0) -> list[Lattice]:
    """The lattices that a crop may stand in, along a bed and across it.

    Parameters
    ----------
    across
        How far apart rows lie in which it may stand between others; 0 for none.
    """
    s = room.even_m
    found = []
    for turned in (0.0, 90.0):
        angle = (angle_deg + turned + 90.0) % 180.0 - 90.0
        if "rows" in kinds:
            found.append(Lattice("rows", room.in_row_m, room.between_m, angle))
            if across > 0.0 and turned == 0.0:
                times = ceil(room.between_m / across - _EPSILON)
                found.append(Lattice("rows", room.in_row_m, times * across, angle))
        if "staggered" in kinds:
            found.append(Lattice("staggered", s, s * sqrt(3) / 2, angle))
    if "square" in kinds:
        found.append(Lattice("square", s, s, angle_deg))
    return list(dict.fromkeys(found))


@dataclass(frozen=True, slots=True)
class Laid:
    """A pattern in a room and how many plants it holds."""

    pattern: Pattern
    count: int


def laid_in(room: BaseGeometry, lattice: Lattice, most: int = 2) -> Generator[None, None, list[Laid]]:
    """The lattice in its best shifts, most plants first; pauses before each shift.

    Raises
    ------
    Refusal
        If the room would hold more than a planting may.
    """
    flat = rotate(room, -lattice.angle_deg, origin=(0.0, 0.0))
    if flat.is_empty:
        return []
    about = flat.area / (lattice.a * lattice.b)
    if about > MAX_STATIONS:
        raise Refusal(
            "This ground would hold about {about:,.0f} plants; a planting holds {most:,}.",
            about=about,
            most=MAX_STATIONS,
        )
    wide = flat.buffer(_EDGE_M, join_style="mitre")
    shapely.prepare(wide)
    grids = []
    for shift in _shifts(flat.bounds, lattice, about):
        yield
        grids.append(_Grid.at(wide, flat.bounds, lattice, shift))
    order = sorted(range(len(grids)), key=lambda n: (-grids[n].count, n))
    patterns = (_pattern(lattice, grids[n]) for n in order[:most] if grids[n].count)
    return [Laid(p, p.count) for p in patterns if p is not None]


def _shifts(bounds: tuple[float, ...], lattice: Lattice, about: float) -> list[tuple[float, float]]:
    few = _SHIFTS if about <= _MANY else 2
    u0, v0, u1, v1 = bounds
    along = _tries(u1 - u0, lattice.a, few, lattice.late)
    return [(du, dv) for dv in _tries(v1 - v0, lattice.b, few, 0.0) for du in along]


def _tries(length: float, step: float, few: int, late: float) -> list[float]:
    """Where the first plant of a line may stand: in the middle of what is left, flush, and between."""
    slack = length - floor(length / step + _EPSILON) * step
    tries = [max(slack, 0.0) / 2, 0.0, max(slack, 0.0)]
    if late and slack >= late - _EPSILON:
        tries.insert(0, max(slack - late, 0.0) / 2)
    tries += [n * step / few for n in range(1, few)]
    return list(dict.fromkeys(round(t, 9) for t in tries))


@dataclass(frozen=True, slots=True)
class _Grid:
    """Places of a shifted lattice in its own frame, shape (lines, columns, 2), and which lie in the room."""

    xy: Floats
    kept: Bools

    @property
    def count(self) -> int:
        return int(self.kept.sum())

    @classmethod
    def at(
        cls, wide: BaseGeometry, bounds: tuple[float, ...], lattice: Lattice, shift: tuple[float, float]
    ) -> "_Grid":
        u0, v0, u1, v1 = bounds
        columns = max(floor((u1 - u0 - shift[0]) / lattice.a + _EPSILON) + 1, 0)
        lines = max(floor((v1 - v0 - shift[1]) / lattice.b + _EPSILON) + 1, 0)
        first = -1 if lattice.late else 0  # late lines may begin before the others
        number, line = np.meshgrid(np.arange(first, columns), np.arange(lines))
        x = u0 + shift[0] + number * lattice.a + (line % 2) * lattice.late
        y = v0 + shift[1] + line * lattice.b
        kept = np.asarray(shapely.contains_xy(wide, x.ravel(), y.ravel()), dtype=bool).reshape(x.shape)
        return cls(np.stack([x, y], axis=-1), kept)


def _pattern(lattice: Lattice, grid: _Grid) -> Pattern | None:
    """The pattern of the lines and columns that hold plants, other places left out; None if hardly any do."""
    lines = np.flatnonzero(grid.kept.any(axis=1))
    columns = np.flatnonzero(grid.kept.any(axis=0))
    top, left = int(lines[0]), int(columns[0])
    top -= top % 2 if lattice.late else 0  # the first line of a staggered block is not a late one
    kept = grid.kept[top : int(lines[-1]) + 1, left : int(columns[-1]) + 1]
    if kept.sum() < _HOLED * kept.size:
        return None
    x, y = (float(v) for v in grid.xy[top, left])
    turn = radians(lattice.angle_deg)
    x, y = x - lattice.a / 2, y - (lattice.b if lattice.kind == "rows" else lattice.a) / 2
    frame = {
        "origin": (
            round(x * cos(turn) - y * sin(turn), _FINE),
            round(x * sin(turn) + y * cos(turn), _FINE),
        ),
        "angle_deg": lattice.angle_deg,
    }
    try:
        return _made(lattice, kept, frame)
    except Refusal:
        return None  # more places left out than a pattern may have


def _made(lattice: Lattice, kept: Bools, frame: dict[str, object]) -> Pattern:
    lines, columns = kept.shape
    s = lattice.a
    if lattice.kind == "rows":
        return made(
            Rows, **frame, length_m=round(columns * s, 9), rows=lines, spacing_m=s, row_spacing_m=lattice.b,
            left_out=_gone(kept),
        )  # fmt: skip
    if lattice.kind == "square":
        return made(
            Block,
            **frame,
            length_m=round(columns * s, 9),
            width_m=round(lines * s, 9),
            spacing_m=s,
            left_out=_gone(kept),
        )
    width = s + (lines - 1) * lattice.b + _EDGE_M
    if not kept[1::2, -1].any():  # late lines are one plant shorter
        late = np.zeros_like(kept)
        late[1::2, -1] = True
        return made(
            Block, **frame, length_m=round(columns * s, 9), width_m=width, spacing_m=s, staggered=True,
            left_out=_gone(kept[~late]),
        )  # fmt: skip
    return made(
        Block, **frame, length_m=round((columns + 0.5) * s, 9), width_m=width, spacing_m=s, staggered=True,
        left_out=_gone(kept),
    )  # fmt: skip


def _gone(kept: Bools) -> tuple[int, ...]:
    return tuple(np.flatnonzero(~kept.ravel()).tolist())
