"""How far a search is, with a button that stops it."""

from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QToolButton, QWidget

from gardencanvas.planner.gaps.answers import Progress


class SearchProgress(QWidget):
    """Shown from `begin` to `end`; ``stop`` is the button.

    Parameters
    ----------
    keep_room
        While nothing is searched its room stays empty, so that what lies around does not jump.
    """

    def __init__(self, parent: QWidget | None = None, *, keep_room: bool = False) -> None:
        super().__init__(parent)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        self._bar = QProgressBar()
        self._bar.setTextVisible(False)
        self._bar.setMaximumHeight(8)
        self.stop = QToolButton()
        self.stop.setText(self.tr("Stop"))
        row.addWidget(self._bar, 1)
        row.addWidget(self.stop)
        policy = self.sizePolicy()
        policy.setRetainSizeWhenHidden(keep_room)
        self.setSizePolicy(policy)
        self.hide()

    def begin(self) -> None:
        """A search began; how long it takes is not known yet."""
        self._bar.setRange(0, 0)
        self.show()

    def tell(self, progress: Progress) -> None:
        """So much is done."""
        self._bar.setRange(0, max(progress.of, 1))
        self._bar.setValue(progress.done)

    def end(self) -> None:
        """Nothing is searched any more."""
        self.hide()
