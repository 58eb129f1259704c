"""Which findings of a report the grower has accepted, and whose marks may be quiet for it."""

from gardencanvas.fit.report import Finding, FitReport, Verdict
from gardencanvas.garden.accepting import accepted_as
from gardencanvas.garden.garden import Accepted, Layout


def acceptance(finding: Finding, layout: Layout) -> Accepted | None:
    """What was said of a finding when it was accepted; None for one that is not, or is worse than it was."""
    if finding.verdict < Verdict.STRAINS or not layout.accepted:
        return None
    return accepted_as(layout, finding.code, finding.plantings, finding.verdict.word)


def quiet(report: FitReport, layout: Layout) -> frozenset[str]:
    """Ids of plantings of which every finding that strains or clashes is accepted."""
    if not layout.accepted:
        return frozenset()
    loud: set[str] = set()
    known: set[str] = set()
    for finding in report.findings:
        if finding.verdict >= Verdict.STRAINS:
            (known if acceptance(finding, layout) is not None else loud).update(finding.plantings)
    return frozenset(known - loud)
