"""Which handles the selection offers, and where."""

from collections.abc import Collection

from PySide6.QtCore import QPointF

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.shapes import span
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.handles import handles_of

_TURN_PX = 20.0  # the turning handle stands this far from the selection's upper right corner
_MANY = 60


def handles_for(
    garden: Garden, layout_id: str, ids: Collection[str], scale: float
) -> list[tuple[str, QPointF]]:
    """Names and places in centimetres: one to turn all, and those to reshape a single item."""
    if not ids or len(ids) > _MANY:
        return []
    items = [i for x in sorted(ids) if (i := garden.find(layout_id, x)) is not None]
    free = [i for i in items if not getattr(i, "locked", False)]
    if not free:
        return []
    box = span(free)
    found = [("turn", box.topRight() + QPointF(_TURN_PX, -_TURN_PX) / scale)]
    if len(items) == 1:
        found += [(name, QPointF(x * CM, y * CM)) for name, (x, y) in handles_of(items[0])]
    return found
