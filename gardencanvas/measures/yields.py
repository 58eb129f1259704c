"""What the stands of a bed yield, relative to growing alone and in kg, with the draws of both."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest, Quantity
from gardencanvas.fit.mixing import BedMixing, mixing_of
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import HELD_BACK_HIGH, HELD_BACK_LOW
from gardencanvas.measures.bedful import Bedful
from gardencanvas.measures.density import relative_yield
from gardencanvas.measures.draws import COUNT, between_years, factor, normal, weather, within
from gardencanvas.measures.years import Years
from gardencanvas.season.departing import ONE_IN_TEN

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

# How far the model misses published trials: of the partial ratios of every other article eight of ten lie
# between these times the predicted one (tests/oracles/trials_table.md; Paut et al. 2024).
BAND = (0.61, 1.57)
# … and of the variance of these misses so much is of the article, and the same for all its crops.
OF_THE_GARDEN = 0.22
THINNEST = 0.5  # of the usual density
OUT_OF_TEN = 0.64  # standard deviations from the average: half-way to one year in ten


@dataclass(frozen=True, eq=False)
class BedYield:
    """Yields of the stands of one bed; draws of shape (COUNT, stands)."""

    bedful: Bedful
    relative: Floats  # in an average year; 0 for what does not get ripe
    relative_draws: Floats
    ripe: Bools
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
    ripe = [np.array([is_ripe(s) for s in y.beds[k].stands]) for y in years.all]
    thin = _thinned_otherwise(bedful, years.usual.shared[k].density)
    drawn = np.maximum(between_years(*relative), 0.0) * _missed(bedful) * thin
    year = np.searchsorted([-OUT_OF_TEN, OUT_OF_TEN], weather())
    ripens: Bools = np.array(ripe)[year]
    ground = _apart(bedful)
    return BedYield(
        bedful, relative[1] * ripe[1], drawn * ripens, ripe[1], ripens, ground, ground * ripe[1], sky
    )


def is_ripe(stand: Stand) -> bool:
    """Whether it brings a harvest in its year, before frost or the grower ends it."""
    out, outlook = stand.times.out, stand.outlook
    frost = outlook.killing_frost
    alive = frost is None or outlook.lasting or outlook.ready < frost
    return outlook.warm_enough and outlook.ready <= out and alive


def _missed(bedful: Bedful) -> Floats:
    """Draws of how far off the model may be, shape (COUNT, stands): nothing for a crop without company.

    One for each crop and the company it keeps: the same mixture is missed in the same way in both layouts.
    Its mean is 1, so that a sum over many crops is not drawn away from the sum that is told.
    """
    missed = np.ones((COUNT, len(bedful.stands)))
    for k, stand in enumerate(bedful.stands):
        company = sorted(
            {
                o.crop.id
                for o in bedful.stands
                if o.crop.id != stand.crop.id and o.begin < stand.end and stand.begin < o.end
            }
        )
        if company:
            name = f"{stand.crop.id} beside {', '.join(company)}"
            drawn = factor(*BAND, name, OF_THE_GARDEN)
            missed[:, k] = drawn / drawn.mean()
    return missed


def _thinned_otherwise(bedful: Bedful, density: Floats) -> Floats:
    """Draws of how far off the yield of thin stands may be, shape (COUNT, stands).

    How far a crop's plants hold each other back at the usual spacing is not known crop by crop: the range of
    c in the reciprocal yield law, against its middle. Published densities end at about half the usual one:
    thinner stands are taken as no less sure.
    """
    middle, half = (HELD_BACK_LOW + HELD_BACK_HIGH) / 2, (HELD_BACK_HIGH - HELD_BACK_LOW) / 2
    thin = np.clip(density, THINNEST, 1.0)
    found = np.ones((COUNT, len(bedful.stands)))
    for k, stand in enumerate(bedful.stands):
        z = normal(f"crowding of {stand.crop.id}") / ONE_IN_TEN
        c = np.clip(middle + half * z, 0.0, 1.0)
        drawn = relative_yield(thin[k], c)
        found[:, k] = drawn / drawn.mean()
    return found


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
