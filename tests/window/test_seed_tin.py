"""The seed tin with real keys and a real mouse: searching, folding, filters, marks, trying at a place."""

from datetime import date

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from gardencanvas.app.seed_tin import SeedTin
from gardencanvas.app.session import Session
from gardencanvas.app.shelf import Shelf
from gardencanvas.app.start import demo_garden
from gardencanvas.app.tin.fitting import place_of
from gardencanvas.app.tin.rows import CROP, VARIETY, hover
from gardencanvas.canvas.palette import palette
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Variety
from gardencanvas.crops.tin import SeedLot
from gardencanvas.fit import check
from gardencanvas.fit.report import Verdict
from gardencanvas.garden import edits
from gardencanvas.garden.laying import row_in
from gardencanvas.garden.planting import Planting
from gardencanvas.season.crop_year import tasks_on
from gardencanvas.season.usual_start import usual_start
from gardencanvas.words.crop_facts import CAUTION
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden, row

KEY = Qt.Key


@pytest.fixture
def library(tmp_path, qapp):
    return Shelf(tmp_path)


@pytest.fixture
def make(qtbot, library):
    """Makes a shown seed tin of a garden; held until the test ends."""
    held = []

    def made(value=None, width=232):
        session = Session(value or garden(), library=library)
        session.show_date(date(2027, 5, 1))
        tin = SeedTin(session)
        tin.set_look(Measure(), palette(False))
        held.append((session, tin))
        qtbot.addWidget(tin)
        tin.setMinimumSize(100, 100)  # else its layout tells the offscreen platform, which warns
        tin.resize(width, 640)
        tin.show()
        qtbot.waitExposed(tin)
        return tin

    yield made
    held.clear()


@pytest.fixture
def tin(make):
    return make()


def listed(tin):
    """Crop and variety of every row, headings left out."""
    indexes = [tin.model.index(i, 0) for i in range(tin.model.rowCount())]
    return [(i.data(CROP).id, i.data(VARIETY)) for i in indexes if i.data(CROP) is not None]


def crops(tin):
    return [crop for crop, variety in listed(tin) if variety is None]


def point_at(tin, crop_id, mark=None):
    """The middle of a crop's row, or of one of its marks."""
    index = tin.model.find((crop_id, None))
    tin.list.scrollTo(index)
    area = tin.list.visualRect(index)
    return area.center() if mark is None else tin.list.rows.marks(area, index, lively=True)[mark].center()


def settled(tin, qtbot):
    qtbot.waitUntil(lambda: not tin.sifting.running, timeout=30_000)
    qtbot.wait(10)


# Keys


def test_typing_in_the_list_goes_to_the_search(tin):
    tin.list.setFocus()
    QTest.keyClicks(tin.list, "le")
    assert tin.search.hasFocus()
    QTest.keyClicks(tin.search, "ek")
    assert tin.search.text() == "leek"
    assert crops(tin)[0] == "leek"
    QTest.keyClick(tin.search, KEY.Key_Down)
    QTest.keyClick(tin.list, KEY.Key_Backspace)
    assert tin.search.text() == "lee"


def test_letters_in_the_list_are_kept_from_the_windows_shortcuts(open_window, qtbot):
    main = open_window(Session(demo_garden()))
    main.view.set_tool("select")
    main.tin.list.setFocus()
    QTest.keyClick(main.tin.list, KEY.Key_B)  # draws beds where the plan has the focus
    assert main.tool_row.buttons["select"].isChecked()
    assert main.tin.search.text() == "b"


def test_enter_picks_up_from_the_search_and_from_the_list(tin):
    picked = []
    tin.picked_up.connect(lambda *what: picked.append(what))
    QTest.keyClicks(tin.search, "parsnip")
    QTest.keyClick(tin.search, KEY.Key_Return)
    QTest.keyClick(tin.list, KEY.Key_Return)
    assert picked == [("parsnip", None, "rows")] * 2


