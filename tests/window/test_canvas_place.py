"""Carrying a crop over the plan and putting it down, with the mouse of another widget and with keys."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from shapely import Point, Polygon

from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from tests.garden.makers import bed, garden, row
from tests.window.hand import SHIFT, Hand, two_rows

KEY = Qt.Key


@pytest.fixture
def hand(qtbot):
    return Hand(qtbot, two_rows())


def over(hand, x, y) -> QPoint:
    """The global point of a plan place."""
    return hand.view.viewport().mapToGlobal(hand.pixel((x, y)))


def carry(hand, crop, x, y, mode="rows"):
    hand.view.carry(crop, None, mode)
    hand.view.carry_move(over(hand, x, y))
    hand.view.carry_move(over(hand, x, y))
    hand.view._flush()


def added(hand):
    (planting,) = [p for p in hand.layout.plantings if p.id not in {"leeks", "beets"}]
    return planting


def test_a_row_falls_along_the_bed_at_the_cursor(hand):
    carry(hand, "lettuce", 1.8, 2.4)
    hand.view.carry_drop()
    planting = added(hand)
    ground = Polygon(hand.layout.beds[1].outline)
    assert all(ground.covers(Point(*xy)) for xy in planting.stations)
    assert np.ptp(planting.stations[:, 1]) == pytest.approx(0.0, abs=1e-9)
    assert planting.stations[0, 1] == pytest.approx(2.4, abs=0.026)
    crop = hand.session.catalogue.crop("lettuce")
    assert len(planting.stations) == int(3.6 / crop.in_row_m.mid + 1e-9)
    assert hand.session.history.undo_text == f"Add row of {crop.name}"
    assert hand.session.selection == {planting.id}


def test_a_drop_undone_gives_back_the_identical_garden(hand):
    before = hand.session.garden
    carry(hand, "lettuce", 1.8, 2.4)
    hand.view.carry_drop()
    hand.session.history.undo()
    assert hand.session.garden is before
    assert set(hand.view.plan.parts) == {"bed-1", "bed-2", "leeks", "beets"}


def test_giving_up_leaves_no_trace(hand):
    before = hand.session.garden
    parts = dict(hand.view.plan.parts)
    carry(hand, "lettuce", 1.8, 0.5)
    assert len(hand.view.plan.parts) == len(parts) + 1  # the ghost
    hand.view.carry_cancel()
    assert hand.session.garden is before
    assert hand.view.plan.parts == parts
    assert not hand.view.frame_.words.isVisible()
    carry(hand, "lettuce", 1.8, 0.5)
    hand.key(KEY.Key_Escape)
    assert hand.view.plan.parts == parts
    assert hand.session.history.count() == 0


def test_leaving_the_plan_hides_the_ghost_and_a_drop_there_does_nothing(hand):
    before = hand.session.garden
    carry(hand, "lettuce", 1.8, 0.5)
    hand.view.carry_move(hand.view.mapToGlobal(QPoint(-50, -50)))
    assert set(hand.view.plan.parts) == {"bed-1", "bed-2", "leeks", "beets"}
    hand.view.carry_drop()
    assert hand.session.garden is before


def test_neighbours_are_recoloured_while_the_crop_is_on_the_mouse(hand):
    """The verdicts shown are those of a check of the garden with the crop in it."""
    assert hand.view.plan.marks["leeks"].verdict is Verdict.CLEAR
    carry(hand, "tomato", 1.8, 0.25)
    shown = {i: mark.verdict for i, mark in hand.view.plan.marks.items()}
    fresh = check(hand.view.plan.garden, hand.session.layout_id, hand.session.catalogue)
    assert shown == {i: fit.verdict for i, fit in fresh.plantings.items()}
    assert shown["leeks"] > Verdict.CLEAR
    hand.view.carry_cancel()
    assert hand.view.plan.marks["leeks"].verdict is Verdict.CLEAR


@pytest.mark.parametrize("place", [(0.3, 0.3), (3.4, 0.3), (1.8, 2.9), (1.8, 1.1)])
def test_the_words_never_cover_where_the_plants_will_fall(hand, place):
    carry(hand, "kale", *place)
    words = hand.view.frame_.words
    assert words.isVisible()
    assert words.title
    ghost = hand.view.plan.parts[hand.view.place.ghost_id]
    full = ghost.growth.full_radius_m * 100
    for x, y in ghost.xy:
        box = hand.view.mapFromScene(QPointF(x, y).x() - full, y - full, 2 * full, 2 * full).boundingRect()
        assert not QRect(words.pos(), words.size()).intersects(box.intersected(hand.view.viewport().rect()))


def test_a_drop_on_bare_plan_is_possible_and_says_so(hand):
    carry(hand, "lettuce", 4.0, 1.6)
    assert "outside" in hand.view.frame_.words.title
    hand.view.carry_drop()
    assert added(hand).stations[:, 0].mean() == pytest.approx(4.0, abs=0.02)
    assert any("outside any bed" in sentence for sentence in hand.said)


def test_digits_change_row_block_and_single(hand):
    carry(hand, "lettuce", 1.8, 2.5)
    kinds = []
    for key in (KEY.Key_1, KEY.Key_2, KEY.Key_3):
        hand.key(key)
        planting = hand.view.plan.parts[hand.view.place.ghost_id].value
        kinds.append((planting.pattern.kind, planting.pattern.count))
    assert [kind for kind, _ in kinds] == ["rows", "block", "spots"]
    assert kinds[2][1] == 1
    hand.key(KEY.Key_2)
    hand.view.carry_drop()
    block = added(hand).pattern
    assert block.length_m == block.width_m == pytest.approx(1.2)


def test_keys_carry_and_put_down(hand):
    hand.view.carry("lettuce", None, "single")
    at = QPointF(hand.view.place.at)
    hand.key(KEY.Key_Right)
    hand.key(KEY.Key_Down, SHIFT)
    assert hand.view.place.at - at == QPointF(5.0, 50.0)
    hand.key(KEY.Key_Return)
    assert added(hand).pattern.count == 1
    assert hand.view.tool.name == "select"


def test_it_starts_when_such_a_crop_usually_does(hand):
    """The last frost of this site is 28 April: a tender crop goes out after it, a hardy one before."""
    carry(hand, "tomato", 1.8, 2.4)
    hand.view.carry_drop()
    start = added(hand).start
    assert start.kind == "raised"
    assert date(2027, 4, 28) < start.on < date(2027, 6, 15)


def test_a_crop_with_several_rows_in_the_way_still_fits_a_narrow_bed(qtbot):
    """A bed 30 cm wide holds a row of squash, though the books want metres between rows."""
    hand = Hand(qtbot, garden(row(), beds=(bed(length=3.0, width=0.3),)))
    carry(hand, "winter-squash", 1.5, 0.15)
    hand.view.carry_drop()
    (planting,) = [p for p in hand.layout.plantings if p.id != "p-1"]
    assert planting.stations[:, 1] == pytest.approx(0.15)


def test_shift_while_clicking_goes_on_placing(hand):
    hand.view.carry("lettuce", None, "single")
    hand.click((1.0, 2.4), SHIFT)
    assert hand.view.place.carrying
    hand.click((1.6, 2.4))
    assert not hand.view.place.carrying
    assert len(hand.layout.plantings) == 4
