"""Something that was typed and cannot be taken."""

from dataclasses import dataclass

from PySide6.QtWidgets import QWidget


@dataclass(frozen=True)
class Problem:
    """A sentence saying what is wrong and what is allowed, and the widget to mend it in."""

    sentence: str
    widget: QWidget
