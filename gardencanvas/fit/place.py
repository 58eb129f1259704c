"""What the ground, paths and covers at its place mean to a planting, whatever grows beside it."""

from collections.abc import Iterable, Sequence

import numpy as np

from gardencanvas.fit.covering import covering
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.outside import outside
from gardencanvas.fit.reach import Ground, too_far
from gardencanvas.fit.soil import on_path, shallow, walked
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import OUTSIDE_M, SUPPORT_REACH_M
from gardencanvas.fit.wind import wind
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import Bed, Cover, LineSupport, Path, RingSupport

Laid = Bed | Path | Cover | LineSupport | RingSupport


def laid(layout: Layout) -> tuple[Laid, ...]:
    """All that lies or stands in a layout and says something of the plantings there."""
    return (*layout.beds, *layout.paths, *layout.covers, *layout.supports)


def placed(stands: Iterable[Stand], layout: Layout, ground: Ground) -> tuple[Judged, ...]:
    """What is said of a planting's place."""
    judged: list[Judged | None] = []
    for stand in stands:
        on, beds = walked(stand, layout.paths), ground.beds_at(stand)
        judged += [outside(stand, beds, on), on_path(stand, on), shallow(stand, beds)]
        judged += [too_far(stand, ground), wind(stand, layout.supports, ground.fixtures)]
        judged += covering(stand, layout.covers)
    return tuple(j for j in judged if j is not None)


def near(stands: Sequence[Stand], items: Iterable[Laid]) -> bool:
    """Whether the box of any of the stands meets that of any of the items.

    A path changes how far it is to the nearest one wherever that is, and so is near to all.
    """
    items = list(items)
    if any(isinstance(item, Path) for item in items):
        return True
    boxes = [s.box for s in stands]
    for item in items:
        a0, b0, a1, b1 = _bounds(item)
        if any(a0 <= x1 and b0 <= y1 and a1 >= x0 and b1 >= y0 for x0, y0, x1, y1 in boxes):
            return True
    return False


def _bounds(item: Laid) -> tuple[float, float, float, float]:
    """Box of an item, widened by how far it acts."""
    wide = OUTSIDE_M
    if isinstance(item, RingSupport):
        points, wide = [item.centre], item.radius_m + SUPPORT_REACH_M
    elif isinstance(item, LineSupport):
        points, wide = [item.begin, item.end], SUPPORT_REACH_M
    elif isinstance(item, Path):
        points, wide = list(item.line), item.width_m
    else:
        points = list(item.outline)
    xy = np.array(points)
    low, high = xy.min(axis=0) - wide, xy.max(axis=0) + wide
    return float(low[0]), float(low[1]), float(high[0]), float(high[1])
