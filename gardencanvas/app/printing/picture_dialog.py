"""What a picture shows and how finely, before its file is chosen."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFormLayout,
    QVBoxLayout,
)

from gardencanvas.app.filing import tell
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.number_fields import WholeField
from gardencanvas.app.printing.picture import Picture, save_picture
from gardencanvas.files import CannotWrite
from gardencanvas.words.plain import Measure, day_year
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


class PictureDialog(QDialog):
    """Plan, ribbon or both; colours; dots to an inch for a PNG."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window = window
        self.setWindowTitle(self.tr("Save a picture"))
        column = QVBoxLayout(self)
        form = QFormLayout()
        self.shown = QComboBox()
        self.shown.addItem(self.tr("the plan"), "plan")
        self.shown.addItem(self.tr("the season ribbon"), "ribbon")
        self.shown.addItem(self.tr("the plan and the season ribbon"), "both")
        self.colours = QComboBox()
        self.colours.addItem(self.tr("light"), False)
        self.colours.addItem(self.tr("dark"), True)
        self.dpi = WholeField()
        self.dpi.setRange(36, 1200)
        self.dpi.setValue(150)
        self.dpi.setSuffix(self.tr(" dpi"))
        form.addRow(self.tr("&Show"), self.shown)
        form.addRow(self.tr("&Colours"), self.colours)
        form.addRow(self.tr("&Fineness of a PNG"), self.dpi)
        self.backdrop = QCheckBox(self.tr("&Background picture"))
        self.backdrop.setVisible(window.session.garden.backdrop is not None)
        form.addRow("", self.backdrop)
        column.addLayout(form)
        on = self.tr("As on {0}, the date cursor's day.").format(day_year(window.session.on))
        column.addWidget(PlainLabel(on, "quiet"))
        box = QDialogButtonBox.StandardButton
        buttons = QDialogButtonBox(box.Save | box.Cancel)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)

    @property
    def picture(self) -> Picture:
        """What is chosen."""
        return Picture(
            self.shown.currentData(),
            self.dpi.value(),
            bool(self.colours.currentData()),
            self.backdrop.isChecked(),
        )

    def accept(self) -> None:
        session = self._window.session
        name, _ = QFileDialog.getSaveFileName(
            self, self.windowTitle(), f"{session.layout.name}.png".replace("/", "-"),
            self.tr("Picture (*.png);;Drawing (*.svg)"),
        )  # fmt: skip
        if not name:
            return
        path = Path(name) if Path(name).suffix.lower() in {".png", ".svg"} else Path(name + ".png")
        try:
            save_picture(session, path, self.picture, Measure(self._window.units))
        except CannotWrite as error:
            tell(self, self.tr("The picture is not saved"), why_refused(error))
            return
        self._window.say(self.tr("Saved as {0}.").format(path.name))
        super().accept()
