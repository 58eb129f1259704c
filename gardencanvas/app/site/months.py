"""The table of twelve months: mean, lowest, highest and rain."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from gardencanvas.app.site.typed import number
from gardencanvas.garden.site import Climate
from gardencanvas.words.plain import MONTHS


class MonthTable(QTableWidget):
    """Cells to type in; empty columns of minima, maxima or rain mean they are not known."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(12, 4, parent)
        self._source = ""
        self.setAccessibleName(self.tr("Monthly climate"))
        self.setHorizontalHeaderLabels(
            [self.tr("mean °C"), self.tr("min °C"), self.tr("max °C"), self.tr("rain mm")]
        )
        self.setVerticalHeaderLabels([name[:3] for name in MONTHS])
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.setShowGrid(True)
        self.setMinimumHeight(13 * (self.fontMetrics().height() + 5))
        self.setTabKeyNavigation(False)
        self.itemChanged.connect(self.changed)

    def show_climate(self, climate: Climate) -> None:
        """Show a climate."""
        self.blockSignals(True)
        self._source = climate.source
        for column, values in enumerate((climate.mean_c, climate.min_c, climate.max_c, climate.rain_mm)):
            for month in range(12):
                text = (
                    "" if values is None else f"{values[month]:.1f}" if column < 3 else f"{values[month]:.0f}"
                )
                cell = QTableWidgetItem(text)
                cell.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
                self.setItem(month, column, cell)
        self.blockSignals(False)
        self.changed.emit()

    def climate(self) -> Climate:
        """What is in the table.

        Raises
        ------
        ValueError
            With a sentence that names month and column.
        """
        means = self._column(0)
        if means is None:
            raise ValueError(self.tr("Give the mean temperature of each month."))
        return Climate(
            mean_c=means,
            min_c=self._column(1),
            max_c=self._column(2),
            rain_mm=self._column(3),
            source=self._source,
        )

    def _column(self, column: int) -> tuple[float, ...] | None:
        texts = [
            self.item(month, column).text().strip() if self.item(month, column) else "" for month in range(12)
        ]
        if not any(texts):
            return None
        values = []
        for month, text in enumerate(texts):
            try:
                values.append(number(text))
            except ValueError as error:
                name = self.horizontalHeaderItem(column).text()
                shown = text[:20] or self.tr("empty")
                raise ValueError(
                    self.tr("{0}, {1}: “{2}” is not a number.").format(MONTHS[month], name, shown)
                ) from error
        return tuple(values)
