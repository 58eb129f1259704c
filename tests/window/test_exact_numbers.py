"""The inspector's exact numbers: typed, committed as one step each, refused with a reason."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from gardencanvas.app.inspector.exact import ExactNumbers
from gardencanvas.app.session import Session
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Variety
from gardencanvas.garden.pattern import Block, Drift, RingPattern, Rows
from gardencanvas.garden.stations import without_stations
from gardencanvas.garden.volunteers import came_up
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden, row

pytestmark = pytest.mark.gui

VARIETIES = tuple(
    Variety(id=i, crop="leek", name=n) for i, n in (("early", "Early row"), ("late", "Late row"))
)
SQUARE = ((0.0, 0.0), (2.0, 0.0), (2.0, 1.0), (0.0, 1.0))


class Shown:
    """The exact numbers of a planting on a session of its own; they follow when asked."""

    def __init__(self, qtbot, planting) -> None:
        self.session = Session(garden(planting, beds=(bed(),), varieties=VARIETIES))
        self.said: list[str] = []
        self.session.refused.connect(self.said.append)
        self.exact = ExactNumbers(self.session)
        self.exact.setProperty("shown", self)
        qtbot.addWidget(self.exact)
        self.refresh()
        self.exact.show()

    def refresh(self) -> None:
        self.exact.show_planting(now(self), Measure())


def shown(qtbot, planting):
    main = Shown(qtbot, planting)
    return main, main.exact


def now(main):
    return main.session.layout.by_id["p-1"]


def put(field, text):
    """Type into a field and press Enter; what is shown follows a moment later."""
    main = field.window().property("shown")
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, text)
    QTest.keyClick(field, Qt.Key.Key_Return)
    main.refresh()


def tick(box):
    main = box.window().property("shown")
    box.click()
    main.refresh()


def test_varieties_are_typed_in_the_order_in_which_they_repeat(qtbot):
    main, exact = shown(qtbot, row())
    put(exact.mixture.names, "early row, Late row, early row, late row")
    assert (now(main).varieties, now(main).shares) == (("early", "late"), ())
    assert now(main).mixed[:4].tolist() == [0, 1, 0, 1]
    put(exact.mixture.shares, "2 : 1")
    assert now(main).shares == (2, 1)
    assert np.bincount(now(main).mixed[:18]).tolist() == [12, 6]
    put(exact.mixture.shares, "4:2")
    assert main.session.history.count() == 2  # the same in other numbers
    put(exact.mixture.names, "Early row")
    assert (now(main).varieties, now(main).shares) == (("early",), ())
    assert not exact.mixture.shares.isEnabled()
    assert "two varieties" in exact.mixture.shares.toolTip()
    main.session.history.undo()
    assert now(main).shares == (2, 1)


def test_an_unknown_variety_or_a_bad_share_is_told_and_changes_nothing(qtbot):
    main, exact = shown(qtbot, row(varieties=("early", "late")))
    put(exact.mixture.names, "Early row, nonesuch")
    assert main.said[-1] == "No variety of this crop is called “nonesuch”."
    assert exact.mixture.names.text() == "Early row, Late row"
    for bad in ("2", "2 : 0", "one : two", "1 : 2 : 3"):
        put(exact.mixture.shares, bad)
        assert "each of the 2 varieties" in main.said[-1]
        assert exact.mixture.shares.text() == ""
    assert main.session.history.count() == 0


def test_a_variety_is_added_from_the_list_and_a_crop_without_any_says_why(qtbot):
    main, exact = shown(qtbot, row(varieties=("early",)))
    (late,) = [a for a in exact.mixture.add.menu().actions() if a.text() == "Late row"]
    late.trigger()
    main.refresh()
    assert now(main).varieties == ("early", "late")
    known = catalogue()
    without = next(c.id for c in known.crops if not known.varieties_of(c.id))
    main, exact = shown(qtbot, row(crop=without))
    assert not exact.mixture.names.isEnabled()
    assert exact.mixture.names.toolTip().startswith("No variety of this crop")


def test_a_note_is_written_as_it_is(qtbot):
    main, exact = shown(qtbot, row())
    put(exact.note.note, "<b>seed of</b> the tall one")
    assert now(main).note == "<b>seed of</b> the tall one"
    assert main.session.history.undo_text == "Change note"
    main.session.history.undo()
    main.refresh()
    assert exact.note.note.text() == ""


def test_a_clump_is_typed(qtbot):
    main, exact = shown(qtbot, row())
    put(exact.mixture.clump, "4")
    assert (now(main).per_station, now(main).plants) == (4, 80)


def test_places_are_shared_by_typing(qtbot):
    ring = RingPattern(origin=(1.0, 0.6), radius_m=0.4, spacing_m=0.1)
    main, exact = shown(qtbot, row(pattern=ring))
    assert now(main).pattern.count == 25  # ⌊2π·0.4/0.1⌋
    assert not exact.pattern.counts["first"].isEnabled()
    assert exact.pattern.counts["first"].toolTip() == "It takes every place"
    put(exact.pattern.counts["every"], "2")
    put(exact.pattern.counts["first"], "2")
    assert (now(main).pattern.every, now(main).pattern.first, now(main).pattern.count) == (2, 1, 12)
    put(exact.pattern.counts["every"], "1")
    assert now(main).pattern.count == 25


def test_a_block_is_staggered_and_laid_at_exact_places(qtbot):
    main, exact = shown(qtbot, row(pattern=Block(length_m=1.0, width_m=1.0, spacing_m=0.25)))
    exact.pattern.ticks["staggered"].click()
    assert now(main).pattern.staggered
    x, y = exact.pattern.places
    put(x, "12.5")
    put(y, "-30")
    assert now(main).pattern.origin == (0.125, -0.3)
    put(exact.pattern.angle, "15")
    assert now(main).pattern.angle_deg == 15.0


def test_a_drift_has_as_many_plants_as_typed_and_another_arrangement_for_another_number(qtbot):
    drift = Drift(outline=SQUARE, spacing_m=0.2, plants=10, seed=3)
    main, exact = shown(qtbot, row(pattern=drift))
    before = now(main).stations
    put(exact.pattern.counts["seed"], "4")
    assert not np.array_equal(now(main).stations, before)
    put(exact.pattern.counts["seed"], "3")
    assert np.array_equal(now(main).stations, before)
    put(exact.pattern.counts["plants"], "12")
    assert now(main).pattern.count == 12


def test_plants_left_out_stay_out_when_the_spacing_or_the_place_changes(qtbot):
    planting = row(pattern=Rows(length_m=3.0, rows=1, spacing_m=0.15, row_spacing_m=0.3))
    main, exact = shown(qtbot, without_stations(planting, [4]))
    gap = planting.stations[4]
    put(exact.pattern.places[0], "100")
    assert now(main).pattern.left_out == (4,)
    put(exact.pattern.lengths["spacing_m"], "10")
    (gone,) = now(main).pattern.left_out
    # the row's begin went from 0 to 1 m on the plan
    assert np.hypot(*(now(main).pattern.all_places[gone] - gap - (1.0, 0.0))) <= 0.05


def test_the_dates_of_a_raised_planting(qtbot):
    main, exact = shown(qtbot, row(kind="raised"))
    start = exact.start
    assert not start.sown.day.isEnabled()
    tick(start.sown.own)
    assert now(main).start.sown_on is not None
    days = now(main).start.on - now(main).start.sown_on
    start.on.show_day(date(2027, 5, 1))
    start.on.setDate(start.on.date().addDays(10))
    start.on.editingFinished.emit()
    main.refresh()
    assert now(main).start.on == date(2027, 5, 11)
    assert now(main).start.on - now(main).start.sown_on == days
    tick(start.sown.own)
    assert now(main).start.sown_on is None
    tick(start.pinned)
    assert not now(main).start.pinned
    tick(start.end.own)
    assert now(main).end is not None
    tick(start.end.own)
    assert now(main).end is None


def test_how_sure_the_day_of_a_volunteer_is(qtbot):
    main, exact = shown(qtbot, row(start=came_up(date(2027, 4, 18))))
    put(exact.start.within, "5")
    assert now(main).start.within_d == 5
    put(exact.start.within, "0")
    assert now(main).start.within_d is None
    exact.start.kind.setCurrentIndex(0)
    exact.start.kind.activated.emit(0)
    assert now(main).start.kind == "sown"


def test_what_is_not_allowed_is_told_and_the_field_shows_what_is(qtbot):
    main, exact = shown(qtbot, row())
    end = exact.start.end
    tick(end.own)
    was = now(main).end
    end.day.setDate(end.day.minimumDate())
    end.day.editingFinished.emit()
    assert "must come after the start" in main.said[-1]
    assert now(main).end == was
