"""Paper ground and grid behind the plan."""

from math import floor

from PySide6.QtCore import QLineF, QRectF
from PySide6.QtGui import QColor, QPainter

from gardencanvas.canvas.look import Look

_FOOT_CM = 30.48
_CLOSEST = 14.0  # pixels between lines, at least


def spacings(scale: float, imperial: bool) -> tuple[float, float]:
    """Distance between fine and between strong lines in centimetres."""
    unit = _FOOT_CM if imperial else 100.0
    fine = unit / 12 if imperial else unit / 20
    ladder = [fine, unit / 4, unit / 2, unit] if imperial else [fine, unit / 10, unit / 2, unit]
    ladder += [unit * n for n in (5, 10, 50, 100, 500)]
    index = next((i for i, step in enumerate(ladder) if step * scale >= _CLOSEST), len(ladder) - 1)
    strong = unit if ladder[index] < unit else ladder[min(index + 1, len(ladder) - 1)]
    return ladder[index], strong


def draw_paper(painter: QPainter, look: Look, box: QRectF, *, grid: bool) -> None:
    """Fill the box with paper and draw the grid over it."""
    painter.fillRect(box, QColor(look.colours.paper))
    if not grid:
        return
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    fine, strong = spacings(look.scale, look.measure.units == "imperial")
    for step, colour in ((fine, look.colours.grid), (strong, look.colours.grid_strong)):
        if step * look.scale < _CLOSEST:
            continue
        painter.setPen(look.line(colour, 1.0))
        painter.drawLines(_lines(box, step))


def _lines(box: QRectF, step: float) -> list[QLineF]:
    upright = range(floor(box.left() / step), floor(box.right() / step) + 1)
    level = range(floor(box.top() / step), floor(box.bottom() / step) + 1)
    return [QLineF(i * step, box.top(), i * step, box.bottom()) for i in upright] + [
        QLineF(box.left(), i * step, box.right(), i * step) for i in level
    ]
