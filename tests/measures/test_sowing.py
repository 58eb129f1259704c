"""Sow counts against scipy.stats.binom; the printed cases are those of its survival function."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import binom

from gardencanvas.measures.sowing import cells_filled, come_up, seeds_for


@given(st.integers(1, 400), st.integers(0, 400), st.floats(0.02, 0.99))
def test_the_tail_is_scipys(sown, wanted, share):
    assert come_up(sown, wanted, share) == pytest.approx(binom.sf(wanted - 1, sown, share), abs=1e-9)


@given(st.integers(1, 250), st.sampled_from([0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.97]))
@settings(max_examples=60)
def test_the_fewest_seeds_that_do_and_one_less_does_not(wanted, share):
    m = seeds_for(wanted, share)
    assert binom.sf(wanted - 1, m, share) >= 0.95
    assert binom.sf(wanted - 1, m - 1, share) < 0.95


@pytest.mark.parametrize(
    ("wanted", "share", "seeds"),
    [
        (1, 0.8, 2),
        (1, 0.7, 3),
        (1, 0.5, 5),
        (10, 0.8, 16),
        (12, 0.9, 16),
        (20, 0.8, 29),
        (30, 0.7, 50),
        (50, 0.85, 64),
    ],
)
def test_cases_worked_by_the_survival_function(wanted, share, seeds):
    assert seeds_for(wanted, share) == seeds


@pytest.mark.parametrize(("each", "chance"), [(1, 0.069), (2, 0.613), (3, 0.908), (4, 0.981)])
def test_twelve_cells_at_four_in_five(each, chance):
    """(1 − 0.2ᵏ)¹²."""
    assert cells_filled(12, each, 0.8) == pytest.approx(chance, abs=5e-4)


@pytest.mark.parametrize(("wanted", "share"), [(20_000, 0.63), (400_000, 0.35), (2_000, 0.007), (1, 0.007)])
def test_large_orders_and_poor_seed_are_sound(wanted, share):
    m = seeds_for(wanted, share)
    assert binom.sf(wanted - 1, m, share) >= 0.95 > binom.sf(wanted - 1, m - 1, share)


def test_the_largest_layout_of_the_poorest_seed_has_a_number():
    """200,000 stations of 20 seedlings at 1 % germination, 0.7 of which come up."""
    m = seeds_for(4_000_000, 0.007)
    assert binom.sf(3_999_999, m, 0.007) == pytest.approx(0.95, abs=1e-3)


@pytest.mark.parametrize("share", [0.0, -0.1, 1.5])
def test_an_impossible_share_is_refused(share):
    with pytest.raises(ValueError, match="share"):
        seeds_for(5, share)
