"""Where the sun stands: NOAA's low-precision equations after Meeus (Astronomical Algorithms, chapter 25).

Within 0.02° of NREL's solar position algorithm for 1950–2050, without refraction; valid at the poles and in
the tropics alike.
"""

from datetime import datetime, timedelta
from functools import lru_cache
from math import pi
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]
Times = NDArray[np.datetime64]

# Days of each month whose extraterrestrial radiation is nearest the month's mean (Klein 1977, Solar Energy
# 19:325–329; from memory).
REPRESENTATIVE_DAYS = (17, 16, 16, 15, 15, 11, 17, 16, 15, 15, 14, 10)
_REFERENCE_YEAR = 2025  # amid a cycle of leap years; declination repeats to 0.2° from year to year
STEPS = 24  # sun positions a day


class Ephemeris(NamedTuple):
    """The sun as seen from the Earth's centre: declination in radians, equation of time in minutes."""

    declination: Floats
    equation_min: Floats


def ephemeris(utc: Times) -> Ephemeris:
    """Declination and equation of time at UTC instants, any shape."""
    t = (utc - np.datetime64("2000-01-01T12:00:00")) / np.timedelta64(1, "s") / 86400.0 / 36525.0
    longitude = np.radians((280.46646 + 36000.76983 * t + 0.0003032 * t**2) % 360.0)
    anomaly = np.radians(357.52911 + 35999.05029 * t - 0.0001537 * t**2)
    eccentricity = 0.016708634 - 0.000042037 * t
    node = np.radians(125.04 - 1934.136 * t)
    centre = (
        (1.914602 - 0.004817 * t) * np.sin(anomaly)
        + (0.019993 - 0.000101 * t) * np.sin(2 * anomaly)
        + 0.000289 * np.sin(3 * anomaly)
    )
    apparent = longitude + np.radians(centre - 0.00569 - 0.00478 * np.sin(node))
    obliquity = np.radians(23.439291 - 0.0130042 * t + 0.00256 * np.cos(node))
    y = np.tan(obliquity / 2) ** 2
    equation = (
        y * np.sin(2 * longitude)
        - 2 * eccentricity * np.sin(anomaly)
        + 4 * eccentricity * y * np.sin(anomaly) * np.cos(2 * longitude)
        - 0.5 * y**2 * np.sin(4 * longitude)
        - 1.25 * eccentricity**2 * np.sin(2 * anomaly)
    )
    return Ephemeris(np.arcsin(np.sin(obliquity) * np.sin(apparent)), 4 * np.degrees(equation))


def _horizontal(latitude: float, declination: Floats, hour_angle: Floats) -> tuple[Floats, Floats]:
    """Elevation and azimuth, radians, from latitude, declination and hour angle (noon 0)."""
    sin_lat, cos_lat = np.sin(latitude), np.cos(latitude)
    sin_dec, cos_dec = np.sin(declination), np.cos(declination)
    height = sin_lat * sin_dec + cos_lat * cos_dec * np.cos(hour_angle)
    azimuth = np.arctan2(
        -np.sin(hour_angle) * cos_dec, cos_lat * sin_dec - sin_lat * cos_dec * np.cos(hour_angle)
    )
    return np.arcsin(np.clip(height, -1.0, 1.0)), azimuth


def position(latitude_deg: float, longitude_deg: float, utc: ArrayLike) -> tuple[Floats, Floats]:
    """Elevation and azimuth of the sun's centre, without refraction.

    Parameters
    ----------
    latitude_deg, longitude_deg
        North and east positive.
    utc
        Instants in UTC (datetime64), any shape.

    Returns
    -------
    elevation_deg, azimuth_deg
        Above the horizon, and clockwise from north in 0–360; shape of ``utc``.
    """
    instants = np.asarray(utc, dtype="datetime64[ms]")
    sun = ephemeris(instants)
    midnight = instants.astype("datetime64[D]")
    minutes = (instants - midnight) / np.timedelta64(1, "ms") / 60_000.0
    hour_angle = np.radians((minutes + sun.equation_min + 4.0 * longitude_deg) / 4.0 - 180.0)
    elevation, azimuth = _horizontal(np.radians(latitude_deg), sun.declination, hour_angle)
    return np.degrees(elevation), np.degrees(azimuth) % 360.0


class SunPath(NamedTuple):
    """The sun on twelve representative days, in solar time and so alike east and west of noon."""

    azimuth: Floats  # (12, steps) radians clockwise from north
    elevation: Floats  # (12, steps) radians
    weight: Floats  # (12, steps) share of the day's beam light on level ground; rows sum to 1, or to 0


@lru_cache(maxsize=64)
def sun_path(latitude_deg: float, steps: int = STEPS, shift_d: int = 0) -> SunPath:
    """Sun positions in the middle of equal steps from sunrise to sunset, one day a month.

    ``shift_d`` takes days before or after the representative ones. The weight goes with the sine of the
    elevation. In the polar night it is 0.
    """
    noon = np.array(
        [
            datetime(_REFERENCE_YEAR, m + 1, d, 12) + timedelta(days=shift_d)
            for m, d in enumerate(REPRESENTATIVE_DAYS)
        ],
        dtype="datetime64[s]",
    )
    declination = ephemeris(noon).declination[:, None]
    latitude = np.radians(np.clip(latitude_deg, -89.999, 89.999))
    half_day = np.arccos(np.clip(-np.tan(latitude) * np.tan(declination), -1.0, 1.0))
    share = (np.arange(steps) + 0.5) / steps * 2.0 - 1.0
    elevation, azimuth = _horizontal(float(latitude), declination, half_day * share)
    strength = np.maximum(np.sin(elevation), 0.0) * (half_day > 0.0)
    total = strength.sum(axis=1, keepdims=True)
    weight = strength / np.maximum(total, 1e-12)
    return SunPath(azimuth % (2 * pi), elevation, np.asarray(weight))
