"""Habits of many leaves on branching stems: bush, shrub, climber, sprawler."""

from math import cos, sin, tau

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath

from gardencanvas.canvas.symbols.leaves import GOLDEN, Brush, blob, disc, heart, leaf, lobed, mixed


def bush(b: Brush) -> None:
    """Cut leaves all round, in storeys; fruit between them when it is ripe."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    if b.detail == 0:
        b.lay(blob(0.98, 8, 0.16, rng), t.shade)
        for i in range(4):
            angle = turn + i * tau / 4
            b.dot(0.42 * cos(angle), 0.42 * sin(angle), 0.25, t.leaf)
        b.dot(0, 0, 0.2, t.light)
    else:
        b.lay(blob(0.9, 10, 0.12, rng), mixed(t.shade, t.deep, 0.35))
        count = (0, 12, 19, 24)[b.detail]
        for i in range(count):
            share = i / count
            length = (0.62 - 0.24 * share) * rng.uniform(0.92, 1.08)
            r = 0.4 * (1 - share) ** 0.8
            angle = turn + i * GOLDEN
            at = (r * cos(angle), r * sin(angle))
            shape = (
                lobed(length, length * 0.74, 3, 0.42, rng)
                if b.detail >= 2
                else leaf(length, length * 0.6, 0.5, 0.5)
            )
            b.lay(shape, mixed(t.shade, t.light, share * 0.85), angle, at, line=t.deep, width=0.014)
            if b.detail >= 2:
                b.stroke(
                    b.veins(length, length * 0.5, 2, t.light, 0.01),
                    mixed(t.leaf, t.light, 0.6),
                    0.011,
                    angle,
                    at,
                )
    if b.ripe:
        for i in range((2, 5, 6, 7)[b.detail]):
            angle = turn + 0.8 + i * GOLDEN * 1.7
            r = rng.uniform(0.25, 0.74)
            _fruit(b, r * cos(angle), r * sin(angle), (0.2, 0.13, 0.11, 0.105)[b.detail])


def _fruit(b: Brush, x: float, y: float, radius: float) -> None:
    b.dot(x, y, radius, b.tint.accent, mixed(b.tint.accent, "#000000", 0.4).name())
    if b.detail >= 2:
        b.dot(x - radius * 0.3, y - radius * 0.35, radius * 0.28, mixed(b.tint.accent, "#FFFFFF", 0.6))


def shrub(b: Brush) -> None:
    """Woody branches with tufts of small leaves; berries when they are ripe."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    b.lay(blob(0.97, 12 if b.detail else 7, 0.13, rng), mixed(t.shade, t.deep, 0.2), line=t.deep, width=0.02)
    count = (5, 13, 24, 34)[b.detail]
    for i in range(count):
        r = 0.84 * ((i + 0.5) / count) ** 0.55
        angle = turn + i * GOLDEN
        at = (r * cos(angle), r * sin(angle))
        size = (0.34, 0.24, 0.2, 0.17)[b.detail] * rng.uniform(0.85, 1.1)
        fill = mixed(t.shade, t.light, rng.uniform(0.25, 0.85))
        if b.detail < 2:
            b.dot(*at, size * 0.9, fill)
            continue
        for k in range(5):
            b.lay(
                leaf(size, size * 0.5, 0.5, 0.6),
                fill,
                angle + k * tau / 5,
                at,
                mixed(t.shade, t.deep, 0.6),
                0.01,
            )
    if b.detail >= 2:
        wood = QPainterPath()
        for i in range(5):
            angle = turn + i * tau / 5 + rng.uniform(-0.3, 0.3)
            wood.moveTo(0, 0)
            wood.quadTo(0.25 * cos(angle + 0.3), 0.25 * sin(angle + 0.3), 0.5 * cos(angle), 0.5 * sin(angle))
        b.stroke(wood, "#7A6248", 0.03)
    if b.ripe:
        for _ in range((3, 9, 18, 24)[b.detail]):
            r, angle = 0.82 * rng.random() ** 0.5, rng.uniform(0, tau)
            _fruit(b, r * cos(angle), r * sin(angle), (0.16, 0.085, 0.06, 0.05)[b.detail])


