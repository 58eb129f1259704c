"""The newest value is on disk soon after a change, whatever the disk says meanwhile."""

import threading
import time

import pytest

from gardencanvas.files.errors import CannotWrite
from gardencanvas.files.keeping.autosave import WAIT_S, Autosave, State


class Disk:
    """Takes values like a journal does, and can be full."""

    def __init__(self):
        self.written, self.told, self.full, self.gate = [], [], False, threading.Event()
        self.gate.set()

    def write(self, value):
        self.gate.wait(5)
        if self.full:
            raise CannotWrite("No space left on device.")
        self.written.append(value)

    def clear(self):
        self.written.append(None)

    def autosave(self, wait_s=0.01):
        return Autosave(self.write, self.clear, self.told.append, wait_s)


@pytest.fixture
def disk():
    return Disk()


def test_of_many_changes_in_a_row_the_newest_is_written_once(disk):
    saving = disk.autosave(wait_s=30)
    for n in range(1000):
        saving.keep(n)
    assert saving.flush()
    assert disk.written == [999]
    assert saving.stop()


def test_changes_without_end_do_not_put_off_the_writing(disk):
    """The wait counts from the first change, not from the last."""
    saving = disk.autosave(wait_s=0.05)
    until = time.monotonic() + 1.0
    n = 0
    while time.monotonic() < until and len(disk.written) < 3:
        n += 1
        saving.keep(n)
        time.sleep(0.002)
    assert len(disk.written) >= 3
    saving.stop()
    assert disk.written[-1] == n


def test_the_wait_leaves_most_of_the_two_seconds_to_the_disk():
    assert WAIT_S <= 1.0


def test_giving_a_value_does_not_wait_for_a_slow_disk(disk):
    disk.gate.clear()
    saving = disk.autosave(wait_s=0.0)
    saving.keep(1)
    for n in range(2, 200):
        saving.keep(n)  # would hang here if it waited
    assert disk.written == []
    disk.gate.set()
    assert saving.stop()
    assert disk.written[-1] == 199


def test_a_full_disk_is_told_and_tried_again_with_the_newest(disk):
    disk.full = True
    saving = disk.autosave()
    saving.keep(1)
    assert not saving.flush(timeout_s=5)
    assert [s.why for s in disk.told if s.state is State.FAILED] == ["No space left on device."]
    disk.full = False
    saving.keep(2)
    assert saving.flush(timeout_s=5)
    assert disk.written == [2]
    assert disk.told[-1].state is State.KEPT
    saving.stop()


def test_ending_on_a_full_disk_says_so_and_ends(disk):
    disk.full = True
    saving = disk.autosave(wait_s=30)
    saving.keep(1)
    assert not saving.stop(timeout_s=5)
    assert not [t for t in threading.enumerate() if t.name == "autosave"]


def test_nothing_to_keep_removes_what_was_written_in_its_turn(disk):
    saving = disk.autosave()
    saving.keep(1)
    saving.flush()
    saving.keep(None)
    assert saving.stop()
    assert disk.written == [1, None]


def test_it_can_begin_again_after_it_ended(disk):
    saving = disk.autosave()
    saving.keep(1)
    saving.stop()
    saving.keep(2)
    assert saving.stop()
    assert disk.written == [1, 2]


def test_what_nobody_foresaw_is_told_and_does_not_end_autosaving(disk, monkeypatch):
    seen = []
    monkeypatch.setattr(threading, "excepthook", seen.append)
    saving = disk.autosave()
    saving.keep("x")
    saving.flush()

    def broken(_value):
        raise ZeroDivisionError("seventeen")

    saving._write, sound = broken, saving._write
    saving.keep("y")
    saving.flush(timeout_s=2)
    assert any(s.state is State.FAILED and "seventeen" in s.why for s in disk.told)
    saving._write = sound
    saving.keep("z")
    assert saving.stop(timeout_s=5)
    assert disk.written[-1] == "z"
    assert [s.exc_type for s in seen] == [ZeroDivisionError], "the one place for faults hears of it"
