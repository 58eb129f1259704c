"""Verdicts, days to spare and hazards of a layout, counted."""

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import FitReport, Kind, Verdict
from gardencanvas.garden.garden import Layout
from gardencanvas.measures.codes import Code
from gardencanvas.measures.estimates import UNKNOWN, Estimate
from gardencanvas.measures.measured import Caution

_WORST_DAYS = ("days", "days_cold", "days_warm")
_VERDICTS = {
    Code.CLEAR: Verdict.CLEAR,
    Code.SHARES: Verdict.SHARES,
    Code.STRAINS: Verdict.STRAINS,
    Code.CLASHES: Verdict.CLASHES,
}


def verdicts(report: FitReport, plantings: frozenset[str]) -> dict[Code, Estimate]:
    """How many of some plantings have each verdict, and the least days to spare among them."""
    found = [p.verdict for k, p in report.plantings.items() if k in plantings]
    counts = {code: Estimate(float(found.count(verdict))) for code, verdict in _VERDICTS.items()}
    return {**counts, Code.SPARE: days_to_spare(report, plantings)}


def days_to_spare(report: FitReport, plantings: frozenset[str]) -> Estimate:
    """Least days to spare in nine years of ten, of all catch crops among some plantings.

    The worst of an average year, a cold one and a warm one (one in ten each); not known without catch crops.
    """
    days = [
        float(n)
        for f in report.findings
        if f.kind is Kind.TIMING and f.plantings[0] in plantings and "days" in f.numbers
        for name in _WORST_DAYS
        if isinstance(n := f.numbers.get(name), int)
    ]
    return Estimate(min(days)) if days else UNKNOWN


def cautions(layout: Layout, crops: Catalogue, plantings: frozenset[str]) -> tuple[Caution, ...]:
    """Hazards of the crops of some plantings, each crop once."""
    ids = dict.fromkeys(p.crop for p in layout.plantings if p.id in plantings)
    return tuple(Caution(i, h) for i in ids for h in crops.crop(i).hazards)
