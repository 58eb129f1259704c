"""What light a crop needs."""

from gardencanvas.crops.model import Crop

# Where a crop's need is not known, that of partial sun: common practice for most leaf and root crops.
GOOD, LEAST = 0.6, 0.4


def light_good(crop: Crop) -> float:
    """Share of open-sky light that gives a full crop."""
    return crop.light_good.mid if crop.light_good else GOOD


def light_least(crop: Crop) -> float:
    """Least share of open-sky light at which it still crops."""
    return crop.light_least.mid if crop.light_least else min(LEAST, light_good(crop))


def light_source(crop: Crop) -> str:
    """Citation of the need."""
    return crop.light_good.source if crop.light_good else "common-practice"
