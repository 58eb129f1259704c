"""Habits of broad leaves close to the ground: rosette, head, blade, carpet."""

from math import cos, sin, tau

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath

from gardencanvas.canvas.symbols.leaves import GOLDEN, Brush, blob, disc, leaf, mixed


def rosette(b: Brush) -> None:
    """Leaves in a spiral, the youngest lightest in the middle."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    if b.detail == 0:
        b.lay(blob(0.98, 7, 0.26, rng), t.shade)
        b.lay(blob(0.62, 5, 0.2, rng), t.leaf)
        b.dot(0, 0, 0.26, t.light)
        return
    count = 13 if b.detail == 1 else 19
    for i in range(count):
        share = i / (count - 1)
        length = (1.0 - 0.74 * share**0.9) * rng.uniform(0.93, 1.02)
        fill = mixed(t.shade, t.leaf, share * 2) if share < 0.5 else mixed(t.leaf, t.light, share * 2 - 1)
        angle = turn + i * GOLDEN
        width = length * 0.78 + 0.06
        b.lay(leaf(length, width, 0.62, 0.95), fill, angle, line=mixed(t.shade, t.deep, 0.75), width=0.02)
        if b.detail >= 2:
            vein = QPainterPath(QPointF(0, 0))
            vein.lineTo(length * 0.86, 0)
            b.stroke(vein, mixed(t.light, t.stalk, 0.4), 0.018, angle)
        if b.detail >= 3:
            b.stroke(b.veins(length, width, 3, t.light, 0.01), mixed(t.leaf, t.light, 0.8), 0.009, angle)


def head(b: Brush) -> None:
    """Spread outer leaves round a folded heart."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    if b.detail == 0:
        b.lay(blob(0.98, 6, 0.2, rng), t.shade)
        b.dot(0, 0, 0.56, t.accent if b.ripe else t.leaf)
        b.dot(-0.12, -0.12, 0.3, mixed(t.accent, "#FFFFFF", 0.5) if b.ripe else t.light)
        return
    for i in range(8):
        angle = turn + i * tau * 3 / 8 + rng.uniform(-0.1, 0.1)
        length, width = rng.uniform(0.92, 1.0), rng.uniform(0.8, 0.92)
        b.lay(leaf(length, width, 0.6, 1.0), mixed(t.shade, t.leaf, i / 9), angle, line=t.deep)
        if b.detail >= 2:
            vein = b.veins(length, width, 3 if b.detail == 2 else 4, t.light, 0.02)
            b.stroke(vein, mixed(t.leaf, t.stalk, 0.55), 0.022 if b.detail == 2 else 0.016, angle)
    if b.ripe:
        _curd(b)
        return
    b.lay(disc(0, 0, 0.5), mixed(t.leaf, t.light, 0.35), line=t.deep)
    for i in range(3 if b.detail == 1 else 5):
        angle = turn + i * GOLDEN
        share = 0.45 + 0.13 * i
        b.lay(_fold(0.5 - 0.07 * i), mixed(t.leaf, t.light, share), angle, line=mixed(t.shade, t.deep, 0.4))
    if b.detail >= 2:
        b.lay(disc(0, 0, 0.12), mixed(t.light, t.stalk, 0.6), 0.0, (-0.1, -0.1))


def _curd(b: Brush) -> None:
    """The white or green curd of a cauliflower in the place of a heart."""
    accent = b.tint.accent
    b.lay(blob(0.52, 9, 0.1, b.rng), mixed(accent, "#6E6A4A", 0.35), line=b.tint.deep)
    for i in range((0, 9, 16, 30)[b.detail]):
        r, angle = 0.42 * ((i + 0.5) / (9, 9, 16, 30)[b.detail]) ** 0.5, i * GOLDEN
        shade = mixed(accent, "#FFFFFF" if i % 3 else "#8F8A66", 0.35 if i % 3 else 0.25)
        b.dot(r * cos(angle), r * sin(angle), (0.2, 0.17, 0.13, 0.1)[b.detail], shade)


def _fold(radius: float) -> QPainterPath:
    """One leaf folded over the heart: a disc with a bite taken by the next."""
    path = QPainterPath(QPointF(radius, 0))
    path.cubicTo(radius, radius * 1.1, -radius * 0.9, radius * 1.15, -radius * 0.86, radius * 0.1)
    path.cubicTo(-radius * 0.3, radius * 0.55, radius * 0.4, radius * 0.3, radius, 0)
    return path


def blade(b: Brush) -> None:
    """Large leaves held out on coloured stalks."""
    t, rng = b.tint, b.rng
    turn = rng.uniform(0, tau)
    count = 5 if b.detail == 0 else 8
    for i in range(count):
        share = i / count
        angle = turn + (i * tau / count if b.detail == 0 else i * GOLDEN)
        reach = rng.uniform(0.9, 1.0) * (1 - 0.34 * share if b.detail else 1.0)
        blade_length = reach * 0.68
        start = reach - blade_length
        at = (cos(angle) * start, sin(angle) * start)
        stalk = QPainterPath(QPointF(0, 0))
        stalk.lineTo(reach * 0.8, 0)
        width = blade_length * (0.82 if b.detail else 0.9)
        b.lay(
            leaf(blade_length, width, 0.4, 0.7),
            mixed(t.shade, t.leaf, 0.3 + share),
            angle,
            at,
            line=t.deep,
        )
        b.stroke(stalk, mixed(t.accent, t.stalk, 0.15), 0.1 if b.detail == 0 else 0.065, angle)
        if b.detail >= 2:
            veins = b.veins(blade_length, width, 3 if b.detail == 2 else 5, t.stalk, 0.02)
            b.stroke(veins, mixed(t.accent, t.stalk, 0.4), 0.02, angle, at)
    b.dot(0, 0, 0.1, mixed(t.accent, t.stalk, 0.5))


def carpet(b: Brush) -> None:
    """A close mat of small leaves with an uneven rim."""
    t, rng = b.tint, b.rng
    b.lay(blob(0.96, 11, 0.14, rng), t.shade)
    count = (9, 34, 80, 120)[b.detail]
    size = (0.3, 0.17, 0.125, 0.115)[b.detail]
    for i in range(count):
        r = 0.9 * ((i + 0.5) / count) ** 0.5
        angle = i * GOLDEN + rng.uniform(-0.3, 0.3)
        at = (r * cos(angle), r * sin(angle))
        fill = mixed(t.leaf, t.light, rng.uniform(-0.2, 0.75))
        if b.detail < 2:
            b.dot(*at, size * rng.uniform(0.7, 1.0), fill)
            continue
        turn = rng.uniform(0, tau)
        for k in range(3):
            b.lay(
                leaf(size, size * 0.8, 0.55, 1.0),
                fill,
                turn + k * tau / 3,
                at,
                mixed(t.shade, t.deep, 0.3),
                0.008,
            )
    if b.ripe:
        for _ in range((2, 7, 15, 22)[b.detail]):
            angle, r = rng.uniform(0, tau), 0.85 * rng.random() ** 0.5
            b.dot(r * cos(angle), r * sin(angle), (0.14, 0.075, 0.05, 0.045)[b.detail], t.accent)
