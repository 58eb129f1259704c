"""Radiation and reference evapotranspiration from the little that monthly normals say (FAO-56, chapter 3)."""

from math import cos, exp, log, pi, radians, sin, sqrt

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Site
from gardencanvas.season.daylength import declination, sunset_angle

Floats = NDArray[np.float64]

SOLAR_CONSTANT = 0.0820  # MJ m⁻² min⁻¹
K_RS_INLAND, K_RS_COAST = 0.16, 0.19  # FAO-56 eq. 50
PAR_SHARE, PAR_MOL = (
    0.45,
    4.57,
)  # share of PAR in sunlight; mol per MJ of PAR (McCree 1972; Thimijan & Heins 1983)
MID_MONTH = (
    15,
    46,
    74,
    105,
    135,
    166,
    196,
    227,
    258,
    288,
    319,
    349,
)  # day numbers of FAO-56 tables 2.6 and 2.7


def distance_factor(day: int) -> float:
    """Inverse relative distance of Earth and sun (FAO-56 eq. 23)."""
    return 1.0 + 0.033 * cos(2 * pi * day / 365)


def extraterrestrial(latitude_deg: float, day: int) -> float:
    """Radiation above the air, MJ m⁻² d⁻¹ (FAO-56 eq. 21)."""
    latitude, dec, angle = radians(latitude_deg), declination(day), sunset_angle(latitude_deg, day)
    geometry = angle * sin(latitude) * sin(dec) + cos(latitude) * cos(dec) * sin(angle)
    return 24 * 60 / pi * SOLAR_CONSTANT * distance_factor(day) * geometry


def clear_sky(extraterrestrial_mj: float, elevation_m: float) -> float:
    """Radiation under a clear sky, MJ m⁻² d⁻¹ (FAO-56 eq. 37)."""
    return (0.75 + 2e-5 * elevation_m) * extraterrestrial_mj


def from_sunshine(extraterrestrial_mj: float, sun_hours: float, daylight: float) -> float:
    """Radiation from hours of sunshine, MJ m⁻² d⁻¹ (FAO-56 eq. 35)."""
    return (0.25 + 0.50 * sun_hours / daylight) * extraterrestrial_mj


def from_range(extraterrestrial_mj: float, low_c: float, high_c: float, k_rs: float = K_RS_INLAND) -> float:
    """Radiation from the daily range of temperature, MJ m⁻² d⁻¹ (Hargreaves; FAO-56 eq. 50)."""
    return k_rs * sqrt(max(high_c - low_c, 0.0)) * extraterrestrial_mj


def daily_light_integral(radiation_mj: float) -> float:
    """Photons for photosynthesis, mol m⁻² d⁻¹: 2.06 mol per MJ of sunlight (other factors are 1.9–2.3)."""
    return radiation_mj * PAR_SHARE * PAR_MOL


def hargreaves(low_c: float, high_c: float, extraterrestrial_mj: float) -> float:
    """Reference evapotranspiration, mm d⁻¹ (Hargreaves & Samani 1985; FAO-56 eq. 52)."""
    mean = (low_c + high_c) / 2
    return 0.0023 * (mean + 17.8) * sqrt(max(high_c - low_c, 0.0)) * 0.408 * extraterrestrial_mj


def penman_monteith(
    *, net_mj: float, soil_mj: float, mean_c: float, wind_m_s: float, deficit_kpa: float, pressure_kpa: float
) -> float:
    """Reference evapotranspiration, mm d⁻¹ (FAO-56 eq. 6).

    Parameters
    ----------
    net_mj, soil_mj
        Net radiation and heat into the soil, MJ m⁻² d⁻¹.
    mean_c, wind_m_s, deficit_kpa, pressure_kpa
        Mean temperature, wind at 2 m, vapour pressure deficit es − ea, air pressure.
    """
    slope = 4098.0 * 0.6108 * exp(17.27 * mean_c / (mean_c + 237.3)) / (mean_c + 237.3) ** 2
    psychrometric = 0.665e-3 * pressure_kpa
    wind = psychrometric * 900.0 / (mean_c + 273.0) * wind_m_s * deficit_kpa
    return (0.408 * slope * (net_mj - soil_mj) + wind) / (slope + psychrometric * (1.0 + 0.34 * wind_m_s))


def wind_at_2m(speed_m_s: float, height_m: float) -> float:
    """Wind at 2 m from wind at another height (FAO-56 eq. 47)."""
    return speed_m_s * 4.87 / log(67.8 * height_m - 5.42)


def monthly_evapotranspiration(site: Site) -> Floats | None:
    """Reference evapotranspiration of each month's middle, mm d⁻¹, shape (12,); None without daily range."""
    climate = site.climate
    if climate.min_c is None or climate.max_c is None:
        return None
    return np.array(
        [
            hargreaves(low, high, extraterrestrial(site.latitude_deg, day))
            for low, high, day in zip(climate.min_c, climate.max_c, MID_MONTH, strict=True)
        ]
    )
