"""Hiding and locking: what is hidden is neither drawn nor hit, what is locked is not picked by the mouse."""

import pytest
from PySide6.QtCore import QPoint, QRectF, Qt
from PySide6.QtTest import QTest

from gardencanvas.app.session import Session
from gardencanvas.canvas.hidden import Hidden
from gardencanvas.files import garden_to_bytes
from gardencanvas.garden import edits, sorts
from gardencanvas.garden.edits import change
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Cover, Fixture, Path, RingSupport
from gardencanvas.garden.sorts import Sort
from tests.garden.makers import bed, garden, row
from tests.garden.pictures import backdrop
from tests.window.hand import Hand, two_rows

KEY = Qt.Key
LEEK = (0.175, 0.25)
BARE = (3.2, 1.05)  # ground of the first bed with no plant on it
CHECKED, PARTLY, OFF = Qt.CheckState.Checked, Qt.CheckState.PartiallyChecked, Qt.CheckState.Unchecked


def one_of_each():
    """A bed with a planting, a cover, a support, a path and a wall."""
    value = garden(row("leeks"), beds=(bed("bed-1"),))
    square = ((0.0, 2.0), (1.0, 2.0), (1.0, 3.0), (0.0, 3.0))
    wall = tuple((x + 6.0, y) for x, y in square)
    return edits.add(
        value,
        "l1",
        [
            Cover(id="fleece", kind="fleece", name="fleece", outline=square, height_m=0.5),
            RingSupport(
                id="stake", kind="stake", name="stake", centre=(3.0, 2.5), radius_m=0.0, height_m=2.0
            ),
            Path(id="path", line=((4.5, 0.0), (4.5, 3.0))),
            Fixture(id="wall", kind="wall", name="wall", outline=wall, height_m=2.0),
        ],
    )


@pytest.fixture
def hand(qtbot):
    return Hand(qtbot, two_rows())


@pytest.fixture
def all_sorts(qtbot):
    return Hand(qtbot, one_of_each())


PLACES = {
    Sort.PLANTINGS: ("leeks", (0.08, 0.15)),
    Sort.COVERS: ("fleece", (0.5, 2.5)),
    Sort.SUPPORTS: ("stake", (3.0, 2.5)),
    Sort.PATHS: ("path", (4.5, 1.5)),
    Sort.FIXTURES: ("wall", (6.5, 2.5)),
    Sort.BEDS: ("bed-1", BARE),
}


def _shot(hand):
    hand.view.set_grid(False)
    return hand.view.viewport().grab().toImage()


@pytest.mark.parametrize("sort", Sort)
def test_a_hidden_sort_is_neither_drawn_nor_hit_and_comes_back(all_sorts, sort):
    hand = all_sorts
    hand.view.show_box(QRectF(-50, -50, 850, 450))
    item_id, place = PLACES[sort]
    before = _shot(hand)
    hand.click(place)
    assert hand.session.selection == {item_id}
    value = hand.session.garden
    hand.session.hide(Hidden(sorts=frozenset({sort})))
    assert hand.session.selection == frozenset()
    hand.click(place)
    assert item_id not in hand.session.selection
    hand.session.select(())
    assert _shot(hand).pixelColor(hand.pixel(place)) != before.pixelColor(hand.pixel(place))
    assert hand.session.garden is value  # it belongs to the window, not to the garden
    hand.session.hide(Hidden())
    assert _shot(hand) == before


def test_hidden_plants_leave_bare_soil(hand):
    """The colour where a leek stood is that of the bed beside it."""
    hand.view.zoom_to(["bed-1"])
    hand.session.hide(Hidden(ids=frozenset({"leeks"})))
    shot = _shot(hand)
    assert shot.pixelColor(hand.pixel(LEEK)) == shot.pixelColor(hand.pixel((1.9, 0.55)))
    assert hand.view.tip_at(hand.pixel(LEEK)).startswith("<qt>bed-1")


