"""Split a planting in two, and join several to one."""

from collections.abc import Callable, Collection, Sequence
from typing import Literal, TypeGuard

import numpy as np

from gardencanvas.garden.edits import add, made, rebuilt, remove, replace
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.pattern import Block, Floats, Pattern, Rows, Spots, Strip, how_many
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import new_id

Cut = Literal["along", "across"]  # between two rows; through the rows


def split(garden: Garden, layout_id: str, planting_id: str, cut: Cut, at: int) -> tuple[Garden, str]:
    """Cut a planting in two after ``at`` rows (along) or ``at`` stations of a row (across).

    A pattern without rows is cut after its first ``at`` stations, and both parts become spots.

    Returns
    -------
    garden
        Every station stands where it stood.
    new_id
        Id of the second part.

    Raises
    ------
    Refusal
        If a part would be empty.
    """
    planting = _planting(garden, layout_id, planting_id)
    first, second = _parts(planting.pattern, cut, at)
    part_id = new_id("planting")
    garden = replace(garden, layout_id, [rebuilt(planting, pattern=first)])
    return add(garden, layout_id, [rebuilt(planting, id=part_id, pattern=second)]), part_id


def parts_of(pattern: Pattern, cut: Cut) -> int:
    """How many rows, or stations of a row, there are to cut between."""
    if not _cuts_clean(pattern):
        return pattern.count
    columns, rows = _grid(pattern)
    return rows if cut == "along" else columns


def join(garden: Garden, layout_id: str, ids: Collection[str]) -> tuple[Garden, str]:
    """Make one planting of several of one crop, one start and one end; it keeps the first one's id.

    Rows that continue each other evenly become rows again; all else becomes spots, every station where it
    stood.

    Raises
    ------
    Refusal
        If fewer than two are given, or they differ in crop, varieties, start or clump.
    """
    plantings = [_planting(garden, layout_id, i) for i in ids]
    if len(plantings) < 2:
        raise Refusal("Select two or more plantings to join them.")
    first = plantings[0]
    for other in plantings[1:]:
        for what in ("crop", "varieties", "shares", "start", "end", "per_station"):
            if getattr(other, what) != getattr(first, what):
                raise Refusal("These plantings cannot be joined: they differ in {field}.", field=what)
    pattern = _joined([p.pattern for p in plantings])
    garden = remove(garden, layout_id, [p.id for p in plantings[1:]])
    return replace(garden, layout_id, [rebuilt(first, pattern=pattern)]), first.id


def _planting(garden: Garden, layout_id: str, planting_id: str) -> Planting:
    found = garden.find(layout_id, planting_id)
    if not isinstance(found, Planting):
        raise Refusal("Only plantings can be split or joined.")
    if found.locked:
        raise Refusal("A locked planting stays as it is; unlock it first.")
    return found


def _cuts_clean(pattern: Pattern) -> TypeGuard[Rows | Strip | Block]:
    """Whether both parts keep the pattern: a plain grid with nothing left out or moved."""
    grid = isinstance(pattern, (Rows, Strip)) or (isinstance(pattern, Block) and not pattern.staggered)
    return grid and pattern.every == 1 and not pattern.left_out and not pattern.moved


def _grid(pattern: Rows | Strip | Block) -> tuple[int, int]:
    """Columns and rows."""
    columns = how_many(pattern.length_m, pattern.spacing_m)
    return columns, pattern.count // columns


def _across_m(pattern: Rows | Strip | Block) -> float:
    if isinstance(pattern, Rows):
        return pattern.row_spacing_m
    return pattern.across_m if isinstance(pattern, Strip) else pattern.spacing_m


def _parts(pattern: Pattern, cut: Cut, at: int) -> tuple[Pattern, Pattern]:
    total = parts_of(pattern, cut)
    if not 1 <= at < total:
        raise Refusal(
            "A cut after {at} leaves one part empty; allowed is 1 to {most}.", at=at, most=total - 1
        )
    if not _cuts_clean(pattern):
        xy = pattern.stations
        return _spots(xy[:at], pattern.spacing_m), _spots(xy[at:], pattern.spacing_m)
    if cut == "along":
        step = _across_m(pattern)
        return _sized(pattern, rows=at), _sized(_moved(pattern, 0.0, at * step), rows=total - at)
    step = pattern.spacing_m
    return _sized(pattern, columns=at), _sized(_moved(pattern, at * step, 0.0), columns=total - at)


def _sized(
    pattern: Rows | Strip | Block, *, columns: int | None = None, rows: int | None = None
) -> Rows | Strip | Block:
    changes: dict[str, float | int] = {}
    if columns is not None:
        changes["length_m"] = columns * pattern.spacing_m
    if rows is not None:
        changes |= {"rows": rows} if isinstance(pattern, Rows) else {"width_m": rows * _across_m(pattern)}
    return rebuilt(pattern, **changes)


def _moved(pattern: Rows | Strip | Block, along_m: float, across_m: float) -> Rows | Strip | Block:
    turn = np.deg2rad(pattern.angle_deg)
    dx = along_m * np.cos(turn) - across_m * np.sin(turn)
    dy = along_m * np.sin(turn) + across_m * np.cos(turn)
    return rebuilt(pattern, origin=(pattern.origin[0] + float(dx), pattern.origin[1] + float(dy)))


def _spots(xy: Floats, spacing_m: float) -> Spots:
    return made(Spots, points=tuple((float(x), float(y)) for x, y in xy), spacing_m=spacing_m)


def _joined(patterns: Sequence[Pattern]) -> Pattern:
    rows = [p for p in patterns if isinstance(p, Rows) and p.count == p.places and not p.moved]
    if len(rows) == len(patterns) and (whole := _continued(rows)) is not None:
        return whole
    return _spots(np.concatenate([p.stations for p in patterns]), patterns[0].spacing_m)


def _continued(rows: Sequence[Rows]) -> Rows | None:
    """Rows that lie one below the other at their own distance, or end to end, as one; else None."""
    order = sorted(rows, key=_place_in(rows[0]))
    first = order[0]
    alike = all(
        (r.spacing_m, r.row_spacing_m, r.angle_deg) == (first.spacing_m, first.row_spacing_m, first.angle_deg)
        for r in order
    )
    if not alike:
        return None
    columns = [how_many(r.length_m, r.spacing_m) for r in order]
    below = rebuilt(first, rows=sum(r.rows for r in order)) if len(set(columns)) == 1 else None
    beside = (
        rebuilt(first, length_m=sum(columns) * first.spacing_m) if len({r.rows for r in order}) == 1 else None
    )
    places = np.concatenate([r.stations for r in order])
    return next((whole for whole in (below, beside) if whole is not None and _same(whole, places)), None)


def _same(whole: Rows, places: Floats) -> bool:
    """Whether a pattern has just these places, to the millimetre."""
    if whole.count != len(places):
        return False
    mine = whole.stations[np.lexsort(np.round(whole.stations, 3).T)]
    others = places[np.lexsort(np.round(places, 3).T)]
    return bool(np.abs(mine - others).max() < 1e-3)


def _place_in(frame: Rows) -> Callable[[Rows], tuple[float, float]]:
    """Where rows begin, across and along a frame: the order of joining."""
    turn = np.deg2rad(frame.angle_deg)

    def place(rows: Rows) -> tuple[float, float]:
        x, y = rows.origin
        along, across = x * np.cos(turn) + y * np.sin(turn), y * np.cos(turn) - x * np.sin(turn)
        return round(float(across), 4), round(float(along), 4)

    return place
