"""The site dialog with real keys: search, coordinates, frost, months, OK and cancel."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, Qt, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QDialogButtonBox, QLabel, QLineEdit, QPlainTextEdit

from gardencanvas.app.session import Session
from gardencanvas.app.site.frost_pane import WAYS
from gardencanvas.app.site.months_table import HIGH, LOW, MEAN, RAIN
from gardencanvas.app.site.past_table import FIRST, LAST
from gardencanvas.app.site_dialog import SiteDialog, edit_site
from gardencanvas.app.start import demo_garden
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.site import Climate, DayOfYear, Frost

DEMO = demo_garden().site
Key = Qt.Key


@pytest.fixture
def opened(qtbot):
    """Opens a dialog on a site."""
    held = []

    def make(of=DEMO, width=1000, height=640, **more):
        dialog = SiteDialog(of, **more)
        held.append(dialog)
        qtbot.addWidget(dialog)
        dialog.resize(width, height)
        dialog.show()
        qtbot.waitExposed(dialog)
        dialog.activateWindow()
        return dialog

    return make


def replace(field, text):
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, text)


def type_cell(table, row, column, text):
    """Type into a cell as a grower does: go there, type, Enter."""
    table.setFocus()
    table.setCurrentCell(row, column)
    QTest.keyClick(table, Key.Key_Return)
    (editor,) = (each for each in table.findChildren(QLineEdit) if each.isVisible())
    editor.selectAll()
    QTest.keyClick(editor, Key.Key_Delete)
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Key.Key_Return)
    QApplication.processEvents()


def choose(dialog, way):
    dialog.frost.ways.button(WAYS.index(way)).click()


def answer(dialog):
    """The site after OK by keyboard; None while the dialog stays open."""
    dialog.buttons.button(QDialogButtonBox.StandardButton.Ok).click()
    return None if dialog.isVisible() else dialog._site


def climate(**more):
    means = tuple(float(x) for x in (2, 3, 6, 9, 13, 16, 18, 18, 15, 11, 6, 3))
    return Climate(mean_c=means, **more)


# place


def test_typing_finds_places_and_enter_takes_one(opened):
    dialog = opened()
    field = dialog.search.field
    assert dialog.focusWidget() is field
    QTest.keyClicks(field, "springfield")
    QTest.keyClick(field, Key.Key_Down)
    second = dialog.search.list.currentIndex().data()
    QTest.keyClick(field, Key.Key_Return)
    assert dialog.isVisible()  # Enter takes the place, it does not close the dialog
    assert dialog.position.name.text() == second
    site = answer(dialog)
    assert site.place == second
    assert site.climate.source.startswith("ERA5")
    assert site.climate.min_c is None
    assert site.frost.basis == "estimated"


def test_a_click_takes_a_place(opened):
    dialog = opened()
    QTest.keyClicks(dialog.search.field, "Sao Paulo")
    view = dialog.search.list
    at = view.visualRect(view.model().index(0, 0)).center()
    QTest.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    site = answer(dialog)
    assert site.place == "São Paulo, Brazil"
    assert site.latitude_deg == pytest.approx(-23.55, abs=0.02)
    assert site.longitude_deg == pytest.approx(-46.63, abs=0.02)


def test_escape_empties_the_search_before_it_closes(opened):
    dialog = opened()
    QTest.keyClicks(dialog.search.field, "par")
    QTest.keyClick(dialog.search.field, Key.Key_Escape)
    assert dialog.search.field.text() == ""
    assert dialog.isVisible()
    QTest.keyClick(dialog.search.field, Key.Key_Escape)
    assert not dialog.isVisible()
    assert dialog.site() is None


def test_what_a_place_replaced_can_be_put_back(opened):
    dialog = opened()
    QTest.keyClicks(dialog.search.field, "Bergen, Norway")
    QTest.keyClick(dialog.search.field, Key.Key_Return)
    assert dialog.climate.climate() != DEMO.climate
    assert dialog._put_back.isVisible()
    dialog._put_back.click()
    assert dialog.climate.climate() == DEMO.climate
    assert dialog.frost.frost() == DEMO.frost
    assert not dialog._put_back.isVisible()


@pytest.mark.parametrize("typed", ["x" * 10_000, "<b>Paris</b><img src=x>", "\0\0", "🥕🥕", "%n {0} &amp;"])
def test_hostile_searches_do_no_harm(opened, typed):
    dialog = opened()
    dialog.search.field.setText(typed)
    QTest.keyClick(dialog.search.field, Key.Key_Return)
    assert dialog.isVisible()
    assert answer(dialog) == DEMO


def test_names_are_shown_as_they_are(opened):
    name = "<img src=x onerror=y> & “Ferry”"
    dialog = opened(rebuilt(DEMO, place=name))
    assert dialog.position.name.text() == name
    assert all(
        label.textFormat() == Qt.TextFormat.PlainText or not label.text()
        for label in dialog.findChildren(QLabel)
        if "<" in label.text()
    )
    assert answer(dialog).place == name


def test_the_credits_are_in_sight(opened):
    dialog = opened()
    shown = " ".join(label.text() for label in dialog.findChildren(QLabel) if label.isVisible())
    assert "GeoNames, CC BY 4.0" in shown
    assert "contains modified Copernicus Climate Change Service information (ERA5)" in shown


def test_all_credits_can_be_read(opened):
    dialog = opened()
    read = []

    def look():
        box = QApplication.activeModalWidget()
        read.append(box.findChild(QPlainTextEdit).toPlainText())
        box.reject()

    QTimer.singleShot(0, look)
    dialog._credits.click()
    assert "Kartverket" in read[0]


# position


@pytest.mark.parametrize(
    ("typed", "value"), [("33,87 S", -33.87), ("-33.87", -33.87), ("33° 52' 12\" S", -33.87), ("70 N", 70.0)]
)
def test_latitudes(opened, typed, value):
    dialog = opened()
    replace(dialog.position.coordinates["latitude"], typed)
    assert answer(dialog).latitude_deg == pytest.approx(value)


@pytest.mark.parametrize(
    ("axis", "typed", "said"),
    [
        ("latitude", "91", "90 degrees"),
        ("latitude", "-33 S", "sign and a letter"),
        ("latitude", "4 E", "N or S"),
        ("longitude", "200 W", "180 degrees"),
        ("longitude", "here", "cannot be read"),
        ("longitude", "", "give decimal degrees"),
    ],
)
def test_wrong_coordinates_are_told_at_once_and_keep_the_dialog_open(opened, axis, typed, said):
    dialog = opened()
    field = dialog.position.coordinates[axis]
    replace(field, typed or " ")
    assert said in dialog.position.caution.text()
    assert answer(dialog) is None
    assert dialog.focusWidget() is field
    assert said in dialog.caution.text()
    replace(field, "12.5")
    assert not dialog.position.caution.isVisible()
    assert not dialog.caution.isVisible()
    assert answer(dialog) is not None


def test_values_left_alone_keep_what_the_form_would_round(opened):
    exact = rebuilt(
        DEMO, latitude_deg=51.123456789, longitude_deg=-4.987654321, elevation_m=12.34, bearing_deg=0.0
    )
    exact = rebuilt(exact, climate=climate(min_c=tuple(m - 4.123 for m in climate().mean_c), source="own"))
    assert answer(opened(exact)) == exact
    imperial = opened(exact, units="imperial")
    assert answer(imperial) == exact


def test_the_compass_turns_the_plan(opened):
    dialog = opened()
    compass = dialog.position.compass
    middle = compass.rect().center()
    left_of_it = middle - QPoint(30, 0)  # north at the left: the top looks east
    QTest.mousePress(compass, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, left_of_it)
    assert dialog.position.bearing.value() == 90.0
    assert "east" in compass.accessibleName()
    replace(dialog.position.bearing, "359,9" if dialog.locale().decimalPoint() == "," else "359.9")
    assert answer(dialog).bearing_deg == pytest.approx(359.9)


def test_feet_and_fahrenheit(opened):
    dialog = opened(units="imperial")
    replace(dialog.position.elevation, "1000")
    type_cell(dialog.climate.table, MEAN, 0, "41")
    site = answer(dialog)
    assert site.elevation_m == pytest.approx(304.8)
    assert site.climate.mean_c[0] == pytest.approx(5.0)
    assert site.climate.mean_c[1:] == DEMO.climate.mean_c[1:]


# climate


def test_a_month_is_typed_with_a_comma(opened):
    dialog = opened()
    type_cell(dialog.climate.table, MEAN, 0, "3,9")
    assert dialog.isVisible()  # Enter in the table does not close the dialog
    site = answer(dialog)
    assert site.climate.mean_c[0] == 3.9
    assert site.climate.source.endswith("changed by hand")


@pytest.mark.parametrize(
    ("row", "column", "typed", "said"),
    [
        (MEAN, 2, "warm", "March"),
        (MEAN, 2, "99", "March"),
        (MEAN, 2, "", "Mar is missing"),
        (LOW, 5, "", "leave the row empty"),
        (LOW, 6, "25", "July: the minimum lies above the mean"),
        (HIGH, 6, "3", "July: the maximum lies below the mean"),
        (RAIN, 11, "-4", "December"),
        (RAIN, 11, "<b>", "December"),
    ],
)
def test_wrong_months_are_told_at_once_and_keep_the_dialog_open(opened, row, column, typed, said):
    dialog = opened()
    table = dialog.climate.table
    type_cell(table, row, column, typed)
    assert said in dialog.climate.caution.text()
    assert (row, column) in table.wrong_cells()
    assert answer(dialog) is None
    assert (table.currentRow(), table.currentColumn()) == (row, column)


def test_rows_that_are_not_known_may_be_empty(opened):
    dialog = opened()
    table = dialog.climate.table
    for row in (LOW, HIGH, RAIN):
        table.setFocus()
        table.setCurrentCell(row, 0)
        table.selectRow(row)
        QTest.keyClick(table, Key.Key_Delete)
    site = answer(dialog)
    assert (site.climate.min_c, site.climate.max_c, site.climate.rain_mm) == (None, None, None)
    assert site.climate.mean_c == DEMO.climate.mean_c


@pytest.mark.parametrize("between", ["\t", "\n", " ", "; "])
def test_twelve_numbers_are_pasted_along_a_row(opened, between):
    dialog = opened()
    table = dialog.climate.table
    table.setFocus()
    table.setCurrentCell(RAIN, 0)
    QGuiApplication.clipboard().setText(between.join(str(n) for n in range(10, 22)))
    QTest.keyClick(table, Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert answer(dialog).climate.rain_mm == tuple(float(n) for n in range(10, 22))


def test_a_table_of_rows_is_pasted(opened):
    dialog = opened()
    table = dialog.climate.table
    table.setCurrentCell(MEAN, 0)
    table.paste("\n".join("\t".join(str(base + n) for n in range(12)) for base in (5, 1, 9)))
    site = answer(dialog)
    assert site.climate.mean_c == tuple(float(5 + n) for n in range(12))
    assert site.climate.min_c == tuple(float(1 + n) for n in range(12))
    assert site.climate.max_c == tuple(float(9 + n) for n in range(12))


@pytest.mark.parametrize("text", ["x" * 100_000, "\0", "1\t" * 5000, "\n" * 5000, "<table>", ""])
def test_hostile_pastes_do_no_harm(opened, text):
    dialog = opened()
    dialog.climate.table.setCurrentCell(RAIN, 3)
    dialog.climate.table.paste(text)
    choose(dialog, "past years")
    dialog.frost.past.setCurrentCell(0, 0)
    dialog.frost.past.paste(text)
    assert dialog.frost.past.rowCount() <= 100
    assert dialog.isVisible()
    dialog.reject()
    assert dialog.site() is None


# frost


def test_known_dates_are_typed(opened):
    dialog = opened()
    choose(dialog, "known")
    replace(dialog.frost.last.day, "12")
    dialog.frost.last.month.setFocus()
    QTest.keyClicks(dialog.frost.last.month, "Ap")
    site = answer(dialog)
    assert site.frost == Frost(last=DayOfYear(month=4, day=12), first=DEMO.frost.first, basis="known")


def test_no_month_has_a_day_too_many(opened):
    dialog = opened()
    choose(dialog, "known")
    dialog.frost.last.show_day(DayOfYear(month=3, day=31))
    dialog.frost.last.month.setCurrentIndex(1)
    assert dialog.frost.last.value() == DayOfYear(month=2, day=28)


def test_dates_the_wrong_way_round_are_asked_about(opened):
    dialog = opened()
    choose(dialog, "known")
    dialog.frost.last.show_day(DayOfYear(month=10, day=18))
    dialog.frost.first.show_day(DayOfYear(month=5, day=2))
    assert "swapped" in dialog.frost._order.text()
    south = tuple(DEMO.climate.mean_c[6:] + DEMO.climate.mean_c[:6])
    there = opened(
        rebuilt(DEMO, latitude_deg=-40.0, climate=Climate(mean_c=south), frost=dialog.frost.frost())
    )
    assert there.frost._order.text() == ""


def test_past_years_give_their_means(opened):
    dialog = opened()
    choose(dialog, "past years")
    table = dialog.frost.past
    for row, (last, first) in enumerate((("2 May", "10 Oct"), ("6.5.", "Oct 14"), ("10 May", "18 October"))):
        type_cell(table, row, LAST, last)
        type_cell(table, row, FIRST, first)
    told = dialog.frost._told.text()
    assert "mean 6 May, from 2 May to 10 May (3 years)" in told
    assert "1 year of 10" not in told  # too few to say
    site = answer(dialog)
    assert site.frost == Frost(
        last=DayOfYear(month=5, day=6), first=DayOfYear(month=10, day=14), basis="past years"
    )


def test_more_past_years_give_a_safe_day_and_say_if_it_is_wide(opened):
    dialog = opened()
    choose(dialog, "past years")
    table = dialog.frost.past
    table.setCurrentCell(0, LAST)
    days = ["2 May", "6 May", "10 May", "28 April", "1 May", "3 May"]
    table.paste("\n".join(f"{day}\t{12 + n} Oct" for n, day in enumerate(days)))
    assert "limit is widened because the years are few" in dialog.frost._told.text()
    assert table.rowCount() > len(days) or table.text(table.rowCount() - 1, LAST) == ""
    table.setCurrentCell(6, LAST)
    table.paste("\n".join(f"{day}\t{12 + n} Oct" for n, day in enumerate(days)))
    assert "1 year of 10" in dialog.frost._told.text()
    assert "widened" not in dialog.frost._told.text()


def test_a_wrong_day_is_told_at_once_and_keeps_the_dialog_open(opened):
    dialog = opened()
    choose(dialog, "past years")
    table = dialog.frost.past
    type_cell(table, 0, LAST, "5/12")
    assert "which one is the month" in dialog.frost._faults.text()
    assert answer(dialog) is None
    type_cell(table, 0, LAST, "5 Dec")
    assert not dialog.frost._faults.isVisible()
    assert answer(dialog) is None  # no first frost yet
    assert "at least one last and one first" in dialog.caution.text()


def test_the_estimate_says_that_it_is_rough_and_how_it_was_made(opened):
    dialog = opened(rebuilt(DEMO, climate=climate()))
    choose(dialog, "estimated")
    said = dialog.frost._guess.text()
    assert "A rough guess" in said
    assert "simulated years of daily minima" in said
    assert "5\u00a0°C below" in said
    assert answer(dialog).frost.basis == "estimated"


def test_a_stored_estimate_is_left_alone_until_the_climate_changes(opened):
    stored = Frost(last=DayOfYear(month=6, day=1), first=DayOfYear(month=9, day=1), basis="estimated")
    site = rebuilt(DEMO, frost=stored)
    assert answer(opened(site)).frost == stored
    dialog = opened(site)
    type_cell(dialog.climate.table, LOW, 3, "4.9")
    changed = answer(dialog)  # even when OK comes before the guess has been made anew
    assert changed.frost.basis == "estimated"
    assert changed.frost != stored


def test_means_of_past_years_stay_so_when_nothing_is_changed(opened):
    stored = Frost(last=DayOfYear(month=5, day=6), first=DayOfYear(month=10, day=14), basis="past years")
    site = rebuilt(DEMO, frost=stored)
    assert answer(opened(site)) == site


def test_where_frost_never_comes(opened):
    dialog = opened()
    choose(dialog, "none")
    assert answer(dialog).frost == Frost(basis="none")


@pytest.mark.parametrize("town", ["Singapore", "Nairobi", "Manaus"])
def test_the_tropics_have_no_frost(opened, town):
    dialog = opened()
    QTest.keyClicks(dialog.search.field, town)
    QTest.keyClick(dialog.search.field, Key.Key_Return)
    assert "Frost is not expected" in dialog.frost._guess.text()
    assert answer(dialog).frost == Frost(basis="none")


def test_the_south_and_the_polar_circle(opened):
    dialog = opened()
    QTest.keyClicks(dialog.search.field, "Christchurch, New Zealand")
    QTest.keyClick(dialog.search.field, Key.Key_Return)
    south = answer(dialog)
    assert south.frost.last.month in {8, 9, 10, 11}
    north = opened()
    QTest.keyClicks(north.search.field, "Tromso")
    QTest.keyClick(north.search.field, Key.Key_Return)
    assert answer(north).latitude_deg > 66.57


# answers


def test_left_as_it_was_nothing_is_proposed(opened):
    dialog = opened()
    assert answer(dialog) == DEMO
    assert dialog.site() is None


@pytest.mark.parametrize("ok", [True, False])
def test_ok_is_one_undo_step_and_cancel_changes_nothing(qtbot, ok):
    session = Session(demo_garden())
    before = session.garden
    changes = []
    session.changed.connect(lambda *pair: changes.append(pair))

    def work():
        dialog = QApplication.activeModalWidget()
        replace(dialog.position.name, "Elsewhere")
        type_cell(dialog.climate.table, RAIN, 0, "70")
        if ok:
            dialog.accept()
        else:
            dialog.reject()

    QTimer.singleShot(0, work)
    assert edit_site(session) is ok
    assert len(changes) == int(ok)
    if ok:
        assert session.garden.site.place == "Elsewhere"
        assert session.garden.site.climate.rain_mm[0] == 70.0
        assert all(new is old for new, old in zip(session.garden.layouts, before.layouts, strict=True))
        session.history.undo()
    assert session.garden is before


def test_exec_gives_the_new_site_or_none(qtbot):
    def answered(code):
        dialog = SiteDialog(DEMO)
        qtbot.addWidget(dialog)

        def work():
            replace(dialog.position.name, "Elsewhere")
            dialog.accept() if code == QDialog.DialogCode.Accepted else dialog.reject()

        QTimer.singleShot(0, work)
        return dialog.exec()

    assert answered(QDialog.DialogCode.Accepted).place == "Elsewhere"
    assert answered(QDialog.DialogCode.Rejected) is None


def test_tab_goes_through_every_field_and_out_of_the_tables(opened):
    dialog = opened()
    choose(dialog, "past years")
    dialog.search.field.setFocus()
    passed = []
    for _ in range(60):
        QTest.keyClick(dialog.focusWidget(), Key.Key_Tab)
        passed.append(dialog.focusWidget())
        if passed[-1] is dialog.search.field:
            break
    assert passed[-1] is dialog.search.field  # round and back
    place = dialog.position
    ok = dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)
    wanted = [place.name, *place.coordinates.values(), place.elevation, place.bearing]
    wanted += [dialog.climate.table, dialog.climate.source, dialog.frost.past, ok]
    places_in_order = [passed.index(widget) for widget in wanted]
    assert places_in_order == sorted(places_in_order)


@pytest.mark.parametrize(("width", "height"), [(1024, 700), (512, 350), (2560, 1440), (1000, 640)])
def test_it_fits_the_window_it_is_given(opened, width, height):
    dialog = opened(width=width, height=height)
    QApplication.processEvents()
    assert (dialog.width(), dialog.height()) == (width, height)
    assert dialog._scroll.horizontalScrollBar().maximum() == 0
    for kind in (QDialogButtonBox.StandardButton.Ok, QDialogButtonBox.StandardButton.Cancel):
        button = dialog.buttons.button(kind)
        corner = button.mapTo(dialog, button.rect().bottomRight())
        assert dialog.rect().contains(corner)
    if width >= 1000:
        assert dialog._scroll.verticalScrollBar().maximum() == 0
        assert dialog.climate.table.horizontalScrollBar().maximum() == 0


@settings(max_examples=10)
@given(st.text(max_size=50), st.text(max_size=50), st.text(max_size=200))
def test_any_text_leaves_a_site_or_a_complaint(qapp, latitude, name, source):
    dialog = SiteDialog(DEMO)
    dialog.position.coordinates["latitude"].setText(latitude)
    dialog.position.name.setText(name)
    dialog.climate.source.setText(source)
    dialog.accept()
    assert (dialog._site is not None) or bool(dialog.caution.text())
    dialog.deleteLater()
