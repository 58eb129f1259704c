"""The ground a plant needs and the ground it has."""

from math import pi, sqrt
from typing import NamedTuple

from shapely import Polygon

from gardencanvas.crops.model import Crop
from gardencanvas.fit.near import own_pairs
from gardencanvas.garden.pattern import Block, Drift, Edging, Pattern, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting

_APART = 1.2  # times the distance of its places: then others stand between (square blocks: 1.41)
_FAR = 2.0  # times the mean distance of its own plants: no nearest one is farther off


class Ground(NamedTuple):
    """Ground of one station.

    A plant among its like spreads no wider than a disc of the ground its usual spacing gives it: a carrot's
    leaves could cover 30 cm, but stand 5 cm apart in the row.
    """

    need_m2: float  # by the usual spacing
    along_m: float  # the usual spacing in the row …
    across_m: float  # … and between rows
    radius_m: float  # of a disc of the needed ground
    station_m2: float  # ground its own pattern gives it
    clump_factor: float  # radius of a clump over that of one plant left to spread
    usual_station_m2: float  # as ``station_m2``, at the usual spacing

    @property
    def spacing_m(self) -> float:
        """Equal spacing each way that gives the same ground."""
        return sqrt(self.need_m2)


def usual_spacing(crop: Crop, seedlings: int = 1) -> tuple[float, float]:
    """Usual spacing in the row and between rows, metres; for a clump, its own.

    A clump of another size than usual gets ground in proportion. A crop with no clump spacing on record
    gets that of so many single plants.
    """
    spread = crop.spread_m.mid if crop.spread_m else 0.3
    along = crop.in_row_m.mid if crop.in_row_m else spread
    across = crop.between_rows_m.mid if crop.between_rows_m else max(spread, along)
    if seedlings == 1:
        return along, across
    if crop.clump_spacing_m and crop.clump_plants:
        each = crop.clump_spacing_m.mid * sqrt(seedlings / crop.clump_plants.mid)
        return each, each
    return along * sqrt(seedlings), across * sqrt(seedlings)


def pattern_spacing(planting: Planting) -> tuple[float, float | None]:
    """Distance along and across that a planting keeps; None across a single line or loose spots.

    Where others stand on the places between, or all of those were left out, it is the distance to its own
    nearest; across is then what gives each the ground it has. A hole in a pattern does not count.
    """
    pattern = planting.pattern
    along, across = _places_apart(pattern)
    if isinstance(pattern, Spots | Drift) or (pattern.every == 1 and not pattern.left_out):
        return along, across
    reach = _FAR * along * pattern.places / pattern.count
    pairs = own_pairs(planting.stations, reach)
    nearest = float(pairs.distance_m.min(initial=reach))
    holed = nearest <= _APART * along
    if pattern.every == 1 and holed:
        return along, across
    places = pattern.every if holed else pattern.places / pattern.count  # for each of its own
    return nearest, None if across is None else along * across * places / nearest


def _places_apart(pattern: Pattern) -> tuple[float, float | None]:
    """Distance along and across of a pattern's places."""
    if isinstance(pattern, Rows):
        return pattern.spacing_m, pattern.row_spacing_m if pattern.rows > 1 else None
    if isinstance(pattern, Strip):
        return pattern.spacing_m, pattern.across_m
    if isinstance(pattern, Block):
        return pattern.spacing_m, pattern.spacing_m * (sqrt(3) / 2 if pattern.staggered else 1.0)
    if isinstance(pattern, Drift):
        each = sqrt(Polygon(pattern.outline).area / pattern.count)
        return max(each, pattern.spacing_m), max(each, pattern.spacing_m)
    if isinstance(pattern, Edging | RingPattern):
        return pattern.spacing_m, None
    return pattern.spacing_m, None


def ground_of(planting: Planting, crop: Crop) -> Ground:
    """Ground needed by the crop's usual spacing, and ground the pattern gives."""
    seedlings = planting.per_station
    along, across = usual_spacing(crop, seedlings)
    need = along * across
    widest = crop.spread_m.mid * sqrt(seedlings) if crop.spread_m else sqrt(need)
    if isinstance(planting.pattern, Spots):
        given = need  # loose spots have what they need; how near they really stand is seen station by station
    else:
        own, beside = pattern_spacing(planting)
        given = min(own, widest) * min(beside or widest, widest)
    usual = min(along, widest) * min(across, widest)
    return Ground(need, along, across, sqrt(need / pi), given, sqrt(seedlings), usual)
