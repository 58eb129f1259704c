"""A box to choose from whose name is shortened with an ellipsis where it does not fit."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QComboBox, QStyle, QStyleOptionComboBox, QStylePainter


class NameBox(QComboBox):
    """As QComboBox, which cuts a long name off in the middle of a letter."""

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QStylePainter(self)
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        room = self.style().subControlRect(
            QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, self
        )
        # the style keeps a few pixels of the field for itself
        option.currentText = self.fontMetrics().elidedText(
            self.currentText(), Qt.TextElideMode.ElideRight, room.width() - 4
        )
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
