"""Two plans of one garden that pan and zoom as one: beside each other, or one over the other to swipe."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QFontMetricsF, QPainterPath, QRegion, QResizeEvent
from PySide6.QtWidgets import QFrame, QSlider, QWidget

from gardencanvas.canvas.items.overlay import Note, SketchItem
from gardencanvas.canvas.view import PlanView
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden.differing import Differs
from gardencanvas.words.differing import told

_GAP_PX = 6
_PLATE_PX = 22.0
_MOST_ALONE = 12  # more items that only one plan has are outlined without a word beside each


class TwoPlans(QWidget):
    """Lays out two views and keeps them on the same part of the plan."""

    def __init__(self, first: PlanView, second: PlanView) -> None:
        super().__init__()
        self.views = (first, second)
        self._linking = False
        self._swiping = False
        self.slider = QSlider(Qt.Orientation.Horizontal, self)
        self.slider.setRange(0, 1000)
        self.slider.setValue(500)
        self.slider.setAccessibleName(self.tr("How much of the second layout is uncovered"))
        self.slider.valueChanged.connect(self._lay_out)
        self.slider.hide()
        self.edge = QFrame(self)  # where the second plan begins
        self.edge.setFrameShape(QFrame.Shape.VLine)
        self.edge.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.edge.hide()
        for view, other in ((first, second), (second, first)):
            view.setParent(self)
            view.beside = other
            view.view_moved.connect(lambda view=view, other=other: self._link(view, other))
        first.installEventFilter(self)
        self.setMinimumHeight(240)

    def swipe(self, on: bool) -> None:
        """Lay the second plan over the first, uncovered from the slider on; or both beside each other."""
        self._swiping = on
        first, second = self.views
        first.beside, second.beside = (None, None) if on else (second, first)
        self.slider.setVisible(on)
        self.edge.setVisible(on)
        self._lay_out()
        self.views[0].fit()

    def _link(self, view: PlanView, other: PlanView) -> None:
        if not self._linking:
            self._linking = True
            other.follow(view)
            self._linking = False

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Both are fitted once they have their size."""
        if watched is self.views[0] and event.type() == QEvent.Type.Show:
            self.views[0].fit()
        return super().eventFilter(watched, event)

    def _lay_out(self, *_: object) -> None:
        first, second = self.views
        width, height = self.width(), self.height()
        if not self._swiping:
            half = (width - _GAP_PX) // 2
            first.setGeometry(0, 0, half, height)
            second.setGeometry(width - half, 0, half, height)
            second.clearMask()
        else:
            high = self.slider.sizeHint().height() + 4
            self.slider.setGeometry(0, 0, width, high)
            for view in self.views:
                view.setGeometry(0, high, width, height - high)
            at = round(width * self.slider.value() / 1000)
            second.setMask(QRegion(at, 0, max(width - at, 1), max(height - high, 1)))
            second.raise_()
            self.edge.setGeometry(at - 1, high, 2, height - high)
            self.edge.raise_()
        self._link(first, second)


class Marks:
    """Marks what differs on one of two plans."""

    def __init__(self, view: PlanView) -> None:
        self._view = view
        self._sketch = SketchItem(view.look)
        view.plan.addItem(self._sketch)

    def show(self, differing: Mapping[str, Sequence[Differs]], verdicts: Mapping[str, Verdict]) -> None:
        """Outline items that differ, or whose verdict does, and say beside each how."""
        path = QPainterPath()
        notes: list[Note] = []
        plates: list[QRectF] = []
        alone = sum(Differs.ONLY_HERE in how for how in differing.values())
        for item_id in dict.fromkeys((*differing, *verdicts)):
            part = self._view.plan.parts.get(item_id)
            if part is not None:
                outline = part.sceneTransform().map(part.outline)
                path.addPath(outline)
                if alone > _MOST_ALONE and Differs.ONLY_HERE in differing.get(item_id, ()):
                    continue  # the line below the plans says how many
                text = told(differing.get(item_id, ()), verdicts.get(item_id))
                notes.append(Note(self._free(outline.boundingRect(), text, plates), text))
        self._sketch.put(path, notes, filled=False)

    def _free(self, ground: QRectF, text: str, plates: list[QRectF]) -> QPointF:
        """Where words over an item cover no others, tried in its middle, then above and below it."""
        look = self._view.look
        wide = QFontMetricsF(look.font(12, bold=True)).horizontalAdvance(text) + 14
        size = QSizeF(wide, _PLATE_PX) / look.scale
        middle = ground.center()
        places = [middle + QPointF(0, step * size.height()) for step in (0, -1, 1, -2, 2, -3, 3, -4, 4)]
        boxes = [QRectF(p - QPointF(size.width(), size.height()) / 2, size) for p in places]
        free = next((i for i, box in enumerate(boxes) if not any(box.intersects(x) for x in plates)), 0)
        plates.append(boxes[free])
        return places[free]


def other_verdicts(here: FitReport, there: FitReport) -> dict[str, Verdict]:
    """Plantings of both layouts that are judged otherwise here than there, by id."""
    return {
        i: fit.verdict
        for i, fit in here.plantings.items()
        if i in there.plantings and there.plantings[i].verdict is not fit.verdict
    }
