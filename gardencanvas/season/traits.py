"""The numbers of a crop that its growth is computed from, for one way of starting it."""

from math import exp, inf
from typing import Generic, NamedTuple, TypeVar

from gardencanvas.crops.model import Crop, Habit, Harvest, Layer, Quantity
from gardencanvas.season.beta import TENTH, calibrate

# Common practice throughout, where no source is named:
SPRAWL_HEIGHT = 0.5  # a climber without support stands half as high …
SPRAWL_SPREAD = 2.0**0.5  # … and, with the same canopy, covers twice the ground
INITIAL_LEFT = 0.25  # of the initial stage a plant raised elsewhere still needs to take root
CUT_KEEPS = 0.75  # halved at each cut and grown again: the mean of half and full
BURIED_M = 0.05  # tubers, cloves and large bulbs; a set plant stands higher
SEASONAL_TENTH = (
    0.3  # of its first year's warmth a perennial without stage days takes to a tenth of its cover
)
# 8 of 30 days for tomato, 6 of 20 for cucumber, 7 of 20 for sweet corn at 20 °C (Harrington & Minges against
# FAO-56 table 11): a third of the initial stage passes before a sown seed shows.
EMERGENCE = 1 / 3
LEAF_AREA_INDEX = 3.0  # at effective full cover (FAO-56, chapter 6)
EXTINCTION = 0.65  # SWAT plant table, all vegetables
TOP_C = 30.0  # horizontal cut-off of warm-season crops
LONGEST = {"annual": 400, "biennial": 800, "perennial": 1096}  # days: cleared then, ripe or not


T = TypeVar("T")


class Traits(NamedTuple, Generic[T]):
    """Numbers of one crop under one way of starting (T is float), or of many as columns (T is an array).

    Days hold under the crop's own conditions.
    """

    initial_d: T  # in the bed, to a tenth of ground cover; infinite as full_d
    full_d: T  # in the bed, to full cover; infinite: a year's warmth
    power: T  # of the beta function
    floor: T  # share of full growth when it goes into the bed
    ripe_d: T  # in the bed, to the first harvest
    picking_d: T  # first to last harvest
    picking_thermal: T  # 1: picking days are those of its own warmth; 0: calendar days
    nursery_d: T  # calendar days before the bed
    shows_d: T  # in the bed, until frost can touch it
    longest_d: T
    radius_m: T
    height_m: T
    base_m: T
    root_m: T
    leaf_area: T
    cover: T  # share of light its canopy takes at full growth
    cut: T  # what stands of height and leaf during the harvest, 0-1
    perennial: T
    regrows: T  # 1: dies down in winter and grows its stages anew each year


def _mid(quantity: Quantity | None, default: float = 0.0) -> float:
    return default if quantity is None else quantity.mid


def _need(crop: Crop, field: str) -> float:
    value = getattr(crop, field)
    if value is None:
        raise ValueError(f"crop {crop.id!r} has no {field}; complete it first")
    return float(value.mid)


def base_top(crop: Crop) -> tuple[float, float, float]:
    """Base, top and source temperature of a crop, °C."""
    base = _need(crop, "base_temperature_c")
    return base, max(_mid(crop.top_temperature_c, TOP_C), base + 1.0), _need(crop, "grown_at_c")


def sizes(crop: Crop, supported: bool) -> tuple[float, float]:
    """Height and spread at full growth, metres.

    A climber's figures hold on its support; without one it sprawls. A sprawler led up a support grows as
    high as it would have run, and stands as wide as it was high.
    """
    height, spread = _need(crop, "height_m"), _need(crop, "spread_m")
    if crop.habit is Habit.CLIMBER or crop.layer is Layer.CLIMBING:
        return (height, spread) if supported else (height * SPRAWL_HEIGHT, spread * SPRAWL_SPREAD)
    if crop.habit is Habit.SPRAWLER and supported and spread > height:
        return spread, height
    return height, spread


class _Times(NamedTuple):
    initial: float
    full: float
    ripe: float
    total: float


