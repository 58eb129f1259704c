"""Longitude and latitude as metres on the plan, near one place."""

from math import cos, radians, sin, sqrt

from gardencanvas.garden.value import Point

# WGS 84: NIMA TR8350.2, table 3.1 (equatorial radius in metres, flattening)
_A = 6_378_137.0
_F = 1 / 298.257223563
_E2 = _F * (2 - _F)


def radii_m(latitude_deg: float) -> tuple[float, float]:
    """Radii of curvature in the meridian and in the prime vertical, metres.

    ``M = a (1 - e²) / (1 - e² sin² φ)^(3/2)``, ``N = a / (1 - e² sin² φ)^(1/2)``: Snyder 1987, Map
    projections: a working manual, USGS Professional Paper 1395, section 4.
    """
    w = 1 - _E2 * sin(radians(latitude_deg)) ** 2
    return _A * (1 - _E2) / w**1.5, _A / sqrt(w)


def local_m(position: Point, centre: Point) -> Point:
    """East and north of a centre in metres, of a longitude and latitude in degrees.

    ``east = N cos φ₀ Δλ``, ``north = M Δφ`` with the radii at the centre: the equirectangular projection on
    the ellipsoid (Snyder, section 12, with the centre's parallel true to scale). Half a kilometre from the
    centre it is wrong by some centimetres (a share of ``tan φ Δφ``), 50 m from it by less than a millimetre.
    """
    meridian, vertical = radii_m(centre[1])
    east = (position[0] - centre[0] + 180) % 360 - 180  # across the date line the short way
    return (
        vertical * cos(radians(centre[1])) * radians(east),
        meridian * radians(position[1] - centre[1]),
    )


def on_plan(east_m: float, north_m: float, bearing_deg: float) -> Point:
    """A place on the plan's axes, y down, whose top edge faces ``bearing_deg`` (0: north is up)."""
    c, s = cos(radians(bearing_deg)), sin(radians(bearing_deg))
    return east_m * c - north_m * s, -(east_m * s + north_m * c)
