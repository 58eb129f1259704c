"""Small drawn marks of the panels: star, packet, calendar, place, filter, page, fold, eye, lock."""

from math import cos, pi, sin

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPainterPath, QPen, QPixmap, QPolygonF

_SIDE = 16.0  # the unit square in which marks are drawn


def paint_mark(painter: QPainter, name: str, area: QRectF, colour: QColor, *, filled: bool = False) -> None:
    """Draw a mark in an area; ``filled`` for what is on."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    side = min(area.width(), area.height())
    painter.translate(area.center().x() - side / 2, area.center().y() - side / 2)
    painter.scale(side / _SIDE, side / _SIDE)
    pen = QPen(colour, 1.3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(colour if filled else Qt.BrushStyle.NoBrush)
    for path, solid in _MARKS[name]():
        painter.setBrush(colour if solid or filled else Qt.BrushStyle.NoBrush)
        painter.drawPath(path)
    painter.restore()


def mark_icon(name: str, colour: str, accent: str) -> QIcon:
    """A tool button's icon: outlined when off, filled in the accent when on."""
    icon = QIcon()
    for state, filled, shade in ((QIcon.State.Off, False, colour), (QIcon.State.On, True, accent)):
        for ratio in (1, 2, 3):
            pixmap = QPixmap(QSize(16, 16) * ratio)
            pixmap.setDevicePixelRatio(ratio)
            pixmap.fill(Qt.GlobalColor.transparent)
            painter = QPainter(pixmap)
            filled = filled and name in ("star", "packet", "filter")
            paint_mark(painter, name, QRectF(0, 0, 16, 16), QColor(shade), filled=filled)
            painter.end()
            icon.addPixmap(pixmap, QIcon.Mode.Normal, state)
    return icon


Shapes = list[tuple[QPainterPath, bool]]  # path, and whether it is always filled


def _polygon(*points: tuple[float, float]) -> QPainterPath:
    path = QPainterPath()
    path.addPolygon(QPolygonF([QPointF(*p) for p in points]))
    path.closeSubpath()
    return path


def _line(*points: tuple[float, float]) -> QPainterPath:
    path = QPainterPath(QPointF(*points[0]))
    for point in points[1:]:
        path.lineTo(QPointF(*point))
    return path


def _round(x: float, y: float, radius: float) -> QPainterPath:
    path = QPainterPath()
    path.addEllipse(QPointF(x, y), radius, radius)
    return path


def _star() -> Shapes:
    points = []
    for step in range(10):
        radius = 6.6 if step % 2 == 0 else 2.9
        angle = pi * step / 5
        points.append((8 + radius * sin(angle), 8.4 - radius * cos(angle)))
    return [(_polygon(*points), False)]


def _packet() -> Shapes:
    path = QPainterPath()
    path.addRoundedRect(QRectF(3.5, 2.0, 9.0, 12.0), 1.2, 1.2)
    return [(path, False), (_line((3.5, 5.0), (12.5, 5.0)), False)]


def _calendar() -> Shapes:
    path = QPainterPath()
    path.addRoundedRect(QRectF(2.2, 3.4, 11.6, 10.4), 1.4, 1.4)
    ticks = [(_line((x, 2.0), (x, 4.6)), False) for x in (5.2, 10.8)]
    return [(path, False), *ticks, (_line((2.2, 6.8), (13.8, 6.8)), False), (_round(8.0, 10.3, 1.1), True)]


def _place() -> Shapes:
    ticks = [((8, 1.2), (8, 4)), ((8, 12), (8, 14.8)), ((1.2, 8), (4, 8)), ((12, 8), (14.8, 8))]
    return [(_round(8, 8, 4.6), False), (_round(8, 8, 1.2), True), *((_line(*t), False) for t in ticks)]


def _filter() -> Shapes:
    return [(_polygon((2.2, 3.2), (13.8, 3.2), (9.4, 8.4), (9.4, 13.4), (6.6, 12.0), (6.6, 8.4)), False)]


def _page() -> Shapes:
    return [(_round(8, 8, 6.2), False), (_round(8, 5.1, 0.5), True), (_line((8, 7.6), (8, 11.4)), False)]


def _folded() -> Shapes:
    return [(_line((6, 4), (10.2, 8), (6, 12)), False)]


def _open() -> Shapes:
    return [(_line((4, 6), (8, 10.2), (12, 6)), False)]


def _plus() -> Shapes:
    return [(_line((8, 3), (8, 13)), False), (_line((3, 8), (13, 8)), False)]


def _seen() -> Shapes:
    path = QPainterPath(QPointF(1.6, 8))
    path.quadTo(QPointF(8, 1.2), QPointF(14.4, 8))
    path.quadTo(QPointF(8, 14.8), QPointF(1.6, 8))
    return [(path, False), (_round(8, 8, 1.9), True)]


def _unseen() -> Shapes:
    return [*_seen(), (_line((2.8, 13.4), (13.2, 2.6)), False)]


def _lock() -> Shapes:
    body, bow = QPainterPath(), QPainterPath(QPointF(5.2, 7.2))
    body.addRoundedRect(QRectF(3.4, 7.2, 9.2, 6.8), 1.2, 1.2)
    bow.lineTo(QPointF(5.2, 5.2))
    bow.arcTo(QRectF(5.2, 2.2, 5.6, 5.6), 180, -180)
    bow.lineTo(QPointF(10.8, 7.2))
    return [(body, False), (bow, False), (_round(8, 10.6, 0.9), True)]


_MARKS = {
    "seen": _seen,
    "unseen": _unseen,
    "lock": _lock,
    "star": _star,
    "packet": _packet,
    "calendar": _calendar,
    "place": _place,
    "filter": _filter,
    "page": _page,
    "folded": _folded,
    "open": _open,
    "plus": _plus,
}