def test_right_shows_varieties_and_left_hides_them(tin):
    tin.search.setText("carrot")
    tin.list.setFocus()
    assert ("carrot", "carrot-early-round") not in listed(tin)
    QTest.keyClick(tin.list, KEY.Key_Right)
    varieties = [v.id for v in catalogue().varieties_of("carrot")]
    assert listed(tin)[: 1 + len(varieties)] == [("carrot", None), *(("carrot", v) for v in varieties)]
    QTest.keyClick(tin.list, KEY.Key_Down)
    assert tin.current == ("carrot", varieties[0])
    QTest.keyClick(tin.list, KEY.Key_Left)
    assert tin.current == ("carrot", None)
    QTest.keyClick(tin.list, KEY.Key_Left)
    assert ("carrot", varieties[0]) not in listed(tin)


def test_a_variety_is_picked_up_by_its_name(tin):
    picked = []
    tin.picked_up.connect(lambda *what: picked.append(what))
    tin.fold("carrot", True)
    tin.search.setText("carrot")
    tin.list.setFocus()
    QTest.keyClick(tin.list, KEY.Key_Down)
    QTest.keyClick(tin.list, KEY.Key_Return)
    assert picked == [("carrot", "carrot-early-round", "rows")]


def test_searching_for_a_variety_shows_it(tin):
    QTest.keyClicks(tin.search, "early round")
    assert listed(tin)[:2] == [("carrot", None), ("carrot", "carrot-early-round")]
    tin.list.setFocus()
    QTest.keyClick(tin.list, KEY.Key_Left)
    assert ("carrot", "carrot-early-round") not in listed(tin)
    tin.search.setText("carrot")
    assert ("carrot", "carrot-early-round") not in listed(tin)


def test_f3_and_space_open_the_page(tin):
    tin.search.setText("leek")
    QTest.keyClick(tin.search, KEY.Key_F3)
    assert tin.desk.page.shown == ("leek", None)
    tin.desk.page.reject()
    tin.list.setFocus()
    QTest.keyClick(tin.list, KEY.Key_Space)
    assert tin.desk.page.isVisible()


def test_escape_clears_the_search(tin):
    tin.search.setText("leek")
    tin.list.setFocus()
    QTest.keyClick(tin.list, KEY.Key_Escape)
    assert tin.search.text() == ""


# Marks


def test_a_star_makes_a_favourite_that_lasts(tin, library, tmp_path):
    tin.search.setText("leek")
    QTest.mouseClick(tin.list.viewport(), Qt.MouseButton.LeftButton, pos=point_at(tin, "leek", "star"))
    assert library.marked.favourites == ("leek",)
    assert Shelf(tmp_path).marked.favourites == ("leek",)
    tin.search.clear()
    tin.filters.switches["favourites"].click()
    assert crops(tin) == ["leek"]
    QTest.mouseClick(tin.list.viewport(), Qt.MouseButton.LeftButton, pos=point_at(tin, "leek", "star"))
    assert crops(tin) == []
    assert "No favourites yet" in tin.empty.text()


