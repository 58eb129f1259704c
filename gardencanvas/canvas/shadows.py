"""Shadows of fixtures on the plan about midday, soft at the far edge."""

from datetime import UTC, date, datetime, time, timedelta

import numpy as np
from PySide6.QtGui import QPainterPath
from shapely import Polygon
from shapely.affinity import scale

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.shapes import from_shapely
from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.site import Site
from gardencanvas.light.shadow import shadow
from gardencanvas.light.sun import position

# One shadow every quarter of an hour about solar noon, laid over each other: where all fall it is darkest.
_MINUTES = (-45, -30, -15, 0, 15, 30, 45)


def shadows_of(site: Site, fixture: Fixture, on: date) -> list[QPainterPath]:
    """The fixture's shadows about solar noon on a date, in centimetres; none while the sun hardly rises."""
    noon = datetime.combine(on, time(12), UTC) - timedelta(minutes=4 * site.longitude_deg)
    instants = np.array(
        [np.datetime64((noon + timedelta(minutes=m)).replace(tzinfo=None), "ms") for m in _MINUTES]
    )
    elevation, azimuth = position(site.latitude_deg, site.longitude_deg, instants)
    paths = []
    for high, way in zip(elevation, azimuth, strict=True):
        ground = shadow(fixture, site.bearing_deg, float(high), float(way))
        if ground is not None:
            if fixture.base_m == 0:
                ground = ground.difference(Polygon(fixture.outline))
            paths.append(from_shapely(scale(ground, CM, CM, origin=(0, 0))))
    return paths
