"""How and when a planting was started, how sure that is, and when it is taken out."""

from datetime import date, timedelta

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QFormLayout, QHBoxLayout, QSizePolicy, QWidget

from gardencanvas.app.inspector.fields import CountField, DayField
from gardencanvas.app.inspector.part import FieldPart, Tick
from gardencanvas.app.name_box import NameBox
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.volunteers import WITHIN_D
from gardencanvas.words.plain import Units

_KINDS = ("sown", "raised", "set", "volunteer")
_NURSERY_D = 35  # five weeks under glass, where the crop's own time is not known (common practice)


class MaybeDay(QWidget):
    """A day that may be left to the program: ticked, it is the grower's; ``committed`` gives it or None."""

    committed = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        self.own = Tick("", self._ticked)
        self.own.setAccessibleName(name)
        self.own.setToolTip(self.tr("Ticked, the day is yours; else it is reckoned"))
        self.day = DayField(name)
        self.day.committed.connect(self.committed)
        row.addWidget(self.own)
        row.addWidget(self.day, 1)

    def show_day(self, own: date | None, reckoned: date) -> None:
        """Show the grower's own day, else the one that is reckoned."""
        self.own.setChecked(own is not None)
        self.day.setEnabled(own is not None)
        self.day.setToolTip("" if own is not None else self.tr("Reckoned; tick to set it"))
        self.day.show_day(own or reckoned)

    def _ticked(self, on: bool) -> None:
        chosen = self.day.date()
        self.committed.emit(date(chosen.year(), chosen.month(), chosen.day()) if on else None)


class StartFields(FieldPart):
    """Kind and day of the start, pinned or not; the end."""

    def build(self, form: QFormLayout, planting: Planting, units: Units) -> None:
        self.kind = NameBox()
        self.kind.setAccessibleName(self.tr("Started"))
        self.kind.setMinimumContentsLength(8)  # longer words must not push the panel wide
        self.kind.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.kind.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        words = (
            self.tr("sown in place"), self.tr("raised, planted out"), self.tr("set"), self.tr("volunteer")
        )  # fmt: skip
        for kind, word in zip(_KINDS, words, strict=True):
            self.kind.addItem(word, kind)
        self.kind.activated.connect(self._kind_chosen)
        form.addRow(self.tr("Started"), self.kind)
        self.on = DayField(self.tr("In the bed from"))
        self.on.committed.connect(self._day_chosen)
        form.addRow(self.tr("In bed from"), self.on)
        self.sown = MaybeDay(self.tr("Sown under glass on"))
        self.sown.committed.connect(self._sown_chosen)
        self.within = CountField(self.tr("Days that the date may be off"), 0, 183)
        self.within.setSpecialValueText(self.tr("known"))
        self.within.setPrefix("± ")
        self.within.setSuffix(self.tr(" days"))
        self.within.setToolTip(self.tr("How many days earlier or later it may have come up; 0: it is known"))
        self.within.committed.connect(self._within_chosen)
        if planting.start.kind == "raised":
            form.addRow(self.tr("Sown on"), self.sown)
        if planting.start.kind == "volunteer":
            form.addRow(self.tr("Give or take"), self.within)
        self.pinned = Tick(self.tr("Its date is not moved"), self._pinned)
        self.pinned.setToolTip(self.tr("The program never proposes another date for it"))
        form.addRow(self.pinned)
        self.end = MaybeDay(self.tr("Out of the bed on"))
        self.end.committed.connect(lambda day: self.commit(self.tr("Change end"), end=day))
        form.addRow(self.tr("Out on"), self.end)

    def fill(self, planting: Planting) -> None:
        start = planting.start
        self.kind.setCurrentIndex(_KINDS.index(start.kind))
        self.on.show_day(start.on)
        self.sown.show_day(start.sown_on, self._usual_sowing(planting))
        self.within.show_count(start.within_d or 0)
        self.pinned.setChecked(start.pinned)
        course = self.session.course(planting)
        self.end.show_day(planting.end, course.out[0].astype(object))

    def _usual_sowing(self, planting: Planting) -> date:
        crop = self.session.catalogue.resolve(planting.crop, planting.variety)
        days = round(crop.nursery_d.mid) if crop.nursery_d is not None else _NURSERY_D
        return planting.start.on - timedelta(days=days)

    def _kind_chosen(self) -> None:
        if self.planting is not None:
            kind, start = self.kind.currentData(), self.planting.start
            if kind != start.kind:
                within = WITHIN_D if kind == "volunteer" else None
                self._changed(kind=kind, pinned=True, sown_on=None, within_d=within, kept=False)

    def _day_chosen(self, on: date) -> None:
        if self.planting is not None:
            start = self.planting.start
            sown = None if start.sown_on is None else start.sown_on + (on - start.on)
            self._changed(on=on, sown_on=sown, pinned=True)

    def _sown_chosen(self, on: date | None) -> None:
        self._changed(sown_on=on)

    def _within_chosen(self, days: int) -> None:
        self._changed(within_d=days or None)

    def _pinned(self, on: bool) -> None:
        self._changed(pinned=on)

    def _changed(self, **fields: object) -> None:
        """Commit some fields of the start; what is not allowed is told where all edits are judged."""
        if self.planting is not None:
            start = self.planting.start
            known = {name: getattr(start, name) for name in Start.model_fields}
            self.commit(self.tr("Change start"), start={**known, **fields})
