"""Rows of ranges to type: least, usual, most and unit; each is checked while it is typed."""

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLineEdit, QWidget

from gardencanvas.app.labels import PlainLabel, as_plain
from gardencanvas.app.own_form.reading_numbers import typed, unit_for, written
from gardencanvas.crops.model import Quantity
from gardencanvas.words.crop_facts import label
from gardencanvas.words.plain import Measure

_LONGEST = 12  # characters of a number


class Range(QObject):
    """One field of the form: three boxes."""

    changed = Signal()

    def __init__(self, field: str, label: str, measure: Measure, parent: QWidget) -> None:
        super().__init__(parent)
        self.field, self.label, self._measure = field, label, measure
        self._before: Quantity | None = None
        self._before_texts = ("", "", "")
        self.boxes = tuple(QLineEdit(parent) for _ in range(3))
        for box, word in zip(self.boxes, (self.tr("least"), self.tr("usual"), self.tr("most")), strict=True):
            box.setMaxLength(_LONGEST)
            box.setFixedWidth(box.fontMetrics().horizontalAdvance("00000.0") + 22)
            box.setAlignment(Qt.AlignmentFlag.AlignRight)
            box.setAccessibleName(f"{label}, {word}")
            box.textChanged.connect(self._typed)
        self.mark()

    @property
    def usual(self) -> QLineEdit:
        """The box of the usual figure."""
        return self.boxes[1]

    def show(self, value: Quantity | None) -> None:
        """Put a range into the boxes; it stays what it was, source and all, unless it is changed."""
        self._before, self._before_texts = value, written(self.field, value, self._measure)
        for box, text in zip(self.boxes, self._before_texts, strict=True):
            box.setText(text)

    def hint(self, value: Quantity | None) -> None:
        """Show a range behind the empty boxes: what holds if nothing is typed."""
        for box, text in zip(self.boxes, written(self.field, value, self._measure), strict=True):
            box.setPlaceholderText(text)

    @property
    def texts(self) -> tuple[str, str, str]:
        """What is typed."""
        low, mid, high = (box.text() for box in self.boxes)
        return low, mid, high

    @property
    def value(self) -> Quantity | None:
        """The range; what it was before where it was left as it was."""
        if self._before is not None and self.texts == self._before_texts:
            return self._before
        return typed(self.field, self.texts, self._measure).value

    @property
    def fault(self) -> str:
        """What is wrong with what is typed; empty for nothing."""
        why = typed(self.field, self.texts, self._measure).fault if self.texts != self._before_texts else ""
        return f"{self.label}: {why}" if why else ""

    def mark(self) -> None:
        """Show on the boxes whether something is wrong."""
        fault = self.fault
        for box in self.boxes:
            if box.property("fault") != bool(fault):
                box.setProperty("fault", bool(fault))
                box.style().unpolish(box)
                box.style().polish(box)
            box.setToolTip(as_plain(fault))
            box.setAccessibleDescription(fault)

    def _typed(self) -> None:
        self.mark()
        self.changed.emit()


class RangeGrid(QWidget):
    """Ranges under one another, in columns."""

    changed = Signal()

    def __init__(self, fields: tuple[str, ...], measure: Measure, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(6)
        grid.setVerticalSpacing(4)
        grid.setColumnStretch(0, 1)
        grid.setColumnMinimumWidth(
            4, self.fontMetrics().horizontalAdvance(unit_for("seed_life_y", measure.units).word) + 4
        )
        for column, word in enumerate((self.tr("least"), self.tr("usual"), self.tr("most")), 1):
            head = PlainLabel(word, "source")
            head.setAlignment(Qt.AlignmentFlag.AlignRight)
            grid.addWidget(head, 0, column)
        self.ranges: dict[str, Range] = {}
        for row, field in enumerate(fields, 1):
            called = label(field)
            made = Range(field, called, measure, self)
            made.changed.connect(self.changed)
            caption = PlainLabel(called, "body")
            caption.setWordWrap(False)
            caption.setBuddy(made.usual)
            grid.addWidget(caption, row, 0)
            for column, box in enumerate(made.boxes, 1):
                grid.addWidget(box, row, column)
            unit = PlainLabel(unit_for(field, measure.units).word, "quiet")
            unit.setWordWrap(False)
            grid.addWidget(unit, row, 4)
            self.ranges[field] = made

    @property
    def fault(self) -> str:
        """The first fault; empty for none."""
        return next((r.fault for r in self.ranges.values() if r.fault), "")

    @property
    def values(self) -> dict[str, Quantity | None]:
        """The ranges by field."""
        return {field: r.value for field, r in self.ranges.items()}
