"""Name, latitude, longitude, elevation, and the bearing of the plan's top edge."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.number_fields import DecimalField
from gardencanvas.app.site.compass import Compass
from gardencanvas.app.site.look import Caution
from gardencanvas.app.site.problem import Problem
from gardencanvas.garden.site import Site
from gardencanvas.season.coordinates import Axis, BadCoordinate, degrees, written
from gardencanvas.season.places import Place
from gardencanvas.words.language import local
from gardencanvas.words.plain import Units
from gardencanvas.words.remedies import wind

_FOOT_M = 0.3048


class Position(QWidget):
    """The form; ``edited`` comes with every change, ``moved`` with one of latitude or longitude."""

    edited = Signal()
    moved = Signal()

    def __init__(self, units: Units, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._per_unit = _FOOT_M if units == "imperial" else 1.0
        self._given: dict[Axis, float] = {"latitude": 0.0, "longitude": 0.0}
        self._elevation_m = 0.0
        self.name = QLineEdit()
        self.name.setMaxLength(200)
        self.coordinates: dict[Axis, QLineEdit] = {"latitude": QLineEdit(), "longitude": QLineEdit()}
        self.elevation = DecimalField()
        self.bearing = DecimalField()
        self.compass = Compass()
        self._looks = PlainLabel("", "quiet")
        self.caution = Caution()
        self._set_up()
        self._lay_out()

    def _set_up(self) -> None:
        self.name.setAccessibleName(self.tr("Name of the place"))
        self.name.textChanged.connect(self._edited)
        for axis, field in self.coordinates.items():
            field.setMaxLength(60)
            field.textChanged.connect(self._moved)
            field.setAccessibleName(self._axis_name(axis))
            field.setToolTip(self.tr("Decimal degrees, as in 51.5 N or -33.87, or degrees and minutes"))
        self.elevation.setDecimals(0)
        self.elevation.setRange(-450.0 / self._per_unit, 6000.0 / self._per_unit)
        self.elevation.setSuffix(self.tr(" ft") if self._per_unit != 1.0 else self.tr(" m"))
        self.elevation.setAccessibleName(self.tr("Elevation above the sea"))
        self.elevation.valueChanged.connect(self._edited)
        self.bearing.setDecimals(1)
        self.bearing.setRange(0.0, 359.9)
        self.bearing.setSingleStep(5.0)
        self.bearing.setWrapping(True)
        self.bearing.setSuffix("°")
        self.bearing.setAccessibleName(self.tr("Compass bearing that the top of the plan looks to"))
        self.bearing.setAccessibleDescription(self.tr("0 is north, 90 east, 180 south, 270 west"))
        self.bearing.valueChanged.connect(self._turned)
        self.compass.turned.connect(self.bearing.setValue)

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(6)
        rows = (
            (self.tr("&Name"), self.name),
            (self.tr("La&titude"), self.coordinates["latitude"]),
            (self.tr("Lon&gitude"), self.coordinates["longitude"]),
            (self.tr("&Elevation"), self.elevation),
        )
        for row, (text, field) in enumerate(rows):
            grid.addWidget(_label(text, field), row, 0)
            grid.addWidget(field, row, 1)
        grid.setColumnStretch(1, 1)
        turn = QVBoxLayout()
        turn.setSpacing(6)
        top = _label(self.tr("The top of the plan &looks to"), self.bearing)
        turn.addStretch(1)
        turn.addWidget(top)
        turn.addWidget(self.bearing)
        turn.addWidget(self._looks)
        turn.addStretch(1)
        across = QHBoxLayout()
        across.setSpacing(12)
        across.addWidget(self.compass)
        across.addLayout(turn, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(grid)
        column.addWidget(self.caution)
        column.addLayout(across)

    # showing

    def show_site(self, site: Site) -> None:
        """Show a site's own."""
        self.name.setText(site.place)
        self._show_at(site.latitude_deg, site.longitude_deg, site.elevation_m)
        self.bearing.setValue(site.bearing_deg)
        self._turned()

    def show_place(self, place: Place) -> None:
        """Move to a place of the list."""
        self.name.setText(place.label)
        self._show_at(place.latitude_deg, place.longitude_deg, place.elevation_m)

    def _show_at(self, latitude_deg: float, longitude_deg: float, elevation_m: float) -> None:
        self._given = {"latitude": latitude_deg, "longitude": longitude_deg}
        for axis, field in self.coordinates.items():
            field.setText(_shown(self._given[axis], axis))
        self._elevation_m = elevation_m
        self.elevation.setValue(elevation_m / self._per_unit)

    # reading

    def coordinate(self, axis: Axis) -> float | None:
        """The coordinate in degrees, the very one given if it was left so; None while it cannot be read."""
        text = self.coordinates[axis].text()
        if text == _shown(self._given[axis], axis):
            return self._given[axis]
        try:
            return degrees(text, axis)
        except BadCoordinate:
            return None

    @property
    def elevation_m(self) -> float:
        """Metres; exactly as it was given if it was left so."""
        if self.elevation.value() == round(self._elevation_m / self._per_unit):
            return self._elevation_m
        return self.elevation.value() * self._per_unit

    @property
    def bearing_deg(self) -> float:
        """The bearing of the top edge, from 0 to below 360."""
        return self.bearing.value() % 360.0

    def problems(self) -> list[Problem]:
        """What cannot be taken."""
        found = []
        if not self.name.text().strip():
            found.append(Problem(self.tr("Give the place a name."), self.name))
        for axis, field in self.coordinates.items():
            try:
                degrees(field.text(), axis)
            except BadCoordinate as error:
                found.append(Problem(self._fault(error), field))
        return found

    def _fault(self, error: BadCoordinate) -> str:
        name, north = self._axis_name(error.axis), error.axis == "latitude"
        letters = self.tr("N or S") if north else self.tr("E or W")
        sentences = {
            "empty": self.tr("{0}: give decimal degrees, as in {1}."),
            "unreadable": self.tr("{0} cannot be read: write decimal degrees, as in {1}."),
            "out of range": self.tr("{0} goes to {2} degrees on either side, no further."),
            "sign and letter": self.tr("{0} has both a sign and a letter: leave one of them out."),
            "other axis": self.tr("{0} takes {3}, not that letter."),
        }
        example = local("51.5 N") if north else local("4.4 E")
        return sentences[error.fault].format(name, example, 90 if north else 180, letters)

    def _axis_name(self, axis: Axis) -> str:
        return self.tr("Latitude") if axis == "latitude" else self.tr("Longitude")

    def _edited(self) -> None:
        self.caution.say(" ".join(problem.sentence for problem in self.problems()))
        self.edited.emit()

    def _moved(self) -> None:
        self._edited()
        self.moved.emit()

    def _turned(self) -> None:
        bearing = self.bearing_deg
        self.compass.show_bearing(bearing)
        self._looks.setText(wind(bearing))
        self.edited.emit()


def _shown(value_deg: float, axis: Axis) -> str:
    """To 10 m, without idle zeros: ``51.6° N``."""
    digits, letter = written(value_deg, axis, 4).split("°")
    return f"{local(digits.rstrip('0').rstrip('.'))}°{letter}"


def _label(text: str, field: QWidget) -> QLabel:
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setProperty("role", "quiet")
    label.setBuddy(field)
    return label
