"""What grew on some ground in earlier years."""

from collections.abc import Mapping

import shapely
from shapely.geometry.base import BaseGeometry

from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.planner.gaps.answers import ROTATION_Y
from gardencanvas.planner.gaps.ways import Way

_LOOK_BACK_Y = 10


def families_before(garden: Garden, layout: Layout, ground: BaseGeometry, known: Catalogue) -> dict[str, int]:
    """Botanical families that grew on some ground, and in which year last.

    Of several layouts of a year the kept one counts, where one is kept: what was done, not what was weighed.
    """
    found: dict[str, int] = {}
    kept = {x.year for x in garden.layouts if x.kept}
    for old in garden.layouts:
        if not layout.year - _LOOK_BACK_Y <= old.year < layout.year or (old.year in kept and not old.kept):
            continue
        for planting in old.plantings:
            xy = planting.stations
            if not shapely.intersects_xy(ground, xy[:, 0], xy[:, 1]).any():
                continue
            try:
                family = known.crop(planting.crop).family
            except UnknownCrop:
                continue
            found[family] = max(found.get(family, 0), old.year)
    return found


def rests(way: Way, before: Mapping[str, int], year: int) -> bool:
    """Whether its family has been off some ground for as many years as the crop asks."""
    last = before.get(way.crop.family)
    years = way.crop.rotation_y.mid if way.crop.rotation_y else ROTATION_Y
    return last is None or year - last > years
