"""Why: the findings of a planting in plain words, each with its source and what would mend it."""

from dataclasses import dataclass

from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from gardencanvas.app.inspector.remedy_list import RemedyList
from gardencanvas.app.inspector.remedy_search import RemedySearch
from gardencanvas.app.labels import PlainLabel, verdict_word
from gardencanvas.app.session import Session
from gardencanvas.fit.report import Finding, Remedy, Verdict
from gardencanvas.fit.same import same_items
from gardencanvas.garden.garden import Garden
from gardencanvas.words.findings import reason
from gardencanvas.words.plain import Measure
from gardencanvas.words.sources import cited

_SHOWN = 6


@dataclass(frozen=True, eq=False)
class _Asked:
    """What is shown; ``committed``: the garden's own findings, not those of a preview."""

    garden: Garden
    committed: bool
    measure: Measure
    planting_id: str
    findings: tuple[Finding, ...]

    def same_as(self, other: "_Asked | None") -> bool:
        """Whether it is the identical garden and findings."""
        return (
            other is not None
            and self.garden is other.garden
            and (self.committed, self.measure, self.planting_id)
            == (other.committed, other.measure, other.planting_id)
            and same_items(self.findings, other.findings)
        )


class Reasons(QWidget):
    """A list of findings, worst first.

    Remedies are looked for only for the committed garden: while one is tried out, or anything is dragged, no
    search happens.
    """

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._shown: _Asked | None = None
        self._trying = False
        self.lists: dict[str, RemedyList] = {}
        self.search = RemedySearch(session, self)
        self.search.found.connect(self._found)
        session.changed.connect(self._release)
        session.layout_changed.connect(self._release)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(8)

    def holds(self, planting_id: str) -> bool:
        """Whether a remedy of that planting is being tried out: what it stands under must stay."""
        return self._trying and self._shown is not None and self._shown.planting_id == planting_id

    def show_findings(
        self, findings: tuple[Finding, ...], planting_id: str, measure: Measure | None = None
    ) -> None:
        """Show the findings that name a planting; those it suffers come before those it causes."""
        if self.holds(planting_id):
            return
        session = self._session
        committed = session.shown_report is session.report
        asked = _Asked(session.garden, committed, measure or Measure(), planting_id, findings)
        if asked.same_as(self._shown):
            return
        self._release()
        self._shown = asked
        self._clear()
        ordered = sorted(findings, key=lambda f: (-f.verdict, f.plantings[0] != planting_id))
        self._column.addWidget(PlainLabel(self.tr("Why"), "heading"))
        if not ordered:
            self._column.addWidget(
                PlainLabel(self.tr("Nothing else uses this space while it stands."), "body")
            )
        for finding in ordered[:_SHOWN]:
            self._column.addWidget(self._card(finding, asked))
        if len(ordered) > _SHOWN:
            more = self.tr("and {0} more in the findings list").format(len(ordered) - _SHOWN)
            self._column.addWidget(PlainLabel(more, "quiet"))
        self.search.look_for([each.finding for each in self.lists.values()])

    def _clear(self) -> None:
        self.lists.clear()
        while self._column.count():
            item = self._column.takeAt(0)
            if item is not None and (widget := item.widget()) is not None:
                widget.hide()  # one just added is still to be shown: without a parent it would be a window
                widget.setParent(None)
                widget.deleteLater()

    def _card(self, finding: Finding, asked: _Asked) -> QWidget:
        session = self._session
        card = QFrame()
        card.setProperty("role", "card")
        card.setProperty("verdict", finding.verdict.word)
        column = QVBoxLayout(card)
        column.setContentsMargins(10, 6, 8, 6)
        column.setSpacing(3)
        said = reason(finding, session.shown_garden, session.layout_id, session.catalogue, asked.measure)
        text = PlainLabel(said, "body")
        text.setAccessibleName(f"{verdict_word(finding.verdict)}: {said}")
        column.addWidget(text)
        column.addWidget(PlainLabel(cited(session.catalogue, finding.source), "source"))
        if asked.committed and finding.verdict >= Verdict.STRAINS:
            some = RemedyList(session, finding, asked.measure)
            some.trying.connect(self._try)
            self.lists[finding.id] = some
            column.addWidget(some)
        return card

    def _found(self, finding_id: str, remedies: tuple[Remedy, ...]) -> None:
        some = self.lists.get(finding_id)
        if some is not None:
            some.show_remedies(remedies)

    def _try(self, on: bool) -> None:
        self._trying = on

    def _release(self, *_: object) -> None:
        """End what is being tried out."""
        for some in self.lists.values():
            some.stop()
        self._trying = False
