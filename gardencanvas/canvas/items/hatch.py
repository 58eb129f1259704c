"""Hatches of the verdict marks: tiles of slanting lines, drawn once per colour and pixel ratio."""

from functools import lru_cache

from PySide6.QtCore import QLineF, QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPainter, QPainterPath, QPen
from shapely import LineString, MultiLineString, Polygon, unary_union

SPARSE, DENSE = 12, 6  # pixels between lines


@lru_cache(maxsize=64)
def tile(colour: str, gap: int, crossed: bool, ratio: float) -> QImage:
    """One tile that repeats without a seam."""
    side = gap * 2
    image = QImage(round(side * ratio), round(side * ratio), QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(ratio)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tone = QColor(colour)
        tone.setAlpha(150)
        painter.setPen(QPen(tone, 1.1))
        for at in range(-side, 2 * side, gap):
            painter.drawLine(QPointF(at, side), QPointF(at + side, 0))
            if crossed:
                painter.drawLine(QPointF(at, 0), QPointF(at + side, side))
    finally:
        painter.end()
    return image


def hatch(colour: str, gap: int, crossed: bool, ratio: float) -> QBrush:
    """A brush of the tile."""
    return QBrush(tile(colour, gap, crossed, ratio))


def hatch_lines(shape: QPainterPath, gap: int, *, crossed: bool) -> list[QLineF]:
    """The hatch as lines cut to a shape, in the shape's own units."""
    rings = [
        Polygon([(p.x(), p.y()) for p in ring.toList()]) for ring in shape.toFillPolygons() if ring.size() > 3
    ]
    ground = unary_union([ring.buffer(0) for ring in rings])
    if ground.is_empty:
        return []
    x0, y0, x1, y1 = ground.bounds
    high, step = y1 - y0, gap * 2**0.5
    count = int((x1 - x0 + high) / step) + 1
    lines = []
    for i in range(count):
        x = x0 + (i + 0.5) * step
        lines.append(LineString([(x - high, y1), (x, y0)]))
        if crossed:
            lines.append(LineString([(x - high, y0), (x, y1)]))
    cut = MultiLineString(lines).intersection(ground)
    parts = getattr(cut, "geoms", [cut])
    ends = [list(p.coords) for p in parts if isinstance(p, LineString) and not p.is_empty]
    return [QLineF(*c[0], *c[-1]) for c in ends]
