"""Sequences of varieties along stations, counted by hand."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.mixtures import mixture, shortest
from gardencanvas.garden.pattern import Rows
from tests.garden.makers import row


@pytest.mark.parametrize(
    ("sequence", "expected"),
    [
        ("AB", (("A", "B"), ())),
        ("ABAB", (("A", "B"), ())),
        ("AAB", (("A", "B"), (2, 1))),
        ("BAABBB", (("B", "A"), (2, 1))),
        ("A", (("A",), ())),
        ("", ((), ())),
        ("ABCABD", (("A", "B", "C", "D"), (2, 2, 1, 1))),
    ],
)
def test_a_sequence_in_its_shortest_form(sequence, expected):
    assert mixture(sequence) == expected


@given(st.lists(st.integers(1, 30), min_size=2, max_size=6))
def test_shorter_shares_are_in_the_same_proportion(shares):
    short = shortest(shares) or (1,) * len(shares)
    assert all(a * short[0] == b * shares[0] for a, b in zip(shares, short, strict=True))
    assert np.gcd.reduce(short) == 1


@given(
    sequence=st.lists(st.sampled_from("ABCD"), min_size=1, max_size=12),
    times=st.integers(1, 4),
)
def test_along_whole_repeats_each_variety_has_the_stations_it_has_in_the_sequence(sequence, times):
    varieties, shares = mixture(sequence)
    pattern = Rows(length_m=0.1 * len(sequence) * times, rows=1, spacing_m=0.1, row_spacing_m=0.3)
    planting = row(pattern=pattern, varieties=varieties, shares=shares)
    assert planting.pattern.count == len(sequence) * times
    found = np.bincount(planting.mixed, minlength=len(varieties))
    assert found.tolist() == [sequence.count(v) * times for v in varieties]
