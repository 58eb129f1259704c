"""Five thousand broken or hostile files open or are refused with one sentence, in bounded memory and time."""

import json
import random
import resource
import signal
import tracemalloc
from datetime import date
from pathlib import Path

import pytest

from gardencanvas.files import FileRefused, bounds, garden_from_bytes, garden_to_bytes
from gardencanvas.fit import check
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Cover, Fixture, LineSupport, RingSupport
from gardencanvas.garden.pattern import Block, Drift, Edging, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting, Start
from tests.files.mutating import mutated
from tests.garden.makers import bed, garden, row
from tests.garden.pictures import backdrop
from tests.strategies import VARIETIES

SEED = 20270301
FILES = 5000
HANG_S = 20  # a guard: a sound refusal takes milliseconds
MOST_GROWTH_KB = 400_000

SQUARE = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
PATTERNS = (
    Rows(length_m=2.0, rows=3, spacing_m=0.2, row_spacing_m=0.3, left_out=(1,), every=2),
    Strip(length_m=1.5, width_m=0.6, spacing_m=0.1, across_m=0.2),
    Block(length_m=1.0, width_m=1.0, spacing_m=0.25, staggered=True),
    RingPattern(radius_m=0.5, spacing_m=0.2),
    Edging(line=SQUARE, closed=True, spacing_m=0.15),
    Drift(outline=SQUARE, spacing_m=0.2, plants=9, seed=3),
    Spots(points=((0.1, 0.1), (0.5, 0.5))),
)


def _every_kind():
    """A small garden that holds one of every kind of thing."""
    plantings = [
        Planting(id=f"p-{n}", crop=crop, pattern=pattern, start=Start(kind="sown", on=date(2027, 5, 1)))
        for n, (crop, pattern) in enumerate(
            zip(("leek", "carrot", "onion", "lettuce", "chives", "radish", "cabbage"), PATTERNS, strict=True)
        )
    ]
    value = garden(
        *plantings,
        row("p-mixed", crop="cabbage", y=0.6, varieties=("tall", "small"), shares=(2, 1)),
        beds=[bed(holes=(((1.0, 0.5), (1.2, 0.5), (1.2, 0.7)),), soil_depth_m=0.4)],
        fixtures=[Fixture(id="f", name="wall", kind="wall", outline=SQUARE, height_m=2.0)],
        varieties=VARIETIES,
        backdrop=backdrop(4, 3, angle_deg=5.0),
    )
    document = json.loads(garden_to_bytes(value))
    document["layouts"][0]["supports"] = [
        RingSupport(id="s1", kind="stake", name="s", centre=(1, 1), radius_m=0.1, height_m=2).model_dump(),
        LineSupport(id="s2", kind="net", name="n", begin=(0, 0), end=(1, 0), height_m=1.8).model_dump(),
    ]
    cover = Cover(id="c", kind="fleece", name="c", outline=SQUARE, height_m=0.5, first=date(2027, 4, 1))
    document["layouts"][0]["covers"] = [json.loads(cover.model_dump_json())]
    second = {**document["layouts"][0], "id": "l2", "name": "Second"}
    document["layouts"].append({**second, "plantings": second["plantings"][:2]})
    return document


SAMPLE = Path(__file__).parent / "samples" / "format-1.gardencanvas"


def test_the_document_that_is_mutated_is_sound():
    assert isinstance(garden_from_bytes(json.dumps(_every_kind()).encode(), "g"), Garden)


@pytest.fixture
def no_hang():
    """A file that hangs fails the test instead of stopping it."""

    def hung(*_):
        raise TimeoutError(f"one file took more than {HANG_S} s")

    before = signal.signal(signal.SIGALRM, hung)
    yield lambda: signal.setitimer(signal.ITIMER_REAL, HANG_S)
    signal.setitimer(signal.ITIMER_REAL, 0)
    signal.signal(signal.SIGALRM, before)


def test_five_thousand_mutated_files_open_or_are_refused_in_a_sentence(no_hang):
    draw = random.Random(SEED)
    every_kind, sample = json.dumps(_every_kind()), SAMPLE.read_bytes()
    at_first = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    opened, refused = [], set()
    for n in range(FILES):
        data = mutated(draw, sample if n % 100 == 0 else every_kind)
        no_hang()
        try:
            opened.append(garden_from_bytes(data, "g.gardencanvas"))
        except FileRefused as error:
            said = str(error)
            assert said.startswith("g.gardencanvas "), said
            assert said.endswith("."), said
            assert "\n" not in said
            assert len(said) < 500
            refused.add(said)
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - at_first < MOST_GROWTH_KB
    # the mutations reach far: many a file is still sound, and there are many different faults
    assert len(opened) > FILES // 50
    assert len(refused) > 200
    for value in opened[::25]:
        no_hang()
        assert garden_from_bytes(garden_to_bytes(value), "again") == value
        check(value, value.layouts[0].id)


