"""What came up by itself: marked on the plan, shown as estimated, kept, thinned, removed."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from gardencanvas.app.session import Session
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.garden.pattern import Rows, Spots
from gardencanvas.garden.volunteers import came_up
from gardencanvas.measures.jobs.job import JobKind
from gardencanvas.measures.jobs.listing import jobs
from gardencanvas.measures.seed_order import seed_order
from gardencanvas.planner.thinning import usual_distance
from tests.garden.makers import bed, garden, row
from tests.window.hand import Hand

pytestmark = pytest.mark.gui

UP = date(2027, 4, 18)


def thick_row(**changes):
    """Calendula that came up every 5 cm."""
    pattern = Rows(origin=(0.1, 0.1), length_m=3.0, rows=1, spacing_m=0.05, row_spacing_m=0.3)
    return row("came", "calendula", pattern=pattern, start=came_up(UP), **changes)


@pytest.fixture
def main(open_window):
    window = open_window(Session(garden(thick_row(), row("leeks", "leek", 0.1, 0.7), beds=(bed(),))))
    window.view.fit()
    return window


def action(window, name):
    return window.actions_.all[name]


def test_a_crop_is_marked_as_come_up_about_the_shown_date(qtbot):
    hand = Hand(qtbot, garden(beds=(bed(),)))
    hand.session.show_date(date(2027, 5, 9))
    hand.view.carry("calendula", None, "single")
    hand.move((1.0, 0.5), held=Qt.MouseButton.NoButton)
    hand.key(Qt.Key.Key_0)
    hand.key(Qt.Key.Key_Return)
    (planting,) = hand.layout.plantings
    assert isinstance(planting.pattern, Spots)
    assert (planting.start.kind, planting.start.on, planting.start.within_d) == (
        "volunteer", date(2027, 5, 9), 14,
    )  # fmt: skip
    assert hand.session.history.undo_text == "Mark Calendula that came up by itself"


def test_a_second_0_makes_it_an_ordinary_planting_again(qtbot):
    hand = Hand(qtbot, garden(beds=(bed(),)))
    hand.view.carry("calendula", None, "single")
    hand.move((1.0, 0.5), held=Qt.MouseButton.NoButton)
    hand.write("00")
    hand.key(Qt.Key.Key_Return)
    assert hand.layout.plantings[0].start.kind != "volunteer"


def test_the_command_carries_the_crop_in_hand_as_a_volunteer(main):
    main.tin.reveal("calendula", None)
    main.tin.list.setFocus()
    action(main, "came up").trigger()
    assert main.view.tool.name == "place"
    QTest.keyClick(main.view, Qt.Key.Key_Return)
    assert main.session.layout.plantings[-1].start.kind == "volunteer"


def test_the_inspector_shows_the_day_as_estimated_and_offers_what_to_do(main, qtbot):
    main.session.select(["came"])
    page = main.inspector.planting
    qtbot.waitUntil(page.volunteer.isVisible)
    assert "18 April ± 14 days, estimated" in [w.text() for w in page.findChildren(type(page.volunteer.said))]
    main.session.select(["leeks"])
    qtbot.waitUntil(page.volunteer.isHidden)


def test_thinning_leaves_its_usual_distance_in_one_step(main, qtbot):
    session = main.session
    session.select(["came"])
    page = main.inspector.planting
    qtbot.waitUntil(page.volunteer.isVisible)
    page.volunteer.thin.click()
    planting = session.layout.by_id["came"]
    usual = usual_distance(catalogue(), planting)
    assert usual == catalogue().crop("calendula").in_row_m.mid
    assert np.diff(planting.stations[:, 0]).min() >= usual - 1e-6
    assert not check(session.garden).of("came") or all(
        f.code not in ("too close", "smaller each") for f in check(session.garden).of("came")
    )
    qtbot.waitUntil(lambda: not page.volunteer.thin.isEnabled())
    assert page.volunteer.thin.toolTip() == "It stands that far apart already."
    action(main, "undo").trigger()
    assert session.layout.by_id["came"].pattern.count == 60


def test_keeping_and_removing_are_commands_with_reasons(main, qtbot):
    session = main.session
    assert action(main, "keep volunteer").toolTip() == "Select one planting that came up by itself first."
    session.select(["leeks"])
    assert not action(main, "thin volunteer").isEnabled()
    session.select(["came"])
    action(main, "keep volunteer").trigger()
    assert session.layout.by_id["came"].start.kept
    assert action(main, "keep volunteer").toolTip() == "It is kept already."
    action(main, "remove volunteer").trigger()
    assert "came" not in session.layout.by_id
    action(main, "undo").trigger()
    assert session.layout.by_id["came"].start.kept


@pytest.mark.parametrize("kept", [False, True])
def test_nothing_is_sown_or_ordered_for_it(kept):
    start = came_up(UP).model_copy(update={"kept": kept})
    value = garden(row("came", "calendula", start=start), row("leeks", "leek", 0.1, 0.7))
    kinds = {j.kind for j in jobs(value, "l1") if j.item == "came"}
    assert kinds.isdisjoint({JobKind.SOW, JobKind.PLANT_OUT, JobKind.SET, JobKind.THIN})
    assert {line.crop for line in seed_order(value, "l1")} == {"leek"}
    assert "came" in check(value).plantings
