"""Single stations left out, put back and moved; places shared by two crops; varieties mixed by share."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.edits import made, rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Block, RingPattern, Rows, Spots
from gardencanvas.garden.stations import (
    kept_stations,
    nearest_station,
    with_all_places,
    with_station_at,
    without_stations,
)
from tests.garden.makers import row
from tests.strategies import patterns


@given(patterns(), st.data())
def test_leaving_out_a_station_leaves_all_others_where_they_were(pattern, data):
    planting = row(pattern=pattern)
    if pattern.count < 2:
        with pytest.raises(Refusal):
            without_stations(planting, range(pattern.count))
        return
    gone = data.draw(st.sets(st.integers(0, pattern.count - 1), min_size=1, max_size=pattern.count - 1))
    left = without_stations(planting, gone)
    assert left.pattern.count == pattern.count - len(gone) == len(left.stations)
    kept = [i for i in range(pattern.count) if i not in gone]
    np.testing.assert_allclose(left.stations, planting.stations[kept], atol=1e-9)
    if not isinstance(pattern, Spots):
        np.testing.assert_allclose(with_all_places(left).stations, planting.stations, atol=0)


@given(patterns(), st.data(), st.floats(-3, 3), st.floats(-3, 3))
def test_moving_a_station_puts_it_there_and_no_other(pattern, data, dx, dy):
    planting = row(pattern=pattern)
    station = data.draw(st.integers(0, pattern.count - 1))
    x, y = planting.stations[station]
    moved = with_station_at(planting, station, (float(x + dx), float(y + dy)))
    np.testing.assert_allclose(moved.stations[station], (x + dx, y + dy), atol=2e-6)
    others = np.arange(pattern.count) != station
    np.testing.assert_allclose(moved.stations[others], planting.stations[others], atol=1e-9)


@given(st.integers(2, 5), st.integers(6, 40))
def test_crops_that_share_the_places_of_a_ring_take_each_place_once(kinds, places):
    """Every n-th place from the first, second … on: together the whole ring, apart no place twice."""
    radius = places * 0.1 / (2 * np.pi) + 1e-6
    ring = made(RingPattern, radius_m=radius, spacing_m=0.1)
    parts = [rebuilt(ring, every=kinds, first=k) for k in range(kinds)]
    numbers = np.concatenate([p.numbers for p in parts])
    assert sorted(numbers.tolist()) == list(range(ring.count))
    for part in parts:
        np.testing.assert_array_equal(part.stations, ring.stations[part.numbers])


def test_what_was_left_out_stays_out_when_a_row_grows():
    """Common practice: a gap left for a label or a stake stays where it is when rows are added."""
    before = made(Rows, length_m=2.0, rows=2, spacing_m=0.2, row_spacing_m=0.3, left_out=(3, 12))
    after = kept_stations(before, rebuilt(before, length_m=3.0, rows=3, left_out=()))
    assert after.count == 15 * 3 - 2
    gone = np.array([before.all_places[3], before.all_places[12]])
    for place in gone:
        assert np.hypot(*(after.stations - place).T).min() > 0.1


@given(st.lists(st.integers(1, 100), min_size=2, max_size=5), st.integers(5, 200))
def test_varieties_by_share_are_within_one_of_their_share_of_any_beginning(shares, stations):
    """Every variety has its share of the first n stations to within the number of varieties, for every n."""
    names = tuple(f"v{i}" for i in range(len(shares)))
    pattern = made(Block, length_m=stations * 0.1, width_m=0.1, spacing_m=0.1)
    planting = row(pattern=pattern, varieties=names, shares=tuple(shares))
    mixed = planting.mixed
    assert len(mixed) == stations
    assert set(mixed.tolist()) == set(range(len(shares)))
    want = np.array(shares) / sum(shares)
    so_far = np.cumsum(np.eye(len(shares))[mixed], axis=0)
    ahead = so_far - want * np.arange(1, stations + 1)[:, None]
    assert np.abs(ahead[: stations - len(shares)]).max(initial=0) < len(shares)


def test_nearest_station_is_the_one_clicked():
    planting = row()
    for i, (x, y) in enumerate(planting.stations):
        assert nearest_station(planting, (float(x) + 0.01, float(y) - 0.01)) == i


def test_leaving_out_all_is_refused_in_words():
    planting = row()
    with pytest.raises(Refusal, match="delete the planting instead"):
        without_stations(planting, range(planting.pattern.count))
