"""A table of what is known: label, value, range, and the number of its source in the list below."""

from collections.abc import Mapping

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel, as_plain
from gardencanvas.words.crop_facts import Section, Told

_WIDEST = 11  # of a label, in heights of a line: beside it two values and a number have room


class FactTable(QWidget):
    """The rows of one section under its heading."""

    def __init__(
        self,
        section: Section,
        numbers: Mapping[str, tuple[int, str]],
        label_width: int = 0,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(PlainLabel(section.title, "heading"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(3)
        grid.setColumnMinimumWidth(0, label_width)
        grid.setColumnStretch(2, 1)
        column.addLayout(grid)
        for number, told in enumerate(section.rows):
            label = PlainLabel(told.label, "quiet")
            label.setAlignment(Qt.AlignmentFlag.AlignTop)
            label.setMaximumWidth(max(label_width, 80))
            grid.addWidget(label, number, 0)
            value = PlainLabel(told.value, "estimated" if told.estimated else "value")
            if told.around:
                value.setWordWrap(False)
                grid.addWidget(_explained(value, told), number, 1)
                grid.addWidget(_explained(PlainLabel(told.around, "quiet"), told), number, 2)
            else:
                grid.addWidget(_explained(value, told), number, 1, 1, 2)
            if told.source in numbers:
                grid.addWidget(_reference(numbers[told.source]), number, 3)


def label_width(sections: tuple[Section, ...], widget: QWidget) -> int:
    """Pixels for the labels of some sections, so that their tables line up: longer ones are wrapped."""
    metrics = widget.fontMetrics()
    widest = max((metrics.horizontalAdvance(t.label) for s in sections for t in s.rows), default=0)
    return min(widest + 2, _WIDEST * metrics.height())


def _one_line(text: str, role: str) -> PlainLabel:
    label = PlainLabel(text, role)
    label.setWordWrap(False)
    label.setAlignment(Qt.AlignmentFlag.AlignTop)
    return label


def _explained(label: PlainLabel, told: Told) -> PlainLabel:
    """The label with its source on hover, and for assistive technology."""
    label.setAlignment(Qt.AlignmentFlag.AlignTop)
    label.setToolTip(as_plain(told.origin))
    label.setAccessibleName(f"{told.label}: {told.value} {told.around}".strip())
    label.setAccessibleDescription(told.origin)
    return label


def _reference(source: tuple[int, str]) -> PlainLabel:
    number, citation = source
    label = _one_line(str(number), "source")
    label.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignRight)
    label.setToolTip(as_plain(citation))
    return label
