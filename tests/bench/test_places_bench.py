"""How fast the list of places is: loaded under 150 ms when first asked for, any search under 50 ms."""

import pytest

from gardencanvas.resources_folder import resources
from gardencanvas.season.places import Places, places
from tests.bench.test_growth_bench import within


def test_load(benchmark):
    loaded = benchmark(Places, resources() / "places" / "places.npz")
    assert len(loaded) > 30_000
    within(benchmark, 0.150)


@pytest.mark.parametrize(
    "typed",
    ["a", "s", "lond", "Sao Paulo", "amstredam", "saint", "springfield missouri", "aaaaaaaa", "qqqqqq",
     "a a a a a a", "san san united states", "of the and the of a", "москва", "e" * 10_000, "ee " * 3_000],
)  # fmt: skip
def test_search(benchmark, typed):
    known = places()
    assert len(benchmark(known.search, typed)) <= 20
    within(benchmark, 0.050)


def test_climate(benchmark):
    known = places()
    place = known.search("London")[0]
    assert len(benchmark(known.climate_of, place).mean_c) == 12
    within(benchmark, 0.001)


def test_nearest(benchmark):
    assert benchmark(places().nearest, 51.0, 3.7)[1] < 50
    within(benchmark, 0.010)
