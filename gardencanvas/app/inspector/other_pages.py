"""The inspector's pages for several plantings, a bed, any other thing, and the whole garden."""

from collections import Counter
from typing import Any

import numpy as np
from PySide6.QtWidgets import QFormLayout, QLineEdit, QVBoxLayout, QWidget

from gardencanvas.app.inspector.backdrop_fields import BackdropFields
from gardencanvas.app.inspector.bed_facts import BedFacts
from gardencanvas.app.inspector.fields import LengthField
from gardencanvas.app.labels import ElidedLabel, PlainLabel, ValueTable, verdict_word
from gardencanvas.app.session import Session
from gardencanvas.canvas.naming import structure_name
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden.edits import change
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Item
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, RingSupport
from gardencanvas.garden.places import bed_ground, bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.words import named
from gardencanvas.words.language import figure
from gardencanvas.words.plain import (
    Measure,
    counted,
    day_year,
    percent,
    planting_name,
    plants_counted,
    span,
    yearly,
)


class _Page(QWidget):
    """A title, a quiet line and a table of values."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(8)
        self.name = ElidedLabel(role="title")
        self.about = PlainLabel(role="quiet")
        self.values = ValueTable()
        for widget in (self.name, self.about, self.values):
            self.column.addWidget(widget)

    def commit(self, item: Item, text: str, **fields: Any) -> None:
        """One edit of an item, or a refusal in words."""
        try:
            after = change(self.session.garden, self.session.layout_id, item.id, **fields)
        except Refusal as error:
            self.session.refused.emit(str(error))
            return
        self.session.propose(after, text)


def verdict_counts(report: FitReport, ids: set[str]) -> str:
    """How many plantings have which verdict, worst first: ``clashes 1, shares 3``."""
    counts = Counter(report.plantings[i].verdict for i in ids if i in report.plantings)
    return ", ".join(f"{verdict_word(v)} {counts[v]}" for v in reversed(Verdict) if counts[v])


class ManyPage(_Page):
    """Sums over several things."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, parent)
        self.column.addStretch(1)

    def show_items(self, items: list[Item], report: FitReport, measure: Measure) -> None:
        """Show the sums."""
        plantings = [i for i in items if isinstance(i, Planting)]
        self.name.setText(self.tr("{0} selected").format(len(items)))
        kinds = Counter(planting_name(self.session.catalogue, p) for p in plantings)
        self.about.setText(", ".join(kinds))
        fits = [report.plantings[p.id] for p in plantings if p.id in report.plantings]
        rows = [(self.tr("Plantings"), str(len(plantings)), "")]
        if fits:
            first, last = min(f.harvest_first for f in fits), max(f.harvest_last for f in fits)
            depths = [f.root_depth_m for f in fits]
            rows += [
                (self.tr("Plants"), figure(sum(f.plants for f in fits), ","), ""),
                (self.tr("Verdicts"), verdict_counts(report, {p.id for p in plantings}), ""),
                (self.tr("Harvest"), span(first, last), ""),
                (self.tr("Root depth"), measure.range(min(depths), max(depths)), ""),
            ]
        beds = [i for i in items if isinstance(i, Bed)]
        if beds:
            area = sum(bed_ground(b).area for b in beds)
            rows.append((self.tr("Beds"), f"{len(beds)}, {measure.area(area)}", ""))
        self.values.show_rows(rows)


