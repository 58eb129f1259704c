"""Forms for own varieties, crops and lots: typed with real keys, checked while typing, kept where asked."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from gardencanvas.app import crop_desk
from gardencanvas.app.keeping import GARDEN, LIBRARY
from gardencanvas.app.own_form.reading_numbers import typed, written
from gardencanvas.app.session import Session
from gardencanvas.app.shelf import Shelf
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Basis, Quantity, Variety
from gardencanvas.crops.own import own_from_bytes
from gardencanvas.crops.tin import SeedLot
from gardencanvas.files import open_garden, save_garden
from gardencanvas.garden import edits
from gardencanvas.garden.own import put_variety
from gardencanvas.words.plain import Measure
from tests.garden.makers import garden, row

KEY = Qt.Key
METRIC, IMPERIAL = Measure(), Measure("imperial")


@pytest.fixture
def library(tmp_path, qapp):
    return Shelf(tmp_path)


@pytest.fixture
def main(open_window, library):
    return open_window(Session(garden(), library=library))


def write(box, text):
    box.setFocus()
    box.selectAll()
    if text:
        QTest.keyClicks(box, text)
    else:
        QTest.keyClick(box, KEY.Key_Delete)


def fill(form, field, *texts):
    for grid in form.grids:
        if field in grid.ranges:
            for box, text in zip(grid.ranges[field].boxes, texts, strict=True):
                write(box, text)


# Numbers


@pytest.mark.parametrize(
    ("field", "texts", "measure", "wanted"),
    [
        ("height_m", ("20", "30", "45"), METRIC, (0.2, 0.3, 0.45)),
        ("height_m", ("", "30", ""), METRIC, (0.3, 0.3, 0.3)),
        ("in_row_m", ("", " 2,5 ", ""), METRIC, (0.025, 0.025, 0.025)),
        ("spread_m", ("", "10", "12"), IMPERIAL, (0.254, 0.254, 0.3048)),  # an inch is 25.4 mm
        ("nursery_d", ("", "28", ""), METRIC, (28, 28, 28)),
        ("germination_share", ("60", "75", "90"), METRIC, (0.6, 0.75, 0.9)),
        ("frost_kill_c", ("−12", "-8", "0"), METRIC, (-12, -8, 0)),
    ],
)
def test_typed_ranges(field, texts, measure, wanted):
    value, fault = typed(field, texts, measure)
    assert fault == ""
    assert (value.low, value.mid, value.high) == pytest.approx(wanted)
    assert (value.source, value.basis) == ("user", Basis.USER)


@pytest.mark.parametrize(
    ("field", "texts", "why"),
    [
        ("height_m", ("50", "40", ""), "must rise"),
        ("height_m", ("", "tall", ""), "“tall” is no number"),
        ("height_m", ("20", "", "40"), "usual figure is missing"),
        ("height_m", ("", "-5", ""), "between"),
        ("height_m", ("", "90000", ""), "between"),
        ("harvest_from_sowing_d", ("", "0", ""), "between 1"),
        ("germination_share", ("", "130", ""), "between"),
        ("height_m", ("", "1e5", ""), "no number"),
        ("height_m", ("", "nan", ""), "no number"),
        ("height_m", ("", "1.2.3", ""), "no number"),
        ("height_m", ("", "<b>3</b>", ""), "no number"),
    ],
)
def test_what_is_no_range_is_said(field, texts, why):
    value, fault = typed(field, texts, METRIC)
    assert value is None
    assert why in fault


def test_nothing_typed_is_nothing_wrong():
    assert typed("height_m", ("", " ", ""), METRIC) == (None, "")


@given(st.text(max_size=12), st.text(max_size=12), st.text(max_size=12))
def test_any_text_is_a_sound_range_or_a_fault(low, mid, high):
    value, fault = typed("height_m", (low, mid, high), METRIC)
    blank = not (low.strip() or mid.strip() or high.strip())
    assert (value is not None) + bool(fault) == (0 if blank else 1)


@given(
    st.lists(st.floats(0.02, 5.0), min_size=3, max_size=3).map(sorted), st.sampled_from([METRIC, IMPERIAL])
)
def test_what_is_written_is_read_again(numbers, measure):
    low, mid, high = numbers
    value = Quantity(low=low, mid=mid, high=high, source="user")
    again, fault = typed("height_m", written("height_m", value, measure), measure)
    assert fault == ""
    assert again.mid == pytest.approx(value.mid, rel=1e-3)  # four digits are shown


# A variety


def test_a_variety_typed_into_the_library(main, library, qtbot):
    main.tin.search.setText("leek")
    main.tin.desk.new_variety("leek")
    form = main.tin.desk.form
    assert form.focusWidget() is form.name
    assert not form.save.isEnabled()
    assert form.fault_line.text() == "Give it a name."
    write(form.name, "Short and stout")
    fill(form, "height_m", "30", "40", "50")
    assert form.save.isEnabled()
    QTest.keyClick(form, KEY.Key_Return)
    (kept,) = library.own.varieties
    assert (kept.crop, kept.name, kept.id) == ("leek", "Short and stout", "leek-short-and-stout")
    assert (kept.height_m.low, kept.height_m.mid, kept.height_m.high) == (0.3, 0.4, 0.5)
    assert (kept.height_m.source, kept.height_m.basis) == ("user", Basis.USER)
    assert kept.spread_m is None
    assert main.tin.current == ("leek", kept.id)  # shown in the tin, unfolded
    assert main.session.history.count() == 0
    assert main.tin.desk.form is None


def test_a_variety_kept_in_the_garden_is_one_undo_step(main, library, tmp_path):
    main.tin.desk.new_variety("leek")
    form = main.tin.desk.form
    write(form.name, "Ours")
    fill(form, "harvest_from_planting_d", "", "90", "")
    form.where.setCurrentIndex(form.where.findData(GARDEN))
    form.save.click()
    assert library.own.varieties == ()
    (kept,) = main.session.garden.varieties
    assert main.session.history.count() == 1
    assert main.session.history.undo_text == "Keep variety Ours"
    assert main.session.catalogue.resolve("leek", kept.id).harvest_from_planting_d.mid == 90
    save_garden(main.session.garden, tmp_path / "it.gardencanvas")
    assert open_garden(tmp_path / "it.gardencanvas").varieties == (kept,)
    main.session.history.undo()
    assert main.session.garden.varieties == ()


def test_faults_show_while_typing_and_go_again(main):
    main.tin.desk.new_variety("leek")
    form = main.tin.desk.form
    write(form.name, "x")
    fill(form, "height_m", "50", "40", "")
    assert form.fault_line.text() == "Height: least, usual and most must rise in that order."
    assert not form.save.isEnabled()
    boxes = form.grids[0].ranges["height_m"].boxes
    assert all(box.property("fault") for box in boxes)
    assert "must rise" in boxes[0].accessibleDescription()
    write(boxes[1], "60")
    assert form.save.isEnabled()
    assert form.fault_line.text() == ""
    assert not boxes[0].property("fault")


def test_the_crops_figures_stand_in_grey_and_follow_the_crop(main):
    main.tin.desk.new_variety("leek")
    form = main.tin.desk.form
    usual = form.grids[0].ranges["height_m"].usual
    assert usual.placeholderText() == "65"
    form.crop.setCurrentIndex(form.crop.findData("garlic"))
    assert usual.placeholderText() == f"{100 * catalogue().crop('garlic').height_m.mid:g}"
    form.crop.setEditText("Nothing of the kind")
    assert "there is no crop" in form.fault_line.text().lower()


def test_a_name_that_is_taken_is_refused(main):
    main.tin.desk.new_variety("carrot")
    write(main.tin.desk.form.name, "early round")
    assert main.tin.desk.form.fault_line.text() == "Carrot has a variety of that name."


def test_escape_keeps_nothing(main, library):
    main.tin.desk.new_variety("leek")
    write(main.tin.desk.form.name, "x")
    QTest.keyClick(main.tin.desk.form, KEY.Key_Escape)
    assert library.own.varieties == ()
    assert main.tin.desk.form is None


def test_a_library_that_cannot_be_written_is_said_in_the_form(main, tmp_path):
    (tmp_path / "own.toml").write_bytes(b"[[crop")
    main.tin.desk.new_variety("leek")
    form = main.tin.desk.form
    write(form.name, "x")
    form.save.click()
    assert "Mend or move that file first" in form.fault_line.text()
    assert form.isVisible()


def test_changing_a_variety_keeps_its_place_and_what_was_left_alone(main, library):
    height = Quantity(low=0.333, mid=0.4444, high=0.55555, source="common-practice", basis=Basis.PRACTICE)
    library.put_variety(Variety(id="leek-mine", crop="leek", name="mine", height_m=height))
    main.tin.desk.change(("leek", "leek-mine"))
    form = main.tin.desk.form
    assert form.where.currentData() == LIBRARY
    write(form.name, "Ours")
    form.save.click()
    (kept,) = library.own.varieties
    assert (kept.id, kept.name) == ("leek-mine", "Ours")
    assert kept.height_m == height  # not rounded by being shown


def test_markup_in_a_name_stays_plain(main, library):
    main.tin.desk.new_variety("leek")
    write(main.tin.desk.form.name, "<b>&x</b>")
    main.tin.desk.form.save.click()
    assert library.own.varieties[0].name == "<b>&x</b>"
    assert main.tin.list.currentIndex().data() == "<b>&x</b>"


# A crop


def test_a_crop_from_nothing(main, library):
    main.tin.desk.new_crop(None)
    form = main.tin.desk.form
    write(form.name, "Yard leek")
    assert "botanical name" in form.fault_line.text()
    write(form.botanical, "Allium ampeloprasum")
    assert form.family.currentText() == "Amaryllidaceae"  # follows the genus
    fill(form, "height_m", "40", "60", "80")
    form.save.click()
    (kept,) = library.own.crops
    assert (kept.id, kept.family, kept.height_m.mid) == ("yard-leek", "Amaryllidaceae", 0.6)
    assert kept.root_depth_m is None
    grown = main.session.catalogue.resolve("yard-leek")
    assert grown.root_depth_m.basis is Basis.FALLBACK
    assert main.tin.current == ("yard-leek", None)


def test_a_crop_like_another_keeps_sources_and_hazards(main, library):
    """Raw beans are poisonous whatever they are called: FDA Bad Bug Book."""
    main.tin.desk.new_crop("climbing-bean")
    form = main.tin.desk.form
    assert "undercooked" in form.hazards.text()
    write(form.name, "Fence bean")
    fill(form, "height_m", "", "150", "")
    form.save.click()
    (kept,) = library.own.crops
    bean = catalogue().crop("climbing-bean")
    assert kept.height_m.source == "user"
    assert kept.root_depth_m == bean.root_depth_m
    assert any(h.severity == "high" for h in kept.hazards)


def test_a_wrong_family_is_said(main):
    main.tin.desk.new_crop(None)
    form = main.tin.desk.form
    write(form.name, "Odd")
    write(form.botanical, "Daucus carota")
    form.family.setEditText("Rosaceae")
    assert "Apiaceae" in form.fault_line.text()
    assert not form.save.isEnabled()


def test_what_is_planted_is_not_taken_out_and_what_is_not_is(main, library, monkeypatch):
    monkeypatch.setattr(crop_desk, "ask_remove", lambda *_: True)
    session, told = main.session, []
    session.refused.connect(told.append)
    variety = Variety(id="leek-mine", crop="leek", name="mine")
    library.put_variety(variety)
    session.propose(put_variety(session.garden, variety), "Keep")
    session.propose(edits.add(session.garden, "l1", [row(varieties=("leek-mine",))]), "Add row")
    main.tin.desk.remove(("leek", "leek-mine"))
    assert library.own.varieties == ()
    assert "1 planting grows it" in told[0]
    assert session.garden.varieties == (variety,)
    session.history.undo()
    main.tin.desk.remove(("leek", "leek-mine"))
    assert session.garden.varieties == ()
    assert not main.tin.desk.is_own(("leek", "leek-mine"))


# A seed lot


def test_a_lot_with_a_test(main, library):
    main.tin.desk.add_lot(("parsnip", None))
    form = main.tin.desk.form
    assert form.fault_line.text() == "Give an amount."
    write(form.amount, "3")
    form.unit.setCurrentIndex(form.unit.findData("grams"))
    write(form.year, str(main.session.on.year - 4))
    assert form.warning.text().startswith("This seed is 4 years old")
    assert "seeds" in form.count.text()
    assert "Source" in form.count.toolTip()
    write(form.sprouted, "9")
    assert "more seeds sprouted" in form.fault_line.text().lower()
    write(form.laid, "10")
    assert form.warning.isHidden()  # its own test speaks instead of its age
    form.save.click()
    (lot,) = library.own.lots
    assert (lot.crop, lot.grams, lot.tested) == ("parsnip", 3.0, 0.9)
    assert lot.tested_on == main.session.on


def test_changing_a_lot(main, library):
    library.put_lot(SeedLot(id="a", crop="leek", seeds=100, year=2025, note="from a friend"))
    main.tin.desk.change_lot(library.own.lots[0])
    form = main.tin.desk.form
    write(form.amount, "80")
    form.save.click()
    assert library.own.lots == (SeedLot(id="a", crop="leek", seeds=80, year=2025, note="from a friend"),)


# Files


def test_export_and_import_by_the_menu(main, library, tmp_path, monkeypatch):
    library.put_variety(Variety(id="leek-mine", crop="leek", name="mine"))
    out = tmp_path / "out" / "mine.toml"
    monkeypatch.setattr(crop_desk, "ask_export", lambda *_: out)
    monkeypatch.setattr(crop_desk, "ask_import", lambda *_: out)
    main.actions_.all["export crops"].trigger()
    assert own_from_bytes(out.read_bytes(), "mine.toml").varieties == library.own.varieties
    library.remove(library.own.varieties[0])
    main.actions_.all["import crops"].trigger()
    assert [v.id for v in library.own.varieties] == ["leek-mine"]
    assert "1 varieties" in main.statusBar().currentMessage()


def test_a_bad_import_is_told_and_changes_nothing(main, library, tmp_path, monkeypatch):
    told = []
    monkeypatch.setattr("gardencanvas.app.filing.tell", lambda _w, _t, sentence: told.append(sentence))
    (tmp_path / "bad.toml").write_text("[[variety]]\nid='a'\ncrop='a'\nname='a'")
    monkeypatch.setattr(crop_desk, "ask_import", lambda *_: tmp_path / "bad.toml")
    main.actions_.all["import crops"].trigger()
    assert len(told) == 1
    assert "variety of itself" in told[0]
    assert library.own.varieties == ()


def test_f3_shows_the_selected_plantings_crop(main):
    session = main.session
    session.propose(edits.add(session.garden, "l1", [row("p", "leek")]), "Add row")
    session.select(["p"])
    main.view.setFocus()
    main.actions_.all["crop page"].trigger()
    assert main.tin.desk.page.shown == ("leek", None)
    main.tin.desk.page.reject()
    main.tin.search.setText("garlic")
    main.tin.list.setFocus()
    main.actions_.all["crop page"].trigger()
    assert main.tin.desk.page.shown == ("garlic", None)