def test_the_mark_of_a_page_opens_it_and_does_not_pick_up(tin):
    picked = []
    tin.picked_up.connect(lambda *what: picked.append(what))
    at = point_at(tin, "aubergine", "page")
    QTest.mouseClick(tin.list.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert tin.desk.page.shown == ("aubergine", None)
    QApplication.sendEvent(
        tin.list.viewport(),
        QMouseEvent(
            QEvent.Type.MouseMove, QPointF(at + QPoint(60, 60)), QPointF(at), Qt.MouseButton.NoButton,
            Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier,
        ),
    )  # fmt: skip
    assert picked == []


def test_the_fold_mark_shows_varieties(tin):
    tin.search.setText("carrot")
    QTest.mouseClick(tin.list.viewport(), Qt.MouseButton.LeftButton, pos=point_at(tin, "carrot", "folded"))
    assert ("carrot", "carrot-early-round") in listed(tin)


def test_in_my_tin_and_old_seed(tin, library):
    """Iowa State after Knott: parsnip seed keeps a year."""
    library.put_lot(SeedLot(id="a", crop="parsnip", seeds=100, year=2022))
    library.put_lot(SeedLot(id="b", crop="tomato", seeds=20, year=2026))
    tin.filters.switches["in_tin"].click()
    assert sorted(crops(tin)) == ["parsnip", "tomato"]
    looks = {c: tin.model.find((c, None)).data(Qt.ItemDataRole.AccessibleTextRole) for c in crops(tin)}
    assert "old seed 2022" in looks["parsnip"]
    assert "seed 2026" in looks["tomato"]
    assert "old" not in looks["tomato"]


def test_wanted_and_own(tin, library):
    library.mark_wanted("leek", on=True)
    library.put_variety(Variety(id="carrot-mine", crop="carrot", name="mine"))
    tin.filters.boxes["mine"].setCurrentIndex(1)
    assert crops(tin) == ["leek"]
    tin.filters.boxes["mine"].setCurrentIndex(2)
    assert crops(tin) == ["carrot"]


# Filters of the catalogue


@pytest.mark.parametrize(
    ("box", "word", "passes"),
    [
        ("layer", "climbing", lambda c: c.layer == "climbing"),
        ("rooting", "shallow", lambda c: c.rooting and c.rooting.value == "shallow"),
        ("light", "partial shade", lambda c: c.light and c.light.value == "partial shade"),
        ("water", "low", lambda c: c.water and c.water.value == "low"),
        ("group", "allium", lambda c: c.group == "allium"),
        ("family", "Apiaceae", lambda c: c.family == "Apiaceae"),
    ],
)
def test_filters(tin, box, word, passes):
    field = tin.filters.boxes[box]
    field.setCurrentIndex(field.findData(word))
    assert set(crops(tin)) == {c.id for c in catalogue().crops if passes(c)}
    assert tin.summary.text()
    tin.filters.more.click()
    tin.filters.reset.click()
    assert len(crops(tin)) == len(catalogue().crops)
    assert tin.filters.chosen.plain


def test_the_bar_has_room_at_its_narrowest(make):
    tin = make(width=182)  # what the window leaves of its 190 pixels
    tin.filters.more.click()
    assert tin.minimumSizeHint().width() <= 184
    for button in tin.filters.switches.values():
        assert button.geometry().right() <= tin.filters.width()
        assert button.width() >= 24


# Filters that look at the date and the plan


def test_can_start_now_follows_the_date_cursor(tin, qtbot):
    tin.filters.switches["now"].click()
    settled(tin, qtbot)
    site, known = tin._session.garden.site, tin._session.catalogue
    for on in (date(2027, 5, 1), date(2027, 12, 20)):
        tin._session.show_date(on)
        settled(tin, qtbot)
        assert set(crops(tin)) == {c.id for c in known.crops if tasks_on(site, known.resolve(c.id), on)}


def best_in(value, crop_id):
    """The best verdict, afresh from the engine, of a row of a crop at five places across the first bed."""
    crop, before = catalogue().resolve(crop_id), check(value).plantings
    start = usual_start(value.site, crop, 2027)
    found = []
    for y in (0.6, 0.3, 0.9, 0.12, 1.08):
        pattern = row_in(value.layouts[0].beds[0], (1.8, y), crop.in_row_m.mid, crop.between_rows_m.mid)
        if pattern is None:
            continue
        tried = Planting(id="tried", crop=crop_id, pattern=pattern, start=start)
        after = dict(check(edits.add(value, "l1", [tried])).plantings)
        mine = after.pop("tried").verdict
        found.append(max([mine, *(f.verdict for i, f in after.items() if f.verdict > before[i].verdict)]))
    return min(found)


def test_what_is_listed_fits_in_the_bed_and_what_is_not_does_not(make, qtbot):
    value = garden(row("leeks", "leek", 0.1, 0.4, kind="raised", on=date(2027, 5, 20)))
    tin = make(value)
    tin._session.select(["bed-1"])
    tin.filters.boxes["group"].setCurrentIndex(tin.filters.boxes["group"].findData("perennial vegetable"))
    tin.filters.switches["fits"].click()
    settled(tin, qtbot)
    judged = {c.id for c in catalogue().crops if c.group == "perennial vegetable"}
    assert {c for c in judged if best_in(value, c) <= Verdict.SHARES} == set(crops(tin))
    assert 0 < len(crops(tin)) < len(judged)
    assert "fit in bed-1" in tin.progress_words.text()
    assert not tin.stop.isVisible()


def test_beside_a_planting(make, qtbot):
    value = garden(row("cabbages", "cabbage", 0.1, 0.4, kind="raised", on=date(2027, 4, 20)))
    before = check(value).plantings["cabbages"].verdict
    tin = make(value)
    tin._session.select(["cabbages"])
    tin.filters.boxes["group"].setCurrentIndex(tin.filters.boxes["group"].findData("brassica"))
    tin.filters.switches["fits"].click()
    settled(tin, qtbot)
    assert "cabbage" not in crops(tin)  # a second row of the same between the first
    assert check(tin._session.garden).plantings["cabbages"].verdict is before


def test_fits_asks_for_a_place(tin, qtbot):
    tin.filters.switches["fits"].click()
    settled(tin, qtbot)
    assert "Select one bed or one planting" in tin.empty.text()
    assert place_of(tin._session.garden, "l1", frozenset()) is None
    assert place_of(tin._session.garden, "l1", frozenset({"bed-1"})).name == "bed-1"


def test_stop_ends_the_trying_and_shows_all_again(make, qtbot):
    tin = make(demo_garden())
    tin._session.select(["bed-2"])
    tin.filters.switches["fits"].click()
    qtbot.wait(30)
    assert tin.sifting.running
    tin.stop.click()
    assert not tin.sifting.running
    assert not tin.filters.switches["fits"].isChecked()
    assert len(crops(tin)) == len(catalogue().crops)


def test_trying_waits_while_something_is_dragged_and_begins_anew_after_an_edit(make, qtbot):
    tin = make()
    session = tin._session
    session.select(["bed-1"])
    tin.filters.boxes["group"].setCurrentIndex(tin.filters.boxes["group"].findData("allium"))
    tin.filters.switches["fits"].click()
    session.preview(edits.add(session.garden, "l1", [row()]))
    done = len(tin.sifting.said)
    qtbot.wait(80)
    assert len(tin.sifting.said) == done
    session.preview(None)
    settled(tin, qtbot)
    first = set(crops(tin))
    assert first
    session.propose(edits.add(session.garden, "l1", [bed("bed-2", 0, 3)]), "Draw bed")
    settled(tin, qtbot)
    assert set(crops(tin)) == first


# What rows tell


def test_high_hazards_are_told_with_their_caution():
    told = hover(catalogue().crop("climbing-bean"))
    assert "Phaseolus vulgaris" in told
    assert "⚠ Raw or undercooked seed" in told
    assert told.endswith(CAUTION)
    for crop in catalogue().crops:
        assert all(h.caution in hover(crop) for h in crop.hazards if h.severity == "high")


def test_a_row_tells_in_words_what_it_shows(tin):
    text = tin.model.find(("leek", None)).data(Qt.ItemDataRole.AccessibleTextRole)
    assert text == "Leek, middle, shallow roots"


def test_markup_in_a_name_is_shown_as_it_is(tin, library):
    library.put_variety(Variety(id="bad", crop="leek", name='<img src="x">'))
    tin.fold("leek", True)
    index = tin.model.find(("leek", "bad"))
    assert index.data() == '<img src="x">'
    tip = index.data(Qt.ItemDataRole.ToolTipRole)
    assert "&lt;img" in tip
    assert "<img" not in tip


def test_a_library_that_cannot_be_read_is_said(make, library, tmp_path):
    (tmp_path / "own.toml").write_bytes(b"[[crop")
    broken = Shelf(tmp_path)
    session = Session(garden(), library=broken)
    tin = SeedTin(session)
    assert "own.toml" in tin.empty.text()
    assert not tin.empty.isHidden()
    assert len(crops(tin)) == len(catalogue().crops)
