"""Day length, radiation and evapotranspiration against FAO-56's worked examples and astral."""

from datetime import date
from math import degrees

import pytest

from gardencanvas.season.daylength import daylight_hours, declination, sun_up_hours, sunset_angle
from gardencanvas.season.radiation import (
    clear_sky,
    daily_light_integral,
    distance_factor,
    extraterrestrial,
    from_range,
    from_sunshine,
    hargreaves,
    penman_monteith,
    wind_at_2m,
)
from tests.oracles.oracle_rows import expected, tolerance

VALUES = {
    "O010": lambda: sun_up_hours(52.0, 0.0, date(2026, 6, 21)),
    "O011": lambda: sun_up_hours(52.0, 0.0, date(2026, 12, 21)),
    "O012": lambda: sun_up_hours(40.0, -105.0, date(2026, 6, 21)),
    "O013": lambda: sun_up_hours(70.0, 25.0, date(2026, 6, 21)),
    "O014": lambda: daylight_hours(-20.0, 246),
    "O015": lambda: extraterrestrial(-20.0, 246),
    "O016": lambda: distance_factor(246),
    "O017": lambda: declination(246),
    "O018": lambda: sunset_angle(-20.0, 246),
    "O019": lambda: extraterrestrial(50.8, 187),
    "O020": lambda: clear_sky(41.09, 100.0),
    "O021": lambda: from_sunshine(25.1, 7.1, 10.9),
    "O022": lambda: from_range(40.6, 14.8, 26.6),
    "O023": lambda: daily_light_integral(20.0),
    "O050": lambda: hargreaves(14.8, 26.6, 40.6),
    "O051": lambda: wind_at_2m(3.2, 10.0),
    # Air pressure of the examples' elevations, 100 m (Brussels) and 2 m (Bangkok): FAO-56 table 2.1.
    "O048": lambda: penman_monteith(
        net_mj=13.28, soil_mj=0.0, mean_c=16.9, wind_m_s=2.078, deficit_kpa=1.997 - 1.409, pressure_kpa=100.1
    ),
    "O049": lambda: penman_monteith(
        net_mj=14.33, soil_mj=0.14, mean_c=30.2, wind_m_s=2.0, deficit_kpa=4.42 - 2.85, pressure_kpa=101.3
    ),
}


@pytest.mark.parametrize("row", VALUES)
def test_oracle_rows(row):
    assert VALUES[row]() == pytest.approx(expected(row), abs=max(tolerance(row), 1e-12))


# FAO-56 table 2.6: Ra on the 15th of each month on the equator and at 2° N, MJ m⁻² d⁻¹.
TABLE_2_6 = {
    0.0: (36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6),
    2.0: (35.4, 37.0, 37.8, 37.1, 35.4, 34.2, 34.6, 36.1, 37.3, 37.0, 35.6, 34.8),
}
FIFTEENTH = (15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349)


@pytest.mark.parametrize("latitude", TABLE_2_6)
def test_radiation_table(latitude):
    for day, printed in zip(FIFTEENTH, TABLE_2_6[latitude], strict=True):
        assert extraterrestrial(latitude, day) == pytest.approx(printed, abs=0.11)


def test_day_length_far_from_greenwich_is_never_negative():
    # In UTC astral gives -9.0 h at 105° W and -14.1 h at 151° E.
    for longitude in range(-180, 181, 15):
        assert sun_up_hours(40.0, float(longitude), date(2026, 6, 21)) == pytest.approx(15.0, abs=0.03)


def test_polar_day_and_night():
    assert sun_up_hours(70.0, 25.0, date(2026, 12, 21)) == 0.0
    assert sun_up_hours(-70.0, 25.0, date(2026, 12, 21)) == 24.0
    assert sun_up_hours(-70.0, 25.0, date(2026, 6, 21)) == 0.0


def test_fao_day_length_is_the_shorter_one():
    # Refraction and the sun's breadth add .10–.15 h at 0–30° and about .35 h at 60° (definition at -0.833°).
    for latitude in (0.0, 30.0, 45.0, 60.0):
        more = sun_up_hours(latitude, 0.0, date(2026, 3, 20)) - daylight_hours(latitude, 79)
        assert 0.08 < more < 0.5


def test_declination_reaches_the_tropics():
    assert degrees(declination(172)) == pytest.approx(23.43, abs=0.05)
    assert degrees(declination(355)) == pytest.approx(-23.43, abs=0.05)
