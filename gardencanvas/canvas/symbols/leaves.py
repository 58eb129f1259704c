"""Leaf shapes as paths, and the brush that lays them.

A leaf begins at the origin and points along +x. All lengths are in radii of the plant.
"""

from math import cos, pi, sin, tau
from random import Random

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen

from gardencanvas.canvas.palette import Tint

GOLDEN = 2.399963229728653  # the golden angle in radians: π(3 − √5), as leaves follow each other on a stem


def leaf(length: float, width: float, belly: float = 0.55, tip: float = 0.5) -> QPainterPath:
    """A simple leaf; ``belly`` is where it is widest, ``tip`` from pointed (0) to round (1)."""
    w = width / 2 * 1.33
    path = QPainterPath(QPointF(0, 0))
    path.cubicTo(length * belly * 0.5, -w * 0.5, length * belly * 0.7, -w, length * (belly + 0.12), -w * 0.8)
    path.cubicTo(length * 0.9, -w * (0.35 + 0.3 * tip), length, -w * 0.6 * tip, length, 0)
    path.cubicTo(
        length, w * 0.6 * tip, length * 0.9, w * (0.35 + 0.3 * tip), length * (belly + 0.12), w * 0.8
    )
    path.cubicTo(length * belly * 0.7, w, length * belly * 0.5, w * 0.5, 0, 0)
    return path


def strap(length: float, width: float, bend: float) -> QPainterPath:
    """A long leaf that tapers to a point and leans to one side by ``bend``."""
    w = width / 2
    path = QPainterPath(QPointF(0, -w * 0.8))
    path.cubicTo(length * 0.35, -w * 1.3, length * 0.7, bend * 0.4 - w, length, bend)
    path.cubicTo(length * 0.7, bend * 0.4 + w * 0.9, length * 0.35, w * 1.2, 0, w * 0.8)
    path.closeSubpath()
    return path


def heart(length: float, width: float) -> QPainterPath:
    """A heart-shaped leaf with its stalk at the origin."""
    w = width / 2
    path = QPainterPath(QPointF(length * 0.08, 0))
    path.cubicTo(-length * 0.16, -w * 0.55, length * 0.1, -w * 1.3, length * 0.5, -w * 0.85)
    path.cubicTo(length * 0.78, -w * 0.52, length * 0.92, -w * 0.16, length, 0)
    path.cubicTo(length * 0.92, w * 0.16, length * 0.78, w * 0.52, length * 0.5, w * 0.85)
    path.cubicTo(length * 0.1, w * 1.3, -length * 0.16, w * 0.55, length * 0.08, 0)
    return path


def lobed(length: float, width: float, lobes: int, depth: float, rng: Random) -> QPainterPath:
    """A leaf with ``lobes`` on each side, cut in by ``depth`` (0-1)."""
    outer, inner = [], []
    for i in range(lobes):
        at = (i + 0.75) / (lobes + 0.6)
        breadth = sin(pi * min(at * 0.82 + 0.16, 1.0)) * width / 2 * rng.uniform(0.9, 1.1)
        outer.append((length * at, breadth))
        inner.append((length * (at + 0.5 / (lobes + 0.6)), breadth * (1 - depth)))
    path = QPainterPath(QPointF(0, 0))
    for side in (-1, 1):
        half = QPainterPath(QPointF(0, 0))
        half.quadTo(length * 0.06, side * width * 0.05, length * 0.1, side * width * 0.1)
        for (ox, oy), (ix, iy) in zip(outer, inner, strict=True):
            half.quadTo(ox - length * 0.1, side * oy * 1.1, ox, side * oy)
            half.quadTo(ix, side * oy * 0.95, ix, side * iy)
        half.quadTo(length * 0.97, side * width * 0.1, length, 0)
        half.lineTo(0, 0)
        path.addPath(half)
    path.setFillRule(Qt.FillRule.WindingFill)
    return path


