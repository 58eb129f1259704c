"""The plan on the screen, worked on with tools and keys."""

from collections.abc import Collection, Iterable, Sequence
from datetime import date
from html import escape

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QContextMenuEvent,
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
)
from PySide6.QtWidgets import QApplication, QToolTip, QWidget

from gardencanvas.canvas import keys
from gardencanvas.canvas.desk import Desk
from gardencanvas.canvas.hidden import Hidden
from gardencanvas.canvas.items.overlay import HandleItem
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import named
from gardencanvas.canvas.pane import PlanPane
from gardencanvas.canvas.shapes import span
from gardencanvas.canvas.snapping import GRID_CM, Snapping, lines_of
from gardencanvas.canvas.tools.chest import tools_of
from gardencanvas.canvas.tools.handles import handles_for
from gardencanvas.canvas.tools.pan import PanTool
from gardencanvas.canvas.tools.place import Mode, PlaceTool
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.canvas.typed import ALLOWED
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden.garden import Garden
from gardencanvas.words.findings import headline
from gardencanvas.words.named import verdict as verdict_word
from gardencanvas.words.plain import plants_counted

_FRAME_MS = 16
_PULL_PX = 6.0
_LEFT, _MIDDLE = Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton


class PlanView(PlanPane):
    """Shows the desk's garden and lets it be changed.

    Everything that a gesture changes goes through ``try_out`` while it lasts and ``commit`` when it ends.
    """

    status = Signal(str)  # one line for the status bar
    context_menu = Signal(QPoint, object)  # global place, frozenset of ids
    tool_changed = Signal(str)
    asked = Signal(object)  # what fits here? a plan point, or the corners of an area

    # Qt sends events while the widget is still being made.
    _pressed = _space = False
    _handles: Sequence[HandleItem] = ()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.desk = desk
        self._snap = True
        self._settled = True
        self._trial: FitReport | None = None
        self._throttle = QTimer(self)
        self._throttle.setSingleShot(True)
        self._throttle.setInterval(_FRAME_MS)
        self._throttle.timeout.connect(self._catch_up)
        self._waiting: Pointer | None = None
        self._pan: PanTool | None = None
        self.beside: PlanView | None = None  # another plan that things can be dragged into
        self.place = PlaceTool(self)
        self.tools: dict[str, Tool] = {"place": self.place, **tools_of(self)}
        self.tool = self.tools["select"]
        desk.changed.connect(self._changed)
        desk.previewed.connect(self._judged)
        desk.selection_changed.connect(self._selected)
        desk.date_changed.connect(self._dated)
        desk.hidden_changed.connect(self._hid)
        desk.layout_changed.connect(self._other_layout)
        self._show_all()

    # following the desk

    def _show_all(self) -> None:
        desk = self.desk
        self.plan.show_date(desk.on)
        self.plan.show_garden(desk.garden, desk.layout_id, desk.catalogue)
        self.plan.judge(desk.report)
        self.plan.select(desk.selection)
        self._after_change()

    def _changed(self, _before: Garden, _after: Garden) -> None:
        desk = self.desk
        self._settled, self._trial = True, None
        self.plan.show_garden(desk.garden, desk.layout_id, desk.catalogue)
        self.plan.judge(desk.report)
        self._after_change()

    def _after_change(self) -> None:
        self.frame_.furniture.bearing_deg = self.desk.garden.site.bearing_deg
        self.frame_.furniture.update()
        layout = self.desk.layout
        bare = not layout.beds and not layout.plantings and self.desk.garden.backdrop is None
        self.frame_.empty.setVisible(bare)
        self._place_handles()

    def _judged(self, report: FitReport | None) -> None:
        self._trial = report
        if self._settled:  # tried out elsewhere: a gesture here shows its own
            self.plan.show_garden(self.desk.shown_garden, self.desk.layout_id, self.desk.catalogue)
            self._place_handles()
        self.plan.judge(report if report is not None else self.desk.report, live=report is not None)

    def _selected(self, ids: Iterable[str]) -> None:
        self.plan.select(ids)
        self._place_handles()

    def _dated(self, on: date) -> None:
        self.plan.show_date(on)

    def _other_layout(self, _layout_id: str) -> None:
        self.tool.cancel()
        self._show_all()

    # for tools

    def try_out(self, garden: Garden) -> FitReport | None:
        """Show and judge a garden that is not committed."""
        self._settled = False
        self.plan.show_garden(garden, self.desk.layout_id, self.desk.catalogue)
        self._place_handles()
        return self.desk.preview(garden)

    def settle(self) -> None:
        """End the preview: show the committed garden again."""
        if self._settled:
            return
        self._settled = True
        desk = self.desk
        self.plan.show_garden(desk.garden, desk.layout_id, desk.catalogue)
        desk.preview(None)
        self.plan.judge(desk.report)
        self._place_handles()

    def commit(self, garden: Garden, text: str) -> bool:
        """Make one undo step of it; False when nothing changed."""
        done = self.desk.propose(garden, text)
        if not done:
            self.settle()
        return done

    def say(self, sentence: str) -> None:
        """One line in the status bar, read aloud where a screen reader is at work."""
        self.status.emit(sentence)
        if QAccessible.isActive() and sentence:
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, sentence))

    def speak_of(self, ids: Collection[str], pointer: Pointer) -> None:
        """Words at the cursor about the worst off of some plantings of the preview."""
        garden, report = self.plan.garden, self._trial
        told = [i for i in ids if report is not None and i in report.plantings and i in self.plan.parts]
        if garden is None or report is None or not told:
            self.hush()
            return
        worst = max(told, key=lambda i: max((f.verdict for f in report.of(i)), default=Verdict.CLEAR))
        title, why = headline(report, worst, garden, self.desk.catalogue, self.look.measure)
        ground = QRectF()
        for item_id in told:
            ground = ground.united(self.plan.parts[item_id].sceneBoundingRect())
        keep = self.mapFromScene(ground).boundingRect()
        verdict = max((f.verdict for f in report.of(worst)), default=report.plantings[worst].verdict)
        self.frame_.words.speak(title, why, verdict, pointer.pixel, keep)
        self.say(f"{title}. {why}")

    def hush(self) -> None:
        """No words at the cursor."""
        self.frame_.words.hide()

    @property
    def snap_step_m(self) -> float:
        """The step that places are rounded to in metres; 0 while snapping is off."""
        held = QApplication.keyboardModifiers() & Qt.KeyboardModifier.ControlModifier
        return GRID_CM / CM if self._snap and not held else 0.0

    def snapping(self, pointer: Pointer | None = None, without: Collection[str] = ()) -> Snapping:
        """How places are rounded now; Ctrl suspends it. ``without`` are the things being moved."""
        if not self._snap or (pointer is not None and pointer.holds(Qt.KeyboardModifier.ControlModifier)):
            return Snapping(on=False)
        beds = [b for b in self.desk.layout.beds if b.id not in without]
        xs, ys = lines_of([span([bed]) for bed in beds])
        return Snapping(pull_cm=_PULL_PX / self.look.scale, xs=xs, ys=ys)

    def beside_at(self, pointer: Pointer) -> "tuple[PlanView, Pointer] | None":
        """The plan beside this one and the mouse on it, where the mouse is there."""
        other = self.beside
        if other is None or self.viewport().rect().contains(pointer.pixel):
            return None
        pixel = other.viewport().mapFromGlobal(self.viewport().mapToGlobal(pointer.pixel))
        if not other.viewport().rect().contains(pixel):
            return None
        return other, Pointer(other._at(QPointF(pixel)), pixel, pointer.modifiers)

    # handles

    def handle_at(self, pixel: QPoint) -> HandleItem | None:
        """The handle under a viewport pixel; within 12 pixels, so that it is easily caught."""
        near = [(self._away(h, pixel), i) for i, h in enumerate(self._handles)]
        away, index = min(near, default=(99, 0))
        return self._handles[index] if away <= 12 else None

    def _away(self, handle: HandleItem, pixel: QPoint) -> int:
        offset = self.mapFromScene(handle.pos()) - pixel
        return max(abs(offset.x()), abs(offset.y()))

    def _place_handles(self) -> None:
        garden = self.plan.garden
        wanted = (
            handles_for(garden, self.desk.layout_id, self.desk.selection, self.look.scale)
            if garden and not self.tool.takes_space and self._all_shown()
            else []
        )
        if [h.name for h in self._handles] != [name for name, _ in wanted]:
            for handle in self._handles:
                self.plan.removeItem(handle)
            self._handles = [HandleItem(self.look, name) for name, _ in wanted]
            for handle in self._handles:
                self.plan.addItem(handle)
        for handle, (_, at) in zip(self._handles, wanted, strict=True):
            handle.setPos(at)

    def _all_shown(self) -> bool:
        """Whether nothing that is selected is hidden."""
        parts = (self.plan.parts.get(i) for i in self.desk.selection)
        return all(part is None or self.plan.shows(part) for part in parts)

    def _hid(self, hidden: Hidden) -> None:
        self.plan.hide(hidden)
        self._place_handles()

    def _set_scale(self, scale: float) -> None:
        super()._set_scale(scale)
        if self._handles:
            self._place_handles()

    # tools and carrying

    def set_tool(self, name: str) -> None:
        """Choose a tool by its name in ``tools`` (place comes with ``carry``)."""
        tool = self.tools[name]
        if tool is not self.tool:
            self.tool.leave()
            self.tool = tool
            tool.enter()
            self._place_handles()
            self.tool_changed.emit(name)
        self.viewport().setCursor(tool.cursor)
        self.say(tool.hint())

    def set_snap(self, on: bool) -> None:
        """Let things come to rest on the grid and on bed edges, or anywhere."""
        self._snap = on

    def carry(self, crop_id: str, variety_id: str | None = None, mode: Mode = "rows") -> None:
        """Take a crop on the mouse; keys, a click or ``carry_drop`` put it down."""
        self.set_tool("select")
        self.place.pick_up(crop_id, variety_id, mode)
        self.set_tool("place")
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        if QApplication.mouseButtons() == Qt.MouseButton.NoButton:
            middle = self.viewport().rect().center()
            self.place.show_at(self.mapToScene(middle), middle)

    def carry_move(self, place: QPoint) -> None:
        """Follow a mouse that another widget has grabbed (global pixels)."""
        if not self.place.carrying:
            return
        pixel = self.viewport().mapFromGlobal(place)
        if self.viewport().rect().contains(pixel):
            self._move_to(Pointer(self.mapToScene(pixel), pixel, QApplication.keyboardModifiers()))
        else:
            self._waiting = None
            self.place.hide()

    def carry_drop(self) -> None:
        """Put the crop down where it was last shown; give up where the mouse has left the plan."""
        if self.place.carrying:
            self._flush()
            self.place.put_down()
            self.set_tool("select")

    def carry_cancel(self) -> None:
        """Give up carrying."""
        if self.place.carrying:
            self.set_tool("select")

    # mouse

    def _pointer(self, event: QMouseEvent) -> Pointer:
        place = event.position()
        return Pointer(self._at(place), place.toPoint(), event.modifiers())

    def _move_to(self, pointer: Pointer) -> None:
        """Pass a move on: at once, and then no more often than once a frame."""
        self._waiting = pointer
        if not self._throttle.isActive():
            self._flush()
            self._throttle.start()

    def _catch_up(self) -> None:
        if self._waiting is not None:
            self._flush()
            self._throttle.start()

    def _flush(self) -> None:
        pointer, self._waiting = self._waiting, None
        if pointer is not None:
            (self.tool.move if self._pressed else self.tool.hover)(pointer)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        pointer = self._pointer(event)
        if event.button() == _MIDDLE or (event.button() == _LEFT and self._space):
            self._pan = PanTool(self)
            self._pan.begin(pointer)
        elif event.button() == _LEFT and not self._pressed:
            self._waiting = None
            self._pressed = True
            self.tool.begin(pointer)
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        pointer = self._pointer(event)
        self.frame_.point(pointer.pixel)
        if self._pan is not None:
            self._pan.move(pointer)
        else:
            self._move_to(pointer)
        event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        pointer = self._pointer(event)
        if self._pan is not None and event.button() in (_MIDDLE, _LEFT):
            self._pan.end(pointer)
            self._pan = None
            self._show_cursor()
        elif event.button() == _LEFT and self._pressed:
            self._waiting = None
            self._pressed = False
            self.tool.end(pointer)
        event.accept()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if event.button() == _LEFT and not self._space:
            self.tool.double_click(self._pointer(event))
        event.accept()

    def _show_cursor(self) -> None:
        self.viewport().setCursor(Qt.CursorShape.OpenHandCursor if self._space else self.tool.cursor)

    # keys

    def event(self, event: QEvent) -> bool:
        """Tab walks through the plan instead of leaving it, as long as there is something on it."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            tab = event.key() in (Qt.Key.Key_Tab, Qt.Key.Key_Backtab)
            leaves = event.modifiers() & Qt.KeyboardModifier.ControlModifier
            if tab and leaves:
                return self.focusNextPrevChild(event.key() == Qt.Key.Key_Tab)
            if tab and self.plan.parts:
                self.keyPressEvent(event)
                return True
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            event.ignore()
            self._keep_from_shortcuts(event)
            if event.isAccepted():
                return True  # else Qt offers it to the parents, which have no use for it
        return super().event(event)

    def _keep_from_shortcuts(self, event: QKeyEvent) -> None:
        """While a tool is at work, digits, Enter, Esc, Backspace and arrows are its own."""
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            return
        if not self._pressed and self.tool is self.tools["select"]:
            return
        own = (
            Qt.Key.Key_Escape,
            Qt.Key.Key_Return,
            Qt.Key.Key_Enter,
            Qt.Key.Key_Backspace,
            Qt.Key.Key_Delete,
        )
        typed = ALLOWED if self.tool.takes_letters else set("0123456789.,x×")
        if event.key() in own or event.text() in typed:
            event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._flush()  # a key speaks of where the mouse is now
        pans = event.key() == Qt.Key.Key_Space and not self.tool.takes_space
        if pans and not event.isAutoRepeat():
            self._space = True
            self._show_cursor()
        elif self.tool.key(event):
            self._waiting = None
            if event.key() == Qt.Key.Key_Escape:
                self._pressed = False
        elif event.key() == Qt.Key.Key_Escape and self.tool is not self.tools["select"]:
            self.set_tool("select")
        elif event.key() == Qt.Key.Key_0 and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom_actual()
        elif not keys.press(self, event):
            super().keyPressEvent(event)
            return
        event.accept()

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._space = False
            if self._pan is None:
                self._show_cursor()
        super().keyReleaseEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._space = False
        super().focusOutEvent(event)

    def tip_at(self, pixel: QPoint) -> str:
        """What the thing under a viewport pixel is, as text that Qt will not take for markup; else empty."""
        item_id = self.plan.item_at(self.mapToScene(pixel))
        part = self.plan.parts.get(item_id) if item_id is not None else None
        if part is None:
            return ""
        lines = [named([part.value], self.desk.catalogue)]
        fit = self.desk.report.plantings.get(part.value.id)
        if fit is not None:
            lines.append(f"{plants_counted(fit.plants)} · {verdict_word(fit.verdict)}")
        return "<qt>" + "<br>".join(escape(line) for line in lines) + "</qt>"

    def viewportEvent(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            tip = "" if self._pressed or self.place.carrying else self.tip_at(event.pos())
            QToolTip.showText(event.globalPos(), tip, self.viewport())
            return True
        return super().viewportEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if event.reason() == QContextMenuEvent.Reason.Mouse:
            found = self.plan.item_at(self.mapToScene(event.pos()))
            if found is not None and found not in self.desk.selection:
                self.desk.select({found})
        self.context_menu.emit(event.globalPos(), self.desk.selection)
        event.accept()
