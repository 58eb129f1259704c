"""The rows of the seed tin: groups, crops, and under a crop its varieties."""

from collections.abc import Iterable

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel

from gardencanvas.app.labels import as_plain
from gardencanvas.app.tin.looks import Looks, RowLook
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop, Group, Variety
from gardencanvas.words import named
from gardencanvas.words.crop_facts import caution, hazard_words
from gardencanvas.words.language import say
from gardencanvas.words.plain import name_of, variety_name

CROP = Qt.ItemDataRole.UserRole  # the crop as its file gives it; None for a heading
VARIETY = Qt.ItemDataRole.UserRole + 1  # a variety's id; None for the crop itself
LOOK = Qt.ItemDataRole.UserRole + 2  # RowLook


Key = tuple[str, str | None]


class Rows(QStandardItemModel):
    """A flat list; varieties follow their crop while it is unfolded."""

    def show(self, crops: Iterable[Crop], known: Catalogue, looks: Looks, *, grouped: bool) -> None:
        """Show crops in their order, under the headings of their groups where ``grouped``."""
        self.clear()
        group: Group | None = None
        varieties: dict[str, list[Variety]] = {}
        for variety in known.varieties:
            varieties.setdefault(variety.crop, []).append(variety)
        for crop in crops:
            if grouped and crop.group is not group:
                group = crop.group
                self._heading(named.group(group))
            own = varieties.get(crop.id, [])
            self._row(crop, None, looks.of_crop(crop, len(own)))
            if looks.is_open(crop.id):
                for variety in own:
                    self._row(crop, variety, looks.of_variety(crop, variety))

    def find(self, key: Key | None) -> QModelIndex:
        """The row of a crop or variety; of the crop where the variety is folded away; the first else."""
        first = fallback = QModelIndex()
        for row in range(self.rowCount()):
            index = self.index(row, 0)
            crop = index.data(CROP)
            if crop is None:
                continue
            first = first if first.isValid() else index
            if key is not None and crop.id == key[0]:
                if index.data(VARIETY) == key[1]:
                    return index
                fallback = fallback if fallback.isValid() else index
        return fallback if fallback.isValid() else first

    def _heading(self, text: str) -> None:
        item = QStandardItem(text)
        item.setFlags(Qt.ItemFlag.NoItemFlags)
        self.appendRow(item)

    def _row(self, crop: Crop, variety: Variety | None, look: RowLook) -> None:
        name = name_of(crop) if variety is None else variety_name(variety)
        item = QStandardItem(name)
        item.setData(crop, CROP)
        item.setData(None if variety is None else variety.id, VARIETY)
        item.setData(look, LOOK)
        item.setEditable(False)
        told = f"{name}, {look.about}" if variety is None else f"{_whole(crop, variety)}, {look.about}"
        item.setData(told, Qt.ItemDataRole.AccessibleTextRole)
        item.setToolTip(as_plain(hover(crop, variety)))
        self.appendRow(item)


def _whole(crop: Crop, variety: Variety) -> str:
    return say("{crop} “{variety}”", crop=name_of(crop), variety=variety_name(variety))


def hover(crop: Crop, variety: Variety | None = None) -> str:
    """What a row tells on hover: names, family, and the high hazards with the usual caution."""
    lines = [name_of(crop) if variety is None else _whole(crop, variety)]
    lines += [named.shipped(variety.note)] if variety is not None and variety.note else []
    lines += [f"{crop.botanical}, {crop.family}"]
    lines += [", ".join(crop.other_names)] if crop.other_names else []
    high = [h for h in crop.hazards if h.severity == "high"]
    lines += [f"⚠ {hazard_words(h)}" for h in high]
    lines += [caution()] if high else []
    return "\n".join(lines)
