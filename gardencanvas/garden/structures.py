"""What can be drawn beside plantings: beds of several shapes, paths, supports, covers and fixtures.

Each kind has the sizes it usually has; they are common practice and are changed in the inspector.
"""

from dataclasses import dataclass
from math import hypot
from typing import Literal

from gardencanvas.garden import outlines
from gardencanvas.garden.edits import made
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Item
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, Path, RingSupport
from gardencanvas.garden.value import Point, new_id

How = Literal["box", "line", "round", "click", "corners"]  # the gesture that draws it


@dataclass(frozen=True, slots=True)
class Kind:
    """One kind of structure: how it is drawn, and its usual height in metres (common practice)."""

    name: str
    how: How
    height_m: float = 0.0


KINDS: dict[str, Kind] = {
    kind.name: kind
    for kind in (
        Kind("circle bed", "round"),
        Kind("keyhole bed", "round"),
        Kind("curved bed", "corners"),
        Kind("path", "corners"),
        Kind("hole", "corners"),
        # common practice: canes of 2.4 m stand 0.3 m in the ground; nets and trellises reach eye height
        Kind("cane ring", "round", 2.1),
        Kind("stake", "click", 1.5),
        Kind("cane row", "line", 2.1),
        Kind("net", "line", 1.8),
        Kind("trellis", "line", 1.8),
        # common practice: fleece and mesh on hoops of half a metre, a cloche or frame of knee height
        Kind("fleece", "box", 0.5),
        Kind("mesh", "box", 0.6),
        Kind("cloche", "box", 0.45),
        Kind("frame", "box", 0.4),
        # common practice: what stands at the bounds of a garden
        Kind("wall", "box", 2.0),
        Kind("fence", "box", 1.8),
        Kind("hedge", "box", 1.8),
        Kind("shed", "box", 2.2),
        Kind("tree", "round", 5.0),
    )
}
_TREE_BASE = 0.3  # share of a garden tree's height under its crown (common practice)
_TREE_CLEAR = 0.2  # share of light a leafy crown lets through: k 0.5 and leaf area 3 give e^-1.5 = 0.22
_PATH_M = 0.4
_KEYHOLE = (0.35, 0.3)  # width of the path and radius of the place to stand, as shares of the bed's radius


def drawn(kind: str, name: str, points: tuple[Point, ...]) -> Item:
    """The thing that some points on the plan make.

    Parameters
    ----------
    points
        Box: two opposite corners. Line: begin and end. Round: centre and a point of the rim. Click: one.
        Corners: two or more, of a curved bed or hole three or more.

    Raises
    ------
    Refusal
        If they make none.
    """
    what = KINDS[kind]
    if what.how == "round":
        return _round(what, name, *points)
    if what.how == "box":
        return _box(what, name, *points)
    if what.how == "line":
        begin, end = points
        return made(
            LineSupport, id=new_id("support"), kind=kind, name=name, begin=begin, end=end,
            height_m=what.height_m,
        )  # fmt: skip
    if what.how == "click":
        return made(
            RingSupport, id=new_id("support"), kind=kind, name=name, centre=points[0], radius_m=0.0,
            height_m=what.height_m,
        )  # fmt: skip
    if kind == "path":
        return made(Path, id=new_id("path"), name=name, line=points, width_m=_PATH_M)
    return made(Bed, id=new_id("bed"), name=name, outline=outlines.curved(points))


def _round(kind: Kind, name: str, centre: Point, rim: Point) -> Item:
    radius = round(hypot(rim[0] - centre[0], rim[1] - centre[1]), 6)
    if radius < 0.02:
        raise Refusal("Drag farther from the middle: that is less than 2 cm.")
    if kind.name == "cane ring":
        return made(
            RingSupport, id=new_id("support"), kind=kind.name, name=name, centre=centre, radius_m=radius,
            height_m=kind.height_m,
        )  # fmt: skip
    if kind.name == "tree":
        return made(
            Fixture, id=new_id("fixture"), kind="tree", name=name, outline=outlines.circle(centre, radius),
            height_m=kind.height_m, base_m=_TREE_BASE * kind.height_m, clear_share=_TREE_CLEAR,
        )  # fmt: skip
    if kind.name == "keyhole bed":
        path, reach = (share * radius for share in _KEYHOLE)
        outline = outlines.keyhole(centre, radius, path, reach)
    else:
        outline = outlines.circle(centre, radius)
    return made(Bed, id=new_id("bed"), name=name, outline=outline)


def _box(kind: Kind, name: str, a: Point, b: Point) -> Item:
    (x0, x1), (y0, y1) = sorted((a[0], b[0])), sorted((a[1], b[1]))
    outline = outlines.rectangle((x0, y0), round(x1 - x0, 6), round(y1 - y0, 6))
    if kind.name in {"fleece", "mesh", "cloche", "frame"}:
        return made(
            Cover, id=new_id("cover"), kind=kind.name, name=name, outline=outline, height_m=kind.height_m
        )
    return made(
        Fixture, id=new_id("fixture"), kind=kind.name, name=name, outline=outline, height_m=kind.height_m
    )
