"""One place turns an unexpected exception into a dialog; the log keeps the whole story."""

import logging
import sys
import traceback
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QMessageBox, QWidget

LOG = logging.getLogger("gardencanvas")


def start_log() -> Path | None:
    """Log to the platform's log folder, three files of 256 kB; None where it cannot be written."""
    from logging.handlers import RotatingFileHandler  # 40 ms, spent after the window is up

    from platformdirs import user_log_path

    try:
        folder = user_log_path("gardencanvas", appauthor=False, ensure_exists=True)
        handler = RotatingFileHandler(
            folder / "gardencanvas.log", maxBytes=262_144, backupCount=2, encoding="utf-8"
        )
    except OSError as error:
        LOG.warning("no log file: %s", error)
        return None
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    LOG.addHandler(handler)
    LOG.setLevel(logging.INFO)
    return folder / "gardencanvas.log"


class Faults(QObject):
    """Shows an unexpected exception once, with details to copy; the program goes on."""

    happened = Signal(str, str)

    def __init__(self, window: QWidget | None) -> None:
        super().__init__(window)
        self._window = window
        self._showing = False
        self.happened.connect(self._show)

    def install(self) -> None:
        """Receive every exception that no code handled."""
        sys.excepthook = self._hook

    def _hook(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        story = "".join(traceback.format_exception(kind, error, trace))
        LOG.error("unexpected: %s", story)
        self.happened.emit(f"{kind.__name__}: {error}", story)

    def _show(self, what: str, story: str) -> None:
        if self._showing:
            return
        self._showing = True
        box = QMessageBox(self._window)
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.setIcon(QMessageBox.Icon.Warning)
        box.setWindowTitle(self.tr("Something went wrong"))
        box.setText(self.tr("The last action did not work. Your garden is as it was before it."))
        box.setInformativeText(
            self.tr("Save a copy under another name if you are unsure.\n\n{0}").format(what)
        )
        box.setDetailedText(story)
        box.exec()
        self._showing = False
