"""The crop page: hazards first, every number with its source, the year, keys."""

import re
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from gardencanvas.app.crop_page import CropPage
from gardencanvas.app.inspector.side_view import SideView
from gardencanvas.app.month_strip import MonthStrip
from gardencanvas.app.session import Session
from gardencanvas.app.shelf import Shelf
from gardencanvas.canvas.palette import palette
from gardencanvas.crops.model import Basis, Quantity, Variety
from gardencanvas.crops.tin import SeedLot
from gardencanvas.garden.site import DayOfYear
from gardencanvas.season.crop_year import YearSpan, start_span
from gardencanvas.words.crop_facts import CAUTION
from gardencanvas.words.plain import Measure, yearly
from tests.garden.makers import garden

KEY = Qt.Key


@pytest.fixture
def page(qtbot, tmp_path):
    session = Session(garden(), library=Shelf(tmp_path))
    session.show_date(date(2027, 5, 1))
    shown = CropPage(session)
    shown.set_look(Measure(), palette(False))
    shown.held = session
    qtbot.addWidget(shown)
    return shown


def texts(page):
    return [label.text() for label in page.scroll.widget().findChildren(QLabel)]


def test_names_and_botany(page):
    page.show_crop("climbing-bean")
    assert page.windowTitle() == page.name.text() == "Climbing bean"
    assert page.botanical.text().startswith("Phaseolus vulgaris · Fabaceae")
    assert "pole bean" in page.others.text()


def test_hazards_come_first_the_high_ones_before_the_rest(page):
    page.show_crop("climbing-bean")
    words = texts(page)
    high = next(i for i, t in enumerate(words) if t.startswith("⚠ Raw or undercooked seed"))
    caution = words.index(CAUTION)
    assert words[0] == "Take care"
    assert 0 < high < caution
    assert all(i < caution for i, t in enumerate(words) if t.startswith("Canes"))
    assert caution < words.index("From the side, grown, to one scale")


def test_a_crop_without_hazards_has_no_such_heading(page):
    page.show_crop("cabbage")
    assert "Take care" not in texts(page)


def test_the_side_view_is_of_the_grown_plant(page):
    """Leek as the catalogue has it: 65 cm high, roots 50 cm deep."""
    page.show_crop("leek")
    (view,) = page.scroll.widget().findChildren(SideView)
    leek = page.held.catalogue.crop("leek")
    told = f"Leek: {Measure().small(leek.height_m.mid)} high"
    assert view.accessibleName().startswith(told)


def test_a_variety_stands_beside_its_crop(page):
    page.show_crop("cabbage", "cabbage-small-early")
    (view,) = page.scroll.widget().findChildren(SideView)
    assert "“small early”" in view.accessibleName()
    assert "the crop" in view.accessibleName()


def test_the_year_tells_its_lanes_on_hover_and_in_words(page):
    page.show_crop("tomato")
    (strip,) = page.scroll.widget().findChildren(MonthStrip)
    span = start_span(page.held.garden.site, page.held.catalogue.resolve("tomato"), "raised")
    assert f"Plant out {yearly(span.first)} – {yearly(span.last)}" in strip.accessibleDescription()
    second = strip._head() + 1.5 * strip._lane()
    assert strip.told_at(second) == f"Plant out: {yearly(span.first)} – {yearly(span.last)}"
    assert strip.told_at(0) == ""


def test_a_span_over_the_new_year_is_drawn_in_two_parts(page):
    page.show_crop("tomato")
    (strip,) = page.scroll.widget().findChildren(MonthStrip)
    winter = YearSpan(DayOfYear(month=12, day=1), 62)
    (left, right), (again_left, again_right) = strip.spans(winter)
    assert again_left < again_right < left < right
    january = (again_right - again_left) / (right - left + again_right - again_left)
    assert january == pytest.approx(31 / 62, abs=0.01)
    assert len(list(strip.spans(YearSpan(DayOfYear(month=3, day=1), 31)))) == 1


def test_every_value_has_its_source_on_hover_and_in_the_list(page):
    for crop in ("leek", "tomato", "rhubarb"):
        page.show_crop(crop)
        titles = {s.title for s in page.held.catalogue.sources.values()}
        listed = texts(page)[texts(page).index("Sources") + 1 :]
        values = [
            w for w in page.scroll.widget().findChildren(QLabel)
            if w.property("role") == "value" and re.search(r"\d", w.text())
        ]  # fmt: skip
        assert len(values) > 20
        for value in values:
            source = value.accessibleDescription()
            named = [t for t in titles if t in source]
            assert named, value.text()
            assert any(any(t in line for t in named) for line in listed), value.text()


def test_seed_lots_and_their_age(page):
    """Iowa State after Knott: parsnip seed keeps a year."""
    page.show_crop("parsnip")
    assert "In your tin" not in texts(page)
    page.held.library.put_lot(SeedLot(id="a", crop="parsnip", seeds=100, year=2022))
    assert any(t.startswith("100 seeds of 2022") for t in texts(page))
    assert any(t.startswith("This seed is 5 years old") for t in texts(page))


def test_it_follows_what_is_known(page):
    height = Quantity(low=0.3, mid=0.4, high=0.5, source="user", basis=Basis.USER)  # invented for the test
    variety = Variety(id="leek-short", crop="leek", name="<b>short</b>", height_m=height)
    page.held.library.put_variety(variety)
    page.show_crop("leek", "leek-short")
    assert page.name.text() == "Leek “<b>short</b>”"
    assert "40\u2009cm" in texts(page)
    page.held.library.remove(variety)
    assert not page.isVisible()


def test_units(page):
    page.show_crop("leek")
    page.set_look(Measure("imperial"), palette(True))
    assert any(t.endswith("\u2009in") for t in texts(page))


def test_columns_stand_beside_or_below_one_another(page):
    page.show_crop("leek")
    page.resize(900, 600)
    assert page._sides.direction() == page._sides.Direction.LeftToRight
    page.resize(400, 600)
    assert page._sides.direction() == page._sides.Direction.TopToBottom
    QApplication.processEvents()
    assert page.scroll.widget().width() <= page.scroll.viewport().width()


def test_keys(page):
    picked, vary = [], []
    page.picked_up.connect(lambda *what: picked.append(what))
    page.variety_wanted.connect(vary.append)
    page.show_crop("cabbage", "cabbage-small-early")
    assert page.focusWidget() is page.scroll
    QTest.keyClick(page, KEY.Key_Return)
    assert picked == [("cabbage", "cabbage-small-early")]
    page.vary.click()
    assert vary == ["cabbage"]
    QTest.keyClick(page, KEY.Key_Escape)
    assert not page.isVisible()
    page.show_crop("leek")
    QTest.keyClick(page, KEY.Key_F3)
    assert not page.isVisible()


def test_it_does_not_block_the_window(page):
    page.show_crop("leek")
    assert not page.isModal()
