"""How fast the catalogue is at hand: goal under 60 ms where its kept copy is sound.

Cold: no kept copy, all text is parsed and the copy written; this happens at the first start, and after a
change of the data or the program. Time of the processor is measured, so that other work on the machine does
not count; on a quiet one the clock shows about a fifth more.
"""

import shutil
import time

import pytest

from gardencanvas.crops.catalogue import load
from gardencanvas.resources_folder import resources
from tests.bench.test_growth_bench import within

pytestmark = pytest.mark.benchmark(timer=time.process_time)


def test_load_warm(benchmark, tmp_path):
    load(resources(), tmp_path)
    loaded = benchmark(load, resources(), tmp_path)
    assert len(loaded.crops) >= 150
    within(benchmark, 0.060)


def test_load_cold(benchmark, tmp_path):
    def forget():
        shutil.rmtree(tmp_path / "kept", ignore_errors=True)

    loaded = benchmark.pedantic(load, (resources(), tmp_path / "kept"), setup=forget, rounds=5)
    assert len(loaded.crops) >= 150
    within(benchmark, 1.0)