def test_neither_the_band_nor_tab_nor_select_all_reach_what_is_hidden(hand):
    hand.session.hide(Hidden(ids=frozenset({"leeks"})))
    hand.drag((-0.3, -0.2), (3.8, 1.4))
    assert hand.session.selection == {"beets"}
    hand.session.select(())
    seen = set()
    for _ in range(8):
        hand.key(KEY.Key_Tab)
        seen |= hand.session.selection
    assert seen == {"bed-1", "bed-2", "beets"}


def test_what_is_selected_in_the_outline_though_hidden_shows_no_outline_and_no_handles(hand):
    hand.session.hide(Hidden(ids=frozenset({"leeks"})))
    hand.session.select({"leeks"})
    assert hand.view.plan.selected.outline.isEmpty()
    assert not hand.view._handles


def test_what_is_planted_now_is_seen_though_its_sort_was_hidden(hand):
    session = hand.session
    session.hide(Hidden(sorts=frozenset({Sort.PLANTINGS})))
    session.propose(edits.add(session.garden, "l1", [row("new", x=0.0, y=2.2)]), "Plant")
    assert Sort.PLANTINGS not in session.hidden.sorts
    session.hide(Hidden(ids=frozenset({"leeks"})))
    session.propose(edits.shift(session.garden, "l1", ["beets"], 0.1, 0.0), "Move")
    assert session.hidden.ids == {"leeks"}


# locking


def test_what_is_locked_is_not_picked_by_the_mouse_and_says_so(hand):
    session = hand.session
    session.propose(sorts.locked(session.garden, "l1", ["leeks"], on=True), "Lock")
    hand.click(LEEK)
    assert session.selection == frozenset()
    assert "locked" in hand.said[-1]
    hand.drag((-0.3, -0.2), (3.8, 1.4))
    assert session.selection == {"beets"}
    hand.double_click(LEEK)
    assert hand.view.tool is hand.view.tools["select"]


def test_from_the_outline_it_can_be_selected_but_not_moved(hand):
    session = hand.session
    session.propose(sorts.locked(session.garden, "l1", ["leeks"], on=True), "Lock")
    before = session.garden
    session.select({"leeks"})
    hand.drag(LEEK, (1.0, 0.9))
    session.select({"leeks"})
    hand.key(KEY.Key_Right)
    assert "locked" in hand.said[-1]
    assert session.garden is before
    with pytest.raises(Refusal, match="locked"):
        change(before, "l1", "leeks", pattern=before.layouts[0].by_id["beets"].pattern)
    assert change(before, "l1", "leeks", per_station=3).layouts[0].by_id["leeks"].per_station == 3


def test_through_a_locked_bed_its_plantings_are_picked_and_a_locked_tree_is_no_obstacle(qtbot):
    value = two_rows()
    ring = ((-1.0, -1.0), (5.0, -1.0), (5.0, 5.0), (-1.0, 5.0))
    tree = Fixture(id="tree", kind="tree", name="tree", outline=ring, height_m=5.0, base_m=2.0, locked=True)
    value = edits.add(sorts.locked(value, "l1", ["bed-1"], on=True), "l1", [tree])
    hand = Hand(qtbot, value)
    hand.click(LEEK)
    assert hand.session.selection == {"leeks"}
    hand.click((1.8, 2.6))
    assert hand.session.selection == {"bed-2"}
    hand.click(BARE)
    assert hand.session.selection == frozenset()
    assert "locked" in hand.said[-1]


@pytest.mark.parametrize("sort", Sort)
def test_every_sort_can_be_locked_and_unlocked(sort):
    value = one_of_each()
    item_id, _ = PLACES[sort]
    locked = sorts.locked(value, "l1", [item_id], on=True)
    assert locked.find("l1", item_id).locked
    assert edits.shift(locked, "l1", [item_id], 1.0, 0.0).find("l1", item_id) == locked.find("l1", item_id)
    assert edits.remove(locked, "l1", [item_id]).find("l1", item_id) is not None
    assert sorts.locked(locked, "l1", [item_id], on=True) is locked
    assert sorts.locked(locked, "l1", [item_id], on=False) == value


# the boxes under the outline


