"""How many seeds a planting takes: what germinates, what of that comes up, which lots count."""

from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.crops.tin import TEST_HOLDS_D, Age, SeedLot, age_warning
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.sowing import seeds_for

# Of seeds that germinate in a test, this share comes up: in the open 0.5–0.8, under glass nearly all
# (common practice).
FIELD, GLASS = 0.7, 0.95


def needed(planting: Planting, crop: Crop) -> date:
    """The day a planting's seed is sown, or its plants are set."""
    start = planting.start
    if start.kind != "raised" or crop.nursery_d is None:
        return start.on
    return start.sown_on or start.on - timedelta(days=round(crop.nursery_d.mid))


def is_good(lot: SeedLot, crop: Crop, on: date) -> bool:
    """Whether a lot may be relied on: alive, neither past its life nor failed in its test."""
    if lot.tested == 0.0:
        return False
    warning = age_warning(lot, crop, on)
    return warning is None or warning.code is Age.GETTING_OLD


def good_lots(
    lots: Iterable[SeedLot], crop: Crop, crop_id: str, variety: str | None, on: date
) -> list[SeedLot]:
    """The lots of a crop or variety that may be relied on, on a day."""
    return [x for x in lots if (x.crop, x.variety) == (crop_id, variety) and is_good(x, crop, on)]


def germination(crop: Crop, lots: Iterable[SeedLot], on: date) -> tuple[float | None, bool]:
    """Share that germinates, and whether a test of the last year says so; else it is the usual share."""
    tests = [
        (x.tested_on, x.tested)
        for x in lots
        if x.tested and x.tested_on is not None and 0 <= (on - x.tested_on).days <= TEST_HOLDS_D
    ]
    if tests:
        return max(tests)[1], True
    return (crop.germination_share.mid if crop.germination_share is not None else None), False


def stations_of(planting: Planting, variety: str | None) -> int:
    """How many of a planting's stations a variety has."""
    if variety is None or len(planting.varieties) < 2:
        return planting.pattern.count
    return int((planting.mixed == planting.varieties.index(variety)).sum())


def seeds_of(planting: Planting, variety: str | None, share: float | None) -> int | None:
    """Seeds that give the plants of a variety 95 times in 100; None where the share is not known."""
    if share is None:
        return None
    place = GLASS if planting.start.kind == "raised" else FIELD
    return seeds_for(stations_of(planting, variety) * planting.per_station, round(share * place, 4))


def seeds_to_sow(planting: Planting, known: Catalogue, lots: Sequence[SeedLot] = ()) -> int | None:
    """Seeds of all varieties of a planting; None where it is not sown, or a share is not known."""
    if planting.start.kind not in ("sown", "raised"):
        return None
    total = 0
    for variety in planting.varieties or (None,):
        crop = known.resolve(planting.crop, variety)
        on = needed(planting, crop)
        share, _ = germination(crop, good_lots(lots, crop, planting.crop, variety, on), on)
        seeds = seeds_of(planting, variety, share)
        if seeds is None:
            return None
        total += seeds
    return total