class BedPage(_Page):
    """A bed's area and how much of it is used through the season."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, parent)
        self._bed: Bed | None = None
        self.facts = BedFacts(session)
        self.column.addWidget(self.facts)
        self.column.addWidget(PlainLabel(self.tr("Exact numbers"), "heading"))
        form = QFormLayout()
        self.column.addLayout(form)
        self._title = QLineEdit()
        self._title.setAccessibleName(self.tr("Name of the bed"))
        self._title.setMaxLength(200)
        self._title.editingFinished.connect(self._renamed)
        form.addRow(self.tr("Name"), self._title)
        self._form = form
        self._sides: tuple[LengthField, LengthField, LengthField] | None = None
        self._units = ""
        self.column.addStretch(1)

    def show_bed(self, bed: Bed, report: FitReport, measure: Measure) -> None:
        """Show a bed."""
        self._bed = bed
        layout = self.session.layout
        inside = [p for p in layout.plantings if bed_of(layout, p) is bed]
        ground = bed_ground(bed)
        self.name.setText(bed.name)
        self.about.setText(counted(len(inside), self.tr("planting"), self.tr("plantings")))
        used, most = ground_in_use(self.session, inside, float(ground.area))
        note = self.tr(
            "Canopy area of its plants as a share of the bed, mean and highest of the year's weeks."
        )
        rows = [
            (self.tr("Area"), measure.area(ground.area), ""),
            (
                self.tr("In use"),
                self.tr("{0} of the year, at most {1}").format(percent(used), percent(most)),
                note,
            ),
        ]
        if inside:
            rows.append((self.tr("Verdicts"), verdict_counts(report, {p.id for p in inside}), ""))
            plants = sum(p.plants for p in inside)
            rows.append((self.tr("Plants"), figure(plants, ","), ""))
        depth = measure.small(bed.soil_depth_m) if bed.soil_depth_m is not None else self.tr("not known")
        rows.append((self.tr("Soil depth"), depth, ""))
        for label, text in ((self.tr("Path"), bed.path_note), (self.tr("Edge"), bed.edge_note)):
            if text:
                rows.append((label, text, ""))
        self.values.show_rows(rows)
        self.facts.show_bed(bed)
        self._fill(bed, measure)

    def _fill(self, bed: Bed, measure: Measure) -> None:
        if self._sides is None or self._units != measure.units:
            self._units = measure.units
            for old in self._sides or ():
                self._form.removeRow(old)
            length = LengthField(self.tr("Length"), measure.units, 0.05, 1000.0)
            width = LengthField(self.tr("Width"), measure.units, 0.05, 1000.0)
            depth = LengthField(self.tr("Soil depth"), measure.units, 0.0, 5.0)
            length.committed.connect(self._lengthened)
            width.committed.connect(self._widened)
            depth.committed.connect(self._deepened)
            self._form.addRow(self.tr("Length"), length)
            self._form.addRow(self.tr("Width"), width)
            self._form.addRow(self.tr("Soil depth"), depth)
            self._sides = (length, width, depth)
        self._title.setText(bed.name)
        sides = rectangle_sides(bed)
        for field, metres in zip(
            self._sides, (*(sides or (0.05, 0.05)), bed.soil_depth_m or 0.0), strict=True
        ):
            field.show_metres(metres)
        for field in self._sides[:2]:
            field.setEnabled(sides is not None)
            field.setToolTip(
                "" if sides else self.tr("This bed is not a rectangle: its corners are moved on the plan.")
            )

    def _renamed(self) -> None:
        if self._bed is not None and self._title.text().strip() != self._bed.name:
            self.commit(self._bed, self.tr("Rename bed"), name=self._title.text().strip())

    def _resized(self, length_m: float | None, width_m: float | None) -> None:
        if self._bed is None or (sides := rectangle_sides(self._bed)) is None:
            return
        outline = resized_rectangle(self._bed, length_m or sides[0], width_m or sides[1])
        self.commit(self._bed, self.tr("Resize {0}").format(self._bed.name), outline=outline)

    def _lengthened(self, metres: float) -> None:
        self._resized(metres, None)

    def _widened(self, metres: float) -> None:
        self._resized(None, metres)

    def _deepened(self, metres: float) -> None:
        if self._bed is not None:
            self.commit(self._bed, self.tr("Change soil depth"), soil_depth_m=metres or None)


def rectangle_sides(bed: Bed) -> tuple[float, float] | None:
    """Length along the first side, and width, of a rectangular bed; None for any other shape."""
    if len(bed.outline) != 4:
        return None
    corners = np.array(bed.outline)
    one, two, three, four = np.roll(corners, -1, axis=0) - corners
    if np.hypot(*(one + three)) > 1e-6 or np.hypot(*(two + four)) > 1e-6 or abs(float(one @ two)) > 1e-6:
        return None
    return float(np.hypot(*one)), float(np.hypot(*two))


def resized_rectangle(bed: Bed, length_m: float, width_m: float) -> tuple[tuple[float, float], ...]:
    """The rectangle with other sides; its first corner and its directions stay."""
    corners = np.array(bed.outline)
    along, across = corners[1] - corners[0], corners[2] - corners[1]
    along, across = along / np.hypot(*along) * length_m, across / np.hypot(*across) * width_m
    first = corners[0]
    moved = (first, first + along, first + along + across, first + across)
    return tuple((round(float(x), 6), round(float(y), 6)) for x, y in moved)


def ground_in_use(session: Session, plantings: list[Planting], area_m2: float) -> tuple[float, float]:
    """Mean and highest share of an area under canopies in the weeks of the layout's year, 0-1 each."""
    first, last = session.layout.season
    covered = np.zeros((last - first).days // 7 + 1)
    for planting in plantings:
        course = session.course(planting)
        days = (course.weeks.starts - np.datetime64(first, "D")).astype(int)
        week = days // 7
        inside = (week >= 0) & (week < len(covered))
        canopy = np.pi * course.radius_m[0] ** 2 * planting.pattern.count
        np.add.at(covered, week[inside], canopy[inside])
    share = np.minimum(covered / area_m2, 1.0)
    return float(share.mean()), float(share.max())


class ThingPage(_Page):
    """A path, support, cover or fixture."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, parent)
        self.column.addStretch(1)

    def show_thing(self, thing: Item, measure: Measure) -> None:
        """Show its measures."""
        self.name.setText(thing.name if not isinstance(thing, Planting) else "")
        rows = []
        if isinstance(thing, (Fixture, Cover, RingSupport, LineSupport)):
            rows.append((self.tr("Height"), measure.large(thing.height_m), ""))
        if isinstance(thing, LineSupport):
            (x0, y0), (x1, y1) = thing.begin, thing.end
            rows.append((self.tr("Length"), measure.large(float(np.hypot(x1 - x0, y1 - y0))), ""))
        if isinstance(thing, (RingSupport, LineSupport)):
            caution = self.tr("Cane tips stand at eye height: cap them, and anchor what can fall.")
            self.about.setText(f"{structure_name(thing.kind)} · {caution}")
        elif isinstance(thing, Fixture):
            self.about.setText(structure_name(thing.kind))
            rows.append((self.tr("Light it lets through"), percent(thing.clear_share), ""))
        elif isinstance(thing, Cover):
            self.about.setText(structure_name(thing.kind))
            first = day_year(thing.first) if thing.first else self.tr("start of the season")
            last = day_year(thing.last) if thing.last else self.tr("end of the season")
            rows.append((self.tr("On"), f"{first} – {last}", ""))
        self.values.show_rows(rows)


class GardenPage(_Page):
    """The garden, when nothing is selected."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, parent)
        self.hint = PlainLabel(
            self.tr(
                "Select a planting or a bed to see what is known of it. "
                "Drag a crop from the seed tin into a bed."
            ),
            "hint",
        )
        self.column.addWidget(self.hint)
        self.column.addStretch(1)
        self.backdrop: BackdropFields | None = None

    def add_backdrop(self, fields: BackdropFields) -> None:
        """Put the fields of the background picture at the page's foot."""
        self.backdrop = fields
        fields.hide()
        self.column.insertWidget(self.column.count() - 1, fields)

    def show_garden(self, report: FitReport, measure: Measure) -> None:
        """Show the garden's sums."""
        garden, layout = self.session.garden, self.session.layout
        if self.backdrop is not None:
            self.backdrop.show_backdrop(garden.backdrop, measure)
        self.name.setText(garden.name)
        self.about.setText(f"{garden.site.place} · {layout.name}, {layout.year}")
        area = sum(bed_ground(b).area for b in layout.beds)
        plants = sum(p.plants for p in layout.plantings)
        frost = garden.site.frost
        none = self.tr("none yet")
        rows = [
            (self.tr("Beds"), f"{len(layout.beds)}, {measure.area(area)}" if layout.beds else none, ""),
        ]
        if layout.plantings:
            sown = f"{len(layout.plantings)}, {plants_counted(plants)}"
            rows.append((self.tr("Plantings"), sown, ""))
            rows.append((self.tr("Crops"), str(len({p.crop for p in layout.plantings})), ""))
            rows.append((self.tr("Verdicts"), verdict_counts(report, set(report.plantings)), ""))
        if frost.last is not None and frost.first is not None:
            days = f"{yearly(frost.last)} – {yearly(frost.first)}"
            rows.append(
                (
                    self.tr("Frost-free"),
                    days,
                    self.tr("Typical last and first frost: {0}.").format(named.frost_days(frost.basis)),
                )
            )
        self.values.show_rows(rows)
