"""The planting strip of a planting, before it is printed."""

from typing import TYPE_CHECKING

from gardencanvas.app.printing.dialog import PrintDialog
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.splitting import parts_of
from gardencanvas.paper.bedmap import planting_strip
from gardencanvas.paper.document import Document, Setup
from gardencanvas.words.plain import Measure, planting_name

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


class StripDialog(PrintDialog):
    """A strip true to size, to lay along a row of the planting."""

    def __init__(self, window: "MainWindow", planting: Planting) -> None:
        self._planting = planting
        self._name = planting_name(window.session.catalogue, planting)
        self._measure = Measure(window.units)
        super().__init__(window, window.tr("Planting strip"), self._made_for, landscape=True)

    def _made_for(self, setup: Setup) -> Document:
        plants = parts_of(self._planting.pattern, "across")
        title = self.tr("Planting strip: {0}").format(self._name)
        return planting_strip(title, self._planting.pattern.spacing_m, plants, self._measure, setup)
