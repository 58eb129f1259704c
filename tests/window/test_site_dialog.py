"""The site dialog: typing, choosing a place, refusing nonsense, cancelling, one undo step."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QDialogButtonBox

from gardencanvas.app.session import Session
from gardencanvas.app.site import dialog as module
from gardencanvas.app.site.dialog import SiteDialog, edit_site
from gardencanvas.app.start import new_garden
from gardencanvas.garden.site import DayOfYear
from tests.garden.makers import site


@pytest.fixture
def dialog(qtbot):
    shown = SiteDialog(site(elevation_m=12.0))
    qtbot.addWidget(shown)
    shown.show()
    return shown


def _type(field, text):
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, text)


def _ok(dialog):
    return dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)


def test_untouched_it_gives_back_the_same_site(dialog):
    assert dialog.site == site(elevation_m=12.0)
    assert _ok(dialog).isEnabled()


@pytest.mark.parametrize(
    ("typed", "value"), [("51,5 N", 51.5), ("33°52' S", -33.8667), ("-12", -12.0), ("70", 70.0)]
)
def test_latitudes_are_read_as_people_write_them(dialog, typed, value):
    _type(dialog.latitude, typed)
    assert dialog.site.latitude_deg == pytest.approx(value, abs=1e-3)


@pytest.mark.parametrize("typed", ["91", "north", "", "51 E", "<b>5</b>"])
def test_a_wrong_latitude_is_refused_in_words(dialog, typed):
    dialog.latitude.setText(typed)
    assert dialog.site is None
    assert not _ok(dialog).isEnabled()
    assert "latitude" in dialog.caution.text()


def test_a_place_from_the_list_fills_in_what_is_known_of_it(dialog):
    QTest.keyClicks(dialog.search.field, "Sao Paulo")
    QTest.keyClick(dialog.search.field, Qt.Key.Key_Return)
    chosen = dialog.site
    assert chosen.place == "São Paulo"
    assert chosen.latitude_deg == pytest.approx(-23.55, abs=0.1)  # from any atlas
    assert chosen.longitude_deg == pytest.approx(-46.63, abs=0.1)
    assert chosen.climate.rain_mm is not None
    assert max(chosen.climate.mean_c[:3]) > max(chosen.climate.mean_c[5:8])  # warmest in southern summer
    assert chosen.frost.basis in {"estimated", "none"}


def test_frost_dates_that_are_known_are_typed(dialog):
    dialog.frost.basis.setCurrentIndex(dialog.frost.basis.findData("known"))
    _type(dialog.frost.last, "12 May")
    _type(dialog.frost.first, "3.10.")
    assert dialog.site.frost.last == DayOfYear(month=5, day=12)
    assert dialog.site.frost.first == DayOfYear(month=10, day=3)
    _type(dialog.frost.last, "5/6")
    assert dialog.site is None
    assert "month as a word" in dialog.caution.text()


def test_few_past_years_are_told_as_few(dialog):
    part = dialog.frost
    part.basis.setCurrentIndex(part.basis.findData("past years"))
    part.basis.activated.emit(part.basis.currentIndex())
    part.lasts.setPlainText("2 May\n6 May\n10 May")
    part.firsts.setPlainText("10 Oct\n14 Oct\n18 Oct")
    assert dialog.site.frost.last == DayOfYear(month=5, day=6)  # the mean of the three
    assert dialog.site.frost.first == DayOfYear(month=10, day=14)
    assert "too few years" in part.words.text()


def test_where_frost_never_comes(dialog):
    part = dialog.frost
    part.basis.setCurrentIndex(part.basis.findData("none"))
    part.basis.activated.emit(part.basis.currentIndex())
    assert dialog.site.frost.last is None
    assert dialog.site.frost.basis == "none"


def test_a_month_that_is_no_number_is_named(dialog):
    dialog.months.item(2, 0).setText("warm")
    assert dialog.site is None
    assert "March" in dialog.caution.text()
    dialog.months.item(2, 0).setText("6,3")
    assert dialog.site is not None
    dialog.months.item(0, 2).setText("4")
    assert "February" in dialog.caution.text()  # the maxima were begun and must be whole


def test_a_mean_above_the_maximum_is_refused(dialog):
    for month in range(12):
        dialog.months.item(month, 2).setText("-20")
    assert dialog.site is None
    assert "must lie between" in dialog.caution.text()


@pytest.mark.parametrize("answer", [QDialog.DialogCode.Accepted, QDialog.DialogCode.Rejected])
def test_ok_is_one_undo_step_and_cancel_changes_nothing(qtbot, monkeypatch, answer):
    session = Session(new_garden(2027))
    before = session.garden

    def answered(dialog):
        dialog.place.setText("Elsewhere")
        return answer

    monkeypatch.setattr(module.SiteDialog, "exec", answered)
    done = edit_site(session)
    assert done is (answer == QDialog.DialogCode.Accepted)
    assert session.history.count() == int(done)
    if done:
        assert session.garden.site.place == "Elsewhere"
        session.history.undo()
    assert session.garden is before
