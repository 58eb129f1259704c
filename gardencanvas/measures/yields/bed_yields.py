"""What the stands of a bed yield, relative to growing alone and in kg, with the draws of both."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest, Quantity
from gardencanvas.fit.mixing import BedMixing, mixing_of
from gardencanvas.measures.yields.bedful import Bedful
from gardencanvas.measures.yields.doubts import possible
from gardencanvas.measures.yields.draws import between_years, within
from gardencanvas.measures.yields.ripeness import chance, ripens
from gardencanvas.measures.yields.years import Years

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class BedYield:
    """Yields of the stands of one bed; draws of shape (COUNT, stands)."""

    bedful: Bedful
    relative: Floats  # in an average year; 0 for what does not get ripe in most years
    relative_draws: Floats  # what fails in one year fails alone too: ratios leave that out
    ripe: Bools  # in most years
    ripe_draws: Bools
    ground_apart: Floats  # share of the bed that each would have, grown apart on the same ground
    apart: Floats  # what they would yield there
    sky: Floats  # light that fixtures leave to each: kg go with it, ratios do not

    @cached_property
    def cropped(self) -> Bools:
        """Which stands are grown for a harvest."""
        return np.array([s.crop.harvest is not Harvest.NONE for s in self.bedful.stands])

    @cached_property
    def mixed(self) -> BedMixing:
        """How the bed mixes families."""
        return mixing_of(self.bedful.stands)

    @cached_property
    def days(self) -> Floats:
        """Days each stands in the bed."""
        return np.array([(s.span[1] - s.span[0]).days + 1.0 for s in self.bedful.stands])


def bed_yields(years: Years, sky: Sequence[Floats]) -> tuple[BedYield, ...]:
    """Yields of every bed; ``sky`` is the light that fixtures leave to its stands."""
    return tuple(_bed_yield(years, k, sky[k]) for k in range(len(years.usual.beds)))


def _bed_yield(years: Years, k: int, sky: Floats) -> BedYield:
    bedful = years.usual.beds[k]
    relative = [y.shared[k].relative for y in years.all]
    density = years.usual.shared[k].density
    chances = np.array([chance(s) for s in bedful.stands])
    ripe = chances >= 0.5
    ground = _apart(bedful)
    return BedYield(
        bedful=bedful,
        relative=relative[1] * ripe,
        relative_draws=possible(bedful, np.maximum(between_years(*relative), 0.0), density) * ripe,
        ripe=ripe,
        ripe_draws=ripens(chances),
        ground_apart=ground,
        apart=ground * ripe,
        sky=sky,
    )


def _apart(bedful: Bedful) -> Floats:
    """Share of the bed that each stand would have, grown apart at usual spacing on all of it.

    Stands that share the bed at some time keep their proportions, and fill it in the week when most of them
    stand; those that follow each other may still do so.
    """
    apart = np.zeros(len(bedful.stands))
    for group in bedful.groups:
        some = list(group)
        most = float((bedful.density[some, None] * bedful.present[some]).sum(axis=0).max())
        apart[some] = bedful.density[some] / most
    return apart


def sole_yield(crop: Crop) -> Quantity | None:
    """Yield of a full stand, kg/m²: as the sources give it, or of a plant over its usual ground."""
    if crop.harvest is Harvest.NONE:
        return None
    if crop.yield_kg_m2 is not None:
        return crop.yield_kg_m2
    each, along, across = crop.yield_kg_plant, crop.in_row_m, crop.between_rows_m
    if each is None or along is None or across is None:
        return None
    ground = along.mid * across.mid
    return each.model_copy(update={n: getattr(each, n) / ground for n in ("low", "mid", "high")})


def sole_draws(crop: Crop, quantity: Quantity) -> Floats:
    """Draws of a crop's yield, kg/m², shape (COUNT,)."""
    return within(quantity, f"yield of {crop.id}")
