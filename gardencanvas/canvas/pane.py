"""A window on the plan: paper and grid, rulers, zoom and pan. Knows nothing of garden or tools."""

from collections.abc import Iterable

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QResizeEvent, QTransform, QWheelEvent
from PySide6.QtWidgets import QFrame, QGraphicsView, QWidget

from gardencanvas.canvas import zoom
from gardencanvas.canvas.frame import Frame
from gardencanvas.canvas.furniture import Furniture
from gardencanvas.canvas.look import CM, Look
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.paper import draw_paper
from gardencanvas.canvas.pinch import zoom_of
from gardencanvas.canvas.rulers import THICK
from gardencanvas.canvas.scene import PlanScene
from gardencanvas.words.plain import Measure, Units

_ALL = 1_100 * CM  # the plan reaches a kilometre each way
_LABEL_PX = 30.0  # bed names stand above their beds
_EMPTY_CM = QRectF(0, 0, 800, 500)  # shown where there is nothing to fit


class PlanPane(QGraphicsView):
    """Pans and zooms over a plan."""

    view_moved = Signal()  # panned or zoomed

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = Look()
        self.plan = PlanScene(self.look, self)
        self.setScene(self.plan)
        self.frame_ = Frame(self.look, self)
        self._grid = True
        self._fitted = False
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setViewportMargins(THICK, THICK, 0, 0)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setResizeAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self.setSceneRect(QRectF(-_ALL, -_ALL, 2 * _ALL, 2 * _ALL))
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().grabGesture(Qt.GestureType.PinchGesture)
        self.setAccessibleName(translate("Canvas", "Plan"))
        self.setAccessibleDescription(
            translate("Canvas", "The drawn plan. The outline lists the same beds and plantings in words.")
        )
        self._set_scale(zoom.ACTUAL)

    # zoom

    @property
    def scale_(self) -> float:
        """Logical pixels per centimetre."""
        return self.look.scale

    def _set_scale(self, scale: float) -> None:
        self.setTransform(QTransform.fromScale(scale, scale))
        self.plan.rescale(scale)
        self.frame_.rescale()
        self.view_moved.emit()

    def follow(self, other: "PlanPane") -> None:
        """Show the part of the plan that another pane shows, as large."""
        self._fitted = True
        if self.look.scale != other.look.scale:
            self._set_scale(other.look.scale)
        for bar, theirs in (
            (self.horizontalScrollBar(), other.horizontalScrollBar()),
            (self.verticalScrollBar(), other.verticalScrollBar()),
        ):
            bar.setValue(theirs.value())

    def zoom_about(self, factor: float, pixel: QPointF) -> None:
        """Zoom by a factor; what lies under a viewport pixel stays there."""
        before = self._at(pixel)
        scale = zoom.bounded(self.look.scale * factor)
        if scale == self.look.scale:
            return
        self._fitted = True
        self._set_scale(scale)
        after = self._at(pixel)
        self._scroll((before.x() - after.x()) * scale, (before.y() - after.y()) * scale)

    def _at(self, pixel: QPointF) -> QPointF:
        return self.viewportTransform().inverted()[0].map(pixel)

    def _scroll(self, dx: float, dy: float) -> None:
        for bar, by in ((self.horizontalScrollBar(), dx), (self.verticalScrollBar(), dy)):
            bar.setValue(bar.value() + round(by))

    def zoom_in(self) -> None:
        """One step closer, about the middle."""
        self.zoom_about(zoom.STEP, QPointF(self.viewport().rect().center()))

    def zoom_out(self) -> None:
        """One step away, about the middle."""
        self.zoom_about(1 / zoom.STEP, QPointF(self.viewport().rect().center()))

    def zoom_actual(self) -> None:
        """The usual zoom, about the middle."""
        self.zoom_about(zoom.ACTUAL / self.look.scale, QPointF(self.viewport().rect().center()))

    def fit(self) -> None:
        """Show all that is drawn."""
        box = self.plan.extent()
        self.show_box(_EMPTY_CM if box.isEmpty() else box)

    def zoom_to(self, ids: Iterable[str]) -> None:
        """Show these items as large as fits; everything where there are none."""
        box = QRectF()
        for item_id in ids:
            if item_id in self.plan.parts:
                box = box.united(self.plan.parts[item_id].outline.boundingRect())
        if box.isEmpty():
            self.fit()
        else:
            self.show_box(box)

    def show_box(self, box: QRectF) -> None:
        """Show a box of the plan with a margin for names above and the legend below."""
        room = QRectF(self.viewport().rect()).adjusted(28, 14 + _LABEL_PX, -28, -Furniture.HIGH - 12)
        if room.width() < 40 or room.height() < 40:
            return
        self._fitted = True
        wide, high = max(box.width(), 20.0), max(box.height(), 20.0)
        self._set_scale(zoom.bounded(min(room.width() / wide, room.height() / high)))
        there = self.mapFromScene(box.center())
        self._scroll(there.x() - room.center().x(), there.y() - room.center().y())

    def pan_by(self, dx: int, dy: int) -> None:
        """Move the plan under the window by pixels."""
        self._scroll(-dx, -dy)

    def bring_in(self, box: QRectF) -> None:
        """Scroll as little as needed to see a box of the plan."""
        self.ensureVisible(box, 40, 60)

    def ensure_seen(self, at: QPointF) -> None:
        """Scroll as little as needed to see a place."""
        self.ensureVisible(QRectF(at, at).adjusted(-5, -5, 5, 5), 60, 60)

    # settings

    def set_units(self, units: Units) -> None:
        """Centimetres and metres, or inches and feet."""
        self.look.measure = Measure(units)
        self._repaint_all()

    def set_grid(self, on: bool) -> None:
        """Show or hide the grid."""
        self._grid = on
        self.viewport().update()

    def set_dark(self, on: bool) -> None:
        """Use the dark or the light colours."""
        self.look.use(on)
        self._repaint_all()

    def set_marks(self, on: bool) -> None:
        """Show or hide the verdict marks."""
        self.look.marks = on
        self.viewport().update()

    def set_reduced_motion(self, on: bool) -> None:
        """Fade nothing."""
        self.look.still = on

    def _repaint_all(self) -> None:
        self.frame_.rescale()
        self.frame_.empty.update()
        self.plan.update()
        self.viewport().update()

    # Qt

    def drawBackground(self, painter: QPainter, rect: QRectF | QRect) -> None:
        draw_paper(painter, self.look, QRectF(rect), grid=self._grid)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.frame_.lay_out(self.viewport().geometry())
        if not self._fitted:
            self.fit()
            self._fitted = False

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        super().scrollContentsBy(dx, dy)
        self.frame_.rescale()
        self.view_moved.emit()

    def wheelEvent(self, event: QWheelEvent) -> None:
        turned = event.angleDelta()
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            if turned.y():
                self.zoom_about(zoom.STEP ** (turned.y() / 120), event.position())
            event.accept()
            return
        step = event.pixelDelta() if not event.pixelDelta().isNull() else turned / 2
        if event.modifiers() & Qt.KeyboardModifier.ShiftModifier and step.x() == 0:
            step = QPoint(step.y(), 0)
        self.pan_by(step.x(), step.y())
        event.accept()

    def viewportEvent(self, event: QEvent) -> bool:
        pinched = zoom_of(event)
        if pinched is not None:
            factor, where = pinched
            self.zoom_about(factor, QPointF(self.viewport().mapFromGlobal(where.toPoint())))
            event.accept()
            return True
        if event.type() == QEvent.Type.Leave:
            self.frame_.point(None)
        return super().viewportEvent(event)
