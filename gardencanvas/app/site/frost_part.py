"""When frost comes: dates the grower knows, a list of past years, a rough estimate, or never."""

from datetime import date

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QLineEdit,
    QPlainTextEdit,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.site.typed import BadDay, day_of_year
from gardencanvas.garden.site import Climate, DayOfYear, Frost
from gardencanvas.season.frost import estimate, frost_of_years
from gardencanvas.season.past_frosts import Told, told
from gardencanvas.words.plain import yearly

_ANY_LEAP_YEAR = 2000


class FrostPart(QWidget):
    """``changed`` comes with every keystroke; ``frost`` reads what is there or raises ``ValueError``."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.basis = QComboBox()
        self.basis.setAccessibleName(self.tr("How the frost dates are known"))
        for basis, words in (
            ("known", self.tr("I know the dates")),
            ("past years", self.tr("From a list of past years")),
            ("estimated", self.tr("Estimate from the climate (rough)")),
            ("none", self.tr("Frost never comes")),
        ):
            self.basis.addItem(words, basis)
        self.basis.activated.connect(self._chosen)
        column.addWidget(self.basis)
        self.last, self.first = QLineEdit(), QLineEdit()
        self.lasts, self.firsts = QPlainTextEdit(), QPlainTextEdit()
        form = QFormLayout()
        form.setContentsMargins(0, 0, 0, 0)
        for field, name in (
            (self.last, self.tr("Last frost of spring")),
            (self.first, self.tr("First frost of autumn")),
            (self.lasts, self.tr("Last frosts, a line each")),
            (self.firsts, self.tr("First frosts, a line each")),
        ):
            field.setAccessibleName(name)
            field.textChanged.connect(self.changed)
            form.addRow(name, field)
        for box in (self.lasts, self.firsts):
            box.setPlaceholderText(self.tr("2 May\n28 April\nnone"))
            box.setFixedHeight(5 * self.fontMetrics().lineSpacing())
            box.setTabChangesFocus(True)
        self._form = form
        column.addLayout(form)
        self.words = PlainLabel("", "quiet")
        column.addWidget(self.words)
        self._chosen()

    def show_frost(self, frost: Frost) -> None:
        """Show the dates of a site."""
        known = "known" if frost.basis == "past years" else frost.basis
        self.basis.setCurrentIndex(self.basis.findData(known))
        if frost.last is not None and frost.first is not None:
            self.last.setText(yearly(frost.last))
            self.first.setText(yearly(frost.first))
        self._chosen()

    def _chosen(self) -> None:
        basis = self.basis.currentData()
        for field, when in (
            (self.last, "known"),
            (self.first, "known"),
            (self.lasts, "past years"),
            (self.firsts, "past years"),
        ):
            self._form.setRowVisible(field, basis == when)
        self.changed.emit()

    def frost(self, climate: Climate, *, south: bool) -> Frost:
        """The frost of what is chosen; says in ``words`` how it was made.

        Raises
        ------
        ValueError
            With a sentence for the grower.
        """
        basis = self.basis.currentData()
        self.words.setText("")
        if basis == "none":
            return Frost(basis="none")
        if basis == "estimated":
            return self._estimated(climate)
        if basis == "past years":
            return self._of_years(south=south)
        return Frost(last=self._day(self.last.text()), first=self._day(self.first.text()))

    def _estimated(self, climate: Climate) -> Frost:
        guess = estimate(climate)
        if guess.last is None or guess.first is None:
            self.words.setText(self.tr("Rough: by the monthly means most years bring no frost here."))
            return guess.frost
        minima = (
            self.tr("monthly minima")
            if guess.minima == "known"
            else self.tr("minima taken 5 °C below the means")
        )
        sentence = self.tr(
            "Rough: last frost about {0}, after {1} in one year of ten; first about {2}. From simulated days "
            "round your climate ({3}). A hollow or a slope shifts it: your own dates are better."
        )
        last, late, first = yearly(guess.last[1]), yearly(guess.last[2]), yearly(guess.first[1])
        self.words.setText(sentence.format(last, late, first, minima))
        return guess.frost

    def _of_years(self, *, south: bool) -> Frost:
        lasts, firsts = self._days(self.lasts), self._days(self.firsts)
        if not lasts or not firsts:
            raise ValueError(self.tr("List at least one last and one first frost, a line each."))
        parts = []
        for days, spring, name in ((lasts, True, self.tr("Last")), (firsts, False, self.tr("First"))):
            known = told(days, south=south, spring=spring)
            if known is not None:
                parts.append(f"{name}: {self._told(known)}")
        self.words.setText("\n".join(parts))
        return frost_of_years(lasts, firsts, south=south)

    def _told(self, known: Told) -> str:
        span = self.tr("{0} years, on average {1}, from {2} to {3}").format(
            known.years, yearly(known.mean), yearly(known.earliest), yearly(known.latest)
        )
        if known.safe is None:
            return span + self.tr("; too few years to say more.")
        wide = self.tr(" (a wide guess from few years)") if known.trust == "wide limit" else ""
        return span + self.tr("; one year in ten beyond {0}{1}.").format(yearly(known.safe), wide)

    def _days(self, box: QPlainTextEdit) -> list[date | None]:
        days: list[date | None] = []
        for line in box.toPlainText().splitlines()[:200]:
            if line.strip():
                day = self._day_or_none(line)
                days.append(None if day is None else date(_ANY_LEAP_YEAR, day.month, day.day))
        return days

    def _day(self, text: str) -> DayOfYear:
        day = self._day_or_none(text)
        if day is None:
            raise ValueError(self.tr("Where frost never comes, choose so above."))
        return day

    def _day_or_none(self, text: str) -> DayOfYear | None:
        try:
            return day_of_year(text)
        except BadDay as error:
            shown = text.strip()[:40] or self.tr("an empty field")
            if error.fault == "day or month":
                raise ValueError(
                    self.tr("“{0}”: write the month as a word, such as 2 May.").format(shown)
                ) from error
            raise ValueError(self.tr("“{0}” is not a day such as 2 May.").format(shown)) from error
