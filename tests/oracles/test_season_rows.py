"""Growth, degree-days, the daily curve and frost dates against closed forms, published rules and records."""

import csv
from datetime import date

import numpy as np
import pytest

from gardencanvas.season.beta import beta, calibrate, shape_of
from gardencanvas.season.curve import daily
from gardencanvas.season.dayofyear import MONTH_DAYS
from gardencanvas.season.degreedays import DAY_TO_DAY_C, average, normal_excess, sine_excess
from gardencanvas.season.frost import History, history, mixed_day, simulated_frosts
from tests.oracles.oracle_rows import DATA, expected, rows, tolerance

MONTHS = (3.2, 3.5, 6.3, 9.5, 13.2, 15.9, 18.1, 17.8, 14.8, 11.0, 6.9, 4.0)


@pytest.mark.parametrize(
    ("row", "time", "end", "fastest"),
    [("O029", 25, 100, 50), ("O030", 50, 100, 50), ("O031", 90, 100, 50), ("O032", 35, 70, 45)],
)
def test_beta_growth(row, time, end, fastest):
    value = float(beta(time / end, shape_of(end, fastest)))
    assert value == pytest.approx(expected(row), abs=max(tolerance(row), 1e-9))


def test_beta_is_smoothstep_for_p_2():
    x = np.linspace(0.0, 1.0, 101)
    assert beta(x, 2.0) == pytest.approx(3 * x**2 - 2 * x**3, abs=1e-12)


def test_calibration():
    assert calibrate(0.4) == pytest.approx(expected("O033"), abs=tolerance("O033"))
    for x in (1 / 3, 0.4, 3 / 7, 0.5, 0.7):
        assert float(beta(x, calibrate(x))) == pytest.approx(0.10, abs=1e-9)


def test_degree_days():
    assert float(average(5.0, 20.0, 10.0)) == pytest.approx(expected("O038"), abs=1e-9)
    assert float(sine_excess(12.5, 7.5, 10.0)) == pytest.approx(expected("O039"), abs=tolerance("O039"))
    assert float(sine_excess(7.0, 5.0, 10.0)) == pytest.approx(expected("O040"), abs=tolerance("O040"))
    assert float(normal_excess(8.0, 3.0, 10.0)) == pytest.approx(expected("O041"), abs=tolerance("O041"))


def test_sine_degree_days_are_the_integral_of_the_sine():
    hours = (np.arange(20_000) + 0.5) / 20_000 * 2 * np.pi
    for mean, half, base in ((12.5, 7.5, 10.0), (3.0, 4.0, 5.0), (25.0, 2.0, 5.0), (0.0, 3.0, 9.0)):
        integral = np.maximum(mean + half * np.sin(hours) - base, 0.0).mean()
        assert float(sine_excess(mean, half, base)) == pytest.approx(integral, abs=1e-5)


def test_the_daily_curve_keeps_every_month():
    curve, start = daily(MONTHS), 0
    for mean, length in zip(MONTHS, MONTH_DAYS, strict=True):
        assert curve[start : start + length].mean() == pytest.approx(mean, abs=tolerance("O042"))
        start += length
    top, day = expected("O043")
    assert curve.max() == pytest.approx(top, abs=0.01)
    assert int(np.argmax(curve)) + 1 == pytest.approx(day, abs=1)


def test_the_daily_curve_is_the_smoothest():
    # No other curve with these month means has smaller second differences: any change that keeps the
    # means makes them larger.
    curve = daily(MONTHS)
    rng = np.random.default_rng(3)
    rough = lambda c: float(np.square(np.roll(c, 1) - 2 * c + np.roll(c, -1)).sum())  # noqa: E731
    for _ in range(20):
        change = rng.normal(size=365)
        start = 0
        for length in MONTH_DAYS:
            change[start : start + length] -= change[start : start + length].mean()
            start += length
        assert rough(curve + 0.01 * change) > rough(curve)


LAST = [101, 95, 110, 118, 103, 99, 121, 107, 112, 96, 105, 115, 109, 100, 104]


def test_frost_risk_of_a_list_of_years():
    past = History(float(np.mean(LAST)), float(np.std(LAST, ddof=1)), len(LAST))
    assert past.day(0.10) == pytest.approx(expected("O044"), abs=tolerance("O044"))
    assert mixed_day(past.mean, past.sd, 1.0, 0.10) == pytest.approx(expected("O045"), abs=tolerance("O045"))
    assert mixed_day(106.0, 8.0, 12 / 15, 0.10) == pytest.approx(expected("O046"), abs=tolerance("O046"))


def test_simulated_frost_with_persistence():
    # The row's minima rise for ever; cut off where frost has become impossible.
    minima = np.minimum(-1.0 + 0.13 * (np.arange(1, 366) - 60.0), 25.0)
    last, _ = simulated_frosts(minima, 20_000)
    assert float(np.nanmedian(last)) + 1 == pytest.approx(expected("O047"), abs=tolerance("O047"))
    # The same simulation's late date, frost after it in one year of ten: day 121.
    assert float(np.nanquantile(last, 0.9)) + 1 == pytest.approx(121, abs=1)


def records(name):
    with (DATA / name).open(encoding="utf-8") as file:
        return list(csv.DictReader(file))


def test_frost_days_of_brussels():
    # Mean 95.5, sd 17.86, late date of one in ten by the normal 118.4; autumn mean 320.8 (xclim, `< 0` °C).
    years = records("brussels_1976_2005_expected_frost_doy.csv")
    day = lambda y, n: date.fromordinal(date(y, 1, 1).toordinal() + int(float(n)) - 1)  # noqa: E731
    spring = history([day(int(r["year"]), r["last_lt0"]) for r in years], south=False, spring=True)
    autumn = history([day(int(r["year"]), r["first_lt0"]) for r in years], south=False, spring=False)
    # Our days start at 0 and leave out 29 February: up to one day lower in leap years.
    assert spring.mean + 1 == pytest.approx(95.5, abs=0.4)
    assert spring.sd == pytest.approx(17.86, abs=0.2)
    assert mixed_day(spring.mean, spring.sd, 1.0, 0.1) + 1 == pytest.approx(118.4, abs=0.6)
    assert autumn.mean + 1 == pytest.approx(320.8, abs=0.4)


def test_day_to_day_spread_is_that_of_a_real_place():
    # Seattle 2012–2015 (NOAA): departures of daily means from their mean-preserving curve.
    weather = records("seattle_weather_2012_2015.csv")
    mean = np.array([(float(r["temp_max"]) + float(r["temp_min"])) / 2 for r in weather])
    days = [date.fromisoformat(r["date"]) for r in weather]
    month = np.array([d.month for d in days])
    curve = daily([float(mean[month == m].mean()) for m in range(1, 13)])
    left = mean - curve[[min(d.timetuple().tm_yday, 365) - 1 for d in days]]
    assert float(left.std()) == pytest.approx(DAY_TO_DAY_C, abs=0.75)
    # One day's departure tells the next: a first-order process with .6–.7.
    assert float(np.corrcoef(left[:-1], left[1:])[0, 1]) == pytest.approx(0.65, abs=0.12)


def test_every_row_can_be_read():
    assert len(rows()) == 111
    assert all(expected(row) != () for row in rows())
