"""A whole plan from an empty garden with key presses only, and every command within reach of the keyboard."""

import re
from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QFileDialog, QMenu, QWidget

from gardencanvas.app.inspector.remedy_list import RemedyButton
from gardencanvas.app.printing.bedmap_dialog import BedMapDialog
from gardencanvas.app.session import Session
from gardencanvas.app.start import demo_garden, new_garden
from gardencanvas.canvas.view import PlanView
from gardencanvas.files import open_garden
from gardencanvas.fit.report import Verdict

CTRL, ALT, SHIFT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.AltModifier,
    Qt.KeyboardModifier.ShiftModifier,
)
KEY = Qt.Key


def focus() -> QWidget:
    """Where the keys go."""
    found = QApplication.focusWidget()
    assert found is not None, "the keys go nowhere"
    return found


def press(key, keys=Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(focus(), key, keys)


def write(text: str) -> None:
    for letter in text:
        QTest.keyClicks(focus(), letter)


def walk_to(wanted, most=80) -> QWidget:
    """Press Ctrl+Tab or Tab until the focus is where it is wanted."""
    passed = []
    for _ in range(most):
        if wanted(focus()):
            return focus()
        passed.append(focus().accessibleName() or type(focus()).__name__)
        press(KEY.Key_Tab, CTRL if isinstance(focus(), PlanView) else Qt.KeyboardModifier.NoModifier)
    raise AssertionError(f"not reached by Tab, which stops at {passed}")


def answer(kind: type[QDialog], keys: Callable[[], None], tries: int = 200) -> None:
    """Press keys in a dialog of that kind, which is about to open; it is closed in any case."""
    dialog = QApplication.activeModalWidget()
    if isinstance(dialog, kind) and dialog.isActiveWindow() and QApplication.focusWidget() is not None:
        try:
            keys()
        finally:
            if dialog.isVisible() and QApplication.activeModalWidget() is dialog:
                dialog.reject()
    elif tries:
        QTimer.singleShot(25, lambda: answer(kind, keys, tries - 1))
    elif isinstance(dialog, QDialog):
        dialog.reject()


def name_file(path) -> None:
    """Answer the file dialog that will open by typing a name and Enter."""

    def keys() -> None:
        press(KEY.Key_A, CTRL)
        write(str(path))
        press(KEY.Key_Return)

    QTimer.singleShot(25, lambda: answer(QFileDialog, keys))


@pytest.fixture
def window(open_window, qtbot):
    main = open_window(Session(new_garden(2027)))
    with qtbot.waitActive(main):
        main.activateWindow()
    QApplication.setAttribute(Qt.ApplicationAttribute.AA_DontUseNativeDialogs)
    yield main
    QApplication.setAttribute(Qt.ApplicationAttribute.AA_DontUseNativeDialogs, False)


def place(crop: str, steps: str = "") -> None:
    """Find a crop by its name and put it into the bed; ``steps`` are keys pressed while it is carried."""
    press(KEY.Key_F, CTRL | SHIFT)
    write(crop)
    press(KEY.Key_Return)
    for step in steps:
        press({"d": KEY.Key_Down, "u": KEY.Key_Up, "r": KEY.Key_Right, "l": KEY.Key_Left}.get(step, step))
    press(KEY.Key_Return)


@pytest.mark.qt_log_ignore("This plugin does not support", extend=True)  # raise(), grabs: only offscreen
def test_a_plan_is_made_saved_and_printed_without_the_mouse(window, qtbot, tmp_path):
    session = window.session
    press(KEY.Key_1, ALT)
    # a bed by its measures
    press(KEY.Key_B)
    write("3.6x1.2")
    press(KEY.Key_Return)
    (bed,) = session.layout.beds
    xs, ys = zip(*bed.outline, strict=True)
    assert (max(xs) - min(xs), max(ys) - min(ys)) == (3.6, 1.2)
    press(KEY.Key_8, CTRL)  # fit what is selected
    # two crops, the second between the rows of the first
    place("leek", "2")
    (leek,) = session.layout.plantings
    assert leek.crop == "leek"
    # its date, in the inspector
    qtbot.waitUntil(lambda: "In the bed from" in _names(window.inspector))
    press(KEY.Key_4, ALT)
    walk_to(lambda w: w.accessibleName() == "In the bed from")
    write("10")  # the day; month and year stay
    press(KEY.Key_Return)
    assert session.layout.plantings[0].start.on == leek.start.on.replace(day=10) != leek.start.on
    place("radish", "9")
    assert [p.crop for p in session.layout.plantings] == ["leek", "radish"]
    # one too many, right on the leeks
    place("cabbage")
    assert max(fit.verdict for fit in session.report.plantings.values()) >= Verdict.STRAINS
    # the verdict in words
    press(KEY.Key_3, ALT)
    assert focus() is window.outline.tree
    press(KEY.Key_End)
    told = " ".join(str(i.data()) for i in window.outline.tree.selectedIndexes())
    assert re.search("clear|shares|strains|clashes", told)
    # a remedy
    before = session.garden
    press(KEY.Key_F8)
    press(KEY.Key_6, ALT)
    qtbot.waitUntil(lambda: bool(_remedies(window)), timeout=10_000)
    walk_to(lambda w: w in _remedies(window))
    press(KEY.Key_Space)
    qtbot.waitUntil(lambda: session.garden is not before)
    qtbot.waitUntil(lambda: QApplication.focusWidget() is not None)  # the button is gone with its finding
    # saved, and printed to a file
    saved, pages = tmp_path / "plan.gardencanvas", tmp_path / "map.pdf"
    name_file(saved)
    press(KEY.Key_S, CTRL)
    qtbot.waitUntil(lambda: not session.unsaved)
    assert open_garden(saved) == session.garden
    with qtbot.waitActive(window):  # as a window manager does when a dialog is gone
        window.activateWindow()
    QTimer.singleShot(25, lambda: answer(BedMapDialog, lambda: _print(pages)))
    press(KEY.Key_P, CTRL)
    assert pages.read_bytes().startswith(b"%PDF")


def _names(panel) -> set[str]:
    """What the parts are called that are seen in a panel."""
    return {w.accessibleName() for w in panel.findChildren(QWidget) if w.isVisible()}


def _remedies(window) -> list[RemedyButton]:
    return [b for b in window.findings.findChildren(RemedyButton) if b.isVisible()]


def _print(pages) -> None:
    """In the dialog of the bed map: its own keys, then away."""
    dialog = QApplication.activeModalWidget()
    assert isinstance(dialog, BedMapDialog)
    for _ in range(100):
        if dialog.save.isEnabled() and dialog.view.isVisible():
            break
        QTest.qWait(30)
    name_file(pages)
    QTest.keyClick(dialog, KEY.Key_S, ALT)
    for _ in range(100):
        if pages.exists():
            break
        QTest.qWait(30)
    QTest.keyClick(dialog, KEY.Key_Escape)


def actions_of(menu: QMenu, above: tuple[QAction, ...] = ()):
    """Every action of a menu, with the menu actions above it."""
    for action in menu.actions():
        if action.isSeparator():
            continue
        if action.menu() is not None:
            action.menu().aboutToShow.emit()
            yield from actions_of(action.menu(), (*above, action))
        else:
            yield action, above


@pytest.fixture(params=["empty", "demo", "one selected"])
def menus(open_window, request):
    session = Session(new_garden(2027) if request.param == "empty" else demo_garden())
    main = open_window(session)
    if request.param == "one selected":
        session.select(["p-leek"])
    return main


def test_every_command_is_reached_by_keyboard_and_says_why_it_cannot_be_done(menus):
    bar = menus.menuBar()
    tops = [QKeySequence.mnemonic(a.text()).toString() for a in bar.actions()]
    assert all(tops), "each menu opens by Alt and a letter"
    assert len(set(tops)) == len(tops)
    unreached, silent, clashing = [], [], []
    keys: dict[str, str] = {}
    for top in bar.actions():
        for action, above in actions_of(top.menu(), (top,)):
            path = " › ".join(a.text() for a in (*above, action))
            letters = [QKeySequence.mnemonic(a.text()).toString() for a in (*above, action)]
            of_users = action.data() is not None or not action.isEnabled()  # recent files, layouts: by arrows
            if not all(letters) and not action.shortcuts() and not (all(letters[:-1]) and of_users):
                unreached.append(path)
            if not action.isEnabled() and not re.search(r"[.]$", action.toolTip()):
                silent.append(path)
            own = [shortcut.toString() for shortcut in action.shortcuts()]
            clashing += [(k, path, keys[k]) for k in own if keys.setdefault(k, path) != path]
    assert (unreached, silent, clashing) == ([], [], [])


def test_no_two_commands_of_a_menu_share_a_letter(menus):
    twice = []

    def look(menu: QMenu, name: str) -> None:
        seen: dict[str, str] = {}
        for action in menu.actions():
            if action.menu() is not None:
                look(action.menu(), f"{name} › {action.text()}")
            letter = QKeySequence.mnemonic(action.text()).toString()
            if letter and action.data() is None and seen.setdefault(letter, action.text()) != action.text():
                twice.append((name, letter, seen[letter], action.text()))

    for top in menus.menuBar().actions():
        look(top.menu(), top.text())
    assert twice == []
