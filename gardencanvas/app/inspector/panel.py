"""The inspector panel: follows the selection, shows the page that fits it."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QScrollArea, QStackedWidget, QVBoxLayout, QWidget

from gardencanvas.app.inspector.other_pages import BedPage, GardenPage, ManyPage, ThingPage
from gardencanvas.app.inspector.planting_page import PlantingPage
from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.palette import Palette, palette
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Item
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import Measure


class Inspector(QScrollArea):
    """What is selected, in words and numbers."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._measure = Measure()
        self._colours: Palette = palette(False)
        self._report: FitReport | None = None
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)  # large fonts need it
        self.setProperty("role", "panel")
        self.setAccessibleName(self.tr("Inspector"))
        self._stack = QStackedWidget()
        self.planting = PlantingPage(session)
        self.many = ManyPage(session)
        self.bed = BedPage(session)
        self.thing = ThingPage(session)
        self.garden = GardenPage(session)
        for page in (self.planting, self.many, self.bed, self.thing, self.garden):
            self._stack.addWidget(page)
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(14, 12, 14, 12)
        column.addWidget(self._stack)
        self.setWidget(inside)
        # a drag previews at each mouse move: words need no more than thirty a second
        self._soon = Soon(self, self.refresh, 30)
        session.changed.connect(self._stale)
        session.previewed.connect(self._preview)
        session.selection_changed.connect(self._stale)
        session.date_changed.connect(self._stale)
        session.layout_changed.connect(self._stale)
        self.refresh()

    def set_look(self, measure: Measure, colours: Palette) -> None:
        """Use other units or colours."""
        self._measure, self._colours = measure, colours
        self.refresh()

    def _stale(self, *_: object) -> None:
        self._report = None
        self._soon.ask()

    def _preview(self, report: FitReport | None) -> None:
        self._report = report
        self._soon.ask()

    def refresh(self) -> None:
        """Show the selection as it is now."""
        session = self._session
        report = self._report or session.report
        chosen = [i for i in map(self._item, sorted(session.selection)) if i is not None]
        if not chosen:
            self.garden.show_garden(report, self._measure)
            page: QWidget = self.garden
        elif len(chosen) > 1:
            self.many.show_items(chosen, report, self._measure)
            page = self.many
        elif isinstance(chosen[0], Planting):
            self.planting.show_planting(chosen[0], report, self._measure, self._colours)
            page = self.planting
        elif isinstance(chosen[0], Bed):
            self.bed.show_bed(chosen[0], report, self._measure)
            page = self.bed
        else:
            self.thing.show_thing(chosen[0], self._measure)
            page = self.thing
        self._stack.setCurrentWidget(page)

    def _item(self, item_id: str) -> Item | None:
        return self._session.garden.find(self._session.layout_id, item_id)
