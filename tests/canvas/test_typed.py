"""Measures typed while drawing; a foot is 0.3048 m and an inch 0.0254 m by definition (1959)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.canvas.typed import length_m, sides_m


@pytest.mark.parametrize(
    ("text", "units", "metres"),
    [
        ("3.6", "metric", 3.6),
        ("3,6", "metric", 3.6),
        ("360cm", "metric", 3.6),
        ("360 cm", "metric", 3.6),
        ("1200 mm", "metric", 1.2),
        ("4", "imperial", 1.2192),
        ("4'", "imperial", 1.2192),
        ("12' 6\"", "imperial", 3.81),
        ("12ft 6in", "metric", 3.81),
        ("30″", "imperial", 0.762),
        ("3.6 1.2", "metric", None),
        ("3 m 2", "metric", None),
        ("", "metric", None),
        ("x", "metric", None),
        ("0", "metric", None),
        ("-1", "metric", None),
        ("1e9", "metric", None),
        ("99999", "metric", None),
        ("1..2", "metric", None),
        ("abc", "metric", None),
    ],
)
def test_a_length(text, units, metres):
    assert length_m(text, units) == (None if metres is None else pytest.approx(metres))


@pytest.mark.parametrize("cross", ["x", " x ", "×", "*", "X"])
def test_two_sides(cross):
    assert sides_m(f"3.6{cross}1.2", "metric") == (pytest.approx(3.6), pytest.approx(1.2))


def test_one_side_leaves_the_other_open():
    assert sides_m("3.6x", "metric") == (3.6, None)
    assert sides_m("x1.2", "metric") == (None, 1.2)


@given(st.text(alphabet="0123456789.,xX×* mcftin'\"′″", max_size=24), st.sampled_from(["metric", "imperial"]))
def test_whatever_is_typed_is_a_length_or_nothing(text, units):
    for side in sides_m(text, units):
        assert side is None or 0 < side <= 1000


@given(st.integers(1, 99_999), st.sampled_from(["metric", "imperial"]))
def test_centimetres_mean_the_same_in_all_units(tenths, units):
    assert length_m(f"{tenths / 10} cm", units) == pytest.approx(tenths / 1000)
