"""How fast two layouts are compared, against checking both.

Goal on two slow cores: switching to and comparing two layouts of 2,000 plants, nothing known of either, under
300 ms; after an edit of one, half of that. Run with
``pytest tests/bench/test_comparison_bench.py --benchmark-enable -s`` to see the ratios to the floor.
"""

import pytest

from gardencanvas.fit import check
from gardencanvas.garden.edits import rebuilt, shift
from gardencanvas.garden.garden import Garden
from gardencanvas.measures.comparison import Comparison, compared
from gardencanvas.measures.reckoned.measuring import Measuring
from tests.bench.large import large_garden
from tests.bench.test_fit_bench import dense_garden, quickest, told

MOST_RATIO = 12.0  # times the check of both, with room for a busy machine


def two_layouts(garden: Garden) -> Garden:
    """The garden with a second layout, one planting of it moved."""
    (layout,) = garden.layouts
    both = rebuilt(garden, layouts=(layout, rebuilt(layout, id="l2", name="Other")))
    return shift(both, "l2", [layout.plantings[0].id], 0.05, 0.0)


def whole(garden: Garden, measuring: Measuring | None = None) -> Comparison:
    """Both layouts checked, measured and compared."""
    measuring = measuring or Measuring()
    return compared(measuring.measured(garden, "l1"), measuring.measured(garden, "l2"))


def both_checked(garden: Garden) -> None:
    for layout in garden.layouts:
        check(garden, layout.id)


@pytest.mark.parametrize("make", [large_garden, dense_garden])
def test_comparison_of_two_layouts(benchmark, make):
    garden = two_layouts(make(2_000))
    result = benchmark.pedantic(whole, (garden,), rounds=5, warmup_rounds=1)
    assert len(result.measures) >= 20
    if benchmark.enabled:
        took, floor = benchmark.stats.stats.min, quickest(lambda: both_checked(garden))
        told(f"comparison, two layouts of {make.__name__}", took, floor)
        assert took < MOST_RATIO * floor


def test_comparison_after_an_edit_of_one(benchmark):
    garden = two_layouts(large_garden(2_000))
    measuring = Measuring()
    whole(garden, measuring)
    edited = [shift(garden, "l2", ["p-1"], 0.01 * k, 0.0) for k in range(1, 8)]
    steps = iter(edited)
    result = benchmark.pedantic(lambda: whole(next(steps), measuring), rounds=5, warmup_rounds=1)
    assert result.a is not None
    if benchmark.enabled:
        floor = quickest(lambda: both_checked(garden))
        told("comparison after an edit of one", benchmark.stats.stats.min, floor)
        assert benchmark.stats.stats.min < MOST_RATIO * floor
