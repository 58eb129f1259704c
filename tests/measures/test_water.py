"""Water need against worked examples of FAO-56 and CROPWAT."""

import numpy as np
import pytest

from gardencanvas.measures.codes import Code, Through
from gardencanvas.measures.comparison import compare, measured
from gardencanvas.measures.reckoned.water import coefficient, effective_rain, mixed_coefficient
from gardencanvas.season.radiation import MID_MONTH, extraterrestrial, hargreaves
from tests.measures.beds_for_tests import DAILY, filled, garden_of, ground_of, layout
from tests.oracles.oracle_rows import expected


def test_coefficients_of_dry_bean():
    """FAO-56 example 28: stages 25/25/30/20, Kcb 0.15/1.19/0.35; 20 days in, still the initial one."""
    stages, kc = (25, 25, 30, 20), (0.15, 1.19, 0.35)
    assert float(coefficient(20, stages, kc)) == pytest.approx(0.15)
    assert float(coefficient(40, stages, kc)) == pytest.approx(expected("O035"), abs=0.005)
    assert float(coefficient(70, stages, kc)) == pytest.approx(1.19)
    assert float(coefficient(95, stages, kc)) == pytest.approx(expected("O036"), abs=0.005)


def test_coefficient_of_tomato_in_development():
    assert float(coefficient(50, (30, 40, 45, 30), (0.6, 1.15, 0.8))) == pytest.approx(expected("O037"))


def test_coefficients_of_crops_together():
    """FAO-56 equation 104; with equal heights the mean by ground."""
    assert float(mixed_coefficient([0.5, 0.5], [1.5, 0.5], [1.15, 1.05])) == pytest.approx(expected("O104"))
    assert float(mixed_coefficient([0.6, 0.4], [0.5, 0.5], [1.0, 1.15])) == pytest.approx(expected("O105"))


def test_effective_rain_of_a_month():
    """USDA-SCS as in CROPWAT: 60, 100 and 300 mm."""
    assert effective_rain([60.0, 100.0, 300.0]) == pytest.approx([54.24, 84.0, 155.0], abs=1e-6)
    assert [float(x) for x in expected("O111")] == [54.24, 84.0, 155.0]


def test_evapotranspiration_of_example_20():
    """Hargreaves at 26.6 and 14.8 °C, Ra 40.6 MJ: 5.0 mm a day (FAO-56 example 20)."""
    assert hargreaves(14.8, 26.6, 40.6) == pytest.approx(5.0, abs=0.05)


def test_a_bed_of_one_crop_needs_its_coefficient_times_evapotranspiration_less_rain():
    """By hand for July: cabbage in its middle stage on a bed that it fills; 1 mm on 1 m² is 1 l."""
    planting = filled("a", "cabbage")
    ground = ground_of(planting)
    result = measured(garden_of(layout("l1", [ground], planting)), "l1")
    (series,) = [s for s in result.series if s.code == Through.WATER]
    july = [
        v for v, week in zip(series.values, series.weeks, strict=True) if week.month == 7 and week.day < 25
    ]
    et0 = hargreaves(DAILY.min_c[6], DAILY.max_c[6], extraterrestrial(52.0, MID_MONTH[6]))
    rain = float(effective_rain(DAILY.rain_mm[6])) / 31
    area = 4 * 10 * 0.45 * 0.5
    kc = 1.05  # FAO-56 table 12, cabbage, middle
    assert float(np.mean(july)) == pytest.approx((kc * et0 - rain) * 7 * area, rel=0.06)
    peak = result.whole.of(Code.WATER_PEAK)
    assert peak.low < peak.value == max(series.values) < peak.high


def test_water_is_never_below_nothing_and_only_for_planted_ground():
    planting = filled("a", "leek")
    full = layout("l1", [ground_of(planting)], planting)
    half = layout("l2", [ground_of(planting)], filled("a", "leek", share=0.5))
    row = compare(garden_of(full, half), "l1", "l2").of(Code.WATER)
    assert row.b.value == pytest.approx(row.a.value / 2, rel=0.02)
    assert row.winner == "b"
