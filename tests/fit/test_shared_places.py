"""Plants that have only some places of their pattern are judged by how far apart they stand themselves."""

from datetime import date
from math import pi, sin

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.ground import ground_of, pattern_spacing
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.pattern import Block, RingPattern, Rows
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.stations import without_stations
from tests.fit.makers import judged

ON = date(2027, 5, 1)


def leeks(pattern):
    return Planting(id="one", crop="leek", pattern=pattern, start=Start(kind="raised", on=ON))


def a_row(spacing, **changes):
    return leeks(Rows(length_m=3.0, rows=1, spacing_m=spacing, row_spacing_m=0.3, **changes))


@pytest.mark.parametrize("times", [2, 3, 4])
def test_every_nth_place_of_a_row_is_a_row_n_times_as_wide(times):
    wide, shared = a_row(0.15), a_row(0.15 / times, every=times)
    thinned = a_row(0.15 / times)
    thinned = without_stations(thinned, [i for i in range(thinned.pattern.count) if i % times])
    assert shared.pattern.count == thinned.pattern.count == wide.pattern.count == 20
    for planting in (shared, thinned):
        along, across = pattern_spacing(planting)
        assert (along, across) == (pytest.approx(0.15), None)
        crop = catalogue().resolve("leek")
        assert ground_of(planting, crop).station_m2 == pytest.approx(ground_of(wide, crop).station_m2)
        assert judged(planting).plantings["one"].verdict is judged(wide).plantings["one"].verdict


def test_in_a_ring_of_two_crops_each_has_the_chord_between_its_own():
    ring = leeks(RingPattern(radius_m=0.5, spacing_m=2 * pi * 0.5 / 20, every=2))
    assert ring.pattern.count == 10
    assert pattern_spacing(ring)[0] == pytest.approx(2 * 0.5 * sin(pi / 10))


def test_every_second_place_of_a_square_block_has_twice_the_ground():
    block = leeks(Block(length_m=1.0, width_m=1.0, spacing_m=0.1, every=2))
    along, across = pattern_spacing(block)
    assert block.pattern.count == 50
    assert along * across == pytest.approx(2 * 0.1 * 0.1)


def test_a_hole_in_a_block_does_not_loosen_it():
    block = leeks(Block(length_m=1.0, width_m=1.0, spacing_m=0.1))
    holed = without_stations(block, range(20, 60))
    assert pattern_spacing(holed) == pattern_spacing(block) == (0.1, 0.1)
    one = without_stations(block, range(1, 100))
    assert pattern_spacing(one)[0] > 1.0
    moved = rebuilt(block, pattern=rebuilt(block.pattern, every=1))
    assert pattern_spacing(moved) == (0.1, 0.1)
