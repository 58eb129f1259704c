"""How fast a bed is filled with as many plants as fit, in gardens of 2,000 and 8,000 plants.

Beside it the garden's full check, the floor that any judging of it has. What the window feels is the longest
step of the search, during which it does nothing else. The processor's time counts. Run with
``pytest tests/bench/test_filling_bench.py --benchmark-enable``.
"""

from datetime import date
from time import process_time

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.checker import Checker, check
from gardencanvas.garden.laid import Spacings
from gardencanvas.garden.planting import Start
from gardencanvas.planner.filling.searching import Filling, fill
from gardencanvas.planner.gaps.survey import Surveyor
from tests.bench.large import large_garden

SIZES = (2000, 8000)
ROOM = Spacings(0.25, 0.30, 0.274)
START = Start(kind="raised", on=date(2027, 8, 1))


@pytest.fixture(scope="module", params=SIZES)
def asked(request):
    """A checked and surveyed garden."""
    some = large_garden(request.param)
    survey, checker = Surveyor(catalogue()).survey(some, "l1"), Checker(catalogue())
    checker.update(some, "l1")
    return survey, checker


def filled(survey, checker):
    """The answer, and the longest step towards it in seconds."""
    search = fill(survey, checker, Filling(survey.layout.beds[0], None, "lettuce", None, ROOM, START))
    longest, last = 0.0, process_time()
    while True:
        try:
            next(search)
        except StopIteration as end:
            return end.value, max(longest, process_time() - last)
        now = process_time()
        longest, last = max(longest, now - last), now


@pytest.mark.benchmark(timer=process_time)
def test_fill(benchmark, asked):
    _, longest = benchmark.pedantic(lambda: filled(*asked), rounds=5, warmup_rounds=1)
    benchmark.extra_info["longest_step_ms"] = round(1000 * longest, 1)


@pytest.mark.benchmark(timer=process_time)
def test_floor_full_check(benchmark, asked):
    survey, _ = asked
    benchmark.pedantic(lambda: check(survey.garden, "l1", survey.catalogue), rounds=5, warmup_rounds=1)
