"""The filters of the seed tin: four switches in a row, and a panel of lists behind the fifth."""

from collections.abc import Iterable
from dataclasses import dataclass

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.tin.marks import mark_icon
from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Group, Layer
from gardencanvas.crops.search import Wanted
from gardencanvas.crops.sense import CLASSES
from gardencanvas.words import named

ANY = None


@dataclass(frozen=True)
class Chosen:
    """What the filters ask for."""

    wanted: Wanted
    favourites: bool = False
    in_tin: bool = False
    now: bool = False  # can be started on the date cursor's day
    fits: bool = False  # fits the selected place
    mine: str | None = None  # "wanted" or "own"

    @property
    def plain(self) -> bool:
        """Whether nothing is asked for."""
        return self == Chosen(Wanted())


class FilterBar(QWidget):
    """``changed`` after each choice; ``chosen`` says what it is."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        row = QHBoxLayout()
        row.setSpacing(2)
        self.switches: dict[str, QToolButton] = {}
        for name, mark, text in (
            ("favourites", "star", self.tr("Favourites")),
            ("in_tin", "packet", self.tr("In my tin: seed lots of my own")),
            ("now", "calendar", self.tr("Can start on the day of the date cursor")),
            ("fits", "place", self.tr("Fits the selected bed, or beside the selected planting")),
        ):
            row.addWidget(self._switch(name, mark, text))
        row.addStretch(1)
        self.more = self._switch("more", "filter", self.tr("More filters"))
        row.addWidget(self.more)
        column.addLayout(row)
        self.panel = self._panel()
        self.panel.hide()
        column.addWidget(self.panel)
        self.set_colours(palette(False))

    def _switch(self, name: str, mark: str, text: str) -> QToolButton:
        button = QToolButton()
        button.setCheckable(True)
        button.setToolTip(text)
        button.setAccessibleName(text)
        button.setProperty("mark", mark)
        button.setProperty("role", "small")
        button.setIconSize(QSize(16, 16))
        button.toggled.connect(self._more_toggled if name == "more" else self._chosen)
        self.switches[name] = button
        return button

    def _panel(self) -> QWidget:
        panel = QWidget()
        grid = QGridLayout(panel)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(6)
        grid.setVerticalSpacing(3)
        grid.setColumnStretch(1, 1)
        self.boxes: dict[str, QComboBox] = {}
        for row, (name, label, choices) in enumerate(
            (
                ("group", self.tr("Group"), [(named.group(g), g) for g in Group]),
                ("layer", self.tr("Layer"), [(named.layer(x), x) for x in Layer]),
                ("rooting", self.tr("Roots"), _classes("rooting")),
                ("family", self.tr("Family"), []),
                ("light", self.tr("Light"), _classes("light")),
                ("water", self.tr("Water"), _classes("water")),
                ("mine", self.tr("Mine"), [(self.tr("wanted"), "wanted"), (self.tr("my own crops"), "own")]),
            )
        ):
            box = self._box(label, choices)
            self.boxes[name] = box
            caption = PlainLabel(label, "quiet")
            caption.setWordWrap(False)
            caption.setBuddy(box)
            grid.addWidget(caption, row, 0)
            grid.addWidget(box, row, 1)
        self.reset = QPushButton(self.tr("Clear all filters"))
        self.reset.clicked.connect(self.clear)
        grid.addWidget(self.reset, len(self.boxes), 0, 1, 2)
        return panel

    def _box(self, label: str, choices: Iterable[tuple[str, object]]) -> QComboBox:
        box = QComboBox()
        box.setAccessibleName(label)
        box.setMinimumContentsLength(6)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.addItem(self.tr("any"), ANY)
        for text, value in choices:
            box.addItem(text, value)
        box.currentIndexChanged.connect(self._chosen)
        return box

    # what is asked for

    @property
    def chosen(self) -> Chosen:
        """What is asked for now."""
        value = {name: box.currentData() for name, box in self.boxes.items()}
        on = {name: button.isChecked() for name, button in self.switches.items()}
        mine = value.pop("mine")
        return Chosen(Wanted(**value), on["favourites"], on["in_tin"], on["now"], on["fits"], mine)

    def summary(self) -> str:
        """The lists' choices in a few words; empty where there are none."""
        words = []
        for name, box in self.boxes.items():
            if box.currentData() is not ANY:
                told = {"rooting": self.tr("{0} roots"), "water": self.tr("{0} water")}.get(name, "{0}")
                words.append(told.format(box.currentText()))
        return " · ".join(words)

    def clear(self) -> None:
        """Ask for nothing."""
        parts = [*self.boxes.values(), *(b for n, b in self.switches.items() if n != "more")]
        for part in parts:
            part.blockSignals(True)
        for box in self.boxes.values():
            box.setCurrentIndex(0)
        for name, button in self.switches.items():
            button.setChecked(button.isChecked() and name == "more")
        for part in parts:
            part.blockSignals(False)
        self.changed.emit()

    def switch_off(self, name: str) -> None:
        """Turn one switch off."""
        self.switches[name].setChecked(False)

    def _chosen(self, *_: object) -> None:
        self.changed.emit()

    def _more_toggled(self, on: bool) -> None:
        self.panel.setVisible(on)
        if on:
            self.boxes["group"].setFocus(Qt.FocusReason.OtherFocusReason)

    # look

    def know(self, known: Catalogue) -> None:
        """Offer the families of a catalogue."""
        box = self.boxes["family"]
        was = box.currentData()
        box.blockSignals(True)
        box.clear()
        box.addItem(self.tr("any"), ANY)
        for family in sorted({c.family for c in known.crops}):
            common = named.shipped(known.families.get(family, ""))
            box.addItem(common or family, family)
            box.setItemData(box.count() - 1, family, Qt.ItemDataRole.ToolTipRole)
        box.setCurrentIndex(max(box.findData(was), 0))
        box.blockSignals(False)

    def set_colours(self, colours: Palette) -> None:
        """Use other colours."""
        for button in self.switches.values():
            button.setIcon(mark_icon(button.property("mark"), colours.ink, colours.accent))


def _classes(field: str) -> list[tuple[str, str]]:
    """The classes of a need as they are read, with their codes."""
    return [(named.fact(field, word), word) for word in CLASSES[field]]
