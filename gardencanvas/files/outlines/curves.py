"""Pieces of outlines: lines, Bézier curves and arcs as complex numbers, and their flattening to corners.

Each piece knows where it begins and ends, its image under an affine map, and a chain of chords none of which
is farther from the curve than a tolerance: for a curve B(t), 0 ≤ t ≤ 1, cut into n equal steps, no chord is
farther away than ``max |B''| / (8 n²)`` (the error of linear interpolation).
"""

from __future__ import annotations

from cmath import exp
from dataclasses import dataclass
from math import atan2, ceil, pi, sqrt, tau

from gardencanvas.files.outlines.refusing import MAX_POINTS, OutlinesRefused, Why

MOST_STEPS = 2000
_FARTHEST = 1e12


@dataclass(frozen=True, slots=True)
class Affine:
    """``x' = a x + c y + e``, ``y' = b x + d y + f``: the matrix of SVG."""

    a: float = 1.0
    b: float = 0.0
    c: float = 0.0
    d: float = 1.0
    e: float = 0.0
    f: float = 0.0

    def __matmul__(self, inner: Affine) -> Affine:
        """First ``inner``, then this one."""
        return Affine(
            self.a * inner.a + self.c * inner.b,
            self.b * inner.a + self.d * inner.b,
            self.a * inner.c + self.c * inner.d,
            self.b * inner.c + self.d * inner.d,
            self.a * inner.e + self.c * inner.f + self.e,
            self.b * inner.e + self.d * inner.f + self.f,
        )

    def point(self, p: complex) -> complex:
        """Where a point goes."""
        return self.vector(p) + complex(self.e, self.f)

    def vector(self, v: complex) -> complex:
        """Where a direction goes."""
        return complex(self.a * v.real + self.c * v.imag, self.b * v.real + self.d * v.imag)


def _steps(bend: float, tolerance: float) -> int:
    """Into how many chords a curve is cut whose second derivative is at most ``bend``."""
    return min(max(1, ceil(sqrt(bend / (8 * tolerance)))), MOST_STEPS)


@dataclass(frozen=True, slots=True)
class Line:
    """A straight piece."""

    begin: complex
    end: complex

    def under(self, map_: Affine) -> Line:
        """The piece after an affine map."""
        return Line(map_.point(self.begin), map_.point(self.end))

    @property
    def points(self) -> tuple[complex, ...]:
        """The numbers it is made of."""
        return self.begin, self.end

    @property
    def outermost(self) -> tuple[complex, ...]:
        """Points of it that span its box."""
        return self.points

    def corners(self, tolerance: float) -> list[complex]:
        """The points after its begin."""
        return [self.end]


@dataclass(frozen=True, slots=True)
class Cubic:
    """A cubic Bézier curve."""

    begin: complex
    one: complex
    two: complex
    end: complex

    def under(self, map_: Affine) -> Cubic:
        """The piece after an affine map."""
        return Cubic(*(map_.point(p) for p in self.points))

    @property
    def points(self) -> tuple[complex, complex, complex, complex]:
        """The numbers it is made of."""
        return self.begin, self.one, self.two, self.end

    @property
    def outermost(self) -> tuple[complex, ...]:
        """Points of it that span its box: its ends, and where it turns back in x or y."""
        a = self.end - 3 * self.two + 3 * self.one - self.begin
        b = 2 * (self.two - 2 * self.one + self.begin)
        c = self.one - self.begin
        turns = _roots(a.real, b.real, c.real) + _roots(a.imag, b.imag, c.imag)
        return (self.begin, self.end, *(self.at(t) for t in turns))

    def at(self, t: float) -> complex:
        """A point of it."""
        s = 1 - t
        return s**3 * self.begin + 3 * s * s * t * self.one + 3 * s * t * t * self.two + t**3 * self.end

    def corners(self, tolerance: float) -> list[complex]:
        """The points after its begin; ``B'' = 6 (1-t) (P₀ - 2P₁ + P₂) + 6 t (P₁ - 2P₂ + P₃)``."""
        bend = 6 * max(abs(self.begin - 2 * self.one + self.two), abs(self.one - 2 * self.two + self.end))
        steps = _steps(bend, tolerance)
        return [*(self.at(i / steps) for i in range(1, steps)), self.end]


