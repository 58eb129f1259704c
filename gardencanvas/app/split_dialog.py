"""The dialog that cuts a planting in two."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QComboBox

from gardencanvas.app.number_fields import WholeField
from gardencanvas.app.preview_dialog import PreviewDialog
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.splitting import Cut, parts_of, split

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


class SplitDialog(PreviewDialog):
    """Between which rows, or after how many plants of a row; both parts stay where they are."""

    def __init__(self, window: "MainWindow", planting: Planting) -> None:
        super().__init__(window, window.tr("Split a planting"))
        self._planting = planting
        self.cut = QComboBox()
        ways: tuple[tuple[str, Cut], ...] = (
            (self.tr("between rows"), "along"),
            (self.tr("across the rows"), "across"),
        )
        for text, cut in ways:
            if parts_of(planting.pattern, cut) > 1:
                self.cut.addItem(text, cut)
        self.at = WholeField()
        self._bound()
        self.cut.currentIndexChanged.connect(self._bound)
        self.add(self.tr("Cut &where"), self.cut, self.cut.currentIndexChanged)
        self.add(self.tr("After &how many"), self.at, self.at.valueChanged)

    def _bound(self) -> None:
        total = parts_of(self._planting.pattern, self.cut.currentData())
        self.at.setRange(1, total - 1)
        self.at.setValue(total // 2)

    def after(self) -> Garden:
        session = self.session
        return split(
            session.garden, session.layout_id, self._planting.id, self.cut.currentData(), self.at.value()
        )[0]

    def told(self) -> str:
        total = parts_of(self._planting.pattern, self.cut.currentData())
        what = self.tr("rows") if self.cut.currentData() == "along" else self.tr("plants of each row")
        return self.tr("{0} {1} and {2}").format(self.at.value(), what, total - self.at.value())
