"""Findings in the order they are listed: by bed, the bed with the worst first, and worst first within it."""

from collections.abc import Iterable
from dataclasses import dataclass

from gardencanvas.fit.accepted import acceptance
from gardencanvas.fit.report import Finding
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting


@dataclass(frozen=True, slots=True)
class Group:
    """The findings of one bed; ``bed`` is None for plantings that lie in none."""

    bed: Bed | None
    findings: tuple[Finding, ...]


def by_bed(findings: Iterable[Finding], layout: Layout) -> tuple[Group, ...]:
    """Findings grouped by the bed of the planting that suffers; what was accepted comes after the rest."""
    beds: dict[str, Bed | None] = {}
    groups: dict[str | None, list[Finding]] = {}
    whose: dict[str | None, Bed | None] = {}
    for finding in findings:
        name = finding.plantings[0]
        if name not in beds:
            planting = layout.by_id.get(name)
            beds[name] = bed_of(layout, planting) if isinstance(planting, Planting) else None
        bed = beds[name]
        key = bed.id if bed is not None else None
        whose[key] = bed
        groups.setdefault(key, []).append(finding)
    order = {bed.id: i for i, bed in enumerate(layout.beds)}

    def weight(finding: Finding) -> tuple[bool, int]:
        return acceptance(finding, layout) is not None, -finding.verdict

    made = [Group(whose[key], tuple(sorted(found, key=weight))) for key, found in groups.items()]
    last = len(order)
    return tuple(
        sorted(made, key=lambda g: (weight(g.findings[0]), order.get(g.bed.id, last) if g.bed else last))
    )
