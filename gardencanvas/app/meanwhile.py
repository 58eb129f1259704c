"""Do something that may take long, such as writing to a network disk, while the window stays alive."""

import threading
from collections.abc import Callable
from typing import TypeVar

from PySide6.QtCore import QEventLoop, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QProgressDialog, QWidget

R = TypeVar("R")

_PATIENCE_MS = 500  # what takes no longer than this shows nothing


_BUSY = "busy"


def is_busy(window: QWidget) -> bool:
    """Whether something is being done meanwhile for this window: it must not be closed now."""
    return bool(window.property(_BUSY))


class _Done(QObject):
    happened = Signal()


def meanwhile(window: QWidget, text: str, do: Callable[[], R]) -> R:
    """What ``do`` gives, or raises; it runs on a thread while nothing can be clicked or typed."""
    results: list[R] = []
    faults: list[BaseException] = []
    done, loop = _Done(), QEventLoop()
    done.happened.connect(loop.quit, Qt.ConnectionType.QueuedConnection)

    def work() -> None:
        try:
            results.append(do())
        except BaseException as error:  # noqa: BLE001 - raised again on the caller's thread
            faults.append(error)
        done.happened.emit()

    notice = QProgressDialog(text, "", 0, 0, window)
    notice.setCancelButton(None)
    notice.setWindowModality(Qt.WindowModality.WindowModal)
    notice.reset()  # it would show itself, after a time of its own
    late = QTimer()
    late.setSingleShot(True)
    late.timeout.connect(notice.show)
    late.start(_PATIENCE_MS)
    window.setProperty(_BUSY, True)
    thread = threading.Thread(target=work, name="meanwhile", daemon=True)
    thread.start()
    loop.exec(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
    thread.join()
    window.setProperty(_BUSY, False)
    late.stop()
    notice.hide()
    notice.deleteLater()
    if faults:
        raise faults[0]
    return results[0]
