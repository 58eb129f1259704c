"""The inspector's pages for several plantings, a bed, any other thing, and the whole garden."""

from collections import Counter
from typing import Any

import numpy as np
from PySide6.QtWidgets import QVBoxLayout, QWidget

from gardencanvas.app.inspector.backdrop_fields import BackdropFields
from gardencanvas.app.inspector.bed_facts import BedFacts
from gardencanvas.app.inspector.bed_fields import BedFields
from gardencanvas.app.inspector.thing_fields import ThingFields
from gardencanvas.app.labels import ElidedLabel, PlainLabel, ValueTable, verdict_word
from gardencanvas.app.session import Session
from gardencanvas.canvas.naming import structure_name
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden.edits import change
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Item
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, Path, RingSupport
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
from gardencanvas.words.refusals import why_refused


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
            self.session.refused.emit(why_refused(error))
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
        self.facts = BedFacts(session)
        self.column.addWidget(self.facts)
        self.column.addWidget(PlainLabel(self.tr("Exact numbers"), "heading"))
        self.fields = BedFields(session)
        self.column.addWidget(self.fields)
        self.column.addStretch(1)

    def show_bed(self, bed: Bed, report: FitReport, measure: Measure) -> None:
        """Show a bed."""
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
        self.values.show_rows(rows)
        self.facts.show_bed(bed)
        self.fields.show_bed(bed, measure)


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
        self.column.addWidget(PlainLabel(self.tr("Exact numbers"), "heading"))
        self.fields = ThingFields(session)
        self.column.addWidget(self.fields)
        self.column.addStretch(1)

    def show_thing(self, thing: Item, measure: Measure) -> None:
        """Show its measures."""
        self.name.setText(thing.name if not isinstance(thing, Planting) else "")
        self.about.setText(self.tr("path") if isinstance(thing, Path) else "")
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
        self.fields.show_thing(thing, measure)


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
