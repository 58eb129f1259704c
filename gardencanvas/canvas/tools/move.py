"""Moving what is selected, or a copy of it."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import named, translate
from gardencanvas.canvas.shapes import span
from gardencanvas.canvas.tools.carry_over import CarryOver
from gardencanvas.canvas.tools.readout import Readout
from gardencanvas.canvas.tools.tool import Gesture, Pointer
from gardencanvas.garden import edits
from gardencanvas.garden.copies import add_shifted, copies_of
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


class MoveGesture(Gesture):
    """Drag the selection; with Alt at the press, a copy of it. The verdicts follow live.

    Dragged over another plan beside this one, it is a copy there that is shown and put down.
    """

    def __init__(self, view: PlanView, *, copy: bool) -> None:
        super().__init__(view)
        desk = view.desk
        self._items: list[Item] = [
            i for x in sorted(desk.selection) if (i := desk.garden.find(desk.layout_id, x)) is not None
        ]
        self._copies = copies_of(desk.garden, desk.layout_id, desk.selection) if copy else []
        self._copy = copy
        self._from = QPointF()
        self._box = QRectF()
        self._after: Garden | None = None
        self._readout: Readout | None = None
        self._without: Collection[str] = ()
        self._over: CarryOver | None = None

    def begin(self, pointer: Pointer) -> None:
        self._from = pointer.at
        self._box = span(self._items)
        if not self._copy:
            self._without = edits.with_contents(self.view.desk.layout, self.view.desk.selection)
        self._readout = Readout(self.view, self._items, self._without)
        self._over = CarryOver(self.view, self._items, self._box, self._from)

    def move(self, pointer: Pointer) -> None:
        if self._over is not None and self._goes_over(self._over, pointer):
            return
        by = pointer.at - self._from
        if pointer.holds(Qt.KeyboardModifier.ShiftModifier):
            by = QPointF(by.x(), 0) if abs(by.x()) > abs(by.y()) else QPointF(0, by.y())
        carried = {i.id for i in self._items}
        snapping = self.view.snapping(pointer, without=carried)
        by = snapping.shift(self._box, by)
        if self._readout is None:  # back from the other plan
            self._readout = Readout(self.view, self._items, self._without)
        by = self._readout.pulled(self._box, by, snapping.pull_cm if snapping.on else 0.0)
        self._readout.show(self._box.translated(by))
        self._try(by, carried, pointer)

    def _goes_over(self, over: CarryOver, pointer: Pointer) -> bool:
        """Whether the mouse has left this plan towards the one beside it; a copy is shown there then."""
        if self.view.beside is None or self.view.viewport().rect().contains(pointer.pixel):
            over.leave()
            return False
        if self._readout is not None:
            self._readout.gone()
            self._readout = None
        self._after = None
        other = self.view.beside_at(pointer)
        if other is None:  # between the two
            over.leave()
            self.view.hush()
            self.view.settle()
        else:
            over.show(*other)
        return True

    def _try(self, by: QPointF, carried: Collection[str], pointer: Pointer) -> None:
        desk = self.view.desk
        dx, dy = round(by.x() / CM, 6), round(by.y() / CM, 6)
        try:
            if self._copy:
                after = add_shifted(desk.garden, desk.layout_id, self._copies, dx, dy)
            else:
                after = edits.shift(desk.garden, desk.layout_id, carried, dx, dy)
        except Refusal as refusal:
            self.view.say(why_refused(refusal))
            return
        self._after = after
        self.view.try_out(after)
        self.view.speak_of([c.id for c in self._copies] or [i.id for i in self._items], pointer)

    def end(self, pointer: Pointer) -> None:
        self.move(pointer)
        self._done()
        if self._over is not None and self._over.over:
            self._over.put_down()
            return
        after, self._after = self._after, None
        if after is None:
            self.view.settle()
            return
        verb = translate("Canvas", "Copy {0}") if self._copy else translate("Canvas", "Move {0}")
        self.view.commit(after, verb.format(named(self._items, self.view.desk.catalogue)))
        if self._copy:
            first = {c.id for c in self._copies}
            self.view.desk.select(first)

    def _done(self) -> None:
        self.view.hush()
        if self._readout is not None:
            self._readout.gone()
            self._readout = None

    def cancel(self) -> None:
        self._after = None
        self._done()
        if self._over is not None:
            self._over.leave()
        self.view.settle()
