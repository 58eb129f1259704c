"""Opens the window: with a file, with the demo garden, or with an empty garden."""

import gc
import sys
from collections.abc import Sequence
from datetime import date
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt, QTimer
from PySide6.QtGui import QGuiApplication, QIcon
from PySide6.QtWidgets import QApplication, QMessageBox

from gardencanvas import __version__
from gardencanvas.app import faults, language, settings
from gardencanvas.app.opening import Opening
from gardencanvas.app.session import Session
from gardencanvas.app.window import MainWindow
from gardencanvas.files import FileRefused, garden_from_bytes
from gardencanvas.files.keeping.recovery import left_over
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.site import Climate, Site
from gardencanvas.resources_folder import resources
from gardencanvas.season.frost import estimate
from gardencanvas.words.language import say
from gardencanvas.words.refusals import why_refused

APP_ID = "org.gardencanvas.GardenCanvas"


def application(arguments: Sequence[str] = ()) -> QApplication:
    """The one application object, named and with its icon."""
    known = QApplication.instance()
    if isinstance(known, QApplication):
        return known
    QCoreApplication.setApplicationName("Garden Canvas")
    QCoreApplication.setOrganizationName("Garden Canvas")
    QCoreApplication.setApplicationVersion(__version__)
    QGuiApplication.setDesktopFileName(APP_ID)
    app = QApplication(["gardencanvas", *arguments])
    app.setStyle("Fusion")
    icon = resources() / "icons" / "gardencanvas.svg"
    if icon.is_file():
        app.setWindowIcon(QIcon(str(icon)))
    return app


def demo_garden() -> Garden:
    """A fresh copy of the demo garden."""
    return garden_from_bytes(
        (resources() / "demo" / "demo.gardencanvas").read_bytes(), say("The demo garden")
    )


def new_garden(year: int | None = None) -> Garden:
    """An empty garden at an invented place, to be set right in the site dialog.

    Its monthly means are invented, those of a mild maritime climate; frost dates are estimated from them.
    """
    means = (3.2, 3.5, 6.3, 9.5, 13.2, 15.9, 18.1, 17.8, 14.8, 11.0, 6.9, 4.0)
    climate = Climate(mean_c=means, source=say("a mild maritime climate, for a start"))
    frost = estimate(climate).frost
    site = Site(place=say("My place"), latitude_deg=52.0, longitude_deg=5.0, frost=frost, climate=climate)
    year = year or date.today().year + (date.today().month > 8)
    return Garden(
        name=say("My garden"),
        site=site,
        layouts=(Layout(id="layout-1", name=say("First sketch"), year=year),),
    )


def run_window(argv: Sequence[str]) -> int:
    """Open the window and run until it is closed; the exit code."""
    app = application()
    language.install(app, language.chosen())
    try:
        session = _session(list(argv))
    except FileRefused as error:
        print(f"gardencanvas: {error}", file=sys.stderr)  # noqa: T201 - no window yet
        if QGuiApplication.platformName() not in {"offscreen", "minimal"}:  # opened by a double click
            box = QMessageBox(QMessageBox.Icon.Information, "Garden Canvas", "")
            box.setTextFormat(Qt.TextFormat.PlainText)
            box.setText(app.tr("This file cannot be opened. {0}").format(why_refused(error)))
            box.exec()
        return 2
    window = MainWindow(session)
    faults.Faults(window, window.keep_now).install()
    if sys.platform == "darwin":  # elsewhere files come as arguments, and a filter costs time at each event
        app.installEventFilter(Opening(window))
    window.show()
    window.view.fit()
    gc.freeze()  # what a start makes stays: later collections need not look at it
    gc.enable()
    QTimer.singleShot(0, faults.start_log)
    QTimer.singleShot(0, window, lambda: _first_questions(window, own=not argv))
    return app.exec()


def _first_questions(window: MainWindow, *, own: bool) -> None:
    """What was being worked on before a crash; and, the first time with a garden of one's own, the place."""
    if left_over():
        from gardencanvas.app.recovery_dialog import offer_work  # seldom needed

        offer_work(window)
    if own and window.session.path is None and not settings.flag("site asked", default=False):
        settings.keep("site asked", True)
        window.actions_.all["site"].trigger()


def _session(argv: list[str]) -> Session:
    if argv and argv[0] == "--demo":
        return Session(demo_garden())
    if argv:
        return Session.opened(Path(argv[0]))
    return Session(new_garden())