def climber(b: Brush) -> None:
    """A twining stem about its support, leaves in threes turned outward."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    if b.detail == 0:
        for i in range(6):
            angle = turn + i * tau / 6
            b.dot(0.62 * cos(angle), 0.62 * sin(angle), 0.34, (t.shade, t.leaf)[i % 2])
        b.dot(0, 0, 0.22, t.deep)
    else:
        count = (0, 9, 12, 15)[b.detail]
        spiral = QPainterPath(QPointF(0.06, 0))
        for i in range(1, 40):
            a, r = turn + i * 0.32, 0.06 + 0.5 * i / 40
            spiral.lineTo(r * cos(a), r * sin(a))
        b.stroke(spiral, mixed(t.shade, t.deep, 0.3), 0.045)
        for i in range(count):
            share = i / count
            angle = turn + i * GOLDEN
            r = 0.56 - 0.3 * share
            size = 0.42 - 0.09 * share
            at = (r * cos(angle), r * sin(angle))
            fill = mixed(t.shade, t.light, 0.1 + 0.75 * share)
            for k in (-1.15, 1.15, 0.0):
                b.lay(heart(size, size * 0.86), fill, angle + k, at, line=t.deep, width=0.014)
                if b.detail >= 2:
                    b.stroke(
                        b.veins(size, size * 0.6, 2, t.light, 0.01),
                        mixed(t.leaf, t.light, 0.7),
                        0.01,
                        angle + k,
                        at,
                    )
        b.dot(0, 0, 0.075, "#8A6C46", "#4A3824")
    if b.ripe:
        for i in range((2, 4, 6, 7)[b.detail]):
            angle = turn + 1.1 + i * GOLDEN * 1.4
            r = rng.uniform(0.4, 0.8)
            b.dot(r * cos(angle), r * sin(angle), (0.16, 0.1, 0.075, 0.07)[b.detail], t.accent, t.shade)


def sprawler(b: Brush) -> None:
    """Shoots that run out from the foot under broad lobed leaves."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    shoots = 3 if b.detail == 0 else 4
    for s in range(shoots):
        angle, curl = turn + s * tau / shoots, rng.uniform(-0.9, 0.9)
        vine = QPainterPath(QPointF(0, 0))
        vine.quadTo(
            0.5 * cos(angle), 0.5 * sin(angle), 0.97 * cos(angle + curl * 0.5), 0.97 * sin(angle + curl * 0.5)
        )
        b.stroke(vine, mixed(t.leaf, t.stalk, 0.35), (0.1, 0.06, 0.045, 0.04)[b.detail])
    count = (5, 8, 9, 10)[b.detail]
    for i in range(count):
        share = i / count
        angle = turn + 0.5 + i * GOLDEN
        r = 0.6 - 0.45 * share
        size = (0.42, 0.37, 0.36, 0.36)[b.detail] * rng.uniform(0.9, 1.1) * (1 - 0.25 * share)
        at = (r * cos(angle), r * sin(angle))
        fill = mixed(t.shade, t.light, 0.05 + 0.8 * share)
        outward = angle + rng.uniform(-0.5, 0.5)
        b.lay(
            _palm(size) if b.detail else disc(0, 0, size * 0.85), fill, outward, at, line=t.deep, width=0.016
        )
        if b.detail >= 2:
            b.stroke(_ribs(size), mixed(t.light, t.stalk, 0.4), 0.014, outward, at)
    if b.ripe:
        for i in range((1, 2, 2, 2)[b.detail]):
            angle = turn + 0.2 + i * tau * 0.45
            r = rng.uniform(0.4, 0.6)
            _fruit(b, r * cos(angle), r * sin(angle), 0.2)


_RIBS = (-2.2, -1.1, 0.0, 1.1, 2.2)


def _palm(size: float) -> QPainterPath:
    """A broad leaf of five shallow lobes, notched where the stalk comes in."""
    path = QPainterPath(QPointF(-size * 0.3, 0))
    for i, rib in enumerate(_RIBS):
        reach = size * (1.0 - 0.09 * abs(i - 2))
        before, after = rib - 0.56, rib + 0.56
        for at, r in ((before, 0.86), (rib - 0.2, 1.08), (rib + 0.2, 1.08), (after, 0.86)):
            x, y = reach * r * cos(at), reach * r * sin(at)
            if at == before:
                path.lineTo(x, y)
            else:
                path.quadTo(reach * r * 1.07 * cos(at - 0.2), reach * r * 1.07 * sin(at - 0.2), x, y)
    path.lineTo(-size * 0.3, 0)
    return path


def _ribs(size: float) -> QPainterPath:
    path = QPainterPath()
    for rib in _RIBS:
        path.moveTo(-size * 0.25, 0)
        path.lineTo(size * 0.72 * cos(rib), size * 0.72 * sin(rib))
    return path
