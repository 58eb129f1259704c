"""Capture among leaves of one height: against layered canopies and the published yield–density law."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import curve_fit

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.capture import captured
from gardencanvas.fit.density import size_at
from gardencanvas.fit.standing import Standing
from gardencanvas.light.canopy import layered
from tests.fit.makers import rows
from tests.garden.makers import garden
from tests.oracles.oracle_rows import DATA


@given(st.floats(0.1, 4.0), st.floats(0.0, 4.0))
def test_it_is_the_share_of_one_canopy_among_others_of_its_height(leaf, crowd):
    """``light.canopy.layered`` of two canopies of one height (Spitters & Aerts 1983), the plant first."""
    shares = layered([1.0, 1.0], [leaf, leaf * crowd], [0.5, 0.5])
    assert captured(np.array(leaf), np.array(crowd)) == pytest.approx(shares[0], abs=1e-9)


def kept_at(crop_id, density):
    """What a plant amid its own kind keeps with so many plants for each one of the usual spacing."""
    crop = catalogue().resolve(crop_id)
    along, across = crop.in_row_m.mid, crop.between_rows_m.mid
    f = density**-0.5
    planting = rows("p", crop_id, 12 * along * f, 9, along * f, across * f, date(2027, 5, 10), crop.starts[0])
    made = garden(planting)
    (stand,) = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])["p"]
    x, y = stand.xy.T
    middle = int(np.hypot(x - x.mean(), y - y.mean()).argmin())
    return float(stand.alone.kept[middle])


CROPS = ["cabbage", "lettuce", "carrot", "beetroot", "onion", "leek", "kohlrabi", "spinach", "potato"]


@pytest.mark.parametrize("crop_id", CROPS)
def test_more_plants_are_smaller_as_the_reciprocal_yield_law_says(crop_id):
    """1/w = a + bN (Shinozaki & Kira 1956), which lettuce follows (Scaife & Jones 1976).

    The engine knows nothing of the law: it adds up discs and light. Between final yield constant (c = 1) and
    plants that hold each other back by a third at the usual spacing (c = 1/3).
    """
    assert kept_at(crop_id, 1.0) == pytest.approx(1.0, abs=0.005)
    for density in (2.0, 4.0):
        assert size_at(density, 1.0) <= kept_at(crop_id, density) <= size_at(density, 1 / 3)


def onions():
    """Weight of an onion at many densities in two places: Ratkowsky 1983, in agridat (MIT)."""
    lines = (DATA / "ratkowsky_onions.txt").read_text(encoding="utf-8").split("\n")[1:]
    rows_ = [line.split() for line in lines if line]
    return {
        place: np.array([(float(n), float(w)) for n, w, where in rows_ if where.strip('"') == place])
        for place in "PV"
    }


def law(found):
    """Parameters of 1/w = a + bN, fitted to the logarithms of weights."""
    (a, b), _ = curve_fit(
        lambda n, a, b: -np.log(a + b * n), found[:, 0], np.log(found[:, 1]), p0=(0.003, 0.0001)
    )
    return a, b


def test_onions_at_twice_and_four_times_their_density_weigh_as_in_the_field():
    """Between the laws fitted to 42 plots in either place: 0.57–0.60 and 0.31–0.34 of the usual weight."""
    crop = catalogue().resolve("onion")
    usual = 1.0 / (crop.in_row_m.mid * crop.between_rows_m.mid)
    for density in (2.0, 4.0):
        weights = [(a + b * usual) / (a + b * usual * density) for a, b in map(law, onions().values())]
        assert min(weights) - 0.02 <= kept_at("onion", density) <= max(weights) + 0.02


def test_the_onion_of_the_catalogue_is_that_of_the_field():
    halves = sorted(a / b for a, b in map(law, onions().values()))
    told = catalogue().resolve("onion").half_weight_per_m2
    assert [told.low, told.high] == pytest.approx(halves, abs=0.1)
    assert told.mid == pytest.approx(np.mean(halves), abs=0.1)


def test_upright_leaves_take_less_from_a_broad_plant_than_it_takes_from_them():
    """Onion, leek, garlic are the best companions of cauliflower and broccoli: Unlu et al. 2010."""
    broad, thin = 2.2, 0.9
    taken_from_broad = 1 - captured(np.array(broad), np.array(thin / broad)) / captured(
        np.array(broad), np.array(0.0)
    )
    taken_from_thin = 1 - captured(np.array(thin), np.array(broad / thin)) / captured(
        np.array(thin), np.array(0.0)
    )
    assert taken_from_broad < 0.3 < 0.5 < taken_from_thin