def blob(radius: float, bumps: int, depth: float, rng: Random) -> QPainterPath:
    """A closed wavy outline round the origin."""
    turn = rng.uniform(0, tau)
    points = []
    for i in range(bumps * 2):
        r = radius * ((1 - depth) if i % 2 else rng.uniform(0.94, 1.03))
        angle = turn + i * pi / bumps + rng.uniform(-0.06, 0.06)
        points.append(QPointF(r * cos(angle), r * sin(angle)))
    path = QPainterPath((points[-1] + points[0]) / 2)
    for here, after in zip(points, [*points[1:], points[0]], strict=True):
        path.quadTo(here, (here + after) / 2)
    path.closeSubpath()
    return path


def disc(x: float, y: float, radius: float) -> QPainterPath:
    """A circle."""
    path = QPainterPath()
    path.addEllipse(QPointF(x, y), radius, radius)
    return path


def mixed(a: str, b: str, share: float) -> QColor:
    """A colour ``share`` of the way from ``a`` to ``b``."""
    p, q = QColor(a), QColor(b)
    k = min(max(share, 0.0), 1.0)
    return QColor.fromRgbF(
        p.redF() + (q.redF() - p.redF()) * k,
        p.greenF() + (q.greenF() - p.greenF()) * k,
        p.blueF() + (q.blueF() - p.blueF()) * k,
    )


class Brush:
    """Lays shapes on a painter whose unit is the plant's radius.

    ``detail`` 0 is for a few pixels, 1 adds form, 2 adds outlines and veins, 3 everything.
    """

    def __init__(self, painter: QPainter, tint: Tint, seed: int, detail: int, ripe: bool) -> None:
        self.painter = painter
        self.tint = tint
        self.rng = Random(seed)
        self.detail = detail
        self.ripe = ripe

    def lay(
        self,
        path: QPainterPath,
        fill: QColor | str,
        angle: float = 0.0,
        at: tuple[float, float] = (0.0, 0.0),
        line: QColor | str | None = None,
        width: float = 0.022,
    ) -> None:
        """Fill a shape, turned by ``angle`` (radians) about its own origin; outlined from detail 2."""
        p = self.painter
        p.save()
        p.translate(*at)
        p.rotate(angle * 180 / pi)
        if line is not None and self.detail >= 2:
            p.setPen(QPen(QColor(line), width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
        else:
            p.setPen(Qt.PenStyle.NoPen)
        p.setBrush(QBrush(QColor(fill)))
        p.drawPath(path)
        p.restore()

    def stroke(
        self,
        path: QPainterPath,
        colour: QColor | str,
        width: float,
        angle: float = 0.0,
        at: tuple[float, float] = (0.0, 0.0),
    ) -> None:
        """Draw a line, turned about its own origin."""
        p = self.painter
        p.save()
        p.translate(*at)
        p.rotate(angle * 180 / pi)
        p.setPen(
            QPen(
                QColor(colour),
                width,
                Qt.PenStyle.SolidLine,
                Qt.PenCapStyle.RoundCap,
                Qt.PenJoinStyle.RoundJoin,
            )
        )
        p.setBrush(Qt.BrushStyle.NoBrush)
        p.drawPath(path)
        p.restore()

    def dot(self, x: float, y: float, radius: float, fill: QColor | str, line: str | None = None) -> None:
        """A small disc: a flower, a fruit, a stem."""
        self.lay(disc(0, 0, radius), fill, 0.0, (x, y), line)

    def veins(
        self, length: float, width: float, pairs: int, colour: QColor | str, thick: float
    ) -> QPainterPath:
        """A midrib with side veins, for ``stroke``."""
        path = QPainterPath(QPointF(length * 0.05, 0))
        path.lineTo(length * 0.9, 0)
        for i in range(pairs):
            x = length * (0.18 + 0.6 * i / max(pairs, 1))
            reach = width * 0.36 * sin(pi * min(0.25 + x / length, 0.95))
            for side in (-1, 1):
                path.moveTo(x, 0)
                path.quadTo(x + length * 0.08, side * reach * 0.5, x + length * 0.17, side * reach)
        return path
