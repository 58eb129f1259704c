"""The panel that answers what else fits: at a place, of a crop, or anywhere now."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QHideEvent, QKeyEvent, QShowEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.gaps.searching import GapSearch
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.search_progress import SearchProgress
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.items.offers import Offered, OffersItem
from gardencanvas.canvas.items.open_ground import OpenBed, OpenGroundItem
from gardencanvas.canvas.palette import Palette
from gardencanvas.canvas.shapes import from_shapely, hull
from gardencanvas.garden.value import Point
from gardencanvas.planner.gaps.answers import Answer, Proposal, Weights, Wishes
from gardencanvas.planner.gaps.asking import Question, by_crop, by_date, by_place
from gardencanvas.planner.gaps.open_ground import gaps, unused, weeks_free
from gardencanvas.planner.gaps.planting import plant
from gardencanvas.words import gaps as words
from gardencanvas.words.plain import Measure, crop_name, day, short_day

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_RANKINGS: tuple[Weights, ...] = (
    Weights(),
    Weights(harvest_rate=0.0, harvest=1.0),
    Weights(harvest_rate=0.0, soon=1.0),
    Weights(harvest_rate=0.2, spare=1.0),
)


class GapsPanel(QWidget):
    """Open ground as a layer of the plan while it is shown; proposals, best first, tried out on hover."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__()
        self._window, self._session = window, window.session
        self._measure = Measure(window.units)
        self._proposals: tuple[Proposal, ...] = ()
        self._answered = False  # what the list and the line above it show is an answer, also "nothing fits"
        self._elsewhere = True
        self.search = GapSearch(self._session, self)
        self.search.found.connect(self._found)
        self._ground = OpenGroundItem(window.view.look)
        window.view.plan.addItem(self._ground)
        self._places = OffersItem(window.view.look)
        window.view.plan.addItem(self._places)
        self._soon = Soon(self, self.refresh_ground, 40)
        self._build()
        session = self._session
        for signal in (session.changed, session.layout_changed, session.date_changed):
            signal.connect(self._changed)
        window.view.asked.connect(self.ask_place)

    # parts

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 6, 6, 6)
        self.unused = PlainLabel("", "quiet")
        column.addWidget(self.unused)
        column.addLayout(self._questions())
        column.addLayout(self._wishes())
        self.said = PlainLabel(self.tr("Click on open ground of the plan, or ask with a button."), "quiet")
        column.addWidget(self.said)
        self._progress = SearchProgress()
        self.search.told.connect(self._progress.tell)
        self.stop = self._progress.stop
        self.stop.clicked.connect(self._stopped)
        column.addWidget(self._progress)
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("What fits, best first"))
        self.list.setWordWrap(True)
        self.list.setSpacing(2)
        self.list.setMouseTracking(True)
        self.list.itemEntered.connect(self._hovered)
        self.list.currentItemChanged.connect(self._hovered)
        self.list.itemActivated.connect(self._plant)
        self.list.viewport().installEventFilter(self)
        self.list.installEventFilter(self)
        column.addWidget(self.list, 1)
        self.detail = PlainLabel("", "quiet")
        self.detail.setAlignment(Qt.AlignmentFlag.AlignTop)
        around = self._around = QScrollArea()
        around.setWidgetResizable(True)
        around.setFrameShape(QScrollArea.Shape.NoFrame)
        around.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        around.setMaximumHeight(110)
        around.setWidget(self.detail)
        around.setVisible(False)
        column.addWidget(around)
        self.plant_it = QPushButton(self.tr("&Plant it"))
        self.plant_it.clicked.connect(self._plant)
        self.plant_it.setEnabled(False)
        self.plant_it.setToolTip(self.tr("Choose a proposal first"))
        column.addWidget(self.plant_it)

    def _questions(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(4)
        for text, tip, do in (
            (
                self.tr("Place…"),
                self.tr("What fits at a place? Click or drag on the plan"),
                self.choose_place,
            ),
            (self.tr("Crop"), self.tr("Where does the crop chosen in the seed tin fit?"), self.ask_crop),
            (self.tr("Now"), self.tr("What can be started in the date cursor's week?"), self.ask_now),
        ):
            button = QPushButton(text)
            button.setToolTip(tip)
            button.setAccessibleName(tip)
            button.setMinimumWidth(40)
            button.clicked.connect(lambda _=False, do=do: do())
            row.addWidget(button)
        return row

    def _wishes(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(2)
        self.tin = QCheckBox(self.tr("in my tin"))
        self.wanted = QCheckBox(self.tr("wanted"))
        self.new_family = QCheckBox(self.tr("new family here"))
        self.quick = QCheckBox(self.tr("quick"))
        self.no_raising = QCheckBox(self.tr("no raising"))
        boxes = (self.tin, self.wanted, self.quick, self.no_raising, self.new_family)
        for pair in (boxes[:2], boxes[2:4], boxes[4:]):
            row = QHBoxLayout()
            for box in pair:
                row.addWidget(box)
            row.addStretch(1)
            column.addLayout(row)
        self.ranking = QComboBox()
        self.ranking.setAccessibleName(self.tr("Ranked by"))
        self.ranking.setToolTip(self.tr("What counts in the ranking"))
        self.ranking.setMinimumContentsLength(8)
        self.ranking.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        for text in (
            self.tr("harvest for ground and time"), self.tr("harvest in all"), self.tr("soon harvested"),
            self.tr("days to spare"),
        ):  # fmt: skip
            self.ranking.addItem(text)
        column.addWidget(self.ranking)
        return column

    def set_look(self, measure: Measure, _colours: Palette) -> None:
        """Use these units and colours."""
        self._measure = measure
        self._changed()

    # open ground

    def _changed(self, *_: object) -> None:
        self._answered = bool(self._proposals)  # that nothing fits may be true no longer
        if self.isVisible():
            self._soon.ask()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._soon.ask()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self._ground.put(())
        self._places.put(())
        self._session.preview(None)

    def refresh_ground(self) -> None:
        """Show what is open on the date cursor's day, and the year's unused ground as one figure."""
        survey = self.search.survey()
        on = self._session.on
        shown = []
        for bed in survey.layout.beds:
            surveyed = survey.bed(bed)
            if surveyed is None:
                continue
            field = surveyed.field
            weeks = -(field.inside * 0 + 1).astype(int)
            weeks[field.inside] = weeks_free(survey, surveyed, on)
            shown.append(OpenBed(float(field.x[0]), float(field.y[0]), field.step_m, field.angle_deg, weeks))
        self._ground.put(shown)
        self.unused.setText(words.unused_words(unused(survey)))
        if not self._answered and not self.search.busy:
            self._list_gaps()

    def _list_gaps(self) -> None:
        """The gaps of the day, while nothing else is asked."""
        survey = self.search.survey()
        layout, known = survey.layout, self._session.catalogue
        self.list.clear()
        for gap in gaps(survey, self._session.on)[:12]:
            item = QListWidgetItem(words.gap_words(gap, layout, known, self._measure))
            item.setData(Qt.ItemDataRole.UserRole, ("gap", gap.place))
            self.list.addItem(item)
        if self.list.count():
            self.said.setText(
                self.tr("Open on {0}; choose one to see what fits.").format(day(self._session.on))
            )

    # asking

    @property
    def question(self) -> Question:
        """What is asked for, from the date cursor's day on."""
        marked = self._session.library
        tin = frozenset(lot.crop for lot in marked.own.lots) if self.tin.isChecked() else None
        wanted = frozenset(marked.marked.wanted) if self.wanted.isChecked() else None
        wishes = Wishes(
            tin=tin, wanted=wanted, new_family=self.new_family.isChecked(), quick=self.quick.isChecked(),
            no_raising=self.no_raising.isChecked(),
        )  # fmt: skip
        return Question(self._session.on, wishes, _RANKINGS[self.ranking.currentIndex()])

    def choose_place(self) -> None:
        """Take the tool that asks by place."""
        self._window.view.set_tool("what fits")
        self._window.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def ask_place(self, where: Point | tuple[Point, ...]) -> None:
        """Ask what fits at a point, or in an area."""
        question = self.question
        self._begin(self.tr("Looking for what fits there…"))
        self._elsewhere = False  # all at one place: their outlines would lie on each other
        self.search.ask(lambda survey, checker: by_place(survey, checker, where, question))

    def ask_crop(self) -> None:
        """Ask where the seed tin's crop fits."""
        current = self._window.tin.current
        if current is None:
            self.said.setText(self.tr("Choose a crop in the seed tin first."))
            return
        crop, variety = current
        question = self.question
        self._begin(
            self.tr("Looking for places for {0}…").format(crop_name(self._session.catalogue, crop, variety))
        )
        self.search.ask(lambda survey, checker: by_crop(survey, checker, crop, question, variety))

    def ask_now(self) -> None:
        """Ask what can be started in the date cursor's week."""
        question = self.question
        self._begin(self.tr("Looking for what can be started now…"))
        self.search.ask(lambda survey, checker: by_date(survey, checker, question))

    def _begin(self, sentence: str) -> None:
        self._session.preview(None)
        self._answered = self._elsewhere = True
        self._proposals = ()
        self._places.put(())
        self.list.clear()
        self._detail("")
        self.said.setText(sentence)
        self._enable(None)
        self._progress.begin()

    def _stopped(self) -> None:
        self.search.stop()
        self._progress.end()
        self.said.setText(self.tr("Stopped."))

    def _found(self, answer: Answer) -> None:
        self._progress.end()
        session = self._session
        layout, known = session.layout, session.catalogue
        self._proposals = answer.proposals
        self.list.clear()
        for proposal in answer.proposals:
            said = words.short(proposal, layout, known, self._measure, session.on)
            item = QListWidgetItem(said)
            whole = words.line(proposal, layout, known, self._measure)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, whole)
            item.setData(Qt.ItemDataRole.UserRole, proposal)
            self.list.addItem(item)
        self._light_up(answer.proposals if self._elsewhere else ())
        if answer.proposals:
            self.said.setText(self.tr("Best first. Hover to try one out, Enter plants it."))
            return
        misses = [words.miss_words(m, layout, known, self._measure) for m in answer.misses]
        self.said.setText(self.tr("Nothing fits.") + " " + " ".join(misses[:3]))

    def _light_up(self, proposals: tuple[Proposal, ...]) -> None:
        """Outline where they would stand, each with its verdict and the day it is started."""
        self._places.put(
            tuple(
                Offered(
                    from_shapely(hull(p.planting, p.planting.pattern.spacing_m / 4)), p.verdict,
                    short_day(p.planting.start.on),
                )
                for p in proposals
            )
        )  # fmt: skip

    # proposals

    def _proposal(self, item: QListWidgetItem | None) -> Proposal | None:
        data = item.data(Qt.ItemDataRole.UserRole) if item is not None else None
        return data if isinstance(data, Proposal) else None

    def _hovered(self, item: QListWidgetItem | None, *_: object) -> None:
        proposal = self._proposal(item)
        self._enable(proposal or self._proposal(self.list.currentItem()))
        if proposal is None:
            return
        session = self._session
        session.preview(plant(session.garden, session.layout_id, proposal))
        self._detail(self._told_of(proposal))

    def _told_of(self, proposal: Proposal) -> str:
        session, measure = self._session, self._measure
        given = session.garden, session.layout, session.catalogue, measure
        odds = words.odds_words(proposal)
        said = [f"{odds[0].upper()}{odds[1:]}.", words.why_words(proposal, measure)]
        pattern = words.pattern_words(proposal.planting.pattern, measure)
        said.append(f"{pattern[0].upper()}{pattern[1:]}.")
        said += words.cost_words(proposal, *given)
        said += words.neighbour_words(proposal, *given)[:3]
        family = words.family_words(proposal)
        return " ".join([*said, family] if family else said)

    def _detail(self, said: str) -> None:
        self.detail.setText(said)
        self._around.setVisible(bool(said))

    def _enable(self, proposal: Proposal | None) -> None:
        self.plant_it.setEnabled(proposal is not None)

    def _plant(self, *_: object) -> None:
        item = self.list.currentItem()
        proposal = self._proposal(item)
        if proposal is None:
            data = item.data(Qt.ItemDataRole.UserRole) if item is not None else None
            if isinstance(data, tuple) and data[0] == "gap":
                self.ask_place(data[1])
            return
        session = self._session
        after = plant(session.garden, session.layout_id, proposal)
        text = self.tr("Plant {0}").format(words.title(proposal, session.catalogue))
        self._proposals = ()
        self._places.put(())
        if session.propose(after, text):
            session.select([proposal.planting.id])
            self.list.clear()
            self._detail("")
            self.said.setText(self.tr("Planted: {0}.").format(words.title(proposal, session.catalogue)))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The mouse leaves the list: the plan is as it was; Enter plants."""
        if event.type() == QEvent.Type.Leave:
            self._session.preview(None)
        if (
            watched is self.list
            and event.type() == QEvent.Type.KeyPress
            and isinstance(event, QKeyEvent)
            and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        ):
            self._plant()
            return True
        return super().eventFilter(watched, event)
