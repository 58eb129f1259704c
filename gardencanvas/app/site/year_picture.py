"""The year at a glance, above the table's columns: temperature, rain, and the time with frost."""

from collections.abc import Callable

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from gardencanvas.app.site.look import colours
from gardencanvas.canvas.palette import Palette
from gardencanvas.garden.site import Frost
from gardencanvas.season.curve import daily
from gardencanvas.season.dayofyear import MONTH_DAYS, MONTH_STARTS, YEAR, day_index
from gardencanvas.words.plain import Units, yearly

Months = tuple[float, ...] | None


class YearPicture(QWidget):
    """Draws what the table says; ``columns`` tells where each month's column lies."""

    def __init__(
        self, columns: Callable[[], list[tuple[float, float]]], units: Units, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._columns = columns
        self._imperial = units == "imperial"
        self._mean: Months = None
        self._low: Months = None
        self._high: Months = None
        self._rain: Months = None
        self._frost = Frost(basis="none")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(8 * self.fontMetrics().height())

    def sizeHint(self) -> QSize:
        return QSize(420, 9 * self.fontMetrics().height())

    def show_year(self, mean: Months, low: Months, high: Months, rain: Months, frost: Frost) -> None:
        """Show these months; a row that is not whole is left out."""
        self._mean, self._low, self._high, self._rain, self._frost = mean, low, high, rain, frost
        self.setAccessibleName(self._told())
        self.update()

    def _told(self) -> str:
        parts = []
        if self._mean is not None:
            parts.append(
                self.tr("mean {0} to {1}").format(self._warm(min(self._mean)), self._warm(max(self._mean)))
            )
        if self._rain is not None:
            parts.append(self.tr("{0} mm of rain").format(round(sum(self._rain))))
        if self._frost.last is not None and self._frost.first is not None:
            days = yearly(self._frost.last), yearly(self._frost.first)
            parts.append(self.tr("last frost {0}, first frost {1}").format(*days))
        return self.tr("The year: {0}").format("; ".join(parts) or self.tr("no climate yet"))

    def _warm(self, celsius: float) -> str:
        return f"{1.8 * celsius + 32:.0f} °F" if self._imperial else f"{celsius:.0f} °C"

    # drawing

    def paintEvent(self, event: QPaintEvent) -> None:
        columns = self._columns()
        if len(columns) != 12:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        c = colours()
        line = self.fontMetrics().height()
        area = QRectF(columns[0][0], 1.6 * line, columns[-1][1] - columns[0][0], self.height() - 1.9 * line)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(c.paper))
        painter.drawRect(area)
        self._draw_frost(painter, c, area, columns)
        self._draw_rain(painter, c, area, columns)
        self._draw_warmth(painter, c, area, columns)
        self._draw_frost_days(painter, c, area, columns)
        painter.end()

    @staticmethod
    def _x(day: float, columns: list[tuple[float, float]]) -> float:
        """Where a day of the year lies, by the month's own column."""
        day = min(max(day, 0.0), YEAR)
        month = max(m for m in range(12) if MONTH_STARTS[m] <= min(day, YEAR - 1))
        left, right = columns[month]
        return left + (right - left) * (day - MONTH_STARTS[month]) / MONTH_DAYS[month]

    def _draw_frost(
        self, painter: QPainter, c: Palette, area: QRectF, columns: list[tuple[float, float]]
    ) -> None:
        if self._frost.last is None or self._frost.first is None:
            return
        last, first = day_index(self._frost.last) + 1, day_index(self._frost.first)
        spans = [(0, last), (first, YEAR)] if last <= first else [(first, last)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(c.frost))
        for begin, end in spans:
            left, right = self._x(begin, columns), self._x(end, columns)
            painter.drawRect(QRectF(left, area.top(), right - left, area.height()))

    def _draw_frost_days(
        self, painter: QPainter, c: Palette, area: QRectF, columns: list[tuple[float, float]]
    ) -> None:
        if self._frost.last is None or self._frost.first is None:
            return
        last, first = day_index(self._frost.last) + 1, day_index(self._frost.first)
        painter.setPen(QPen(QColor(c.quiet), 1, Qt.PenStyle.DashLine))
        marks = (
            (last, self.tr("last frost {0}"), self._frost.last),
            (first, self.tr("first frost {0}"), self._frost.first),
        )
        texts = []
        for day, sentence, on in marks:
            x = self._x(day, columns)
            painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()))
            texts.append((x, sentence.format(yearly(on))))
        self._draw_labels(painter, c, area, texts)

    def _draw_labels(
        self, painter: QPainter, c: Palette, area: QRectF, texts: list[tuple[float, str]]
    ) -> None:
        """Words over the two frost days, kept inside the picture and apart from each other."""
        painter.setPen(QColor(c.quiet))
        metrics, taken = self.fontMetrics(), -1.0e9
        for x, text in sorted(texts):
            wide = metrics.horizontalAdvance(text)
            left = min(max(x - wide / 2, area.left(), taken), area.right() - wide)
            box = QRectF(left, 0, wide + 1, 1.5 * metrics.height())
            painter.drawText(box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
            taken = left + wide + 12

    def _draw_rain(
        self, painter: QPainter, c: Palette, area: QRectF, columns: list[tuple[float, float]]
    ) -> None:
        if self._rain is None:
            return
        most = max(*self._rain, 100.0)  # a dry place is not drawn as wet
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(c.cover))
        for (left, right), millimetres in zip(columns, self._rain, strict=True):
            high = 0.5 * area.height() * millimetres / most
            inset = 0.22 * (right - left)
            painter.drawRect(QRectF(left + inset, area.bottom() - high, right - left - 2 * inset, high))

    def _draw_warmth(
        self, painter: QPainter, c: Palette, area: QRectF, columns: list[tuple[float, float]]
    ) -> None:
        if self._mean is None:
            return
        low, high = self._low or self._mean, self._high or self._mean
        bottom, top = min(*low, *self._mean, 0.0) - 1.0, max(*high, *self._mean, 10.0) + 1.0

        def points(months: tuple[float, ...]) -> list[QPointF]:
            values = daily(months)
            middle = area.height() / (top - bottom)
            days = np.arange(0, YEAR, 3)
            return [
                QPointF(self._x(d + 0.5, columns), area.bottom() - (float(values[d]) - bottom) * middle)
                for d in days.tolist()
            ]

        painter.save()
        painter.setClipRect(area)
        zero = area.bottom() + bottom * area.height() / (top - bottom)
        painter.setPen(QPen(QColor(c.line), 1))
        painter.drawLine(QPointF(area.left(), zero), QPointF(area.right(), zero))
        if self._low or self._high:
            band = QColor(c.accent)
            band.setAlpha(40)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(band)
            painter.drawPolygon(QPolygonF(points(low) + points(high)[::-1]))
        path = QPainterPath()
        path.addPolygon(QPolygonF(points(self._mean)))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(c.accent), 2))
        painter.drawPath(path)
        painter.restore()
        self._draw_scale(painter, c, area, zero, (bottom, top))

    def _draw_scale(
        self, painter: QPainter, c: Palette, area: QRectF, zero: float, ends: tuple[float, float]
    ) -> None:
        """Freezing point, and the warmest month's mean, written to the left of the columns."""
        assert self._mean is not None
        warmest = max(self._mean)
        y = area.bottom() - (warmest - ends[0]) * area.height() / (ends[1] - ends[0])
        painter.setPen(QColor(c.quiet))
        half = self.fontMetrics().height() / 2
        for at, text in ((zero, self._warm(0.0)), (y, self._warm(warmest))):
            if at == zero or abs(at - zero) > 2 * half:
                box = QRectF(0, at - half, area.left() - 6, 2 * half)
                painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, text)
