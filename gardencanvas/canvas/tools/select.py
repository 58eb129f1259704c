"""The everyday tool: click, rubber band, move, turn, reshape."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

from gardencanvas.canvas.items.overlay import HandleItem
from gardencanvas.canvas.naming import named, translate
from gardencanvas.canvas.tools.band import BandGesture
from gardencanvas.canvas.tools.move import MoveGesture
from gardencanvas.canvas.tools.reshape import ReshapeGesture
from gardencanvas.canvas.tools.tool import Gesture, Pointer, Tool
from gardencanvas.canvas.tools.turn import TurnGesture
from gardencanvas.garden.ground import Bed, Fixture, Path
from gardencanvas.garden.planting import Planting

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_SHIFT = Qt.KeyboardModifier.ShiftModifier
_ALT = Qt.KeyboardModifier.AltModifier


class SelectTool(Tool):
    """Click selects, Shift adds; drag moves; from bare ground a drag selects what lies in it."""

    name = "select"

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._gesture: Gesture | None = None
        self._waiting: Gesture | None = None
        self._pressed: Pointer | None = None
        self._on_click: frozenset[str] | None = None

    def hint(self) -> str:
        return translate(
            "Canvas",
            "Click to select, drag to move, Alt+drag to copy, double click for single plants. "
            "A bed moves once it is selected.",
        )

    def begin(self, pointer: Pointer) -> None:
        desk = self.view.desk
        self._pressed = pointer
        self._gesture = self._waiting = self._on_click = None
        handle = self.view.handle_at(pointer.pixel)
        if handle is not None:
            self._waiting = self._for_handle(handle)
            return
        item_id = self.view.plan.item_at(pointer.at, free=True)
        if item_id is None:
            self._tell_locked(pointer)
            if not pointer.holds(_SHIFT):
                self._on_click = frozenset()
            self._waiting = BandGesture(self.view)
        elif pointer.holds(_SHIFT):
            desk.select(desk.selection ^ {item_id})
        elif item_id in desk.selection:
            self._on_click = frozenset({item_id})
            self._waiting = MoveGesture(self.view, copy=pointer.holds(_ALT))
        else:
            self._press_other(item_id, pointer)

    def _tell_locked(self, pointer: Pointer) -> None:
        """Say of a locked thing under the mouse why it is not picked."""
        desk = self.view.desk
        item_id = self.view.plan.item_at(pointer.at)
        item = desk.garden.find(desk.layout_id, item_id) if item_id is not None else None
        if item is not None:
            told = translate("Canvas", "{0} is locked. Select it in the outline, or right-click to unlock.")
            self.view.say(told.format(named([item], desk.catalogue)))

    def _press_other(self, item_id: str, pointer: Pointer) -> None:
        """Press on something that is not selected: ground is selected by a click, the rest at once."""
        desk = self.view.desk
        item = desk.garden.find(desk.layout_id, item_id)
        if isinstance(item, (Bed, Path, Fixture)) and not pointer.holds(_ALT):
            self._on_click = frozenset({item_id})
            self._waiting = BandGesture(self.view)
        else:
            desk.select({item_id})
            self._waiting = MoveGesture(self.view, copy=pointer.holds(_ALT))

    def _for_handle(self, handle: HandleItem) -> Gesture:
        if handle.name == "turn":
            return TurnGesture(self.view)
        return ReshapeGesture(self.view, handle.name)

    def move(self, pointer: Pointer) -> None:
        if self._gesture is not None:
            self._gesture.move(pointer)
            return
        if self._waiting is None or self._pressed is None:
            return
        moved = (pointer.pixel - self._pressed.pixel).manhattanLength()
        if moved >= QApplication.startDragDistance() // 2:
            self._gesture, self._waiting = self._waiting, None
            self._gesture.begin(self._pressed)
            self._gesture.move(pointer)

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        if self._gesture is not None:
            self._gesture.end(pointer)
        else:
            if self._on_click is not None:
                self.view.desk.select(self._on_click)
        self._gesture = self._waiting = self._pressed = None

    def cancel(self) -> None:
        gesture, self._gesture = self._gesture, None
        if gesture is not None:
            gesture.cancel()
        self._waiting = self._pressed = self._on_click = None

    def hover(self, pointer: Pointer) -> None:
        cursor = self.cursor
        if self.view.handle_at(pointer.pixel) is not None:
            cursor = Qt.CursorShape.PointingHandCursor
        elif self.view.desk.selection and self._on_selection(pointer):
            cursor = Qt.CursorShape.SizeAllCursor
        self.view.viewport().setCursor(cursor)

    def _on_selection(self, pointer: Pointer) -> bool:
        return self.view.plan.item_at(pointer.at, free=True) in self.view.desk.selection

    def double_click(self, pointer: Pointer) -> None:
        desk = self.view.desk
        item_id = self.view.plan.item_at(pointer.at, free=True)
        item = desk.garden.find(desk.layout_id, item_id) if item_id is not None else None
        if isinstance(item, Planting) and not item.locked:
            self.cancel()
            desk.select({item.id})
            self.view.set_tool("stations")

    def key(self, event: QKeyEvent) -> bool:
        busy = self._gesture is not None or self._pressed is not None
        if event.key() == Qt.Key.Key_Escape and busy:
            self.cancel()
            return True
        return self._gesture is not None and self._gesture.key(event)
