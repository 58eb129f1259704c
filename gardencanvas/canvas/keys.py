"""What keys do to the selection: nudge, turn, copy, delete, walk from item to item."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import named, translate
from gardencanvas.canvas.shapes import span
from gardencanvas.garden import edits
from gardencanvas.garden.copies import add_shifted, copies_of
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

_NUDGE_M, _STRIDE_M = 0.01, 0.10
_COPY_M = 0.10  # a copy is laid this far beside its original
_TURN_DEG = 15.0
_ARROWS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}


def press(view: PlanView, event: QKeyEvent) -> bool:
    """Do what a key stands for; True when it was of use."""
    key = Qt.Key(event.key())
    held = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
    shift = held == Qt.KeyboardModifier.ShiftModifier
    plain = held == Qt.KeyboardModifier.NoModifier
    if key in _ARROWS and (plain or shift):
        arrow(view, *_ARROWS[key], far=shift)
    elif key in (Qt.Key.Key_Tab, Qt.Key.Key_Backtab):
        walk(view, -1 if key == Qt.Key.Key_Backtab or shift else 1)
    elif key == Qt.Key.Key_R and (plain or shift):
        turn(view, -_TURN_DEG if shift else _TURN_DEG)
    elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) and plain:
        delete(view)
    elif key == Qt.Key.Key_D and held == Qt.KeyboardModifier.ControlModifier:
        duplicate(view)
    elif event.matches(QKeySequence.StandardKey.SelectAll):
        select_all(view)
    elif key == Qt.Key.Key_Escape and view.desk.selection:
        view.desk.select(())
    else:
        return False
    return True


def _chosen(view: PlanView) -> list[Item]:
    desk = view.desk
    found = (desk.garden.find(desk.layout_id, i) for i in sorted(desk.selection))
    return [item for item in found if item is not None]


def _propose(view: PlanView, text: str, edit: Callable[[Garden], Garden]) -> bool:
    items = _chosen(view)
    if not items:
        view.say(translate("Canvas", "Nothing is selected."))
        return False
    try:
        after = edit(view.desk.garden)
    except Refusal as refusal:
        view.say(why_refused(refusal))
        return False
    done = view.commit(after, text.format(named(items, view.desk.catalogue)))
    if not done:
        view.say(translate("Canvas", "Nothing changed: what is locked stays as it is."))
    return done


def arrow(view: PlanView, dx: int, dy: int, *, far: bool) -> None:
    """Nudge the selection by 1 cm, or 10 cm; with nothing selected, move the plan."""
    desk = view.desk
    if not desk.selection:
        view.pan_by(-dx * (200 if far else 50), -dy * (200 if far else 50))
        return
    step = _STRIDE_M if far else _NUDGE_M
    _propose(
        view,
        translate("Canvas", "Move {0}"),
        lambda garden: edits.shift(garden, desk.layout_id, desk.selection, dx * step, dy * step),
    )


def turn(view: PlanView, degrees: float) -> None:
    """Turn the selection about its middle."""
    desk = view.desk
    centre: QPointF = span(_chosen(view)).center()
    about = centre.x() / CM, centre.y() / CM
    _propose(
        view,
        translate("Canvas", "Turn {0}"),
        lambda garden: edits.turn(garden, desk.layout_id, desk.selection, degrees, about),
    )


def delete(view: PlanView) -> None:
    """Remove the selection, a bed with all that lies in it."""
    desk = view.desk
    gone = edits.with_contents(desk.layout, desk.selection)
    _propose(
        view,
        translate("Canvas", "Delete {0}"),
        lambda garden: edits.remove(garden, desk.layout_id, gone),
    )


def duplicate(view: PlanView) -> None:
    """Copy the selection a little beside itself and select the copies."""
    desk = view.desk
    copies = copies_of(desk.garden, desk.layout_id, desk.selection)
    done = _propose(
        view,
        translate("Canvas", "Duplicate {0}"),
        lambda garden: add_shifted(garden, desk.layout_id, copies, _COPY_M, _COPY_M),
    )
    if done:
        desk.select({copy.id for copy in copies})


def select_all(view: PlanView) -> None:
    """Select all plantings; where there are none, all beds."""
    layout, hidden = view.desk.layout, view.desk.hidden
    plantings = [p.id for p in layout.plantings if not hidden.hides(p)]
    view.desk.select(plantings or [b.id for b in layout.beds if not hidden.hides(b)])


def walk(view: PlanView, step: int) -> None:
    """Select the next thing in reading order: from the top, left to right, a bed before what lies in it."""
    desk = view.desk
    order = reading_order(view)
    if not order:
        return
    here = [i for i, item_id in enumerate(order) if item_id in desk.selection]
    at = (here[-1 if step > 0 else 0] + step) % len(order) if here else (0 if step > 0 else len(order) - 1)
    desk.select({order[at]})
    view.bring_in(view.plan.parts[order[at]].outline.boundingRect())


def reading_order(view: PlanView) -> list[str]:
    """Ids of everything on the plan as one would read it, in bands of 20 cm."""

    def place(item_id: str) -> tuple[int, float, float]:
        box: QRectF = view.plan.parts[item_id].outline.boundingRect()
        return round(box.top() / 20), box.left(), -box.width() * box.height()

    return sorted((i for i, part in view.plan.parts.items() if view.plan.shows(part)), key=place)
