"""The climate as a table: mean, minimum, maximum and rain of twelve months, checked while it is typed."""

from dataclasses import dataclass

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTableWidgetItem, QWidget

from gardencanvas.app.site.problem import Problem
from gardencanvas.app.site.typed import number
from gardencanvas.app.site.typed_table import TypedTable
from gardencanvas.garden.site import Climate
from gardencanvas.words.language import local
from gardencanvas.words.plain import Units, month_name, short_month

MEAN, LOW, HIGH, RAIN = range(4)
_VALUE = Qt.ItemDataRole.UserRole  # what a cell means, in °C or mm; None while it is empty or wrong
COLDEST_C, HOTTEST_C, WETTEST_MM = -60.0, 55.0, 3000.0  # those of garden.site


@dataclass(frozen=True)
class _Unit:
    """How a quantity is shown: ``shown = value × scale + zero``."""

    name: str
    scale: float = 1.0
    zero: float = 0.0
    decimals: int = 1

    def text(self, value: float) -> str:
        shown = f"{value * self.scale + self.zero:.{self.decimals}f}"
        return local("0" + shown[2:] if shown.startswith("-0") and float(shown) == 0.0 else shown)

    def value(self, shown: float) -> float:
        return (shown - self.zero) / self.scale


_CELSIUS, _FAHRENHEIT = _Unit("°C"), _Unit("°F", 1.8, 32.0)
_MILLIMETRES, _INCHES = _Unit("mm", decimals=0), _Unit("in", 1 / 25.4, decimals=2)


