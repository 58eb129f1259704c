"""Changing the shape of one thing by its handles, or by typing the measure while one is held."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QKeyEvent

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import named, translate
from gardencanvas.canvas.tools.tool import Gesture, Pointer
from gardencanvas.canvas.typed import ALLOWED, small_m
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.handles import measure_of, reshaped, with_measure
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import plants_counted
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


class ReshapeGesture(Gesture):
    """Drag one handle of the one selected thing; digits typed meanwhile make its measure exact."""

    def __init__(self, view: PlanView, handle: str) -> None:
        super().__init__(view)
        desk = view.desk
        (item_id,) = desk.selection
        self._item = desk.garden.find(desk.layout_id, item_id)
        self._handle = handle
        self._pointer: Pointer | None = None
        self._typed = ""
        self._after: Garden | None = None

    def move(self, pointer: Pointer) -> None:
        self._pointer = pointer
        desk = self.view.desk
        if self._item is None:
            return
        try:
            item = self._reshaped(self._item, pointer)
            after = edits.replace(desk.garden, desk.layout_id, [item])
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return
        self._after = after
        self.view.try_out(after)
        self.view.speak_of([item.id], pointer)
        self.view.say(self._words(item))

    def _reshaped(self, item: Item, pointer: Pointer) -> Item:
        metres = small_m(self._typed, self.view.look.measure.units)
        if metres is not None:
            return with_measure(item, self._handle, metres)
        at: QPointF = self.view.snapping(pointer, without={item.id}).point(pointer.at)
        return reshaped(item, self._handle, (round(at.x() / CM, 6), round(at.y() / CM, 6)))

    def _words(self, item: Item) -> str:
        """What it has become: its measure, and how many plants that are."""
        parts = []
        metres = measure_of(item, self._handle)
        if metres is not None:
            parts.append(self.view.look.measure.large(metres))
        if isinstance(item, Planting):
            parts.append(plants_counted(item.plants))
        if self._typed:
            parts.append(translate("Canvas", "typed: {0}").format(self._typed))
        elif metres is not None:
            parts.append(translate("Canvas", "type a measure to make it exact"))
        return " · ".join(parts)

    def key(self, event: QKeyEvent) -> bool:
        """Take digits of a measure while the handle is held; True when the key was of use."""
        if event.key() == Qt.Key.Key_Backspace and self._typed:
            self._typed = self._typed[:-1]
        elif event.text() and set(event.text()) <= ALLOWED and len(self._typed) < 16:
            self._typed += event.text()
        else:
            return False
        if self._pointer is not None:
            self.move(self._pointer)
        return True

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        self.view.hush()
        after, self._after = self._after, None
        if after is None or self._item is None:
            self.view.settle()
            return
        text = translate("Canvas", "Reshape {0}").format(named([self._item], self.view.desk.catalogue))
        self.view.commit(after, text)

    def cancel(self) -> None:
        self._after = None
        self.view.hush()
        self.view.settle()
