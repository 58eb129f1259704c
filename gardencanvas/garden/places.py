"""Where things lie: which bed holds a planting, and what a bed holds."""

from collections.abc import Iterable
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from shapely import Point as ShapelyPoint
from shapely import Polygon, prepare

from gardencanvas.garden.garden import Item, Layout
from gardencanvas.garden.ground import Bed, Cover, LineSupport, Path, RingSupport
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point


@lru_cache(maxsize=4096)
def bed_ground(bed: Bed) -> Polygon:
    """The bed as a prepared shapely polygon, holes cut out."""
    ground = Polygon(bed.outline, bed.holes)
    prepare(ground)
    return ground


def middle(item: Planting | RingSupport | LineSupport | Cover) -> Point:
    """The point that decides in which bed something lies: the mean of its stations or corners."""
    if isinstance(item, Planting):
        x, y = item.stations.mean(axis=0)
        return float(x), float(y)
    if isinstance(item, RingSupport):
        return item.centre
    corners = (item.begin, item.end) if isinstance(item, LineSupport) else item.outline
    x, y = np.mean(corners, axis=0)
    return float(x), float(y)


def corners(item: Item) -> NDArray[np.float64]:
    """Points that span an item, plan metres, shape (n, 2)."""
    if isinstance(item, Planting):
        return item.pattern.corners
    if isinstance(item, RingSupport):
        (x, y), r = item.centre, item.radius_m
        return np.array([[x - r, y - r], [x + r, y + r]])
    if isinstance(item, LineSupport):
        return np.array([item.begin, item.end])
    return np.array(item.line if isinstance(item, Path) else item.outline)


def bounds(items: Iterable[Item]) -> tuple[float, float, float, float]:
    """The box round some items: least x and y, greatest x and y; raises ValueError where there are none."""
    xy = np.concatenate([corners(i) for i in items])
    (x0, y0), (x1, y1) = xy.min(axis=0), xy.max(axis=0)
    return float(x0), float(y0), float(x1), float(y1)


def bed_at(layout: Layout, point: Point) -> Bed | None:
    """The bed that holds a point; the one drawn last where beds overlap."""
    spot = ShapelyPoint(point)
    return next((bed for bed in reversed(layout.beds) if bed_ground(bed).covers(spot)), None)


def bed_of(layout: Layout, planting: Planting) -> Bed | None:
    """The bed that holds most of a planting, by its middle and else by its first station in any bed."""
    bed = bed_at(layout, middle(planting))
    if bed is not None:
        return bed
    x, y = planting.stations[0]
    return bed_at(layout, (float(x), float(y)))


def contents(layout: Layout, bed: Bed) -> tuple[str, ...]:
    """Ids of the plantings, supports and covers that lie in the bed."""
    inside = [p.id for p in layout.plantings if bed_of(layout, p) is bed]
    standing = (*layout.supports, *layout.covers)
    inside += [s.id for s in standing if bed_at(layout, middle(s)) is bed]
    return tuple(inside)
