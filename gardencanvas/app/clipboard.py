"""Copy, cut and paste, as text that another window, garden or letter can take."""

from typing import TYPE_CHECKING

from PySide6.QtGui import QCursor, QGuiApplication

from gardencanvas.canvas.naming import named
from gardencanvas.garden import edits
from gardencanvas.garden.clipping import clipping_from, clipping_of, is_clipping, prepared
from gardencanvas.garden.copies import add_shifted
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.places import bounds
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_BESIDE_M = 0.10  # pasted where it was copied from, a thing is laid this far beside it


def holds_clipping() -> bool:
    """Whether the clipboard holds something that was copied from a garden."""
    return is_clipping(QGuiApplication.clipboard().text())


def copy(window: "MainWindow") -> bool:
    """Put what is selected on the clipboard; False where nothing is."""
    session = window.session
    try:
        text = clipping_of(session.garden, session.layout_id, session.selection)
    except Refusal as refusal:
        window.say(why_refused(refusal))
        return False
    QGuiApplication.clipboard().setText(text)
    window.say(window.tr("Copied."))
    return True


def cut(window: "MainWindow") -> None:
    """Copy what is selected and take it away; what is locked stays."""
    session = window.session
    if copy(window):
        gone = edits.with_contents(session.layout, session.selection)
        found = [i for x in session.selection if (i := session.garden.find(session.layout_id, x)) is not None]
        text = window.tr("Cut {0}").format(named(found, session.catalogue))
        session.propose(edits.remove(session.garden, session.layout_id, gone), text)


def paste(window: "MainWindow") -> None:
    """Lay what the clipboard holds under the mouse, or beside where it was when the mouse is elsewhere."""
    session = window.session
    try:
        clipping = clipping_from(QGuiApplication.clipboard().text())
        pasted = prepared(session.garden, clipping, session.catalogue)
        dx, dy = _step(window, bounds(pasted.items))
        after = add_shifted(pasted.garden, session.layout_id, pasted.items, dx, dy)
    except Refusal as refusal:
        window.say(why_refused(refusal))
        return
    known = session.catalogue.with_own(after.crops, after.varieties)
    text = window.tr("Paste {0}").format(named(pasted.items, known))
    if session.propose(after, text):
        session.select([i.id for i in pasted.items])


def _step(window: "MainWindow", box: tuple[float, float, float, float]) -> tuple[float, float]:
    """How far the pasted things are moved: their middle comes to lie under the mouse."""
    view = window.view
    pixel = view.viewport().mapFromGlobal(QCursor.pos())
    if not view.viewport().rect().contains(pixel) or not view.underMouse():
        return _BESIDE_M, _BESIDE_M
    at = view.mapToScene(pixel)
    x0, y0, x1, y1 = box
    return round(at.x() / 100 - (x0 + x1) / 2, 2), round(at.y() / 100 - (y0 + y1) / 2, 2)
