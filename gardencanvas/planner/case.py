"""A case: one finding of one garden, with what the search needs to know about it."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.fit.aids import supported
from gardencanvas.fit.report import Finding, FitReport, Kind, Verdict
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

MOST_CHANGED = 3  # plantings of one finding for which changes are sought


@dataclass(frozen=True, slots=True, eq=False)
class Case:
    """What a remedy is sought for.

    ``named`` are all plantings of the finding, the one that suffers first.
    """

    garden: Garden
    layout: Layout
    finding: Finding
    report: FitReport
    catalogue: Catalogue
    named: tuple[Planting, ...]

    @property
    def changeable(self) -> tuple[Planting, ...]:
        """Plantings that may be changed: locked ones stay as they are."""
        return tuple(p for p in self.named[:MOST_CHANGED] if not p.locked)

    def crop(self, planting: Planting) -> Crop:
        """The planting's crop, complete."""
        return self.catalogue.resolve(planting.crop, planting.variety)

    def bed(self, planting: Planting) -> Bed | None:
        """The bed that holds it."""
        return bed_of(self.layout, planting)

    def supported(self, planting: Planting) -> bool:
        """Whether it climbs on a support."""
        return supported(planting, self.crop(planting), self.layout.supports)

    def troubled(self, planting: Planting) -> Ints:
        """Indices of its stations that the finding is about: those that fare ill, or the one nearest."""
        if planting is not self.named[0]:
            away = np.hypot(*(planting.stations - np.array(self.finding.place)).T)
            return np.array([int(away.argmin())])
        stations = self.finding.stations.astype(np.intp)
        marks = self.report.plantings[planting.id].station_verdicts[stations]
        return stations[marks >= Verdict.STRAINS]

    def facing(self, planting: Planting) -> tuple[Floats, Floats, Planting | None]:
        """Where the planting and the other side of the finding come nearest: two points, and the other one.

        A planting that is alone in its finding faces nobody: both points are the finding's place.
        """
        place = np.array(self.finding.place)
        if len(self.named) == 1:
            return place, place, None
        if planting is not self.named[0]:
            own = planting.stations
            return own[np.hypot(*(own - place).T).argmin()], place, self.named[0]
        nearest, whose, least = place, self.named[1], np.inf
        for other in self.named[1:]:
            away = np.hypot(*(other.stations - place).T)
            if away.min() < least:
                nearest, whose, least = other.stations[away.argmin()], other, float(away.min())
        return place, nearest, whose

    def alone(self) -> Garden:
        """The garden with nothing but the finding's own plantings in its layout.

        What does not mend the finding here cannot mend it among all others. Fixtures matter for light only.
        """
        layout = rebuilt(self.layout, plantings=self.named)
        fixtures = self.garden.fixtures if self.finding.kind is Kind.SHADING else ()
        return rebuilt(self.garden, layouts=(layout,), fixtures=fixtures)


def case_of(
    garden: Garden, layout: Layout, finding: Finding, report: FitReport, catalogue: Catalogue
) -> Case | None:
    """The case of a finding; None where the garden does not (or no longer) have it, or it needs no remedy."""
    held = next((f for f in report.findings if f.id == finding.id), None)
    if held is None or held.verdict < Verdict.STRAINS:
        return None
    named = [layout.by_id[i] for i in held.plantings]
    plantings = tuple(p for p in named if isinstance(p, Planting))
    return Case(garden, layout, held, report, catalogue, plantings)
