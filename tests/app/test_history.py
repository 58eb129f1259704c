"""Undo: any sequence of edits, undone, gives back the very value; the saved mark goes with it."""

from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.app.history import History
from gardencanvas.garden import edits
from tests.garden.makers import garden, row

steps = st.lists(st.sampled_from(["edit", "undo", "redo", "save", "first", "last"]), max_size=40)


@given(steps)
def test_history_behaves_as_a_list_of_values_with_a_place_in_it(sequence):
    """Against the plainest model there is: a list, an index, and the value that was saved last."""
    value = garden(row())
    history = History(value)
    values, at, saved = [value], 0, value
    for number, step in enumerate(sequence):
        if step == "edit":
            value = edits.shift(values[at], "l1", ["p-1"], 0.001 * (number + 1), 0.0)
            del values[at + 1 :]
            values.append(value)
            at += 1
            history.push(value, f"step {number}")
        elif step == "undo":
            at = max(at - 1, 0)
            history.undo()
        elif step == "redo":
            at = min(at + 1, len(values) - 1)
            history.redo()
        elif step in ("first", "last"):
            at = 0 if step == "first" else len(values) - 1
            history.go_to(at)
        else:
            saved = values[at]
            history.set_clean()
        assert history.garden is values[at]
        assert history.count() == len(history.steps) == len(values) - 1
        assert history.at == at
        assert (history.undo_text is None) == (at == 0)
        assert (history.redo_text is None) == (at == len(values) - 1)
        assert history.is_clean() == (values[at] is saved)


def test_signals_come_once_for_a_step_and_only_when_something_changed():
    history = History(garden(row()))
    moved, clean = [], []
    history.moved.connect(lambda: moved.append(history.garden))
    history.clean_changed.connect(clean.append)
    history.undo()
    assert moved == []
    history.push(garden(row("b")), "Add")
    history.push(garden(row("c")), "Add")
    history.undo()
    history.undo()
    assert len(moved) == 4
    assert clean == [False, True]
