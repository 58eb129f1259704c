"""The path data of SVG (SVG 1.1, 8.3): text to subpaths of lines, curves and arcs."""

from __future__ import annotations

import re
from cmath import exp, phase
from math import acos, copysign, radians, sqrt, tau

from gardencanvas.files.outlines.curves import Arc, Cubic, Line, Loop, Piece, quadratic
from gardencanvas.files.outlines.refusing import MAX_POINTS

_NUMBER = re.compile(r"[\s,]*([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)")
_FLAG = re.compile(r"[\s,]*([01])")
_COMMAND = re.compile(r"[\s,]*([MmZzLlHhVvCcSsQqTtAa])")
_REST = re.compile(r"[\s,]*")
_NEAR = 1e-9  # of the size of a number: an end that is the begin again


class BadPath(ValueError):  # noqa: N818 - it is what the text is
    """Text that is no path data."""


def subpaths(text: str) -> list[Loop]:
    """The subpaths of path data; raises ``BadPath``."""
    reader = _Reader(text)
    reader.read()
    return reader.loops


class _Reader:
    """Reads a path from left to right, with the pen's place and the last control point."""

    def __init__(self, text: str) -> None:
        self._text = text
        self._at = 0
        self.loops: list[Loop] = []
        self._pieces: list[Piece] = []
        self._pen = self._begun = 0j
        self._control: tuple[str, complex] = ("", 0j)
        self._count = 0

    # text

    def _match(self, what: re.Pattern[str]) -> str | None:
        found = what.match(self._text, self._at)
        if found is None:
            return None
        self._at = found.end()
        return found[1]

    def _number(self) -> float:
        found = self._match(_NUMBER)
        if found is None:
            raise BadPath(self._text[self._at : self._at + 20])
        number = float(found)
        if abs(number) > 1e9:
            raise BadPath(found)
        return number

    def _more(self) -> bool:
        return _NUMBER.match(self._text, self._at) is not None

    def _flag(self) -> bool:
        found = self._match(_FLAG)
        if found is None:
            raise BadPath(self._text[self._at : self._at + 20])
        return found == "1"

    def _point(self, relative: bool) -> complex:
        x, y = self._number(), self._number()
        return complex(x, y) + (self._pen if relative else 0)

    # pieces

    def read(self) -> None:
        """Read it all."""
        first = True
        while (command := self._match(_COMMAND)) is not None:
            if first and command not in "Mm":
                raise BadPath(command)
            first = False
            self._do(command)
        rest = _REST.match(self._text, self._at)
        if rest is not None and rest.end() < len(self._text):
            raise BadPath(self._text[self._at : self._at + 20])
        self._finish(closed=False)

    def _do(self, command: str) -> None:
        relative, kind = command.islower(), command.upper()
        if kind == "Z":
            if self._pen != self._begun:
                self._add(Line(self._pen, self._begun))
            self._finish(closed=True)
            return
        while True:
            if kind == "M":
                self._finish(closed=False)
                self._pen = self._begun = self._point(relative)
                self._control = ("", 0j)
                kind = "L"  # further pairs are lines
            else:
                self._draw(kind, relative)
            if not self._more():
                return

    def _draw(self, kind: str, relative: bool) -> None:
        pen, base = self._pen, (self._pen if relative else 0j)
        if kind == "L":
            self._add(Line(pen, self._point(relative)))
        elif kind == "H":
            self._add(Line(pen, complex(self._number() + base.real, pen.imag)))
        elif kind == "V":
            self._add(Line(pen, complex(pen.real, self._number() + base.imag)))
        elif kind in "CS":
            one = self._point(relative) if kind == "C" else self._mirrored("C")
            two, end = self._point(relative), self._point(relative)
            self._add(Cubic(pen, one, two, end), ("C", two))
        elif kind in "QT":
            one = self._point(relative) if kind == "Q" else self._mirrored("Q")
            self._add(quadratic(pen, one, self._point(relative)), ("Q", one))
        else:
            self._arc(relative)

    def _mirrored(self, kind: str) -> complex:
        """The last control point mirrored at the pen, if the last piece was a curve of that kind."""
        return 2 * self._pen - self._control[1] if self._control[0] == kind else self._pen

    def _arc(self, relative: bool) -> None:
        rx, ry, turned = self._number(), self._number(), self._number()
        large, sweep = self._flag(), self._flag()
        end = self._point(relative)
        if end != self._pen:
            self._add(arc_between(self._pen, rx, ry, turned, large=large, sweep=sweep, end=end))

    def _add(self, piece: Piece, control: tuple[str, complex] = ("", 0j)) -> None:
        self._count += 1
        if self._count > MAX_POINTS:
            raise BadPath("too many pieces")
        self._pieces.append(piece)
        self._pen, self._control = piece.end, control

    def _finish(self, *, closed: bool) -> None:
        if self._pieces:
            size = max(abs(self._begun), abs(self._pen), 1.0)
            meets = abs(self._pen - self._begun) <= _NEAR * size
            self.loops.append(Loop(tuple(self._pieces), closed or meets))
        self._pieces = []
        self._pen, self._control = self._begun, ("", 0j)


def arc_between(
    begin: complex, rx: float, ry: float, turned_deg: float, *, large: bool, sweep: bool, end: complex
) -> Line | Arc:
    """The elliptical arc between two points: SVG 1.1, appendix F.6.5 and, for radii too small, F.6.6."""
    rx, ry = abs(rx), abs(ry)
    if rx < 1e-12 or ry < 1e-12:
        return Line(begin, end)
    axis = exp(1j * radians(turned_deg))
    half = (begin - end) / 2 / axis
    x, y = half.real, half.imag
    over = (x / rx) ** 2 + (y / ry) ** 2
    if over > 1:
        rx, ry = rx * sqrt(over), ry * sqrt(over)
    share = (rx * ry) ** 2 / ((rx * y) ** 2 + (ry * x) ** 2) - 1
    factor = sqrt(max(share, 0.0)) * (1 if large != sweep else -1)
    middle = complex(factor * rx * y / ry, -factor * ry * x / rx)
    centre = middle * axis + (begin + end) / 2
    a = complex((x - middle.real) / rx, (y - middle.imag) / ry)
    b = complex((-x - middle.real) / rx, (-y - middle.imag) / ry)
    cosine = (a.real * b.real + a.imag * b.imag) / (abs(a) * abs(b))
    turn = copysign(acos(min(max(cosine, -1.0), 1.0)), a.real * b.imag - a.imag * b.real)
    if sweep and turn < 0:
        turn += tau
    elif not sweep and turn > 0:
        turn -= tau
    return Arc(centre, rx * axis, ry * 1j * axis, phase(a), turn, end)
