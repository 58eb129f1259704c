"""The site dialog: where the garden lies, which way the plan looks, its frosts and its climate."""

from pydantic import ValidationError
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.app.site.compass import Compass
from gardencanvas.app.site.frost_part import FrostPart
from gardencanvas.app.site.look import Caution
from gardencanvas.app.site.months import MonthTable
from gardencanvas.app.site.place_search import PlaceSearch
from gardencanvas.app.site.typed import number
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal, refusal
from gardencanvas.garden.site import Site
from gardencanvas.season.coordinates import BadCoordinate, degrees, written
from gardencanvas.season.places import Place, places

CREDITS = (
    "Places: GeoNames (geonames.org), CC BY 4.0. Climate: contains modified Copernicus Climate Change "
    "Service information (ERA5); neither the Commission nor ECMWF is responsible for any use of it."
)


class SiteDialog(QDialog):
    """Edits a copy of a site; ``site`` is what is typed, or None with the reason shown."""

    def __init__(self, site: Site, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Where the garden lies"))
        self._before = site
        self.site: Site | None = site
        self.search = PlaceSearch()
        self.place, self.latitude, self.longitude, self.elevation = (QLineEdit() for _ in range(4))
        self.bearing = QDoubleSpinBox()
        self.bearing.setRange(0.0, 359.9)
        self.bearing.setDecimals(1)
        self.bearing.setWrapping(True)
        self.bearing.setSuffix("°")
        self.compass = Compass()
        self.frost = FrostPart()
        self.months = MonthTable()
        self.caution = Caution()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self._lay_out()
        self._show(site)
        self._connect()
        self._read()

    # parts

    def _lay_out(self) -> None:
        inside = QWidget()
        halves = QHBoxLayout(inside)
        halves.setSpacing(24)
        left, right = QVBoxLayout(), QVBoxLayout()
        left.addWidget(self.search)
        fields = QWidget()
        fields.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        form = QFormLayout(fields)
        form.setContentsMargins(0, 8, 0, 0)
        for field, name in (
            (self.place, self.tr("Place")),
            (self.latitude, self.tr("Latitude")),
            (self.longitude, self.tr("Longitude")),
            (self.elevation, self.tr("Elevation, m")),
        ):
            field.setAccessibleName(name)
            form.addRow(name, field)
        self.place.setMaxLength(200)
        self.bearing.setAccessibleName(self.tr("The plan's top edge faces"))
        self.bearing.setToolTip(self.tr("0 when north is at the top of the plan, 90 when east is."))
        facing = QHBoxLayout()
        facing.addWidget(self.bearing, 1)
        facing.addWidget(self.compass)
        form.addRow(self.tr("Top edge faces"), facing)
        left.addWidget(fields)
        left.addStretch(1)
        headings = PlainLabel(self.tr("Frost"), "heading"), PlainLabel(self.tr("Climate"), "heading")
        for heading in headings:
            heading.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        right.addWidget(headings[0])
        right.addWidget(self.frost)
        right.addWidget(headings[1])
        right.addWidget(self.months, 1)
        halves.addLayout(left, 1)
        halves.addLayout(right, 1)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        scroll.setWidget(inside)
        column = QVBoxLayout(self)
        column.addWidget(scroll, 1)
        column.addWidget(self.caution)
        column.addWidget(PlainLabel(CREDITS, "source"))
        column.addWidget(self.buttons)
        self.resize(860, 640)

    def _connect(self) -> None:
        self.search.picked.connect(self._take)
        for field in (self.place, self.latitude, self.longitude, self.elevation):
            field.textChanged.connect(self._read)
        self.bearing.valueChanged.connect(self._turned)
        self.compass.turned.connect(self.bearing.setValue)
        self.frost.changed.connect(self._read)
        self.months.changed.connect(self._read)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)

    def _show(self, site: Site) -> None:
        self.place.setText(site.place)
        self.latitude.setText(written(site.latitude_deg, "latitude", 4))
        self.longitude.setText(written(site.longitude_deg, "longitude", 4))
        self.elevation.setText(f"{site.elevation_m:.0f}")
        self.bearing.setValue(site.bearing_deg)
        self.compass.show_bearing(site.bearing_deg)
        self.frost.show_frost(site.frost)
        self.months.show_climate(site.climate)

    # what is typed

    def _take(self, place: Place) -> None:
        """Fill in what the list knows of a place; its frost is only a rough estimate."""
        self.place.setText(place.name)
        self.latitude.setText(written(place.latitude_deg, "latitude", 4))
        self.longitude.setText(written(place.longitude_deg, "longitude", 4))
        self.elevation.setText(f"{place.elevation_m:.0f}")
        self.frost.basis.setCurrentIndex(self.frost.basis.findData("estimated"))
        self.months.show_climate(places().climate_of(place))
        self.frost.show_frost(rebuilt(self._before.frost, last=None, first=None, basis="estimated"))

    def _turned(self, degrees_: float) -> None:
        self.compass.show_bearing(degrees_)
        self._read()

    def _read(self, *_: object) -> None:
        """Make a site of what is typed, or say what is wrong with it."""
        self.site, complaint = None, ""
        try:
            self.site = self._typed()
        except BadCoordinate as error:
            complaint = self._coordinate(error)
        except ValidationError as error:
            complaint = str(refusal(error))
        except (Refusal, ValueError) as error:
            complaint = str(error)
        self.caution.say(complaint)
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(self.site is not None)

    def _typed(self) -> Site:
        latitude = degrees(self.latitude.text(), "latitude")
        longitude = degrees(self.longitude.text(), "longitude")
        try:
            elevation = number(self.elevation.text())
        except ValueError as error:
            raise ValueError(self.tr("The elevation is not a number of metres.")) from error
        climate = self.months.climate()
        return rebuilt(
            self._before,
            place=self.place.text().strip(),
            latitude_deg=round(latitude, 6),
            longitude_deg=round(longitude, 6),
            elevation_m=elevation,
            bearing_deg=round(self.bearing.value(), 2),
            frost=self.frost.frost(climate, south=latitude < 0),
            climate=climate,
        )

    def _coordinate(self, error: BadCoordinate) -> str:
        axis = self.tr("latitude") if error.axis == "latitude" else self.tr("longitude")
        limit = 90 if error.axis == "latitude" else 180
        if error.fault == "out of range":
            return self.tr("The {0} lies between −{1}° and {1}°.").format(axis, limit)
        return self.tr("The {0} is not readable: write it as 51.5, 51,5 N or 33°52′ S.").format(axis)


def edit_site(session: Session, parent: QWidget | None = None) -> bool:
    """Ask for the garden's site; commit what was changed as one undo step."""
    dialog = SiteDialog(session.garden.site, parent)
    done = dialog.exec() == QDialog.DialogCode.Accepted and dialog.site is not None
    if done:
        session.propose(rebuilt(session.garden, site=dialog.site), session.tr("Change the site"))
    dialog.deleteLater()
    return done
