"""Working on single plants of one planting: leave one out, put it back, move it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

from gardencanvas.canvas.items.places import PlacesItem
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.stations import nearest_station, with_place, with_station_at, without_stations
from gardencanvas.garden.value import Point
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_CATCH_PX = 14
_ARROWS = {
    Qt.Key.Key_Left: (-0.01, 0.0),
    Qt.Key.Key_Right: (0.01, 0.0),
    Qt.Key.Key_Up: (0.0, -0.01),
    Qt.Key.Key_Down: (0.0, 0.01),
}


class StationsTool(Tool):
    """Click a plant to leave it out, its empty place to put it back; drag one to move it.

    With keys: Tab and Shift+Tab from plant to plant, Space or Delete leaves it out, arrows move it.
    """

    name = "stations"
    takes_space = True
    cursor = Qt.CursorShape.PointingHandCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._item = PlacesItem(view.look)
        view.plan.addItem(self._item)
        self._id: str | None = None
        self._at = 0
        self._pressed: QPoint | None = None
        self._dragged = False
        self._after: Garden | None = None
        view.desk.changed.connect(self._follow)

    def hint(self) -> str:
        return translate(
            "Canvas",
            "Click a plant to leave it out, an empty place to put it back, drag one to move it. "
            "Tab walks, Space leaves out, arrows move, Esc ends.",
        )

    @property
    def planting(self) -> Planting | None:
        """The planting worked on; None where none is selected, or it is locked."""
        desk = self.view.desk
        found = desk.garden.find(desk.layout_id, self._id) if self._id is not None else None
        return found if isinstance(found, Planting) and not found.locked else None

    def enter(self) -> None:
        chosen = sorted(self.view.desk.selection)
        self._id = chosen[0] if len(chosen) == 1 else None
        self._at = 0
        self._show()
        planting = self.planting
        if planting is not None and planting.pattern.spacing_m * CM * self.view.look.scale < _CATCH_PX:
            self.view.zoom_to({planting.id})  # single plants must lie apart to be caught
        if planting is None:
            self.view.say(translate("Canvas", "Select one planting that is not locked first."))

    def cancel(self) -> None:
        self._pressed = self._after = None
        self._dragged = False
        self._item.put(None)
        self.view.settle()

    def leave(self) -> None:
        self._id = None
        self.cancel()

    def _show(self) -> None:
        planting = self.planting
        if planting is not None:
            self._at = min(self._at, planting.pattern.count - 1)
        self._item.put(planting, self._at)

    def _follow(self, *_: object) -> None:
        if self._id is not None:
            self._show()

    # mouse

    def begin(self, pointer: Pointer) -> None:
        planting = self.planting
        if planting is None:
            self.view.set_tool("select")
            return
        self._pressed, self._dragged = pointer.pixel, False
        self._at = nearest_station(planting, pointer.plan)
        self._show()

    def move(self, pointer: Pointer) -> None:
        planting = self.planting
        if planting is None or self._pressed is None:
            return
        far = (pointer.pixel - self._pressed).manhattanLength() >= QApplication.startDragDistance() // 2
        if not self._dragged and (not far or not self._catches(planting.stations[self._at], self._pressed)):
            return
        self._dragged = True
        at = self.view.snapping(pointer).point(pointer.at)
        self._try(planting, (round(at.x() / CM, 6), round(at.y() / CM, 6)), pointer)

    def _try(self, planting: Planting, to: Point, pointer: Pointer) -> None:
        desk = self.view.desk
        try:
            moved = with_station_at(planting, self._at, to)
            self._after = edits.replace(desk.garden, desk.layout_id, [moved])
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return
        self.view.try_out(self._after)
        self._item.put(moved, self._at)
        self.view.speak_of([planting.id], pointer)

    def end(self, pointer: Pointer) -> None:
        planting, pressed = self.planting, self._pressed
        self._pressed = None
        self.view.hush()
        if planting is None or pressed is None:
            return
        if self._dragged:
            after, self._after = self._after, None
            self._dragged = False
            if after is not None:
                self.view.commit(after, translate("Canvas", "Move one plant"))
            return
        self._click(planting, pointer)

    def _click(self, planting: Planting, pointer: Pointer) -> None:
        if self._catches(planting.stations[self._at], pointer.pixel):
            self._leave_out(planting)
            return
        places = planting.pattern.all_places
        for number in planting.pattern.left_out:
            if number < len(places) and self._catches(places[number], pointer.pixel):
                self._commit(with_place(planting, number), translate("Canvas", "Put one plant back"))
                return
        self.view.set_tool("select")

    def _catches(self, place: np.ndarray, pixel: QPoint) -> bool:
        x, y = place * CM
        return (self.view.mapFromScene(x, y) - pixel).manhattanLength() <= _CATCH_PX

    def _leave_out(self, planting: Planting) -> None:
        try:
            after = without_stations(planting, [self._at])
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return
        self._commit(after, translate("Canvas", "Leave one plant out"))

    def _commit(self, planting: Planting, text: str) -> None:
        desk = self.view.desk
        self.view.commit(edits.replace(desk.garden, desk.layout_id, [planting]), text)

    # keys

    def key(self, event: QKeyEvent) -> bool:
        planting = self.planting
        key = Qt.Key(event.key())
        if planting is None:
            return False
        if key in (Qt.Key.Key_Tab, Qt.Key.Key_Backtab):
            self._at = (self._at + (-1 if key == Qt.Key.Key_Backtab else 1)) % planting.pattern.count
            self._show()
            self.view.say(
                translate("Canvas", "Plant {0} of {1}").format(self._at + 1, planting.pattern.count)
            )
        elif key in (Qt.Key.Key_Space, Qt.Key.Key_Delete):
            self._leave_out(planting)
        elif key in _ARROWS:
            x, y = planting.stations[self._at]
            dx, dy = _ARROWS[key]
            moved = with_station_at(planting, self._at, (float(x) + dx, float(y) + dy))
            self._commit(moved, translate("Canvas", "Move one plant"))
        elif key == Qt.Key.Key_Escape and self._pressed is not None:
            self.cancel()
            self._show()
        else:
            return False
        return True
