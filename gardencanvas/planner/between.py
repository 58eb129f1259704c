"""Where a planted bed still has room: free strips between its rows, its corners and its rim, each judged."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

import numpy as np

from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import Verdict
from gardencanvas.garden import laying
from gardencanvas.garden.edits import add
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laid import Spacings
from gardencanvas.garden.pattern import Block, Pattern, Rows, Spots, Strip
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting

Where = Literal["between rows", "beside a row", "corners", "rim"]
_ALONG_DEG = 2.0  # rows turned less than this against the bed are taken to lie along it
_APART_M = 0.01


@dataclass(frozen=True, slots=True)
class Place:
    """A place that could be planted: what pattern, and where it lies."""

    where: Where
    pattern: Pattern


@dataclass(frozen=True, slots=True)
class Offer:
    """A place with the verdict of a planting in it: the worst of its own and of what it does to others."""

    place: Place
    planting: Planting
    verdict: Verdict


def places_between(layout: Layout, bed: Bed, room: Spacings) -> tuple[Place, ...]:
    """Rows midway between the bed's rows and along its outer ones, its four corners and its rim.

    Whether a plant fares well there is not asked here.
    """
    return tuple(_places(layout, bed, room))


def _places(layout: Layout, bed: Bed, room: Spacings) -> Iterator[Place]:
    frame = laying.frame_of(bed)
    u0, v0, u1, v1 = frame.ground.bounds
    lines = rows_across(layout, bed)
    between = [(a + b) / 2 for a, b in pairwise(lines) if b - a > _APART_M]
    outer = [(v0 + lines[0]) / 2, (lines[-1] + v1) / 2] if lines else [(v0 + v1) / 2]
    rows: list[tuple[Where, float]] = [("between rows", v) for v in between]
    rows += [("beside a row", v) for v in outer]
    for where, at in rows:
        row = laying.row_in(bed, frame.plan((u0 + u1) / 2, at), room.in_row_m, room.between_m, 0.0)
        if row is not None:
            yield Place(where, row)
    keep = room.in_row_m / 2
    if min(u1 - u0, v1 - v0) > 2 * keep:
        ends = [(u, v) for u in (u0 + keep, u1 - keep) for v in (v0 + keep, v1 - keep)]
        yield Place("corners", Spots(points=tuple(frame.plan(*e) for e in ends), spacing_m=room.in_row_m))
    try:
        yield Place("rim", laying.edging_in(bed, room.in_row_m))
    except Refusal:
        return  # a bed too small for an edging offers none


def rows_across(layout: Layout, bed: Bed) -> list[float]:
    """Where the rows of a bed's plantings lie across it, in metres of its own frame, in order."""
    frame = laying.frame_of(bed)
    found: list[float] = []
    for planting in layout.plantings:
        pattern = planting.pattern
        if not isinstance(pattern, (Rows, Strip, Block)) or bed_of(layout, planting) is not bed:
            continue
        turned = (pattern.angle_deg - frame.angle_deg + 90.0) % 180.0 - 90.0
        if abs(turned) <= _ALONG_DEG:
            across = [frame.local((float(x), float(y)))[1] for x, y in pattern.stations]
            found += np.unique(np.round(across, 3)).tolist()
    return sorted(set(found))


def offers(
    garden: Garden,
    layout_id: str,
    places: tuple[Place, ...],
    planting: Callable[[Pattern], Planting],
    checker: Checker,
) -> Iterator[Offer]:
    """Each place judged by the whole engine, one after the other, so that one can stop between them."""
    before = checker.update(garden, layout_id)
    for place in places:
        one = planting(place.pattern)
        after = checker.update(add(garden, layout_id, [one]), layout_id)
        own = max((f.verdict for f in after.of(one.id)), default=after.plantings[one.id].verdict)
        worse = (
            fit.verdict
            for name, fit in after.plantings.items()
            if name != one.id and fit.verdict > before.plantings[name].verdict
        )
        yield Offer(place, one, max([own, *worse]))
