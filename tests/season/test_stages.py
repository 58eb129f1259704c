"""FAO-56 table 11 comes out again under the table's own conditions: a climate that always has its warmth."""

import csv
from datetime import date

import numpy as np
import pytest

from gardencanvas.garden.site import Climate, Frost
from gardencanvas.season.course import Weeks
from gardencanvas.season.growth import follow
from tests.oracles.oracle_rows import DATA
from tests.season.crops_for_tests import later, make, planted, site

with (DATA / "fao56_table11.csv").open(encoding="utf-8") as _file:
    TABLE = list(csv.DictReader(_file))
# Printed totals that do not agree with their stages, in the table itself.
UNSOUND = {"green gram cowpeas", "sesame", "maize sweet", "sorghum"}
ROWS = [
    tuple(int(row[k]) for k in ("Lini", "Ldev", "Lmid", "Llate", "Total"))
    for row in TABLE
    if row["Total"] and sum(int(row[k]) for k in ("Lini", "Ldev", "Lmid", "Llate")) == int(row["Total"])
]
ANNUAL = sorted({row for row in ROWS if row[4] <= 300})
STEADY = site((18.0,) * 12, frost=Frost(basis="none"))
STEADY_WITH_RANGE = site(
    frost=Frost(basis="none"), climate=Climate(mean_c=(18.0,) * 12, min_c=(12.0,) * 12, max_c=(24.0,) * 12)
)


def test_the_table_is_whole():
    odd = {
        row["Crop"]
        for row in TABLE
        if row["Total"] and sum(int(row[k]) for k in ("Lini", "Ldev", "Lmid", "Llate")) != int(row["Total"])
    }
    assert odd == UNSOUND
    assert len(ANNUAL) > 80


@pytest.mark.parametrize("where", [STEADY, STEADY_WITH_RANGE], ids=["means only", "daily range"])
def test_totals_and_cover(where):
    on = date(2026, 3, 1)
    for number, (initial, development, middle, late, total) in enumerate(ANNUAL):
        stages = (float(initial), float(development), float(middle), float(late))
        planting = planted(make(f"row-{number}", stages, grown_at_c=18.0), on)
        # A week's sizes are those of its fourth day: these are days Lini, and Lini + Ldev, to the day.
        tenth = follow(where, [planting], Weeks(later(on, initial - 3), 1))
        full = follow(where, [planting], Weeks(later(on, initial + development - 3), 1))
        assert tenth.radius_m[0, 0] ** 2 / 0.15**2 == pytest.approx(0.10, abs=1e-6)
        assert full.radius_m[0, 0] == pytest.approx(0.15, abs=1e-9)
        assert (full.harvest_first[0] - np.datetime64(on)).astype(int) == pytest.approx(total, abs=1)


def test_roots_reach_their_depth_at_full_cover():
    # FAO-56 p. 279: depth follows Kcb, so it stays at its least until Lini and is full at Lini + Ldev.
    crop = make("tomato-rows", (30.0, 40.0, 45.0, 30.0), grown_at_c=18.0, root_depth_m=1.0)
    on = date(2026, 3, 1)
    course = follow(STEADY, [planted(crop, on)], Weeks(on, 20))
    age, root = 7 * np.arange(20) + 3, course.root_m[0]
    assert root[age < 30] == pytest.approx(0.15)
    assert root[(age >= 70) & (age < 145)] == pytest.approx(1.0)
    # Half way through development, half way down: .15 + .85 / 2.
    assert np.interp(50, age, root) == pytest.approx(0.575, abs=0.01)
