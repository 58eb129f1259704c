"""A succession as a group: its members, and moving them together."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from statistics import median

from gardencanvas.garden.edits import rebuilt, replace
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.planting import Planting

MOST_D = 3653  # ten years: no plan is moved further


@dataclass(frozen=True, slots=True)
class Shifted:
    """The garden after members were moved in time, and the ids of those that stayed: pinned or locked."""

    garden: Garden
    stayed: frozenset[str]


def members(layout: Layout, group: str) -> tuple[Planting, ...]:
    """The parts of a succession, early ones first."""
    own = (p for p in layout.plantings if p.succession == group)
    return tuple(sorted(own, key=lambda p: p.start.on))


def interval_of(parts: Sequence[Planting]) -> int:
    """Days between starts of two parts and more, in the middle of what they are; at least 1."""
    days = [p.start.on.toordinal() for p in parts]
    return max(round(median(b - a for a, b in pairwise(days))), 1)


def stays(planting: Planting) -> bool:
    """Whether a planting keeps its dates when its succession moves."""
    return planting.locked or planting.start.pinned


def shift_group(garden: Garden, layout_id: str, group: str, days: int) -> Shifted:
    """Start all parts of a succession so many days later (below 0: earlier); pinned and locked ones stay.

    Raises
    ------
    Refusal
        If there is no such succession, or a date is none that a garden can have.
    """
    parts = members(garden.layout(layout_id), group)
    if not parts:
        raise Refusal("There is no succession {group!r} in this layout.", group=group)
    stayed = frozenset(p.id for p in parts if stays(p))
    if abs(days) > MOST_D:
        raise Refusal("The move is {days} days: allowed is at most {most}.", days=days, most=MOST_D)
    if days == 0:
        return Shifted(garden, stayed)
    moved = [started(p, p.start.on + timedelta(days=days), days) for p in parts if p.id not in stayed]
    return Shifted(replace(garden, layout_id, moved), stayed)


def started(planting: Planting, on: date, end_later_d: int) -> Planting:
    """A planting started on another day; its nursery time stays, its end comes so many days later."""
    start = planting.start
    by = on - start.on
    moved = rebuilt(start, on=on, sown_on=None if start.sown_on is None else start.sown_on + by)
    end = None if planting.end is None else planting.end + timedelta(days=end_later_d)
    return rebuilt(planting, start=moved, end=end)
