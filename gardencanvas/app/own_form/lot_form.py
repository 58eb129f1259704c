"""A seed lot: how much, from when, and what a test of it showed."""

from datetime import date

from PySide6.QtCore import QDate
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QFormLayout,
    QHBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel, as_plain
from gardencanvas.app.number_fields import DecimalField, WholeField
from gardencanvas.app.own_form.fields import choose, line, rows
from gardencanvas.app.own_form.form import OwnForm
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.drafting import free_id
from gardencanvas.crops.model import Crop
from gardencanvas.crops.tin import SeedLot, age_warning, seeds_in
from gardencanvas.words.language import figure
from gardencanvas.words.plain import name_of, variety_name
from gardencanvas.words.sources import origin
from gardencanvas.words.tin import age_words


class LotForm(OwnForm):
    """Makes or changes a seed lot of one crop; warns of old seed while the year is typed."""

    def __init__(
        self,
        known: Catalogue,
        crop: Crop,
        on: date,
        taken: set[str],
        lot: SeedLot | None = None,
        variety_id: str | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", parent)
        self._known, self._crop, self._on, self._taken, self._lot = known, crop, on, taken, lot
        self.setWindowTitle(self.tr("Seed lot: {0}").format(name_of(crop)))
        self.body.addLayout(self._fields(lot.variety if lot else variety_id))
        self.count = PlainLabel(role="quiet")
        self.warning = PlainLabel(role="warning")
        self.body.addWidget(self.count)
        self.body.addWidget(self.warning)
        self.body.addStretch(1)
        self.keep_where(None)
        self._fill()
        self.finish(self.note)
        self.amount.setFocus()
        self.amount.selectAll()

    def _fields(self, variety_id: str | None) -> QFormLayout:
        form = rows()
        self.variety = QComboBox()
        self.variety.setAccessibleName(self.tr("Variety"))
        self.variety.addItem(self.tr("none named"), None)
        for variety in self._known.varieties_of(self._crop.id):
            self.variety.addItem(variety_name(variety), variety.id)
        choose(self.variety, variety_id)
        self.variety.currentIndexChanged.connect(self.check)
        form.addRow(self.tr("Variety"), self.variety)
        form.addRow(self.tr("Amount"), self._amounts())
        self.year = WholeField()
        self.year.setRange(1900, 2200)
        self.year.setAccessibleName(self.tr("Year of harvest, or as on the packet"))
        self.year.setToolTip(self.year.accessibleName())
        self.year.valueChanged.connect(self.check)
        form.addRow(self.tr("Year"), self.year)
        form.addRow(self.tr("Test"), self._test())
        self.on = QDateEdit()
        self.on.setCalendarPopup(True)
        self.on.setDisplayFormat(self.tr("d MMM yyyy"))
        self.on.setAccessibleName(self.tr("Day of the test"))
        self.on.dateChanged.connect(self.check)
        form.addRow(self.tr("Tested on"), self.on)
        self.note = line(form, self.tr("Note"), self.check, 600)
        return form

    def _amounts(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.amount = DecimalField()
        self.amount.setRange(0.0, 1e6)
        self.amount.setDecimals(1)
        self.amount.setAccessibleName(self.tr("Amount"))
        self.amount.valueChanged.connect(self.check)
        self.unit = QComboBox()
        self.unit.setAccessibleName(self.tr("Seeds or grams"))
        self.unit.addItem(self.tr("seeds"), "seeds")
        self.unit.addItem(self.tr("grams"), "grams")
        self.unit.currentIndexChanged.connect(self.check)
        row.addWidget(self.amount, 1)
        row.addWidget(self.unit)
        return row

    def _test(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.sprouted, self.laid = WholeField(), WholeField()
        for box, word in (
            (self.sprouted, self.tr("Seeds that sprouted")),
            (self.laid, self.tr("Seeds laid out; 0 for no test")),
        ):
            box.setRange(0, 1000)
            box.setAccessibleName(word)
            box.setToolTip(word)
            box.valueChanged.connect(self.check)
        row.addWidget(self.sprouted, 1)
        between = PlainLabel(self.tr("sprouted of"), "quiet")
        between.setWordWrap(False)
        between.setMinimumWidth(between.sizeHint().width())
        row.addWidget(between)
        row.addWidget(self.laid, 1)
        return row

    def _fill(self) -> None:
        lot, today = self._lot, self._on
        self.year.setValue(today.year if lot is None else lot.year)
        tested = today if lot is None or lot.tested_on is None else lot.tested_on
        self.on.setDate(QDate(tested.year, tested.month, tested.day))
        if lot is None:
            return
        choose(self.unit, "seeds" if lot.grams is None else "grams")
        self.amount.setValue(lot.seeds if lot.grams is None and lot.seeds is not None else lot.grams or 0.0)
        if lot.tested is not None:
            self.laid.setValue(100)
            self.sprouted.setValue(round(100 * lot.tested))
        self.note.setText(lot.note)

    def drafted(self) -> tuple[SeedLot | None, str]:
        """The lot as it stands in the form, and what is wrong with it."""
        if self.amount.value() <= 0.0:
            return None, self.tr("give an amount")
        if self.sprouted.value() > self.laid.value():
            return None, self.tr("more seeds sprouted than were laid out")
        day = self.on.date()
        tested = self.laid.value() > 0
        lot = SeedLot(
            id=self._lot.id if self._lot else free_id(f"{self._crop.id} {self.year.value()}", self._taken),
            crop=self._crop.id,
            variety=self.variety.currentData(),
            year=self.year.value(),
            tested=self.sprouted.value() / self.laid.value() if tested else None,
            tested_on=date(day.year(), day.month(), day.day()) if tested else None,
            note=self.note.text().strip(),
            **{self.unit.currentData(): self.amount.value()},
        )
        return lot, ""

    def check(self, *_: object) -> None:
        """Say what is wrong, and warn of old seed."""
        super().check()
        self.on.setEnabled(self.laid.value() > 0)
        lot, _fault = self.drafted()
        warning = None if lot is None else age_warning(lot, self._crop, self._on)
        self.warning.setText("" if warning is None else age_words(warning))
        self.warning.setToolTip(as_plain(origin(self._known, self._crop.seed_life_y)))
        self.warning.setVisible(warning is not None)
        self._count(lot)

    def _count(self, lot: SeedLot | None) -> None:
        """How many seeds a weight comes to."""
        count = None if lot is None or lot.grams is None else seeds_in(lot, self._crop)
        if count is not None:
            few, _, many = (figure(float(f"{n:.2g}"), ",.0f") for n in count)
            told = few if few == many else f"{few}–{many}"
            self.count.setText(self.tr("That is about {0} seeds.").format(told))
            self.count.setToolTip(as_plain(origin(self._known, self._crop.seeds_per_gram)))
        self.count.setVisible(count is not None)
