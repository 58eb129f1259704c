"""What all items of the plan have in common."""

from math import ceil, log2
from typing import Any

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainterPath
from PySide6.QtWidgets import QGraphicsItem

from gardencanvas.canvas.look import Look

PAD_PX = 8.0  # lines have their width in pixels: the rectangle must hold them at any zoom


def pad_cm(scale: float) -> float:
    """Room for lines in centimetres, in steps of two so that few zooms change it."""
    return float(2.0 ** ceil(log2(PAD_PX / scale)))


class Part(QGraphicsItem):
    """An item with an outline in centimetres and lines in pixels.

    ``rest`` is the outline's box; the bounding rectangle is that and a margin of pixels, so it must be
    told when the zoom changes (``rescale``).
    """

    value: Any  # the garden value it shows

    def __init__(self, look: Look, z: float) -> None:
        super().__init__()
        self.look = look
        self.outline = QPainterPath()
        self.rest = QRectF()
        self._pad = pad_cm(look.scale)
        self.setZValue(z)

    def put(self, value: Any) -> None:
        """Show this value in the place of the one before."""
        raise TypeError(f"{type(self).__name__} shows no value")

    def _take(self, outline: QPainterPath, more: QRectF | None = None) -> None:
        """Change the outline, and the box with it."""
        self.prepareGeometryChange()
        self.outline = outline
        self.rest = outline.boundingRect() if more is None else outline.boundingRect().united(more)
        self.update()

    def rescale(self) -> None:
        """Follow the zoom."""
        pad = pad_cm(self.look.scale)
        if pad != self._pad:
            self.prepareGeometryChange()
            self._pad = pad

    def boundingRect(self) -> QRectF:
        pad = self._pad
        return self.rest.adjusted(-pad, -pad, pad, pad)

    def shape(self) -> QPainterPath:
        return self.outline