def _ripe(crop: Crop, in_place: bool) -> tuple[float, float]:
    """Days in the bed to the first harvest: started this way, and started the crop's usual way."""
    usual_in_place = crop.starts[0] == "sown"
    days = {True: crop.harvest_from_sowing_d, False: crop.harvest_from_planting_d}
    stages = (crop.stage_initial_d, crop.stage_development_d, crop.stage_middle_d, crop.stage_late_d)
    total = sum(_mid(stage) for stage in stages)
    by_stage = total if crop.harvest in (Harvest.SINGLE, Harvest.NONE) else total - _mid(crop.stage_late_d)
    usual = _mid(days[usual_in_place], by_stage)
    own = days[in_place]
    if own is not None:
        return own.mid, usual
    if in_place == usual_in_place:
        return usual, usual
    nursery = _mid(crop.nursery_d)
    return usual + (nursery if in_place else -min(nursery, usual / 2)), usual


def _times(crop: Crop, in_place: bool) -> _Times:
    """Days in the bed to a tenth cover, full cover, first harvest, end of the stages.

    Stages are counted from the crop's usual way of starting (its first); started otherwise, the initial stage
    takes up the difference. Without stage days full growth is a season's matter: infinite here.
    """
    initial, development = _mid(crop.stage_initial_d), _mid(crop.stage_development_d)
    rest = _mid(crop.stage_middle_d) + _mid(crop.stage_late_d)
    ripe, usual = _ripe(crop, in_place)
    if initial + development <= 0.0:
        return _Times(inf, inf, ripe, ripe)
    shift = max(ripe - usual, (INITIAL_LEFT - 1.0) * initial)
    full = initial + development + shift
    return _Times(initial + shift, full, ripe, full + rest)


def _below_ground(crop: Crop, kind: str) -> bool:
    """Whether it goes into the bed as a seed, or as a tuber, clove or bulb that is buried."""
    return kind == "sown" or (kind == "set" and _mid(crop.sowing_depth_m) >= BURIED_M)


def _floor(age: float, initial: float) -> float:
    """Share of full growth of a plant of some age, its radius growing evenly to a tenth cover."""
    return TENTH * (age / (age + initial)) ** 2 if age > 0.0 else 0.0


def traits(crop: Crop, kind: str, nursery_days: int | None, supported: bool) -> Traits[float]:
    """The numbers of a crop for one way of starting.

    Parameters
    ----------
    kind
        ``sown``, ``raised``, ``set`` or ``volunteer``.
    nursery_days
        Days a raised planting truly spent under glass; None: the crop's usual.

    Notes
    -----
    Plants raised for less than the usual time bring the missing days with them into the bed; older ones gain
    nothing, held back by their pots (common practice). At planting out the canopy is as wide as growth in
    proportion to age gives, with a tenth of the ground covered at the end of the initial stage.

    Raises
    ------
    ValueError
        If the crop lacks a number that growth cannot do without.
    """
    raised = kind == "raised"
    usual = _mid(crop.nursery_d)
    spent = float(usual if nursery_days is None else nursery_days) if raised else 0.0
    late = max(usual - spent, 0.0) if raised else 0.0
    initial, full, ripe, total = (t + late for t in _times(crop, kind in ("sown", "volunteer")))
    if full < inf:
        full = max(full, 1.0)
        initial = min(max(initial, 0.02 * full), 0.9 * full)
    height, spread = sizes(crop, supported)
    root = _need(crop, "root_depth_m")
    leaf = _mid(crop.leaf_area_index, LEAF_AREA_INDEX)
    none = crop.harvest is Harvest.NONE and _mid(crop.harvest_length_d) == 0.0
    perennial = crop.life == "perennial" and crop.harvest is not Harvest.SINGLE  # lifted crops go
    return Traits(
        initial_d=initial,
        full_d=full,
        power=calibrate(initial / full if full < inf else SEASONAL_TENTH),
        floor=_floor(min(spent, usual or spent), initial if full < inf else ripe),
        ripe_d=max(total if none else ripe, 1.0),
        picking_d=0.0 if none else _mid(crop.harvest_length_d),
        picking_thermal=float(crop.harvest is not Harvest.SINGLE),
        nursery_d=spent,
        shows_d=min(initial, ripe) * EMERGENCE if _below_ground(crop, kind) else 0.0,
        longest_d=LONGEST[crop.life],
        radius_m=spread / 2,
        height_m=height,
        base_m=min(_mid(crop.canopy_base_m), 0.9 * height),
        root_m=root,
        leaf_area=leaf,
        cover=1.0 - exp(-_mid(crop.extinction, EXTINCTION) * leaf),
        cut=CUT_KEEPS if crop.harvest is Harvest.CUT_AGAIN else 1.0,
        perennial=float(perennial),
        regrows=float(perennial and full < inf),
    )
