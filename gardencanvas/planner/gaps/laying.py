"""Laying a pattern into open ground: rows or a block along the bed, shifted until most plants fit.

The shift is looked for on the bed's points and settled by exact distances. Where no regular pattern fits, or
a free one holds clearly more, the plants are set one by one as loose spots; where not one point is clear, the
cells that may hide a clear spot are searched to a few millimetres.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from math import floor, sqrt
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.pattern import Block, Pattern, Rows, Spots
from gardencanvas.planner.gaps.clearance import Region

Floats = NDArray[np.float64]
Singles = NDArray[np.float32]
Bools = NDArray[np.bool_]
Ints = NDArray[np.int64]

SHIFTS = 8  # tried along each side, beside those flush with the ground's ends
SETTLED = 2  # of the best shifts of each lattice, decided by exact distances
LOOSE_GAIN = 1.1  # so many times more plants make loose spots worth their disorder (our choice)
HOLED = 0.5  # a pattern of which less than so much is planted is told as loose spots (our choice)
MOST_PLANTS = 400  # of one proposal: a grower who wants more draws a larger area
_FINER = 3  # points between two of the field's, when shifts are compared
_FINE = 8  # a cell is searched in so many steps each way
_CELLS = 40  # so many cells at most
_SWEEPS = ((0, 1.0), (0, -1.0), (1, 1.0), (1, -1.0))  # axis and direction
_FEW = 40  # plants: for more, one sweep will do


@dataclass(frozen=True, slots=True)
class Spacing:
    """Usual spacing of a crop, metres."""

    along_m: float
    across_m: float

    @property
    def equal_m(self) -> float:
        """Equal spacing each way that gives the same ground."""
        return sqrt(self.along_m * self.across_m)


class _Lattice(NamedTuple):
    """A regular pattern in the bed's frame, or that turned by 90°."""

    turned: bool
    kind: str  # rows, square, staggered
    a: float  # along a line
    b: float  # between lines


class _Shift(NamedTuple):
    lattice: _Lattice
    x: float  # of a line's first station …
    y: float  # … and of the first line, in the lattice's frame
    found: int


class _Fine(NamedTuple):
    """Points between the field's points: which are free, and where they lie in the bed's frame."""

    free: Bools  # (ny, nx)
    x: Floats
    y: Floats
    step_m: float


class Laid(NamedTuple):
    """A pattern and its number of plants."""

    pattern: Pattern
    plants: int


def lay(region: Region, spacing: Spacing, apart_m: Floats, margin_m: float) -> Laid | None:
    """The pattern that holds most plants of a crop; None where not one fits.

    Parameters
    ----------
    apart_m
        Least distance to each of the region's neighbours.
    margin_m
        Least distance to the ground's edge.
    """
    clear = region.clearance(apart_m, margin_m)
    slip = region.surveyed.field.slip_m
    if clear.size == 0 or clear.max() < -slip:
        return None
    best = _regular(region, spacing, apart_m, margin_m, clear)
    loose = _loose(region, spacing.equal_m, apart_m, margin_m, clear)
    if best is None or (loose is not None and loose.plants > LOOSE_GAIN * best.plants):
        return loose
    return best


def _regular(
    region: Region, spacing: Spacing, apart_m: Floats, margin_m: float, clear: Singles
) -> Laid | None:
    grid = _laid_out(region, clear)
    fine = _finer(region, grid, margin_m)
    if not fine.free.any():
        return None
    shifts = sorted(
        (s for lattice in _lattices(spacing) for s in _shifts(region, fine, lattice, margin_m)),
        key=lambda s: (-s.found, ("rows", "square", "staggered").index(s.lattice.kind), s.lattice.turned),
    )
    best: Laid | None = None
    for shift in shifts:
        if best is not None and shift.found <= best.plants:
            break
        laid = _settled(region, shift, apart_m, margin_m, grid)
        if laid is not None and (best is None or laid.plants > best.plants):
            best = laid
    return best


def _laid_out(region: Region, clear: Singles) -> Singles:
    """Clearances as the bed lies, shape (ny, nx); −inf outside the region."""
    field = region.surveyed.field
    whole = np.full(len(region.points), -np.inf, dtype=np.float32)
    whole[region.points] = clear
    grid = np.full(field.inside.shape, -np.inf, dtype=np.float32)
    grid[field.inside] = whole
    return grid


