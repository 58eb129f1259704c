"""What a bed map shows, and how it is wanted."""

from dataclasses import dataclass
from datetime import date
from functools import cached_property

from shapely import MultiPoint

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.telling_apart import told_apart
from gardencanvas.words.plain import Measure


@dataclass(frozen=True)
class Plan:
    """A layout with its report, on a day."""

    garden: Garden
    layout: Layout
    report: FitReport
    catalogue: Catalogue
    measure: Measure
    on: date

    def inside(self, bed: Bed) -> list[Planting]:
        """The plantings that lie in a bed, by start."""
        return self._inside.get(bed.id, [])

    @cached_property
    def _inside(self) -> dict[str, list[Planting]]:
        found: dict[str, list[Planting]] = {}
        for planting in sorted(self.layout.plantings, key=lambda p: (p.start.on, p.id)):
            bed = bed_of(self.layout, planting)
            if bed is not None:
                found.setdefault(bed.id, []).append(planting)
        return found

    @cached_property
    def marks(self) -> dict[str, int]:
        """The mark of each planting by id, from 1: neighbours in a bed differ."""
        return {
            planting.id: mark
            for inside in self._inside.values()
            for planting, mark in zip(
                inside, told_apart([MultiPoint(p.pattern.corners).convex_hull for p in inside]), strict=True
            )
        }

    def stands(self, planting: Planting, on: date) -> bool:
        """Whether a planting is in the bed on a day: from its start to its last harvest."""
        fit = self.report.plantings[planting.id]
        return planting.start.on <= on <= max(fit.harvest_last, planting.start.on)


@dataclass(frozen=True)
class Options:
    """How a bed map is wanted.

    ``scale``: 20 for 1:20; None for the largest that fits. ``beds``: ids; None for every bed.
    ``stages``: days on which each bed is shown, one drawing for each; none for all that is planted in it.
    ``overview``: a first page with the whole garden. ``whole``: the beds in one drawing over as many sheets
    as it takes, and not a page for each.
    """

    scale: int | None = None
    beds: tuple[str, ...] | None = None
    stages: tuple[date, ...] = ()
    overview: bool = True
    whole: bool = False
