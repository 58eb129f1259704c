"""When frost kills: the typical frost dates of a site, moved for hardier crops and for covers."""

from functools import lru_cache
from typing import NamedTuple

from gardencanvas.crops.model import Crop
from gardencanvas.garden.site import Site
from gardencanvas.season.dayofyear import YEAR, day_index
from gardencanvas.season.warmth import mean_curve

NEVER = 10_000.0  # °C below zero that no climate here reaches
# A light freeze that half-hardy crops outlive: 28 °F, the second level of the US frost normals (NCEI).
HALF_HARDY_C = 2.2


class FrostFree(NamedTuple):
    """Days of the year between which a crop is safe: from ``begin`` for ``length`` days."""

    begin: int  # day of year after which the last killing frost is not expected
    length: int  # days to the first killing frost; a whole year where it never comes


def endures_c(crop: Crop) -> float:
    """How many degrees below the first frost a crop stands before it is killed.

    Tender crops go with the first frost. Others endure down to their killing temperature; where none is
    known, half-hardy crops a light freeze and hardy ones every frost.
    """
    kind = crop.frost.value if crop.frost is not None else "hardy"
    if kind == "tender":
        return 0.0
    if crop.life == "perennial":
        return NEVER
    if crop.frost_kill_c is not None:
        return max(0.0, -crop.frost_kill_c.mid)
    return HALF_HARDY_C if kind == "half-hardy" else NEVER


@lru_cache(maxsize=512)
def frost_free(site: Site, endures: float) -> FrostFree:
    """Days of the year between the last and the first frost that kill a crop.

    For a crop that endures some degrees, the frost dates move to the days on which the mean curve lies as
    many degrees lower than on the site's own dates (the curve falls and rises with the frosts; a rule of
    thumb). Where it never lies so low no frost kills.
    """
    if site.frost.last is None or site.frost.first is None or endures >= NEVER:
        return FrostFree(0, YEAR)
    curve = mean_curve(site.climate)
    last, first = day_index(site.frost.last), day_index(site.frost.first)
    length = (first - last) % YEAR
    winter = YEAR - length
    back = (k for k in range(winter + 1) if curve[(last - k) % YEAR] <= curve[last] - endures)
    on = (k for k in range(winter + 1) if curve[(first + k) % YEAR] <= curve[first] - endures)
    earlier, later = next(back, None), next(on, None)
    if earlier is None or later is None or earlier + later >= winter:
        return FrostFree(0, YEAR)
    return FrostFree((last - earlier) % YEAR, length + earlier + later)
