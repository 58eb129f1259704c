"""Kills programs at random moments of saving and autosaving, and looks what is left: prints it as JSON.

A program of its own, without pytest and Qt, so that it may fork: a forked child needs no start of its own and
is working within a millisecond.

    python -m tests.files.killing FOLDER KILLS SEED
"""

import json
import os
import random
import select
import signal
import sys
import time
from datetime import UTC, datetime
from pathlib import Path

from gardencanvas.files import open_garden, save_garden, writing
from gardencanvas.files.keeping.autosave import WAIT_S, Autosave
from gardencanvas.files.keeping.journals import Head, write_journal
from gardencanvas.files.keeping.recovery import claimed, left_over
from gardencanvas.files.keeping.sittings import Sitting
from gardencanvas.files.keeping.slices import Slices
from gardencanvas.garden.edits import rebuilt
from tests.garden.makers import garden, row

BASE = garden(*[row(f"p-{n}", y=0.3 * n) for n in range(12)])
SLOW, SLOW_S = 8, 3.5  # that many at once with the real waiting time, for that long at most


def numbered(n):
    """The garden after edit n."""
    return rebuilt(BASE, name=f"edit {n}")


def number_of(value):
    return int(value.name.removeprefix("edit "))


def work_on(path, work, out, first, pace_s, wait_s, save_every):
    """What a window does, without the window: edit, autosave, save; each is announced once it is done."""

    def say(*words):
        os.write(out, (" ".join(map(str, words)) + "\n").encode())

    sitting, slices = Sitting(path, work), Slices()
    if sitting.claim() is not None:
        say("held")
        return

    def write(n):
        head = Head(path, f"edit {n}", None, datetime.now(UTC))
        write_journal(sitting.journal, head, slices.bytes_of(numbered(n)))
        say("kept", n)

    autosave = Autosave(write, sitting.clear, lambda _standing: None, wait_s)
    n = first
    while True:
        n += 1
        autosave.keep(n)
        say("edit", n, time.monotonic())
        if save_every and n % save_every == 0:
            say("saving", n)
            save_garden(numbered(n), path)
            say("saved", n)
            autosave.keep(None)
        time.sleep(pace_s)


class Child:
    """One such program, to be killed."""

    def __init__(self, path, work, first, *, pace_s, wait_s, save_every):
        self.path, self.work = path, work
        self._in, out = os.pipe()
        self.pid = os.fork()
        if self.pid == 0:
            try:
                work_on(path, work, out, first, pace_s, wait_s, save_every)
            finally:
                os._exit(0)
        os.close(out)

    def kill(self):
        """End it at once; what it had announced, line by line, and the moment of its death."""
        os.kill(self.pid, signal.SIGKILL)
        died = time.monotonic()
        os.waitpid(self.pid, 0)
        said = b""
        while select.select([self._in], [], [], 0)[0] and (part := os.read(self._in, 1 << 16)):
            said += part
        os.close(self._in)
        return [line.split() for line in said.decode().split("\n")[:-1]], died


def last(said, word, default):
    return max((int(line[1]) for line in said if line[0] == word), default=default)


def looked(child, first, said, died):
    """Complaints about what a killed program left, and the edit one would go on from."""
    complaints = []
    if ["held"] in said:
        complaints.append("a dead window's claim was not seen to be stale")
    newest, saved = last(said, "edit", first), last(said, "saved", first)
    in_file = number_of(open_garden(child.path))  # raises if it is not whole
    if not saved <= in_file <= max(newest, last(said, "saving", first)):
        complaints.append(f"the file holds edit {in_file}, edit {saved} was saved, {newest} the last")
    best = in_file
    for left in left_over(child.work):
        hand = claimed(left)
        if hand is None:
            complaints.append("a dead window still holds its journal")
            continue
        best = max(best, number_of(hand.garden()))  # raises if it is not whole
        hand.done()
    kept = last(said, "kept", first)
    if best < kept:
        complaints.append(f"edit {kept} was kept, {best} is left")
    promised = max((int(x[1]) for x in said if x[0] == "edit" and float(x[2]) <= died - 2.0), default=first)
    if best < promised:
        complaints.append(f"edit {promised} was made two seconds before the end, {best} is left")
    return complaints, best, newest


def fast(folder, kills, draw):
    """Many short lives with a short waiting time, so that every kind of moment is met."""
    path, work = folder / "g.gardencanvas", folder / "work"
    save_garden(numbered(0), path)
    complaints, best, edits, lost = [], 0, 0, 0
    for _ in range(kills):
        first = best
        child = Child(path, work, first, pace_s=0.0003, wait_s=0.002, save_every=draw.choice([3, 7, 50]))
        time.sleep(draw.uniform(0.0, 0.03))
        said, died = child.kill()
        found, best, newest = looked(child, first, said, died)
        save_garden(numbered(best), path)
        complaints += found
        edits += newest - first
        lost += newest - best
    parts = len(list(folder.glob("**/*.part")))
    writing.STALE_S = -1.0
    save_garden(numbered(0), path)
    left = [p.name for p in folder.iterdir() if p.name not in ("g.gardencanvas", "work")]
    if left:
        complaints.append(f"left beside the file: {left}")
    return {"complaints": complaints, "edits": edits, "lost": lost, "parts": parts}


def slow(folder, draw):
    """Some long lives at once with the real waiting time."""
    children = []
    for k in range(SLOW):
        own = folder / str(k)
        own.mkdir(parents=True)
        save_garden(numbered(0), own / "g.gardencanvas")
        child = Child(own / "g.gardencanvas", own / "work", 0, pace_s=0.02, wait_s=WAIT_S, save_every=0)
        children.append((draw.uniform(2.2, SLOW_S), child))
    began, complaints, late = time.monotonic(), [], []
    for until, child in sorted(children, key=lambda c: c[0]):
        time.sleep(max(0.0, began + until - time.monotonic()))
        said, died = child.kill()
        found, best, newest = looked(child, 0, said, died)
        complaints += found
        late.append(newest - best)
    return {"complaints": complaints, "edits behind": late}


def main(folder, kills, seed):
    draw = random.Random(seed)
    print(json.dumps({"fast": fast(folder / "fast", kills, draw), "slow": slow(folder / "slow", draw)}))  # noqa: T201


if __name__ == "__main__":
    where = Path(sys.argv[1])
    (where / "fast").mkdir(parents=True)
    main(where, int(sys.argv[2]), int(sys.argv[3]))
