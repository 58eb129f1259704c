"""The parts of the crop page: what is seen and done, what is measured, where it comes from."""

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from gardencanvas.app.fact_table import FactTable, label_width
from gardencanvas.app.inspector.side_view import Profile, SideView
from gardencanvas.app.labels import PlainLabel, as_plain
from gardencanvas.app.month_strip import MonthStrip
from gardencanvas.app.session import Session
from gardencanvas.canvas.palette import Palette, tint_of
from gardencanvas.crops.interactions import interactions
from gardencanvas.crops.model import Crop, Hazard, Quantity, Remark
from gardencanvas.crops.tin import age_warning
from gardencanvas.fit.report import Verdict
from gardencanvas.season.crop_year import crop_year
from gardencanvas.words import named
from gardencanvas.words.company import company
from gardencanvas.words.crop_facts import caution, citations, hazard_words, sections
from gardencanvas.words.plain import Measure, name_of, variety_name
from gardencanvas.words.sources import cited
from gardencanvas.words.tin import age_words, lot_words

_MOST_COMPANY = 14  # rows that are shown


def tr(text: str) -> str:
    """The text in the user's language."""
    return QCoreApplication.translate("CropPage", text)


class Sheet:
    """One crop, or one of its varieties, laid out for the page."""

    def __init__(
        self, session: Session, crop: Crop, variety_id: str | None, measure: Measure, colours: Palette
    ) -> None:
        self._session, self._crop, self._variety_id = session, crop, variety_id
        self._measure, self._colours = measure, colours
        self._sections = sections(crop, session.catalogue, measure)
        self._company = company(crop, session.catalogue, interactions())[:_MOST_COMPANY]
        others = [each.source for each in self._company]
        self._numbers = citations(self._sections, crop, session.catalogue, others)

    # what is seen

    def seen(self) -> QWidget:
        """Hazards first; then the plant from the side, its year, what lies in the tin, and its company."""
        box, column = _column()
        self._add_hazards(column)
        column.addWidget(PlainLabel(tr("From the side, grown, to one scale"), "heading"))
        column.addWidget(self._side_view())
        place = self._session.garden.site.place
        column.addWidget(PlainLabel(tr("The year at {0}").format(place), "heading"))
        column.addWidget(self._year())
        self._add_lots(column)
        self._add_remarks(column)
        self._add_company(column)
        column.addStretch(1)
        return box

    def _add_hazards(self, column: QVBoxLayout) -> None:
        if not self._crop.hazards:
            return
        column.addWidget(PlainLabel(tr("Take care"), "heading"))
        order = ("high", "medium", "low")
        for hazard in sorted(self._crop.hazards, key=lambda h: order.index(h.severity)):
            column.addWidget(self._hazard(hazard))
        column.addWidget(PlainLabel(caution(), "quiet"))

    def _hazard(self, hazard: Hazard) -> QFrame:
        card = QFrame()
        card.setProperty("role", "card")
        card.setProperty("severity", hazard.severity)
        column = QVBoxLayout(card)
        column.setContentsMargins(10, 6, 8, 6)
        column.setSpacing(3)
        said = hazard_words(hazard)
        text = PlainLabel(f"⚠ {said}" if hazard.severity == "high" else said, "body")
        text.setAccessibleName(tr("{0} hazard: {1}").format(hazard.severity, said))
        column.addWidget(text)
        column.addWidget(PlainLabel(cited(self._session.catalogue, hazard.source), "source"))
        return card

    def _side_view(self) -> SideView:
        crop, known = self._crop, self._session.catalogue
        profiles = [self._profile(crop, name_of(crop))]
        if self._variety_id is not None:
            name = variety_name(known.variety(crop.id, self._variety_id))
            usual = self._profile(known.resolve(crop.id), tr("the crop"))
            profiles = [self._profile(crop, tr("“{0}”").format(name)), usual]
        view = SideView()
        view.show_plants(profiles, self._measure, self._colours, self._session.on)
        return view

    def _profile(self, crop: Crop, name: str) -> Profile:
        return Profile(
            name=name,
            radius_m=_mid(crop.spread_m) / 2,
            height_m=_mid(crop.height_m),
            base_m=min(_mid(crop.canopy_base_m), 0.9 * _mid(crop.height_m)),
            root_m=_mid(crop.root_depth_m),
            tint=QColor(tint_of(crop.family, crop.id, self._colours.dark).leaf),
            outline=QColor(self._colours.verdict(Verdict.CLEAR)),
            grown=True,
        )

    def _year(self) -> MonthStrip:
        session, crop, colours = self._session, self._crop, self._colours
        site, layout = session.garden.site, session.layout
        ways = crop_year(site, crop, layout.season[0])
        tint = tint_of(crop.family, crop.id, colours.dark)
        strip = MonthStrip()
        strip.show_year(ways, tint, colours, site.frost, layout.first_month, session.on)
        return strip

    def _add_lots(self, column: QVBoxLayout) -> None:
        lots = self._session.library.lots_of(self._crop.id, self._variety_id)
        if lots:
            column.addWidget(PlainLabel(tr("In your tin"), "heading"))
        for lot in lots:
            column.addWidget(PlainLabel(lot_words(lot), "body"))
            warning = age_warning(lot, self._crop, self._session.on)
            if warning is not None:
                column.addWidget(PlainLabel(age_words(warning), "warning"))

    def _add_remarks(self, column: QVBoxLayout) -> None:
        if self._crop.remarks:
            column.addWidget(PlainLabel(tr("Notes"), "heading"))
        for remark in self._crop.remarks:
            column.addWidget(self._said(named.shipped(remark.text), _grade(remark), remark.source))

    def _add_company(self, column: QVBoxLayout) -> None:
        if self._company:
            column.addWidget(PlainLabel(tr("Beside other crops"), "heading"))
        for each in self._company:
            column.addWidget(self._said(f"{each.others} – {each.said}", each.evidence, each.source))

    def _said(self, text: str, evidence: str, source: str) -> QWidget:
        """A sentence with the strength of its evidence and the number of its source."""
        box, column = _column()
        column.setSpacing(1)
        body = PlainLabel(text, "body")
        number, citation = self._numbers[source]
        body.setToolTip(as_plain(citation))
        body.setAccessibleDescription(citation)
        column.addWidget(body)
        column.addWidget(PlainLabel(tr("{0}, source {1}").format(evidence, number), "source"))
        return box

    # what is measured

    def facts(self) -> QWidget:
        """Tables of all that is known, section by section."""
        box, column = _column()
        column.setSpacing(14)
        width = label_width(self._sections, box)
        for section in self._sections:
            column.addWidget(FactTable(section, self._numbers, width))
        if any(told.estimated for section in self._sections for told in section.rows):
            column.addWidget(PlainLabel(tr("≈ estimated: no source gives it for this crop."), "quiet"))
        column.addStretch(1)
        return box

    def sources(self) -> QWidget:
        """Every source named on the page, by its number."""
        box, column = _column()
        column.setSpacing(3)
        column.addWidget(PlainLabel(tr("Sources"), "heading"))
        for number, citation in self._numbers.values():
            column.addWidget(PlainLabel(f"{number}  {citation}", "source"))
        return box


def _grade(remark: Remark) -> str:
    """What a remark is about and what it rests on."""
    return f"{named.topic(remark.topic)}, {named.evidence(remark.evidence)}"


def _column() -> tuple[QWidget, QVBoxLayout]:
    box = QWidget()
    column = QVBoxLayout(box)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(8)
    return box, column


def _mid(value: Quantity | None) -> float:
    return 0.0 if value is None else value.mid
