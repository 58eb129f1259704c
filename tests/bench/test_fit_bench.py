"""How fast the fit is judged, against finding as many near pairs with shapely's tree.

Goals on two slow cores: a full check of 20,000 plants through the year under 1 s and near linear in their
number; one drag step of 200 plants among 20,000 under 8 ms at the 95th percentile, report included. Run with
``pytest tests/bench/test_fit_bench.py --benchmark-enable -s`` to see the ratios to the floor.
"""

from datetime import date
from time import perf_counter

import numpy as np
import pytest
from shapely import STRtree, points

from gardencanvas.fit import Checker, check
from gardencanvas.garden import edits
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Planting, Start
from tests.garden.makers import bed, site

NEAR_M = 0.3
# crop, spacing in the row, how started, when: of all layers, quick and slow
CROPS = (
    ("leek", 0.15, "raised", date(2027, 5, 10)),
    ("radish", 0.05, "sown", date(2027, 4, 10)),
    ("cabbage", 0.45, "raised", date(2027, 5, 1)),
    ("spinach", 0.1, "sown", date(2027, 4, 1)),
    ("beetroot", 0.1, "sown", date(2027, 5, 1)),
    ("onion", 0.1, "set", date(2027, 4, 1)),
    ("tomato", 0.45, "raised", date(2027, 6, 1)),
    ("kohlrabi", 0.2, "raised", date(2027, 5, 1)),
)


def dense_garden(plants: int) -> Garden:
    """Beds of four double rows that stand in each other's ground and light; some 110 plants in each."""
    beds, plantings, total = [], [], 0
    while total < plants:
        place = len(beds)
        x, y = place % 4 * 14.0, place // 4 * 1.8
        beds.append(bed(f"bed-{place}", x, y, 12.0, 1.2))
        for row in range(4):
            crop, spacing, kind, on = CROPS[(place * 3 + row + 3) % 8]
            pattern = Rows(
                origin=(x, y + 0.3 * row),
                length_m=min(12.0, 66 * spacing),
                rows=2,
                spacing_m=spacing,
                row_spacing_m=0.3,
            )
            start = Start(kind=kind, on=on)
            plantings.append(Planting(id=f"p-{len(plantings)}", crop=crop, pattern=pattern, start=start))
            total += pattern.count
    layout = Layout(id="l1", name="Dense", year=2027, beds=tuple(beds), plantings=tuple(plantings))
    return Garden(name="Dense", site=site(), layouts=(layout,))


def stations(garden: Garden) -> np.ndarray:
    return np.concatenate([p.stations for p in garden.layouts[0].plantings])


def quickest(work, rounds=7) -> float:
    times = []
    for _ in range(rounds):
        begin = perf_counter()
        work()
        times.append(perf_counter() - begin)
    return min(times)


def told(name: str, took: float, floor: float) -> None:
    print(f"\n{name}: {took * 1e3:.2f} ms, floor {floor * 1e3:.2f} ms, ratio {took / floor:.1f}")


@pytest.mark.parametrize("plants", [2_000, 20_000, 40_000, 80_000])
def test_full_check(benchmark, plants):
    garden = dense_garden(plants)
    xy = stations(garden)
    report = benchmark.pedantic(check, (garden,), rounds=3 if plants > 40_000 else 5, warmup_rounds=1)
    assert len(report.plantings) == len(garden.layouts[0].plantings)
    assert {f.code for f in report.findings} >= {"crowded", "layered", "out in time"}
    if benchmark.stats is not None:
        made = points(xy)
        floor = quickest(lambda: STRtree(made).query(made, predicate="dwithin", distance=NEAR_M))
        told(f"full check, {len(xy):,} plants", benchmark.stats.stats.min, floor)
        assert benchmark.stats.stats.min < plants / 20_000 + 0.1


