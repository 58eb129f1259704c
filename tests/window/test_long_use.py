"""A day of work in one sitting: twenty thousand edits, undos and redos with autosave on."""

import gc
import random
import resource

import pytest
from PySide6.QtWidgets import QApplication

from gardencanvas.app.history import WHOLE
from gardencanvas.app.safekeeping import Safekeeping
from gardencanvas.app.session import Session
from gardencanvas.files.keeping.autosave import State
from gardencanvas.files.keeping.journals import read_journal
from gardencanvas.garden import edits
from gardencanvas.garden.garden import Garden
from tests.garden.makers import bed, garden, row

SEED, ACTIONS = 20270302, 20_000
MOST_GROWTH_KB = 150_000
START = garden(
    *[row(f"p-{n}", x=0.2 * (n % 5), y=0.3 * n) for n in range(20)],
    beds=[bed(f"bed-{n}", y=1.5 * n) for n in range(3)],
)


def _edit(draw, number):
    """An edit as a pure function of a garden, which it leaves as it is where there is nothing to do."""
    kind, which = draw.randrange(6), draw.randrange(40)
    x, y = draw.uniform(-1, 1), draw.uniform(-1, 1)

    def do(value):
        plantings = value.layouts[0].plantings
        if kind == 0 and len(plantings) < 40:
            return edits.add(value, "l1", [row(f"n-{number}", crop="radish", x=x, y=y)])
        if kind == 1 and len(plantings) > 10:
            return edits.remove(value, "l1", [plantings[which % len(plantings)].id])
        if kind == 2:
            return edits.change(value, "l1", plantings[which % len(plantings)].id, note=f"note {number}")
        if kind == 3:
            return edits.shift(value, "l1", [f"bed-{which % 3}"], x / 10, y / 10)
        return edits.shift(value, "l1", [plantings[which % len(plantings)].id], x, y)

    return do


def _within(value):
    """Whether nothing has wandered off the plan."""
    corners = [abs(c) for b in value.layouts[0].beds for p in b.outline for c in p]
    corners += [abs(c) for p in value.layouts[0].plantings for c in p.pattern.origin]
    return max(corners) < 900


@pytest.fixture
def own_folder(tmp_path, monkeypatch):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))


def _gardens() -> int:
    """How many gardens are alive."""
    return sum(isinstance(thing, Garden) for thing in gc.get_objects())


def test_twenty_thousand_actions_equal_their_replay_in_bounded_memory(qapp, own_folder, tmp_path):
    gc.collect()
    elsewhere = _gardens()  # those that other tests hold
    draw = random.Random(SEED)
    session = Session(START, tmp_path / "g.gardencanvas")
    keeping = Safekeeping(session, session)
    keeping.begin()
    heard, states = [0], []
    session.changed.connect(lambda *_: heard.__setitem__(0, heard[0] + 1))
    keeping.stood.connect(lambda standing: states.append(standing.state))
    done, undone = [], []  # edits by what became of them, oldest first
    middle = 0
    for number in range(ACTIONS):
        kind = draw.random()
        if kind < 0.2:
            session.history.undo()
            if done:
                undone.append(done.pop())
        elif kind < 0.35:
            session.history.redo()
            if undone:
                done.append(undone.pop())
        else:
            edit = _edit(draw, number)
            if session.propose(edit(session.garden), f"Edit {number}"):
                done.append(edit)
                undone.clear()
        if number % 500 == 0:
            QApplication.processEvents()
        if number == ACTIONS // 4:
            gc.collect()
            middle = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    replayed = START
    for edit in done:
        replayed = edit(replayed)
    assert session.garden == replayed
    assert _within(replayed)
    assert session.history.at == len(done) > 10 * WHOLE, "far more steps than are kept whole"
    assert heard[0] > ACTIONS // 2
    # what was worked on last is on disk, and was all along
    assert keeping.keep_now() == ""
    assert read_journal(keeping._sitting.journal) == replayed
    QApplication.processEvents()
    assert State.KEPT in states
    assert State.FAILED not in states
    # memory
    gc.collect()
    assert _gardens() - elsewhere <= 2 * WHOLE + 20
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - middle < MOST_GROWTH_KB
    keeping.finish()
