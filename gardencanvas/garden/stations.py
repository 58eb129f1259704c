"""Edits of single stations: leave one out, put it back, move it, without losing the pattern."""

from collections.abc import Collection

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.pattern import Moved, Pattern, Spots
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point


def nearest_station(planting: Planting, point: Point) -> int:
    """Index of the station nearest to a plan point."""
    away = np.hypot(*(planting.stations - np.array(point)).T)
    return int(np.argmin(away))


def without_stations(planting: Planting, stations: Collection[int]) -> Planting:
    """The planting with some stations (indices of ``stations``) left out; their places stay free.

    Raises
    ------
    Refusal
        If none would be left.
    """
    pattern = planting.pattern
    if isinstance(pattern, Spots):
        kept = tuple(p for i, p in enumerate(_spots(pattern)) if i not in set(stations))
        return rebuilt(planting, pattern=_plain_spots(pattern, kept))
    gone = {int(pattern.numbers[i]) for i in stations}
    return rebuilt(planting, pattern=rebuilt(pattern, left_out=tuple(sorted(gone.union(pattern.left_out)))))


def with_place(planting: Planting, place: int) -> Planting:
    """The planting with a place that was left out planted again."""
    pattern = planting.pattern
    return rebuilt(
        planting, pattern=rebuilt(pattern, left_out=tuple(i for i in pattern.left_out if i != place))
    )


def with_all_places(planting: Planting) -> Planting:
    """The planting with no place left out and every station on its place."""
    return rebuilt(planting, pattern=rebuilt(planting.pattern, left_out=(), moved=()))


def with_station_at(planting: Planting, station: int, to: Point) -> Planting:
    """The planting with one station moved to a plan point; the others stay.

    Raises
    ------
    Refusal
        If the point lies more than 5 m from the station's place.
    """
    pattern = planting.pattern
    if isinstance(pattern, Spots):
        points = tuple(to if i == station else p for i, p in enumerate(_spots(pattern)))
        return rebuilt(planting, pattern=_plain_spots(pattern, points))
    place = int(pattern.numbers[station])
    along, across = _in_frame(pattern, np.array(to) - pattern.all_places[place])
    others = tuple(m for m in pattern.moved if m.place != place)
    moved = Moved.model_construct(place=place, along_m=along, across_m=across)
    return rebuilt(planting, pattern=rebuilt(pattern, moved=(*others, moved.model_dump())))


def kept_stations(before: Pattern, after: Pattern) -> Pattern:
    """A reshaped pattern with what was left out and moved carried over to the places that lie nearest.

    What was left out where the new pattern has no place within half a spacing is forgotten.
    """
    if isinstance(before, Spots) or not (before.left_out or before.moved):
        return after
    fresh = rebuilt(after, left_out=(), moved=())
    reach = fresh.spacing_m / 2
    old, new = before.all_places, fresh.all_places
    left_out = {n for i in before.left_out if i < len(old) and (n := _near(new, old[i], reach)) is not None}
    moved: dict[int, Moved] = {}
    for each in before.moved:
        if each.place < len(old) and (n := _near(new, old[each.place], reach)) is not None:
            moved[n] = rebuilt(each, place=n)
    if len(left_out) >= fresh.places:
        return fresh
    return rebuilt(fresh, left_out=tuple(sorted(left_out)), moved=tuple(moved[n] for n in sorted(moved)))


def _near(places: NDArray[np.float64], at: NDArray[np.float64], reach_m: float) -> int | None:
    away = np.hypot(places[:, 0] - at[0], places[:, 1] - at[1])
    nearest = int(np.argmin(away))
    return nearest if away[nearest] <= reach_m else None


def _in_frame(pattern: Pattern, step: NDArray[np.float64]) -> Point:
    """A step on the plan as metres along and across the pattern's own frame."""
    turn = np.deg2rad(pattern.angle_deg)
    cos, sin = np.cos(turn), np.sin(turn)
    along, across = step[0] * cos + step[1] * sin, step[1] * cos - step[0] * sin
    return round(float(along), 6), round(float(across), 6)


def _spots(pattern: Spots) -> tuple[Point, ...]:
    return tuple((float(x), float(y)) for x, y in pattern.stations)


def _plain_spots(pattern: Spots, points: tuple[Point, ...]) -> Spots:
    """Spots at these plan points, in a frame that is not moved or turned."""
    return rebuilt(
        pattern, origin=(0.0, 0.0), angle_deg=0.0, points=points, left_out=(), moved=(), every=1, first=0
    )
