"""Turning what is selected by its handle."""

from __future__ import annotations

from math import atan2, degrees
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import named, translate
from gardencanvas.canvas.shapes import span
from gardencanvas.canvas.tools.tool import Gesture, Pointer
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

STEP_DEG = 15.0
_FINE_DEG = 1.0


class TurnGesture(Gesture):
    """Turn the selection about its middle, in steps of 15°; with Ctrl by single degrees."""

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        desk = view.desk
        self._items: list[Item] = [
            i for x in sorted(desk.selection) if (i := desk.garden.find(desk.layout_id, x)) is not None
        ]
        self._about: QPointF = span(self._items).center()
        self._from = 0.0
        self._after: Garden | None = None

    def _angle(self, pointer: Pointer) -> float:
        away = pointer.at - self._about
        return degrees(atan2(away.y(), away.x()))

    def begin(self, pointer: Pointer) -> None:
        self._from = self._angle(pointer)

    def move(self, pointer: Pointer) -> None:
        step = _FINE_DEG if pointer.holds(Qt.KeyboardModifier.ControlModifier) else STEP_DEG
        by = round((self._angle(pointer) - self._from) / step) * step % 360
        desk = self.view.desk
        about = self._about.x() / CM, self._about.y() / CM
        try:
            after = edits.turn(desk.garden, desk.layout_id, {i.id for i in self._items}, by, about)
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return
        self._after = after
        self.view.try_out(after)
        self.view.say(translate("Canvas", "Turned by {0}°").format(round(by if by <= 180 else by - 360)))

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        after, self._after = self._after, None
        if after is None:
            self.view.settle()
        else:
            text = translate("Canvas", "Turn {0}").format(named(self._items, self.view.desk.catalogue))
            self.view.commit(after, text)

    def cancel(self) -> None:
        self._after = None
        self.view.settle()
