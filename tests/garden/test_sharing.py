"""Several crops on the places of one pattern."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.garden.edits import change, remove
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Block, Drift, RingPattern, Rows, Spots
from gardencanvas.garden.sharing import share, sharers
from tests.garden.makers import garden, row

RING = RingPattern(origin=(1.0, 0.6), radius_m=0.5, spacing_m=0.1)
PATTERNS = (
    RING,
    Rows(length_m=3.0, rows=2, spacing_m=0.15, row_spacing_m=0.3, angle_deg=20.0),
    Block(length_m=1.0, width_m=1.0, spacing_m=0.2, staggered=True),
    Drift(outline=((0, 0), (2, 0), (2, 1), (0, 1)), spacing_m=0.2, plants=20, seed=5),
    Spots(points=tuple((0.1 * i, 0.0) for i in range(9))),
)
NAMES = "abcde"


def shared(pattern, times):
    value = garden(row("a", "leek", pattern=pattern))
    for name in NAMES[1:times]:
        value = share(value, "l1", "a", row(name, "beetroot"))
    return value


@given(pattern=st.sampled_from(PATTERNS), times=st.integers(2, 5))
def test_they_stand_in_turns_on_all_places_and_no_place_twice(pattern, times):
    plantings = shared(pattern, times).layouts[0].plantings
    numbers = np.concatenate([p.pattern.numbers for p in plantings])
    assert sorted(numbers.tolist()) == list(range(pattern.places))
    # the repeating order: place i has the crop of turn i mod n
    whose = np.empty(pattern.places, dtype=int)
    for turn, p in enumerate(plantings):
        whose[p.pattern.numbers] = turn
    assert whose.tolist() == [i % times for i in range(pattern.places)]
    for p in plantings:
        assert np.allclose(p.stations, pattern.all_places[p.pattern.numbers])


def test_a_turn_that_became_free_is_taken_before_a_new_one_is_made():
    value = remove(shared(RING, 3), "l1", ["b"])
    after = share(value, "l1", "a", row("d", "lettuce")).layouts[0]
    assert [(p.id, p.pattern.every, p.pattern.first) for p in sharers(after, after.by_id["a"])] == [
        ("a", 3, 0), ("d", 3, 1), ("c", 3, 2),
    ]  # fmt: skip


def test_who_is_locked_does_not_move_over_and_too_few_places_are_not_shared():
    value = change(shared(RING, 2), "l1", "b", locked=True)
    with pytest.raises(Refusal, match="locked"):
        share(value, "l1", "a", row("c", "lettuce"))
    two = garden(row("a", pattern=Spots(points=((0, 0), (1, 0)))))
    two = share(two, "l1", "a", row("b"))
    with pytest.raises(Refusal):
        share(two, "l1", "a", row("c"))