# crop, how started, when: those that meet more neighbours, and higher ones, are slower to drag
DRAGGED = {
    "beetroot": ("sown", date(2027, 5, 1)),
    "onion": ("set", date(2027, 4, 1)),
    "cabbage": ("raised", date(2027, 5, 1)),
    "dwarf-bean": ("sown", date(2027, 5, 20)),
    "tomato": ("raised", date(2027, 6, 1)),
}


def dragged(garden: Garden, steps: int, crop: str = "beetroot") -> list[Garden]:
    """The garden with 200 more plants, moved a few centimetres at a time across the beds."""
    kind, on = DRAGGED[crop]
    pattern = Rows(origin=(15.0, 5.2), length_m=5.0, rows=4, spacing_m=0.1, row_spacing_m=0.25)
    moved = Planting(id="moved", crop=crop, pattern=pattern, start=Start(kind=kind, on=on))
    gardens = [edits.add(garden, "l1", [moved])]
    for step in range(steps):
        dx, dy = (0.05 if step % 80 < 40 else -0.04), (0.03 if step % 120 < 60 else -0.03)
        gardens.append(edits.shift(gardens[-1], "l1", ["moved"], dx, dy))
    return gardens


def walled(garden: Garden) -> Garden:
    """The garden with six walls round it."""
    walls = []
    for k, (x, y) in enumerate([(0, -1), (14, -1), (28, -1), (42, -1), (0, 90), (28, 90)]):
        outline = ((x, y), (x + 5, y), (x + 5, y + 0.2), (x, y + 0.2))
        walls.append(Fixture(id=f"w-{k}", name="Wall", kind="wall", outline=outline, height_m=2.0))
    return edits.rebuilt(garden, fixtures=tuple(walls))


def _drag(benchmark, name: str, gardens: list[Garden], median_s: float) -> None:
    checker = Checker()
    checker.update(gardens[0], "l1")
    step, steps = iter(range(10**9)), len(gardens) - 1
    report = benchmark.pedantic(
        lambda: checker.update(gardens[1 + next(step) % steps], "l1"), rounds=steps, warmup_rounds=5
    )
    assert report.plantings["moved"].plants == 200
    if benchmark.stats is not None:
        others = points(stations(gardens[0])[:-200])
        tree = STRtree(others)
        own = points(gardens[0].layouts[0].plantings[-1].stations)
        floor = quickest(lambda: tree.query(own, predicate="dwithin", distance=NEAR_M))
        p95 = float(np.percentile(benchmark.stats.stats.data, 95))
        told(f"drag step of 200 {name} among 20,000, 95th percentile", p95, floor)
        told(f"drag step of 200 {name} among 20,000, median", benchmark.stats.stats.median, floor)
        assert benchmark.stats.stats.median < median_s


@pytest.mark.parametrize("crop", DRAGGED)
def test_drag_step(benchmark, crop):
    slow = crop in ("tomato", "dwarf-bean")  # they meet twice as many, and are reached for
    _drag(benchmark, crop, dragged(dense_garden(20_000), 400, crop), 0.06 if slow else 0.02)


def test_drag_step_with_six_walls(benchmark):
    _drag(benchmark, "beetroots within walls", dragged(walled(dense_garden(20_000)), 400), 0.02)


def test_a_planting_dragged_through_time(benchmark):
    """One planting of the dense garden started on another day at each step, as on the ribbon."""
    garden = dense_garden(20_000)
    gardens = [
        edits.change(garden, "l1", "p-150", start=Start(kind="raised", on=date(2027, 4, 1 + n % 29)))
        for n in range(29)
    ]
    checker = Checker()
    checker.update(garden, "l1")
    step = iter(range(10**9))
    benchmark.pedantic(lambda: checker.update(gardens[next(step) % 29], "l1"), rounds=100, warmup_rounds=2)
    if benchmark.stats is not None:
        p95 = float(np.percentile(benchmark.stats.stats.data, 95))
        print(f"\nstep through time, 95th percentile: {p95 * 1e3:.2f} ms")
        assert benchmark.stats.stats.median < 0.008
