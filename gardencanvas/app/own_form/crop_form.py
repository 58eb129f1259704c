"""A crop of one's own: from nothing, or like one that is known."""

from functools import partial
from typing import Any

from PySide6.QtWidgets import QCheckBox, QComboBox, QHBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel, as_plain
from gardencanvas.app.own_form.fields import choice, choose, fact_of, line, rows
from gardencanvas.app.own_form.form import OwnForm
from gardencanvas.app.own_form.ranges import RangeGrid
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.drafting import drafted, free_id, hazards_of_kind
from gardencanvas.crops.genera import family_of
from gardencanvas.crops.model import Crop, Group, Habit, Harvest, Layer, Start
from gardencanvas.crops.sense import CLASSES
from gardencanvas.words import named
from gardencanvas.words.crop_facts import caution, hazard_words, label
from gardencanvas.words.plain import Measure, name_of
from gardencanvas.words.sources import cited

_SIZES = (
    "height_m",
    "spread_m",
    "canopy_base_m",
    "root_depth_m",
    "in_row_m",
    "between_rows_m",
    "sowing_depth_m",
)
_TIMES = (
    "nursery_d",
    "harvest_from_sowing_d",
    "harvest_from_planting_d",
    "harvest_length_d",
    "frost_kill_c",
)
_SEED = (
    "seeds_per_gram",
    "seed_life_y",
    "germination_share",
    "yield_kg_m2",
)
_FACTS = (
    "rooting",
    "frost",
    "light",
    "water",
    "nutrients",
    "support",
)
_LIVES = ("annual", "biennial", "perennial")


