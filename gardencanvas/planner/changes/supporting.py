"""A support for a climber that has none."""

from collections.abc import Iterator
from math import ceil, cos, radians, sin

import numpy as np

from gardencanvas.fit.aids import climbs
from gardencanvas.fit.report import Remedy
from gardencanvas.fit.thresholds import SUPPORT_REACH_M
from gardencanvas.garden.edits import made
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import LineSupport, RingSupport
from gardencanvas.garden.pattern import Block, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point
from gardencanvas.planner.case import Case, Floats
from gardencanvas.planner.codes import Change, Numbers
from gardencanvas.planner.ladder import Ladder, choices

MOST = 12  # supports: more is a building (common practice)
STAKE_M, PAST_END_M = 0.0, 0.1
HEIGHT_STEP_M = 0.1

Supports = tuple[LineSupport | RingSupport, ...]


def supports(case: Case) -> Iterator[Ladder]:
    """A ladder of one step for each climber without a support."""
    for planting in case.changeable:
        crop = case.crop(planting)
        kind = crop.support.value if crop.support else "none"
        if kind == "none" or crop.height_m is None or not climbs(crop) or case.supported(planting):
            continue
        height = ceil(crop.height_m.mid / HEIGHT_STEP_M - 1e-6) * HEIGHT_STEP_M
        height = round(height, 6)
        put = put_up(case.layout, planting, kind, height)
        if 0 < len(put) <= MOST:
            numbers: Numbers = {"planting": planting.id, "kind": put[0].kind, "height_m": height}
            yield choices([Remedy(Change.SUPPORT, {**numbers, "supports": len(put)})])


def put_up(layout: Layout, planting: Planting, kind: str, height_m: float) -> Supports:
    """Supports that reach all of a planting's stations; none for patterns that no support fits.

    A stake to each loose spot, a ring of canes round a ring, and along rows, strips and blocks one line for
    all rows it reaches.
    """
    pattern = planting.pattern
    if isinstance(pattern, Spots):
        ids = _ids(layout, planting, pattern.count)
        return tuple(
            made(RingSupport, id=i, kind="stake", name="Stake", centre=(float(x), float(y)), radius_m=STAKE_M,
                 height_m=height_m)
            for i, (x, y) in zip(ids, planting.stations, strict=True)
        )  # fmt: skip
    if isinstance(pattern, RingPattern):
        (ring,) = _ids(layout, planting, 1)
        return (
            made(RingSupport, id=ring, kind="cane ring", name="Cane ring", centre=pattern.origin,
                 radius_m=pattern.radius_m, height_m=height_m),
        )  # fmt: skip
    if not isinstance(pattern, Rows | Strip | Block):
        return ()
    word = kind if kind in ("net", "trellis") else "cane row"
    lines = _lines(planting)
    return tuple(
        made(LineSupport, id=i, kind=word, name=word.capitalize(), begin=begin, end=end, height_m=height_m)
        for i, (begin, end) in zip(_ids(layout, planting, len(lines)), lines, strict=True)
    )


def _ids(layout: Layout, planting: Planting, count: int) -> list[str]:
    """Ids that follow from the planting's, so that the same remedy always gives the same garden."""
    free = (i for n in range(1, count + len(layout.supports) + 1)
            if (i := f"{planting.id[:30]}-s{n}") not in layout.by_id)  # fmt: skip
    return [next(free) for _ in range(count)]


def _lines(planting: Planting) -> list[tuple[Point, Point]]:
    """Lines along a pattern's rows, each reaching as many rows as stand close enough together."""
    angle = radians(planting.pattern.angle_deg)
    x, y = planting.stations.T
    along: Floats = x * cos(angle) + y * sin(angle)
    across: Floats = y * cos(angle) - x * sin(angle)
    begin, end = float(along.min()) - PAST_END_M, float(along.max()) + PAST_END_M
    rows = np.unique(np.round(across, 4))
    lines: list[tuple[Point, Point]] = []
    while len(rows):
        near = rows[rows <= rows[0] + 2 * SUPPORT_REACH_M - 1e-3]
        v = float(near.min() + near.max()) / 2
        ends = [
            (round(u * cos(angle) - v * sin(angle), 6), round(u * sin(angle) + v * cos(angle), 6))
            for u in (begin, end)
        ]
        lines.append((ends[0], ends[1]))
        rows = rows[len(near) :]
    return lines
