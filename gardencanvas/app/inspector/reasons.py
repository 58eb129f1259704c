"""Why: the findings of a planting in plain words, each with its source."""

from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel, verdict_word
from gardencanvas.app.session import Session
from gardencanvas.fit.report import Finding
from gardencanvas.words.findings import reason
from gardencanvas.words.sources import cited

_SHOWN = 6


class Reasons(QWidget):
    """A list of findings, worst first."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(8)

    def show_findings(self, findings: tuple[Finding, ...], planting_id: str) -> None:
        """Show the findings that name a planting; those it suffers come before those it causes."""
        while self._column.count():
            item = self._column.takeAt(0)
            if item is not None and (widget := item.widget()) is not None:
                widget.setParent(None)
                widget.deleteLater()
        ordered = sorted(findings, key=lambda f: (-f.verdict, f.plantings[0] != planting_id))
        self._column.addWidget(PlainLabel(self.tr("Why"), "heading"))
        if not ordered:
            self._column.addWidget(
                PlainLabel(self.tr("Nothing else uses this space while it stands."), "body")
            )
        for finding in ordered[:_SHOWN]:
            self._column.addWidget(self._card(finding))
        if len(ordered) > _SHOWN:
            more = self.tr("and {0} more in the findings list").format(len(ordered) - _SHOWN)
            self._column.addWidget(PlainLabel(more, "quiet"))

    def _card(self, finding: Finding) -> QWidget:
        session = self._session
        card = QFrame()
        card.setProperty("role", "card")
        card.setProperty("verdict", finding.verdict.word)
        column = QVBoxLayout(card)
        column.setContentsMargins(10, 6, 8, 6)
        column.setSpacing(3)
        said = reason(finding, session.garden, session.layout_id, session.catalogue)
        text = PlainLabel(said, "body")
        text.setAccessibleName(f"{verdict_word(finding.verdict)}: {said}")
        column.addWidget(text)
        column.addWidget(PlainLabel(cited(session.catalogue, finding.source), "source"))
        return card
