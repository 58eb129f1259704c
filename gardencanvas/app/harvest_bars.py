"""The harvest of a succession as bars, one a week, with a line at their mean."""

from datetime import date, timedelta

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.planner.succession import Succession
from gardencanvas.words.plain import short_day
from gardencanvas.words.succession import weekly_words

_WIDEST = 26.0  # pixels of a week
_GAP = 2.0


class HarvestBars(QWidget):
    """A small picture; the same in words to assistive technology."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._weekly: list[float] = []
        self._first: date | None = None
        self._leaf = "#000000"
        self._colours: Palette = palette(False)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Harvest by week"))
        self.show_harvest(None, self._leaf, self._colours)

    def show_harvest(self, made: Succession | None, leaf: str, colours: Palette) -> None:
        """Show the weeks of a succession; None empties the picture."""
        self._weekly = [] if made is None else made.weekly.tolist()
        days = [] if made is None else [p.first for p in made.parts if p.first is not None]
        self._first = min(days, default=None)
        self._leaf, self._colours = leaf, colours
        self.setAccessibleDescription(weekly_words(self._weekly))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(340, 76 + self.fontMetrics().height())

    def minimumSizeHint(self) -> QSize:
        return QSize(160, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        bottom = self.height() - self.fontMetrics().height() - 5.0
        if self._weekly:
            self._paint_weeks(painter, bottom)
        painter.setPen(QPen(QColor(self._colours.line), 1.0))
        painter.drawLine(QPointF(0, bottom), QPointF(self.width(), bottom))
        painter.end()

    def _paint_weeks(self, painter: QPainter, bottom: float) -> None:
        wide = min(self.width() / len(self._weekly), _WIDEST)
        scale = (bottom - 6.0) / max(self._weekly)
        for week, amount in enumerate(self._weekly):
            bar = QRectF(week * wide, bottom - amount * scale, max(wide - _GAP, 1.0), amount * scale)
            painter.fillRect(bar, QColor(self._leaf))
        mean = bottom - scale * sum(self._weekly) / len(self._weekly)
        painter.setPen(QPen(QColor(self._colours.ink), 1.0, Qt.PenStyle.DashLine))
        end = len(self._weekly) * wide
        painter.drawLine(QPointF(0, mean), QPointF(end, mean))
        self._paint_days(painter, bottom, wide, end)

    def _paint_days(self, painter: QPainter, bottom: float, wide: float, end: float) -> None:
        """The first day of the first week and of the last; that one only where there is room."""
        if self._first is None:
            return
        painter.setPen(QColor(self._colours.quiet))
        measure = self.fontMetrics()
        base = bottom + measure.ascent() + 3.0
        first, last = self._first, self._first + timedelta(weeks=len(self._weekly) - 1)
        painter.drawText(QPointF(0, base), short_day(first))
        left = min(end - wide, self.width() - measure.horizontalAdvance(short_day(last)))
        if left > measure.horizontalAdvance(short_day(first)) + 12:
            painter.drawText(QPointF(left, base), short_day(last))
