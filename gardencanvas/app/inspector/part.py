"""A group of fields in the inspector: rows of a form that show a planting and commit one edit each."""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QCheckBox, QFormLayout, QWidget

from gardencanvas.app.session import Session
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import Units


class FieldPart(QObject):
    """Some fields; ``committed`` gives the undo step's name and the planting's changed fields."""

    committed = Signal(str, object)

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(parent)
        self.session = session
        self._id = ""

    @property
    def planting(self) -> Planting | None:
        """The planting shown, as it is now: the fields may be a moment behind."""
        found = self.session.layout.by_id.get(self._id)
        return found if isinstance(found, Planting) else None

    def build(self, form: QFormLayout, planting: Planting, units: Units) -> None:
        """Put the fields that a planting of this kind has into a form."""
        raise TypeError(f"{type(self).__name__} has no fields")

    def show_planting(self, planting: Planting) -> None:
        """Show a planting without committing anything."""
        self._id = planting.id
        self.fill(planting)

    def fill(self, planting: Planting) -> None:
        """Put its values into the fields."""
        raise TypeError(f"{type(self).__name__} has no fields")

    def commit(self, text: str, **fields: Any) -> None:
        """Ask for one edit."""
        self.committed.emit(text, fields)


class Tick(QCheckBox):
    """Something that is on or off; tells only what the grower does."""

    def __init__(self, text: str, do: Callable[[bool], None], parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setAccessibleName(text)
        self.clicked.connect(do)
