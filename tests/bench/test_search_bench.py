"""How fast the seed tin answers a key: goal under 5 ms for the whole catalogue, whatever is typed."""

import pytest

from gardencanvas.crops.catalogue import catalogue, load
from gardencanvas.crops.search import Wanted, search
from gardencanvas.resources_folder import resources
from tests.bench.test_growth_bench import within

TYPED = {
    "nothing": "",
    "a letter": "c",
    "a name": "carrot",
    "a part": "rro",
    "another language": "möhre",
    "a slip": "karrot",
    "two slips in a long word": "caulifolwre",
    "no such crop": "xyzzyplugh",
    "many words": "ab cd ef gh ij kl mn op qr st uv wx yz ab cd ef gh ij",
    "many slips": "karot lettuz tomatu onnion pepperr radisch spinnach parsnep",
    "10,000 letters": "abcdefghij" * 1000,
}


@pytest.mark.parametrize("typed", TYPED.values(), ids=TYPED)
def test_search(benchmark, typed):
    crops = catalogue()
    search(crops, "warm")
    benchmark(search, crops, typed, Wanted(water="medium"))
    within(benchmark, 0.005)


def test_first_search_of_a_catalogue(benchmark, tmp_path):
    """The words of all names are gathered once: goal under 50 ms."""
    benchmark.pedantic(search, setup=lambda: ((load(resources(), tmp_path), "carrot"), {}), rounds=5)
    within(benchmark, 0.050)
