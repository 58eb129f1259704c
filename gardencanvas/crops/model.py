"""Crops as frozen values: each number carries its range, central value and source."""

from enum import StrEnum
from functools import cached_property
from typing import Annotated, Literal, Self

from pydantic import BaseModel, ConfigDict, Field, ValidationInfo, field_validator, model_validator

from gardencanvas.crops.bounds import BOUNDS

Slug = Annotated[str, Field(pattern=r"^[a-z0-9]+(-[a-z0-9]+)*$", max_length=60)]
Name = Annotated[str, Field(min_length=1, max_length=80)]
Text = Annotated[str, Field(max_length=600)]


class Record(BaseModel):
    """A frozen value that refuses unknown fields and numbers that are not finite."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False, str_strip_whitespace=True)


class Basis(StrEnum):
    """How a number came to its source."""

    SEEN = "seen"  # read in the source, or in a reprint of it
    MEMORY = "memory"  # known from the source, not read again
    PRACTICE = "practice"  # common practice, a rule of thumb
    DERIVED = "derived"  # computed from other sourced values, as the note says
    FALLBACK = "fallback"  # filled in by the engine from family or habit: results are "estimated"
    USER = "user"  # the grower's own figure


class Quantity(Record):
    """A number with its published range.

    ``low <= mid <= high``; ``mid`` is what the engine computes with. The unit is that of the field.
    """

    low: float
    mid: float
    high: float
    source: Slug
    basis: Basis = Basis.SEEN
    note: Text = ""

    @model_validator(mode="after")
    def _ordered(self) -> Self:
        if not self.low <= self.mid <= self.high:
            raise ValueError(f"range is out of order: low {self.low}, mid {self.mid}, high {self.high}")
        return self


def _within_bounds(value: Quantity | None, info: ValidationInfo) -> Quantity | None:
    """A number that a plant can have, as ``crops.bounds`` sees it."""
    if value is not None:
        bound = BOUNDS[info.field_name or ""]
        if value.low < bound[0] or value.high > bound[1]:  # by place: this runs thousands of times at a start
            raise ValueError(bound.refusal(value.low, value.high))
    return value


class Fact(Record):
    """A word with its source: a class, a kind, a yes or no."""

    value: str
    source: Slug
    basis: Basis = Basis.SEEN
    note: Text = ""


class Habit(StrEnum):
    """How a plant is drawn: its form seen from above."""

    ROSETTE = "rosette"  # lettuce, spinach, corn salad
    HEAD = "head"  # cabbage, hearted lettuce
    UPRIGHT = "upright"  # leek, onion, garlic, sweetcorn: strap or blade leaves
    BUSH = "bush"  # tomato, pepper, dwarf bean, potato
    FEATHERY = "feathery"  # carrot, fennel, dill
    CLIMBER = "climber"  # pole bean, pea, cucumber on a net
    SPRAWLER = "sprawler"  # squash, melon, sweet potato
    TUFT = "tuft"  # chives, grasses, cereals
    CARPET = "carpet"  # thyme, white clover, purslane
    SPIRE = "spire"  # single-stemmed flowers: sunflower, hollyhock
    SHRUB = "shrub"  # currants, sage, rosemary
    BLADE = "blade"  # rhubarb, chard, artichoke: large leaves on stalks


class Layer(StrEnum):
    """The storey a grown plant fills."""

    GROUND = "ground cover"
    LOW = "low"
    MIDDLE = "middle"
    TALL = "tall"
    CLIMBING = "climbing"


class Group(StrEnum):
    """Where a grower looks for a crop in the seed tin."""

    FRUITING = "fruiting vegetable"
    LEAF = "leaf vegetable"
    BRASSICA = "brassica"
    ROOT = "root and tuber"
    ALLIUM = "allium"
    LEGUME = "legume"
    PERENNIAL = "perennial vegetable"
    GRAIN = "grain"
    HERB = "herb"
    FLOWER = "flower"
    SOFT_FRUIT = "soft fruit"
    GREEN_MANURE = "green manure"


class Start(StrEnum):
    """Ways to start a crop."""

    SOWN = "sown"
    RAISED = "raised"
    SET = "set"


class Harvest(StrEnum):
    """What a harvest leaves behind."""

    SINGLE = "single"  # the plant goes
    REPEATED = "repeated"  # picked over: pods, fruits, leaves one by one
    CUT_AGAIN = "cut and come again"  # cut to the base, grows again
    NONE = "none"  # green manures and flowers left standing


class Hazard(Record):
    """A caution that is shown wherever the crop is; ``severity`` high is never hidden."""

    part: Name
    hazard: Text
    caution: Text
    severity: Literal["low", "medium", "high"]
    source: Slug
    basis: Basis = Basis.SEEN


class Remark(Record):
    """A sourced note on pollination, pests or use, with the strength of its evidence."""

    topic: Literal["pollination", "pests", "disease", "use", "growing"]
    text: Text
    evidence: Literal["several trials", "one trial", "tradition only", "common practice"]
    source: Slug


class Crop(Record):
    """One crop. A field that is ``None`` is not known; ``crops.fallback`` says what stands in for it."""

    id: Slug
    name: Name
    other_names: tuple[Name, ...] = ()
    names: dict[str, Name] = Field(default_factory=dict)  # language code -> name
    botanical: Name
    family: Name  # APG IV
    group: Group
    habit: Habit
    layer: Layer
    life: Literal["annual", "biennial", "perennial"] = "annual"
    starts: tuple[Start, ...] = Field(min_length=1)  # the usual one first
    harvest: Harvest
    harvest_disturbs: bool | None = None  # lifting it breaks the soil beside it

    # Sizes at maturity
    height_m: Quantity | None = None
    spread_m: Quantity | None = None  # canopy diameter
    canopy_base_m: Quantity | None = None  # lowest leaves of a grown, usually tall plant
    root_depth_m: Quantity | None = None  # effective: FAO-56 Zr
    root_depth_max_m: Quantity | None = None
    root_spread_m: Quantity | None = None  # diameter of the root system
    rooting: Fact | None = None  # shallow, medium, deep
    leaf_area_index: Quantity | None = (
        None  # one-sided leaf area over the plant's own footprint at full growth
    )
    extinction: Quantity | None = None  # k of Beer–Lambert

    # Spacing, sowing
    in_row_m: Quantity | None = None
    between_rows_m: Quantity | None = None
    clump_spacing_m: Quantity | None = None
    clump_plants: Quantity | None = None
    half_weight_per_m2: Quantity | None = None  # plants per m² at which each weighs half of one alone
    sowing_depth_m: Quantity | None = None
    germination_min_c: Quantity | None = None
    germination_best_c: Quantity | None = None
    germination_max_c: Quantity | None = None
    germination_share: Quantity | None = None  # 0-1
    seeds_per_gram: Quantity | None = None
    seed_life_y: Quantity | None = None

    # Time. Days hold at `grown_at_c`, the daily mean temperature of the source's conditions.
    grown_at_c: Quantity | None = None
    base_temperature_c: Quantity | None = None
    top_temperature_c: Quantity | None = None  # warmth above it brings nothing more
    nursery_d: Quantity | None = None  # sowing under glass to planting out
    stage_initial_d: Quantity | None = None
    stage_development_d: Quantity | None = None
    stage_middle_d: Quantity | None = None
    stage_late_d: Quantity | None = None
    harvest_from_sowing_d: Quantity | None = None  # sown in place to first harvest
    harvest_from_planting_d: Quantity | None = None  # planted out or set to first harvest
    harvest_length_d: Quantity | None = None  # first to last harvest, or how long it stands ready
    frost: Fact | None = None  # tender, half-hardy, hardy, very hardy
    frost_kill_c: Quantity | None = None

    # Needs
    light: Fact | None = None  # full sun, partial sun, partial shade, shade
    light_good: Quantity | None = None  # share of open-sky light for a full crop, 0-1
    light_least: Quantity | None = None  # least share at which it still crops, 0-1
    water: Fact | None = None  # low, medium, high
    water_critical: Fact | None = None
    depletion_fraction: Quantity | None = None  # FAO-56 p
    kc_initial: Quantity | None = None
    kc_middle: Quantity | None = None
    kc_end: Quantity | None = None
    nutrients: Fact | None = None  # low, medium, high, fixing
    support: Fact | None = None  # none, stake, cane, net, trellis

    # Yield and rotation
    yield_kg_m2: Quantity | None = None
    yield_kg_plant: Quantity | None = None
    rotation_y: Quantity | None = None
    rotation_why: Fact | None = None

    hazards: tuple[Hazard, ...] = ()
    remarks: tuple[Remark, ...] = ()

    _possible = field_validator(*BOUNDS)(_within_bounds)

    @cached_property
    def quantities(self) -> dict[str, Quantity]:
        """Known numbers by field name."""
        return {k: v for k in type(self).model_fields if isinstance(v := getattr(self, k), Quantity)}

    @cached_property
    def facts(self) -> dict[str, Fact]:
        """Known classes by field name."""
        return {k: v for k in type(self).model_fields if isinstance(v := getattr(self, k), Fact)}


class Variety(Record):
    """A variety names only what differs from its crop."""

    id: Slug
    crop: Slug
    name: Name
    note: Text = ""
    height_m: Quantity | None = None
    spread_m: Quantity | None = None
    in_row_m: Quantity | None = None
    between_rows_m: Quantity | None = None
    nursery_d: Quantity | None = None
    harvest_from_sowing_d: Quantity | None = None
    harvest_from_planting_d: Quantity | None = None
    harvest_length_d: Quantity | None = None
    habit: Habit | None = None
    layer: Layer | None = None
    support: Fact | None = None

    _possible = field_validator(*BOUNDS, check_fields=False)(_within_bounds)

    def over(self, crop: Crop) -> Crop:
        """The crop as this variety grows."""
        own = {
            k: v
            for k in type(self).model_fields
            if k not in {"id", "crop", "name", "note"} and (v := getattr(self, k)) is not None
        }
        return Crop.model_validate({**{k: getattr(crop, k) for k in Crop.model_fields}, **own})


class Source(Record):
    """A citation in full."""

    id: Slug
    title: Annotated[str, Field(min_length=1, max_length=400)]
    author: Text = ""
    year: int | None = None
    where: Text = ""  # publisher, journal, address
    note: Text = ""
