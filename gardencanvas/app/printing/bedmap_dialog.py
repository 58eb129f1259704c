"""The bed map before it is printed: scale, beds and stages chosen, every page as it will be."""

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QListWidget, QListWidgetItem

from gardencanvas.app.printing.dialog import PrintDialog
from gardencanvas.paper.bedmap import Options, Plan, bed_map
from gardencanvas.paper.document import Document, Setup
from gardencanvas.words.plain import Measure, day

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

SCALES = (10, 20, 25, 50, 75, 100, 150, 200)
_BEDS_HIGH = 120


class BedMapDialog(PrintDialog):
    """Options of the bed map beside its pages."""

    def __init__(self, window: "MainWindow") -> None:
        session = window.session
        self._plan = Plan(
            session.garden,
            session.layout,
            session.report,
            session.catalogue,
            Measure(window.units),
            session.on,
        )
        super().__init__(window, window.tr("Bed map"), self._made_for, landscape=True)
        self.scale = QComboBox()
        self.scale.addItem(self.tr("largest that fits"), None)
        for scale in SCALES:
            self.scale.addItem(f"1:{scale}", scale)
        self.scale.currentIndexChanged.connect(self.ask)
        self.stages = QComboBox()
        for text, days in self._stages():
            self.stages.addItem(text, days)
        self.stages.currentIndexChanged.connect(self.ask)
        self.beds = QListWidget()
        self.beds.setAccessibleName(self.tr("Beds"))
        self.beds.setMaximumHeight(_BEDS_HIGH)
        chosen = session.selection & {b.id for b in session.layout.beds}
        for bed in session.layout.beds:
            item = QListWidgetItem(bed.name)
            item.setData(Qt.ItemDataRole.UserRole, bed.id)
            wanted = not chosen or bed.id in chosen
            item.setCheckState(Qt.CheckState.Checked if wanted else Qt.CheckState.Unchecked)
            self.beds.addItem(item)
        self.beds.itemChanged.connect(self.ask)
        self.form.addRow(self.tr("S&cale"), self.scale)
        self.form.addRow(self.tr("S&hown"), self.stages)
        self.form.addRow(self.tr("&Beds"), self.beds)

    def _stages(self) -> list[tuple[str, tuple[date, ...]]]:
        """What can be shown of each bed: all year, the date cursor's day, or stages of the season."""
        layout, on = self._plan.layout, self._plan.on
        spring = date(layout.year, 5, 1) if layout.first_month == 1 else date(layout.year, 11, 1)
        summer = date(layout.year, 7, 15) if layout.first_month == 1 else date(layout.year + 1, 1, 15)
        autumn = date(layout.year, 9, 15) if layout.first_month == 1 else date(layout.year + 1, 3, 15)
        return [
            (self.tr("all of the year"), ()),
            (self.tr("on {0}").format(day(on)), (on,)),
            (self.tr("spring and summer"), (spring, summer)),
            (self.tr("spring, summer, autumn"), (spring, summer, autumn)),
        ]

    @property
    def options(self) -> Options:
        """What is chosen."""
        items = [self.beds.item(i) for i in range(self.beds.count())]
        ticked = tuple(
            i.data(Qt.ItemDataRole.UserRole) for i in items if i.checkState() is Qt.CheckState.Checked
        )
        whole = len(ticked) == len(items)
        return Options(
            scale=self.scale.currentData(),
            beds=None if whole else ticked,
            stages=self.stages.currentData(),
            overview=whole,
        )

    def _made_for(self, setup: Setup) -> Document:
        return bed_map(self._plan, setup, self.options)
