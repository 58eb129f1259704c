"""Where the garden lies: asked at the first start, and from the Plan menu."""

from datetime import date
from itertools import pairwise

from PySide6.QtCore import QCoreApplication, Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.app.site.climate_pane import ClimatePane
from gardencanvas.app.site.frost_pane import FrostPane
from gardencanvas.app.site.look import Caution
from gardencanvas.app.site.place_search import PlaceSearch
from gardencanvas.app.site.position import Position
from gardencanvas.app.site.problem import Problem
from gardencanvas.app.site.typed_table import TypedTable
from gardencanvas.garden.edits import made, rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.site import Climate, Frost, Site
from gardencanvas.resources_folder import resources
from gardencanvas.season.places import Place, places
from gardencanvas.words.plain import Units
from gardencanvas.words.refusals import why_refused

_WAIT_MS = 300  # after the last key, before the frost is guessed anew
_NARROW = 118  # letters: below, the two columns stand under each other
_NEAR_KM = 1.0


class SiteDialog(QDialog):
    """Asks for the site. ``exec`` gives the new site, or None when it was cancelled or left as it was."""

    def __init__(
        self,
        of: Session | Site,
        parent: QWidget | None = None,
        *,
        units: Units = "metric",
        first_run: bool = False,
    ) -> None:
        super().__init__(parent)
        self._before = of if isinstance(of, Site) else of.garden.site
        self._site: Site | None = None
        self._replaced: tuple[Climate, Frost] | None = None
        self.setWindowTitle(self.tr("Where is the garden?") if first_run else self.tr("Site"))
        self.search = PlaceSearch(grows=True)
        self.position = Position(units)
        self.climate = ClimatePane(units)
        self.frost = FrostPane(date.today().year)
        self.caution = Caution()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self._nearest = PlainLabel("", "quiet")
        self._take = QPushButton(self.tr("Take its climate"))
        self._kept = PlainLabel("", "quiet")
        self._put_back = QPushButton(self.tr("Put the old ones back"))
        self._guessing = QTimer(self)
        self._guessing.setSingleShot(True)
        self._guessing.setInterval(_WAIT_MS)
        self._lay_out()
        self._connect()
        self._order()
        self._show(self._before)
        self.resize(1000, 640)
        self.search.field.setFocus()

    # building

    def _lay_out(self) -> None:
        inside = QWidget()
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight, inside)
        self._columns.setContentsMargins(16, 12, 16, 12)
        self._columns.setSpacing(24)
        where = (
            _heading(self.tr("Place")),
            self.search,
            self.position,
            _row(self._nearest, self._take),
        )
        what = (
            _headed(
                self.tr("The year there"),
                self.tr("line: mean temperature, band: minimum to maximum, bars: rain"),
            ),
            self.climate,
            _row(self._kept, self._put_back),
            _heading(self.tr("Frost")),
            self.frost,
        )
        self._columns.addLayout(_column(*where), 4)
        self._columns.addLayout(_column(*what), 7)
        scroll = QScrollArea()
        scroll.setProperty("role", "panel")
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setWidget(inside)
        self._scroll = scroll
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.setSpacing(8)
        column.addWidget(scroll, 1)
        column.addWidget(self.caution)
        column.addLayout(self._foot())

    def _foot(self) -> QBoxLayout:
        credits_text = PlainLabel(
            self.tr(
                "Places: GeoNames, CC BY 4.0. Climate: contains modified Copernicus Climate Change Service "
                "information (ERA5); neither the European Commission nor ECMWF is responsible for any use of "
                "it. Elevations: open terrain models."
            ),
            "source",
        )
        self._credits = QPushButton(self.tr("All credits…"))
        self._credits.setAutoDefault(False)
        side = QHBoxLayout()
        side.setSpacing(12)
        side.addWidget(self._credits)
        side.addStretch(1)
        side.addWidget(self.buttons)
        self._foot_row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._foot_row.setSpacing(8)
        self._foot_row.addWidget(credits_text, 1)
        self._foot_row.addLayout(side)
        return self._foot_row

    def _order(self) -> None:
        """The order in which Tab goes through the fields: as they stand."""
        place, ways = self.position, [self.frost.ways.button(n) for n in range(4)]
        fields = [self.search.field, place.name, *place.coordinates.values(), place.elevation, place.bearing]
        fields += [self._take, self.climate.table, self.climate.source, self._put_back, *ways]
        fields += [self.frost.last.day, self.frost.last.month, self.frost.first.day, self.frost.first.month]
        fields += [self.frost.past, self._credits]
        fields += [
            self.buttons.button(kind) for kind in self.buttons.StandardButton if self.buttons.button(kind)
        ]
        for one, following in pairwise(fields):
            self.setTabOrder(one, following)

    def _connect(self) -> None:
        self.search.picked.connect(self.take_place)
        self.position.edited.connect(self._settle)
        self.position.moved.connect(self._moved)
        self.climate.edited.connect(self._climate_edited)
        self.frost.edited.connect(self._frost_edited)
        self._guessing.timeout.connect(self._guess)
        self._take.clicked.connect(self._take_nearest)
        self._put_back.clicked.connect(self._put_old_back)
        self._credits.clicked.connect(self._show_credits)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)

    def _show(self, site: Site) -> None:
        self.position.show_site(site)
        self.climate.show_climate(site.climate)
        self.frost.show_site(site.frost, site.climate, south=site.latitude_deg < 0)
        self.climate.show_frost(site.frost)
        self._moved()
        self._kept.hide()
        self._put_back.hide()

    # what the grower does

    def take_place(self, place: Place) -> None:
        """Move to a place of the list and take its climate, with a rough guess of its frosts."""
        self.position.show_place(place)
        self._take_climate(place)

    def _take_nearest(self) -> None:
        near = self._near()
        if near is not None:
            self._take_climate(near[0])

    def _take_climate(self, place: Place) -> None:
        old = self.climate.climate()
        if self._replaced is None and old is not None:
            self._replaced = old, self.frost.frost()
        climate = places().climate_of(place)
        self.climate.show_climate(climate)
        self.frost.guess_from(climate)
        self._frost_edited()
        self._kept.setText(self.tr("Months and frost are now those of {0}.").format(place.name))
        self._kept.setVisible(self._replaced is not None)
        self._put_back.setVisible(self._replaced is not None)
        self._moved()

    def _put_old_back(self) -> None:
        if self._replaced is None:
            return
        climate, frost = self._replaced
        self._replaced = None
        self.climate.show_climate(climate)
        self.frost.show_site(frost, climate, south=(self.position.coordinate("latitude") or 0.0) < 0)
        self._frost_edited()
        self._kept.hide()
        self._put_back.hide()
        self.search.field.setFocus()

    def _climate_edited(self) -> None:
        self._guessing.start()
        self._settle()

    def _guess(self) -> None:
        climate = self.climate.climate()
        if climate is not None:
            self.frost.set_climate(climate)
            self._frost_edited()

    def _frost_edited(self) -> None:
        self.climate.show_frost(self.frost.frost())
        self._settle()

    def _moved(self) -> None:
        latitude = self.position.coordinate("latitude")
        if latitude is not None:
            self.frost.set_south(latitude < 0)
        near = self._near()
        if near is None:
            self._nearest.setText("")
        elif near[1] < _NEAR_KM:
            self._nearest.setText(self.tr("In the list: {0}").format(near[0].label))
        else:
            self._nearest.setText(
                self.tr("Nearest in the list: {0}, {1} km").format(near[0].label, round(near[1]))
            )
        taken = near is not None and places().climate_of(near[0]).source == self.climate.source.text()
        self._take.setVisible(near is not None and not taken)
        self._settle()

    def _near(self) -> tuple[Place, float] | None:
        latitude, longitude = self.position.coordinate("latitude"), self.position.coordinate("longitude")
        if latitude is None or longitude is None:
            return None
        return places().nearest(latitude, longitude)

    def _settle(self) -> None:
        """Once something was mended, a complaint from an earlier OK goes."""
        if not self.problems():
            self.caution.say("")

    # the answer

    def problems(self) -> list[Problem]:
        """Everything that cannot be taken, from the top."""
        return [*self.position.problems(), *self.climate.problems(), *self.frost.problems()]

    def accept(self) -> None:
        """Close with the new site; with something wrong, say so and go there instead."""
        if self._guessing.isActive():
            self._guessing.stop()
            self._guess()
        found = self.problems()
        if found:
            self._complain(found[0])
            return
        try:
            self._site = self._made()
        except Refusal as error:
            self.caution.say(why_refused(error))
            return
        super().accept()

    def _complain(self, problem: Problem) -> None:
        self.caution.say(problem.sentence)
        if isinstance(problem.widget, TypedTable):
            problem.widget.show_wrong()
        problem.widget.setFocus()
        self._scroll.ensureWidgetVisible(problem.widget)

    def _made(self) -> Site:
        return made(
            Site,
            place=self.position.name.text().strip(),
            latitude_deg=self.position.coordinate("latitude"),
            longitude_deg=self.position.coordinate("longitude"),
            elevation_m=self.position.elevation_m,
            bearing_deg=self.position.bearing_deg,
            frost=self.frost.frost(),
            climate=self.climate.climate(),
        )

    def site(self) -> Site | None:
        """The new site after OK; None if it was cancelled or nothing was changed."""
        return None if self._site == self._before else self._site

    def exec(self) -> Site | None:  # type: ignore[override]
        """Ask, and wait for the answer."""
        self._site = None
        super().exec()
        return self.site()

    # look

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = self.width() >= _NARROW * self.fontMetrics().averageCharWidth()
        ways = QBoxLayout.Direction
        for row in (self._columns, self._foot_row):
            row.setDirection(ways.LeftToRight if wide else ways.TopToBottom)

    def _show_credits(self) -> None:
        box = QDialog(self)
        box.setWindowTitle(self.tr("Credits of the list of places"))
        text = QPlainTextEdit((resources() / "places" / "LICENCE.md").read_text(encoding="utf-8"))
        text.setReadOnly(True)
        text.setAccessibleName(box.windowTitle())
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(box.reject)
        column = QVBoxLayout(box)
        column.addWidget(text)
        column.addWidget(buttons)
        box.resize(760, 520)
        box.exec()
        box.deleteLater()


