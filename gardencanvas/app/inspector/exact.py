"""Exact numbers of a planting: each field commits one edit."""

from datetime import date
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFormLayout, QVBoxLayout, QWidget

from gardencanvas.app.inspector.fields import AngleField, CountField, DayField, LengthField
from gardencanvas.app.session import Session
from gardencanvas.garden.edits import change, made, rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.words.plain import Measure

_KINDS = ("sown", "raised", "set", "volunteer")


class ExactNumbers(QWidget):
    """Start, spacing, rows, lengths and angle, to type."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._planting: Planting | None = None
        self._fields: QWidget | None = None
        self._fields_for: object = None
        self._form = QVBoxLayout(self)
        self._form.setContentsMargins(0, 0, 0, 0)

    def show_planting(self, planting: Planting, measure: Measure) -> None:
        """Show the numbers of a planting; the fields are built anew only for another kind of pattern."""
        self._planting = planting
        shape = (planting.pattern.kind, planting.start.kind, measure.units)
        if self._fields_for != shape:
            if self._fields is not None:
                self._form.removeWidget(self._fields)
                self._fields.hide()
                self._fields.deleteLater()
            self._fields = self._built_fields(planting, measure)
            self._form.addWidget(self._fields)
            self._fields_for = shape
        self._fill(planting)

    def _built_fields(self, planting: Planting, measure: Measure) -> QWidget:
        box = QWidget()
        form = QFormLayout(box)
        form.setContentsMargins(0, 0, 0, 0)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
        self._kind = QComboBox()
        self._kind.setAccessibleName(self.tr("Started"))
        for kind, word in zip(
            _KINDS,
            (self.tr("sown in place"), self.tr("raised, planted out"), self.tr("set"), self.tr("volunteer")),
            strict=True,
        ):
            self._kind.addItem(word, kind)
        self._kind.activated.connect(self._kind_chosen)
        form.addRow(self.tr("Started"), self._kind)
        self._on = DayField(self.tr("In the bed from"))
        self._on.committed.connect(self._day_chosen)
        form.addRow(self.tr("In bed from"), self._on)
        self.lengths: dict[str, LengthField] = {}
        for field, label in self._length_labels(planting):
            length = LengthField(
                label, measure.units, 0.005, 1000.0 if field in {"length_m", "width_m"} else 50.0
            )
            length.setProperty("field", field)
            length.committed.connect(self._length_chosen)
            form.addRow(label, length)
            self.lengths[field] = length
        self.counts: dict[str, CountField] = {}
        if planting.pattern.kind == "rows":
            rows = CountField(self.tr("Rows"), 1, 1000)
            rows.committed.connect(self._rows_chosen)
            form.addRow(self.tr("Rows"), rows)
            self.counts["rows"] = rows
        clump = CountField(self.tr("Seedlings to a station"), 1, 20)
        clump.committed.connect(self._clump_chosen)
        form.addRow(self.tr("Per station"), clump)
        self.counts["per_station"] = clump
        self._angle = AngleField(self.tr("Angle"))
        self._angle.committed.connect(self._angle_chosen)
        form.addRow(self.tr("Angle"), self._angle)
        return box

    def _length_labels(self, planting: Planting) -> list[tuple[str, str]]:
        labels = {
            "spacing_m": self.tr("Spacing"),
            "row_spacing_m": self.tr("Between rows"),
            "across_m": self.tr("Across"),
            "length_m": self.tr("Length"),
            "width_m": self.tr("Width"),
            "radius_m": self.tr("Radius"),
        }
        return [(f, w) for f, w in labels.items() if f in type(planting.pattern).model_fields]

    def _fill(self, planting: Planting) -> None:
        self._kind.setCurrentIndex(_KINDS.index(planting.start.kind))
        self._on.show_day(planting.start.on)
        for field, box in self.lengths.items():
            box.show_metres(getattr(planting.pattern, field))
        self.counts["per_station"].show_count(planting.per_station)
        if "rows" in self.counts:
            self.counts["rows"].show_count(planting.pattern.rows)
        self._angle.show_angle(planting.pattern.angle_deg)

    def _commit(self, text: str, **fields: Any) -> None:
        if self._planting is None:
            return
        session = self._session
        try:
            after = change(session.garden, session.layout_id, self._planting.id, **fields)
        except Refusal as error:
            session.refused.emit(str(error))
            self._fill(self._planting)
            return
        session.propose(after, text)

    def _pattern(self, **fields: Any) -> None:
        if self._planting is None:
            return
        try:
            pattern = rebuilt(self._planting.pattern, **fields)
        except Refusal as error:
            self._session.refused.emit(str(error))
            self._fill(self._planting)
            return
        self._commit(self.tr("Change spacing"), pattern=pattern)

    def _kind_chosen(self) -> None:
        if self._planting is not None:
            kind = self._kind.currentData()
            self._commit(
                self.tr("Change start"), start=made(Start, kind=kind, on=self._planting.start.on, pinned=True)
            )

    def _day_chosen(self, on: date) -> None:
        if self._planting is not None:
            start = self._planting.start
            sown = start.sown_on
            if sown is not None:
                sown = date.fromordinal(sown.toordinal() + (on - start.on).days)
            self._commit(
                self.tr("Change start"), start=made(Start, kind=start.kind, on=on, sown_on=sown, pinned=True)
            )

    def _length_chosen(self, metres: float) -> None:
        sender = self.sender()
        if isinstance(sender, LengthField):
            self._pattern(**{sender.property("field"): round(metres, 4)})

    def _rows_chosen(self, rows: int) -> None:
        self._pattern(rows=rows)

    def _clump_chosen(self, plants: int) -> None:
        self._commit(self.tr("Change clump"), per_station=plants)

    def _angle_chosen(self, degrees: float) -> None:
        self._pattern(angle_deg=degrees)
