"""Scaling the background picture: two points on it are clicked and their distance is typed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QKeyEvent, QPainterPath

from gardencanvas.canvas.items.overlay import Note, SketchItem
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.canvas.typed import ALLOWED, length_m
from gardencanvas.garden import laying_under
from gardencanvas.garden.backdrop import apart
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.value import Point
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_CROSS_PX = 9.0
_LONGEST = 24  # characters


class ScaleBackdropTool(Tool):
    """Click two points, type how far they lie apart on the ground, Enter; the picture is then locked."""

    name = "backdrop scale"
    takes_space = True
    takes_letters = True
    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self._sketch = SketchItem(view.look)
        view.plan.addItem(self._sketch)
        self._points: list[Point] = []
        self._to: Point | None = None
        self._typed = ""

    def hint(self) -> str:
        backdrop = self.view.desk.garden.backdrop
        if backdrop is None:
            return translate("Canvas", "There is no background picture yet.")
        if backdrop.locked:
            return translate("Canvas", "The background picture is locked; unlock it first.")
        if not self._points:
            return translate("Canvas", "Click a point of the picture whose distance to another you know.")
        if len(self._points) == 1:
            return translate("Canvas", "Click the second point. Backspace takes the first one back.")
        return translate(
            "Canvas", "Type how far the two points lie apart, such as 4.20 m or 13′ 9″, and press Enter."
        )

    def _usable(self) -> bool:
        backdrop = self.view.desk.garden.backdrop
        return backdrop is not None and not backdrop.locked

    def begin(self, pointer: Pointer) -> None:
        if self._usable():
            if len(self._points) == 2:
                self._points, self._typed = [], ""
            self._points.append(pointer.plan)
            self._show()
        self.view.say(self.hint())

    def hover(self, pointer: Pointer) -> None:
        if len(self._points) == 1:
            self._to = pointer.plan
            self._show()

    def move(self, pointer: Pointer) -> None:
        self.hover(pointer)

    def _show(self) -> None:
        ends = [*self._points, self._to] if len(self._points) == 1 else list(self._points)
        shown = [QPointF(p[0] * CM, p[1] * CM) for p in ends if p is not None]
        path = QPainterPath()
        arm = _CROSS_PX / self.view.look.scale
        for at in shown:
            path.moveTo(at - QPointF(arm, 0))
            path.lineTo(at + QPointF(arm, 0))
            path.moveTo(at - QPointF(0, arm))
            path.lineTo(at + QPointF(0, arm))
        notes = []
        if len(shown) == 2:
            path.moveTo(shown[0])
            path.lineTo(shown[1])
        if len(self._points) == 2:
            text = f"{self._typed}▏" if self._typed else translate("Canvas", "= ? (type it)")
            notes = [Note((shown[0] + shown[1]) / 2 - QPointF(0, 18 / self.view.look.scale), text)]
        self._sketch.put(path, notes, filled=False)

    def key(self, event: QKeyEvent) -> bool:
        if not self._points:
            return False
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._finish()
        elif event.key() == Qt.Key.Key_Escape:
            self.cancel()
            self.view.say(self.hint())
        elif event.key() == Qt.Key.Key_Backspace:
            self._take_back()
        elif len(self._points) == 2 and event.text() and set(event.text()) <= ALLOWED:
            self._typed = (self._typed + event.text())[:_LONGEST]
            self._show()
        else:
            return False
        return True

    def _take_back(self) -> None:
        if self._typed:
            self._typed = self._typed[:-1]
        else:
            self._points.pop()
        self._show()
        self.view.say(self.hint())

    def _finish(self) -> None:
        distance = length_m(self._typed, self.view.look.measure.units)
        if len(self._points) < 2 or distance is None:
            if len(self._points) == 2 and self._typed:
                unread = translate("Canvas", "“{0}” is no length. Write 4.20 m, 420 cm or 13′ 9″.")
                self.view.say(unread.format(self._typed))
            else:
                self.view.say(self.hint())
            return
        a, b = self._points
        try:
            after = laying_under.scaled(self.view.desk.garden, a, b, distance)
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return
        before = self.view.look.measure.large(apart(a, b))
        self.view.set_tool("select")
        self.view.commit(after, translate("Canvas", "Scale the background picture"))
        self.view.say(
            translate(
                "Canvas",
                "The two points lie {0} apart now, {1} before. The picture is locked so that it stays there.",
            ).format(self.view.look.measure.large(distance), before)
        )

    def cancel(self) -> None:
        self._points, self._to, self._typed = [], None, ""
        self._sketch.clear()
