"""What things are called in the names of undo steps and hints of the plan."""

from collections.abc import Collection, Sequence

from PySide6.QtCore import QCoreApplication

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.garden.garden import Garden, Item, Layout
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


def structure_name(kind: str) -> str:
    """What a kind of structure is called."""
    return {
        "circle bed": translate("Canvas", "round bed"),
        "keyhole bed": translate("Canvas", "keyhole bed"),
        "curved bed": translate("Canvas", "bed with curved edges"),
        "path": translate("Canvas", "path"),
        "hole": translate("Canvas", "hole in a bed"),
        "cane ring": translate("Canvas", "ring of canes"),
        "stake": translate("Canvas", "stake"),
        "cane row": translate("Canvas", "row of canes"),
        "net": translate("Canvas", "net"),
        "trellis": translate("Canvas", "trellis"),
        "fleece": translate("Canvas", "fleece"),
        "mesh": translate("Canvas", "mesh"),
        "cloche": translate("Canvas", "cloche"),
        "frame": translate("Canvas", "frame"),
        "wall": translate("Canvas", "wall"),
        "fence": translate("Canvas", "fence"),
        "hedge": translate("Canvas", "hedge"),
        "shed": translate("Canvas", "shed"),
        "tree": translate("Canvas", "tree"),
    }[kind]


def next_name(garden: Garden, layout: Layout, kind: str) -> str:
    """A name that nothing of the plan has yet: ``Bed 4``, ``Ring of canes 2``."""
    if kind.endswith("bed"):
        return next_bed_name(layout)
    name = structure_name(kind)
    name = name[0].upper() + name[1:]
    taken = {f.name for f in garden.fixtures}
    taken |= {i.name for i in layout.items() if not isinstance(i, Planting)}
    number = 1
    while (whole := name if number == 1 else f"{name} {number}") in taken:
        number += 1
    return whole


def next_bed_name(layout: Layout, more: Collection[str] = ()) -> str:
    """A name that no bed has yet, nor is among ``more``: ``Bed 4``."""
    taken = {bed.name for bed in layout.beds} | set(more)
    number = len(layout.beds) + len(more) + 1
    while (name := translate("Canvas", "Bed {0}").format(number)) in taken:
        number += 1
    return name