def _roots(a: float, b: float, c: float) -> list[float]:
    """Where ``a t² + b t + c`` is 0 between 0 and 1."""
    if abs(a) < 1e-12 * max(abs(b), abs(c), 1e-300):
        found = [-c / b] if b else []
    else:
        under = b * b - 4 * a * c
        found = [] if under < 0 else [(-b + sqrt(under)) / (2 * a), (-b - sqrt(under)) / (2 * a)]
    return [t for t in found if 0 < t < 1]


def quadratic(begin: complex, one: complex, end: complex) -> Cubic:
    """A quadratic Bézier curve as the cubic one that it is."""
    return Cubic(begin, begin + (one - begin) * 2 / 3, end + (one - end) * 2 / 3, end)


@dataclass(frozen=True, slots=True)
class Arc:
    """A piece of an ellipse: ``centre + u cos θ + v sin θ`` from θ = ``first`` on by ``turn`` radians."""

    centre: complex
    u: complex
    v: complex
    first: float
    turn: float
    ends_at: complex | None = None  # as it was written, so that no gap opens

    @property
    def begin(self) -> complex:
        """Where it begins."""
        return self.at(0.0)

    @property
    def end(self) -> complex:
        """Where it ends."""
        return self.at(1.0) if self.ends_at is None else self.ends_at

    @property
    def points(self) -> tuple[complex, ...]:
        """The numbers it is made of."""
        return self.centre, self.u, self.v

    @property
    def outermost(self) -> tuple[complex, ...]:
        """Points of it that span its box: its ends, and where it turns back in x or y."""
        if self.turn == 0:
            return self.begin, self.end
        x, y = atan2(self.v.real, self.u.real), atan2(self.v.imag, self.u.imag)
        found = [self.begin, self.end]
        for turned in (x, x + pi, y, y + pi):
            on = (turned - self.first) % tau if self.turn > 0 else -((self.first - turned) % tau)
            if abs(on) <= abs(self.turn):
                found.append(self.at(on / self.turn))
        return tuple(found)

    def under(self, map_: Affine) -> Arc:
        """The piece after an affine map."""
        ends_at = None if self.ends_at is None else map_.point(self.ends_at)
        return Arc(
            map_.point(self.centre), map_.vector(self.u), map_.vector(self.v), self.first, self.turn, ends_at
        )

    def at(self, t: float) -> complex:
        """A point of it."""
        turned = exp(1j * (self.first + t * self.turn))
        return self.centre + self.u * turned.real + self.v * turned.imag

    def corners(self, tolerance: float) -> list[complex]:
        """The points after its begin; ``|B''| ≤ turn² √(|u|² + |v|²)``."""
        bend = self.turn**2 * sqrt(abs(self.u) ** 2 + abs(self.v) ** 2)
        steps = max(_steps(bend, tolerance), ceil(abs(self.turn)))
        return [*(self.at(i / steps) for i in range(1, steps)), self.end]


Piece = Line | Cubic | Arc


@dataclass(frozen=True, slots=True)
class Loop:
    """One subpath: its pieces, and whether it was closed."""

    pieces: tuple[Piece, ...]
    closed: bool

    def under(self, map_: Affine) -> Loop:
        """The subpath after an affine map."""
        return Loop(tuple(p.under(map_) for p in self.pieces), self.closed)

    def sound(self) -> bool:
        """Whether all its numbers are finite, and not absurd."""
        return all(abs(p) < _FARTHEST for piece in self.pieces for p in piece.points)

    def corners(self, tolerance: float) -> list[complex]:
        """Its corners, the first one once."""
        found = [self.pieces[0].begin]
        for piece in self.pieces:
            found += piece.corners(tolerance)
            if len(found) > MAX_POINTS:
                raise OutlinesRefused(Why.TOO_MANY, count=len(found), most=MAX_POINTS)
        return found
