"""Measures a layout: grows it in three years and reckons all measures of the whole, its beds and crops."""

from collections import OrderedDict
from collections.abc import Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.fit import check
from gardencanvas.fit.beside import vault
from gardencanvas.fit.report import FitReport
from gardencanvas.fit.same import same_items
from gardencanvas.fit.stands import grid
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.places import bed_ground
from gardencanvas.measures.cautions import cautions, verdicts
from gardencanvas.measures.codes import THROUGH_UNITS, Code, Through
from gardencanvas.measures.estimates import Estimate, Series
from gardencanvas.measures.ground import GroundUse, ground_use
from gardencanvas.measures.harvests import CropHarvest, Windows, crop_harvests, weekly_range
from gardencanvas.measures.measured import Measured, Part
from gardencanvas.measures.parts import Reckoned, area_times, crop_part, part_of
from gardencanvas.measures.water import Sky
from gardencanvas.measures.years import Growing
from gardencanvas.measures.yields import bed_yields
from gardencanvas.season.course import Weeks

Floats = NDArray[np.float64]

BEFORE = 52  # weeks of the stands' grid before the season
KEPT = 8  # layouts


class Measuring:
    """Keeps what was measured of layouts: after an edit only what the edit touches is measured again."""

    def __init__(self, crops: Catalogue | None = None) -> None:
        self._crops = crops
        self._own: tuple[Sequence[object], Catalogue] | None = None
        self._growing: OrderedDict[str, Growing] = OrderedDict()
        self._kept: OrderedDict[str, tuple[tuple[object, ...], Measured]] = OrderedDict()

    def measured(
        self,
        garden: Garden,
        layout_id: str,
        report: FitReport | None = None,
        work: Mapping[Code, Estimate] | None = None,
    ) -> Measured:
        """One layout in numbers.

        Parameters
        ----------
        report
            What the check says of the layout as it is now; made where it is not given.
        work
            Measures that are counted elsewhere: cost of seed, hours.

        Raises
        ------
        KeyError
            If there is no such layout.
        UnknownCrop
            If a planting names a crop or variety that the catalogue does not hold.
        """
        layout = garden.layout(layout_id)
        crops = self._catalogue(garden)
        made_of = (layout, garden.site, garden.fixtures, crops)
        kept = self._kept.pop(layout.id, None)
        if kept is None or not same_items(kept[0], made_of):
            growing = self._grower(crops, garden, layout)
            told = report or check(garden, layout.id, crops)
            kept = (made_of, _measured(growing, layout, told))
        self._kept[layout.id] = kept
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return kept[1].with_work(work or {})

    def _grower(self, crops: Catalogue, garden: Garden, layout: Layout) -> Growing:
        growing = self._growing.pop(layout.id, None)
        if growing is None or not growing.serves(crops, garden.site, layout):
            growing = Growing(crops, garden.site, layout)
        self._growing[layout.id] = growing
        while len(self._growing) > KEPT:
            self._growing.popitem(last=False)
        return growing

    def _catalogue(self, garden: Garden) -> Catalogue:
        if self._crops is not None:
            return self._crops
        mine = (*garden.crops, *garden.varieties)
        if self._own is None or not same_items(self._own[0], mine):
            self._own = (mine, catalogue().with_own(garden.crops, garden.varieties))
        return self._own[1]


def _measured(growing: Growing, layout: Layout, report: FitReport) -> Measured:
    years = growing.years(layout)
    season = _season(layout)
    part = slice(BEFORE, BEFORE + season.count)
    over, sky = vault(growing.site), Sky(growing.site)
    windows = Windows(years, season)
    yields = bed_yields(years)
    ground = [ground_use(b, s, part, over) for b, s in zip(years.usual.beds, years.usual.shared, strict=True)]
    water = [sky.weekly(b)[part] if sky.known else None for b in years.usual.beds]
    days = float((layout.season[1] - layout.season[0]).days + 1)
    beds: dict[str, Part] = {}
    for each, use, litres in zip(yields, ground, water, strict=True):
        inside = frozenset(s.planting.id for s in each.bedful.stands)
        counted = _counted(layout, growing.crops, report, inside)
        harvests = crop_harvests([each], windows)
        beds[each.bedful.bed.id] = part_of(
            Reckoned(use.area_m2, [use], [each], harvests, litres, days, counted)
        )
    everything = frozenset(p.id for p in layout.plantings)
    area = sum(float(bed_ground(b).area) for b in layout.beds)
    all_harvests = crop_harvests(yields, windows)
    all_water = _all(water, season.count) if sky.known else None
    whole = part_of(
        Reckoned(
            area, ground, yields, all_harvests, all_water, days,
            _counted(layout, growing.crops, report, everything),
        )
    ) if layout.beds else Part(_counted(layout, growing.crops, report, everything))  # fmt: skip
    return Measured(
        layout=layout.id,
        season=layout.season,
        whole=whole,
        beds=beds,
        crops={k: crop_part(h) for k, h in all_harvests.items()},
        series=_series(season, all_harvests, ground, area, all_water),
        hazards=cautions(layout, growing.crops, everything),
        unknown_yields=tuple(k for k, h in all_harvests.items() if h.kg is None),
        times=area_times(yields),
    )


def _season(layout: Layout) -> Weeks:
    """The season's own weeks."""
    return Weeks(layout.season[0], grid(layout.season).count - 2 * BEFORE)


def _counted(
    layout: Layout, crops: Catalogue, report: FitReport, plantings: frozenset[str]
) -> dict[Code, Estimate]:
    hazards = Estimate(float(len(cautions(layout, crops, plantings))))
    return {**verdicts(report, plantings), Code.HAZARDS: hazards}


def _all(water: Sequence[Floats | None], weeks: int) -> Floats:
    total: Floats = np.zeros(weeks)
    for litres in water:
        if litres is not None:
            total = total + litres
    return total


def _series(
    season: Weeks, harvests: Mapping[str, CropHarvest], ground: Sequence[GroundUse], area: float,
    water: Floats | None,
) -> tuple[Series, ...]:  # fmt: skip
    """Harvest of each crop of known yield, ground cover and water by week."""
    weeks = tuple(d.astype(object) for d in season.starts)
    found = []
    for crop, harvest in harvests.items():
        if harvest.kg is not None:
            low, high = weekly_range(harvest.weekly_draws)
            found.append(_one(Through.HARVEST, crop, weeks, harvest.weekly, low, high))
    if area > 0.0:
        covered = np.zeros(season.count)
        for g in ground:
            covered = covered + g.covered * g.area_m2
        found.append(_one(Through.COVER, None, weeks, covered / area))
    if water is not None:
        found.append(_one(Through.WATER, None, weeks, water))
    return tuple(found)


def _one(
    code: Through, crop: str | None, weeks: tuple[object, ...], values: Floats, *around: Floats
) -> Series:
    ranges = [tuple(x.tolist()) for x in around]
    return Series(code, THROUGH_UNITS[code], crop, weeks, tuple(values.tolist()), *ranges)  # type: ignore[arg-type]
