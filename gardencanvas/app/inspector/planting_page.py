"""The inspector's page for one planting."""

from datetime import date
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFormLayout, QVBoxLayout, QWidget

from gardencanvas.app.inspector.fields import AngleField, CountField, DayField, LengthField
from gardencanvas.app.inspector.reasons import Reasons
from gardencanvas.app.inspector.side_view import SideView
from gardencanvas.app.labels import ElidedLabel, Pill, PlainLabel, ValueTable
from gardencanvas.app.profiles import profiles
from gardencanvas.app.session import Session
from gardencanvas.canvas.palette import Palette
from gardencanvas.crops.model import Crop
from gardencanvas.fit.report import FitReport, PlantingFit
from gardencanvas.garden.edits import change, made, rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.words.plain import Measure, counted, percent, planting_name, span
from gardencanvas.words.sources import origin

_KINDS = ("sown", "raised", "set", "volunteer")


class PlantingPage(QWidget):
    """Layer, roots, harvest, verdict with reasons, and exact numbers."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._planting: Planting | None = None
        self._fields: QWidget | None = None
        self._fields_for: object = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        self._name = ElidedLabel(role="title")
        self._about = PlainLabel(role="quiet")
        self._pill = Pill()
        self._values = ValueTable()
        self._side = SideView()
        self._reasons = Reasons(session)
        self._form = QVBoxLayout()
        for widget in (self._name, self._about, self._pill, self._values, self._side, self._reasons):
            column.addWidget(widget)
        column.addWidget(PlainLabel(self.tr("Exact numbers"), "heading"))
        column.addLayout(self._form)
        column.addStretch(1)

    def show_planting(
        self, planting: Planting, report: FitReport, measure: Measure, colours: Palette
    ) -> None:
        """Show a planting with what the report says of it."""
        fit = report.plantings.get(planting.id)
        if fit is None:
            return
        session = self._session
        crop = session.catalogue.resolve(planting.crop, planting.variety)
        self._planting = planting
        self._name.setText(planting_name(session.catalogue, planting))
        bed = bed_of(session.layout, planting)
        place = bed.name if bed else self.tr("on bare plan")
        plants = counted(fit.plants, self.tr("plant"), self.tr("plants"))
        self._about.setText(f"{plants} · {self._pattern_word(planting)} · {place}")
        self._pill.show_verdict(fit.verdict)
        self._values.show_rows(self._rows(crop, fit, measure))
        self._side.show_plants(profiles(session, planting, report, colours), measure, colours, session.on)
        self._reasons.show_findings(report.of(planting.id), planting.id)
        self._show_fields(planting, measure)

    def _pattern_word(self, planting: Planting) -> str:
        words = {
            "rows": self.tr("rows"),
            "strip": self.tr("strip"),
            "block": self.tr("block"),
            "ring": self.tr("ring"),
            "edging": self.tr("edging"),
            "drift": self.tr("drift"),
            "spots": self.tr("spots"),
        }
        pattern = planting.pattern
        if pattern.kind == "rows":
            return counted(pattern.rows, self.tr("row"), self.tr("rows"))
        if pattern.kind == "spots" and pattern.count == 1:
            return self.tr("single plant")
        return words[pattern.kind]

    def _rows(self, crop: Crop, fit: PlantingFit, measure: Measure) -> list[tuple[str, str, str]]:
        known = self._session.catalogue
        layer = str(crop.layer)
        if crop.height_m is not None:
            layer += f" ({measure.range(crop.height_m.low, crop.height_m.high)})"
        roots = measure.small(fit.root_depth_m)
        if crop.root_depth_m is not None:
            roots = measure.range(crop.root_depth_m.low, crop.root_depth_m.high)
        rows = [
            (self.tr("Layer"), layer, origin(known, crop.height_m)),
            (self.tr("Root depth"), roots, origin(known, crop.root_depth_m)),
            (self.tr("Harvest"), self._harvest(fit), self._harvest_source(crop)),
        ]
        light = percent(fit.light)
        if crop.light_good is not None:
            light = self.tr("{0}, wants {1}").format(light, percent(crop.light_good.mid))
        rows.append((self.tr("Light"), light, origin(known, crop.light_good)))
        if fit.days_to_spare is not None:
            meaning = self.tr("Days between its last harvest and the date its neighbour would smother it.")
            rows.append((self.tr("Days to spare"), str(fit.days_to_spare), meaning))
        if fit.estimated:
            fields = ", ".join(name.rsplit("_", 1)[0].replace("_", " ") for name in fit.estimated[:6])
            rows.append((self.tr("Estimated"), fields, self.tr("No book at hand gives these for this crop.")))
        return rows

    def _harvest(self, fit: PlantingFit) -> str:
        return span(fit.harvest_first, fit.harvest_last)

    def _harvest_source(self, crop: Crop) -> str:
        known = self._session.catalogue
        days = crop.harvest_from_planting_d or crop.harvest_from_sowing_d
        return self.tr("Days to harvest at the source's warmth, moved to this site's:\n") + origin(
            known, days
        )

    # exact numbers

    def _show_fields(self, planting: Planting, measure: Measure) -> None:
        shape = (planting.pattern.kind, planting.start.kind, measure.units)
        if self._fields_for != shape:
            if self._fields is not None:
                self._form.removeWidget(self._fields)
                self._fields.hide()
                self._fields.deleteLater()
            self._fields = self._built_fields(planting, measure)
            self._form.addWidget(self._fields)
            self._fields_for = shape
        self._fill(planting)

    def _built_fields(self, planting: Planting, measure: Measure) -> QWidget:
        box = QWidget()
        form = QFormLayout(box)
        form.setContentsMargins(0, 0, 0, 0)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
        self._kind = QComboBox()
        self._kind.setAccessibleName(self.tr("Started"))
        for kind, word in zip(
            _KINDS,
            (self.tr("sown in place"), self.tr("raised, planted out"), self.tr("set"), self.tr("volunteer")),
            strict=True,
        ):
            self._kind.addItem(word, kind)
        self._kind.activated.connect(self._kind_chosen)
        form.addRow(self.tr("Started"), self._kind)
        self._on = DayField(self.tr("In the bed from"))
        self._on.committed.connect(self._day_chosen)
        form.addRow(self.tr("In bed from"), self._on)
        self._lengths: dict[str, LengthField] = {}
        for field, label in self._length_labels(planting):
            length = LengthField(
                label, measure.units, 0.005, 1000.0 if field in {"length_m", "width_m"} else 50.0
            )
            length.setProperty("field", field)
            length.committed.connect(self._length_chosen)
            form.addRow(label, length)
            self._lengths[field] = length
        self._counts: dict[str, CountField] = {}
        if planting.pattern.kind == "rows":
            rows = CountField(self.tr("Rows"), 1, 1000)
            rows.committed.connect(self._rows_chosen)
            form.addRow(self.tr("Rows"), rows)
            self._counts["rows"] = rows
        clump = CountField(self.tr("Seedlings to a station"), 1, 20)
        clump.committed.connect(self._clump_chosen)
        form.addRow(self.tr("Per station"), clump)
        self._counts["per_station"] = clump
        self._angle = AngleField(self.tr("Angle"))
        self._angle.committed.connect(self._angle_chosen)
        form.addRow(self.tr("Angle"), self._angle)
        return box

    def _length_labels(self, planting: Planting) -> list[tuple[str, str]]:
        labels = {
            "spacing_m": self.tr("Spacing"),
            "row_spacing_m": self.tr("Between rows"),
            "across_m": self.tr("Across"),
            "length_m": self.tr("Length"),
            "width_m": self.tr("Width"),
            "radius_m": self.tr("Radius"),
        }
        return [(f, w) for f, w in labels.items() if f in type(planting.pattern).model_fields]

    def _fill(self, planting: Planting) -> None:
        self._kind.setCurrentIndex(_KINDS.index(planting.start.kind))
        self._on.show_day(planting.start.on)
        for field, box in self._lengths.items():
            box.show_metres(getattr(planting.pattern, field))
        self._counts["per_station"].show_count(planting.per_station)
        if "rows" in self._counts:
            self._counts["rows"].show_count(planting.pattern.rows)
        self._angle.show_angle(planting.pattern.angle_deg)

    def _commit(self, text: str, **fields: Any) -> None:
        if self._planting is None:
            return
        session = self._session
        try:
            after = change(session.garden, session.layout_id, self._planting.id, **fields)
        except Refusal as error:
            session.refused.emit(str(error))
            self._fill(self._planting)
            return
        session.propose(after, text)

    def _pattern(self, **fields: Any) -> None:
        if self._planting is None:
            return
        try:
            pattern = rebuilt(self._planting.pattern, **fields)
        except Refusal as error:
            self._session.refused.emit(str(error))
            self._fill(self._planting)
            return
        self._commit(self.tr("Change spacing"), pattern=pattern)

    def _kind_chosen(self) -> None:
        if self._planting is not None:
            kind = self._kind.currentData()
            self._commit(
                self.tr("Change start"), start=made(Start, kind=kind, on=self._planting.start.on, pinned=True)
            )

    def _day_chosen(self, on: date) -> None:
        if self._planting is not None:
            start = self._planting.start
            sown = start.sown_on
            if sown is not None:
                sown = date.fromordinal(sown.toordinal() + (on - start.on).days)
            self._commit(
                self.tr("Change start"), start=made(Start, kind=start.kind, on=on, sown_on=sown, pinned=True)
            )

    def _length_chosen(self, metres: float) -> None:
        sender = self.sender()
        if isinstance(sender, LengthField):
            self._pattern(**{sender.property("field"): round(metres, 4)})

    def _rows_chosen(self, rows: int) -> None:
        self._pattern(rows=rows)

    def _clump_chosen(self, plants: int) -> None:
        self._commit(self.tr("Change clump"), per_station=plants)

    def _angle_chosen(self, degrees: float) -> None:
        self._pattern(angle_deg=degrees)
