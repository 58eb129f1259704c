"""A tab whose panel is made when it is first shown, so that the window starts without it."""

from collections.abc import Callable

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from gardencanvas.canvas.palette import Palette
from gardencanvas.words.plain import Measure


class LateTab(QWidget):
    """Stands in a tab for a panel that ``build`` makes; hands on units and colours to it."""

    def __init__(self, build: Callable[[], QWidget]) -> None:
        super().__init__()
        self._build = build
        self._panel: QWidget | None = None
        self._look: tuple[Measure, Palette] | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)

    @property
    def panel(self) -> QWidget:
        """The panel, made if it is not there yet."""
        if self._panel is None:
            self._panel = self._build()
            self.layout().addWidget(self._panel)
            self._hand_on()
        return self._panel

    def set_look(self, measure: Measure, colours: Palette) -> None:
        """Units and colours, for a panel that has a ``set_look`` of its own."""
        self._look = measure, colours
        self._hand_on()

    def _hand_on(self) -> None:
        take = getattr(self._panel, "set_look", None)
        if take is not None and self._look is not None:
            take(*self._look)

    def showEvent(self, event: QShowEvent) -> None:
        _ = self.panel
        super().showEvent(event)
