"""Names, roles, focus and large fonts, in the window and its dialogs, as a screen reader asks for them."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QFont
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QSlider,
    QTabBar,
    QWidget,
)

from gardencanvas.app import settings, theme
from gardencanvas.app.comparing.dialog import ComparisonDialog
from gardencanvas.app.comparing.layouts_dialog import LayoutsDialog
from gardencanvas.app.comparing.plans_dialog import PlansDialog
from gardencanvas.app.finding import find_command
from gardencanvas.app.printing.bedmap_dialog import BedMapDialog
from gardencanvas.app.printing.picture_dialog import PictureDialog
from gardencanvas.app.repeat_dialog import RepeatDialog
from gardencanvas.app.session import Session
from gardencanvas.app.site_dialog import SiteDialog
from gardencanvas.app.start import demo_garden
from gardencanvas.garden import layouts

USED = (QAbstractButton, QAbstractItemView, QAbstractSpinBox, QComboBox, QLineEdit, QSlider, QTabBar)
NO_ROLE = (QAccessible.Role.NoRole, QAccessible.Role.Client)


def used_parts(root: QWidget) -> list[QWidget]:
    """What can be worked on; not what Qt itself puts into spin boxes, lists and scroll bars."""
    return [
        w
        for w in root.findChildren(QWidget)
        if isinstance(w, USED)
        and w.isVisible()
        and not w.objectName().startswith("qt_")
        and not isinstance(w.parentWidget(), USED)
    ]


def nameless(root: QWidget) -> list[str]:
    found = []
    for part in used_parts(root):
        told = QAccessible.queryAccessibleInterface(part)
        if told is None or not told.text(QAccessible.Text.Name).strip():
            found.append(f"{type(part).__name__} in {type(part.parentWidget()).__name__}")
        elif told.role() in NO_ROLE:
            found.append(f"{type(part).__name__} has no role")
    return found


@pytest.fixture
def main(open_window):
    settings.store().remove("shape")  # a new user's: not the panels as another test left them
    value, _ = layouts.duplicated(demo_garden(), demo_garden().layouts[0].id, "Another")
    return open_window(Session(value), 1280, 800)


def dialogs(main):
    yield PlansDialog(main)
    yield ComparisonDialog(main)
    yield LayoutsDialog(main)
    yield BedMapDialog(main)
    yield PictureDialog(main)
    yield RepeatDialog(main)
    yield SiteDialog(main.session.garden.site, main)
    yield find_command(main)


def test_everything_that_can_be_worked_has_a_name_and_a_role(main, qtbot):
    found = {"window": nameless(main)}
    for tab in ("gaps", "jobs", "seeds"):
        main.show_tab(tab)
        qtbot.wait(50)
        found[tab] = nameless(main)
    for chosen in ("p-leek", "bed-2"):
        main.session.select([chosen])
        qtbot.wait(100)
        found[chosen] = nameless(main)
    main.session.select(["p-leek"])
    for dialog in dialogs(main):
        dialog.show()
        qtbot.wait(100)
        found[type(dialog).__name__] = nameless(dialog)
        dialog.close()
        dialog.deleteLater()
    assert {where: parts for where, parts in found.items() if parts} == {}


def test_everything_that_can_be_worked_is_reached_by_tab_or_from_its_group(main, qtbot):
    main.session.select(["p-leek"])
    qtbot.wait(100)
    unreached = [
        f"{type(w).__name__} {w.accessibleName()}"
        for w in used_parts(main)
        if w.isEnabled() and not w.focusPolicy() & Qt.FocusPolicy.TabFocus
    ]
    assert unreached == []


def grab(widget) -> bytes:
    image = widget.grab().toImage()
    return bytes(image.constBits())


def test_the_focus_is_seen_on_everything_that_takes_it(main, qtbot):
    """A picture of each part with the focus differs from one without it."""
    with qtbot.waitActive(main):
        main.activateWindow()
    main.session.select(["p-leek"])
    qtbot.wait(100)
    hidden = []
    for part in used_parts(main):
        if not part.isEnabled() or part.focusPolicy() == Qt.FocusPolicy.NoFocus:
            continue
        main.view.setFocus()
        without = grab(part)
        part.setFocus(Qt.FocusReason.TabFocusReason)
        if part.hasFocus() and grab(part) == without:
            hidden.append(f"{type(part).__name__} {part.accessibleName()}")
    assert hidden == []


@pytest.fixture
def large_font(request, qapp):
    """The system's font at 150 or 200 %."""
    usual = QFont(qapp.font())
    larger = QFont(usual)
    larger.setPointSizeF(usual.pointSizeF() * request.param)
    qapp.setFont(larger)
    yield request.param
    qapp.setFont(usual)
    theme.apply(qapp, dark=False)


def cut_off(root: QWidget) -> list[str]:
    """Labels and buttons that are smaller than their words, and not made to be elided or wrapped."""
    found = []
    for part in root.findChildren(QWidget):
        if not part.isVisible() or not isinstance(part, QLabel | QAbstractButton):
            continue
        words = part.text()
        if not words or part.width() == 0 or (isinstance(part, QLabel) and part.wordWrap()):
            continue
        if type(part).__name__ in ("ElidedLabel", "RemedyButton"):
            continue
        needed = part.fontMetrics().horizontalAdvance(words.replace("&", ""))
        if part.width() + 1 < needed or part.height() + 1 < part.fontMetrics().ascent():
            found.append(f"{type(part).__name__} “{words}” {part.width()} of {needed}")
    return found


@pytest.mark.parametrize("large_font", [1.5, 2.0], indirect=True, ids=["150 %", "200 %"])
def test_nothing_is_cut_off_with_a_large_font(large_font, main, qtbot):
    main.resize(1440, 900)
    main.session.select(["p-leek"])
    qtbot.wait(150)
    assert main.width() <= 1440 and main.height() <= 900, "the window still fits its screen"  # noqa: PT018
    assert cut_off(main) == []
    dialog = PlansDialog(main)
    dialog.show()
    qtbot.wait(100)
    assert cut_off(dialog) == []
    dialog.close()
    dialog.deleteLater()


def test_reduced_motion_is_honoured_in_both_plans(main):
    dialog = PlansDialog(main)
    assert all(view.look.still for view in dialog.views)
    dialog.deleteLater()
    assert QApplication.instance() is not None
