"""What came up by itself: an estimated day, kept, thinned to a distance."""

from datetime import date
from math import ceil

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError
from shapely import MultiPoint

from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Drift, Rows
from gardencanvas.garden.planting import Start
from gardencanvas.garden.volunteers import came_up, crowded_out, keep, thin
from tests.garden.makers import garden, row

UP = date(2027, 4, 18)


def came(pattern=None, **changes):
    fields = {"start": came_up(UP), **changes}
    return row("p", "calendula", **({**fields, "pattern": pattern} if pattern else fields))


def stays(xy, apart):
    gone = crowded_out(xy, apart)
    return np.delete(xy, gone, axis=0)


def distances(xy):
    away = np.hypot(*(xy[:, None] - xy[None]).transpose(2, 0, 1))
    np.fill_diagonal(away, np.inf)
    return away


@pytest.mark.parametrize(("count", "times"), [(1, 3), (7, 2), (20, 3), (21, 3), (22, 3), (60, 7)])
def test_of_a_row_every_nth_stays(count, times):
    # plants every s, to stand n·s apart: ⌈count/n⌉ stay, and no more can
    xy = np.stack([np.arange(count) * 0.05, np.zeros(count)], axis=1)
    assert len(stays(xy, 0.05 * times)) == ceil(count / times)


def test_of_a_square_grid_every_second_each_way_stays():
    # 9 × 7 plants every s, to stand 2·s apart: 5 × 4 stay
    xy = np.array([(x * 0.1, y * 0.1) for y in range(7) for x in range(9)])
    assert len(stays(xy, 0.2)) == 20


@given(
    places=st.lists(st.tuples(st.integers(0, 60), st.integers(0, 60)), min_size=1, max_size=80, unique=True),
    apart=st.sampled_from([0.05, 0.11, 0.3]),
)
def test_who_stays_keeps_its_distance_and_none_that_went_could_stay(places, apart):
    xy = np.array(places) * 0.02
    left = stays(xy, apart)
    assert distances(left).min(initial=np.inf) >= apart - 2e-6
    kept = MultiPoint(left)
    for gone in xy[crowded_out(xy, apart)]:
        assert kept.distance(MultiPoint([gone])) < apart
    # Caro 1979, Wei 1981: at least the sum of 1/(d+1)
    near = (distances(xy) < apart - 1e-6).sum(axis=1)
    assert len(left) >= np.sum(1.0 / (near + 1)) - 1e-9
    again = crowded_out(xy, apart)
    assert again.tolist() == crowded_out(xy, apart).tolist()


def test_thinning_leaves_stations_out_and_keeps_the_pattern():
    value = garden(came(Rows(length_m=3.0, rows=1, spacing_m=0.05, row_spacing_m=0.3)))
    after = thin(value, "l1", "p", 0.2)
    (planting,) = after.layouts[0].plantings
    assert planting.pattern.kind == "rows"
    assert planting.pattern.count == 15  # of 60, every fourth
    assert len(planting.pattern.left_out) == 45
    with pytest.raises(Refusal, match="apart already"):
        thin(after, "l1", "p", 0.2)


def test_a_drift_is_thinned_the_same_each_time():
    drift = Drift(outline=((0, 0), (2, 0), (2, 1), (0, 1)), spacing_m=0.05, plants=150, seed=4)
    value = garden(came(drift))
    one, two = (thin(value, "l1", "p", 0.25).layouts[0].plantings[0] for _ in range(2))
    assert one == two
    assert distances(one.stations).min() >= 0.25 - 2e-6


def test_keeping_is_a_decision_and_only_for_volunteers():
    value = garden(came(), row("q", "leek"))
    start = keep(value, "l1", "p").layouts[0].by_id["p"].start
    assert (start.kept, start.pinned, start.on, start.within_d) == (True, True, UP, 14)
    with pytest.raises(Refusal, match="did not come up by itself"):
        keep(value, "l1", "q")
    with pytest.raises(Refusal, match="locked"):
        thin(garden(came(locked=True)), "l1", "p", 1.0)
    with pytest.raises(ValidationError, match="only of a volunteer"):
        Start(kind="sown", on=UP, within_d=3)
    with pytest.raises(ValidationError, match="only of a volunteer"):
        Start(kind="set", on=UP, kept=True)
