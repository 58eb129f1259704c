"""Habits of narrow leaves and stems: upright, tuft, feathery, spire."""

from math import cos, pi, sin, tau

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath

from gardencanvas.canvas.symbols.leaves import GOLDEN, Brush, heart, leaf, mixed, strap


def upright(b: Brush) -> None:
    """Strap leaves that rise from one shaft and arch over, in two loose ranks."""
    t, rng = b.tint, b.rng
    axis = rng.uniform(0, pi)
    count = (6, 8, 9, 9)[b.detail]
    for i in range(count):
        spread = (i // 2 + 0.5) / (count / 2) - 0.5
        angle = axis + (i % 2) * pi + spread * 2.1 * (1 if i % 2 else -1) + rng.uniform(-0.15, 0.15)
        length = rng.uniform(0.84, 1.0) * (1 - 0.3 * abs(spread) * (i % 3 == 0))
        bend = rng.uniform(-0.22, 0.22)
        width = (0.26, 0.17, 0.15, 0.14)[b.detail]
        fill = mixed(t.shade, t.light, 0.15 + 0.55 * (i / count))
        b.lay(strap(length, width, bend), fill, angle, line=t.deep, width=0.016)
        if b.detail >= 2:
            rib = QPainterPath(QPointF(0, 0))
            rib.cubicTo(length * 0.35, 0, length * 0.7, bend * 0.4, length * 0.95, bend * 0.92)
            b.stroke(rib, mixed(t.light, t.stalk, 0.5), 0.022, angle)
    b.dot(0, 0, (0.2, 0.13, 0.11, 0.1)[b.detail], mixed(t.light, "#FFFFFF", 0.45), t.shade)
    if b.detail >= 2:
        b.dot(0, 0, 0.05, mixed(t.light, t.leaf, 0.5))


def tuft(b: Brush) -> None:
    """Many fine leaves from one foot."""
    t, rng = b.tint, b.rng
    count = (13, 34, 60, 84)[b.detail]
    width = (0.1, 0.05, 0.032, 0.026)[b.detail]
    for i in range(count):
        angle = i * GOLDEN + rng.uniform(-0.2, 0.2)
        length = 1.0 - 0.62 * (i / count) * rng.random()
        bend = rng.uniform(-0.25, 0.25)
        path = QPainterPath(QPointF(0.04, 0))
        path.quadTo(length * 0.6, bend * 0.2, length * 0.98, bend)
        b.stroke(path, mixed(t.shade, t.light, (i / count) * 1.05), width, angle)
    if b.ripe:
        for i in range((2, 5, 8, 9)[b.detail]):
            angle = i * GOLDEN * 2 + rng.uniform(0, 0.6)
            r = rng.uniform(0.3, 0.72)
            _pompom(b, r * cos(angle), r * sin(angle), 0.14)


def _pompom(b: Brush, x: float, y: float, radius: float) -> None:
    b.dot(x, y, radius, b.tint.accent)
    if b.detail >= 2:
        for i in range(8):
            angle = i * tau / 8
            b.dot(
                x + radius * 0.6 * cos(angle),
                y + radius * 0.6 * sin(angle),
                radius * 0.32,
                mixed(b.tint.accent, "#FFFFFF", 0.35),
            )


def feathery(b: Brush) -> None:
    """Finely cut fronds."""
    t, rng = b.tint, b.rng
    count = (7, 9, 11, 13)[b.detail]
    turn = rng.uniform(0, tau)
    for i in range(count):
        angle = turn + (i * tau / count if b.detail == 0 else i * GOLDEN) + rng.uniform(-0.1, 0.1)
        length = rng.uniform(0.88, 1.0) * (1.0 if i < count * 0.7 else 0.7)
        colour = mixed(t.shade, t.light, 0.1 + 0.75 * i / count)
        b.stroke(_frond(length, b.detail), colour, (0.13, 0.062, 0.036, 0.024)[b.detail], angle)
    b.dot(0, 0, 0.09, t.light)


def _frond(length: float, detail: int) -> QPainterPath:
    """A stem with leaflets in pairs, which branch again from detail 2."""
    path = QPainterPath(QPointF(0, 0))
    path.lineTo(length * 0.97, 0)
    pairs = (0, 3, 5, 6)[detail]
    for i in range(pairs):
        x = length * (0.3 + 0.6 * i / pairs)
        reach = 0.3 * (1 - 0.62 * i / pairs)
        for side in (-1, 1):
            path.moveTo(x, 0)
            path.lineTo(x + reach * 0.75, side * reach * 0.62)
            if detail >= 2 and i < pairs - 1:
                for k in (0.45, 0.72) if detail == 3 else (0.55,):
                    mx, my = x + reach * 0.75 * k, side * reach * 0.62 * k
                    path.moveTo(mx, my)
                    path.lineTo(mx + reach * 0.34, my + side * reach * 0.02)
                    path.moveTo(mx, my)
                    path.lineTo(mx + reach * 0.1, my + side * reach * 0.3)
    return path


def spire(b: Brush) -> None:
    """One stem with broad leaves below and a flower on top."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    count = (5, 7, 8, 9)[b.detail]
    for i in range(count):
        share = i / count
        angle = turn + i * GOLDEN
        length = 1.0 - 0.34 * share
        shape = heart(length, length * 0.68)
        b.lay(shape, mixed(t.shade, t.light, share * 0.7), angle, line=t.deep)
        if b.detail >= 2:
            b.stroke(
                b.veins(length, length * 0.6, 3, t.light, 0.02), mixed(t.leaf, t.light, 0.8), 0.016, angle
            )
    if not b.ripe:
        b.dot(0, 0, 0.2, mixed(t.leaf, t.light, 0.7), t.shade)
        return
    petals = (0, 12, 16, 20)[b.detail]
    for i in range(petals):
        b.lay(
            leaf(0.52, 0.2, 0.5, 0.3),
            mixed(t.accent, "#FFFFFF", 0.12 * (i % 2)),
            i * tau / petals,
            line=mixed(t.accent, t.deep, 0.5),
            width=0.012,
        )
    if not petals:
        b.dot(0, 0, 0.46, t.accent)
    b.dot(0, 0, 0.22, mixed(t.deep, "#5A3A1E", 0.7))
    if b.detail >= 3:
        for i in range(30):
            r, angle = 0.2 * (i / 30) ** 0.5, i * GOLDEN
            b.dot(r * cos(angle), r * sin(angle), 0.012, "#B78A4A")
