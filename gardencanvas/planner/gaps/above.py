"""What is above open ground: the light that reaches it through the year, and the height that is free."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from gardencanvas.fit.beside import beside, vault
from gardencanvas.fit.ground import ground_of
from gardencanvas.fit.outlook import Outlook
from gardencanvas.fit.stands import Stand, Times, grid, months_of
from gardencanvas.garden.pattern import Spots
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.light.fixtures import open_sky
from gardencanvas.planner.gaps.survey import Survey

Floats = NDArray[np.float64]

PROBE_M = 0.2  # height at which light is told: that of most young plants
_WIDE_M = 0.1


@dataclass(frozen=True, eq=False)
class Above:
    """Light week by week of the engine's grid, shape (weeks,), share of open sky."""

    light: Floats

    def mean(self, begin: int, end: int) -> float:
        """Light of the weeks ``[begin, end)``."""
        return float(self.light[begin:end].mean()) if end > begin else float(self.light[begin])


def above(survey: Survey, spots: Floats, height_m: float = PROBE_M) -> Above:
    """Light that fixtures and taller stands leave to plants of a height, mean of some places.

    Parameters
    ----------
    spots
        Plan points, shape (n, 2): a few are enough.
    """
    probe = _probe(survey, spots, height_m)
    weeks = probe.weeks
    sky = open_sky(survey.garden.site, survey.garden.fixtures, probe.spots.xy)
    passed = np.log(np.maximum(sky, 1e-6))[:, months_of(weeks) % 12]
    over = vault(survey.garden.site)
    for stands in survey.stands.values():
        for stand in stands:
            found = beside(probe, stand, over)
            if found is not None:
                passed[:, found.begin : found.end] += found.passed[:, found.month]
    return Above(np.exp(passed).mean(axis=0))


def _probe(survey: Survey, spots: Floats, height_m: float) -> Stand:
    """A stand of small plants that are there all the time, to ask the engine for its light."""
    first, last = survey.season
    pattern = Spots(points=tuple((float(x), float(y)) for x, y in spots))
    planting = Planting.model_construct(
        id="-", crop="-", pattern=pattern, start=Start(kind="sown", on=first), per_station=1, varieties=()
    )
    weeks = grid(survey.season)
    sizes = np.tile(np.array([[_WIDE_M], [height_m], [0.0], [1.0], [1.0]]), (1, weeks.count))
    way = survey.catalogue.resolve(survey.catalogue.crops[0].id)
    none: Outlook | None = None
    return Stand(
        planting=planting,
        number=0,
        crop=way,
        weeks=weeks,
        index=np.arange(len(spots)),
        sizes=sizes,
        begin=0,
        end=weeks.count,
        times=Times(first, last, last, last),
        root_m=0.0,
        roots=np.zeros(weeks.count),
        extinction=1.0,
        ground=ground_of(planting, way),
        outlook=none,  # type: ignore[arg-type]  # nothing about its weather is asked
    )


def free_height_m(survey: Survey, spots: Floats, week: int) -> float | None:
    """Height that is free over some places in a week, under a cover or a tree's crown; None: open sky."""
    on = grid(survey.season).starts[week].astype(object)
    lids: list[tuple[Sequence[tuple[float, float]], float]] = [
        (c.outline, c.height_m)
        for c in survey.layout.covers
        if (c.first is None or c.first <= on) and (c.last is None or c.last >= on)
    ]
    lids += [(f.outline, f.base_m) for f in survey.garden.fixtures if f.kind == "tree"]
    over = [
        height
        for outline, height in lids
        if shapely.contains_xy(shapely.Polygon(outline), spots[:, 0], spots[:, 1]).any()
    ]
    return min(over, default=None)
