"""The inspector's page for one planting."""

from PySide6.QtWidgets import QVBoxLayout, QWidget

from gardencanvas.app.inspector.exact import ExactNumbers
from gardencanvas.app.inspector.reasons import Reasons
from gardencanvas.app.inspector.side_view import SideView
from gardencanvas.app.inspector.volunteer import VolunteerBox
from gardencanvas.app.labels import ElidedLabel, Pill, PlainLabel, ValueTable
from gardencanvas.app.profiles import profiles
from gardencanvas.app.session import Session
from gardencanvas.canvas.palette import Palette
from gardencanvas.crops.model import Crop
from gardencanvas.fit.report import FitReport, PlantingFit
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.words import crop_facts, named
from gardencanvas.words.plain import Measure, counted, percent, planting_name, span
from gardencanvas.words.sources import origin
from gardencanvas.words.volunteers import came_up_words, meaning_words


class PlantingPage(QWidget):
    """Layer, roots, harvest, verdict with reasons, and exact numbers."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        self._name = ElidedLabel(role="title")
        self._about = PlainLabel(role="quiet")
        self._pill = Pill()
        self._values = ValueTable()
        self._side = SideView()
        self.reasons = Reasons(session)
        self.exact = ExactNumbers(session)
        self.volunteer = VolunteerBox(session)
        parts = (self._name, self._about, self._pill, self._values, self.volunteer, self._side, self.reasons)
        for widget in parts:
            column.addWidget(widget)
        column.addWidget(PlainLabel(self.tr("Exact numbers"), "heading"))
        column.addWidget(self.exact)
        column.addStretch(1)

    def show_planting(
        self, planting: Planting, report: FitReport, measure: Measure, colours: Palette
    ) -> None:
        """Show a planting with what the report says of it."""
        fit = report.plantings.get(planting.id)
        if fit is None or self.reasons.holds(planting.id):
            return
        session = self._session
        crop = session.catalogue.resolve(planting.crop, planting.variety)
        self._name.setText(planting_name(session.catalogue, planting))
        bed = bed_of(session.layout, planting)
        place = bed.name if bed else self.tr("on bare plan")
        plants = counted(fit.plants, self.tr("plant"), self.tr("plants"))
        self._about.setText(f"{plants} · {self._pattern_word(planting)} · {place}")
        self._pill.show_verdict(fit.verdict)
        self._values.show_rows(self._rows(planting, crop, fit, measure))
        self.volunteer.show_planting(planting)
        self._side.show_plants(profiles(session, planting, report, colours), measure, colours, session.on)
        self.reasons.show_findings(report.of(planting.id), planting.id, measure)
        self.exact.show_planting(planting, measure)

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

    def _rows(
        self, planting: Planting, crop: Crop, fit: PlantingFit, measure: Measure
    ) -> list[tuple[str, str, str]]:
        known = self._session.catalogue
        layer = named.layer(crop.layer)
        if crop.height_m is not None:
            layer += f" ({measure.range(crop.height_m.low, crop.height_m.high)})"
        roots = measure.small(fit.root_depth_m)
        if crop.root_depth_m is not None:
            roots = measure.range(crop.root_depth_m.low, crop.root_depth_m.high)
        rows = [
            (self.tr("Layer"), layer, origin(known, crop.height_m)),
            (self.tr("Root depth"), roots, origin(known, crop.root_depth_m)),
            (self.tr("Harvest"), self._harvest(planting, fit), self._harvest_source(crop, fit)),
        ]
        if planting.start.kind == "volunteer":
            came = (self.tr("Came up"), came_up_words(planting.start), meaning_words(planting.start))
            rows.insert(0, came)
        light = percent(fit.light)
        if crop.light_good is not None:
            light = self.tr("{0}, wants {1}").format(light, percent(crop.light_good.mid))
        rows.append((self.tr("Light"), light, origin(known, crop.light_good)))
        if fit.days_to_spare is not None:
            meaning = self.tr("Days between its last harvest and the date its neighbour would smother it.")
            rows.append((self.tr("Days to spare"), str(fit.days_to_spare).replace("-", "−"), meaning))
        if fit.estimated:
            fields = ", ".join(map(crop_facts.label, fit.estimated[:6]))
            rows.append((self.tr("Estimated"), fields, self.tr("No book at hand gives these for this crop.")))
        return rows

    def _harvest(self, planting: Planting, fit: PlantingFit) -> str:
        window = self._session.harvest_window(planting)
        average = span(fit.harvest_first, fit.harvest_last)
        if window.first is None or window.last is None:
            odds = percent(window.ripens)
            return self.tr("{0} at best; ripens in {1} of years").format(average, odds)
        return self.tr("{0}, 8 years in 10").format(span(window.first[0], window.last[2]))

    def _harvest_source(self, crop: Crop, fit: PlantingFit) -> str:
        known = self._session.catalogue
        average = self.tr("In an average year {0}.\n").format(span(fit.harvest_first, fit.harvest_last))
        days = crop.harvest_from_planting_d or crop.harvest_from_sowing_d
        method = self.tr("Eight of ten simulated years round your monthly means lie between these dates.\n")
        return average + method + self.tr("Days to harvest, reckoned in warmth: ") + origin(known, days)
