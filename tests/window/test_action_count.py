"""How many actions an experienced grower needs for the demo garden's largest bed, from an empty layout.

An action is a click, a drag, a typed value with its Enter or Tab, or a key of a command. The recipe is
replayed by real mouse and key events and must end with an equal bed.
"""

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from gardencanvas.app.inspector.fields import DayField
from gardencanvas.app.session import Session
from gardencanvas.app.start import demo_garden
from gardencanvas.canvas.snapping import GRID_CM
from gardencanvas.garden import layouts
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.places import bed_ground, bed_of

MOST_ACTIONS = 67  # 8 for the bed, 20 to find and place five crops, 39 numbers and dates
CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
KEY, LEFT = Qt.Key, Qt.MouseButton.LeftButton


class Grower:
    """Works a window with mouse and keys, and counts."""

    def __init__(self, window, qtbot) -> None:
        self.window, self.view, self.qtbot = window, window.view, qtbot
        self.actions = 0

    def keys(self, key, keys=Qt.KeyboardModifier.NoModifier) -> None:
        QTest.keyClick(QApplication.focusWidget(), key, keys)
        self.actions += 1

    def type(self, text: str) -> None:
        """A value and its Enter."""
        for letter in text:
            QTest.keyClicks(QApplication.focusWidget(), letter)
        self.keys(KEY.Key_Return)

    def pixel(self, x: float, y: float) -> QPoint:
        return self.view.mapFromScene(QPointF(x, y) * 100)

    def click(self, x: float, y: float) -> None:
        QTest.mouseMove(self.view.viewport(), self.pixel(x, y))
        self.qtbot.wait(30)
        QTest.mouseClick(self.view.viewport(), LEFT, pos=self.pixel(x, y))
        self.qtbot.wait(30)
        self.actions += 1

    def plant(self, crop: str, x: float, y: float, mode: str) -> None:
        """Find a crop, say what it is laid as, and click where."""
        self.keys(KEY.Key_F, CTRL | SHIFT)
        self.type(crop)
        self.keys(mode)
        self.click(x, y)

    def field(self, name: str, number: int = 0) -> QWidget:
        def found():
            return [
                w
                for w in self.window.inspector.findChildren(QWidget)
                if w.isVisible() and w.accessibleName() == name
            ]

        self.qtbot.waitUntil(lambda: len(found()) > number)
        return found()[number]

    def set(self, **values) -> None:
        """Type into fields of the inspector; Tab after a value goes on to the next field without a click."""
        for name, value in values.items():
            field = self.field(NAMES[name])
            if not field.hasFocus():
                field.setFocus(Qt.FocusReason.TabFocusReason)  # all of it is selected, as by a double click
                self.actions += 1
            for letter in value:
                QTest.keyClicks(field, letter)
            self.keys(KEY.Key_Return if isinstance(field, DayField) else KEY.Key_Tab)
            self.qtbot.wait(30)


NAMES = {
    "on": "In the bed from",
    "spacing": "Spacing",
    "between": "Between rows",
    "length": "Length",
    "width": "Width",
    "radius": "Radius",
    "rows": "Rows",
    "left": "From the plan’s left",
    "top": "From the plan’s top",
    "angle": "Angle",
}


@pytest.fixture
def grower(open_window, qtbot):
    value = demo_garden()
    value, empty = layouts.with_empty(value, "From scratch", 2027, value.layouts[0].id)
    bare = rebuilt(value.layout(empty), beds=(), paths=(), supports=(), covers=())
    window = open_window(Session(rebuilt(value, layouts=(bare,))))
    with qtbot.waitActive(window):
        window.activateWindow()
    window.view.fit()
    window.view.setFocus()
    return Grower(window, qtbot)


def recipe(hand: Grower) -> None:
    """The corner bed: an L of six corners and five crops."""
    hand.keys(KEY.Key_B, SHIFT)
    for corner in ((6.4, 0.0), (10.4, 0.0), (10.4, 1.3), (8.0, 1.3), (8.0, 4.4), (6.4, 4.4)):
        hand.click(*corner)
    hand.keys(KEY.Key_Return)
    hand.plant("sweetcorn", 7.2, 2.6, "2")
    hand.set(on="12", spacing="35", length="140", width="105", left="650", top="200", angle="0")
    hand.plant("winter squash", 7.2, 3.75, "3")
    hand.set(on="28", spacing="140")
    hand.plant("climbing bean", 7.2, 1.0, "6")
    hand.set(on="20", spacing="30", radius="50")
    hand.plant("strawberry", 9.2, 0.35, "1")
    hand.set(on="20", between="55", length="220", rows="2", left="810", top="10", angle="0")
    hand.plant("broad bean", 9.2, 0.6, "1")
    hand.set(on="26Feb", spacing="20", between="30", length="220", left="810", top="50", angle="0")


def test_the_largest_bed_is_planned_in_so_many_actions(grower):
    demo = demo_garden().layouts[0]
    sought = max(demo.beds, key=lambda bed: bed_ground(bed).area)
    wanted = {p.crop: p for p in demo.plantings if bed_of(demo, p) is sought}
    recipe(grower)
    made = grower.window.session.layout
    (bed,) = made.beds
    assert bed_ground(bed).symmetric_difference(bed_ground(sought)).area < 0.05 * bed_ground(sought).area
    assert [p.crop for p in made.plantings] == list(dict.fromkeys(p.crop for p in made.plantings))
    assert {p.crop for p in made.plantings} == set(wanted)
    for planting in made.plantings:
        there = wanted[planting.crop]
        assert planting.plants == there.plants, planting.crop
        assert planting.start.on == there.start.on, planting.crop
        away = np.linalg.norm(planting.stations[:, None] - there.stations[None], axis=2).min(axis=1)
        assert away.max() <= GRID_CM / 100, planting.crop
    assert grower.actions <= MOST_ACTIONS
