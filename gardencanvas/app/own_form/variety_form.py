"""A variety of one's own: a name, and only what differs from its crop."""

from functools import partial

from PySide6.QtWidgets import QComboBox, QCompleter, QWidget

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.own_form.fields import choice, choose, fact_of, line, rows
from gardencanvas.app.own_form.form import OwnForm
from gardencanvas.app.own_form.ranges import RangeGrid
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.drafting import free_id
from gardencanvas.crops.model import Crop, Habit, Layer, Variety
from gardencanvas.crops.sense import CLASSES
from gardencanvas.words import named
from gardencanvas.words.plain import Measure, name_of

_SIZES = (
    "height_m",
    "spread_m",
    "in_row_m",
    "between_rows_m",
)
_TIMES = (
    "nursery_d",
    "harvest_from_sowing_d",
    "harvest_from_planting_d",
    "harvest_length_d",
)


class VarietyForm(OwnForm):
    """Makes or changes a variety. What is left empty is as with the crop, whose figures stand in grey."""

    def __init__(
        self,
        known: Catalogue,
        crop_id: str | None,
        measure: Measure,
        variety: Variety | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", parent)
        self._known, self._variety = known, variety
        self.setWindowTitle(self.tr("New variety") if variety is None else self.tr("Change the variety"))
        form = rows()
        self.crop = self._crops(crop_id)
        form.addRow(self.tr("Crop"), self.crop)
        self.name = line(form, self.tr("Name"), self.check)
        self.note = line(form, self.tr("Note"), self.check, 600)
        self.body.addLayout(form)
        self.body.addWidget(PlainLabel(self.tr("Leave empty what is as with the crop."), "hint"))
        self.grids: list[RangeGrid] = []
        for title, fields in ((self.tr("Size and spacing"), _SIZES), (self.tr("Time"), _TIMES)):
            self.heading(title)
            grid = RangeGrid(fields, measure)
            grid.changed.connect(self.check)
            self.body.addWidget(grid)
            self.grids.append(grid)
        self._growth()
        self.body.addStretch(1)
        self._fill()
        self.crop.currentIndexChanged.connect(self._crop_chosen)
        self.crop.editTextChanged.connect(self.check)
        self.finish(self.name)

    def _crops(self, crop_id: str | None) -> QComboBox:
        box = QComboBox()
        box.setAccessibleName(self.tr("Crop"))
        box.setEditable(True)
        box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        for crop in sorted(self._known.crops, key=name_of):
            box.addItem(name_of(crop), crop.id)
        completer = box.completer()
        if isinstance(completer, QCompleter):
            completer.setCompletionMode(QCompleter.CompletionMode.PopupCompletion)
        box.setCurrentIndex(max(box.findData(crop_id), 0))
        box.setEnabled(self._variety is None)
        return box

    def _growth(self) -> None:
        self.heading(self.tr("Growth"))
        form = rows()
        as_crop = self.tr("as the crop")
        self.habit = choice(form, self.tr("Drawn as"), Habit, self.check, as_crop, named.habit)
        self.layer = choice(form, self.tr("Layer"), Layer, self.check, as_crop, named.layer)
        self.support = choice(
            form, self.tr("Support"), CLASSES["support"], self.check, as_crop, partial(named.fact, "support")
        )
        self.body.addLayout(form)

    def _fill(self) -> None:
        self._crop_chosen()
        variety = self._variety
        if variety is None:
            return
        self.name.setText(variety.name)
        self.note.setText(variety.note)
        for grid in self.grids:
            for field, each in grid.ranges.items():
                each.show(getattr(variety, field))
        choose(self.habit, variety.habit)
        choose(self.layer, variety.layer)
        choose(self.support, variety.support and variety.support.value)

    @property
    def _parent_crop(self) -> Crop:
        return self._known.crop(self.crop.currentData())

    def _crop_chosen(self, *_: object) -> None:
        for grid in self.grids:
            for field, each in grid.ranges.items():
                each.hint(getattr(self._parent_crop, field))
        self.check()

    def drafted(self) -> tuple[Variety | None, str]:
        """The variety as it stands in the form, and what is wrong with it."""
        name = self.name.text().strip()
        if self.crop.currentText() != self.crop.itemText(self.crop.currentIndex()):
            return None, self.tr("there is no crop “{0}”").format(self.crop.currentText()[:40])
        if not name:
            return None, self.tr("give it a name")
        fault = next((g.fault for g in self.grids if g.fault), "")
        if fault:
            return None, fault
        crop = self._parent_crop
        fields = {k: v for g in self.grids for k, v in g.values.items()}
        taken = {v.id for v in self._known.varieties}
        before = self._variety
        variety = Variety(
            id=free_id(f"{crop.id} {name}", taken) if before is None else before.id,
            crop=crop.id,
            name=name,
            note=self.note.text().strip(),
            habit=self.habit.currentData(),
            layer=self.layer.currentData(),
            support=fact_of(self.support, before.support if before else None),
            **fields,
        )
        same = [v for v in self._known.varieties_of(crop.id) if v.name == name and v.id != variety.id]
        return variety, self.tr("{0} has a variety of that name").format(name_of(crop)) if same else ""
