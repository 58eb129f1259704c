"""Fields that commit one edit when the grower is done with them."""

from datetime import date

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QDateEdit, QWidget

from gardencanvas.app.number_fields import DecimalField, WholeField
from gardencanvas.words.plain import Units

_INCH = 0.0254


class LengthField(DecimalField):
    """A length in centimetres or inches; ``committed`` gives metres."""

    committed = Signal(float)

    def __init__(
        self, name: str, units: Units, low_m: float, high_m: float, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.per_unit = _INCH if units == "imperial" else 0.01
        self.setSuffix(" in" if units == "imperial" else " cm")
        self.setDecimals(1)
        self.setRange(low_m / self.per_unit, high_m / self.per_unit)
        self.setKeyboardTracking(False)
        self.setAccessibleName(name)
        self._shown_m = 0.0
        self.editingFinished.connect(self._done)

    def show_metres(self, metres: float) -> None:
        """Show a length without committing it."""
        self._shown_m = metres
        self.blockSignals(True)
        self.setValue(metres / self.per_unit)
        self.blockSignals(False)

    def _done(self) -> None:
        # A field left as it was commits nothing, else undo would seem dead.
        if abs(self.value() - self._shown_m / self.per_unit) > 0.051:
            self.committed.emit(self.value() * self.per_unit)


class CountField(WholeField):
    """A whole number."""

    committed = Signal(int)

    def __init__(self, name: str, low: int, high: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setRange(low, high)
        self.setKeyboardTracking(False)
        self.setAccessibleName(name)
        self._shown = low
        self.editingFinished.connect(self._done)

    def show_count(self, count: int) -> None:
        """Show a number without committing it."""
        self._shown = count
        self.blockSignals(True)
        self.setValue(count)
        self.blockSignals(False)

    def _done(self) -> None:
        if self.value() != self._shown:
            self.committed.emit(self.value())


class AngleField(DecimalField):
    """An angle in degrees, clockwise on the plan."""

    committed = Signal(float)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setRange(-360.0, 360.0)
        self.setDecimals(1)
        self.setSuffix("°")
        self.setWrapping(True)
        self.setKeyboardTracking(False)
        self.setAccessibleName(name)
        self._shown = 0.0
        self.editingFinished.connect(self._done)

    def show_angle(self, degrees: float) -> None:
        """Show an angle without committing it."""
        self._shown = degrees
        self.blockSignals(True)
        self.setValue(degrees)
        self.blockSignals(False)

    def _done(self) -> None:
        if abs(self.value() - self._shown) > 0.051:
            self.committed.emit(self.value())


class DayField(QDateEdit):
    """A day, with a calendar to pick it from."""

    committed = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setCalendarPopup(True)
        self.setDisplayFormat(self.tr("d MMM yyyy"))
        self.setKeyboardTracking(False)
        self.setDateRange(QDate(1900, 1, 1), QDate(2200, 12, 31))
        self.setAccessibleName(name)
        self._shown = date(2000, 1, 1)
        self.editingFinished.connect(self._done)

    def show_day(self, on: date) -> None:
        """Show a day without committing it."""
        self._shown = on
        self.blockSignals(True)
        self.setDate(QDate(on.year, on.month, on.day))
        self.blockSignals(False)

    def _done(self) -> None:
        chosen = self.date()
        on = date(chosen.year(), chosen.month(), chosen.day())
        if on != self._shown:
            self.committed.emit(on)