def _finer(region: Region, grid: Singles, margin_m: float) -> _Fine:
    """Clearances between the field's points, by straight lines, and where there is some."""
    field = region.surveyed.field
    known = np.where(np.isfinite(grid), grid, -margin_m - field.step_m / 2).astype(np.float32)
    x, y = _between(field.x, field.step_m), _between(field.y, field.step_m)
    whole = _along(_along(known, field.y, y).T, field.x, x).T
    return _Fine(whole >= -field.step_m / _FINER, x, y, field.step_m / _FINER)


def _between(line: Floats, step: float) -> Floats:
    """As many times more points, over the same cells."""
    offset = np.arange(len(line) * _FINER, dtype=np.float64) + 0.5
    return np.asarray(line[0] - step / 2 + offset * step / _FINER, dtype=np.float64)


def _along(grid: Singles, line: Floats, finer: Floats) -> Singles:
    """Rows of a grid at finer places, by straight lines."""
    step = line[1] - line[0] if len(line) > 1 else 1.0
    at = np.clip((finer - line[0]) / step, 0.0, len(line) - 1.0)
    low = np.minimum(at.astype(np.intp), max(len(line) - 2, 0))
    part = (at - low).astype(np.float32)[:, None]
    high = np.minimum(low + 1, len(line) - 1)
    return np.asarray(grid[low] * (1.0 - part) + grid[high] * part, dtype=np.float32)


def _lattices(spacing: Spacing) -> Iterator[_Lattice]:
    a, b, s = spacing.along_m, spacing.across_m, spacing.equal_m
    for turned in (False, True):
        if abs(a - b) > 1e-9:
            yield _Lattice(turned, "rows", a, b)
        yield _Lattice(turned, "staggered", s, s * sqrt(3) / 2)
    yield _Lattice(False, "square", s, s)


def _shifts(region: Region, fine: _Fine, lattice: _Lattice, margin_m: float) -> list[_Shift]:
    """The best few shifts of a lattice, by the number of stations on free points."""
    turned = lattice.turned
    grid, x, y = (fine.free.T[::-1], fine.y, -fine.x[::-1]) if turned else (fine.free, fine.x, fine.y)
    rows, columns = np.flatnonzero(grid.any(axis=1)), np.flatnonzero(grid.any(axis=0))
    edges = region.box(turned=lattice.turned)
    x_shifts = _tries(x[columns[0]], x[columns[-1]], lattice.a, fine.step_m, edges[0], edges[2], margin_m)
    y_shifts = _tries(y[rows[0]], y[rows[-1]], lattice.b, fine.step_m, edges[1], edges[3], margin_m)
    if lattice.kind == "staggered":  # its second line, too, may lie flush with the ends
        x_shifts = np.concatenate([x_shifts, x_shifts[:2] + lattice.a / 2])
    counts: Ints = _counts(grid, x, y, x_shifts, y_shifts, lattice)
    order = np.argsort(-counts, axis=None, kind="stable")[:SETTLED]
    return [
        _Shift(lattice, float(x_shifts[i]), float(y_shifts[j]), int(counts[j, i]))
        for j, i in zip(*np.unravel_index(order, counts.shape), strict=True)
        if counts[j, i] > 0
    ]


def _counts(grid: Bools, x: Floats, y: Floats, x_shifts: Floats, y_shifts: Floats, lattice: _Lattice) -> Ints:
    """How many stations of each shift fall on free points, shape (y shifts, x shifts).

    Of a staggered lattice every second line is half a step late.
    """
    late = lattice.a / 2 if lattice.kind == "staggered" else 0.0
    even = np.stack([grid[:, _places(x, x0, lattice.a)].sum(axis=1) for x0 in x_shifts])
    odd = even
    if late:
        odd = np.stack([grid[:, _places(x, x0 - late, lattice.a)].sum(axis=1) for x0 in x_shifts])
    lines = [_lines(y, y0, lattice.b) for y0 in y_shifts]
    return np.stack([even[:, at[0]].sum(axis=1) + odd[:, at[1]].sum(axis=1) for at in lines])


