"""The window in a language of bracketed texts, 40 % longer: nothing is untranslated, nothing clipped.

``python tests/gallery.py --pseudo`` draws every screen so and says the same of each.
"""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication, QDialog, QWidget

from gardencanvas.app.comparing.dialog import ComparisonDialog
from gardencanvas.app.comparing.layouts_dialog import LayoutsDialog
from gardencanvas.app.comparing.plans_dialog import PlansDialog
from gardencanvas.app.finding import find_command, find_on_plan
from gardencanvas.app.printing.bedmap_dialog import BedMapDialog
from gardencanvas.app.printing.picture_dialog import PictureDialog
from gardencanvas.app.repeat_dialog import RepeatDialog
from gardencanvas.app.session import Session
from gardencanvas.app.site_dialog import SiteDialog
from gardencanvas.app.split_dialog import SplitDialog
from gardencanvas.app.start import demo_garden
from gardencanvas.app.succession_dialog import SuccessionDialog
from gardencanvas.app.versions_dialog import VersionsDialog
from gardencanvas.app.window import MainWindow
from gardencanvas.canvas.palette import palette
from tests import pseudo_locale
from tests.reading_windows import clipped, names_in, untranslated

pytestmark = pytest.mark.gui


@pytest.fixture
def pseudo(qapp):
    """The language, spoken as long as the test runs."""
    spoken = pseudo_locale.install(qapp)
    yield
    pseudo_locale.remove(spoken)
    spoken.deleteLater()
    QApplication.sendPostedEvents(spoken, QEvent.Type.DeferredDelete.value)


def test_the_language_itself(qapp, pseudo):
    assert pseudo_locale.pseudo("Save {0} beds") != "Save {0} beds"
    assert "{0}" in pseudo_locale.pseudo("Save {0} beds")
    assert len(pseudo_locale.pseudo("Nothing is planted yet")) >= 1.4 * len("Nothing is planted yet")
    assert not pseudo_locale.bare_words(pseudo_locale.pseudo("Nothing is planted yet"))
    assert pseudo_locale.bare_words("Beds " + pseudo_locale.pseudo("by name")) == "Beds"


def sound(qtbot, root: QWidget, names: list[str]) -> None:
    """Nothing of a window is untranslated; once it is laid out, nothing is clipped."""
    left = untranslated(root, names)
    assert not left, "\n".join(left)
    try:
        qtbot.waitUntil(lambda: not clipped(root), timeout=3000)
    except qtbot.TimeoutError:
        pytest.fail("clipped:\n" + "\n".join(clipped(root)))


@pytest.mark.parametrize("size", [(1440, 900), (1024, 700)])
def test_the_main_window(qtbot, pseudo, open_window, size):
    garden = demo_garden()
    main = open_window(Session(garden), *size)
    names = names_in(garden)
    plantings = [p.id for p in garden.layouts[0].plantings]
    for ids in ((), (garden.layouts[0].beds[0].id,), plantings[:1], plantings[:3]):
        main.session.select(ids)
        qtbot.wait(300)
        sound(qtbot, main, names)


@pytest.mark.parametrize("tab", range(5))
def test_the_lists_below_the_plan(qtbot, pseudo, open_window, tab):
    garden = demo_garden()
    main = open_window(Session(garden), 1280, 800)
    if tab < main.bottom.count():
        main.bottom.setCurrentIndex(tab)
    qtbot.wait(700)
    sound(qtbot, main, names_in(garden))


def _first(main: MainWindow, kind: str):
    return next(p for p in main.session.layout.plantings if p.pattern.kind == kind)


def _chosen(main: MainWindow) -> MainWindow:
    main.session.select([_first(main, "rows").id])
    return main


DIALOGS: dict[str, Callable[[MainWindow], QDialog]] = {
    "bed map": BedMapDialog,
    "picture": PictureDialog,
    "comparison": ComparisonDialog,
    "layouts": LayoutsDialog,
    "two plans": PlansDialog,
    "site": lambda main: SiteDialog(main.session, main),
    "commands": find_command,
    "find": find_on_plan,
    "repeat": lambda main: RepeatDialog(_chosen(main)),
    "split": lambda main: SplitDialog(_chosen(main), _first(main, "rows")),
    "again": lambda main: SuccessionDialog(main.session, _first(main, "rows"), palette(False), main),
    "versions": VersionsDialog,
}


@pytest.mark.parametrize("name", DIALOGS)
def test_the_dialogs(qtbot, pseudo, open_window, name):
    garden = demo_garden()
    main = open_window(Session(garden), 1440, 900)
    dialog = DIALOGS[name](main)
    dialog.show()
    qtbot.waitExposed(dialog)
    qtbot.wait(400)
    sound(qtbot, dialog, names_in(garden))
    dialog.close()
