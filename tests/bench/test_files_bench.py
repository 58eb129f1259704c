"""Opening and saving 20,000 plants; each as a ratio to plain JSON of the same file."""

import json
import statistics
import time

import pytest

from gardencanvas.files import garden_from_bytes, garden_to_bytes, open_garden, save_garden
from tests.bench.large import large_garden

PLANTS = 20_000


@pytest.fixture(scope="module")
def value():
    return large_garden(PLANTS)


@pytest.fixture(scope="module")
def floor_s(value):
    """Seconds that the standard library's JSON needs to read and write the same document."""
    data = garden_to_bytes(value)
    took = []
    for _ in range(5):
        begin = time.perf_counter()
        json.dumps(json.loads(data), indent=1)
        took.append(time.perf_counter() - begin)
    return statistics.median(took)


def _ratio(benchmark, floor_s, what):
    if benchmark.stats is not None:
        benchmark.extra_info["ratio to plain JSON"] = round(benchmark.stats["median"] / floor_s, 2)
        took = benchmark.stats["median"]
        print(f"\n{what}: {took * 1e3:.1f} ms, plain JSON {floor_s * 1e3:.1f} ms, ×{took / floor_s:.2f}")


def test_open(benchmark, value, floor_s, tmp_path):
    path = tmp_path / "large.gardencanvas"
    save_garden(value, path)
    opened = benchmark(open_garden, path)
    assert opened == value
    _ratio(benchmark, floor_s, f"open {PLANTS} plants")


def test_save(benchmark, value, floor_s, tmp_path):
    path = tmp_path / "large.gardencanvas"
    benchmark(save_garden, value, path)
    assert garden_from_bytes(path.read_bytes(), "large") == value
    _ratio(benchmark, floor_s, f"save {PLANTS} plants")
