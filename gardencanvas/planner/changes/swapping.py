"""Another variety of the same crop, that is out sooner."""

from collections.abc import Iterator

from gardencanvas.crops.model import Crop
from gardencanvas.fit.report import Remedy
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.case import Case
from gardencanvas.planner.codes import Change
from gardencanvas.planner.ladder import Ladder, choices

MOST = 4  # varieties tried


def swaps(case: Case) -> Iterator[Ladder]:
    """A ladder of known varieties for each planting of one variety or none, the nearest in time first."""
    for planting in case.changeable:
        if len(planting.varieties) > 1:
            continue
        now = _days(case.crop(planting), planting)
        sooner = []
        for variety in case.catalogue.varieties:
            if variety.crop == planting.crop and variety.id != planting.variety:
                days = _days(case.catalogue.resolve(planting.crop, variety.id), planting)
                if days < now:
                    sooner.append((now - days, variety.id))
        remedies = [
            Remedy(Change.VARIETY, {"planting": planting.id, "variety": variety})
            for _, variety in sorted(sooner)[:MOST]
        ]
        if remedies:
            yield choices(remedies)


def _days(crop: Crop, planting: Planting) -> float:
    """Days in the bed to the last harvest, as the crop's record gives them."""
    sown = planting.start.kind in ("sown", "volunteer")
    one, two = crop.harvest_from_sowing_d, crop.harvest_from_planting_d
    first = (one or two) if sown else (two or one)
    return (first.mid if first else 0.0) + (crop.harvest_length_d.mid if crop.harvest_length_d else 0.0)
