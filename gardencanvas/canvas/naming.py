"""What things are called in the names of undo steps and hints of the plan."""

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.garden.garden import Item, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import planting_name

translate = QCoreApplication.translate


def named(items: Sequence[Item], crops: Catalogue) -> str:
    """One thing by its name, several by their number: ``Leek``, ``bed 2``, ``3 plantings``."""
    if len(items) == 1:
        item = items[0]
        return planting_name(crops, item) if isinstance(item, Planting) else item.name
    if items and all(isinstance(i, Planting) for i in items):
        return translate("Canvas", "{0} plantings").format(len(items))
    if items and all(isinstance(i, Bed) for i in items):
        return translate("Canvas", "{0} beds").format(len(items))
    return translate("Canvas", "{0} things").format(len(items))


def next_bed_name(layout: Layout) -> str:
    """A name that no bed has yet: ``Bed 4``."""
    taken = {bed.name for bed in layout.beds}
    number = len(layout.beds) + 1
    while (name := translate("Canvas", "Bed {0}").format(number)) in taken:
        number += 1
    return name