def edit_site(session: Session, parent: QWidget | None = None, units: Units = "metric") -> bool:
    """Ask for the garden's site and commit the change as one undo step; False when nothing changed."""
    dialog = SiteDialog(session, parent, units=units)
    site = dialog.exec()
    dialog.deleteLater()
    if site is None:
        return False
    return session.propose(
        rebuilt(session.garden, site=site), QCoreApplication.translate("SiteDialog", "Change the site")
    )


def _heading(text: str) -> PlainLabel:
    return PlainLabel(text, "heading")


def _headed(text: str, quiet: str) -> QHBoxLayout:
    heading = _heading(text)
    heading.setWordWrap(False)
    across = QHBoxLayout()
    across.setSpacing(12)
    across.addWidget(heading)
    across.addWidget(PlainLabel(quiet, "source"), 1)
    return across


def _column(*parts: QWidget | QHBoxLayout) -> QVBoxLayout:
    """Parts under each other; the first one that wants to grow takes the height that is left."""
    column = QVBoxLayout()
    column.setSpacing(8)
    for part in parts:
        if isinstance(part, QWidget):
            column.addWidget(part, int(isinstance(part, (PlaceSearch, ClimatePane))))
        else:
            column.addLayout(part)
    return column


def _row(label: PlainLabel, button: QPushButton) -> QHBoxLayout:
    button.setAutoDefault(False)
    across = QHBoxLayout()
    across.setSpacing(12)
    across.addWidget(label, 1)
    across.addWidget(button)
    return across
