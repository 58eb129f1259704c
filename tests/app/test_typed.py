"""Numbers and days as people type them."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.app.site.typed import BadDay, day_of_year, number
from gardencanvas.garden.site import DayOfYear
from gardencanvas.words.plain import MONTHS


@pytest.mark.parametrize(
    ("text", "value"),
    [("3.4", 3.4), ("3,4", 3.4), (" -2 ", -2.0), ("−2,5", -2.5), ("+1", 1.0), (".5", 0.5), ("12.", 12.0)],
)
def test_numbers(text, value):
    assert number(text) == value


@pytest.mark.parametrize(
    "text", ["", "x", "1,2,3", "1 2", "1e3", "nan", "inf", "٣", "\0", "<b>3</b>", "🥕", "9" * 10_000, "--2"]
)
def test_no_numbers(text):
    with pytest.raises(ValueError, match="not a number"):
        number(text)


@given(st.floats(-99_999, 99_999), st.sampled_from(".,"), st.integers(0, 6))
def test_written_numbers_come_back(value, mark, decimals):
    assert number(f"{value:.{decimals}f}".replace(".", mark)) == float(f"{value:.{decimals}f}")


@pytest.mark.parametrize(
    "text", ["12 May", "12 may", "12. May", "May 12", "may 12, 2024", "12 May 2024", "12.5.", "12.05.2024",
             "2024-05-12", "05-12", "12may"],
)  # fmt: skip
def test_days(text):
    assert day_of_year(text) == DayOfYear(month=5, day=12)


@given(
    st.dates(date(1900, 1, 1), date(2199, 12, 31)),
    st.sampled_from(["{0.day} {1} {0.year:04}", "{0:%Y-%m-%d}", "{0.day}.{0.month}."]),
)
def test_every_day_of_the_calendar_is_read(on, shape):
    found = day_of_year(shape.format(on, MONTHS[on.month - 1]))
    leap_day = (on.month, on.day) == (2, 29)
    assert (found.month, found.day) == (on.month, 28 if leap_day else on.day)


@pytest.mark.parametrize("text", ["none", "None ", "never", "no frost"])
def test_a_year_without_frost(text):
    assert day_of_year(text) is None


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("", "unreadable"),
        ("12", "unreadable"),
        ("12 Maj", "unreadable"),
        ("12 ma", "unreadable"),  # March or May
        ("tomorrow", "unreadable"),
        ("🥕", "unreadable"),
        ("\0", "unreadable"),
        ("<img>", "unreadable"),
        ("5" * 10_000, "unreadable"),
        ("5/12", "day or month"),
        ("12/5/2024", "day or month"),
        ("31 April", "no such day"),
        ("30 Feb", "no such day"),
        ("2024-13-01", "no such day"),
        ("0 May", "no such day"),
    ],
)
def test_no_days(text, fault):
    with pytest.raises(BadDay) as caught:
        day_of_year(text)
    assert caught.value.fault == fault


@given(st.text(max_size=60))
def test_any_text_is_a_day_or_refused(text):
    try:
        found = day_of_year(text)
    except BadDay:
        return
    assert found is None or DayOfYear(month=found.month, day=found.day) == found
