"""A number to be typed with either decimal mark: 0.32 and 0,32 mean the same in every language."""

from PySide6.QtWidgets import QDoubleSpinBox


class DecimalField(QDoubleSpinBox):
    """A number shown with the decimal mark of the language; the other mark is taken for it when typed."""

    def validate(self, text: str, position: int) -> object:
        point = self.locale().decimalPoint()
        return super().validate(text.replace("," if point == "." else ".", point), position)
