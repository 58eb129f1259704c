"""What is paced off with a tape: rows from the edge, the first plant from the end, edges by the sky."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import isotonic_regression

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Edging, RingPattern, Rows, Spots
from gardencanvas.paper.bedmap.distances import spread, tape_steps
from gardencanvas.paper.bedmap.lengths import taped, taped_list
from gardencanvas.paper.bedmap.placing import placed
from gardencanvas.paper.bedmap.tape import row_marks, tape_of
from gardencanvas.words.plain import THIN, Measure
from tests.garden.makers import bed, row
from tests.paper.plans import turned

METRIC, INCHES = Measure(), Measure("imperial")


def plain(text):
    return text.replace(THIN, " ")


def told(pattern, where=None, bearing=0.0, measure=METRIC):
    return plain(placed(where or bed(), row(pattern=pattern), measure, bearing))


def test_distances_are_from_the_bed_s_edge_to_each_row():
    """Rows at 0.25 and 0.55 m from the upper edge, by the pattern's own definition."""
    planting = row(pattern=Rows(origin=(0.2, 0.1), length_m=3.0, rows=2, spacing_m=0.15, row_spacing_m=0.3))
    marks = row_marks(bed(), [(1, planting)])
    assert [m.from_edge_m for m in marks] == pytest.approx([0.25, 0.55])
    assert [m.begin_m for m in marks] == pytest.approx([0.275, 0.275])


def test_rows_are_told_from_edge_and_end():
    """Origin (0.2, 0.1), rows 30 cm apart keep half of it: 25 and 55 cm; plants keep half of 15 cm."""
    pattern = Rows(origin=(0.2, 0.1), length_m=3.0, rows=2, spacing_m=0.15, row_spacing_m=0.3)
    assert told(pattern) == (
        "Rows 25 and 55 cm from the north edge; first plant 27.5 cm from the west end, then every 15 cm."
    )


def test_many_even_rows_are_told_by_their_step():
    pattern = Rows(origin=(0.0, 0.0), length_m=3.0, rows=8, spacing_m=0.1, row_spacing_m=0.14)
    assert told(pattern).startswith("8 rows, 14 cm apart, the first 7 cm from the north edge;")


def test_every_second_place_of_a_row_is_two_spacings_on():
    pattern = Rows(origin=(0.0, 0.3), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3, every=2, first=1)
    assert told(pattern).endswith("first plant 22.5 cm from the west end, then every 30 cm.")


@pytest.mark.parametrize(
    ("bearing", "edge", "end"),
    [
        (0.0, "north", "west"),
        (90.0, "east", "north"),
        (180.0, "south", "east"),
        (45.0, "north-east", "north-west"),
    ],
)
def test_edges_are_named_by_the_sky(bearing, edge, end):
    """The plan's top edge faces the bearing; its left edge lies a quarter turn before that."""
    pattern = Rows(origin=(0.2, 0.1), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3)
    said = told(pattern, bearing=bearing)
    assert f"from the {edge} edge" in said
    assert f"from the {end} end" in said


@pytest.mark.parametrize("angle", [0.0, 30.0, -30.0, 60.0, 90.0, -60.0])
def test_a_turned_bed_is_paced_off_as_if_it_lay_level(angle):
    """Turning bed and rows together changes no distance but the names of the sides."""
    outline = turned(((0, 0), (4, 0), (4, 1.2), (0, 1.2)), angle, (7.0, 5.0))
    (origin,) = turned([(0.2, 0.1)], angle, (7.0, 5.0))
    where = Bed(id="b", name="b", outline=outline)
    pattern = Rows(origin=origin, angle_deg=angle, length_m=3.0, rows=2, spacing_m=0.15, row_spacing_m=0.3)
    rows = [m.from_edge_m for m in row_marks(where, [(1, row(pattern=pattern))])]
    assert rows == pytest.approx([0.25, 0.55]) or rows == pytest.approx([0.65, 0.95])
    tape = tape_of(where)
    assert (tape.length_m, tape.width_m) == pytest.approx((4.0, 1.2))
    assert tape.straight


def test_rows_across_a_bed_are_told_from_its_end():
    pattern = Rows(origin=(1.3, 0.1), angle_deg=90, length_m=1.0, rows=1, spacing_m=0.2, row_spacing_m=0.3)
    assert told(pattern) == (
        "Row across the bed 1.15 m from the west end; "
        "first plant 20 cm from the north edge, then every 20 cm."
    )


def test_rings_blocks_lines_and_single_plants_are_told_too():
    ring = told(RingPattern(origin=(1.0, 0.6), radius_m=0.4, spacing_m=0.25))
    assert ring == (
        "A ring 80 cm across round a point 1.00 m from the west end, 60 cm from the north edge; "
        "every 25 cm round it."
    )
    block = Block(origin=(0.0, 0.0), length_m=1.0, width_m=1.0, spacing_m=0.2, staggered=True)
    assert "every second row half a spacing on" in told(block)
    spots = told(Spots(points=((0.5, 0.3), (1.5, 0.9))))
    assert spots == (
        "50 cm from the west end, 30 cm from the north edge; "
        "1.50 m from the west end, 90 cm from the north edge."
    )
    edging = told(Edging(line=((0.0, 0.0), (3.6, 0.0)), spacing_m=0.2))
    assert edging.startswith("Along a line of 3.60 m, every 20 cm; the first plant 10 cm from the west end")


def test_inches_are_told_to_the_quarter():
    """An inch is 25.4 mm (the international yard, 1959)."""
    assert plain(taped(INCHES, 0.0254 * 17.75)) == "17¾ in"
    assert plain(taped(INCHES, 0.0254 * 0.5)) == "½ in"
    assert plain(taped(INCHES, 0.0254 * 50.5)) == "4′ 2½″"
    assert plain(taped(METRIC, 0.174)) == "17.5 cm"
    assert plain(taped_list(METRIC, [0.25, 0.55, 0.85])) == "25, 55 and 85 cm"
    assert plain(taped_list(METRIC, [0.85, 1.15])) == "85 cm and 1.15 m"


@given(st.lists(st.floats(0, 200), min_size=1, max_size=15), st.floats(0.5, 8))
def test_words_beside_rows_are_moved_as_little_as_can_be(wanted, gap):
    """The least squares that keep the gap are those of isotonic regression; SciPy's is the oracle."""
    wanted = sorted(wanted)
    steps = gap * np.arange(len(wanted))
    expected = isotonic_regression(np.array(wanted) - steps).x + steps
    assert spread(wanted, gap) == pytest.approx(expected, abs=1e-6)


@pytest.mark.parametrize("units", ["metric", "imperial"])
@pytest.mark.parametrize("scale", [10, 20, 50, 100, 200, 500])
def test_the_tape_s_ticks_and_numbers_have_room(units, scale):
    per_m = 1000 / scale
    tick, words, name = tape_steps(Measure(units), per_m)
    assert tick * per_m >= 1.4
    assert words * per_m >= 8.9
    assert (words / tick) == pytest.approx(round(words / tick))
    assert name(0.0) == "0"
