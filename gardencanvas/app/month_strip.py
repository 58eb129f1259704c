"""The twelve months of a crop at this site: lanes in the season ribbon's colours."""

from collections.abc import Iterator
from datetime import date

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QHelpEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from gardencanvas.canvas.palette import Palette, Tint, palette, tint_of
from gardencanvas.canvas.symbols.leaves import mixed
from gardencanvas.garden.site import DayOfYear, Frost
from gardencanvas.season.crop_year import Way, YearSpan
from gardencanvas.season.dayofyear import MONTH_DAYS, MONTH_STARTS, YEAR, day_index
from gardencanvas.words.crop_year import Lane, lanes, span_words, year_words
from gardencanvas.words.plain import month_name, short_month

_GAP = 5  # pixels between ways of starting


class MonthStrip(QWidget):
    """Painted lanes; each tells its days on hover, and all of them to assistive technology."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._groups: tuple[tuple[Lane, ...], ...] = ()
        self._colours: Palette = palette(False)
        self._tint: Tint = tint_of("", "", False)
        self._first_month = 1
        self._on: date | None = None
        self._frost: YearSpan | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_year(
        self, ways: tuple[Way, ...], tint: Tint, colours: Palette, frost: Frost, first_month: int, on: date
    ) -> None:
        """Show each way of starting; the year begins with ``first_month``, ``on`` is the date cursor."""
        self._groups, self._tint, self._colours = lanes(ways), tint, colours
        self._frost, self._first_month, self._on = _frosty(frost), first_month, on
        told = year_words(ways)
        self.setAccessibleName(self.tr("The year at this site"))
        self.setAccessibleDescription(told)
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        rows = sum(len(g) for g in self._groups)
        return QSize(320, self._head() + rows * self._lane() + _GAP * max(len(self._groups) - 1, 0) + 2)

    def minimumSizeHint(self) -> QSize:
        return QSize(220, self.sizeHint().height())

    # places

    def _lane(self) -> int:
        return self.fontMetrics().height() + 6

    def _head(self) -> int:
        return self.fontMetrics().height() + 4

    def _names(self) -> float:
        widths = [self.fontMetrics().horizontalAdvance(lane.name) for g in self._groups for lane in g]
        return min(max(widths, default=0) + 10.0, 0.4 * self.width())

    def _x(self, index: int) -> float:
        """Where a day of the year begins; 0 is the strip's first day, not the year's."""
        return self._names() + index / YEAR * (self.width() - self._names() - 1)

    def _rows(self) -> Iterator[tuple[Lane, float]]:
        top = float(self._head())
        for group in self._groups:
            for lane in group:
                yield lane, top
                top += self._lane()
            top += _GAP

    def spans(self, span: YearSpan) -> Iterator[tuple[float, float]]:
        """Left and right of a span's parts: two where it runs over the strip's end."""
        begin = (day_index(span.first) - MONTH_STARTS[self._first_month - 1]) % YEAR
        end = begin + span.days
        yield self._x(begin), self._x(min(end, YEAR))
        if end > YEAR:
            yield self._x(0), self._x(end - YEAR)

    # painting

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_months(painter)
        for lane, top in self._rows():
            self._paint_lane(painter, lane, top)
        self._paint_cursor(painter)
        painter.end()

    def _paint_months(self, painter: QPainter) -> None:
        head, bottom = self._head(), float(self.height())
        if self._frost is not None:
            for left, right in self.spans(self._frost):
                frosty = QRectF(left, head, right - left, bottom - head)
                painter.fillRect(frosty, QColor(self._colours.frost))
        metrics, day = painter.fontMetrics(), 0
        widest = max(metrics.horizontalAdvance(short_month(m)) for m in range(1, 13))
        whole = widest < (self._x(YEAR) - self._x(0)) / 12 - 4
        for number in range(12):
            month = (self._first_month - 1 + number) % 12
            left, right = self._x(day), self._x(day + MONTH_DAYS[month])
            painter.setPen(QPen(QColor(self._colours.grid_strong)))
            painter.drawLine(QPointF(left, head), QPointF(left, bottom))
            name = short_month(month + 1) if whole else month_name(month + 1)[0]
            painter.setPen(QColor(self._colours.quiet))
            painter.drawText(QRectF(left, 0, right - left, head), Qt.AlignmentFlag.AlignCenter, name)
            day += MONTH_DAYS[month]

    def _paint_lane(self, painter: QPainter, lane: Lane, top: float) -> None:
        metrics = painter.fontMetrics()
        room = QRectF(0, top, self._names() - 8, self._lane())
        shown = metrics.elidedText(lane.name, Qt.TextElideMode.ElideRight, int(room.width()))
        painter.setPen(QColor(self._colours.ink))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)
        if lane.span is None:
            painter.setPen(QColor(self._colours.quiet))
            never = QRectF(self._names() + 4, top, self.width(), self._lane())
            painter.drawText(never, Qt.AlignmentFlag.AlignVCenter, span_words(None))
            return
        painter.setPen(QPen(QColor(self._colours.verdicts[0]), 1))
        painter.setBrush(self._colour(lane))
        for left, right in self.spans(lane.span):
            bar = QRectF(left + 0.5, top + 4.5, max(right - left - 1, 3), self._lane() - 9)
            painter.drawRoundedRect(bar, 3, 3)

    def _colour(self, lane: Lane) -> QColor:
        """As on the season ribbon: nursery pale, growing full, harvest dark."""
        if lane.part == "nursery":
            return mixed(self._tint.leaf, self._colours.panel, 0.65)
        return mixed(self._tint.leaf, self._colours.chrome, 0.4 if lane.part == "harvest" else 0.0)

    def _paint_cursor(self, painter: QPainter) -> None:
        if self._on is None:
            return
        day = day_index(DayOfYear(month=self._on.month, day=self._on.day))
        x = self._x((day - MONTH_STARTS[self._first_month - 1]) % YEAR)
        painter.setPen(QPen(QColor(self._colours.ink), 1.2))
        painter.drawLine(QPointF(x, self._head() - 3), QPointF(x, self.height()))

    # hover

    def lane_at(self, y: float) -> Lane | None:
        """The lane at a height in pixels."""
        return next((lane for lane, top in self._rows() if top <= y < top + self._lane()), None)

    def told_at(self, y: float) -> str:
        """What is told on hover at a height in pixels."""
        lane = self.lane_at(y)
        return "" if lane is None else f"{lane.name}: {span_words(lane.span)}"

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() is QEvent.Type.ToolTip:
            QToolTip.showText(event.globalPos(), self.told_at(event.pos().y()), self)  # nothing hides it
            return True
        return super().event(event)


def _frosty(frost: Frost) -> YearSpan | None:
    """Days from the first frost of autumn to the last of spring; None where none comes."""
    if frost.first is None or frost.last is None:
        return None
    return YearSpan(frost.first, (day_index(frost.last) - day_index(frost.first)) % YEAR + 1)
