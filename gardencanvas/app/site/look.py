"""What the parts of the site dialog share in their look."""

from PySide6.QtGui import QGuiApplication, QPalette
from PySide6.QtWidgets import QWidget

from gardencanvas.app.labels import PlainLabel
from gardencanvas.canvas.palette import Palette, palette

WARNING = "⚠ "  # a mark beside the words: no meaning rests on colour alone


def colours() -> Palette:
    """The palette that the program is shown in, light or dark."""
    return palette(QGuiApplication.palette().color(QPalette.ColorRole.Window).lightness() < 128)


class Caution(PlainLabel):
    """A sentence about something wrong, in the colour of a clash and with a mark; hidden while empty."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", "body", parent)
        self.hide()

    def say(self, sentence: str) -> None:
        """Show a sentence, or nothing."""
        self.setText(WARNING + sentence if sentence else "")
        self.setStyleSheet(f"color: {colours().verdicts[3]}")
        self.setVisible(bool(sentence))
