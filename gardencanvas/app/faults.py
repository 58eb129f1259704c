"""One place turns an unexpected exception into a dialog; the unsaved work is written first."""

import sys
import threading
import traceback
from collections.abc import Callable
from types import TracebackType

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QMessageBox, QWidget

from gardencanvas.app.log import LOG, impersonal, start_log, surroundings

__all__ = ["Faults", "start_log"]


class Faults(QObject):
    """Shows an unexpected exception: what happened, what is safe, what to do, details to copy.

    Parameters
    ----------
    window
        Over which it is shown.
    rescue
        Writes the unsaved work to its journal; gives why it could not, or nothing.
    """

    happened = Signal(str, str)  # may come from another thread

    def __init__(self, window: QWidget | None, rescue: Callable[[], str] | None = None) -> None:
        super().__init__(window)
        self._window, self._rescue = window, rescue
        self._showing = False
        self.happened.connect(self._show)

    def install(self) -> None:
        """Receive every exception that no code handled, on any thread."""
        sys.excepthook = self._hook
        threading.excepthook = self._thread_hook

    def _hook(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        LOG.error(
            "unexpected on %s: %s\n%s", threading.current_thread().name, surroundings(), impersonal(error)
        )
        story = "".join(traceback.format_exception(kind, error, trace))
        self.happened.emit(f"{kind.__name__}: {error}", story)

    def _thread_hook(self, fault: threading.ExceptHookArgs) -> None:
        if fault.exc_value is not None:
            self._hook(fault.exc_type, fault.exc_value, fault.exc_traceback)

    def _saved(self) -> str:
        """What is safe, in a sentence."""
        if self._rescue is None:
            return self.tr("What you saved is safe.")
        try:
            why_not = self._rescue()
        except Exception as error:  # noqa: BLE001 - the grower must be told even then
            why_not = f"{type(error).__name__}: {error}"
        if why_not:
            return self.tr("Your unsaved work could not be written: {0}").format(why_not)
        return self.tr("Your work is safe: it was just written to this computer, also what is not saved yet.")

    def _show(self, what: str, story: str) -> None:
        if self._showing:
            return
        self._showing = True
        try:
            box = self.box(what, story, self._saved())
            box.exec()
            box.deleteLater()
        finally:
            self._showing = False

    def box(self, what: str, story: str, safe: str) -> QMessageBox:
        """The dialog of one exception."""
        box = QMessageBox(self._window)
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.setIcon(QMessageBox.Icon.Warning)
        box.setWindowTitle(self.tr("Something went wrong"))
        box.setText(self.tr("The last action did not work; the garden is as it was before it."))
        advice = self.tr(
            "You can go on. If it happens again, save under another name, close the program and open it anew."
        )
        box.setInformativeText(f"{safe}\n\n{advice}\n\n{what[:300]}")
        details = f"{surroundings()}\n{story}"
        box.setDetailedText(details)
        copy = box.addButton(self.tr("Copy the details"), QMessageBox.ButtonRole.ActionRole)
        copy.clicked.disconnect()  # it copies and leaves the dialog open
        copy.clicked.connect(lambda: QGuiApplication.clipboard().setText(details))
        box.addButton(QMessageBox.StandardButton.Ok)
        box.setDefaultButton(QMessageBox.StandardButton.Ok)
        box.setEscapeButton(QMessageBox.StandardButton.Ok)
        return box
