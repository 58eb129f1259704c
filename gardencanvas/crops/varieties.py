"""A crop as one of its varieties grows."""

from gardencanvas.crops.fallback import FIRST_HARVEST, STAGES
from gardencanvas.crops.model import Basis, Crop, Quantity, Variety

_LONGEST = 400.0  # days, as ``crops.bounds`` has it


def grown(crop: Crop, variety: Variety) -> Crop:
    """The crop with what the variety names laid over it.

    An early variety hurries through all its growth: the stages keep their proportions and are stretched to
    the variety's days to the end of the harvest (basis ``derived``).
    """
    own = variety.over(crop)
    before, after = _whole_d(crop), _whole_d(own)
    if before is None or after is None or before == after:
        return own
    stages = {
        s: _stretched(q, after / before, variety) for s in STAGES if (q := getattr(crop, s)) is not None
    }
    return Crop.model_validate({**{k: getattr(own, k) for k in Crop.model_fields}, **stages})


def _whole_d(crop: Crop) -> float | None:
    """Days from the usual start to the end of the harvest."""
    first = getattr(crop, FIRST_HARVEST[crop.starts[0]])
    return None if first is None or crop.harvest_length_d is None else first.mid + crop.harvest_length_d.mid


def _stretched(stage: Quantity, factor: float, variety: Variety) -> Quantity:
    low, mid, high = (min(factor * days, _LONGEST) for days in (stage.low, stage.mid, stage.high))
    basis = Basis.FALLBACK if stage.basis is Basis.FALLBACK else Basis.DERIVED
    note = f"the crop's stage times {factor:.2f}, by the days of the variety “{variety.name}”"
    return Quantity(low=low, mid=mid, high=high, source=stage.source, basis=basis, note=note)