def _lines(y: Floats, first: float, step: float) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Rows of the grid under every second line from the first on, and under those between."""
    at = _places(y, first, step)
    return at[0::2], at[1::2]


def _tries(
    low: float, high: float, step: float, cell: float, edge0: float, edge1: float, margin: float
) -> Floats:
    """Where a first line may lie: flush with either end of the ground, in its middle, and between."""
    first, last = low - cell / 2, high + cell / 2
    flush = edge0 + margin
    back = edge1 - margin
    back -= floor((back - first + cell) / step + 1e-9) * step
    flush += max(np.ceil((first - cell - flush) / step - 1e-9), 0.0) * step
    count = max(floor((last - first) / step + 1e-9), 0)
    middle = (first + last - count * step) / 2
    even = first + np.arange(SHIFTS) * step / SHIFTS
    tries = np.round(np.concatenate([[flush, back, middle], even]), 6)
    return np.array(list(dict.fromkeys(tries[tries <= last + 1e-9].tolist())))


def _places(line: Floats, first: float, step: float) -> NDArray[np.intp]:
    """Indices of the points nearest to a row of stations."""
    cell = line[1] - line[0] if len(line) > 1 else 1.0
    count = floor((line[-1] + cell / 2 - first) / step + 1e-9) + 1
    at = np.rint((first + np.arange(max(count, 0)) * step - line[0]) / cell).astype(np.intp)
    inside: NDArray[np.intp] = at[(at >= 0) & (at < len(line))]
    return inside


def _settled(region: Region, shift: _Shift, apart_m: Floats, margin_m: float, grid: Singles) -> Laid | None:
    """The pattern of a shift, with what has no clearance left out."""
    lattice = shift.lattice
    _, _, x1, y1 = region.box(turned=lattice.turned)
    columns = floor((x1 - shift.x) / lattice.a + 1e-6) + 1
    lines = floor((y1 - shift.y) / lattice.b + 1e-6) + 1
    if columns < 1 or lines < 1:
        return None
    first = -1 if lattice.kind == "staggered" else 0  # late lines may begin before the others
    number, line = np.meshgrid(np.arange(first, columns), np.arange(lines))
    late = (line % 2) * (lattice.kind == "staggered") / 2
    x, y = shift.x + (number + late) * lattice.a, shift.y + line * lattice.b
    spots = np.stack([x.ravel(), y.ravel()], axis=1)
    frame = np.stack([-spots[:, 1], spots[:, 0]], axis=1) if lattice.turned else spots
    field = region.surveyed.field
    likely = np.flatnonzero(field.at(grid, frame) >= -2 * field.slip_m)
    kept = np.zeros(len(spots), dtype=bool)
    kept[likely] = region.exact(frame[likely], apart_m, margin_m) >= 0.0
    return _pattern(region, lattice, spots.reshape(*x.shape, 2), kept.reshape(x.shape))


def _pattern(region: Region, lattice: _Lattice, spots: Floats, kept: Bools) -> Laid | None:
    """A pattern that holds the kept spots of a lattice, shape (lines, columns)."""
    kept = _at_most(kept, MOST_PLANTS)
    count = int(kept.sum())
    if count == 0:
        return None
    field = region.surveyed.field
    rows, columns = np.flatnonzero(kept.any(axis=1)), np.flatnonzero(kept.any(axis=0))
    top, left = int(rows[0]), int(columns[0])
    if lattice.kind == "staggered" and top % 2:
        top -= 1
    part = kept[top : rows[-1] + 1, left : columns[-1] + 1]
    if count == 1 or count < HOLED * part.size:
        return Laid(_spots(region, lattice, spots[kept]), count)
    x, y = spots[top, left] - (lattice.a / 2, (lattice.a if lattice.kind != "rows" else lattice.b) / 2)
    plan = np.array([[-y, x]]) if lattice.turned else np.array([[x, y]])
    origin = tuple(float(round(v, 6)) for v in field.to_plan(plan)[0])
    angle = field.angle_deg + (90.0 if lattice.turned else 0.0)
    return Laid(_made(lattice, part, origin, angle), count)


def _made(lattice: _Lattice, part: Bools, origin: tuple[float, ...], angle: float) -> Pattern:
    lines, columns = part.shape
    frame = {"origin": origin, "angle_deg": round(angle, 6)}
    s = round(lattice.a, 6)
    gone = np.flatnonzero(~part.ravel()).tolist()
    if lattice.kind == "staggered":
        width = s + (lines - 1) * s * sqrt(3) / 2
        wide = columns + 0.5
        return Block(
            **frame,
            length_m=wide * s,
            width_m=width + 1e-6,
            spacing_m=s,
            staggered=True,
            left_out=tuple(gone),
        )
    if lattice.kind == "square":
        return Block(**frame, length_m=columns * s, width_m=lines * s, spacing_m=s, left_out=tuple(gone))
    return Rows(
        **frame,
        length_m=columns * s,
        rows=lines,
        spacing_m=s,
        row_spacing_m=round(lattice.b, 6),
        left_out=tuple(gone),
    )


def _at_most(kept: Bools, most: int) -> Bools:
    """The first lines of a lattice, no more plants than so many."""
    if int(kept.sum()) <= most:
        return kept
    numbers = np.cumsum(kept.ravel()).reshape(kept.shape)
    return kept & (numbers <= most)


def _spots(region: Region, lattice: _Lattice, some: Floats) -> Spots:
    frame = np.stack([-some[:, 1], some[:, 0]], axis=1) if lattice.turned else some
    return _loose_pattern(region, frame, min(lattice.a, lattice.b))


def _loose_pattern(region: Region, frame: Floats, spacing: float) -> Spots:
    plan = np.round(region.surveyed.field.to_plan(frame), 4)
    return Spots(points=tuple(map(tuple, plan.tolist())), spacing_m=round(spacing, 4))


def _loose(region: Region, equal_m: float, apart_m: Floats, margin_m: float, clear: Singles) -> Laid | None:
    """Plants set one by one, each as far down the ground's side as it may."""
    field = region.surveyed.field
    row, column = np.nonzero(field.inside)
    xy = np.stack([field.x[column], field.y[row]], axis=1)[region.points]
    open_ = clear >= 0.0
    if not open_.any():
        return _hidden(region, equal_m, apart_m, margin_m, clear, xy)
    xy = xy[open_]
    sweeps = _SWEEPS if len(xy) * field.cell_m2 <= _FEW * equal_m * equal_m else _SWEEPS[:1]
    chosen = max((_swept(xy, equal_m, *sweep) for sweep in sweeps), key=len)
    return Laid(_loose_pattern(region, chosen, equal_m), len(chosen))


