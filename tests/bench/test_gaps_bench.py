"""How fast is found what else fits.

Goals on two slow cores, in a garden of 2,000 plants with all crops: by place 100 ms, by crop 300 ms, by date
1 s. Beside each: the garden's full check, the floor that any judging of it has. The processor's time counts.
Run with ``pytest tests/bench/test_gaps_bench.py --benchmark-enable``.
"""

from datetime import date
from time import process_time

import pytest

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.checker import Checker, check
from gardencanvas.planner.gaps.asking import Question, by_crop, by_date, by_place, finished
from gardencanvas.planner.gaps.open_ground import gaps, unused
from gardencanvas.planner.gaps.survey import Surveyor
from tests.bench.large import large_garden

SINCE = date(2027, 6, 10)
SIZES = (2000, 8000)


@pytest.fixture(scope="module", params=SIZES)
def asked(request):
    """A checked and surveyed garden."""
    some = large_garden(request.param)
    survey, checker = Surveyor(catalogue()).survey(some, "l1"), Checker(catalogue())
    checker.update(some, "l1")
    return request.param, survey, checker


QUESTIONS = {
    "place": (lambda s, c: by_place(s, c, (4.0, 0.7), Question(SINCE)), 0.100),
    "crop": (lambda s, c: by_crop(s, c, "lettuce", Question(SINCE)), 0.300),
    "date": (lambda s, c: by_date(s, c, Question(SINCE)), 1.0),
}


@pytest.mark.benchmark(timer=process_time)
@pytest.mark.parametrize("question", QUESTIONS)
def test_ask(benchmark, asked, question):
    plants, survey, checker = asked
    ask, goal = QUESTIONS[question]
    answer = benchmark.pedantic(lambda: finished(ask(survey, checker)), rounds=5, warmup_rounds=1)
    assert answer.proposals
    benchmark.extra_info["plants"] = plants
    if benchmark.stats is not None and plants == SIZES[0]:
        assert benchmark.stats.stats.min < goal


@pytest.mark.benchmark(timer=process_time)
def test_gaps_of_a_date_and_the_years_figure(benchmark, asked):
    _, survey, _ = asked
    benchmark.pedantic(lambda: (gaps(survey, SINCE), unused(survey)), rounds=5, warmup_rounds=1)


@pytest.mark.benchmark(timer=process_time)
def test_floor_full_check(benchmark, asked):
    _, survey, _ = asked
    benchmark.pedantic(lambda: check(survey.garden, "l1"), rounds=3, warmup_rounds=1)
