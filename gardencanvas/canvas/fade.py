"""A change of verdict fades in, so that the eye is led to it; reduced motion switches that off."""

from collections.abc import Iterable

from PySide6.QtCore import QObject, QVariantAnimation
from PySide6.QtWidgets import QGraphicsItem

FADE_MS = 120
_FROM = 0.25


class Fade(QVariantAnimation):
    """Brings items from faint to full."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._items: list[QGraphicsItem] = []
        self.setDuration(FADE_MS)
        self.setStartValue(_FROM)
        self.setEndValue(1.0)
        self.valueChanged.connect(self._show)
        self.finished.connect(self._forget)

    def begin(self, items: Iterable[QGraphicsItem]) -> None:
        """Fade these in; those of a fade still going on are full at once."""
        self.end()
        self._items = list(items)
        if self._items:
            self._show(_FROM)
            self.start()

    def end(self) -> None:
        """Bring all to full now."""
        self.stop()
        self._show(1.0)
        self._forget()

    def _show(self, opacity: object) -> None:
        if isinstance(opacity, float):
            for item in self._items:
                if item.scene() is not None:
                    item.setOpacity(opacity)

    def _forget(self) -> None:
        self._items = []
