"""A grower's own list: the last and first frost of past years."""

from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QSize
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QHeaderView, QTableWidgetItem, QWidget

from gardencanvas.app.site.look import colours
from gardencanvas.app.site.problem import Problem
from gardencanvas.app.site.typed import BadDay, day_of_year
from gardencanvas.app.site.typed_table import TypedTable

YEAR, LAST, FIRST = range(3)
MOST_YEARS = 100
_SHOWN_YEARS = 5


@dataclass(frozen=True)
class PastYears:
    """Dates of the last and the first frosts; None for a year that had none."""

    last: tuple[date | None, ...]
    first: tuple[date | None, ...]


class PastTable(TypedTable):
    """One row a year, newest first; there is always an empty row at the end. Rows can be pasted."""

    def __init__(self, newest: int, parent: QWidget | None = None) -> None:
        super().__init__(0, 3, parent)
        self.setHorizontalHeaderLabels([self.tr("Year"), self.tr("Last frost"), self.tr("First frost")])
        self.setAccessibleName(self.tr("Frosts of past years"))
        self.setAccessibleDescription(self.tr("Write days as in 12 May; write none for a year without frost"))
        self.verticalHeader().hide()
        across = self.horizontalHeader()
        across.setSectionsClickable(False)
        across.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        across.setSectionResizeMode(YEAR, QHeaderView.ResizeMode.Fixed)
        across.resizeSection(YEAR, self.fontMetrics().horizontalAdvance("88888888"))
        down = self.verticalHeader()
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setDefaultSectionSize(self.fontMetrics().height() + 8)
        for back in range(_SHOWN_YEARS):
            self._add_year(newest - back)

    def sizeHint(self) -> QSize:
        rows = 4 * self.verticalHeader().defaultSectionSize()
        return QSize(260, self.horizontalHeader().sizeHint().height() + rows + 4)

    # reading

    def past_years(self) -> PastYears:
        """The dates that can be read; a cell left empty says nothing about its year."""
        dates: dict[int, list[date | None]] = {LAST: [], FIRST: []}
        for row in range(self.rowCount()):
            for column in (LAST, FIRST):
                if not self.text(row, column):
                    continue
                try:
                    day = day_of_year(self.text(row, column))
                except BadDay:
                    continue
                # Which year it was bears on no mean: any year without 29 February will do.
                dates[column].append(None if day is None else date(2001, day.month, day.day))
        return PastYears(tuple(dates[LAST]), tuple(dates[FIRST]))

    def problems(self) -> list[Problem]:
        """What cannot be taken."""
        return [Problem(self._fault(*at), self) for at in self.wrong_cells()]

    def wrong_cells(self) -> list[tuple[int, int]]:
        """Row and column of every cell that cannot be read."""
        cells = [(row, column) for row in range(self.rowCount()) for column in (LAST, FIRST)]
        return [at for at in cells if self._fault(*at)]

    def _fault(self, row: int, column: int) -> str:
        text = self.text(row, column)
        if not text:
            return ""
        try:
            day_of_year(text)
        except BadDay as error:
            shown = text if len(text) <= 20 else text[:19] + "…"
            sentences = {
                "unreadable": self.tr("“{0}” is no day: write it as in 12 May, or none."),
                "day or month": self.tr("“{0}”: which one is the month? Write it as a word, as in 12 May."),
                "no such day": self.tr("“{0}”: there is no such day."),
            }
            year = self.text(row, YEAR)
            return (f"{year[:10]}: " if year else "") + sentences[error.fault].format(shown)
        return ""

    # editing

    def taken(self) -> None:
        """Keep an empty row at the end, numbered one year back."""
        end = self.rowCount() - 1
        if end + 1 < MOST_YEARS and (self.text(end, LAST) or self.text(end, FIRST)):
            before = self.text(end, YEAR)
            counted = before.isascii() and before.isdigit() and len(before) == 4
            self._add_year(int(before) - 1 if counted else None)

    def lay(self, lines: list[list[str]]) -> None:
        """Write rows of texts from the current cell on, adding years as needed."""
        while self.rowCount() < min(max(self.currentRow(), 0) + len(lines), MOST_YEARS):
            self._add_year(None)
        super().lay(lines)

    def _add_year(self, year: int | None) -> None:
        self.quietly(lambda: self._append(str(year) if year is not None else ""))

    def _append(self, year: str) -> None:
        row = self.rowCount()
        self.insertRow(row)
        for column in range(3):
            item = QTableWidgetItem(year if column == YEAR else "")
            if column == YEAR:
                item.setForeground(QColor(colours().quiet))
            self.setItem(row, column, item)
