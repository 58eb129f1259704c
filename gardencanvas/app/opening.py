"""Files that the system asks the running program to open, as the Finder of macOS does by double click."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QFileOpenEvent

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


class Opening(QObject):
    """Hands such files to the window; it goes on the application as an event filter."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window = window

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.FileOpen and isinstance(event, QFileOpenEvent) and event.file():
            self._window.open_path(Path(event.file()))
            return True
        return super().eventFilter(watched, event)
