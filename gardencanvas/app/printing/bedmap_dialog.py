"""The bed map before it is printed: scale, beds and stages chosen, every page as it will be."""

from collections.abc import Iterable
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QCheckBox, QComboBox, QListWidget, QListWidgetItem

from gardencanvas.app.printing.dialog import PrintDialog
from gardencanvas.paper.bedmap import Options, Plan, bed_map
from gardencanvas.paper.document import Document, Setup
from gardencanvas.words.plain import Measure, day

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

SCALES = (10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200)
_LIST_HIGH, _ROW_PAD = 132, 6
_DATA = Qt.ItemDataRole.UserRole


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
        self.drawn = QComboBox()
        self.drawn.addItem(self.tr("a page for each bed"), False)
        self.drawn.addItem(self.tr("the whole garden in one"), True)
        self.scale = QComboBox()
        self.scale.addItem(self.tr("largest that fits"), None)
        for scale in SCALES:
            self.scale.addItem(f"1:{scale}", scale)
        self.overview = QCheckBox(self.tr("Begin with the whole &garden"))
        chosen = session.selection & {b.id for b in session.layout.beds}
        self.overview.setChecked(not chosen)
        beds = ((bed.name, bed.id, not chosen or bed.id in chosen) for bed in session.layout.beds)
        self.beds = self._list(self.tr("Beds"), beds)
        self.stages = self._list(self.tr("Stages"), self._days())
        self.stages.setToolTip(self.tr("Tick days to see each bed as it is then; none: all of the year."))
        for box in (self.drawn, self.scale):
            box.currentIndexChanged.connect(self.ask)
        self.overview.toggled.connect(self.ask)
        self.form.addRow(self.tr("&Drawn"), self.drawn)
        self.form.addRow(self.tr("S&cale"), self.scale)
        self.form.addRow("", self.overview)
        self.form.addRow(self.tr("&Beds"), self.beds)
        self.form.addRow(self.tr("S&tages"), self.stages)

    def _list(self, name: str, rows: Iterable[tuple[str, object, bool]]) -> QListWidget:
        """A list with a tick on each row."""
        found = QListWidget()
        found.setAccessibleName(name)
        found.setFixedHeight(_LIST_HIGH)
        for text, data, ticked in rows:
            item = QListWidgetItem(text)
            item.setData(_DATA, data)
            item.setSizeHint(QSize(0, found.fontMetrics().height() + _ROW_PAD))
            item.setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
            found.addItem(item)
        found.itemChanged.connect(self.ask)
        return found

    def _days(self) -> Iterable[tuple[str, date, bool]]:
        """The date cursor's day, and the middle of each month of the season."""
        on, layout = self._plan.on, self._plan.layout
        yield self.tr("{0}, the date cursor").format(day(on)), on, False
        for month in range(12):
            years, index = divmod(layout.first_month - 1 + month, 12)
            middle = date(layout.year + years, index + 1, 15)
            yield day(middle), middle, False

    @staticmethod
    def _ticked(found: QListWidget) -> list[object]:
        items = [found.item(i) for i in range(found.count())]
        return [i.data(_DATA) for i in items if i.checkState() is Qt.CheckState.Checked]

    @property
    def options(self) -> Options:
        """What is chosen."""
        beds = tuple(str(each) for each in self._ticked(self.beds))
        days = {each for each in self._ticked(self.stages) if isinstance(each, date)}
        return Options(
            scale=self.scale.currentData(),
            beds=None if len(beds) == self.beds.count() else beds,
            stages=tuple(sorted(days)),
            overview=self.overview.isChecked(),
            whole=bool(self.drawn.currentData()),
        )

    def _made_for(self, setup: Setup) -> Document:
        return bed_map(self._plan, setup, self.options)
