"""From an offer to a proposal: laid out, tried on the engine, and told in numbers."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np

from gardencanvas.fit.aids import growing_of
from gardencanvas.fit.codes import Code
from gardencanvas.fit.needs import light_good
from gardencanvas.fit.report import Finding, PlantingFit, Verdict
from gardencanvas.fit.stands import grid
from gardencanvas.garden.pattern import Pattern, Spots
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.value import Point
from gardencanvas.planner.gaps.answers import Part, Proposal, Weights
from gardencanvas.planner.gaps.laying import Spacing, lay
from gardencanvas.planner.gaps.offers import Offers, combined, parts_of, per_plant
from gardencanvas.planner.gaps.survey import Survey
from gardencanvas.planner.gaps.trying import Trials, Tried
from gardencanvas.season.windows import Window, windows


@dataclass(frozen=True, slots=True, eq=False)
class Ranking:
    """By what proposals are ranked."""

    weights: Weights
    ground_m2: float
    best: tuple[float, float]


def proposed(
    survey: Survey,
    trials: Trials,
    offer: Offers,
    row: int,
    ranking: Ranking,
    before: Mapping[str, int],
    at: Point | None = None,
) -> Proposal | Finding | None:
    """The proposal of one offer; the finding that forbids it; None where there is no room after all.

    ``at`` asks for a single plant at that place of the plan, whatever clearance it has.
    """
    planting = laid_out(trials, offer, row) if at is None else _single(trials, offer, row, at)
    if planting is None:
        return None
    tried = trials.attempt(planting)
    if not isinstance(tried, Tried):
        return tried
    return _told(survey, tried, offer, row, ranking, before)


def laid_out(trials: Trials, offer: Offers, row: int) -> Planting | None:
    """The planting of an offer in its pattern; None where there is no room after all."""
    sprouts, region = offer.sprouts, offer.ground.region
    spacing = Spacing(float(sprouts.along_m[row]), float(sprouts.across_m[row]))
    laid = lay(region, spacing, offer.apart[row], float(offer.margin_m[row]))
    if laid is None:
        return None
    return _planting(trials, offer, row, laid.pattern)


def _single(trials: Trials, offer: Offers, row: int, at: Point) -> Planting:
    spacing = round(float(offer.sprouts.station_m2[row]) ** 0.5, 4)
    return _planting(trials, offer, row, Spots(points=(at,), spacing_m=spacing))


def _planting(trials: Trials, offer: Offers, row: int, pattern: Pattern) -> Planting:
    way = offer.sprouts.ways[row]
    return Planting(
        id=trials.id_for(way.crop_id),
        crop=way.crop_id,
        varieties=(way.variety,) if way.variety else (),
        pattern=pattern,
        start=Start(kind=way.kind, on=offer.sprouts.starts[row]),
    )


def _told(
    survey: Survey, tried: Tried, offer: Offers, row: int, ranking: Ranking, before: Mapping[str, int]
) -> Proposal:
    planting, fit = tried.planting, tried.report.plantings[tried.planting.id]
    way = offer.sprouts.ways[row]
    window = _window(survey, planting)
    harvest = _harvest(offer, row, planting, fit)
    spare, late = _spare(fit, tried, window)
    strained = fit.verdict is Verdict.STRAINS or bool(tried.strains)
    parts = _parts(offer, row, harvest, spare, strained, ranking)
    score = float(combined({p: np.array([v]) for p, v in parts.items()}, ranking.weights)[0])
    days = int(offer.days[row])
    return Proposal(
        planting=planting,
        bed=offer.ground.region.surveyed.field.bed.id,
        plants=planting.plants,
        ground_m2=planting.pattern.count * float(offer.sprouts.station_m2[row]),
        sow_on=planting.start.on - timedelta(days=way.nursery_d),
        harvest_first=fit.harvest_first,
        harvest_last=fit.harvest_last,
        harvest_late=window.last[2] if window.last else None,
        out=_day(offer, row),
        days=days,
        ripens=window.ripens,
        light=fit.light,
        harvest_kg=harvest,
        spare_d=spare,
        spare_late_d=late,
        family_last=before.get(way.crop.family),
        verdict=fit.verdict,
        strains=tried.strains,
        effects=tried.effects,
        parts=parts,
        score=score,
    )


def _day(offer: Offers, row: int) -> date:
    out: date = offer.sprouts.course.out[row].astype(object)
    return out


def _window(survey: Survey, planting: Planting) -> Window:
    """Its harvest over simulated years, with the covers and supports there."""
    crop = survey.catalogue.resolve(planting.crop, planting.variety)
    growing = growing_of(survey.layout, planting, crop)
    (window,) = windows(survey.garden.site, [growing], grid(survey.season))
    return window


def _harvest(
    offer: Offers, row: int, planting: Planting, fit: PlantingFit
) -> tuple[float, float, float] | None:
    """Expected harvest: yield of a plant, less what too little light and a short season cost.

    In proportion to light below the crop's need, as growth is to light caught (Monteith 1977).
    """
    crop = offer.sprouts.ways[row].crop
    each = per_plant(crop)
    share = float(offer.picked[row]) * min(fit.light / max(light_good(crop), 1e-6), 1.0)
    if each[1] <= 0.0 or share <= 0.0:
        return None
    low, middle, high = (kg * planting.plants * share for kg in each)
    return low, middle, high


def _spare(fit: PlantingFit, tried: Tried, window: Window) -> tuple[int | None, int | None]:
    """Days to spare, and in a late year."""
    mine = [f for f in tried.report.of(fit.id) if f.plantings[0] == fit.id]
    spare = fit.days_to_spare
    waits = [d for f in mine if f.code == Code.IN_TURNS and isinstance(d := f.numbers["days_between"], int)]
    if waits:
        spare = min(waits) if spare is None else min(spare, *waits)
    if spare is None or window.last is None:
        return spare, None
    deadline = fit.harvest_last + timedelta(days=spare)
    return spare, (deadline - window.last[2]).days


def _parts(
    offer: Offers, row: int, harvest: tuple[float, float, float] | None, spare: int | None, strained: bool,
    ranking: Ranking,
) -> dict[Part, float]:  # fmt: skip
    sprouts = offer.sprouts
    kg = np.zeros(sprouts.count)
    kg[row] = harvest[1] if harvest else 0.0
    waits = np.full(sprouts.count, np.inf if spare is None else float(spare))
    strains = np.full(sprouts.count, strained)
    parts = parts_of(kg, offer.days, sprouts, waits, strains, ranking.ground_m2, ranking.best)
    return {p: float(v[row]) for p, v in parts.items()}
