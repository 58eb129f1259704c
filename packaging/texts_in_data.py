"""Finds the texts of the shipped data that the window shows: hazards, remarks, reasons, names of families.

Names of crops have their place in the records themselves; notes beside numbers and citations stay as they
are.
"""

from collections.abc import Iterator

from texts_in_source import WORDS, Text

from gardencanvas.crops.bounds import BOUNDS
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.interactions import interactions
from gardencanvas.crops.model import Crop
from gardencanvas.crops.sense import CLASSES

FILE = "resources/crops"


def read_data() -> list[Text]:
    """Every such text once, in the order of the data."""
    return [Text(WORDS, source, FILE, 0) for source in dict.fromkeys(_texts()) if source]


def _texts() -> Iterator[str]:
    known = catalogue()
    for crop in known.crops:
        yield from _texts_of(crop)
        for variety in known.varieties_of(crop.id):
            yield from (variety.name, variety.note)
    yield from known.families.values()
    for interaction in interactions():
        yield interaction.what
        if interaction.size is not None:
            yield interaction.size.unit
    yield from (source.title for source in known.sources.values() if not source.author)
    yield from (bound.why for bound in BOUNDS.values())


def _texts_of(crop: Crop) -> Iterator[str]:
    for hazard in crop.hazards:
        yield from (hazard.part, hazard.hazard, hazard.caution)
    yield from (remark.text for remark in crop.remarks)
    yield from (fact.value for field, fact in crop.facts.items() if field not in CLASSES)
