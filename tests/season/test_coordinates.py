"""Latitudes and longitudes as people write them; dates of past frosts and what may be said of them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.season.coordinates import BadCoordinate, degrees, written


@pytest.mark.parametrize(
    ("text", "axis", "value"),
    [
        ("51.5", "latitude", 51.5),
        ("51,5", "latitude", 51.5),
        ("51.5 N", "latitude", 51.5),
        ("51,5n", "latitude", 51.5),
        ("N 51.5", "latitude", 51.5),
        (" 51.5°N ", "latitude", 51.5),
        ("-33.87", "latitude", -33.87),
        ("−33,87", "latitude", -33.87),  # the typographic minus
        ("33.87 S", "latitude", -33.87),
        ("S33.87°", "latitude", -33.87),
        ("+4", "latitude", 4.0),
        (".5", "latitude", 0.5),
        ("0 W", "longitude", 0.0),
        ("4.4 e", "longitude", 4.4),
        ("74 W", "longitude", -74.0),
        ("180", "longitude", 180.0),
        ("-180", "longitude", -180.0),
        # Sixtieths, worked by hand.
        ("39° 44′ 34″ N", "latitude", 39.742778),
        ("105°10'43\" W", "longitude", -105.178611),
        ("40° 26.767' N", "latitude", 40.446117),
        ("40° 26' 46.02'' N", "latitude", 40.446117),
        ("40 26' N", "latitude", 40.433333),
    ],
)
def test_what_is_written_is_read(text, axis, value):
    assert degrees(text, axis) == pytest.approx(value, abs=1e-6)


@pytest.mark.parametrize(
    ("text", "axis", "fault"),
    [
        ("", "latitude", "empty"),
        ("   ", "longitude", "empty"),
        ("N", "latitude", "unreadable"),
        ("north", "latitude", "unreadable"),
        ("fifty", "latitude", "unreadable"),
        ("51.5.3", "latitude", "unreadable"),
        ("51 5", "latitude", "unreadable"),  # 51.5, or 51 degrees 5 minutes?
        ("51.5° 30'", "latitude", "unreadable"),
        ("51° 60'", "latitude", "unreadable"),
        ('51° 30"', "latitude", "unreadable"),
        ("1e1", "latitude", "unreadable"),
        ("nan", "latitude", "unreadable"),
        ("inf", "latitude", "unreadable"),
        ("٥١", "latitude", "unreadable"),
        ("51.5 N 3", "latitude", "unreadable"),
        ("\0", "latitude", "unreadable"),
        ("<b>51</b>", "latitude", "unreadable"),
        ("🥕", "latitude", "unreadable"),
        ("9" * 10_000, "latitude", "unreadable"),
        ("90.01", "latitude", "out of range"),
        ("-91", "latitude", "out of range"),
        ("180.5", "longitude", "out of range"),
        ("999", "longitude", "out of range"),
        ("-33 S", "latitude", "sign and letter"),
        ("+33 N", "latitude", "sign and letter"),
        ("33 E", "latitude", "other axis"),
        ("4 N", "longitude", "other axis"),
    ],
)
def test_what_cannot_be_read_says_why(text, axis, fault):
    with pytest.raises(BadCoordinate) as caught:
        degrees(text, axis)
    assert (caught.value.fault, caught.value.axis) == (fault, axis)


@given(st.floats(-90, 90), st.sampled_from([".", ","]))
def test_decimal_degrees_come_back(value, mark):
    text = f"{value:.6f}".replace(".", mark)
    assert degrees(text, "latitude") == pytest.approx(value, abs=1e-6)


@given(st.floats(-180, 180), st.sampled_from(["{0} {1}", "{1} {0}", "{0}{1}", "{0}°{1}"]))
def test_letters_are_signs(value, shape):
    text = shape.format(f"{abs(value):.5f}", "W" if value < 0 else "E")
    assert degrees(text, "longitude") == pytest.approx(value, abs=1e-5)


@given(st.integers(0, 89), st.integers(0, 59), st.integers(0, 59))
def test_minutes_and_seconds_are_sixtieths(whole, minutes, seconds):
    expected = (whole * 3600 + minutes * 60 + seconds) / 3600
    assert degrees(f"{whole}° {minutes}' {seconds}\" N", "latitude") == pytest.approx(expected, abs=1e-9)


@given(st.text(max_size=80), st.sampled_from(["latitude", "longitude"]))
def test_any_text_is_a_coordinate_or_refused(text, axis):
    try:
        value = degrees(text, axis)
    except BadCoordinate:
        return
    assert abs(value) <= (90 if axis == "latitude" else 180)


@given(st.floats(-90, 90))
def test_what_is_shown_is_read_again(value):
    assert degrees(written(value, "latitude", 4), "latitude") == pytest.approx(value, abs=5.1e-5)
