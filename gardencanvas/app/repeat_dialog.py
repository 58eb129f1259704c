"""The dialog that repeats what is selected in a grid."""

from typing import TYPE_CHECKING

from gardencanvas.app.inspector.fields import LengthField
from gardencanvas.app.number_fields import WholeField
from gardencanvas.app.preview_dialog import PreviewDialog
from gardencanvas.garden.arranging import MOST_COPIES, array
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.places import bounds
from gardencanvas.words.plain import counted

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_GAP_M = 0.4  # a path between copies of beds, the narrowest one walks on (common practice)


class RepeatDialog(PreviewDialog):
    """How often across and down, and how far apart; the copies are shown on the plan at once."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window, window.tr("Repeat in a grid"))
        session = self.session
        items = (session.garden.find(session.layout_id, i) for i in session.selection)
        x0, y0, x1, y1 = bounds([i for i in items if i is not None])
        self.across, self.down = WholeField(), WholeField()
        for box, value in ((self.across, 2), (self.down, 1)):
            box.setRange(1, MOST_COPIES)
            box.setValue(value)
        self.step_x = LengthField(self.tr("Step across"), window.units, 0.01, 500.0)
        self.step_y = LengthField(self.tr("Step down"), window.units, 0.01, 500.0)
        self.step_x.setValue(round((x1 - x0 + _GAP_M) / self.step_x.per_unit, 1))
        self.step_y.setValue(round((y1 - y0 + _GAP_M) / self.step_y.per_unit, 1))
        self.add(self.tr("Times &across"), self.across, self.across.valueChanged)
        self.add(self.tr("&Step across"), self.step_x, self.step_x.valueChanged)
        self.add(self.tr("Times &down"), self.down, self.down.valueChanged)
        self.add(self.tr("Step do&wn"), self.step_y, self.step_y.valueChanged)

    def after(self) -> Garden:
        session = self.session
        return array(
            session.garden,
            session.layout_id,
            session.selection,
            self.across.value(),
            self.down.value(),
            self.step_x.value() * self.step_x.per_unit,
            self.step_y.value() * self.step_y.per_unit,
        )

    def told(self) -> str:
        return counted(self.across.value() * self.down.value() - 1, self.tr("copy"), self.tr("copies"))
