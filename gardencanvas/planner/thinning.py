"""Thinning what came up by itself to the distance at which the sources grow its crop."""

from math import sqrt

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.ground import usual_spacing
from gardencanvas.garden import volunteers
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting


def usual_distance(catalogue: Catalogue, planting: Planting) -> float:
    """How far apart its stations usually stand, metres.

    In a line the spacing in the row; scattered, evenly with the same ground: √(in the row × between rows).
    """
    crop = catalogue.resolve(planting.crop, planting.variety)
    along, across = usual_spacing(crop, planting.per_station)
    return along if volunteers.in_line(planting.pattern) else round(sqrt(along * across), 3)


def thinned(garden: Garden, layout_id: str, planting: Planting, catalogue: Catalogue) -> Garden:
    """The garden with a volunteer thinned to its usual distance.

    Raises
    ------
    Refusal
        If it did not come up by itself, is locked, or stands so far apart already.
    """
    return volunteers.thin(garden, layout_id, planting.id, usual_distance(catalogue, planting))
