"""Hatches of the verdict marks: tiles of slanting lines, drawn once per colour and pixel ratio."""

from functools import lru_cache

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPainter, QPen

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
        tone.setAlpha(120)
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
