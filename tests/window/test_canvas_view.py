"""Zoom, pan, units, names and the shown date, on a real view."""

from datetime import date
from math import cos, pi, sin
from random import Random

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from gardencanvas.garden import edits
from gardencanvas.garden.copies import add_shifted, copies_of
from gardencanvas.garden.ground import Bed
from tests.window.hand import CTRL, MIDDLE, SHIFT, Hand, two_rows

KEY = Qt.Key


@pytest.fixture
def hand(qtbot):
    return Hand(qtbot, two_rows())


@pytest.mark.parametrize("notches", [1, -1, 4])
@pytest.mark.parametrize("pixel", [(100, 90), (640, 400)])
def test_ctrl_wheel_keeps_the_point_under_the_cursor(hand, notches, pixel):
    at = QPoint(*pixel)
    before, scale = hand.view.mapToScene(at), hand.view.look.scale
    hand.wheel(at, notches, CTRL)
    after = hand.view.mapToScene(at)
    assert hand.view.look.scale == pytest.approx(scale * 1.2**notches)
    assert (after - before).manhattanLength() * hand.view.look.scale <= 2.0  # pixels: the scroll is whole


def test_zoom_stays_within_its_limits(hand):
    for _ in range(60):
        hand.view.zoom_in()
    assert hand.view.look.scale == 24.0
    for _ in range(100):
        hand.view.zoom_out()
    assert hand.view.look.scale == 0.02


def test_the_wheel_scrolls_and_with_shift_sideways(hand):
    before = hand.view.mapToScene(0, 0)
    hand.wheel(QPoint(300, 300), -1)
    down = hand.view.mapToScene(0, 0)
    assert down.y() > before.y()
    assert down.x() == before.x()
    hand.wheel(QPoint(300, 300), -1, SHIFT)
    assert hand.view.mapToScene(0, 0).x() > down.x()


@pytest.mark.parametrize("how", ["middle", "space", "tool"])
def test_the_plan_follows_a_pan(hand, how):
    at, to = QPoint(300, 300), QPoint(345, 280)
    before = hand.view.mapToScene(at)
    if how == "middle":
        hand.press(at, MIDDLE)
        hand.move(to, MIDDLE)
        hand.release(to, MIDDLE)
    else:
        if how == "tool":
            hand.view.set_tool("pan")
        else:
            QTest.keyPress(hand.view, KEY.Key_Space)
        hand.drag(at, to)
    assert hand.view.mapToScene(to) == before
    assert hand.session.selection == frozenset()
    assert hand.session.history.count() == 0


def test_fit_shows_everything_and_zoom_to_shows_one_thing(hand):
    hand.view.zoom_to({"leeks"})
    close = hand.view.look.scale
    hand.view.fit()
    assert hand.view.look.scale < close
    seen = hand.view.mapToScene(hand.view.viewport().rect()).boundingRect()
    assert all(seen.contains(part.outline.boundingRect()) for part in hand.view.plan.parts.values())


def test_only_what_differs_is_redrawn(hand):
    parts = dict(hand.view.plan.parts)
    beets = parts["beets"].value
    session = hand.session
    session.propose(edits.shift(session.garden, session.layout_id, {"leeks"}, 0.1, 0.0), "Move")
    assert hand.view.plan.parts == parts  # the items live on
    assert parts["beets"].value is beets
    assert parts["leeks"].value is session.layout.by_id["leeks"]
    session.propose(edits.remove(session.garden, session.layout_id, {"leeks"}), "Delete")
    assert "leeks" not in hand.view.plan.parts
    assert parts["leeks"].scene() is None


def test_plants_grow_with_the_date_cursor(hand):
    leeks = hand.view.plan.parts["leeks"]
    radii = []
    for on in (date(2027, 5, 25), date(2027, 7, 1), date(2027, 9, 1)):
        hand.session.show_date(on)
        radii.append(leeks.state.radius_m)
    assert 0 < radii[0] < radii[1] < radii[2] <= leeks.growth.full_radius_m
    hand.session.show_date(date(2027, 4, 1))
    assert leeks.state.stage == "coming"
    hand.session.show_date(date(2027, 12, 31))
    beets = hand.view.plan.parts["beets"]
    assert beets.state.stage == "gone"


def test_markup_in_names_is_shown_as_characters(hand):
    """What is drawn is the name itself; nothing on the plan goes through rich text."""
    name = "<b>Bed</b> &amp; <img src=x>"
    session = hand.session
    named = edits.change(session.garden, session.layout_id, "bed-1", name=name)
    session.propose(named, "Rename")
    label = hand.view.plan._labels["bed-1"]
    label.look.scale = 10.0
    label.rescale()
    assert label._layout()[0] == name