class MonthsTable(TypedTable):
    """Four rows of twelve months. Enter edits a cell, Tab leaves the table; whole rows can be pasted."""

    def __init__(self, units: Units, parent: QWidget | None = None) -> None:
        super().__init__(4, 12, parent)
        imperial = units == "imperial"
        warmth, water = (_FAHRENHEIT, _INCHES) if imperial else (_CELSIUS, _MILLIMETRES)
        self._units = (warmth, warmth, warmth, water)
        self.setAccessibleName(self.tr("Monthly climate"))
        self.setAccessibleDescription(self.tr("Enter or a digit edits a cell; rows can be pasted"))
        self.setHorizontalHeaderLabels([short_month(month) for month in range(1, 13)])
        self._row_names = [self.tr("Mean"), self.tr("Minimum"), self.tr("Maximum"), self.tr("Rain")]
        self.setVerticalHeaderLabels(
            [f"{name} {unit.name}" for name, unit in zip(self._row_names, self._units, strict=True)]
        )
        tips = (
            self.tr("Mean temperature of the month"),
            self.tr("Mean of the days' lowest temperatures; leave the row empty if it is not known"),
            self.tr("Mean of the days' highest temperatures; leave the row empty if it is not known"),
            self.tr("Rain of the month; leave the row empty if it is not known"),
        )
        for row, tip in enumerate(tips):
            header = self.verticalHeaderItem(row)
            if header is not None:
                header.setToolTip(tip)
        self._shape()

    def _shape(self) -> None:
        across = self.horizontalHeader()
        across.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        across.setMinimumSectionSize(self.fontMetrics().horizontalAdvance("-88.8") + 4)
        across.setSectionsClickable(False)
        down = self.verticalHeader()
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setDefaultSectionSize(self.fontMetrics().height() + 10)
        down.setSectionsClickable(False)
        down.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._fit_height()

    def _fit_height(self) -> None:
        scroll = self.horizontalScrollBar().sizeHint().height()
        rows = 4 * self.verticalHeader().defaultSectionSize()
        narrow = self.horizontalHeader().length() > self.viewport().width() > 0
        self.setFixedHeight(
            self.horizontalHeader().sizeHint().height() + rows + 4 + (scroll if narrow else 0)
        )

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_height()

    def minimumSizeHint(self) -> QSize:
        return QSize(220, self.height())

    # showing and reading

    def show_climate(self, climate: Climate) -> None:
        """Show a climate; that is no edit."""
        self.quietly(lambda: self._put_all((climate.mean_c, climate.min_c, climate.max_c, climate.rain_mm)))
        self.mark()

    def _put_all(self, rows: tuple[tuple[float, ...] | None, ...]) -> None:
        for row, months in enumerate(rows):
            for column in range(12):
                self._put(row, column, None if months is None else months[column])

    def row_values(self, row: int) -> list[float | None]:
        """The twelve values of a row in °C or mm; None where a cell is empty or wrong."""
        return [self._value(row, column) for column in range(12)]

    def whole_row(self, row: int) -> tuple[float, ...] | None:
        """The twelve values of a row; None unless all are there."""
        values = [value for value in self.row_values(row) if value is not None]
        return tuple(values) if len(values) == 12 else None

    def _put(self, row: int, column: int, value: float | None) -> None:
        item = QTableWidgetItem("" if value is None else self._units[row].text(value))
        item.setTextAlignment(Qt.AlignmentFlag.AlignCenter)
        item.setData(_VALUE, value)
        self.setItem(row, column, item)

    def _value(self, row: int, column: int) -> float | None:
        item = self.item(row, column)
        value = item.data(_VALUE) if item is not None else None
        return value if isinstance(value, float) else None

    # checking

    def problems(self) -> list[Problem]:
        """What cannot be taken, in the order of the rows."""
        found: list[Problem] = []
        for row in range(4):
            found.extend(Problem(sentence, self) for sentence in self._row_faults(row))
        if not found:
            found.extend(Problem(sentence, self) for sentence in self._order_faults())
        return found

    def wrong_cells(self) -> list[tuple[int, int]]:
        """Row and column of every cell that cannot be taken, or is missing from its row."""
        wrong = self._out_of_order()
        for row in range(4):
            needed = row == MEAN or any(self.text(row, column) for column in range(12))
            wrong += [(row, column) for column in range(12) if needed and self._value(row, column) is None]
        return sorted(wrong)

    def _row_faults(self, row: int) -> list[str]:
        name, unit = self._row_names[row], self._units[row]
        low, high = (0.0, WETTEST_MM) if row == RAIN else (COLDEST_C, HOTTEST_C)
        faults, missing = [], []
        for column in range(12):
            text = self.text(row, column)
            if not text:
                missing.append(short_month(column + 1))
            elif self._value(row, column) is None:
                faults.append(
                    self.tr("{0}, {1}: “{2}” is not a number from {3} to {4} {5}.").format(
                        name, month_name(column + 1), _short(text), unit.text(low), unit.text(high), unit.name
                    )
                )
        if missing and row == MEAN:
            faults.append(
                self.tr("{0}: {1} is missing; all twelve are needed.").format(name, ", ".join(missing))
            )
        elif 0 < len(missing) < 12:
            faults.append(
                self.tr("{0}: {1} is missing; give all twelve or leave the row empty.").format(
                    name, ", ".join(missing)
                )
            )
        return faults

    def _out_of_order(self) -> list[tuple[int, int]]:
        wrong = []
        for column in range(12):
            mean = self._value(MEAN, column)
            for row, sign in ((LOW, 1), (HIGH, -1)):
                other = self._value(row, column)
                if mean is not None and other is not None and sign * other > sign * mean:
                    wrong.append((row, column))
        return wrong

    def _order_faults(self) -> list[str]:
        sentences = {
            LOW: self.tr("{0}: the minimum lies above the mean."),
            HIGH: self.tr("{0}: the maximum lies below the mean."),
        }
        return [sentences[row].format(month_name(column + 1)) for row, column in self._out_of_order()]

    # editing

    def taken(self) -> None:
        """Read what was typed; a cell left as it was shown keeps its exact value."""
        for row in range(4):
            for column in range(12):
                item = self.item(row, column)
                if item is not None:
                    self._read(
                        item, self._units[row], (0.0, WETTEST_MM) if row == RAIN else (COLDEST_C, HOTTEST_C)
                    )

    @staticmethod
    def _read(item: QTableWidgetItem, unit: _Unit, limits: tuple[float, float]) -> None:
        before = item.data(_VALUE)
        if isinstance(before, float) and item.text().strip() == unit.text(before):
            return
        try:
            value = unit.value(number(item.text()))
        except ValueError:
            item.setData(_VALUE, None)
            return
        within = limits[0] - 1e-9 <= value <= limits[1] + 1e-9
        item.setData(_VALUE, min(max(value, limits[0]), limits[1]) if within else None)

    def lay(self, lines: list[list[str]]) -> None:
        """Rows as they come; one line of words, or one column of numbers, is laid along the row."""
        if len(lines) == 1 and len(lines[0]) == 1:
            lines = [lines[0][0].replace(";", " ").split()]
        elif len(lines) > 1 and all(len(line) == 1 for line in lines):
            lines = [[line[0] for line in lines]]
        super().lay(lines)


def _short(text: str) -> str:
    return text if len(text) <= 20 else text[:19] + "…"
