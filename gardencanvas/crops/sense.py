"""Whether the values of one crop agree with one another, beyond each being possible by itself."""

from collections.abc import Iterator
from math import sqrt
from typing import NamedTuple

from gardencanvas.crops.fallback import FIRST_HARVEST, STAGES
from gardencanvas.crops.genera import family_of
from gardencanvas.crops.model import Crop, Quantity


class Doubt(NamedTuple):
    """What does not agree: the field, a code, and a sentence without its full stop."""

    field: str
    code: str
    text: str


CLASSES: dict[str, tuple[str, ...]] = {
    "rooting": ("shallow", "medium", "deep"),
    "frost": ("tender", "half-hardy", "hardy", "very hardy"),
    "light": ("full sun", "partial sun", "partial shade", "shade"),
    "water": ("low", "medium", "high"),
    "nutrients": ("low", "medium", "high", "fixing"),
    "support": ("none", "stake", "cane", "net", "trellis"),
}
# A canopy spreads over about the ground that its spacing gives it. Stands sown to close early (vetches, field
# peas) spread over two rows, shrubs and canes with room to pick between them over half: common practice.
SPREAD_OF_SPACING = (0.4, 2.5)
# The published days to harvest and lengths of harvest are read as wide as they stand, and this much wider,
# since stages are published for other places than the days.
STAGE_TOLERANCE = 0.15
_ASCENDING = (  # pairs of which the first is the smaller
    ("canopy_base_m", "height_m", "leaves begin below the top"),
    ("root_depth_m", "root_depth_max_m", "the effective depth is within the greatest"),
    ("base_temperature_c", "grown_at_c", "a crop is grown above its base temperature"),
    ("base_temperature_c", "top_temperature_c", "growth begins below where it stops to quicken"),
    ("germination_min_c", "germination_best_c", "seed sprouts best above the least"),
    ("germination_best_c", "germination_max_c", "seed sprouts best below the most"),
    ("light_least", "light_good", "a full crop needs more light than the least"),
    ("harvest_from_planting_d", "harvest_from_sowing_d", "a raised plant is ahead of a seed"),
)


def doubts(crop: Crop) -> Iterator[Doubt]:
    """What in a crop does not agree."""
    yield from _family(crop)
    yield from _classes(crop)
    yield from _order(crop)
    yield from _spacing(crop)
    yield from _stages(crop)


def _family(crop: Crop) -> Iterator[Doubt]:
    family = family_of(crop.botanical)
    if family is not None and family != crop.family:
        text = f"{crop.botanical} is of the family {family}, not {crop.family}"
        yield Doubt("family", "family-of-genus", text)


def _classes(crop: Crop) -> Iterator[Doubt]:
    for field, allowed in CLASSES.items():
        fact = crop.facts.get(field)
        if fact is not None and fact.value not in allowed:
            yield Doubt(field, "unknown-class", f"{fact.value!r} is none of {', '.join(allowed)}")


def _order(crop: Crop) -> Iterator[Doubt]:
    known = crop.quantities
    for small, great, why in _ASCENDING:
        if small in known and great in known and known[small].mid > _greatest(known[great], great):
            text = f"{known[small].mid:g} is more than the {known[great].mid:g} of {great}: {why}"
            yield Doubt(small, "out-of-order", text)


def _greatest(quantity: Quantity, field: str) -> float:
    return quantity.high if field == "root_depth_max_m" else quantity.mid


def _spacing(crop: Crop) -> Iterator[Doubt]:
    if crop.spread_m is None or crop.in_row_m is None or crop.between_rows_m is None:
        return
    room = sqrt(crop.in_row_m.mid * crop.between_rows_m.mid)
    least, most = SPREAD_OF_SPACING
    if not least * room <= crop.spread_m.mid <= most * room:
        text = (
            f"{crop.spread_m.mid:g} m does not go with {crop.in_row_m.mid:g} by "
            f"{crop.between_rows_m.mid:g} m of room: {least:g} to {most:g} times {room:.2g} m is usual"
        )
        yield Doubt("spread_m", "spread-for-spacing", text)


def _stages(crop: Crop) -> Iterator[Doubt]:
    """Stages sum to the days to harvest and its length; of perennials cut while they grow, at least to it."""
    known = crop.quantities
    first = known.get(FIRST_HARVEST[crop.starts[0]])
    if first is None or crop.harvest_length_d is None or any(s not in known for s in STAGES):
        return
    total = sum(known[s].mid for s in STAGES)
    least = (1.0 - STAGE_TOLERANCE) * (first.low + crop.harvest_length_d.low)
    most = (1.0 + STAGE_TOLERANCE) * (first.high + crop.harvest_length_d.high)
    if total < least or (total > most and crop.life != "perennial"):
        text = f"the stages sum to {total:g} days; harvest and its length come to {least:.0f} to {most:.0f}"
        yield Doubt("stage_late_d", "stages-for-harvest", text)