def test_a_tooltip_shows_markup_as_characters(hand):
    session = hand.session
    session.propose(edits.change(session.garden, session.layout_id, "bed-2", name="<i>x</i>"), "Rename")
    assert "&lt;i&gt;" in hand.view.tip_at(hand.pixel((1.8, 2.6)))


def test_a_very_long_name_is_elided_to_its_bed(hand):
    session = hand.session
    session.propose(edits.change(session.garden, session.layout_id, "bed-1", name="n" * 200), "Rename")
    label = hand.view.plan._labels["bed-1"]
    shown = label._layout()[0]
    assert shown.endswith("…")
    assert label.look.metrics(13, bold=True).horizontalAdvance(shown) <= label._width


def test_dark_and_light_paper(hand, qtbot):
    corner = QPoint(hand.view.viewport().width() - 30, 30)
    hand.view.set_grid(False)
    light = hand.view.viewport().grab().toImage().pixelColor(corner)
    hand.view.set_dark(True)
    dark = hand.view.viewport().grab().toImage().pixelColor(corner)
    assert light == QColor("#F6F3EA")
    assert dark.lightness() < 60


def test_the_ground_of_a_bed_is_soil_and_its_plants_are_drawn(hand):
    hand.view.set_marks(False)
    image = hand.view.viewport().grab().toImage()
    assert image.pixelColor(hand.pixel((1.8, 2.6))) == QColor("#E3D9C6")
    x, y = hand.planting("beets").stations[3]
    plant = image.pixelColor(hand.pixel((x, y)))
    assert plant.red() > plant.green() + 15  # beetroot is drawn in the wine red of its family


def test_a_right_click_selects_and_asks_for_the_menu(hand, qtbot):
    at = hand.pixel((0.175, 0.25))
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, hand.view.viewport().mapToGlobal(at))
    with qtbot.waitSignal(hand.view.context_menu) as asked:
        QApplication.sendEvent(hand.view.viewport(), event)
    assert asked.args[1] == {"leeks"}


def test_another_layout_replaces_what_is_shown(hand):
    session = hand.session
    other = edits.rebuilt(session.layout, id="l2", name="Second", plantings=())
    session.propose(edits.rebuilt(session.garden, layouts=(*session.garden.layouts, other)), "Copy layout")
    session.show_layout("l2")
    assert set(hand.view.plan.parts) == {"bed-1", "bed-2"}
    session.show_layout("l1")
    assert set(hand.view.plan.parts) == {"bed-1", "bed-2", "leeks", "beets"}


def test_many_corners_and_tiny_beds_are_drawn_without_complaint(hand):
    ring = tuple((6 + cos(2 * pi * i / 500), 1 + sin(2 * pi * i / 500)) for i in range(500))
    tiny = Bed(id="tiny", name="t", outline=((9.0, 0.0), (9.02, 0.0), (9.02, 0.02), (9.0, 0.02)))
    session = hand.session
    added = edits.add(session.garden, session.layout_id, [Bed(id="round", name="Round", outline=ring), tiny])
    session.propose(added, "Add")
    session.select({"round", "tiny"})
    hand.view.fit()
    assert not hand.view.viewport().grab().isNull()
    assert hand.view.plan.item_at(QPointF(600, 100)) == "round"
    assert QRectF(hand.view.plan.extent()).contains(QPointF(901, 1))


def test_items_follow_any_run_of_edits_undone_and_redone(hand):
    """After every step each item shows the very value of the garden, and nothing else is on the plan."""
    chance, session, view = Random(7), hand.session, hand.view
    for _ in range(60):
        garden, layout_id = session.garden, session.layout_id
        ids = [item.id for item in session.layout.items()]
        some = set(chance.sample(ids, min(len(ids), 2)))
        step = chance.randrange(6)
        if step == 0:
            session.propose(edits.shift(garden, layout_id, some, chance.uniform(-1, 1), 0.3), "Move")
        elif step == 1:
            session.propose(edits.turn(garden, layout_id, some, 15.0, (1.0, 1.0)), "Turn")
        elif step == 2 and len(ids) > 3:
            session.propose(edits.remove(garden, layout_id, some), "Delete")
        elif step == 3:
            copies = copies_of(garden, layout_id, some)
            session.propose(add_shifted(garden, layout_id, copies, 0.2, 0.2), "Copy")
        elif step == 4:
            session.history.undo()
        else:
            session.history.redo()
        session.select(some)
        values = {item.id: item for item in (*session.layout.items(), *session.garden.fixtures)}
        assert view.plan.parts.keys() == values.keys()
        assert all(part.value is values[i] for i, part in view.plan.parts.items())
        assert view.plan.marks.keys() == {p.id for p in session.layout.plantings}
        assert {i: m.verdict for i, m in view.plan.marks.items()} == {
            i: fit.verdict for i, fit in session.report.plantings.items()
        }
        in_layers = {id(part) for part in view.plan.plants._parts}
        assert in_layers == {id(mark.plants) for mark in view.plan.marks.values()}