def _swept(xy: Floats, equal_m: float, axis: int, sign: float) -> Floats:
    """Points chosen one after the other from one side to the other, each clear of those before it."""
    xy = xy[np.lexsort((xy[:, 1 - axis], sign * xy[:, axis]))]
    chosen: list[Floats] = []
    left = np.ones(len(xy), dtype=bool)
    while left.any() and len(chosen) < MOST_PLANTS:
        spot = xy[int(left.argmax())]
        chosen.append(spot)
        left &= np.hypot(xy[:, 0] - spot[0], xy[:, 1] - spot[1]) >= equal_m - 1e-9
    return np.array(chosen)


def _hidden(
    region: Region, equal_m: float, apart_m: Floats, margin_m: float, clear: Singles, xy: Floats
) -> Laid | None:
    """One spot between the field's points, where there is one."""
    field = region.surveyed.field
    some = np.argsort(-clear, kind="stable")[:_CELLS]
    some = some[clear[some] >= -field.slip_m]
    step = (np.arange(_FINE) + 0.5) / _FINE - 0.5
    dx, dy = (v.ravel() * field.step_m for v in np.meshgrid(step, step))
    spots = (xy[some][:, None, :] + np.stack([dx, dy], axis=1)[None, :, :]).reshape(-1, 2)
    room = region.exact(spots, apart_m, margin_m)
    at = int(room.argmax())
    if room[at] < 0.0:
        return None
    return Laid(_loose_pattern(region, spots[at : at + 1], equal_m), 1)
