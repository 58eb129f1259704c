"""A planting's note, in the grower's own words."""

from PySide6.QtWidgets import QFormLayout, QLineEdit

from gardencanvas.app.inspector.part import FieldPart
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import Units

_MOST = 10_000  # characters, as in the file


class NoteFields(FieldPart):
    """One line of text."""

    def build(self, form: QFormLayout, planting: Planting, units: Units) -> None:
        self.note = QLineEdit()
        self.note.setMaxLength(_MOST)
        self.note.setAccessibleName(self.tr("Note"))
        self.note.editingFinished.connect(self._written)
        form.addRow(self.tr("Note"), self.note)

    def fill(self, planting: Planting) -> None:
        if self.note.text() != planting.note:
            self.note.setText(planting.note)
            self.note.setCursorPosition(0)

    def _written(self) -> None:
        planting = self.planting
        if planting is not None and self.note.text() != planting.note:
            self.commit(self.tr("Change note"), note=self.note.text())
