"""What neighbours take, in plants of a stand's own: against layered canopies and laws that must hold."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.fit.beside import vault
from gardencanvas.fit.standing import Standing
from gardencanvas.light.canopy import layered
from gardencanvas.measures.yields.bedful import bedfuls
from gardencanvas.measures.yields.crowd import by_light, light
from gardencanvas.measures.yields.density import relative_yield
from gardencanvas.measures.yields.relative import shared
from tests.garden.makers import bed
from tests.measures.beds_for_tests import filled, garden_of, ground_of, layout
from tests.oracles.oracle_rows import expected

ONE_WEEK = np.ones(1)


@given(st.floats(0.05, 5.0), st.floats(0.05, 2.0), st.floats(0.0, 4.0))
def test_others_like_its_own_count_as_many_as_they_are(leaf, density, others):
    """Two canopies of one height (Spitters & Aerts 1983), whose leaves differ in nothing."""
    own = leaf * density
    share = layered([1.0, 1.0], [own, leaf * others], [0.5, 0.5])[0]
    left = np.array([share / -np.expm1(-own)])
    crowd = by_light(np.array([[leaf]]), ONE_WEEK, np.array([density]), left)
    assert crowd[0] == pytest.approx(others, abs=1e-4)


@given(
    st.lists(st.floats(0.0, 5.0), min_size=1, max_size=30).filter(lambda some: max(some) > 0.05),
    st.floats(0.05, 2.0),
    st.floats(0.02, 0.999),
)
def test_so_many_of_its_own_leave_as_much_light(leaf, density, left):
    leaves, sun = np.array([leaf]), np.linspace(10.0, 40.0, len(leaf))
    crowd = by_light(leaves, sun, np.array([density]), np.array([left]))
    total = density + crowd
    kept = density / total * light(leaves * total[:, None], sun)
    assert kept == pytest.approx(left * light(leaves * density, sun), rel=1e-6)


def _shared(*plantings, width=1.5):
    made = garden_of(layout("l1", [bed(length=4.0, width=width)], *plantings))
    stands = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])
    (bedful,) = bedfuls(made.layouts[0], stands)
    return shared(bedful, vault(made.site))


def test_competition_coefficients_of_spitters():
    """Row O066: 1/w = b₁₀ + b₁₁ N₁ + b₁₂ N₂ of two crops gives LER 1.14268.

    The same in the terms of the program: c = b₁₁ N / (b₁₀ + b₁₁ N) at any usual number N, D = N₁ / N and
    E = b₁₂ N₂ / (b₁₁ N).
    """
    own, cross, intercept = (0.05, 0.10), (0.02, 0.15), (0.02, 0.05)
    numbers, usual = (10.0, 20.0), 10.0
    total = 0.0
    for k in (0, 1):
        mine, others = numbers[k], numbers[1 - k]
        back = own[k] * usual / (intercept[k] + own[k] * usual)
        density, crowd = mine / usual, cross[k] * others / (own[k] * usual)
        full = mine / (intercept[k] + own[k] * mine) / (usual / (intercept[k] + own[k] * usual))
        relative = float(relative_yield(density, back, crowd))
        full = mine / (intercept[k] + own[k] * mine) / (usual / (intercept[k] + own[k] * usual))
        relative = density / (1 - back + back * (density + crowd))
        total += relative / full
    assert total == pytest.approx(expected("O066"), abs=1e-5)


def test_late_neighbours_hold_back_less_than_those_of_its_own_time():
    lettuce = filled("a", "lettuce")
    early = _shared(lettuce, filled("b", "cabbage", y=0.1))
    late = _shared(lettuce, filled("b", "cabbage", y=0.1, on=lettuce.start.on.replace(month=6)))
    assert early.left[0] < late.left[0] < 1.0


def test_a_legume_takes_less_of_the_soil_than_a_crop_like_it_that_fixes_nothing(monkeypatch):
    """Two thirds of its nitrogen come from the air (Herridge, Peoples & Boddey 2008)."""
    cabbage, bean = filled("a", "cabbage"), filled("b", "dwarf-bean", share=0.5, y=0.2)
    with_bean = _shared(cabbage, bean).left[0]
    monkeypatch.setattr("gardencanvas.measures.yields.crowd.FIXED", 0.0)
    assert with_bean > _shared(cabbage, bean).left[0]


def test_two_crops_that_differ_in_nothing_but_their_names_save_no_ground():
    one, two = filled("a", "leek", share=0.5), filled("b", "leek", share=0.5, y=0.1)
    made = garden_of(layout("l1", [ground_of(filled("a", "leek"))], one, two))
    stands = Standing(catalogue(), made.site, made.layouts[0]).of(made.layouts[0])
    leek = stands["b"][0].crop
    other = Crop(**{**{k: getattr(leek, k) for k in Crop.model_fields}, "id": "leek-by-another-name"})
    named = {"a": stands["a"], "b": tuple(replace(s, crop=other) for s in stands["b"])}
    (bedful,) = bedfuls(made.layouts[0], named)
    found = shared(bedful, vault(made.site))
    assert found.left.max() < 0.9
    # rows at the edges have fewer of the other beside them
    assert found.relative.sum() == pytest.approx(1.0, abs=0.02)
