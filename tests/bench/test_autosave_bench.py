"""What autosave costs the window: the longest stall of its thread, and edits that must not grow slower."""

import statistics
import threading
import time
from datetime import UTC, datetime

import pytest

from gardencanvas.app.safekeeping import Safekeeping
from gardencanvas.app.session import Session
from gardencanvas.files import garden_to_bytes
from gardencanvas.files.keeping.journals import Head, write_journal
from gardencanvas.files.keeping.slices import Slices
from gardencanvas.garden import edits
from gardencanvas.garden.pattern import Spots
from gardencanvas.garden.picture import MAX_PICTURE_BYTES, Picture, base64_of
from tests.bench.large import large_garden
from tests.garden.makers import garden, row
from tests.garden.pictures import backdrop, png

PLANTS = 20_000


def _single():
    """20,000 plantings of one plant each: the most that a layout may hold, and the most to write."""
    return garden(*[row(f"p-{n}", pattern=Spots(points=((n % 200 / 10, n / 2000),))) for n in range(PLANTS)])


def _with_picture():
    """Sixty rows over a picture as large as one may be."""
    content = png(40, 30)
    content += bytes(MAX_PICTURE_BYTES - len(content))
    under = Picture(kind="png", width_px=40, height_px=30, data=base64_of(content))
    return garden(*[row(f"p-{n}", y=0.3 * n) for n in range(60)], backdrop=backdrop(40, 30, picture=under))


@pytest.fixture(scope="module", params=["in rows", "single", "picture"])
def value(request):
    if request.param == "picture":
        return _with_picture()
    return large_garden(PLANTS) if request.param == "in rows" else _single()


def _stall(work):
    """Longest time in seconds that this thread did not get its turn while another one did some work."""
    done = threading.Event()

    def run():
        work()
        done.set()

    thread = threading.Thread(target=run)
    worst, last = 0.0, time.perf_counter()
    thread.start()
    while not done.is_set():
        time.sleep(0.0005)
        now = time.perf_counter()
        worst, last = max(worst, now - last), now
    thread.join()
    return worst


def test_stall_of_the_window_while_the_journal_is_written(benchmark, value, tmp_path):
    head = Head(None, value.name, None, datetime.now(UTC))
    slices = Slices()

    def journal():
        write_journal(tmp_path / "j.journal", head, slices.bytes_of(value))

    first = _stall(journal)
    floor = _stall(lambda: time.sleep(0.2))
    begin = time.perf_counter()
    garden_to_bytes(value)
    whole = time.perf_counter() - begin
    benchmark(journal)
    if benchmark.stats is not None:
        again = statistics.median(_stall(journal) for _ in range(5))
        benchmark.extra_info["stall ms"] = round(1e3 * again, 1)
        print(
            f"\njournal of {len(value.layouts[0].plantings)} plantings, picture: {bool(value.backdrop)}: "
            f"stall at first {first * 1e3:.1f} ms, then {again * 1e3:.1f} ms; "
            f"with no work {floor * 1e3:.1f} ms; one call for all would hold it for {whole * 1e3:.1f} ms"
        )


def test_edits_do_not_grow_slower(benchmark, qapp, tmp_path, monkeypatch):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    start = garden(*[row(f"p-{n}", x=0.2 * (n % 5), y=0.3 * n) for n in range(60)])
    session = Session(start, tmp_path / "g.gardencanvas")
    keeping = Safekeeping(session, session)
    keeping.begin()
    took = []

    def work(actions=500):
        for n in range(actions):
            begin = time.perf_counter()
            session.propose(edits.shift(session.garden, "l1", [f"p-{n % 60}"], 0.01 * (-1) ** n, 0.0), "Move")
            took.append(time.perf_counter() - begin)

    benchmark.pedantic(work, rounds=10 if benchmark.enabled else 1)
    keeping.finish()
    if benchmark.stats is not None:
        first, last = statistics.median(took[:500]), statistics.median(took[-500:])
        benchmark.extra_info["last to first"] = round(last / first, 2)
        print(f"\nedit {first * 1e6:.0f} µs, after {len(took)} {last * 1e6:.0f} µs: ×{last / first:.2f}")
