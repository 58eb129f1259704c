"""One finding in full: what, when, why, what would mend it, and whether the grower lives with it."""

from datetime import date

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QPushButton, QScrollArea, QVBoxLayout, QWidget

from gardencanvas.app.inspector.remedy_list import RemedyList
from gardencanvas.app.inspector.remedy_search import RemedySearch
from gardencanvas.app.labels import PlainLabel, verdict_word
from gardencanvas.app.session import Session
from gardencanvas.fit.accepted import acceptance
from gardencanvas.fit.report import Finding, Remedy, Verdict
from gardencanvas.garden.accepting import accept, no_longer
from gardencanvas.garden.edits import made
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Accepted
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import Measure, day, span
from gardencanvas.words.refusals import why_refused
from gardencanvas.words.why import why


class FindingDetail(QScrollArea):
    """Shows a finding of the committed garden; empty where none is chosen."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._measure = Measure()
        self.finding: Finding | None = None
        self.remedies: RemedyList | None = None
        self.search = RemedySearch(session, self)
        self.search.found.connect(self._found)
        self.note = QLineEdit()
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.show_finding(None)

    def set_measure(self, measure: Measure) -> None:
        """Use other units."""
        self._measure = measure
        self.show_finding(self.finding)

    def show_finding(self, finding: Finding | None) -> None:
        """Show another finding, or none."""
        if self.remedies is not None:
            self.remedies.stop()
        self.finding, self.remedies = finding, None
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(8, 4, 8, 8)
        column.setSpacing(6)
        if finding is None:
            column.addWidget(
                PlainLabel(self.tr("Choose a finding to read why, and what would mend it."), "hint")
            )
        else:
            self._fill(column, finding)
        column.addStretch(1)
        self.setWidget(inside)
        self.search.look_for([finding] if self.remedies is not None and finding is not None else [])

    def _fill(self, column: QVBoxLayout, finding: Finding) -> None:
        session = self._session
        said = reason(finding, session.garden, session.layout_id, session.catalogue, self._measure)
        head = self.tr("{0}, {1}").format(verdict_word(finding.verdict), span(finding.first, finding.last))
        column.addWidget(PlainLabel(head, "heading"))
        column.addWidget(PlainLabel(said))
        if finding.verdict >= Verdict.STRAINS:
            self._add_acceptance(column, finding)
            column.addWidget(PlainLabel(self.tr("What would mend it"), "heading"))
            self.remedies = RemedyList(session, finding, self._measure)
            column.addWidget(self.remedies)
        column.addWidget(PlainLabel(self.tr("Why"), "heading"))
        column.addWidget(PlainLabel(why(finding, session.catalogue, self._measure), "quiet"))

    def _add_acceptance(self, column: QVBoxLayout, finding: Finding) -> None:
        row = QHBoxLayout()
        known = acceptance(finding, self._session.layout)
        if known is not None:
            told = (
                self.tr("You live with it since {0}: {1}")
                if known.note
                else self.tr("You live with it since {0}.")
            )
            row.addWidget(PlainLabel(told.format(day(known.on), known.note), "quiet"), 1)
            back = QPushButton(self.tr("Mind it again"))
            back.clicked.connect(lambda: self._mind(known))
            row.addWidget(back)
        else:
            self.note = QLineEdit()
            self.note.setPlaceholderText(self.tr("I know, because…"))
            self.note.setAccessibleName(self.tr("Why you live with this finding"))
            self.note.setMaxLength(500)
            self.note.returnPressed.connect(self._accept)
            row.addWidget(self.note, 1)
            live = QPushButton(self.tr("Live with it"))
            live.setToolTip(self.tr("It stays in the list, greyed, and is marked quietly on the plan"))
            live.clicked.connect(self._accept)
            row.addWidget(live)
        column.addLayout(row)

    def _accept(self) -> None:
        finding, session = self.finding, self._session
        if finding is None:
            return
        try:
            accepted = made(
                Accepted, code=finding.code, plantings=finding.plantings, verdict=finding.verdict.word,
                note=self.note.text().strip(), on=date.today(),
            )  # fmt: skip
            after = accept(session.garden, session.layout_id, accepted)
        except Refusal as refusal:
            session.refused.emit(why_refused(refusal))
            return
        session.propose(after, self.tr("Live with a finding"))

    def _mind(self, accepted: Accepted) -> None:
        session = self._session
        after = no_longer(session.garden, session.layout_id, accepted)
        session.propose(after, self.tr("Mind a finding again"))

    def _found(self, finding_id: str, remedies: tuple[Remedy, ...]) -> None:
        if self.remedies is not None and self.finding is not None and self.finding.id == finding_id:
            self.remedies.show_remedies(remedies)
