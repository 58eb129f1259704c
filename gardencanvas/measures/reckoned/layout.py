"""From a layout that was grown in three years to all its measures."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.beside import vault
from gardencanvas.fit.report import FitReport
from gardencanvas.fit.stands import grid
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.places import bed_ground
from gardencanvas.measures.codes import Code
from gardencanvas.measures.estimates import Estimate
from gardencanvas.measures.jobs import Job, jobs
from gardencanvas.measures.measured import Measured, Part
from gardencanvas.measures.reckoned.cautions import cautions, verdicts
from gardencanvas.measures.reckoned.ground import GroundUse, ground_use
from gardencanvas.measures.reckoned.parts import Reckoned, area_times, crop_part, part_of
from gardencanvas.measures.reckoned.through import through_weeks
from gardencanvas.measures.reckoned.water import Sky, Water
from gardencanvas.measures.yields.bed_yields import BedYield, bed_yields
from gardencanvas.measures.yields.fixture_light import fixture_light
from gardencanvas.measures.yields.harvests import CropHarvest, Windows, crop_harvests
from gardencanvas.measures.yields.years import Years
from gardencanvas.season.course import Weeks

Floats = NDArray[np.float64]

BEFORE = 52  # weeks of the stands' grid before the season


@dataclass(frozen=True, eq=False)
class Reckoning:
    """One layout, grown, with what the check says of it."""

    crops: Catalogue
    garden: Garden
    layout: Layout
    years: Years
    report: FitReport

    @cached_property
    def season(self) -> Weeks:
        """The season's own weeks."""
        return Weeks(self.layout.season[0], grid(self.layout.season).count - 2 * BEFORE)

    @property
    def _part(self) -> slice:
        """The season's weeks of the stands' grid."""
        return slice(BEFORE, BEFORE + self.season.count)

    @cached_property
    def _windows(self) -> Windows:
        return Windows(self.years, self.season)

    @cached_property
    def yields(self) -> tuple[BedYield, ...]:
        """Of every bed with plantings."""
        return bed_yields(
            self.years, fixture_light(self.years.usual.beds, self.garden.site, self.garden.fixtures)
        )

    @cached_property
    def ground(self) -> list[GroundUse]:
        """Of the same beds."""
        over = vault(self.garden.site)
        return [
            ground_use(y.bedful, s, self._part, over, y.ground_apart)
            for y, s in zip(self.yields, self.years.usual.shared, strict=True)
        ]

    @cached_property
    def water(self) -> list[Water] | None:
        """Of the same beds; None where the site's climate does not tell it."""
        sky = Sky(self.garden.site)
        if not sky.known:
            return None
        return [
            Water(sky.weekly(y.bedful)[self._part], sky.apart(y.bedful, y.ground_apart)[self._part])
            for y in self.yields
        ]

    @cached_property
    def harvests(self) -> dict[str, CropHarvest]:
        """Of every crop in beds."""
        return crop_harvests(self.yields, self._windows)

    @cached_property
    def jobs(self) -> tuple[Job, ...]:
        """The year's work."""
        return jobs(self.garden, self.layout.id, self.report, self.crops)

    @cached_property
    def area_m2(self) -> float:
        """Ground of all beds."""
        return sum(float(bed_ground(b).area) for b in self.layout.beds)

    @property
    def days(self) -> float:
        """Length of the season."""
        return float((self.layout.season[1] - self.layout.season[0]).days + 1)

    def measured(self) -> Measured:
        """All measures."""
        everything = frozenset(p.id for p in self.layout.plantings)
        within = {s.planting.id for y in self.yields for s in y.bedful.stands}
        water = None if self.water is None else _together(self.water, self.season.count)
        return Measured(
            layout=self.layout.id,
            season=self.layout.season,
            whole=self._whole(everything, water),
            beds={y.bedful.bed.id: self._bed(k) for k, y in enumerate(self.yields)},
            crops={k: crop_part(h) for k, h in self.harvests.items()},
            series=through_weeks(self.season, self.harvests, self.ground, self.area_m2, water),
            hazards=cautions(self.layout, self.crops, everything),
            unknown_yields=tuple(k for k, h in self.harvests.items() if h.kg is None),
            jobs=self.jobs,
            outside=tuple(p.id for p in self.layout.plantings if p.id not in within),
            times=area_times(self.yields),
        )

    def _whole(self, plantings: frozenset[str], water: Water | None) -> Part:
        counted = self._counted(plantings)
        if not self.layout.beds:
            return Part(counted)
        return part_of(
            Reckoned(self.area_m2, self.ground, self.yields, self.harvests, water, self.days, counted)
        )

    def _bed(self, k: int) -> Part:
        yields, ground = self.yields[k], self.ground[k]
        counted = self._counted(frozenset(s.planting.id for s in yields.bedful.stands))
        harvests = crop_harvests([yields], self._windows)
        water = None if self.water is None else self.water[k]
        return part_of(Reckoned(ground.area_m2, [ground], [yields], harvests, water, self.days, counted))

    def _counted(self, plantings: frozenset[str]) -> dict[Code, Estimate]:
        hazards = Estimate(float(len(cautions(self.layout, self.crops, plantings))))
        return {**verdicts(self.report, plantings), Code.HAZARDS: hazards}


def _together(water: Sequence[Water], weeks: int) -> Water:
    return Water(_sum((w.litres for w in water), weeks), _sum((w.apart for w in water), weeks))


def _sum(some: Iterable[Floats], weeks: int) -> Floats:
    total: Floats = np.zeros(weeks)
    for each in some:
        total = total + each
    return total
