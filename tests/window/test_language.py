"""The German window: words, months, decimal marks, names of crops; what is typed is read in both ways."""

from datetime import date

import pytest
from PySide6.QtCore import QCoreApplication, QLocale
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialogButtonBox

from gardencanvas.app import language
from gardencanvas.app.number_fields import DecimalField
from gardencanvas.app.session import Session
from gardencanvas.app.site.typed import day_of_year, number
from gardencanvas.app.start import demo_garden
from gardencanvas.canvas.typed import length_m
from gardencanvas.cli import run
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.site import DayOfYear
from gardencanvas.words.language import figure, say, say_many
from gardencanvas.words.plain import Measure, crop_name, day, month_name, short_month, span
from gardencanvas.words.refusals import why_refused

pytestmark = pytest.mark.gui


@pytest.fixture
def german(qapp):
    """The German window as long as the test runs."""
    locale = QLocale()
    language.install(qapp, "de")
    yield
    language.install(qapp, "en")
    QLocale.setDefault(locale)


@pytest.mark.parametrize(
    ("wanted", "code"),
    [
        (["de-AT", "en-GB"], "de"),
        (["de"], "de"),
        (["fr-FR", "de-DE"], "de"),  # the first that the program knows
        (["en-US", "de-DE"], "en"),
        (["C"], "en"),
        ([], "en"),
        (["pt_BR"], "en"),
    ],
)
def test_the_language_of_the_system(wanted, code):
    assert language.of_system(wanted) == code


def test_months_are_those_of_the_unicode_locale_data(german):
    """Read back from Qt's copy of CLDR."""
    cldr = QLocale("de_DE")
    for month in range(1, 13):
        assert month_name(month) == cldr.monthName(month)
        assert short_month(month).rstrip(".") in cldr.monthName(month)


def test_days_and_numbers(german):
    """As Duden and DIN 1333 write them: a point after an ordinal number, a decimal comma."""
    assert day(date(2027, 7, 12)) == "12. Juli"
    assert span(date(2027, 7, 12), date(2027, 7, 30)) == "12.–30. Juli"
    assert figure(1234.5, ",.1f") == QLocale("de_DE").toString(1234.5, "f", 1) == "1.234,5"
    assert Measure().small(0.325) == "32,5\u2009cm"


def test_english_again(qapp, german):
    language.install(qapp, "en")
    assert day(date(2027, 7, 12)) == "12 July"
    assert figure(1234.5, ",.1f") == "1,234.5"
    assert crop_name(catalogue(), "leek") == "Leek"


def test_names_of_crops(german):
    assert crop_name(catalogue(), "carrot") == catalogue().crop("carrot").names["de"] == "Möhre"


def test_plurals(german):
    assert say_many("{n} year", "{n} years", 1) == "1 Jahr"
    assert say_many("{n} year", "{n} years", 2) == "2 Jahre"
    assert say_many("{n} year", "{n} years", 0) == "0 Jahre"


def test_what_is_not_translated_stays_as_it_is(german):
    assert say("An early round one of {who}", who="{mine}") == "An early round one of {mine}"
    assert why_refused(Refusal("Nobody translated {this}.", this="it")) == "Nobody translated it."
    assert why_refused(ValueError("{odd")) == "{odd"


def test_refusals(german):
    assert why_refused(Refusal("A curved edge needs three points or more.")).startswith("Eine runde Kante")
    assert str(Refusal("{bed} is too small.", bed="Bed 1")) == "Bed 1 is too small."


@pytest.mark.parametrize("typed", ["0.32", "0,32"])
def test_either_decimal_mark_can_be_typed(qtbot, german, typed):
    field = DecimalField()
    field.setDecimals(2)
    qtbot.addWidget(field)
    field.selectAll()
    QTest.keyClicks(field, typed)
    assert field.value() == pytest.approx(0.32)
    assert field.text() == "0,32"
    assert length_m(typed, "metric") == pytest.approx(0.32)
    assert number(typed) == pytest.approx(0.32)


@pytest.mark.parametrize("typed", ["12. Mai", "12 Mai", "12. mai", "12 May", "12.5.", "2024-05-12"])
def test_days_are_read_in_german_and_english(german, typed):
    assert day_of_year(typed) == DayOfYear(month=5, day=12)
    assert day_of_year("3. März") == DayOfYear(month=3, day=3)
    assert day_of_year("kein Frost") is None


def test_the_window(qtbot, german, open_window):
    main = open_window(Session(demo_garden()))
    assert [action.text().replace("&", "") for action in main.menuBar().actions()][:2] == [
        "Datei",
        "Bearbeiten",
    ]
    tin = main.tin.list.model()
    names = [tin.index(row, 0).data() for row in range(tin.rowCount())]
    assert "Möhre" in names
    main.tin.search.setText("Möh")
    assert any(tin.index(row, 0).data() == "Möhre" for row in range(tin.rowCount()))
    buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
    qtbot.addWidget(buttons)
    cancel = buttons.button(QDialogButtonBox.StandardButton.Cancel).text().replace("&", "")
    assert cancel == "Abbrechen"  # of Qt's own translation, which comes with it


def test_the_command_line_stays_english(tmp_path, capsys):
    assert run(["check", str(tmp_path / "none.gardencanvas")]) == 2
    assert "There is no file" in capsys.readouterr().err
    assert QCoreApplication.translate("words", "January") == "January"