@pytest.fixture
def main(open_window, qtbot):
    window = open_window(Session(edits.rebuilt(one_of_each(), backdrop=backdrop(40, 30))))
    window.left.setCurrentWidget(window.outline)
    return window


def _box(main, sort, column):
    main.outline.parts.refresh()
    return main.outline.parts.table.item(list(Sort).index(sort) if sort else len(Sort), column)


def _click(main, sort, column):
    """Click the box in a cell, where it is drawn."""
    table = main.outline.parts.table
    cell = table.visualItemRect(_box(main, sort, column))
    at = QPoint(cell.left() + 10, cell.center().y())
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=at)


def test_boxes_hide_and_lock_a_sort_with_the_mouse(main):
    session = main.session
    _click(main, Sort.BEDS, 1)
    assert session.hidden.sorts == {Sort.BEDS}
    assert _box(main, Sort.BEDS, 1).checkState() is OFF
    assert main.hidden.isVisible()
    main.hidden.click()
    assert not session.hidden
    assert not main.hidden.isVisible()
    _click(main, Sort.PLANTINGS, 2)
    assert session.layout.by_id["leeks"].locked
    assert session.history.undo_text == "Lock all: Plantings"
    session.history.undo()
    assert _box(main, Sort.PLANTINGS, 2).checkState() is OFF


def test_boxes_by_keyboard(main, qtbot):
    main.activateWindow()
    main.actions_.all["shown and locked"].trigger()
    table = main.outline.parts.table
    qtbot.waitUntil(table.hasFocus)
    QTest.keyClick(table, KEY.Key_Space)
    assert main.session.hidden.sorts == {Sort.PLANTINGS}
    QTest.keyClick(table, KEY.Key_Down)
    QTest.keyClick(table, KEY.Key_Right)
    QTest.keyClick(table, KEY.Key_Space)
    assert main.session.layout.by_id["fleece"].locked


def test_single_things_make_a_box_half_full_and_a_click_shows_all(main):
    session = main.session
    session.propose(edits.add(session.garden, "l1", [bed("bed-2", y=5.0)]), "Draw")
    session.select({"bed-2"})
    main.actions_.all["lock"].trigger()
    main.actions_.all["hide"].trigger()
    assert session.hidden.ids == {"bed-2"}
    assert _box(main, Sort.BEDS, 1).checkState() is PARTLY
    assert _box(main, Sort.BEDS, 2).checkState() is PARTLY
    _click(main, Sort.BEDS, 1)
    assert not session.hidden
    assert main.actions_.why_not("show all") == "Nothing is hidden."


def test_the_background_has_its_boxes_and_they_are_undone(main):
    session = main.session
    _click(main, None, 1)
    assert not session.garden.backdrop.shown
    _click(main, None, 2)
    assert session.garden.backdrop.locked
    session.history.undo()
    session.history.undo()
    assert session.garden.backdrop.shown
    assert not session.garden.backdrop.locked


def test_the_outline_tells_what_is_hidden_or_locked_in_words(main):
    session = main.session
    session.propose(sorts.locked(session.garden, "l1", ["wall"], on=True), "Lock")
    session.hide(Hidden(ids=frozenset({"bed-1"})))
    main.outline.rebuild()
    told = {i: main.outline._items[i].data(Qt.ItemDataRole.AccessibleTextRole) for i in ("wall", "bed-1")}
    assert told == {"wall": "wall, locked", "bed-1": "bed-1, hidden"}
    assert not main.outline._items["wall"].icon().isNull()


def test_what_is_hidden_is_not_written_to_the_file(main):
    session = main.session
    before = garden_to_bytes(session.garden)
    session.hide(Hidden(sorts=frozenset(Sort)))
    assert garden_to_bytes(session.garden) == before


def test_every_box_has_a_name_for_screen_readers(main):
    table = main.outline.parts.table
    told = [
        table.item(r, c).data(Qt.ItemDataRole.AccessibleTextRole)
        for r in range(table.rowCount())
        for c in (1, 2)
    ]
    assert len(set(told)) == len(told) == 14
    assert all(told)
