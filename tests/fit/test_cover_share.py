"""Ground cover against areas that geometry gives."""

from datetime import date, timedelta
from math import pi

import numpy as np
import pytest
import shapely

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.cover_share import bed_cover
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import LEAF, RADIUS
from tests.fit.makers import rows, spot
from tests.garden.makers import bed, garden

CROPS = catalogue()
BED = bed("bed", 0.0, 0.0, 2.0, 1.2)


def cover_of(*plantings, ground=BED):
    made = garden(*plantings, beds=(ground,))
    stands = Standing(CROPS, made.site, made.layouts[0]).of(made.layouts[0])
    return bed_cover(made, made.layouts[0], ground, CROPS), {p: s[0] for p, s in stands.items()}


def test_one_plant_covers_its_disc():
    cover, stands = cover_of(spot("p", "cabbage", [(1.0, 0.6)]))
    disc = pi * stands["p"].sizes[RADIUS] ** 2 * stands["p"].sizes[4] / (2.0 * 1.2)
    assert cover.covered == pytest.approx(disc, abs=0.002)
    assert cover.covered.max() > 0.05


def test_plants_on_the_rim_cover_what_lies_inside_and_overlaps_count_once():
    """Against shapely's union of discs of 256 corners (area 0.04 % low)."""
    at = [(0.0, 0.0), (0.2, 0.1), (0.35, 0.1), (1.9, 1.15)]
    cover, stands = cover_of(spot("p", "cabbage", at))
    week = stands["p"].end - 1
    discs = shapely.union_all(
        [shapely.Point(x, y).buffer(stands["p"].sizes[RADIUS, week], quad_segs=64) for x, y in at]
    )
    expected = discs.intersection(shapely.Polygon(BED.outline)).area / (2.0 * 1.2)
    assert cover.covered[week] == pytest.approx(expected, abs=0.003)


def test_soil_is_bare_before_the_first_and_after_the_last_planting():
    cover, stands = cover_of(rows("p", "lettuce", 2.0, 3, 0.25, 0.3, date(2027, 5, 1)))
    stand = stands["p"]
    bare = np.ones(cover.weeks.count, dtype=bool)
    bare[stand.begin : stand.end] = False
    assert not cover.covered[bare].any()
    assert (cover.covered[~bare] > 0.0).all()


def test_a_second_planting_never_uncovers_soil_and_leaves_let_some_light_through():
    first = rows("one", "cabbage", 2.0, 2, 0.45, 0.6, date(2027, 5, 1))
    alone, _ = cover_of(first)
    both, _ = cover_of(first, rows("two", "lettuce", 2.0, 1, 0.25, 0.3, date(2027, 5, 1), y=0.4))
    assert (both.covered >= alone.covered).all()
    assert (both.shaded >= alone.shaded - 1e-12).all()
    assert both.covered.sum() > alone.covered.sum()
    assert (both.shaded <= both.covered + 1e-12).all()


def test_light_under_one_canopy_is_that_of_beer_and_lambert():
    cover, stands = cover_of(spot("p", "cabbage", [(1.0, 0.6)]))
    sizes = stands["p"].sizes
    taken = 1.0 - np.exp(-sizes[LEAF])
    grown = np.flatnonzero(cover.covered > 0.01)
    assert cover.shaded[grown] / cover.covered[grown] == pytest.approx(taken[grown])


def test_neighbours_outside_the_bed_lean_over_it_and_far_ones_do_not():
    leaning, _ = cover_of(spot("p", "courgette", [(1.0, -0.2)], date(2027, 5, 25)))
    far, _ = cover_of(spot("p", "courgette", [(1.0, -5.0)], date(2027, 5, 25)))
    assert leaning.covered.max() > 0.0
    assert not far.covered.any()


def test_holes_are_no_soil():
    """A plant in the middle of a bed round a pond covers none of the soil it does not reach."""
    hole = ((0.5, 0.3), (1.5, 0.3), (1.5, 0.9), (0.5, 0.9))
    cover, _ = cover_of(
        spot("p", "lettuce", [(1.0, 0.6)]), ground=bed("bed", 0.0, 0.0, 2.0, 1.2, holes=(hole,))
    )
    assert not cover.covered.any()


def test_an_intercrop_closes_the_soil_earlier():
    """What Baumann et al. (2000) grew celery between leeks for: soil covered sooner than by leeks alone."""
    leeks = rows("leek", "leek", 1.8, 3, 0.15, 0.4, date(2027, 5, 20), y=0.0)
    alone, _ = cover_of(leeks)
    both, _ = cover_of(leeks, rows("celery", "celery", 1.8, 2, 0.25, 0.4, date(2027, 5, 20), y=0.2))
    closed = alone.covered.max() * 0.9
    first = [int(np.argmax(c.covered >= closed)) for c in (alone, both)]
    assert first[1] < first[0]
    assert both.weeks.first + timedelta(weeks=first[1]) > date(2027, 5, 20)
