"""Undo without end: far steps are kept by what they changed, and give back the very garden."""

import gc
import tracemalloc
from datetime import timedelta
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gardencanvas.app.history import WHOLE, History
from gardencanvas.files import garden_to_bytes
from gardencanvas.garden import edits, layouts
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.steps import Step, walked
from tests.garden.makers import bed, garden, row

EDITS = 20_000
MOST_BYTES = 8_000  # a step: a planting, its pattern and start twice, and what leads there; see the test


def full(plantings: int = 100, plants: int = 20):
    """A garden of 2,000 plants."""
    rows = [
        row(
            f"p-{n}",
            pattern=Rows(
                origin=(4.0 * (n % 5), 0.4 * (n // 5)),
                length_m=0.15 * plants,
                rows=1,
                spacing_m=0.15,
                row_spacing_m=0.3,
            ),
        )
        for n in range(plantings)
    ]
    return garden(*rows, beds=[bed(f"bed-{n}", y=3.0 * n) for n in range(10)])


def edited(value, number):
    """One of five typical edits: move, note, another date, delete, add."""
    plantings = value.layouts[0].plantings
    chosen = plantings[number * 7 % len(plantings)]
    kind = number % 5
    if kind == 0:
        return edits.shift(value, "l1", [chosen.id], 0.001, 0.0)
    if kind == 1:
        return edits.change(value, "l1", chosen.id, note=f"note {number}")
    if kind == 2:
        later = edits.rebuilt(chosen.start, on=chosen.start.on + timedelta(days=1))
        return edits.change(value, "l1", chosen.id, start=later)
    if kind == 3:
        return edits.remove(value, "l1", [chosen.id])
    return edits.add(value, "l1", [row(f"n-{number}", "radish", y=0.4)])


def test_twenty_thousand_edits_are_all_taken_back_exactly_in_little_memory():
    first = full()
    sought = garden_to_bytes(first)
    history = History(first)
    samples = {}
    gc.collect()
    tracemalloc.start(1)
    for number in range(EDITS):
        value = edited(history.garden, number)
        history.push(value, f"Step {number}")
        assert value.layouts[0].plantings[-1].stations.shape[1] == 2  # as the plan asks for them
        if number == 1000:
            gc.collect()
            early = tracemalloc.get_traced_memory()[0]
            tracemalloc.stop()
        if number % 4000 == 3999:
            samples[number + 1] = garden_to_bytes(value)
        if number == EDITS - 2001:
            gc.collect()
            tracemalloc.start(1)
    gc.collect()
    grown = tracemalloc.get_traced_memory()[0] / 2000
    tracemalloc.stop()
    assert early / 1000 < MOST_BYTES
    assert grown < MOST_BYTES
    assert history.count() == EDITS
    for at, bytes_ in reversed(samples.items()):
        history.go_to(at)
        assert garden_to_bytes(history.garden) == bytes_
    for _ in range(5 * WHOLE):
        history.undo()
    assert history.at == 4000 - 5 * WHOLE
    history.go_to(0)
    assert history.garden == first
    assert garden_to_bytes(history.garden) == sought
    assert history.is_clean()
    history.go_to(EDITS)
    assert garden_to_bytes(history.garden) == samples[EDITS]


def test_what_is_kept_does_not_grow_with_the_garden():
    """The step of one planting is as small in a garden of 2,000 plantings as in one of 20."""

    def bytes_of(plantings):
        history = History(full(plantings, 1))
        for _ in range(5):
            history.push(edits.shift(history.garden, "l1", ["p-1"], 0.001, 0.0), "Move")
        steps = []
        assert history.garden.layouts[0].by_id  # looked up before it is counted
        gc.collect()
        tracemalloc.start(1)
        for number in range(5):
            after = edits.shift(history.garden, "l1", ["p-1"], 0.001 * number, 0.0)
            steps.append(Step.between(history.garden, after))
        del after
        gc.collect()
        held = tracemalloc.get_traced_memory()[0]
        tracemalloc.stop()
        return held

    assert bytes_of(2000) < 1.2 * bytes_of(20)


@given(st.lists(st.tuples(st.integers(0, 6), st.integers(0, 40)), min_size=1, max_size=12), st.data())
@settings(deadline=None)
def test_steps_lead_from_any_garden_to_any_other_and_back(moves, data):
    """Whole layouts that come and go, edits of either of them, of fixtures and of the site included."""
    value = full(6, 3)
    values = [value]
    for kind, number in moves:
        first = value.layouts[number % len(value.layouts)]
        if kind == 5:
            value, _ = layouts.duplicated(value, first.id, f"Copy {number}")
        elif kind == 6:
            value = edits.rebuilt(value, note=str(number), layouts=value.layouts[: 1 + number % 2])
        elif first.id == "l1" and first.plantings:
            value = edited(value, 5 * (100 * len(values) + number) + kind)  # no id twice
        else:
            value = layouts.renamed(value, first.id, f"Name {number}", "")
        values.append(value)
    steps = [Step.between(a, b) for a, b in pairwise(values)]
    a, b = sorted(data.draw(st.tuples(st.integers(0, len(steps)), st.integers(0, len(steps)))))
    assert walked(values[a], steps[a:b], back=False) == values[b]
    assert walked(values[b], reversed(steps[a:b]), back=True) == values[a]


def test_what_is_unchanged_stays_the_same_object():
    before = full(6, 3)
    after = edits.shift(before, "l1", ["p-2"], 0.1, 0.0)
    again = walked(after, [Step.between(before, after)], back=True)
    same = [a is b for a, b in zip(before.layouts[0].plantings, again.layouts[0].plantings, strict=True)]
    assert all(same)
    assert all(a is b for a, b in zip(before.layouts[0].beds, again.layouts[0].beds, strict=True))
    assert again.site is before.site


@pytest.mark.parametrize("far", [WHOLE + 20, 3 * WHOLE])
def test_the_saved_mark_and_new_edits_after_a_long_way_back(far):
    history = History(full(6, 3))
    for number in range(far):
        history.push(edits.change(history.garden, "l1", "p-1", note=f"n {number}"), "Note")
    history.set_clean()
    history.go_to(5)
    assert not history.is_clean()
    history.redo()
    assert history.garden.layouts[0].by_id["p-1"].note == "n 5"
    history.go_to(far)
    assert history.is_clean()
    history.go_to(5)
    history.push(edits.change(history.garden, "l1", "p-1", note="other"), "Note")
    assert (history.count(), history.at, history.is_clean()) == (6, 6, False)
    history.undo()
    assert history.garden.layouts[0].by_id["p-1"].note == "n 4"
