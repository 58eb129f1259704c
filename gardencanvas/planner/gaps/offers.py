"""Offers: every way of starting on every piece of ground, judged roughly and at once, to be tried in order.

For each, the ground on which a plant's middle has clearance gives a number of plants, its yield and its days
give a worth. Only the best are laid out and tried on the engine.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.planner.gaps.above import PROBE_M, above
from gardencanvas.planner.gaps.answers import Part, Weights
from gardencanvas.planner.gaps.claims import Room, distances
from gardencanvas.planner.gaps.clearance import Region
from gardencanvas.planner.gaps.sprouts import Sprouts
from gardencanvas.planner.gaps.survey import Survey

Floats = NDArray[np.float64]
Singles = NDArray[np.float32]
Bools = NDArray[np.bool_]
Ints = NDArray[np.intp]

ROUGH = 900  # points of a region that are looked at first
LIGHT_SLACK = 0.1  # so much less light than needed is still tried: a plant grows out of the shade
SOON_D = 30.0  # a harvest in so many days is soon (our choice)
SPARE_D = 28.0  # four weeks to spare are enough (our choice)
_WEEK_D = 7


@dataclass(frozen=True, eq=False)
class Ground:
    """A region with what is known above it."""

    region: Region
    light: Floats  # (weeks,) for low plants
    light_tall: Floats  # … for plants of ``_TALL_M``

    def light_of(self, sprouts: Sprouts) -> Floats:
        """Light of each sprout over its own weeks, weighted by its footprint."""
        radius, height = sprouts.sizes[0], sprouts.sizes[1]
        weight = radius * radius
        part = np.clip((height - PROBE_M) / (_TALL_M - PROBE_M), 0.0, 1.0)
        light = self.light[None, :] * (1.0 - part) + self.light_tall[None, :] * part
        total = weight.sum(axis=1)
        found: Floats = (light * weight).sum(axis=1) / np.maximum(total, 1e-9)
        return found


_TALL_M = 1.0


def ground_of(survey: Survey, region: Region) -> Ground:
    """A region with its light, seen from a few of its points."""
    plan = region.surveyed.field.plan[region.points]
    spots = plan[np.unique(np.linspace(0, len(plan) - 1, min(5, len(plan))).astype(np.intp))]
    low = above(survey, spots).light
    shaded = low.min() < 1.0 - 1e-6
    return Ground(region, low, above(survey, spots, _TALL_M).light if shaded else low)


@dataclass(frozen=True, eq=False)
class Offers:
    """Sprouts on one piece of ground. Arrays of shape (n,), or (n, neighbours) for ``apart``."""

    ground: Ground
    sprouts: Sprouts
    room: Room
    apart: Floats
    margin_m: Floats  # to the edge of the ground
    plants: Floats  # about so many fit; 0 where none does
    short_m: Floats  # clearance that is missing; 0 where one fits
    light: Floats
    lit: Bools
    picked: Floats  # share of the harvest that its days bring
    kg: Floats  # expected harvest, low estimate of what is cut short
    days: Ints

    def order(self, weights: Weights, ground_m2: float, best: tuple[float, float]) -> Floats:
        """Rough score of each; −inf where it cannot be."""
        parts = parts_of(self.kg, self.days, self.sprouts, None, None, ground_m2, best)
        score = combined(parts, weights)
        return np.where((self.plants > 0) & self.lit, score, -np.inf)


def offers(survey: Survey, ground: Ground, sprouts: Sprouts, room: Room) -> Offers:
    """All sprouts on a piece of ground."""
    region = ground.region
    every = [distances(sprouts, n.stand, room) for n in region.surveyed.neighbours]
    apart = np.stack(every, axis=1) if every else np.zeros((sprouts.count, 0))
    margin = sprouts.margin_m
    clear = _clearances(region, apart, margin)
    if room is Room.SHARED and region.whole:
        # where there is no room with a margin, a plant may still stand at the very edge of its bed
        margin = np.where(clear.max(axis=1) < 0.0, 0.0, margin)
        clear = _clearances(region, apart, margin)
    share = (clear >= 0.0).mean(axis=1)
    slip = region.surveyed.field.slip_m * _stride(region)
    most = clear.max(axis=1)
    area = share * region.area_m2
    plants = np.where(most >= 0.0, np.maximum(area / sprouts.station_m2, 1.0), (most >= -slip) * 0.5)
    light = ground.light_of(sprouts)
    least = sprouts.light_least
    kg = plants * np.array([per_plant(w.crop)[1] for w in sprouts.ways])
    picked = picked_share(sprouts)
    kg = kg * picked * np.minimum(light / np.maximum(sprouts.light_good, 1e-6), 1.0)
    days = stay_days(survey, sprouts)
    return Offers(
        ground, sprouts, room, apart, margin, plants, np.maximum(-most, 0.0), light,
        light >= least - LIGHT_SLACK, picked, kg, days,
    )  # fmt: skip


def _stride(region: Region) -> int:
    return max(int(np.sqrt(region.points.sum() / ROUGH)), 1)


def _clearances(region: Region, apart: Floats, margin: Floats) -> Singles:
    """Clearance of each sprout at a part of the region's points, shape (n, points)."""
    field, stride = region.surveyed.field, _stride(region)
    some = np.zeros(field.inside.shape, dtype=bool)
    some[::stride, ::stride] = True
    kept = some[field.inside][region.points]
    if not kept.any():
        kept = np.ones(len(region.edge_m), dtype=bool)
    clear = region.edge_m[kept][None, :] - margin.astype(np.float32)[:, None]
    for row, away in enumerate(region.away_m[:, kept]):
        near = np.flatnonzero(apart[:, row] > 0.0)
        if len(near):
            clear[near] = np.minimum(clear[near], away[None, :] - apart[near, row, None].astype(np.float32))
    return clear


