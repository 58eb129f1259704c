"""Exact numbers and notes of a bed: each field commits one edit."""

from typing import Any

from PySide6.QtWidgets import QFormLayout, QLineEdit, QPushButton, QWidget

from gardencanvas.app.inspector.fields import LengthField
from gardencanvas.app.session import Session
from gardencanvas.garden.edits import change
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.resizing import resized, size_of
from gardencanvas.words.plain import Measure
from gardencanvas.words.refusals import why_refused


class BedFields(QWidget):
    """Name, sides or diameter, soil and height, where one walks, and the holes."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._id = ""
        self._made_for: object = None
        self._form = QFormLayout(self)
        self._form.setContentsMargins(0, 0, 0, 0)

    @property
    def bed(self) -> Bed | None:
        """The bed shown, as it is now."""
        found = self._session.layout.by_id.get(self._id)
        return found if isinstance(found, Bed) else None

    def show_bed(self, bed: Bed, measure: Measure) -> None:
        """Show a bed; the fields are built anew only for another shape."""
        self._id = bed.id
        size = size_of(bed)
        if self._made_for != (size.shape, measure.units):
            while self._form.rowCount():
                self._form.removeRow(0)
            self._build(size.shape, measure)
            self._made_for = (size.shape, measure.units)
        self.name.setText(bed.name)
        self.length.show_metres(size.length_m)
        if self.width_ is not None:
            self.width_.show_metres(size.width_m)
        self.soil.show_metres(bed.soil_depth_m or 0.0)
        self.raised.show_metres(bed.raised_m)
        for field, text in ((self.path, bed.path_note), (self.edge, bed.edge_note)):
            field.setText(text)
            field.setCursorPosition(0)
        holes = len(bed.holes)
        self.holes.setEnabled(bool(holes))
        self.holes.setToolTip("" if holes else self.tr("It has none; Plan, More beds and paths cuts one"))

    def _build(self, shape: str, measure: Measure) -> None:
        self.name = self._text(self.tr("Name"), self.tr("Name of the bed"), "name", 200)
        around = self.tr("Of the smallest box round it; the bed is stretched with it")
        self.width_: LengthField | None = None
        if shape == "circle":
            self.length = self._measure(self.tr("Diameter"), measure, 0.05, 1000.0)
            self.length.committed.connect(lambda m: self._resize(m, m))
        else:
            self.length = self._measure(self.tr("Length"), measure, 0.05, 1000.0)
            self.length.committed.connect(lambda m: self._resize(m, None))
            self.width_ = self._measure(self.tr("Width"), measure, 0.05, 1000.0)
            self.width_.committed.connect(lambda m: self._resize(None, m))
            for field in (self.length, self.width_):
                field.setToolTip(around if shape == "other" else "")
        self.soil = self._measure(self.tr("Soil depth"), measure, 0.0, 5.0)
        self.soil.setSpecialValueText(self.tr("not known"))
        self.soil.setToolTip(self.tr("All the soil that roots find, the raised part included"))
        self.soil.committed.connect(
            lambda m: self._commit(self.tr("Change soil depth"), soil_depth_m=round(m, 4) or None)
        )
        self.raised = self._measure(self.tr("Raised by"), measure, 0.0, 5.0)
        self.raised.setSpecialValueText(self.tr("not raised"))
        self.raised.committed.connect(
            lambda m: self._commit(self.tr("Change height of the bed"), raised_m=round(m, 4))
        )
        self.path = self._text(self.tr("Path"), self.tr("Where one walks and reaches from"), "path_note", 200)
        self.edge = self._text(self.tr("Edge"), self.tr("Boards, stones, grass"), "edge_note", 200)
        self.holes = QPushButton(self.tr("Fill in its holes"))
        self.holes.clicked.connect(lambda: self._commit(self.tr("Fill in the holes"), holes=()))
        self._form.addRow(self.holes)

    def _measure(self, text: str, measure: Measure, low: float, high: float) -> LengthField:
        field = LengthField(text, measure.units, low, high)
        self._form.addRow(text, field)
        return field

    def _text(self, text: str, meaning: str, what: str, most: int) -> QLineEdit:
        field = QLineEdit()
        field.setAccessibleName(meaning)
        field.setToolTip(meaning)
        field.setMaxLength(most)
        field.editingFinished.connect(lambda: self._written(what, field.text().strip()))
        self._form.addRow(text, field)
        return field

    def _written(self, what: str, text: str) -> None:
        bed = self.bed
        if bed is not None and text != getattr(bed, what):
            self._commit(self.tr("Rename bed") if what == "name" else self.tr("Change note"), **{what: text})

    def _resize(self, length_m: float | None, width_m: float | None) -> None:
        bed = self.bed
        if bed is None:
            return
        size = size_of(bed)
        try:
            after = resized(bed, length_m or size.length_m, width_m or size.width_m)
        except Refusal as refusal:
            self._session.refused.emit(why_refused(refusal))
            return
        self._commit(self.tr("Resize {0}").format(bed.name), outline=after.outline, holes=after.holes)

    def _commit(self, text: str, **fields: Any) -> None:
        session = self._session
        try:
            after = change(session.garden, session.layout_id, self._id, **fields)
        except Refusal as refusal:
            session.refused.emit(why_refused(refusal))
            return
        session.propose(after, text)
