import os
import subprocess
import sys

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

pytestmark = pytest.mark.xvfb


def test_windows_reach_a_real_x_server(qapp: QApplication, qtbot: QtBot) -> None:
    """What the X server shows is read back from the server, not from Qt's own copy of the widget."""
    assert os.environ["GARDENCANVAS_TEST_PLATFORM"] == "xcb"
    assert QGuiApplication.platformName() == "xcb"
    widget = QWidget()
    qtbot.addWidget(widget)
    widget.setWindowFlag(Qt.WindowType.FramelessWindowHint)
    palette = widget.palette()
    palette.setColor(QPalette.ColorRole.Window, QColor("#0072B2"))
    widget.setPalette(palette)
    widget.setGeometry(100, 100, 80, 60)
    with qtbot.waitExposed(widget):
        widget.show()

    def shown() -> None:
        picture = QGuiApplication.primaryScreen().grabWindow(0, 120, 120, 1, 1).toImage()
        assert picture.pixelColor(0, 0) == QColor("#0072B2")

    qtbot.waitUntil(shown, timeout=5000)


OPEN_LOOK_AND_CLOSE = """
import sys
from PySide6.QtCore import QTimer
from gardencanvas.app.start import application, run_window

def look_and_close():
    print([w.windowTitle() for w in app.topLevelWidgets() if w.isVisible() and w.isWindow()])
    app.closeAllWindows()

app = application()
QTimer.singleShot(1000, look_and_close)
sys.exit(run_window(["--demo"]))
"""


def test_demo_opens_and_closes_in_good_order() -> None:
    command = [sys.executable, "-c", OPEN_LOOK_AND_CLOSE]
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    assert done.stderr == "", "Qt or Python had something to say"
    assert done.stdout.count("'") == 2, f"one window, with a title: {done.stdout}"
