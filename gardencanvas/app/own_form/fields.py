"""Small fields of the forms: a captioned widget, a list of words, a line of text."""

from collections.abc import Callable, Iterable
from enum import StrEnum
from typing import TypeVar

from PySide6.QtWidgets import QComboBox, QFormLayout, QHBoxLayout, QLineEdit, QWidget

from gardencanvas.app.labels import PlainLabel
from gardencanvas.crops.model import Basis, Fact

_Code = TypeVar("_Code", bound=str)


class Captioned(QWidget):
    """A widget with a quiet word before it."""

    def __init__(self, caption: str, field: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        label = PlainLabel(caption, "quiet")
        label.setWordWrap(False)
        label.setBuddy(field)
        field.setAccessibleName(caption)
        row.addWidget(label)
        row.addWidget(field)


def rows() -> QFormLayout:
    """A form of labels and fields."""
    form = QFormLayout()
    form.setContentsMargins(0, 0, 0, 0)
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
    form.setHorizontalSpacing(12)
    form.setVerticalSpacing(4)
    return form


def line(form: QFormLayout, caption: str, changed: Callable[..., None], longest: int = 80) -> QLineEdit:
    """A line of text."""
    field = QLineEdit()
    field.setMaxLength(longest)
    field.setAccessibleName(caption)
    field.textChanged.connect(changed)
    form.addRow(caption, field)
    return field


def choice(
    form: QFormLayout,
    caption: str,
    codes: Iterable[_Code],
    changed: Callable[..., None],
    none: str | None = None,
    named: Callable[[_Code], str] = str,
) -> QComboBox:
    """One of some codes, shown as ``named`` says them; ``none`` is what stands first for no choice."""
    field = QComboBox()
    field.setAccessibleName(caption)
    if none is not None:
        field.addItem(none, None)
    for code in codes:
        field.addItem(named(code), str(code))
    field.currentIndexChanged.connect(changed)
    form.addRow(caption, field)
    return field


def choose(field: QComboBox, word: StrEnum | str | None) -> None:
    """Show a word in a list."""
    field.setCurrentIndex(max(field.findData(None if word is None else str(word)), 0))


def fact_of(field: QComboBox, before: Fact | None) -> Fact | None:
    """The chosen class as the grower's own; the one before, source and all, where it is the same."""
    word = field.currentData()
    if before is not None and before.value == word:
        return before
    return None if word is None else Fact(value=word, source="user", basis=Basis.USER)
