"""Numbers on rulers, grid and scale bar; a foot is 30.48 cm by definition (1959)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.canvas.furniture import scale_bar
from gardencanvas.canvas.paper import spacings
from gardencanvas.canvas.rulers import number, steps

scales = st.floats(0.02, 24.0)


@given(scales, st.booleans())
def test_numbers_on_a_ruler_have_room_and_are_round(scale, imperial):
    step, parts = steps(scale, imperial)
    assert 50 <= step * scale <= 800
    unit = 30.48 if imperial else 100.0
    in_units = step / unit
    if in_units >= 1:
        lead = float(f"{in_units:e}".split("e")[0])
        assert round(lead, 9) in {1.0, 2.0, 5.0}
    assert parts >= 2


@given(scales, st.booleans())
def test_the_scale_bar_fits_and_is_as_long_as_it_says(scale, imperial):
    length, text = scale_bar(scale, imperial)
    assert length * scale <= 130 or length <= 2.54
    value = float(text.rstrip("′″ mc"))
    unit = {"″": 2.54, "′": 30.48}.get(text[-1], 1.0 if text.endswith("cm") else 100.0)
    assert length == pytest.approx(value * unit)


@given(scales, st.booleans())
def test_grid_lines_are_not_crowded(scale, imperial):
    fine, strong = spacings(scale, imperial)
    assert fine * scale >= 14.0 or fine >= 100 * 30.48
    assert strong >= fine


@pytest.mark.parametrize(
    ("cm", "step", "imperial", "text"),
    [
        (150.0, 50.0, False, "1.5"),
        (-150.0, 50.0, False, "−1.5"),
        (0.0, 10.0, False, "0.0"),
        (300.0, 100.0, False, "3"),
        (30.48, 30.48, True, "1′"),
        (45.72, 15.24, True, "1′6″"),
        (-45.72, 15.24, True, "−1′6″"),
    ],
)
def test_numbers_read_as_a_ruler_does(cm, step, imperial, text):
    assert number(cm, step, imperial) == text
