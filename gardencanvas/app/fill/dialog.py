"""The dialog in which ground is filled with a crop, while the plan shows what would stand there."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QVBoxLayout,
)

from gardencanvas.app.fill.asked import Asked
from gardencanvas.app.gaps.searching import GapSearch
from gardencanvas.app.inspector.fields import DayField, LengthField
from gardencanvas.app.labels import ElidedLabel, PlainLabel, as_plain
from gardencanvas.app.search_progress import SearchProgress
from gardencanvas.app.soon import Soon
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.laid import Spacings
from gardencanvas.planner.filling.lattices import KINDS, Kind
from gardencanvas.planner.filling.searching import Answer, Filled, Filling, fill
from gardencanvas.planner.gaps.planting import plant
from gardencanvas.words.filling import answer_words, strip_words
from gardencanvas.words.plain import Measure, crop_name

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_SOON_MS = 200  # a held arrow key counts faster than patterns can be tried


class FillDialog(QDialog):
    """Where, in what pattern, how far apart and when; the answer is previewed, OK makes one step of it."""

    def __init__(self, window: "MainWindow", asked: Asked) -> None:
        super().__init__(window)
        self._window, self._session, self._asked = window, window.session, asked
        self._measure = Measure(window.units)
        self.answer: Answer | None = None
        name = crop_name(self._session.catalogue, asked.crop, asked.variety)
        self._name = name
        self.setWindowTitle(self.tr("Fill with {0}").format(name))
        self.search = GapSearch(self._session, self)
        self.search.found.connect(self._found)
        self._soon = Soon(self, self.look, _SOON_MS)
        self._build(name)
        self.look()

    # parts

    def _build(self, name: str) -> None:
        column = QVBoxLayout(self)
        column.setSpacing(10)
        column.addWidget(ElidedLabel(name, "title"))
        column.addLayout(self._form())
        self.message = PlainLabel()
        self.message.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.message.setMinimumHeight(
            7 * self.fontMetrics().lineSpacing()
        )  # it comes and goes without a jump
        self.message.setAccessibleName(self.tr("What fits"))
        column.addWidget(self.message, 1)
        self._progress = SearchProgress(keep_room=True)
        self.search.told.connect(self._progress.tell)
        self.stop = self._progress.stop
        self.stop.clicked.connect(self._stopped)
        column.addWidget(self._progress)
        box = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(box.Ok | box.Cancel)
        self.plant_it = self.buttons.button(box.Ok)
        self.plant_it.setText(self.tr("&Plant"))
        self.plant_it.setDefault(True)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        column.addWidget(self.buttons)
        self.setMinimumWidth(380)

    def _form(self) -> QFormLayout:
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
        asked, units = self._asked, self._window.units
        self.where = QComboBox()
        self.where.addItem(self.tr("all of {0}").format(asked.bed.name))
        for strip in asked.strips:
            self.where.addItem(strip_words(strip, self._measure))
        if asked.box is not None:
            self.where.addItem(self.tr("the box that was drawn"))
        self.where.setCurrentIndex(asked.meant)
        self.kinds = QComboBox()
        for text in (
            self.tr("whichever holds most"), self.tr("rows"), self.tr("square block"),
            self.tr("staggered block"),
        ):  # fmt: skip
            self.kinds.addItem(text)
        self.in_row = LengthField(self.tr("In the row"), units, 0.005, 20.0)
        self.between = LengthField(self.tr("Between rows"), units, 0.005, 20.0)
        self.in_row.show_metres(asked.room.in_row_m)
        self.between.show_metres(asked.room.between_m)
        self.on = DayField(self.tr("In the bed from"))
        self.on.show_day(asked.start.on)
        self.cost = QComboBox()
        self.cost.addItem(self.tr("nothing clashes"))
        self.cost.addItem(self.tr("nothing even strains"))
        for text, field, signal in (
            (self.tr("Fi&ll"), self.where, self.where.currentIndexChanged),
            (self.tr("&As"), self.kinds, self.kinds.currentIndexChanged),
            (self.tr("&In the row"), self.in_row, self.in_row.valueChanged),
            (self.tr("&Between rows"), self.between, self.between.valueChanged),
            (self.tr("In bed &from"), self.on, self.on.dateChanged),
            (self.tr("&So that"), self.cost, self.cost.currentIndexChanged),
        ):
            label = QLabel(text)
            label.setBuddy(field)
            if isinstance(field, QComboBox):
                field.setAccessibleName(text.replace("&", ""))
            form.addRow(label, field)
            signal.connect(self._soon.ask)
        even = self.tr(
            "In a block, plants stand evenly apart with the same ground: √(in the row × between rows)"
        )
        self.in_row.setToolTip(even)
        self.between.setToolTip(even)
        return form

    # what would be

    @property
    def filling(self) -> Filling:
        """What the fields ask for."""
        asked = self._asked
        in_row = self.in_row.value() * self.in_row.per_unit
        between = self.between.value() * self.between.per_unit
        room = Spacings(round(in_row, 4), round(between, 4), round((in_row * between) ** 0.5, 4))
        chosen: tuple[Kind, ...] = KINDS
        if self.kinds.currentIndex() > 0:
            chosen = (KINDS[self.kinds.currentIndex() - 1],)
        on = self.on.date().toPython()
        start = asked.start if on == asked.start.on else rebuilt(asked.start, on=on)
        worst = (Verdict.CLASHES, Verdict.STRAINS)[self.cost.currentIndex()]
        return Filling(
            asked.bed,
            asked.area(self.where.currentIndex()),
            asked.crop,
            asked.variety,
            room,
            start,
            chosen,
            worst,
        )

    def look(self) -> None:
        """Look anew for what the fields ask for."""
        self._soon.stop()
        filling = self.filling
        self._asked_for = filling
        self.answer = None
        self._session.preview(None)
        self._allow("")
        self.message.setText(self.tr("Trying patterns…"))
        self._progress.begin()
        self.search.ask(lambda survey, checker: fill(survey, checker, filling))

    def _stopped(self) -> None:
        self.search.stop()
        self._progress.end()
        self.message.setText(self.tr("Stopped. Change something to look again."))

    def _found(self, answer: Answer) -> None:
        self._progress.end()
        self.answer = answer
        session = self._session
        said = answer_words(
            answer, self._asked_for, session.garden, session.layout_id, session.catalogue, self._measure
        )
        self.message.setText(said)
        if isinstance(answer, Filled):
            session.preview(plant(session.garden, session.layout_id, answer))
        self._allow(said)

    def _allow(self, said: str) -> None:
        """Enter plants once something was found; a button that cannot says why."""
        possible = isinstance(self.answer, Filled)
        self.plant_it.setEnabled(possible)
        self.plant_it.setToolTip("" if possible else as_plain(said or self.tr("Still looking")))

    # ending

    def accept(self) -> None:
        if self._soon.isActive() or not isinstance(self.answer, Filled):
            return
        session, planting = self._session, self.answer.planting
        before = {p.id for p in session.layout.plantings}
        after = plant(session.garden, session.layout_id, self.answer)
        text = self.tr("Fill {0} with {1} × {2}").format(self._asked.bed.name, planting.plants, self._name)
        if session.propose(after, text):
            session.select(p.id for p in session.layout.plantings if p.id not in before)
        super().accept()

    def reject(self) -> None:
        self._soon.stop()
        self.search.stop()
        self._session.preview(None)
        super().reject()
