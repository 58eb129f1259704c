"""The climate: its picture, its table, and where its numbers come from."""

from PySide6.QtCore import QPoint, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.site.look import Caution
from gardencanvas.app.site.months_table import HIGH, LOW, MEAN, RAIN, MonthsTable
from gardencanvas.app.site.problem import Problem
from gardencanvas.app.site.year_picture import YearPicture
from gardencanvas.garden.site import Climate, Frost
from gardencanvas.words.plain import Units

_LONGEST_SOURCE = 10_000  # characters, garden.value.Note


class ClimatePane(QWidget):
    """``edited`` comes with every change the grower makes."""

    edited = Signal()

    def __init__(self, units: Units, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._given: Climate | None = None
        self._frost = Frost(basis="none")
        self.table = MonthsTable(units)
        self.picture = YearPicture(self._columns, units)
        self.source = QLineEdit()
        self.source.setMaxLength(_LONGEST_SOURCE)
        self.source.setAccessibleName(self.tr("Where these numbers come from"))
        self.caution = Caution()
        label = PlainLabel(self.tr("From"), "quiet")
        label.setWordWrap(False)
        label.setBuddy(self.source)
        from_where = QHBoxLayout()
        from_where.setSpacing(12)
        from_where.addWidget(label)
        from_where.addWidget(self.source, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.picture, 1)
        column.addWidget(self.table)
        column.addWidget(self.caution)
        column.addLayout(from_where)
        self.table.edited.connect(self._table_edited)
        self.table.horizontalHeader().geometriesChanged.connect(self.picture.update)
        self.table.horizontalHeader().sectionResized.connect(self._resized)
        self.table.horizontalScrollBar().valueChanged.connect(self._resized)
        self.source.textEdited.connect(self._source_edited)

    def show_climate(self, climate: Climate) -> None:
        """Show a climate; that is no edit."""
        self._given = climate
        self.table.show_climate(climate)
        self.source.setText(climate.source)
        self.source.setCursorPosition(0)
        self._tell()

    def show_frost(self, frost: Frost) -> None:
        """Show the time with frost in the picture."""
        self._frost = frost
        self._draw()

    def climate(self) -> Climate | None:
        """The climate as it stands, the very one given if nothing was changed; None while it has problems."""
        mean = self.table.whole_row(MEAN)
        if mean is None or self.table.problems():
            return None
        climate = Climate(
            mean_c=mean,
            min_c=self.table.whole_row(LOW),
            max_c=self.table.whole_row(HIGH),
            rain_mm=self.table.whole_row(RAIN),
            source=self.source.text(),
        )
        return self._given if climate == self._given else climate

    def problems(self) -> list[Problem]:
        """What cannot be taken."""
        return self.table.problems()

    def _table_edited(self) -> None:
        # Changed numbers are no longer those of the source.
        changed = self.tr(", changed by hand")
        given = self._given
        if given is not None and self.source.text() == given.source and not given.source.endswith(changed):
            self.source.setText((given.source.rstrip(".") + changed) if given.source else self.tr("by hand"))
            self.source.setCursorPosition(0)
        self._tell()
        self.edited.emit()

    def _source_edited(self) -> None:
        self.edited.emit()

    def _resized(self, *_: int) -> None:
        self.picture.update()

    def _tell(self) -> None:
        found = self.problems()
        more = len(found) - 2
        sentences = [problem.sentence for problem in found[:2]]
        if more > 0:
            sentences.append(self.tr("{0} more.").format(more))
        self.caution.say(" ".join(sentences))
        self._draw()

    def _draw(self) -> None:
        mean, low, high, rain = (self.table.whole_row(row) for row in (MEAN, LOW, HIGH, RAIN))
        self.picture.show_year(mean, low, high, rain, self._frost)

    def _columns(self) -> list[tuple[float, float]]:
        """Left and right of each month's column, in the picture's own coordinates."""
        table = self.table
        shift = table.viewport().mapTo(self, QPoint(0, 0)).x() - self.picture.x()
        lefts = [shift + table.columnViewportPosition(column) for column in range(12)]
        return [(left, left + table.columnWidth(column)) for column, left in enumerate(lefts)]
