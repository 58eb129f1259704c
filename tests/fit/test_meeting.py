"""Meetings against brute force with polygons, and light through canopies against published layering."""

from datetime import date

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.meeting import meet, taken_above
from gardencanvas.fit.own import usual_load
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import IN_BED, RADIUS
from gardencanvas.light.canopy import layered
from tests.fit.makers import rows, spot
from tests.garden.makers import garden
from tests.strategies import plantings


def stands_of(*items):
    made = garden(*items)
    found = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])
    return [found[p.id][0] for p in items]


def brute_overlap(a, b, week):
    """Share of each footprint of ``a`` under those of ``b``, added up from polygons of 4·128 sides."""
    r, s = a.sizes[RADIUS, week], b.sizes[RADIUS, week]
    others = [shapely.Point(*at).buffer(s, quad_segs=128) for at in b.xy]
    own = [shapely.Point(*at).buffer(r, quad_segs=128) for at in a.xy]
    return np.array([sum(d.intersection(o).area for o in others) for d in own]) / (np.pi * r * r)


@given(plantings("a", crops=("cabbage", "leek", "tomato")), plantings("b", crops=("lettuce", "courgette")))
def test_overlap_is_that_of_polygons_in_every_week(one, two):
    a, b = stands_of(one.model_copy(update={"varieties": ()}), two)
    meeting = meet(a, b)
    both = np.flatnonzero(
        (a.sizes[[IN_BED, RADIUS]] > 0).all(axis=0) & (b.sizes[[IN_BED, RADIUS]] > 0).all(axis=0)
    )
    for week in both[:: max(len(both) // 3, 1)]:
        brute = brute_overlap(a, b, week)
        found = np.zeros(len(a.xy))
        if meeting is not None:
            found[meeting.of_a.stations] = meeting.of_a.covered[:, meeting.spell[week - meeting.begin]]
        # The polygons' areas are 2.5e-5 too small. An overlap less than 1 mm deep counts as a touch; it is a
        # lens of at most 4/3·√(2·r·1 mm)·1 mm, and no plant here has more than twenty such neighbours.
        r, s = a.sizes[RADIUS, week], b.sizes[RADIUS, week]
        touch = 20 * 4 / 3 * np.sqrt(2 * min(r, s) * 0.001) * 0.001 / (np.pi * r * r)
        assert np.all(np.abs(found - brute) <= 1e-4 * (1 + brute * (1 + (s / r) ** 2)) + touch)


def test_a_wide_canopy_over_a_low_one_takes_what_layering_says():
    """O054: k 0.5, L 2 wholly above: 0.63212 taken before the lower crop sees any.

    That is a closed canopy: here 100 m wide, so that next to nothing comes in from the side.
    """
    low, tall = np.zeros((5, 1)), np.zeros((5, 1))
    low[:, 0] = [0.1, 0.3, 0.0, 1.05, 1.0]
    tall[:, 0] = [50.0, 1.5, 0.4, 0.5 * 2.0, 1.0]
    above = layered([0.5, 0.7], [2.0, 1.5], [1.5, 0.3], [0.4, 0.0])
    assert taken_above(low, tall)[0] == pytest.approx(0.63212, abs=0.02)
    assert taken_above(low, tall)[0] == pytest.approx(float(above[0]), abs=0.02)


@given(st.floats(0.1, 2.0), st.floats(0.0, 0.9), st.floats(0.05, 2.5), st.floats(0.1, 6.0))
def test_leaves_above_a_height_take_what_thin_layers_take_and_less_where_light_comes_in(
    height, base_share, low_height, leaf
):
    """Independent: two thousand thin layers added up from the top down."""
    base = base_share * height
    low, tall = np.zeros((5, 2)), np.zeros((5, 2))
    low[:] = np.array([0.1, low_height, 0.0, 1.0, 1.0])[:, None]
    tall[:] = np.array([0.3, height, base, leaf, 1.0])[:, None]
    tall[RADIUS, 0] = 50.0
    edges = np.linspace(base, height, 2001)
    middles = (edges[1:] + edges[:-1]) / 2
    light = np.prod(np.where(middles > low_height, np.exp(-leaf / 2000), 1.0))
    wide, narrow = taken_above(low, tall)
    assert wide == pytest.approx(1.0 - light, abs=leaf / 1000 + 0.03)
    assert narrow <= wide + 1e-9


def test_square_spacing_makes_like_plants_overlap_as_closed_form_says():
    """Discs of the ground a square spacing gives (r = s/√π): four neighbours at s, lens in closed form."""
    s = 0.4
    r = s / np.sqrt(np.pi)
    x = s / (2 * r)
    lens = 2 / np.pi * (np.arccos(x) - x * np.sqrt(1 - x * x))
    assert usual_load(np.array([r]), s, s)[0] == pytest.approx(4 * lens, rel=1e-9)


def test_plants_that_touch_do_not_meet():
    lettuce = catalogue().resolve("lettuce")
    a, b = stands_of(
        spot("a", "lettuce", [(0.0, 0.0)]), spot("b", "lettuce", [(2 * lettuce.spread_m.mid, 0.0)])
    )
    apart = 2 * float(a.sizes[RADIUS].max())
    for gap, meets in ((-0.0005, False), (0.0, False), (0.0005, False), (-0.005, True)):
        a, b = stands_of(spot("a", "lettuce", [(0.0, 0.0)]), spot("b", "lettuce", [(apart + gap, 0.0)]))
        assert (meet(a, b) is not None) is meets


def test_a_row_beside_another_is_met_station_by_station():
    a, b = stands_of(
        rows("a", "cabbage", 1.8, 1, 0.45, 0.5, date(2027, 5, 1)),
        spot("b", "cabbage", [(0.225, 0.65)]),
    )
    meeting = meet(a, b)
    assert meeting.of_a.stations.tolist() == [0]  # at (0.225, 0.25), 0.4 m from it; the next is 0.6 m away
    assert meeting.of_a.nearest_m.tolist() == pytest.approx([0.4])
