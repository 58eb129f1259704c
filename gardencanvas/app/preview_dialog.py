"""A small dialog of which the plan shows live what it would do; OK makes one undo step of it."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QVBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.soon import Soon
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


class PreviewDialog(QDialog):
    """Fields in a form; ``after`` says what they would make of the garden."""

    def __init__(self, window: "MainWindow", title: str) -> None:
        super().__init__(window)
        self.session = window.session
        self._window = window
        self.setWindowTitle(title)
        column = QVBoxLayout(self)
        self.form = QFormLayout()
        column.addLayout(self.form)
        self.message = PlainLabel(role="quiet")
        self.message.setMinimumWidth(320)
        column.addWidget(self.message)
        box = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(box.Ok | box.Cancel)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        column.addWidget(self.buttons)
        self._soon = Soon(self, self.refresh, 30)

    def after(self) -> Garden:
        """What the fields make of the garden; raises ``Refusal``."""
        raise TypeError(f"{type(self).__name__} makes nothing")

    def step(self) -> str:
        """Name of the undo step."""
        return self.windowTitle()

    def told(self) -> str:
        """One line about what would be made, under the fields."""
        return ""

    def add(self, text: str, field: QWidget, signal: object) -> None:
        """Put a field into the form; its signal asks for the preview anew."""
        self.form.addRow(text, field)
        signal.connect(self._soon.ask)  # type: ignore[attr-defined]

    def refresh(self) -> None:
        """Show on the plan what would be."""
        try:
            after = self.after()
        except Refusal as refusal:
            self.message.setText(why_refused(refusal))
            self._ok(False)
            self.session.preview(None)
            return
        self.message.setText(self.told())
        self._ok(True)
        self.session.preview(after)

    def _ok(self, on: bool) -> None:
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(on)

    def exec(self) -> int:
        self.refresh()
        return super().exec()

    def accept(self) -> None:
        try:
            after = self.after()
        except Refusal as refusal:
            self.message.setText(why_refused(refusal))
            return
        self.session.propose(after, self.step())
        super().accept()

    def reject(self) -> None:
        self._soon.stop()
        self.session.preview(None)
        super().reject()
