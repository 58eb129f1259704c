"""How fast what is known of two crops is found, and how fast all crops are completed."""

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.interactions import between
from tests.bench.test_growth_bench import within

CROPS = catalogue()


def test_between(benchmark):
    assert benchmark(between, CROPS.crop("carrot"), CROPS.crop("onion"))
    within(benchmark, 0.0005)


def test_complete_all(benchmark):
    """Every crop completed for the first time: what a first look at the whole seed tin costs."""

    def fresh():
        return (CROPS.with_own([CROPS.crop("leek")], ()),), {}

    benchmark.pedantic(lambda c: [c.complete(crop) for crop in c.crops], setup=fresh, rounds=5)
    within(benchmark, 0.050)
