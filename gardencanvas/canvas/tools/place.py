"""Carrying a crop from the seed tin over the plan, and putting it down."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QKeyEvent

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.carried import Carried
from gardencanvas.canvas.tools.offers import BedOffers
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laid import Mode as Laying
from gardencanvas.garden.laid import laid
from gardencanvas.garden.pattern import Pattern
from gardencanvas.garden.places import bed_at
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import Point, new_id
from gardencanvas.garden.volunteers import came_up
from gardencanvas.season.usual_start import usual_start
from gardencanvas.words.plain import crop_name
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

Mode = Laying | Literal["between"]
_MODES: dict[int, Mode] = {
    Qt.Key.Key_1: "rows",
    Qt.Key.Key_2: "block",
    Qt.Key.Key_3: "single",
    Qt.Key.Key_4: "strip",
    Qt.Key.Key_5: "staggered",
    Qt.Key.Key_6: "ring",
    Qt.Key.Key_7: "edging",
    Qt.Key.Key_8: "drift",
    Qt.Key.Key_9: "between",
}
_STEPS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}
_WIDER = {Qt.Key.Key_Plus: 0.01, Qt.Key.Key_Equal: 0.01, Qt.Key.Key_Minus: -0.01}
_STEP_CM, _STRIDE_CM = 5.0, 50.0


class PlaceTool(Tool):
    """A ghost of the crop follows the mouse, judged live; release or Enter puts it down."""

    name = "place"
    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self.mode: Mode = "rows"
        self._carried: Carried | None = None
        self.at = QPointF()
        self._after: Garden | None = None
        self._where: Bed | None = None
        self._offers = BedOffers(view)

    def hint(self) -> str:
        return translate(
            "Canvas",
            "1 row, 2 block, 3 single, 4 strip, 5 staggered, 6 ring, 7 edging, 8 drift, 9 between the rows. "
            "0: it came up by itself. + and − space it, arrows move it, Enter puts it down, Esc gives up.",
        )

    @property
    def carrying(self) -> bool:
        """Whether there is a crop on the mouse."""
        return self._carried is not None

    @property
    def ghost_id(self) -> str | None:
        """Id of the planting that a drop would make."""
        return self._carried.planting_id if self._carried is not None else None

    def pick_up(self, crop_id: str, variety_id: str | None, mode: Mode) -> None:
        """Take a crop on the mouse; raises ``UnknownCrop``."""
        desk = self.view.desk
        crop = desk.catalogue.resolve(crop_id, variety_id)
        layout = desk.layout
        start = usual_start(desk.garden.site, crop, layout.year, layout.first_month)
        self.mode = mode
        self._carried = Carried(crop, crop_id, variety_id, start, new_id("planting"))

    def came_up(self, *, on: bool) -> None:
        """Mark what is carried as come up by itself about the shown date, or as started by the grower."""
        carried, desk = self._carried, self.view.desk
        if carried is None:
            return
        layout = desk.layout
        start = usual_start(desk.garden.site, carried.crop, layout.year, layout.first_month)
        self._carried = replace(carried, start=came_up(desk.on) if on else start)
        self.show_at(self.at, self.view.mapFromScene(self.at))

    @property
    def _volunteer(self) -> bool:
        return self._carried is not None and self._carried.start.kind == "volunteer"

    # what it would become

    def planting_at(self, point: Point) -> Planting | None:
        """The planting a drop at a plan point would make; None where it has no room at all."""
        carried = self._carried
        if carried is None:
            return None
        self._where = bed_at(self.view.desk.layout, point)
        return carried.planting(self._pattern(carried, self._where, point))

    def _pattern(self, carried: Carried, bed: Bed | None, point: Point) -> Pattern:
        """What it becomes at a point; between the rows of a bed, the nearest of its free places."""
        layout = self.view.desk.layout
        if self.mode != "between":
            self._offers.clear()
            return laid(layout, self.mode, point, carried.room, self.view.snap_step_m)
        if bed is not None:
            self._offers.show(bed, carried)
            place = self._offers.nearest(point)
            if place is not None:
                return place.pattern
        return laid(layout, "rows", point, carried.room, self.view.snap_step_m)

    def show_at(self, at: QPointF, pixel: QPoint) -> None:
        """Lay the ghost at a place and judge it."""
        self.at = at
        carried, desk = self._carried, self.view.desk
        if carried is None:
            return
        try:
            planting = self.planting_at((at.x() / CM, at.y() / CM))
            if planting is None:
                return
            after = edits.add(desk.garden, desk.layout_id, [planting])
        except Refusal as refusal:
            self.hide()
            self.view.say(why_refused(refusal))
            return
        self._after = after
        self.view.plan.ghosts = frozenset({carried.planting_id})
        self.view.try_out(after)
        self.view.speak_of([carried.planting_id], Pointer(at, pixel))

    def put_down(self) -> bool:
        """Commit the ghost where it is; False when there is none."""
        carried, after = self._carried, self._after
        self._forget()
        if carried is None or after is None:
            self.view.settle()
            return False
        name = crop_name(self.view.desk.catalogue, carried.crop_id, carried.variety)
        texts: dict[Mode, str] = {
            "rows": translate("Canvas", "Add row of {0}"),
            "block": translate("Canvas", "Add block of {0}"),
            "single": translate("Canvas", "Add one {0}"),
            "strip": translate("Canvas", "Add strip of {0}"),
            "staggered": translate("Canvas", "Add staggered block of {0}"),
            "ring": translate("Canvas", "Add ring of {0}"),
            "edging": translate("Canvas", "Add edging of {0}"),
            "drift": translate("Canvas", "Add drift of {0}"),
            "between": translate("Canvas", "Add {0} between the rows"),
        }
        text = texts[self.mode]
        if carried.start.kind == "volunteer":
            text = translate("Canvas", "Mark {0} that came up by itself")
        done = self.view.commit(after, text.format(name))
        if done:
            self.view.desk.select({carried.planting_id})
            if self._where is None:
                self.view.say(translate("Canvas", "{0} stands outside any bed.").format(name))
        return done

    def hide(self) -> None:
        """Take the ghost off the plan but keep carrying: the mouse has left the plan."""
        self._after = None
        self._offers.clear()
        self.view.hush()
        self.view.plan.ghosts = frozenset()
        self.view.settle()

    def _forget(self) -> None:
        self._carried = self._after = None
        self._offers.clear()
        self.view.hush()
        self.view.plan.ghosts = frozenset()

    # mouse and keys

    def hover(self, pointer: Pointer) -> None:
        self.show_at(pointer.at, pointer.pixel)

    def begin(self, pointer: Pointer) -> None:
        self.show_at(pointer.at, pointer.pixel)

    def move(self, pointer: Pointer) -> None:
        self.show_at(pointer.at, pointer.pixel)

    def end(self, pointer: Pointer) -> None:
        again = pointer.holds(Qt.KeyboardModifier.ShiftModifier)
        carried = self._carried
        self.show_at(pointer.at, pointer.pixel)
        self.put_down()
        if again and carried is not None:
            self.pick_up(carried.crop_id, carried.variety, self.mode)
            if carried.start.kind == "volunteer":
                self.came_up(on=True)
        else:
            self.view.set_tool("select")

    def key(self, event: QKeyEvent) -> bool:
        key = Qt.Key(event.key())
        if key in _MODES:
            self.mode = _MODES[key]
        elif key == Qt.Key.Key_0:
            self.came_up(on=not self._volunteer)
            return True
        elif key in _WIDER and self._carried is not None:
            self._carried = self._carried.spaced(_WIDER[Qt.Key(key)])
        elif key in _STEPS:
            stride = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            step = _STRIDE_CM if stride else _STEP_CM
            self.at += QPointF(*_STEPS[key]) * step
            self.view.ensure_seen(self.at)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.put_down()
            self.view.set_tool("select")
            return True
        elif key == Qt.Key.Key_Escape:
            self.view.set_tool("select")
            return True
        else:
            return False
        self.show_at(self.at, self.view.mapFromScene(self.at))
        return True

    def cancel(self) -> None:
        if self._carried is not None:
            self._forget()
            self.view.settle()
