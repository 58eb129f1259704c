"""What is dragged out of one plan and over another: a copy in the other's layout."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import named, translate
from gardencanvas.canvas.tools.tool import Pointer
from gardencanvas.garden.carrying import carried_over
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


class CarryOver:
    """A ghost of dragged items on the other plan, judged there; nothing is committed before ``put_down``."""

    def __init__(self, source: PlanView, items: Collection[Item], box: QRectF, grip: QPointF) -> None:
        self._source = source
        self._items = list(items)
        self._box = box  # round the items, in centimetres
        self._grip = grip  # where they were taken hold of
        self._target: PlanView | None = None
        self._after: Garden | None = None
        self._ids: frozenset[str] = frozenset()

    @property
    def over(self) -> bool:
        """Whether the mouse is over the other plan now."""
        return self._target is not None

    def show(self, target: PlanView, pointer: Pointer) -> None:
        """Lay the ghost where the mouse is on the other plan, and say its verdict there."""
        if self._target is None:
            self._source.settle()
            self._source.hush()
            self._source.viewport().setCursor(Qt.CursorShape.DragCopyCursor)
        self._target = target
        by = target.snapping(pointer).shift(self._box, pointer.at - self._grip)
        desk = target.desk
        ids = [i.id for i in self._items]
        try:
            after, there = carried_over(
                desk.garden,
                self._source.desk.layout_id,
                desk.layout_id,
                ids,
                round(by.x() / CM, 6),
                round(by.y() / CM, 6),
            )
        except Refusal as refusal:
            self._hide()
            desk.refused.emit(why_refused(refusal))
            return
        self._after, self._ids = after, there
        target.plan.ghosts = there
        target.try_out(after)
        target.speak_of(there, pointer)

    def put_down(self) -> bool:
        """Commit the copy where it was shown; False when there is none."""
        target, after, ids = self._target, self._after, self._ids
        self._forget()
        if target is None or after is None:
            return False
        text = translate("Canvas", "Copy {0} into {1}").format(
            named(self._items, target.desk.catalogue), target.desk.layout.name
        )
        if target.commit(after, text):
            target.desk.select(ids)
            target.setFocus(Qt.FocusReason.MouseFocusReason)
            return True
        target.desk.refused.emit(translate("Canvas", "It is there already, just so."))
        return False

    def leave(self) -> None:
        """The mouse has left the other plan, or the drag was given up: that plan is as it was."""
        if self._target is not None:
            self._hide()
            self._forget()

    def _hide(self) -> None:
        if self._target is not None:
            self._target.plan.ghosts = frozenset()
            self._target.hush()
            self._target.settle()
        self._after = None

    def _forget(self) -> None:
        if self._target is not None:
            self._target.plan.ghosts = frozenset()
            self._target.hush()
            self._source.viewport().setCursor(self._source.tool.cursor)
        self._target = self._after = None
