"""The ground of a planting, its line by verdict: thin, double, dashed and hatched, thick and hatched."""

from collections.abc import Iterator

import numpy as np
from shapely import LineString, MultiLineString, Point, Polygon, unary_union
from shapely.affinity import rotate
from shapely.geometry.base import BaseGeometry

from gardencanvas.fit.report import Verdict
from gardencanvas.garden.pattern import Edging, Pattern, RingPattern
from gardencanvas.paper.bedmap.ground import Window
from gardencanvas.paper.sheet import Sheet

THIN_MM, DASHED_MM, THICK_MM = 0.2, 0.35, 0.8
_INSET_MM = 0.9
_HATCH_MM = 0.1
_SPARSE_MM, _DENSE_MM = 3.6, 1.4
_HATCH_DEG = 45.0
_ROUND = 16


def ground_of(pattern: Pattern, window: Window) -> BaseGeometry:
    """The ground a pattern takes on the sheet, millimetres: of a ring or an edging, the band along it."""
    half = pattern.spacing_m * 500.0 / window.scale
    if isinstance(pattern, RingPattern):
        centre, radius = Point(window.place(pattern.origin)), pattern.radius_m * 1000.0 / window.scale
        disc: BaseGeometry = centre.buffer(radius + half, quad_segs=_ROUND)
        return disc.difference(centre.buffer(radius - half, quad_segs=_ROUND)) if radius > half else disc
    if isinstance(pattern, Edging):
        return _along(pattern, window).buffer(half, quad_segs=_ROUND)
    ring = Polygon([window.place((float(x), float(y))) for x, y in pattern.corners])
    return ring if ring.is_valid else ring.buffer(0)


def _along(pattern: Edging, window: Window) -> LineString:
    """The line of an edging on the sheet, turned as its pattern is."""
    turn = np.deg2rad(pattern.angle_deg)
    cos, sin = np.cos(turn), np.sin(turn)
    line = np.array([*pattern.line, pattern.line[0]] if pattern.closed else pattern.line)
    on_plan = line @ np.array([[cos, sin], [-sin, cos]]) + np.array(pattern.origin)
    return LineString([window.place((float(x), float(y))) for x, y in on_plan])


def draw_verdict(sheet: Sheet, verdict: Verdict, ground: BaseGeometry) -> None:
    """Draw the outline, and the hatch of what strains and clashes."""
    if verdict >= Verdict.STRAINS:
        sheet.pen(_HATCH_MM)
        for line in hatch(ground, _DENSE_MM if verdict is Verdict.CLASHES else _SPARSE_MM):
            sheet.rope(line)
    if verdict is Verdict.CLASHES:  # its thick line lies inside, so that two side by side stay two
        sheet.pen(THICK_MM)
        _rings(sheet, ground.buffer(-min(THICK_MM / 2, _thinness(ground) / 4), join_style="mitre"))
        return
    sheet.pen(*((DASHED_MM, (4, 3)) if verdict is Verdict.STRAINS else (THIN_MM,)))
    _rings(sheet, ground)
    if verdict is Verdict.SHARES:
        _rings(sheet, ground.buffer(-min(_INSET_MM, _thinness(ground) / 4), join_style="mitre"))


def _thinness(ground: BaseGeometry) -> float:
    """About the width of its narrow way: of a long band, twice its area to its outline."""
    return float(2 * ground.area / ground.length) if ground.length else 0.0


def _rings(sheet: Sheet, ground: BaseGeometry) -> None:
    for part in getattr(ground, "geoms", [ground]):
        if not part.is_empty:
            for ring in (part.exterior, *part.interiors):
                sheet.ring([(float(x), float(y)) for x, y in ring.coords[:-1]])


def hatch(ground: BaseGeometry, step_mm: float) -> Iterator[list[tuple[float, float]]]:
    """Lines over some ground at 45°, the step apart, lying alike on the whole sheet."""
    level = rotate(ground, -_HATCH_DEG, origin=(0, 0))
    x0, y0, x1, y1 = level.bounds
    heights = np.arange(np.ceil(y0 / step_mm), np.floor(y1 / step_mm) + 1) * step_mm
    lines = MultiLineString([[(x0 - 1, y), (x1 + 1, y)] for y in heights.tolist()])
    cut = rotate(unary_union(level.intersection(lines)), _HATCH_DEG, origin=(0, 0))
    for part in getattr(cut, "geoms", [cut]):
        if isinstance(part, LineString) and not part.is_empty:
            yield [(float(x), float(y)) for x, y in part.coords]
