"""Outlines on the plan: of what a planting takes, and of anything that can be clicked. Centimetres."""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainterPath, QPolygonF
from shapely import LinearRing, LineString, MultiPoint, MultiPolygon, Polygon
from shapely import Point as Point2D
from shapely.geometry.base import BaseGeometry

from gardencanvas.canvas.look import CM
from gardencanvas.garden.garden import Item
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, Path, RingSupport
from gardencanvas.garden.pattern import Drift, Edging, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.places import bounds
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point

Floats = NDArray[np.float64]

_MARGIN_CM = 6.0  # how near a line must be clicked


def polygon(ring: Sequence[Point]) -> QPolygonF:
    """A ring of plan metres as a polygon in centimetres."""
    return QPolygonF([QPointF(x * CM, y * CM) for x, y in ring])


def closed(rings: Sequence[Sequence[Point]]) -> QPainterPath:
    """One path of several rings, the later ones cut out."""
    path = QPainterPath()
    for ring in rings:
        path.addPolygon(polygon(ring))
        path.closeSubpath()
    return path


def from_shapely(shape: BaseGeometry) -> QPainterPath:
    """A polygon or several (already in centimetres) as one path."""
    parts = shape.geoms if isinstance(shape, MultiPolygon) else [shape]
    path = QPainterPath()
    for part in parts:
        if isinstance(part, Polygon) and not part.is_empty:
            for ring in (part.exterior, *part.interiors):
                path.addPolygon(QPolygonF([QPointF(x, y) for x, y in ring.coords]))
                path.closeSubpath()
    return path


def reach(planting: Planting, full_radius_m: float) -> float:
    """How far from its stations a planting's outline runs, metres.

    The full-grown radius, but no less than half the spacing in the row and no more than half the ground
    between rows, so that outlines of plantings side by side do not cross.
    """
    pattern = planting.pattern
    least = pattern.spacing_m / 2
    most = least
    if isinstance(pattern, Rows):
        most = pattern.row_spacing_m / 2
    elif isinstance(pattern, Strip):
        most = pattern.across_m / 2
    elif isinstance(pattern, (Spots, RingPattern)):
        most = pattern.spacing_m
    return max(min(max(full_radius_m, least), max(most, least)), 0.03)


def closest(planting: Planting, full_radius_m: float) -> float:
    """How far round one station its own mark runs, metres: half way to the next, at most."""
    if isinstance(planting.pattern, Spots):
        return reach(planting, full_radius_m)
    return max(min(planting.pattern.spacing_m / 2, full_radius_m), 0.03)


def hull(planting: Planting, full_radius_m: float) -> BaseGeometry:
    """The outline round a planting's stations, in centimetres, as wide as ``reach`` says."""
    return round_stations(planting, reach(planting, full_radius_m))


def round_stations(planting: Planting, far_m: float) -> BaseGeometry:
    """The outline that runs ``far_m`` outside a planting's stations, in centimetres."""
    xy = planting.stations * CM
    far = far_m * CM
    round_ = 14  # segments in a quarter circle
    pattern = planting.pattern
    if isinstance(pattern, Spots) or len(xy) < 3:
        return MultiPoint(xy).buffer(far, quad_segs=round_)
    if isinstance(pattern, Drift):
        gap = pattern.spacing_m * CM
        return MultiPoint(xy).buffer(far + gap * 0.5, quad_segs=3).buffer(-gap * 0.5, quad_segs=3)
    if isinstance(pattern, RingPattern):
        x, y = pattern.origin[0] * CM, pattern.origin[1] * CM
        radius = pattern.radius_m * CM
        disc = Point2D(x, y).buffer(radius + far, quad_segs=32)
        return disc.difference(Point2D(x, y).buffer(radius - far, quad_segs=32)) if radius > far else disc
    if isinstance(pattern, Edging) and pattern.closed:
        return LinearRing(xy).buffer(far, quad_segs=round_)
    if isinstance(pattern, Edging):
        return LineString(xy).buffer(far, quad_segs=round_)
    return MultiPoint(xy).convex_hull.buffer(far, quad_segs=round_)


def outline(item: Item, full_radius_m: float = 0.0) -> QPainterPath:
    """What of an item can be clicked, and what is drawn round it when it is selected."""
    if isinstance(item, Planting):
        return from_shapely(hull(item, full_radius_m))
    if isinstance(item, Bed):
        return closed([item.outline, *item.holes])
    if isinstance(item, (Fixture, Cover)):
        return closed([item.outline])
    if isinstance(item, RingSupport):
        path = QPainterPath()
        r = max(item.radius_m * CM, _MARGIN_CM)
        path.addEllipse(QPointF(item.centre[0] * CM, item.centre[1] * CM), r, r)
        return path
    if isinstance(item, LineSupport):
        line = LineString([item.begin, item.end])
        return from_shapely(LineString(np.array(line.coords) * CM).buffer(_MARGIN_CM, quad_segs=2))
    return path_band(item)


def path_band(item: Path) -> QPainterPath:
    """The ground of a path: its line, as wide as it is."""
    return from_shapely(
        LineString(np.array(item.line) * CM).buffer(item.width_m * CM / 2, quad_segs=4, cap_style="flat")
    )


def span(items: Sequence[Item]) -> QRectF:
    """The box round some items in centimetres; empty where there are none."""
    if not items:
        return QRectF()
    x0, y0, x1, y1 = (metres * CM for metres in bounds(items))
    return QRectF(x0, y0, x1 - x0, y1 - y0)
