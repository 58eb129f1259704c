"""Numbers to be typed: whole ones, and those with a decimal mark, which may be a point or a comma."""

from PySide6.QtWidgets import QDoubleSpinBox, QSpinBox, QWidget

_LEFT_PX = 6  # a spin box with buttons passes over the padding of the style sheet


class WholeField(QSpinBox):
    """A whole number."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.lineEdit().setTextMargins(_LEFT_PX, 0, 0, 0)


class DecimalField(QDoubleSpinBox):
    """A number shown with the decimal mark of the language; 0.32 and 0,32 may both be typed in any."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.lineEdit().setTextMargins(_LEFT_PX, 0, 0, 0)

    def validate(self, text: str, position: int) -> object:
        point = self.locale().decimalPoint()
        return super().validate(text.replace("," if point == "." else ".", point), position)
