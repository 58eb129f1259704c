"""The background picture under the plan, drawn from a ready picture of what the window shows."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import floor, log2

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QImage, QImageReader, QPainter, QPainterPath, QPixmap, QTransform
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.look import CM, Look
from gardencanvas.canvas.shapes import polygon
from gardencanvas.garden.backdrop import Backdrop
from gardencanvas.garden.picture import Picture

_SMALLEST_PX = 64
_SPARE = 0.3  # of the window on each side, made ready so that panning has something to show


@lru_cache(maxsize=2)
def levels(picture: Picture) -> tuple[QImage, ...]:
    """The decoded picture, then each half as wide as the one before; empty where it cannot be decoded.

    The header was checked when the picture came into the garden, so what is decoded is bounded.
    """
    buffer = QBuffer()
    buffer.setData(QByteArray(picture.content))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    image = QImageReader(buffer, picture.kind.encode()).read()
    if image.isNull():
        return ()
    forms = QImage.Format
    clear = image.hasAlphaChannel()
    found = [image.convertToFormat(forms.Format_ARGB32_Premultiplied if clear else forms.Format_RGB32)]
    while min(found[-1].width(), found[-1].height()) >= 2 * _SMALLEST_PX:
        half = QSize(found[-1].width() // 2, found[-1].height() // 2)
        found.append(
            found[-1].scaled(
                half, Qt.AspectRatioMode.IgnoreAspectRatio, Qt.TransformationMode.SmoothTransformation
            )
        )
    return tuple(found)


@dataclass(frozen=True, slots=True)
class _Ready:
    """Part of the picture as it stands on the screen; ``box`` is in plan units times ``scale``."""

    backdrop: Backdrop
    scale: float
    ratio: float
    box: QRect
    pixels: QPixmap


class BackdropItem(QGraphicsItem):
    """Shows the background picture, dimmed by the paper that lies over it."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self.value: Backdrop | None = None
        self._box = QRectF()
        self._ready: _Ready | None = None
        self.setZValue(order.BACKDROP)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)

    def put(self, backdrop: Backdrop | None) -> None:
        """Show this picture in its place; nothing for none, or one that is not to be shown."""
        shown = backdrop if backdrop is not None and backdrop.shown else None
        if shown is self.value:
            return
        self.prepareGeometryChange()
        self.value = shown
        if shown is None:
            self._box, self._ready = QRectF(), None
        else:
            self._box = polygon(shown.corners).boundingRect()
        self.update()

    def boundingRect(self) -> QRectF:
        return self._box

    def shape(self) -> QPainterPath:
        return QPainterPath()

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        backdrop = self.value
        if backdrop is None:
            return
        decoded = levels(backdrop.picture)
        painter.save()
        painter.setOpacity(painter.opacity() * (1 - backdrop.dimmed))
        if not decoded:
            self._paint_broken(painter, backdrop)
        elif widget is None:
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            _draw(painter, backdrop, painter.deviceTransform().m11())
        else:
            self._paint_ready(painter, backdrop, widget)
        painter.restore()

    def _paint_broken(self, painter: QPainter, backdrop: Backdrop) -> None:
        """A picture that cannot be decoded: its place, crossed out."""
        painter.setPen(self.look.line(self.look.colours.ink, 1.2, Qt.PenStyle.DashLine))
        a, b, c, d = polygon(backdrop.corners).toList()[:4]
        painter.drawPolygon([a, b, c, d])
        painter.drawLine(a, c)
        painter.drawLine(b, d)

    def _paint_ready(self, painter: QPainter, backdrop: Backdrop, widget: QWidget) -> None:
        """Stamp what is ready; make it ready anew where the window has moved on or the zoom changed."""
        world = painter.worldTransform()
        off = QPointF(world.dx(), world.dy())
        seen = QRectF(widget.rect()).translated(-off)
        whole = QTransform.fromScale(world.m11(), world.m22()).mapRect(self._box)
        ratio = painter.deviceTransform().m11() / world.m11()
        ready = self._ready
        if ready is None or not self._serves(ready, backdrop, world.m11(), ratio, seen.intersected(whole)):
            wide, high = seen.width() * _SPARE, seen.height() * _SPARE
            box = seen.adjusted(-wide, -high, wide, high).intersected(whole).toAlignedRect()
            if box.isEmpty():
                return
            ready = self._ready = _made_ready(backdrop, world.m11(), ratio, box)
        painter.setWorldTransform(QTransform())
        painter.drawPixmap(QPointF(ready.box.topLeft()) + off, ready.pixels)

    def _serves(self, ready: _Ready, backdrop: Backdrop, scale: float, ratio: float, seen: QRectF) -> bool:
        same = (ready.scale, ready.ratio) == (scale, ratio) and _lies_alike(ready.backdrop, backdrop)
        return same and QRectF(ready.box).contains(seen)


def _lies_alike(a: Backdrop, b: Backdrop) -> bool:
    """Whether two show the same pixels in the same place, however dimmed."""
    return a is b or (
        a.picture is b.picture
        and (a.centre, a.metres_per_pixel, a.angle_deg) == (b.centre, b.metres_per_pixel, b.angle_deg)
    )


def _made_ready(backdrop: Backdrop, scale: float, ratio: float, box: QRect) -> _Ready:
    pixels = QPixmap(box.size() * ratio)
    pixels.setDevicePixelRatio(ratio)
    clear = levels(backdrop.picture)[0].hasAlphaChannel() or backdrop.angle_deg % 90 != 0
    pixels.fill(Qt.GlobalColor.transparent if clear else Qt.GlobalColor.white)
    painter = QPainter(pixels)
    try:
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.translate(-box.topLeft())
        painter.scale(scale, scale)
        _draw(painter, backdrop, scale * ratio)
    finally:
        painter.end()
    return _Ready(backdrop, scale, ratio, box, pixels)


def _draw(painter: QPainter, backdrop: Backdrop, scale: float) -> None:
    """Draw the picture on the plan from the level that has no more than four times the pixels needed.

    ``scale`` is device pixels per centimetre.
    """
    images = levels(backdrop.picture)
    per_pixel = max(backdrop.metres_per_pixel * CM * scale, 1e-9)
    level = min(max(floor(log2(1 / per_pixel)), 0), len(images) - 1)
    wide, high = (side * CM for side in backdrop.size_m)
    painter.save()
    painter.translate(backdrop.centre[0] * CM, backdrop.centre[1] * CM)
    painter.rotate(backdrop.angle_deg)
    painter.drawImage(QRectF(-wide / 2, -high / 2, wide, high), images[level])
    painter.restore()
