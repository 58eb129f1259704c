"""A day of the year: its number and its month."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from gardencanvas.app.number_fields import WholeField
from gardencanvas.garden.site import DayOfYear
from gardencanvas.words.plain import month_name

_LENGTHS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)


class DayOfYearField(QWidget):
    """Only days that come back each year can be chosen."""

    edited = Signal()

    def __init__(self, name: str, day: DayOfYear, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.day, self.month = WholeField(), QComboBox()
        self.day.setAccessibleName(self.tr("{0}, day").format(name))
        self.month.setAccessibleName(self.tr("{0}, month").format(name))
        self.month.addItems([month_name(month) for month in range(1, 13)])
        self.show_day(day)
        self.day.valueChanged.connect(self.edited)
        self.month.currentIndexChanged.connect(self._month_chosen)
        across = QHBoxLayout(self)
        across.setContentsMargins(0, 0, 0, 0)
        across.setSpacing(4)
        across.addWidget(self.day)
        across.addWidget(self.month, 1)
        self.setFocusProxy(self.day)

    def show_day(self, day: DayOfYear) -> None:
        """Show a day."""
        self.month.setCurrentIndex(day.month - 1)
        self.day.setRange(1, _LENGTHS[day.month - 1])
        self.day.setValue(day.day)

    def value(self) -> DayOfYear:
        """The day shown."""
        return DayOfYear(month=self.month.currentIndex() + 1, day=self.day.value())

    def _month_chosen(self, month: int) -> None:
        self.day.setRange(1, _LENGTHS[month])
        self.edited.emit()
