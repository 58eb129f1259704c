"""Do something once, soon: many causes in one turn of the event loop make one call."""

from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer


class Soon(QTimer):
    """Calls ``do`` a while after the first ``ask``; asking again before then changes nothing."""

    def __init__(self, parent: QObject, do: Callable[[], None], milliseconds: int = 0) -> None:
        super().__init__(parent)
        self.setSingleShot(True)
        self.setInterval(milliseconds)
        self.timeout.connect(do)

    def ask(self, *_: object) -> None:
        """Have it done soon; takes whatever a signal brings."""
        if not self.isActive():
            self.start()