class CropForm(OwnForm):
    """Makes a crop, or changes one of the grower's own.

    Figures of a crop that it is like keep their sources until they are changed. Hazards of the same species
    stay with it.
    """

    def __init__(
        self,
        known: Catalogue,
        measure: Measure,
        like: Crop | None = None,
        crop: Crop | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__("", parent)
        self._known, self._crop, self._base = known, crop, crop or like
        self.setWindowTitle(self.tr("New crop") if crop is None else self.tr("Change the crop"))
        if like is not None:
            self.body.addWidget(
                PlainLabel(self.tr("Like {0}: change what differs.").format(name_of(like)), "hint")
            )
        self._names()
        self._growth()
        self.grids: list[RangeGrid] = []
        for title, fields in (
            (self.tr("Size and spacing"), _SIZES),
            (self.tr("Time"), _TIMES),
            (self.tr("Seed and yield"), _SEED),
        ):
            self.heading(title)
            grid = RangeGrid(fields, measure)
            grid.changed.connect(self.check)
            self.body.addWidget(grid)
            self.grids.append(grid)
        self._needs()
        self.body.addStretch(1)
        self._fill()
        self.botanical.textChanged.connect(self._named)
        self._named()
        self.finish(self.name)

    # fields

    def _names(self) -> None:
        form = rows()
        self.name = line(form, self.tr("Name"), self.check)
        self.others = line(form, self.tr("Other names"), self.check, 400)
        self.others.setPlaceholderText(self.tr("with commas between"))
        self.botanical = line(form, self.tr("Botanical name"), self.check)
        families = sorted({c.family for c in self._known.crops})
        self.family = choice(form, self.tr("Family"), families, self.check)
        self.family.setEditable(True)
        self.family.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.family.setCurrentIndex(-1)
        self.family.editTextChanged.connect(self.check)
        self.body.addLayout(form)
        self.hazards = PlainLabel(role="warning")
        self.body.addWidget(self.hazards)

    def _growth(self) -> None:
        self.heading(self.tr("Growth"))
        form = rows()
        self.group = choice(form, self.tr("Group"), Group, self.check, named=named.group)
        self.habit = choice(form, self.tr("Drawn as"), Habit, self.check, named=named.habit)
        self.layer = choice(form, self.tr("Layer"), Layer, self.check, named=named.layer)
        self.life = choice(form, self.tr("Lives"), _LIVES, self.check, named=named.life)
        self.start = choice(form, self.tr("Usually"), Start, self.check, named=named.start)
        also = QHBoxLayout()
        self.also = {start: QCheckBox(named.start(start)) for start in Start}
        for box in self.also.values():
            box.toggled.connect(self.check)
            also.addWidget(box)
        also.addStretch(1)
        form.addRow(self.tr("Also"), also)
        self.harvest = choice(form, self.tr("Harvest"), Harvest, self.check, named=named.harvest)
        self.body.addLayout(form)

    def _needs(self) -> None:
        self.heading(self.tr("Needs"))
        form = rows()
        unknown = self.tr("not known")
        self.facts = {
            f: choice(form, label(f), CLASSES[f], self.check, unknown, partial(named.fact, f)) for f in _FACTS
        }
        self.body.addLayout(form)

    def _fill(self) -> None:
        base = self._base
        if base is None:
            return
        if self._crop is not None:
            self.name.setText(base.name)
            self.others.setText(", ".join(base.other_names))
        self.botanical.setText(base.botanical)
        self.family.setCurrentText(base.family)
        for field in ("group", "habit", "layer", "life", "harvest"):
            choose(getattr(self, field), getattr(base, field))
        choose(self.start, base.starts[0])
        for start, box in self.also.items():
            box.setChecked(start in base.starts[1:])
        for grid in self.grids:
            for field, each in grid.ranges.items():
                each.show(getattr(base, field))
        for field, box in self.facts.items():
            fact = getattr(base, field)
            choose(box, fact and fact.value)

    def _named(self, *_: object) -> None:
        """The family and the hazards follow the botanical name."""
        family = family_of(self.botanical.text().strip())
        if family is not None and self.family.currentText() != family:
            self.family.setCurrentText(family)
        found = hazards_of_kind(self.botanical.text(), self._known.crops)
        high = [h for h in found if h.severity == "high"]
        self.hazards.setText("\n".join([*(f"⚠ {hazard_words(h)}" for h in high), caution()]) if high else "")
        self.hazards.setToolTip(as_plain("\n".join(cited(self._known, h.source) for h in high)))
        self.hazards.setVisible(bool(high))

    # the record

    def drafted(self) -> tuple[Crop | None, str]:
        """The crop as it stands in the form, and what is wrong with it."""
        name = self.name.text().strip()
        for field, missing in (
            (self.name, self.tr("give it a name")),
            (self.botanical, self.tr("give its botanical name: it says what it is kin to")),
        ):
            if not field.text().strip():
                return None, missing
        if not self.family.currentText().strip():
            return None, self.tr("give its family")
        fault = next((g.fault for g in self.grids if g.fault), "")
        if fault:
            return None, fault
        if any(c.name == name and c is not self._crop for c in self._known.crops):
            return None, self.tr("there is a crop of that name")
        taken = {c.id for c in self._known.crops}
        own_id = free_id(name, taken) if self._crop is None else self._crop.id
        return drafted(self._base, id=own_id, name=name, **self._fields())

    def _fields(self) -> dict[str, Any]:
        base, usual = self._base, Start(self.start.currentData())
        others = [word.strip() for word in self.others.text().split(",") if word.strip()]
        hazards = hazards_of_kind(self.botanical.text(), self._known.crops)
        kept = () if base is None or not self._same_kind() else base.hazards
        return {
            "other_names": tuple(word[:80] for word in others),
            "botanical": self.botanical.text().strip(),
            "family": self.family.currentText().strip(),
            "starts": (usual, *(s for s, box in self.also.items() if box.isChecked() and s is not usual)),
            "hazards": tuple(dict.fromkeys((*kept, *hazards))),
            **({} if base is None or self._crop is not None else {"names": {}}),
            **{f: getattr(self, f).currentData() for f in ("group", "habit", "layer", "life", "harvest")},
            **{f: fact_of(box, getattr(base, f, None)) for f, box in self.facts.items()},
            **{k: v for g in self.grids for k, v in g.values.items()},
        }

    def _same_kind(self) -> bool:
        return self._base is not None and self._base.botanical == self.botanical.text().strip()
