"""Light at the top of a plant, ray by ray through leafy cylinders: independent of the rooms it checks.

Every ray starts on the plant's own disc, at its top, and goes to the sun on its way through one day or to an
even sky; Beer's law holds along the length that lies in leaves, which are turned evenly to all sides (half of
their area is met from any side). Sun by Cooper's declination (1969) and the hour angle; half of the light is
the sky's.
"""

from typing import NamedTuple

import numpy as np

DIFFUSE = 0.5
MET = 0.5  # of its area a leaf turned at random shows to any side


class Cylinder(NamedTuple):
    """An upright canopy; leaf area per m² of its own footprint."""

    x: float  # east
    y: float  # north
    radius: float
    base: float
    top: float
    leaf: float


def sun(latitude_deg, day_of_year, steps=30):
    """Azimuth from north, elevation, and weight on level ground, in equal steps from sunrise to sunset."""
    latitude = np.radians(latitude_deg)
    declination = np.radians(23.45 * np.sin(np.radians(360.0 * (284 + day_of_year) / 365.0)))
    half = np.arccos(np.clip(-np.tan(latitude) * np.tan(declination), -1.0, 1.0))
    hour = half * ((np.arange(steps) + 0.5) / steps * 2.0 - 1.0)
    up = np.sin(latitude) * np.sin(declination) + np.cos(latitude) * np.cos(declination) * np.cos(hour)
    east = -np.cos(declination) * np.sin(hour)
    north = np.cos(latitude) * np.sin(declination) - np.sin(latitude) * np.cos(declination) * np.cos(hour)
    return np.arctan2(east, north), np.arcsin(up), up / up.sum()


def even_sky(around=36, upwards=12):
    """The same of a sky that is equally bright everywhere: equal parts of its light on level ground."""
    elevation = np.arcsin(np.sqrt((np.arange(upwards) + 0.5) / upwards))
    azimuth = (np.arange(around) + 0.5) * 2.0 * np.pi / around
    azimuth, elevation = (a.ravel() for a in np.meshgrid(azimuth, elevation))
    return azimuth, elevation, np.full(len(azimuth), 1.0 / len(azimuth))


def on_disc(x, y, radius, count=24):
    """Places spread evenly over a disc."""
    k = np.arange(count) + 0.5
    r, turn = radius * np.sqrt(k / count), k * np.pi * (3.0 - np.sqrt(5.0))
    return x + r * np.cos(turn), y + r * np.sin(turn)


def light_on(plant, canopies, latitude_deg, day_of_year):
    """Share of open-sky light that reaches the top of a plant between others' canopies."""
    px, py = on_disc(plant.x, plant.y, plant.radius)
    parts = []
    for azimuth, elevation, weight in (even_sky(), sun(latitude_deg, day_of_year)):
        depth = np.zeros((len(px), len(azimuth)))
        for c in canopies:
            depth += MET * c.leaf / (c.top - c.base) * _way(px, py, plant.top, azimuth, elevation, c)
        parts.append(float((np.exp(-depth) @ weight).mean()))
    return DIFFUSE * parts[0] + (1.0 - DIFFUSE) * parts[1]


def _way(px, py, z, azimuth, elevation, c):
    """Length of each ray within a cylinder, shape (points, rays)."""
    if c.top <= z:
        return np.zeros((len(px), len(azimuth)))
    east, north = (c.x - px)[:, None], (c.y - py)[:, None]
    along = east * np.sin(azimuth) + north * np.cos(azimuth)
    inside = along**2 - (east**2 + north**2 - c.radius**2)
    half = np.sqrt(np.maximum(inside, 0.0))
    tangent = np.tan(elevation)
    enters = np.maximum(np.maximum(along - half, max(c.base - z, 0.0) / tangent), 0.0)
    leaves = np.minimum(along + half, (c.top - z) / tangent)
    return np.where(inside > 0.0, np.maximum(leaves - enters, 0.0), 0.0) / np.cos(elevation)