def per_plant(crop: Crop) -> tuple[float, float, float]:
    """Low, central and high harvest of one plant at its usual spacing, kg; 0 where none is on record.

    From the yield of a plant, or that of a square metre times its ground.
    """
    if crop.harvest is Harvest.NONE:
        return 0.0, 0.0, 0.0
    if crop.yield_kg_plant is not None:
        q = crop.yield_kg_plant
        return q.low, q.mid, q.high
    if crop.yield_kg_m2 is None or crop.in_row_m is None or crop.between_rows_m is None:
        return 0.0, 0.0, 0.0
    q, ground = crop.yield_kg_m2, crop.in_row_m.mid * crop.between_rows_m.mid
    return q.low * ground, q.mid * ground, q.high * ground


def picked_share(sprouts: Sprouts) -> Floats:
    """Share of the harvest that its days bring: of repeated harvests what frost leaves, in proportion.

    Perennials bear in later years: none is counted in the season in which they are planted.
    """
    course = sprouts.course
    days = (course.harvest_last - course.harvest_first).astype("timedelta64[D]").astype(np.float64)
    usual = np.array([w.crop.harvest_length_d.mid if w.crop.harvest_length_d else 0.0 for w in sprouts.ways])
    often = np.array([w.crop.harvest in (Harvest.REPEATED, Harvest.CUT_AGAIN) for w in sprouts.ways])
    share = np.where(often & (usual > 0.0), np.minimum((days + 1.0) / np.maximum(usual, 1.0), 1.0), 1.0)
    later = np.array([lasting(w.crop) for w in sprouts.ways])
    found: Floats = share * course.ripe * ~later
    return found


def lasting(crop: Crop) -> bool:
    """Whether it is planted once and bears for years."""
    return crop.life == "perennial" and crop.harvest is not Harvest.SINGLE


def stay_days(survey: Survey, sprouts: Sprouts) -> Ints:
    """Days on the ground; perennials take what is left of the season."""
    until = np.minimum(
        sprouts.course.out,
        np.where(
            [lasting(w.crop) for w in sprouts.ways],
            np.datetime64(survey.season[1], "D"),
            sprouts.course.out,
        ),
    )
    days = (until - sprouts.course.in_bed).astype("timedelta64[D]").astype(np.intp) + 1
    return np.maximum(days, _WEEK_D)


def parts_of(
    kg: Floats, days: Ints, sprouts: Sprouts, spare: Floats | None, strains: Bools | None,
    ground_m2: float, best: tuple[float, float],
) -> dict[Part, Floats]:  # fmt: skip
    """The parts of the ranking, each 0 to 1.

    Parameters
    ----------
    spare
        Days to spare, inf where nothing waits; None: not known yet.
    strains
        Whether something strains; None: not known yet.
    best
        The greatest rate, kg/m²·day, and harvest, kg, among all that was asked about.
    """
    first = (sprouts.course.harvest_first - sprouts.course.in_bed).astype("timedelta64[D]").astype(np.float64)
    one = np.ones(len(kg))
    return {
        Part.HARVEST_RATE: np.minimum(kg / (ground_m2 * days) / max(best[0], 1e-12), 1.0),
        Part.HARVEST: np.minimum(kg / max(best[1], 1e-12), 1.0),
        Part.SOON: np.minimum(SOON_D / np.maximum(first, 1.0), 1.0),
        Part.SPARE: one if spare is None else np.clip(spare / SPARE_D, 0.0, 1.0),
        Part.UNSTRAINED: one if strains is None else (~strains).astype(np.float64),
    }


def combined(parts: dict[Part, Floats], weights: Weights) -> Floats:
    """The score: the weighted mean of the parts."""
    by = weights_of(weights)
    total = sum(by.values())
    found: Floats = sum((by[p] * v for p, v in parts.items()), np.zeros(1)) / max(total, 1e-9)
    return found


def weights_of(weights: Weights) -> dict[Part, float]:
    """What each part counts."""
    return {
        Part.HARVEST_RATE: weights.harvest_rate,
        Part.HARVEST: weights.harvest,
        Part.SOON: weights.soon,
        Part.SPARE: weights.spare,
        Part.UNSTRAINED: weights.unstrained,
    }


def best_of(every: Sequence[Offers], ground_m2: float) -> tuple[float, float]:
    """The greatest rate and harvest of all offers that can be."""
    rate = most = 0.0
    for each in every:
        kg = np.where((each.plants > 0) & each.lit, each.kg, 0.0)
        rate = max(rate, float((kg / (ground_m2 * each.days)).max(initial=0.0)))
        most = max(most, float(kg.max(initial=0.0)))
    return rate, most
