"""Mixing: published indices on arrangements worked out by hand, and beds a grower would call mixed or not."""

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.mixing import (
    bed_mixing,
    effective_kinds,
    evenness,
    mixing,
    neighbours_by_chance,
    segregation,
    shannon,
    simpson,
    unlike_by_chance,
)
from tests.fit.makers import rows
from tests.garden.makers import bed, garden
from tests.oracles.oracle_rows import expected, tolerance

CROPS = catalogue()


def test_shannon_pielou_and_simpson():
    shares = np.array([0.5, 0.3, 0.2])
    found = (shannon(shares), evenness(shares), simpson(shares))
    assert found == pytest.approx(expected("O077"), abs=tolerance("O077"))
    assert effective_kinds(shares) == pytest.approx(1 / 0.38)  # 1 / (0.25 + 0.09 + 0.04)


def rook(side=6):
    """Pairs of a square grid that share an edge."""
    at = np.arange(side * side).reshape(side, side)
    across = np.stack([at[:, :-1].ravel(), at[:, 1:].ravel()])
    down = np.stack([at[:-1].ravel(), at[1:].ravel()])
    return np.concatenate([across, down], axis=1)


ROW, COLUMN = np.divmod(np.arange(36), 6)
ARRANGED = {
    "O078": (ROW + COLUMN) % 2,  # checkerboard
    "O079": COLUMN // 3,  # halves
    "O080": COLUMN % 2,  # columns by turns
}


@pytest.mark.parametrize("row_id", ARRANGED)
def test_mixing_of_arrangements_counted_by_hand(row_id):
    i, j = rook()
    assert mixing(ARRANGED[row_id], i, j) == pytest.approx(expected(row_id), abs=tolerance(row_id))


def test_unlike_pairs_by_chance_of_eighteen_and_eighteen():
    """1 − 2 · 18 · 17 / (36 · 35) = 0.51429, so 30.857 of 60 joins."""
    assert 60 * unlike_by_chance(np.array([18, 18])) == pytest.approx(30.857, abs=1e-3)


def test_random_arrangements_have_a_mixing_of_about_nought():
    rng = np.random.default_rng(36)
    i, j = rook()
    some = [mixing(rng.permutation(ARRANGED["O080"]), i, j) for _ in range(2000)]
    assert np.mean(some) == pytest.approx(0.0, abs=0.02)  # standard error about 0.005


def test_pielous_segregation():
    assert segregation(np.array([[30, 10], [8, 12]])) == pytest.approx(
        expected("O081"), abs=tolerance("O081")
    )


def test_dixons_expected_neighbours():
    table = neighbours_by_chance(np.array([40, 20]))
    found = (table[0, 0], table[0, 1], table[1, 1])
    assert found == pytest.approx(expected("O082"), abs=tolerance("O082"))
    assert table.sum(axis=1) == pytest.approx([40.0, 20.0])  # every plant has one nearest neighbour


@given(st.lists(st.integers(0, 3), min_size=36, max_size=36))
def test_mixing_is_at_most_one_and_does_not_depend_on_the_names_of_kinds(kinds):
    kinds = np.array(kinds)
    i, j = rook()
    found = mixing(kinds, i, j)
    renamed = mixing(7 - kinds, i, j)
    if found is None:
        assert renamed is None
        assert len(np.unique(kinds)) == 1
    else:
        assert renamed == pytest.approx(found)
        assert found <= 1.0 + 1e-12


BED = bed("bed", 0.0, 0.0, 3.0, 2.4)
ON = date(2027, 5, 1)


def mixed(*plantings):
    made = garden(*plantings, beds=(BED,))
    return bed_mixing(made, made.layouts[0], made.layouts[0].beds[0], CROPS)


def stripes(*crops, each=1):
    """Single rows 0.3 m apart, of each crop in turn."""
    return [rows(f"p-{k}", crops[k // each % len(crops)], 2.8, 1, 0.3, 0.3, ON, y=0.3 * k) for k in range(8)]


def test_rows_by_turns_mix_better_than_blocks_and_one_family_does_not_mix_at_all():
    turns, blocks = mixed(*stripes("cabbage", "lettuce")), mixed(*stripes("cabbage", "lettuce", each=4))
    alone = mixed(*stripes("cabbage", "kohlrabi"))
    assert turns.index > blocks.index
    assert blocks.index < 0.0
    assert alone.index is None
    assert alone.kinds == pytest.approx(1.0)
    assert turns.unlike > blocks.unlike > alone.unlike == 0
    assert set(turns.apart) == {"Asteraceae", "Brassicaceae"}
    assert turns.apart["Asteraceae"] == turns.index  # two families: each against the other


def test_plants_of_different_times_are_no_neighbours():
    first = rows("first", "radish", 2.8, 1, 0.1, 0.3, date(2027, 4, 1), "sown")
    second = rows("second", "lettuce", 2.8, 1, 0.3, 0.3, date(2027, 7, 1), y=0.05)
    assert mixed(first, second).unlike == 0


def test_only_the_beds_own_plantings_count_and_an_empty_bed_mixes_nothing():
    made = garden(*stripes("cabbage", "lettuce"), beds=(BED, bed("far", 10.0, 0.0, 2.0, 1.0)))
    near, far = (bed_mixing(made, made.layouts[0], b, CROPS) for b in made.layouts[0].beds)
    assert sum(near.ground.values()) == pytest.approx(1.0)
    assert (far.index, far.neighbours, far.ground) == (None, 0, {})
