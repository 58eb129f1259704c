"""One plant, drawn by its habit at any size: for stamps on screen and straight on paper."""

from collections.abc import Callable

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from gardencanvas.canvas.palette import Tint
from gardencanvas.canvas.symbols import bushy, leafy, upright
from gardencanvas.canvas.symbols.leaves import Brush
from gardencanvas.crops.model import Habit

_HABITS: dict[Habit, Callable[[Brush], None]] = {
    Habit.ROSETTE: leafy.rosette,
    Habit.HEAD: leafy.head,
    Habit.BLADE: leafy.blade,
    Habit.CARPET: leafy.carpet,
    Habit.UPRIGHT: upright.upright,
    Habit.TUFT: upright.tuft,
    Habit.FEATHERY: upright.feathery,
    Habit.SPIRE: upright.spire,
    Habit.BUSH: bushy.bush,
    Habit.SHRUB: bushy.shrub,
    Habit.CLIMBER: bushy.climber,
    Habit.SPRAWLER: bushy.sprawler,
}


def detail_for(radius_px: float) -> int:
    """How much to draw: 0 silhouette, 1 form, 2 outlines and veins, 3 everything."""
    if radius_px < 7:
        return 0
    if radius_px < 15:
        return 1
    return 2 if radius_px < 48 else 3


def draw_plant(
    painter: QPainter,
    habit: Habit,
    tint: Tint,
    centre: QPointF,
    radius: float,
    *,
    seed: int = 0,
    detail: int = 3,
    ripe: bool = False,
) -> None:
    """Paint one plant; ``radius`` in the painter's units, ``seed`` varies turn and leaves."""
    painter.save()
    painter.translate(centre)
    painter.scale(radius, radius)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if radius > 0:
        _HABITS[habit](Brush(painter, tint, seed, detail, ripe))
    painter.restore()
