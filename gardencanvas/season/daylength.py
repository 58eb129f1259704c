"""Day length: FAO-56's for radiation, and the true one between sunrise and sunset for people."""

from datetime import date, datetime, timedelta, timezone
from math import acos, pi, radians, sin, tan

NEVER_SETS, NEVER_RISES = 24.0, 0.0


def declination(day: int) -> float:
    """Declination of the sun on a day of the year (1 is 1 January), radians (FAO-56 eq. 24)."""
    return 0.409 * sin(2 * pi * day / 365 - 1.39)


def sunset_angle(latitude_deg: float, day: int) -> float:
    """Hour angle of sunset, radians, 0–π (FAO-56 eq. 25; held at the ends beyond the polar circles)."""
    latitude = radians(max(min(latitude_deg, 89.999), -89.999))
    return acos(max(-1.0, min(1.0, -tan(latitude) * tan(declination(day)))))


def daylight_hours(latitude_deg: float, day: int) -> float:
    """Hours the sun's centre is up, without refraction (FAO-56 eq. 34): for radiation, not for people."""
    return 24.0 / pi * sunset_angle(latitude_deg, day)


def sun_up_hours(latitude_deg: float, longitude_deg: float, on: date) -> float:
    """Hours from sunrise to sunset, refraction and the sun's breadth included.

    24 where it does not set and 0 where it does not rise.
    """
    # Here and not above: 20 ms that the engine's start can do without.
    from astral import Observer
    from astral.sun import sunrise, sunset

    # Sunrise and sunset are asked for in the garden's own solar zone: in UTC they fall on different days far
    # from Greenwich, and sunset would come before sunrise.
    zone = timezone(timedelta(hours=round(longitude_deg / 15.0)))
    observer = Observer(latitude=latitude_deg, longitude=longitude_deg)
    try:
        up: datetime = sunrise(observer, on, tzinfo=zone)
        down: datetime = sunset(observer, on, tzinfo=zone)
    except ValueError:
        summer = latitude_deg * declination(on.timetuple().tm_yday) > 0.0
        return NEVER_SETS if summer else NEVER_RISES
    hours = (down - up).total_seconds() / 3600.0
    # Where the sun sets after midnight the next sunset is meant.
    return hours if hours > 0.0 else hours + 24.0
