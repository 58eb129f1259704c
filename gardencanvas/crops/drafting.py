"""What a grower's own crop or variety starts from: an id, the hazards of its kind, the crop it is like."""

from collections.abc import Collection, Iterable
from typing import Any

from pydantic import ValidationError

from gardencanvas.crops.errors import complaints_of
from gardencanvas.crops.fallback import FIRST_HARVEST, STAGES
from gardencanvas.crops.model import Crop, Hazard
from gardencanvas.crops.sense import doubts
from gardencanvas.crops.spelling import words

_LONGEST = 50  # letters of an id, so that a number can follow


def free_id(name: str, taken: Collection[str]) -> str:
    """An id made of a name that nothing else has: ``early-round``, ``early-round-2``."""
    plain = ["".join(c for c in word if c.isascii()) for word in words(name)]
    stem = "-".join(p for p in plain if p)[:_LONGEST].strip("-") or "own"
    number, made = 1, stem
    while made in taken:
        number += 1
        made = f"{stem}-{number}"
    return made


def hazards_of_kind(botanical: str, crops: Iterable[Crop]) -> tuple[Hazard, ...]:
    """Hazards of the crops of the same species: an own crop of that species has them too."""
    species = _species(botanical)
    found: dict[tuple[str, str], Hazard] = {}
    for crop in crops:
        if len(species) == 2 and _species(crop.botanical) == species:
            found.update({(h.part, h.hazard): h for h in crop.hazards})
    return tuple(found.values())


def _species(botanical: str) -> list[str]:
    """Genus and epithet; the sign of a hybrid does not count."""
    return [w for w in words(botanical) if w not in ("x", "×")][:2]


def drafted(base: Crop | None, **fields: Any) -> tuple[Crop | None, str]:
    """A crop with some fields changed, or what is wrong with it: a sentence without its full stop.

    Where the days to its harvest are changed, the stages of ``base`` do not hold for it and are left open.
    """
    known = {} if base is None else {k: getattr(base, k) for k in Crop.model_fields}
    days = {*FIRST_HARVEST.values(), "harvest_length_d"}
    if base is not None and any(fields.get(k, known[k]) != known[k] for k in days):
        fields = {**dict.fromkeys(STAGES), **fields}
    try:
        crop = Crop.model_validate({**known, **fields})
    except ValidationError as error:
        first = complaints_of(error, "", "")[0]
        return None, f"{_plain(first.field)}: {first.text}"
    doubt = next(doubts(crop), None)
    return crop, "" if doubt is None else f"{_plain(doubt.field)}: {doubt.text}"


def _plain(field: str) -> str:
    """A field's name as words, without its unit."""
    stem = field.rsplit("_", 1)[0] if field.endswith(("_m", "_d", "_c", "_y")) else field
    return stem.replace("_", " ")
