"""Sun positions against NREL's printed example, three independent engines and pvlib."""

import csv

import numpy as np
import pytest

from gardencanvas.light.sun import position
from tests.oracles.oracle_rows import DATA, expected, tolerance

# id of elevation row, of azimuth row: instant in UTC, latitude, longitude (as the rows' inputs say).
ROWS = [
    ("O003", "O002", "2003-10-17T19:30:30", 39.742476, -105.1786),
    ("O004", "O005", "2026-06-21T12:00:00", 52.0, 5.0),
    ("O006", None, "2026-12-21T12:00:00", 52.0, 5.0),
    ("O007", "O008", "2026-12-21T02:00:00", -33.87, 151.21),
    (None, "O009", "2026-06-21T06:00:00", 52.0, 5.0),
]


@pytest.mark.parametrize(("elevation_row", "azimuth_row", "utc", "lat", "lon"), ROWS)
def test_oracle_rows(elevation_row, azimuth_row, utc, lat, lon):
    elevation, azimuth = position(lat, lon, np.datetime64(utc))
    if elevation_row:
        assert float(elevation) == pytest.approx(expected(elevation_row), abs=tolerance(elevation_row))
    if azimuth_row:
        assert float(azimuth) == pytest.approx(expected(azimuth_row), abs=tolerance(azimuth_row))


def test_refracted_zenith_of_the_nrel_example():
    # O001 is refracted; Bennett's formula at 820 mbar and 11 °C (as in the SPA report) joins the two.
    elevation, _ = position(39.742476, -105.1786, np.datetime64("2003-10-17T19:30:30"))
    e = float(elevation)
    refraction = 820 / 1010 * 283 / (273 + 11) * 1.02 / (60 * np.tan(np.radians(e + 10.3 / (e + 5.11))))
    assert 90 - e - refraction == pytest.approx(expected("O001"), abs=tolerance("O001"))


def test_against_three_engines():
    with (DATA / "sun_positions.csv").open(encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert len(rows) == 96
    for row in rows:
        utc = np.datetime64(row["utc"].removesuffix("+00:00"))
        elevation, azimuth = position(float(row["lat"]), float(row["lon"]), utc)
        for engine in ("spa", "ephem", "astronomy_engine"):
            alt, az = float(row[f"alt_{engine}"]), float(row[f"az_{engine}"])
            # Separation on the sky: azimuth alone is ill-defined near the zenith.
            turn = (float(azimuth) - az + 180) % 360 - 180
            apart = np.hypot(float(elevation) - alt, turn * np.cos(np.radians(alt)))
            assert apart < 0.012, row


def test_against_pvlib_over_a_year_at_many_latitudes():
    pandas = pytest.importorskip("pandas")
    solarposition = pytest.importorskip("pvlib.solarposition")
    times = pandas.date_range("2026-01-01", "2026-12-31", freq="37h", tz="UTC")
    for lat, lon in ((0.0, 0.0), (23.4, 100.0), (52.0, 5.0), (-33.9, 151.2), (78.2, 15.6), (-89.0, 0.0)):
        reference = solarposition.spa_python(times, lat, lon, altitude=0, pressure=101325, temperature=12)
        elevation, azimuth = position(lat, lon, times.tz_localize(None).to_numpy())
        alt = reference["elevation"].to_numpy()
        turn = (azimuth - reference["azimuth"].to_numpy() + 180) % 360 - 180
        apart = np.hypot(elevation - alt, turn * np.cos(np.radians(alt)))
        assert apart.max() < 0.02