# garden bombs: small files that ask for much


def _bomb(pattern):
    document = json.loads(garden_to_bytes(garden(row())))
    document["layouts"][0]["plantings"][0]["pattern"] = pattern
    return document


BILLION = {
    "rows": {"kind": "rows", "length_m": 1000, "rows": 1000, "spacing_m": 0.005, "row_spacing_m": 0.005},
    "rows beyond": {"kind": "rows", "length_m": 1e9, "rows": 10**9, "spacing_m": 1e-9, "row_spacing_m": 1e-9},
    "strip": {"kind": "strip", "length_m": 1000, "width_m": 1000, "spacing_m": 0.005, "across_m": 0.005},
    "block": {"kind": "block", "length_m": 1000, "width_m": 1000, "spacing_m": 0.005, "staggered": True},
    "ring": {"kind": "ring", "radius_m": 1000, "spacing_m": 0.005},
    "edging": {
        "kind": "edging",
        "line": [[1000 * (-1) ** n, n / 10 - 100] for n in range(2000)],
        "spacing_m": 0.005,
    },
    "drift": {
        "kind": "drift",
        "outline": [[0, 0], [1000, 0], [1000, 1000]],
        "spacing_m": 0.005,
        "plants": 10**9,
    },
    "every 20th": {"kind": "block", "length_m": 1000, "width_m": 1000, "spacing_m": 0.005, "every": 20},
}


@pytest.mark.parametrize("pattern", BILLION.values(), ids=BILLION.keys())
def test_a_pattern_of_a_thousand_million_stations_is_refused_before_it_is_expanded(pattern, no_hang):
    data = json.dumps(_bomb(pattern)).encode()
    garden_from_bytes(garden_to_bytes(garden(row())), "warm")  # what is loaded once is not counted
    no_hang()
    tracemalloc.start()
    try:
        with pytest.raises(FileRefused):
            garden_from_bytes(data, "g")
        most = tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()
    # one station as a pair of doubles is 16 bytes: a billion of them would be 16 GB, a million 16 MB
    assert most < 4_000_000


def _many(pattern, number):
    document = _bomb(pattern)
    (planting,) = document["layouts"][0]["plantings"]
    document["layouts"][0]["plantings"] = [{**planting, "id": f"p-{n}"} for n in range(number)]
    return json.dumps(document).encode()


def test_many_patterns_that_are_each_allowed_are_refused_together(no_hang):
    """Ten thousand blocks of 20,000 stations would be 200 million."""
    no_hang()
    block = {"kind": "block", "length_m": 20, "width_m": 10, "spacing_m": 0.1}
    with pytest.raises(FileRefused, match="the layout would hold 200,000,000 stations"):
        garden_from_bytes(_many(block, 10_000), "g")


def test_drifts_that_would_be_sought_for_hours_are_refused_unsought(no_hang, monkeypatch):
    monkeypatch.setattr(Drift, "_darts", property(lambda _self: pytest.fail("a drift was expanded")))
    drift = {"kind": "drift", "outline": [[0, 0], [100, 0], [0, 100]], "spacing_m": 50, "plants": 2000}
    no_hang()
    with pytest.raises(FileRefused, match="more than 200,000 plants in drifts"):
        garden_from_bytes(_many(drift, 101), "g")


def test_more_brackets_than_a_garden_can_hold_are_refused_unread(monkeypatch):
    monkeypatch.setattr(json, "loads", lambda *_a, **_k: pytest.fail("it was read"))
    with pytest.raises(FileRefused, match="parts, which no garden does"):
        garden_from_bytes(b"[" + b"[]," * bounds.MAX_PARTS + b"[]]", "g")


def test_the_largest_garden_that_is_allowed_opens(no_hang):
    """20,000 single plantings, the most in a layout: the limits on parts leave room for ten such layouts."""
    single = {"kind": "spots", "points": [[1.0, 2.0]]}
    data = _many(single, 20_000)
    assert (data.count(b"[") + data.count(b"{")) * 10 < bounds.MAX_PARTS
    assert len(garden_from_bytes(data, "g").layouts[0].plantings) == 20_000
