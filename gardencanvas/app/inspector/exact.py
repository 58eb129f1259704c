"""Exact numbers of a planting: each field commits one edit."""

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFormLayout, QVBoxLayout, QWidget

from gardencanvas.app.inspector.mixture_fields import MixtureFields
from gardencanvas.app.inspector.note_fields import NoteFields
from gardencanvas.app.inspector.pattern_fields import PatternFields
from gardencanvas.app.inspector.start_fields import StartFields
from gardencanvas.app.session import Session
from gardencanvas.garden.edits import change
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import Measure
from gardencanvas.words.refusals import why_refused


class ExactNumbers(QWidget):
    """Start and end, varieties and clumps, spacing, lengths, place and angle, to type."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._planting: Planting | None = None
        self._fields: QWidget | None = None
        self._fields_for: object = None
        self.start = StartFields(session, self)
        self.mixture = MixtureFields(session, self)
        self.pattern = PatternFields(session, self)
        self.note = NoteFields(session, self)
        self._parts = (self.start, self.mixture, self.pattern, self.note)
        for part in self._parts:
            part.committed.connect(self._commit)
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
        for part in self._parts:
            part.build(form, planting, measure.units)
        return box

    def _fill(self, planting: Planting) -> None:
        for part in self._parts:
            part.show_planting(planting)

    def _commit(self, text: str, fields: dict[str, Any]) -> None:
        if self._planting is None:
            return
        session = self._session
        try:
            after = change(session.garden, session.layout_id, self._planting.id, **fields)
        except Refusal as error:
            session.refused.emit(why_refused(error))
            self._fill(self._planting)
            return
        session.propose(after, text)
