"""Closed figures of an SVG drawing: read with expat, entities refused, nothing fetched."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from xml.parsers import expat

from gardencanvas.files.outlines.curves import Affine, Loop
from gardencanvas.files.outlines.naming import name_from
from gardencanvas.files.outlines.nesting import nested
from gardencanvas.files.outlines.outline import Drawn, Outline, gathered, judged
from gardencanvas.files.outlines.refusing import (
    MAX_DEPTH,
    MAX_ELEMENTS,
    MAX_OUTLINES,
    MAX_POINTS,
    MAX_RINGS,
    OutlinesRefused,
    Why,
)
from gardencanvas.files.outlines.svg_path import BadPath
from gardencanvas.files.outlines.svg_shapes import PX_MM, length, shape, transform, viewport
from gardencanvas.garden.value import Point

CURVE_M = 0.002  # no side of a bed runs farther from the curve it stands for: our own choice
_SVG = "http://www.w3.org/2000/svg"
_LABEL = "http://www.inkscape.org/namespaces/inkscape label"
_SHAPES = {"path", "rect", "circle", "ellipse", "polygon", "polyline"}
_UNSEEN = {"defs", "symbol", "clipPath", "mask", "pattern", "marker", "linearGradient", "radialGradient"}
_PASSED = {"use", "text", "image", "line", "foreignObject"}
_LEAST_PX = 1e-9


@dataclass(slots=True)
class Figure:
    """One element: its subpaths in px, and whether the even-odd rule fills it."""

    loops: tuple[Loop, ...]
    name: str | None = None
    even_odd: bool = False


@dataclass(frozen=True, slots=True)
class Drawing:
    """The figures of a drawing; ``paper_width_m`` is their width on paper where it gives one."""

    figures: tuple[Figure, ...]
    passed: Counter[Why]
    paper_width_m: float | None

    def drawn(self, width_m: float) -> Drawn:
        """Outlines on the plan, all together ``width_m`` wide, none farther than ``CURVE_M`` from its curve.

        Raises
        ------
        OutlinesRefused
            If there are none or too many, or they reach farther than a plan does.
        """
        wide, _high = _sides(self.figures)
        scale = width_m / wide
        outlines: list[Outline] = []
        points = 0
        for figure in self.figures:
            rings = [loop.corners(CURVE_M / scale) for loop in figure.loops]
            points += sum(map(len, rings))
            if points > MAX_POINTS:
                raise OutlinesRefused(Why.TOO_MANY, count=points, most=MAX_POINTS)
            outlines += _outlines(figure, [[(p.real * scale, p.imag * scale) for p in r] for r in rings])
        return gathered(outlines, self.passed)


def _outlines(figure: Figure, rings: list[list[Point]]) -> Iterator[Outline]:
    found = nested(rings, even_odd=figure.even_odd)
    if found is None:
        largest = max(rings, key=len)
        one = judged(figure.name, largest)
        yield Outline(one.name, one.ring, (), Why.CROSSES)
        return
    for number, (ring, holes) in enumerate(found, 1):
        name = f"{figure.name} {number}" if figure.name is not None and len(found) > 1 else figure.name
        yield judged(name, ring, holes)


def _sides(figures: tuple[Figure, ...]) -> tuple[float, float]:
    """Width and height of the box round all figures, px; raises ``OutlinesRefused`` where there is none."""
    points = [p for f in figures for loop in f.loops for piece in loop.pieces for p in piece.outermost]
    xs, ys = [p.real for p in points], [p.imag for p in points]
    wide, high = max(xs) - min(xs), max(ys) - min(ys)
    if not wide > _LEAST_PX or not high > _LEAST_PX:
        raise OutlinesRefused(Why.NO_OUTLINE, passed=0)
    return wide, high


def drawing_of(data: bytes) -> Drawing:
    """The figures of an SVG text; raises ``OutlinesRefused``."""
    walk = _Walk()
    parser = expat.ParserCreate(namespace_separator=" ")
    parser.StartElementHandler = walk.begin
    parser.EndElementHandler = walk.end
    parser.CharacterDataHandler = walk.text
    parser.EntityDeclHandler = walk.entity
    parser.buffer_text = True
    try:
        parser.Parse(data, True)
    except OutlinesRefused:
        raise
    except (expat.ExpatError, ValueError, LookupError) as error:  # the latter of encodings that are none
        raise OutlinesRefused(Why.DAMAGED) from error
    if not any(figure.loops for figure in walk.figures):
        raise OutlinesRefused(Why.NO_OUTLINE, passed=walk.passed.total())
    figures = tuple(walk.figures)
    paper = _sides(figures)[0] * PX_MM / 1000 if walk.physical else None
    return Drawing(figures, walk.passed, paper)


@dataclass(slots=True)
class _Frame:
    """What holds inside an element."""

    map: Affine
    unseen: bool = False
    even_odd: bool = False
    figure: Figure | None = None


@dataclass(slots=True)
class _Walk:
    """Follows the elements of a document."""

    figures: list[Figure] = field(default_factory=list)
    passed: Counter[Why] = field(default_factory=Counter)
    physical: bool = False
    stack: list[_Frame] = field(default_factory=list)
    seen: int = 0
    title: list[str] | None = None

    def entity(self, *_: object) -> None:
        """Entities can grow without bound, or name other files."""
        raise OutlinesRefused(Why.ENTITIES)

    def begin(self, name: str, attributes: dict[str, str]) -> None:
        """An element opens."""
        self.seen += 1
        if self.seen > MAX_ELEMENTS:
            raise OutlinesRefused(Why.TOO_MANY, count=self.seen, most=MAX_ELEMENTS)
        if len(self.stack) >= MAX_DEPTH:
            raise OutlinesRefused(Why.TOO_DEEP)
        space, _, kind = name.rpartition(" ")
        if not self.stack:
            if kind != "svg" or space not in {"", _SVG}:
                raise OutlinesRefused(Why.NOT_THAT_KIND)
            self._root(attributes)
            return
        above = self.stack[-1]
        frame = _Frame(above.map, above.unseen, above.even_odd)
        self.stack.append(frame)
        if space not in {"", _SVG}:
            frame.unseen = True
        elif kind == "title":
            self.title = []
        else:
            self._element(kind, attributes, frame)

    def _root(self, attributes: dict[str, str]) -> None:
        try:
            map_, self.physical = viewport(attributes)
        except BadPath:
            map_, self.physical = Affine(), False
        self.stack.append(_Frame(map_))

    def _element(self, kind: str, attributes: dict[str, str], frame: _Frame) -> None:
        style = _style(attributes)
        frame.unseen = frame.unseen or kind in _UNSEEN or style.get("display") == "none"
        frame.even_odd = style.get("fill-rule", "evenodd" if frame.even_odd else "") == "evenodd"
        try:
            frame.map = frame.map @ transform(attributes.get("transform"))
            if kind == "svg":
                x, y = ((length(attributes.get(key)) or (0.0, False))[0] for key in ("x", "y"))
                frame.map = frame.map @ Affine(e=x, f=y) @ viewport(attributes)[0]
        except BadPath:
            frame.unseen = True
            self.passed[Why.BAD_PATH] += 1
        if frame.unseen:
            return
        if kind in _SHAPES:
            self._figure(kind, attributes, frame)
        elif kind in _PASSED:
            self.passed[Why.NOT_READ] += 1

    def _figure(self, kind: str, attributes: dict[str, str], frame: _Frame) -> None:
        name = name_from(attributes.get(_LABEL)) or name_from(attributes.get("id"))
        try:
            loops = shape(kind, attributes)
        except BadPath:
            self.passed[Why.BAD_PATH] += 1
            return
        closed = tuple(loop.under(frame.map) for loop in loops if loop.closed)
        if not all(loop.sound() for loop in closed):
            self.passed[Why.BAD_PATH] += 1
            return
        if len(closed) < len(loops) or not loops:
            self.passed[Why.OPEN] += 1
        if not closed:
            return
        if len(closed) > MAX_RINGS or len(self.figures) >= MAX_OUTLINES:
            raise OutlinesRefused(
                Why.TOO_MANY, count=max(len(closed), len(self.figures) + 1), most=MAX_OUTLINES
            )
        frame.figure = Figure(closed, name, frame.even_odd)
        self.figures.append(frame.figure)

    def text(self, text: str) -> None:
        """Words inside an element."""
        if self.title is not None and sum(map(len, self.title)) < 1000:
            self.title.append(text)

    def end(self, name: str) -> None:
        """An element closes; a title names the figure it stands in."""
        self.stack.pop()
        if self.title is not None and name.rpartition(" ")[2] == "title":
            figure = self.stack[-1].figure if self.stack else None
            if figure is not None:
                figure.name = name_from("".join(self.title)) or figure.name
            self.title = None


def _style(attributes: dict[str, str]) -> dict[str, str]:
    """Presentation attributes, overruled by those in ``style``."""
    found: dict[str, str] = {
        key: attributes[key].strip() for key in ("display", "fill-rule") if key in attributes
    }
    for part in attributes.get("style", "").split(";"):
        key, _, value = part.partition(":")
        if key.strip() in {"display", "fill-rule"}:
            found[key.strip()] = value.strip()
    return found
