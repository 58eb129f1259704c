"""Surroundings of every test: no screen, no folder of the user's, no thread left behind.

Imports no Qt: the rooms without Qt are tested once with PySide6 out of reach.
"""

import gc
import os
import shutil
import tempfile
import threading
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, settings

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget
    from pytestqt.qtbot import QtBot

# Before Qt starts, and not in a fixture: a test module may import Qt at its top.
os.environ["QT_QPA_PLATFORM"] = os.environ.get("GARDENCANVAS_TEST_PLATFORM", "offscreen")

OWN_FOLDERS = Path(tempfile.mkdtemp(prefix="gardencanvas-tests-"))
for kind in ("CONFIG_HOME", "DATA_HOME", "STATE_HOME", "CACHE_HOME", "RUNTIME_DIR"):
    folder = OWN_FOLDERS / kind.lower()
    folder.mkdir(mode=0o700)
    os.environ[f"XDG_{kind}"] = str(folder)

# No deadlines: two slow cores shared with other work would fail sound code.
settings.register_profile(
    "fast", max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.register_profile("ci", settings.get_profile("fast"), max_examples=100, print_blob=True)
settings.load_profile("ci" if os.environ.get("CI") else "fast")


def pytest_addoption(parser: pytest.Parser, pluginmanager: pytest.PytestPluginManager) -> None:
    """Make pytest-qt's keys in pyproject.toml known where that plugin is switched off."""
    if not pluginmanager.has_plugin("pytest-qt"):
        parser.addini("qt_api", "Unused without pytest-qt.")
        parser.addini("qt_log_level_fail", "Unused without pytest-qt.")
        parser.addini("qt_log_ignore", "Unused without pytest-qt.", type="linelist")


def pytest_unconfigure() -> None:
    shutil.rmtree(OWN_FOLDERS, ignore_errors=True)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark whatever uses the Qt application as gui; leave out what needs a screen where there is none."""
    no_screen = pytest.mark.skip(reason="needs GARDENCANVAS_TEST_PLATFORM=xcb and an X server")
    for item in items:
        if "qapp" in getattr(item, "fixturenames", ()):
            item.add_marker(pytest.mark.gui)
        if "xvfb" in item.keywords and os.environ["QT_QPA_PLATFORM"] != "xcb":
            item.add_marker(no_screen)


@pytest.fixture
def qtbot(qtbot: "QtBot") -> Iterator["QtBot"]:
    """pytest-qt's own, but widgets are held until they are closed, and gone before the next test.

    It keeps only weak references: a widget that nothing else holds could be freed by the garbage collector
    in the middle of its own last painting, or of another test's.
    """
    held: list[object] = []
    register = qtbot.addWidget

    def add_and_hold(widget: "QWidget", **options: object) -> None:
        held.append(widget)
        register(widget, **options)

    qtbot.addWidget = add_and_hold
    yield qtbot
    from PySide6.QtCore import QCoreApplication, QEvent

    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    held.clear()
    gc.collect()


@pytest.fixture(autouse=True)
def no_thread_left() -> Iterator[None]:
    """Fail a test that leaves a thread running which would keep the program from ending."""
    before = set(threading.enumerate())
    yield
    left = [thread for thread in threading.enumerate() if thread not in before and not thread.daemon]
    for thread in left:
        thread.join(timeout=1.0)
    still = [thread.name for thread in left if thread.is_alive()]
    assert not still, f"threads left running: {still}"
