"""Windows for tests, held until they are closed.

qtbot keeps only weak references: a window that nothing else holds could be freed by the garbage collector
in the middle of its own last painting.
"""

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QCoreApplication, QEvent

from gardencanvas.app.session import Session
from gardencanvas.app.window import MainWindow


@pytest.fixture
def open_window(qtbot) -> Iterator[Callable[..., MainWindow]]:
    """Opens a window on a session, 1440 × 900; it is closed without questions at the end."""
    opened: list[MainWindow] = []

    def make(session: Session, width: int = 1440, height: int = 900) -> MainWindow:
        main = MainWindow(session)
        opened.append(main)
        main.resize(width, height)
        main.show()
        qtbot.waitExposed(main)
        return main

    yield make
    for main in opened:
        main.session.history.set_clean()
        main.close()
        main.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    opened.clear()
