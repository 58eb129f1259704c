"""Outlines as they were found, on the plan's axes and in metres, each with what is the matter with it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from shapely import LinearRing, Polygon

from gardencanvas.files.outlines.refusing import (
    LEAST_M2,
    MAX_HOLES,
    MAX_OUTLINES,
    MAX_POINTS,
    MAX_SPAN_M,
    MOST_CORNERS,
    OutlinesRefused,
    Why,
)
from gardencanvas.garden.edits import made
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.value import Point, new_id

_FINE = 6  # decimals of a metre, as everywhere on the plan
_NEAR_M = 1e-6

Ring = tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Outline:
    """One closed outline with its holes; ``why`` says why it cannot become a bed."""

    name: str | None
    ring: Ring
    holes: tuple[Ring, ...] = ()
    why: Why | None = None

    @property
    def area_m2(self) -> float:
        """Its area without the holes, m²."""
        return float(Polygon(self.ring).area - sum(Polygon(h).area for h in self.holes)) if self.ring else 0.0

    @property
    def sides_m(self) -> tuple[float, float]:
        """Width and height of the box round it, m."""
        x0, y0, x1, y1 = box_of([self])
        return x1 - x0, y1 - y0


@dataclass(frozen=True, slots=True)
class Drawn:
    """All outlines of a file, their box's upper left corner at 0, 0; and what was passed over, by reason."""

    outlines: tuple[Outline, ...]
    passed: Counter[Why] = field(default_factory=Counter)

    @property
    def sides_m(self) -> tuple[float, float]:
        """Width and height of the box round all, m."""
        x0, y0, x1, y1 = box_of(self.outlines)
        return x1 - x0, y1 - y0


def box_of(outlines: Iterable[Outline]) -> tuple[float, float, float, float]:
    """The box round some outlines: least x and y, greatest x and y; all 0 where there are none."""
    points = [p for one in outlines for p in one.ring]
    if not points:
        return 0.0, 0.0, 0.0, 0.0
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs), min(ys), max(xs), max(ys)


def judged(name: str | None, ring: Sequence[Point], holes: Sequence[Sequence[Point]] = ()) -> Outline:
    """An outline of rings in metres, open or closed, with the reason why it is none if it is none."""
    outer, inner = _plain(ring), tuple(_plain(h) for h in holes)
    return Outline(name, outer, inner, _fault(outer, inner))


def _plain(ring: Sequence[Point]) -> Ring:
    """Without points on top of each other, and without the last one if it is the first again."""
    found: list[Point] = []
    for p in ring:
        if not found or max(abs(p[0] - found[-1][0]), abs(p[1] - found[-1][1])) > _NEAR_M:
            found.append((round(p[0], _FINE), round(p[1], _FINE)))
    while len(found) > 1 and max(abs(found[0][0] - found[-1][0]), abs(found[0][1] - found[-1][1])) <= _NEAR_M:
        found.pop()
    return tuple(found)


def _fault(ring: Ring, holes: tuple[Ring, ...]) -> Why | None:
    if len(holes) > MAX_HOLES:
        return Why.TOO_MANY_HOLES
    for one in (ring, *holes):
        if len(one) < 3:
            return Why.TOO_FEW_CORNERS
        if len(one) > MOST_CORNERS:
            return Why.TOO_MANY_CORNERS
        if not LinearRing(one).is_simple:
            return Why.CROSSES
        if Polygon(one).area < LEAST_M2:
            return Why.TOO_SMALL
    whole = Polygon(ring)
    if not all(whole.contains(Polygon(h)) for h in holes):
        return Why.HOLE_OUTSIDE
    return None


def gathered(outlines: Sequence[Outline], passed: Counter[Why]) -> Drawn:
    """Outlines moved to 0, 0.

    Raises
    ------
    OutlinesRefused
        If there are none or too many, or they reach farther than a plan does.
    """
    if not outlines:
        raise OutlinesRefused(Why.NO_OUTLINE, passed=passed.total())
    if len(outlines) > MAX_OUTLINES:
        raise OutlinesRefused(Why.TOO_MANY, count=len(outlines), most=MAX_OUTLINES)
    points = sum(len(o.ring) + sum(map(len, o.holes)) for o in outlines)
    if points > MAX_POINTS:
        raise OutlinesRefused(Why.TOO_MANY, count=points, most=MAX_POINTS)
    x0, y0, x1, y1 = box_of(outlines)
    if max(x1 - x0, y1 - y0) > MAX_SPAN_M:
        raise OutlinesRefused(Why.TOO_WIDE, span_m=max(x1 - x0, y1 - y0), most_m=MAX_SPAN_M)
    return Drawn(tuple(moved(o, -x0, -y0) for o in outlines), passed)


def moved(outline: Outline, dx_m: float, dy_m: float) -> Outline:
    """The outline elsewhere."""

    def ring(points: Ring) -> Ring:
        return tuple((round(x + dx_m, _FINE), round(y + dy_m, _FINE)) for x, y in points)

    return Outline(outline.name, ring(outline.ring), tuple(map(ring, outline.holes)), outline.why)


def bed_of_outline(outline: Outline, name: str) -> Bed:
    """A bed with that outline; raises ``Refusal`` where ``why`` would have said so."""
    return made(Bed, id=new_id("bed"), name=outline.name or name, outline=outline.ring, holes=outline.holes)
