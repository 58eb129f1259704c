"""Frost: estimated from the climate, known to the grower, told from past years, or none."""

from typing import Literal, get_args

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QGridLayout,
    QHBoxLayout,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.site.day_field import DayOfYearField
from gardencanvas.app.site.frost_words import estimated, told_of
from gardencanvas.app.site.look import Caution, colours
from gardencanvas.app.site.past_table import PastTable
from gardencanvas.app.site.problem import Problem
from gardencanvas.garden.site import Climate, DayOfYear, Frost
from gardencanvas.season.curve import daily
from gardencanvas.season.dayofyear import YEAR, day_index
from gardencanvas.season.frost import Estimate, estimate, frost_of_years
from gardencanvas.season.past_frosts import told

Way = Literal["estimated", "known", "past years", "none"]
WAYS: tuple[Way, ...] = get_args(Way)
# Where the grower has said nothing yet: an invented middle of the northern half; half a year on in the south.
_START = (DayOfYear(month=5, day=5), DayOfYear(month=10, day=15))


class FrostPane(QWidget):
    """Four ways to give the frost dates; each keeps what was put in while another is chosen."""

    edited = Signal()

    def __init__(self, this_year: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._south = False
        self._estimate: Estimate | None = None
        self._given = Frost(basis="none")
        self._climate: Climate | None = None
        self.ways = QButtonGroup(self)
        self._pages: list[QWidget] = []
        self.last = DayOfYearField(self.tr("Last frost"), _START[0])
        self.first = DayOfYearField(self.tr("First frost"), _START[1])
        self.past = PastTable(this_year - 1)
        self._guess, self._told = PlainLabel("", "body"), PlainLabel("", "quiet")
        self._order = Caution()
        self._faults = Caution()
        self._lay_out()
        self.last.edited.connect(self._edited)
        self.first.edited.connect(self._edited)
        self.past.edited.connect(self._edited)
        self.ways.idToggled.connect(self._chosen)

    def _lay_out(self) -> None:
        labels = {
            "estimated": self.tr("Guess from the climate"),
            "known": self.tr("Dates I know"),
            "past years": self.tr("Days of past years"),
            "none": self.tr("Frost never comes"),
        }
        c = colours()
        self.setStyleSheet(
            f"QRadioButton {{ color: {c.ink}; }}"
            "QRadioButton::indicator { width: 12px; height: 12px; border-radius: 7px; "
            f"border: 1px solid {c.quiet}; background: {c.field}; }}"
            f"QRadioButton::indicator:checked {{ width: 6px; height: 6px; border: 4px solid {c.accent}; }}"
            f"QRadioButton:focus {{ color: {c.accent}; }}"
        )
        choices = QVBoxLayout()
        choices.setSpacing(4)
        for number, way in enumerate(WAYS):
            button = QRadioButton(labels[way])
            self.ways.addButton(button, number)
            choices.addWidget(button)
        choices.addStretch(1)
        self._pages = [self._guess_page(), self._known_page(), self._past_page(), self._none_page()]
        across = QHBoxLayout(self)
        across.setContentsMargins(0, 0, 0, 0)
        across.setSpacing(16)
        across.addLayout(choices)
        for page in self._pages:
            across.addWidget(page, 1)

    def _guess_page(self) -> QWidget:
        return _page(self._guess)

    def _known_page(self) -> QWidget:
        form = QWidget()
        grid = QGridLayout(form)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(6)
        rows = (
            (self.tr("Last frost of spring"), self.last),
            (self.tr("First frost of autumn"), self.first),
        )
        for row, (text, field) in enumerate(rows):
            grid.addWidget(PlainLabel(text, "quiet"), row, 0)
            grid.addWidget(field, row, 1)
        grid.setColumnStretch(0, 1)
        note = PlainLabel(
            self.tr("Typical days: frost comes after the one, or before the other, in half the years."),
            "quiet",
        )
        return _page(form, note, self._order)

    def _past_page(self) -> QWidget:
        return _page(self.past, self._told, self._faults)

    def _none_page(self) -> QWidget:
        return _page(PlainLabel(self.tr("The season has no frost on either side, and none is warned of.")))

    # showing

    def show_site(self, frost: Frost, climate: Climate, *, south: bool) -> None:
        """Show a site's own frost; an estimate is kept as it stands until the climate changes."""
        self._south, self._climate, self._given, self._estimate = south, climate, frost, None
        last, first = _START if not south else _START[::-1]
        self.last.show_day(frost.last or last)
        self.first.show_day(frost.first or first)
        self._choose("known" if frost.basis == "past years" else frost.basis)
        self._tell()

    def set_south(self, south: bool) -> None:
        """Count frosts of past years by the seasons of that half of the Earth."""
        if south != self._south:
            self._south = south
            self._tell()

    def set_climate(self, climate: Climate) -> None:
        """Guess anew from another climate."""
        self._climate = climate
        self._estimate = estimate(climate)
        self._given = self._estimate.frost if self.way == "estimated" else self._given
        self._tell()

    def guess_from(self, climate: Climate) -> None:
        """Take the guess from a climate, whatever was chosen before."""
        self._choose("estimated")
        self.set_climate(climate)

    def _choose(self, way: Way) -> None:
        button = self.ways.button(WAYS.index(way))
        if button is not None:
            button.setChecked(True)
        self._show_page(WAYS.index(way))

    def _show_page(self, number: int) -> None:
        # Not stacked: the pages that are not shown would claim their height too.
        for each, page in enumerate(self._pages):
            page.setVisible(each == number)

    # reading

    @property
    def way(self) -> Way:
        """How the dates are given."""
        return WAYS[max(self.ways.checkedId(), 0)]

    def frost(self) -> Frost:
        """The frost as it is given now; what is typed wrongly is left out of a list of past years."""
        way = self.way
        if way == "none":
            return Frost(basis="none")
        if way == "estimated":
            return self._estimate.frost if self._estimate is not None else self._given
        if way == "past years":
            years = self.past.past_years()
            return frost_of_years(years.last, years.first, south=self._south)
        frost = Frost(last=self.last.value(), first=self.first.value(), basis="known")
        same_days = (frost.last, frost.first) == (self._given.last, self._given.first)
        return self._given if same_days and self._given.basis == "past years" else frost

    def problems(self) -> list[Problem]:
        """What cannot be taken."""
        if self.way != "past years":
            return []
        found = self.past.problems()
        years = self.past.past_years()
        if not found and not (years.last and years.first):
            sentence = self.tr(
                "Frosts of past years: give at least one last and one first frost, or choose another way."
            )
            found = [Problem(sentence, self.past)]
        return found

    # telling

    def _chosen(self, number: int, on: bool) -> None:
        if on:
            self._show_page(number)
            if self.way == "estimated" and self._estimate is None and self._given.basis != "estimated":
                self._guess_now()
            self._edited()

    def _guess_now(self) -> None:
        if self._climate is not None:
            self._estimate = estimate(self._climate)

    def _edited(self) -> None:
        self._tell()
        self.edited.emit()

    def _tell(self) -> None:
        if self.way == "estimated":
            known = self._climate is not None and self._climate.min_c is not None
            self._guess.setText(estimated(self.frost(), self._estimate, minima_known=known))
        years = self.past.past_years()
        last = told(years.last, south=self._south, spring=True)
        first = told(years.first, south=self._south, spring=False)
        self._told.setText(told_of(last, first))
        self._faults.say(" ".join(problem.sentence for problem in self.past.problems()[:2]))
        self._order.say(
            self.tr(
                "The time from the last frost to the first is the colder part of the year. Are they swapped?"
            )
            if self._swapped()
            else ""
        )

    def _swapped(self) -> bool:
        """Whether the frost-free days of the known dates are colder than the others."""
        if self._climate is None:
            return False
        warmth = daily(self._climate.mean_c)
        last, first = day_index(self.last.value()), day_index(self.first.value())
        free = [(last + step) % YEAR for step in range((first - last) % YEAR)]
        if not 0 < len(free) < YEAR:
            return False
        mean = float(warmth[free].mean())
        return mean < (float(warmth.sum()) - mean * len(free)) / (YEAR - len(free))


def _page(*widgets: QWidget) -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(6)
    for widget in widgets:
        column.addWidget(widget, 0, Qt.AlignmentFlag.AlignTop)
    column.addStretch(1)
    return page
