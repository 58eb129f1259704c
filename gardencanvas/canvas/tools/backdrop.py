"""Moving and turning the background picture."""

from __future__ import annotations

from collections.abc import Callable
from math import atan2, degrees
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QKeyEvent, QPainterPath

from gardencanvas.canvas.items.overlay import HandleItem, SketchItem
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.shapes import closed
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.garden import laying_under
from gardencanvas.garden.backdrop import Backdrop
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_NEAR_PX = 12
_NUDGE_M, _STRIDE_M = 0.01, 0.10
_TURN_DEG, _FINE_DEG = 1.0, 0.1
_ARROWS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}


class BackdropTool(Tool):
    """Drag moves the picture, a drag at one of its corners turns it about its middle."""

    name = "backdrop"
    cursor = Qt.CursorShape.SizeAllCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._rim = SketchItem(view.look)
        view.plan.addItem(self._rim)
        self._grips: list[HandleItem] = []
        self._from: QPointF | None = None
        self._turning = False
        self._after: Garden | None = None
        view.desk.changed.connect(self._follow)

    def hint(self) -> str:
        return translate(
            "Canvas",
            "Drag the background picture, or a corner to turn it. "
            "Arrows move it by 1 cm, R turns it by 1°; Shift: by more, or back. Esc ends.",
        )

    @property
    def _backdrop(self) -> Backdrop | None:
        return self.view.desk.garden.backdrop

    def enter(self) -> None:
        self.view.desk.select(())  # arrows and R are the picture's now
        self._outline(self._backdrop)

    def leave(self) -> None:
        super().leave()
        self._outline(None)

    def _follow(self, _before: Garden, after: Garden) -> None:
        if self.view.tool is self:
            self._outline(after.backdrop)

    def _outline(self, backdrop: Backdrop | None) -> None:
        """Show the rim and the grips at the corners; none of a picture that is not there or not shown."""
        corners = backdrop.corners if backdrop is not None and backdrop.shown else ()
        self._rim.put(closed([corners]) if corners else QPainterPath(), filled=False)
        wanted = corners if backdrop is not None and not backdrop.locked else ()
        while len(self._grips) > len(wanted):
            self.view.plan.removeItem(self._grips.pop())
        while len(self._grips) < len(wanted):
            self._grips.append(HandleItem(self.view.look, "turn"))
            self.view.plan.addItem(self._grips[-1])
        for grip, (x, y) in zip(self._grips, wanted, strict=True):
            grip.setPos(QPointF(x * CM, y * CM))

    # mouse

    def _at_corner(self, pointer: Pointer) -> bool:
        offsets = [self.view.mapFromScene(g.pos()) - pointer.pixel for g in self._grips]
        return any(max(abs(o.x()), abs(o.y())) <= _NEAR_PX for o in offsets)

    def hover(self, pointer: Pointer) -> None:
        shape = Qt.CursorShape.PointingHandCursor if self._at_corner(pointer) else self.cursor
        self.view.viewport().setCursor(shape)

    def begin(self, pointer: Pointer) -> None:
        backdrop = self._backdrop
        self._after = None
        if backdrop is None:
            self.view.say(translate("Canvas", "There is no background picture yet."))
        elif backdrop.locked:
            self.view.say(translate("Canvas", "The background picture is locked; unlock it first."))
        elif self._at_corner(pointer) or backdrop.covers(pointer.plan):
            self._from, self._turning = pointer.at, self._at_corner(pointer)
        else:
            self.view.say(self.hint())

    def move(self, pointer: Pointer) -> None:
        backdrop = self._backdrop
        if self._from is None or backdrop is None:
            return
        garden = self.view.desk.garden
        try:
            after = self._turn(garden, backdrop, pointer) if self._turning else self._move(garden, pointer)
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return
        self._after = after
        self.view.try_out(after)
        self._outline(after.backdrop)

    def _move(self, garden: Garden, pointer: Pointer) -> Garden:
        by = pointer.at - (self._from or pointer.at)
        if pointer.holds(Qt.KeyboardModifier.ShiftModifier):
            by = QPointF(by.x(), 0) if abs(by.x()) > abs(by.y()) else QPointF(0, by.y())
        return laying_under.shifted(garden, round(by.x() / CM, 6), round(by.y() / CM, 6))

    def _turn(self, garden: Garden, backdrop: Backdrop, pointer: Pointer) -> Garden:
        middle = QPointF(backdrop.centre[0] * CM, backdrop.centre[1] * CM)
        a, b = (self._from or pointer.at) - middle, pointer.at - middle
        by = degrees(atan2(b.y(), b.x()) - atan2(a.y(), a.x()))
        step = _FINE_DEG if pointer.holds(Qt.KeyboardModifier.ControlModifier) else _TURN_DEG
        by = round(by / step) * step
        self.view.say(translate("Canvas", "Turned by {0}°").format(f"{(by + 180) % 360 - 180:.3g}"))
        return laying_under.turned(garden, by)

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        after, self._after, self._from = self._after, None, None
        if after is None:
            return
        name = (
            translate("Canvas", "Turn the background picture")
            if self._turning
            else translate("Canvas", "Move the background picture")
        )
        self.view.commit(after, name)
        self._outline(self._backdrop)

    # keys

    def key(self, event: QKeyEvent) -> bool:
        key = Qt.Key(event.key())
        shift = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in _ARROWS:
            step = _STRIDE_M if shift else _NUDGE_M
            dx, dy = _ARROWS[key]
            self._edit(
                translate("Canvas", "Move the background picture"),
                lambda garden: laying_under.shifted(garden, dx * step, dy * step),
            )
        elif key == Qt.Key.Key_R:
            self._edit(
                translate("Canvas", "Turn the background picture"),
                lambda garden: laying_under.turned(garden, -_TURN_DEG if shift else _TURN_DEG),
            )
        elif key == Qt.Key.Key_Escape and self._from is not None:
            self.cancel()
        else:
            return False
        return True

    def _edit(self, text: str, edit: Callable[[Garden], Garden]) -> None:
        try:
            self.view.commit(edit(self.view.desk.garden), text)
        except Refusal as refusal:
            self.view.say(why_refused(refusal))

    def cancel(self) -> None:
        self._from = self._after = None
        self.view.settle()
        if self.view.tool is self:
            self._outline(self._backdrop)
